package main

import (
	"context"
	"fmt"
	"io/fs"
	"path/filepath"
	"strings"
	"time"
)

// glances is how long it takes until files are looked at again.
const glances = 300 * time.Millisecond

// follow judges the designs now and again whenever one of them, a rule, an amendment
// or the file of known faults changes, until the context ends. What goes wrong is
// said and does not end it, since whoever draws saves half-done work.
func (j *job) follow(ctx context.Context, c console, operands []string) int {
	seen, worst := "", exitPass
	for ctx.Err() == nil {
		if now := looks(append(append([]string{j.rules, j.against}, j.amend...), operands...)); now != seen {
			if seen != "" {
				fmt.Fprintf(c.err, "\ngreysill: changed, judged again at %s\n", time.Now().Format(time.TimeOnly))
			}
			seen, worst = now, j.once(ctx, c, operands)
		}
		select {
		case <-ctx.Done():
		case <-time.After(glances):
		}
	}
	return worst
}

// once judges the designs as they are, by the rules as they are.
func (j *job) once(ctx context.Context, c console, operands []string) int {
	files, err := gather(operands)
	if err != nil {
		return unusable(c, fmt.Errorf("greysill: %w", err))
	}
	if err := j.spare(files.files); err != nil {
		return badUsage(c, "review", err)
	}
	if j.books, err = j.reviewFlags.books(); err != nil {
		return unusable(c, err)
	}
	if err := j.remember(); err != nil {
		return unusable(c, err)
	}
	go j.ahead(ctx, files.files)
	return j.run(ctx, c, files)
}

// looks tells by names, sizes and times of change how the files under some paths look.
func looks(paths []string) string {
	var b strings.Builder
	for _, path := range paths {
		if path == "" {
			continue
		}
		_ = filepath.WalkDir(path, func(name string, entry fs.DirEntry, err error) error {
			if err == nil && !entry.IsDir() {
				if info, err := entry.Info(); err == nil {
					fmt.Fprintf(&b, "%s %d %d\n", name, info.Size(), info.ModTime().UnixNano())
				}
			}
			return nil
		})
	}
	return b.String()
}
