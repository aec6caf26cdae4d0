package main

import (
	"context"
	"slices"

	"greysill/checker/report"
)

const regionsHelp = `greysill regions [flags] [CODE…] says what the amendments of the regions change,
limit by limit and rule by rule; of all regions, or of those named by their
ISO 3166-2 codes.
`

func listRegions(ctx context.Context, c console, args []string) int {
	flags := newFlags("regions", regionsHelp)
	common := addRules(flags)
	operands, done, err := flags.parse(c, args)
	if done {
		return exitPass
	}
	if err != nil {
		return badUsage(c, "regions", err)
	}
	books, err := common.books()
	if err != nil {
		return unusable(c, err)
	}
	codes := books.Regions()
	for _, code := range operands {
		if !slices.Contains(codes, code) {
			return badUsage(c, "regions", noSuchRegion(code, codes))
		}
	}
	if len(operands) > 0 {
		codes = operands
	}
	var regions []report.Region
	for _, code := range codes {
		book, err := books.In(ctx, code)
		if err != nil {
			return unusable(c, err)
		}
		regions = append(regions, report.Region{Code: code, Book: book})
	}
	return wrote(c, report.Regions(c.out, regions, common.options(c.out)))
}
