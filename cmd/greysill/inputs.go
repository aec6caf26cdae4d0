package main

import (
	"bytes"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"sort"
	"strings"

	"greysill/checker/source"
)

// ours begins the format entry of every design, of whatever edition.
const ours = "greywater-design/"

// inputs is what a command line's operands come to.
type inputs struct {
	files   []string  // designs to judge, in order, "-" for standard input
	skipped []skipped // files in folders that are no designs
}

// skipped is a file that a folder holds and that is not judged.
type skipped struct {
	file, why string
}

// gather turns operands into files: folders are walked for designs, files are
// taken as they are. Each file is judged once.
func gather(operands []string) (inputs, error) {
	var in inputs
	seen := map[string]bool{}
	for _, operand := range operands {
		found := inputs{files: []string{operand}}
		if info, err := os.Stat(operand); operand != "-" && err == nil && info.IsDir() {
			if found, err = walk(operand); err != nil {
				return in, err
			}
		}
		in.add(found, seen)
	}
	return in, nil
}

func (in *inputs) add(found inputs, seen map[string]bool) {
	for _, file := range found.files {
		if key := filepath.Clean(file); !seen[key] {
			seen[key] = true
			in.files = append(in.files, file)
		}
	}
	in.skipped = append(in.skipped, found.skipped...)
}

// walk finds the designs under a folder: every *.json whose format is ours.
// Hidden folders are not entered. A folder without a design is an error, since
// nobody asks for a review of nothing.
func walk(dir string) (inputs, error) {
	var in inputs
	err := filepath.WalkDir(dir, func(path string, entry fs.DirEntry, err error) error {
		switch {
		case err != nil:
			return err
		case entry.IsDir() && path != dir && strings.HasPrefix(entry.Name(), "."):
			return filepath.SkipDir
		case entry.IsDir() || !strings.EqualFold(filepath.Ext(path), ".json"):
			return nil
		}
		if why := notADesign(path); why != "" {
			in.skipped = append(in.skipped, skipped{path, why})
			return nil
		}
		in.files = append(in.files, path)
		return nil
	})
	if err != nil {
		return in, fmt.Errorf("cannot read the folder %s: %w", dir, err)
	}
	if len(in.files) == 0 {
		return in, fmt.Errorf("no design in the folder %s: no *.json file there has a \"format\" of %q", dir, ours+"1")
	}
	sort.Strings(in.files)
	return in, nil
}

// notADesign says why a file in a folder is not judged, "" when it is to be. A
// file that cannot be read is judged, so that the trouble is reported; a broken
// JSON file is, when it names our format.
func notADesign(path string) string {
	text, problems := source.ReadBytes(path)
	if len(problems) > 0 {
		return ""
	}
	format, err := source.Peek(text, "format")
	switch {
	case err != nil && bytes.Contains(text, []byte(ours)):
		return ""
	case err != nil:
		return "not readable as JSON, and it does not name our format"
	case format == "":
		return "it has no \"format\" entry"
	case !strings.HasPrefix(format, ours):
		return fmt.Sprintf("its format is %q", source.Clean(format))
	}
	return ""
}
