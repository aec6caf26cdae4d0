package design

import (
	"greysill/checker/source"
)

// Read reads a design document. It gives every problem that it can find, in
// the order of the file; when there is none, it gives the design.
func Read(name string, text []byte) (*Design, source.Problems) {
	doc, problems := source.Parse(name, text)
	if doc == nil {
		return nil, problems
	}
	return from(doc, problems)
}

// ReadFile reads a design document from a file.
func ReadFile(path string) (*Design, source.Problems) {
	text, problems := source.ReadBytes(path)
	if problems != nil {
		return nil, problems
	}
	return Read(path, text)
}

// From reads a design from a document that was parsed without a problem.
func From(doc *source.Document) (*Design, source.Problems) { return from(doc, nil) }

// from goes on after what was wrong with the document's names.
func from(doc *source.Document, names source.Problems) (*Design, source.Problems) {
	f := newFaults(doc, names)
	if f.otherFormat() || f.tooLong(designSchema().Schema, doc.Value(), "") {
		return nil, f.problems()
	}
	f.schema()
	d := f.decode(doc)
	if !f.outsize {
		f.references(d)
		f.circles(d)
		f.shapes(d)
		f.dates(d)
	}
	if len(f.list) > 0 {
		return nil, f.problems()
	}
	return d, nil
}
