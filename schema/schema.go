// Package schema holds the JSON Schemas of every file that greysill reads or
// writes, for the program and for editors.
package schema

import "embed"

// FS holds the schema files by name.
//
//go:embed *.schema.json
var FS embed.FS
