package design

import (
	"cmp"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"greysill/checker/source"
)

// faults gathers what is wrong with a document.
type faults struct {
	doc     *source.Document
	list    []fault
	wrong   map[string]bool // pointers of what the schema refuses
	outsize bool            // a list is longer than it may be: the costly checks are left out
}

// fault is one thing wrong. It is put in words only when it is told, since a
// hostile document can have a hundred thousand.
type fault struct {
	source.Position
	words func() source.Problem
}

// words say what was found, what was expected and what to do.
type words struct{ found, expected, remedy string }

func newFaults(doc *source.Document, problems source.Problems) *faults {
	f := &faults{doc: doc, wrong: map[string]bool{}}
	for _, p := range problems {
		f.list = append(f.list, fault{p.Position, func() source.Problem { return p }})
	}
	return f
}

// at notes a fault of the value that the pointer leads to.
func (f *faults) at(pointer string, say func() words) {
	f.list = append(f.list, fault{f.doc.Position(pointer), func() source.Problem {
		w := say()
		return f.doc.Problem(pointer, w.found, w.expected, w.remedy)
	}})
}

// atName notes a fault of the name of the member that the pointer leads to.
func (f *faults) atName(pointer string, say func() words) {
	f.list = append(f.list, fault{f.doc.NamePosition(pointer), func() source.Problem {
		w := say()
		return f.doc.NameProblem(pointer, w.found, w.expected, w.remedy)
	}})
}

// problems puts the faults in the order of the file and in words, the first
// source.MaxProblems of them; of the others it gives the number.
func (f *faults) problems() source.Problems {
	slices.SortStableFunc(f.list, func(a, b fault) int {
		return cmp.Or(cmp.Compare(a.Line, b.Line), cmp.Compare(a.Column, b.Column))
	})
	var problems source.Problems
	for _, fault := range f.list[:min(len(f.list), source.MaxProblems)] {
		problems = append(problems, fault.words())
	}
	return problems.AndMore(f.doc.Name(), len(f.list)-len(problems))
}

// what names the value that a pointer leads to: "depth" of bed-1.
func (f *faults) what(pointer string) string {
	if pointer == "" {
		return "the document"
	}
	parent, last := cut(pointer)
	if i, err := strconv.Atoi(last); err == nil {
		return fmt.Sprintf("item %d of %s", i+1, f.what(parent))
	}
	name := source.Quote(source.Unescape(last))
	if owner := f.owner(parent); owner != "" {
		return name + " of " + owner
	}
	if _, of := cut(parent); isIndex(of) {
		return name + " of " + f.what(parent)
	}
	return name
}

// ownerOr is owner, or else what the pointer itself leads to.
func (f *faults) ownerOr(pointer string) string { return cmp.Or(f.owner(pointer), f.what(pointer)) }

// owner names the part, feature, source or service that the pointer leads to
// or into, "" when there is none.
func (f *faults) owner(pointer string) string {
	for ; pointer != ""; pointer, _ = cut(pointer) {
		object, _ := value(f.doc.Value(), pointer).(map[string]any)
		if id, _ := object["id"].(string); id != "" {
			return source.Cut(id)
		}
	}
	return ""
}

// cut takes the last token off a pointer.
func cut(pointer string) (parent, last string) {
	i := strings.LastIndexByte(pointer, '/')
	return pointer[:max(i, 0)], pointer[i+1:]
}

func isIndex(token string) bool {
	_, err := strconv.Atoi(token)
	return err == nil
}

// value gives the value that a pointer leads to, nil when it leads nowhere.
func value(v any, pointer string) any {
	if pointer == "" {
		return v
	}
	for token := range strings.SplitSeq(pointer[1:], "/") {
		switch at := v.(type) {
		case map[string]any:
			v = at[source.Unescape(token)]
		case []any:
			i, err := strconv.Atoi(token)
			if err != nil || i < 0 || i >= len(at) {
				return nil
			}
			v = at[i]
		default:
			return nil
		}
	}
	return v
}
