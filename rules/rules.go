// Package rules holds the base rule book: one Rego file for each rule with its
// tests beside it, the limits that the rules compare with, and the cautions.
// See README.md in this folder for how to read and change them.
package rules

import "embed"

// FS is the base rule book.
//
//go:embed limits.json cautions.json */*.rego amendments
var FS embed.FS
