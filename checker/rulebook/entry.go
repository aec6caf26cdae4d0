package rulebook

import (
	"bytes"
	"fmt"
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"
	"go.yaml.in/yaml/v3"

	"greysill/checker/source"
)

// entry is one value of a METADATA block or of a JSON file, with its place, so
// that both are read and refused in one way. Exactly one of text, record and
// list counts, by shape.
type entry struct {
	shape   shape
	at      source.Position
	nameAt  source.Position // of the name before it, in a record
	pointer string
	caret   func(source.Position) string
	text    string
	names   []string
	record  map[string]*entry
	list    []*entry
}

type shape string

const (
	text   shape = "text"
	record shape = "a set of names and values"
	list   shape = "a list"
	other  shape = "neither text nor a list nor names and values"
)

func (e *entry) problem(at source.Position, found, expected, remedy string) source.Problem {
	return source.Problem{Position: at, Pointer: e.pointer, Found: found, Expected: expected, Remedy: remedy, Caret: e.caret(at)}
}

// jsonEntry gives the value that the pointer leads to.
func jsonEntry(doc *source.Document, pointer string, value any) *entry {
	e := &entry{shape: other, at: doc.Position(pointer), nameAt: doc.NamePosition(pointer), pointer: pointer, caret: doc.Caret}
	switch v := value.(type) {
	case string:
		e.shape, e.text = text, v
	case []any:
		e.shape = list
		for i, item := range v {
			e.list = append(e.list, jsonEntry(doc, fmt.Sprintf("%s/%d", pointer, i), item))
		}
	case map[string]any:
		e.shape, e.record = record, map[string]*entry{}
		for name, member := range v {
			e.names = append(e.names, name)
			e.record[name] = jsonEntry(doc, pointer+"/"+source.Escape(name), member)
		}
		slices.Sort(e.names)
	}
	return e
}

// metadataEntry reads the METADATA block above the module's package. OPA drops
// names that it does not know, so the block is read here a second time.
func metadataEntry(f *file, m *ast.Module) (*entry, source.Problems) {
	lines := metadataLines(m)
	if lines == nil {
		return nil, source.Problems{f.problemAt(m.Package.Location, "the rule declares nothing of itself", "a METADATA block right above the package", "see the README beside the base rules")}
	}
	var block bytes.Buffer
	for _, line := range lines {
		block.Write(append(line.Text, '\n'))
	}
	var node yaml.Node
	if err := yaml.Unmarshal(block.Bytes(), &node); err != nil || len(node.Content) != 1 {
		return nil, source.Problems{f.problemAt(lines[0].Location, "the METADATA block cannot be read: "+fmt.Sprint(err), "YAML with title, description and custom", "")}
	}
	return yamlEntry(f, lines, node.Content[0]), nil
}

// metadataLines gives the lines of the last METADATA block before the package,
// without the line that opens it.
func metadataLines(m *ast.Module) []*ast.Comment {
	var lines []*ast.Comment
	open := false
	for _, c := range m.Comments {
		switch {
		case c.Location.Row > m.Package.Location.Row:
		case strings.TrimSpace(string(c.Text)) == "METADATA":
			lines, open = nil, true
		case open:
			lines = append(lines, c)
		}
	}
	return lines
}

func yamlEntry(f *file, lines []*ast.Comment, node *yaml.Node) *entry {
	if node.Kind == yaml.AliasNode {
		node = &yaml.Node{Kind: node.Kind, Line: node.Line, Column: node.Column} // an alias may lead round in a circle
	}
	e := &entry{shape: other, at: yamlPosition(f, lines, node), caret: f.caret}
	e.nameAt = e.at
	switch node.Kind {
	case yaml.ScalarNode:
		if node.Tag == "!!str" {
			e.shape, e.text = text, strings.TrimSpace(node.Value)
		}
	case yaml.SequenceNode:
		e.shape = list
		for _, item := range node.Content {
			e.list = append(e.list, yamlEntry(f, lines, item))
		}
	case yaml.MappingNode:
		e.shape, e.record = record, map[string]*entry{}
		for i := 0; i+1 < len(node.Content); i += 2 {
			name := node.Content[i]
			member := yamlEntry(f, lines, node.Content[i+1])
			member.nameAt = yamlPosition(f, lines, name)
			e.names = append(e.names, name.Value)
			e.record[name.Value] = member
		}
	}
	return e
}

// yamlPosition gives the place in the file; the block begins after each line's
// comment sign.
func yamlPosition(f *file, lines []*ast.Comment, node *yaml.Node) source.Position {
	at := lines[min(max(node.Line, 1), len(lines))-1].Location
	return source.Position{File: f.name(), Line: at.Row, Column: at.Col + node.Column}
}
