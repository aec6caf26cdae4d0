package source

import (
	"bytes"
	"encoding/json"
	"fmt"
	"strconv"
	"strings"

	"github.com/go-json-experiment/json/jsontext"
)

// The bounds on a file. They bound the time and the memory that reading can
// take, and are far above what a design needs.
const (
	MaxSize     = 4 << 20 // bytes
	MaxDepth    = 32      // lists and objects inside one another
	MaxValues   = 200_000 // values in the file
	MaxMembers  = 1_000   // members of one object
	MaxDigits   = 40      // characters of a number
	MaxExponent = 100     // of a number written with one, of either sign
)

// bytesPerValue is what a value of a design takes of its text, one with another.
const bytesPerValue = 12

// Parse reads a JSON text strictly by RFC 8259 and RFC 7493 (I-JSON). The name
// is for positions. The document is nil when the text cannot be used at all;
// when all that is wrong is that some names are given twice, it holds the
// first value of each.
func Parse(name string, text []byte) (*Document, Problems) {
	d := &Document{name: name, text: text}
	if len(text) > MaxSize {
		return nil, Problems{tooLarge(name)}
	}
	d.marks = marksOf(text)
	if problem, bad := d.unreadable(); bad {
		return nil, Problems{problem}
	}
	d.nodes = make([]node, 0, min(len(text)/bytesPerValue, MaxValues))
	p := parser{Document: d, dec: jsontext.NewDecoder(bytes.NewBuffer(text), jsontext.AllowDuplicateNames(true))}
	value, ok := p.document()
	d.value = value
	if !ok || p.spoilt || p.more > 0 {
		return nil, p.problems.AndMore(name, p.more)
	}
	return d, p.problems
}

// parser makes the value tree and the nodes in one pass over the tokens.
type parser struct {
	*Document
	dec      *jsontext.Decoder
	open     []int32 // children of the containers that are not closed yet
	problems Problems
	more     int  // problems beyond MaxProblems
	spoilt   bool // a value could not be kept
}

// document reads the one value and requires that nothing follows it. It is
// false after a fault that ends the reading.
func (p *parser) document() (any, bool) {
	_, value, ok := p.next(-1, "")
	if !ok {
		return nil, false
	}
	if at := p.skip(" \t\r\n"); at < len(p.text) {
		p.fail(p.trailing(at))
		return nil, false
	}
	return value, true
}

// next reads one value, which is a member called name when nameAt is not
// negative. The kind is 0 at the end of a list.
func (p *parser) next(nameAt int, name string) (kind jsontext.Kind, value any, ok bool) {
	start := p.skip(" \t\r\n,:")
	tok, err := p.dec.ReadToken()
	if err != nil {
		p.fail(p.syntax(err))
		return 0, nil, false
	}
	if kind = tok.Kind(); kind == ']' {
		return 0, nil, true
	}
	if len(p.nodes) >= MaxValues {
		p.fail(p.tooMany(start))
		return 0, nil, false
	}
	at := int32(len(p.nodes))
	p.nodes = append(p.nodes, node{name: name, nameAt: int32(nameAt), start: int32(start)})
	p.open = append(p.open, at)
	value, ok = p.value(tok, at)
	p.nodes[at].end = int32(p.dec.InputOffset())
	return kind, value, ok
}

func (p *parser) value(tok jsontext.Token, at int32) (any, bool) {
	switch tok.Kind() {
	case '{':
		return p.container(at, p.object)
	case '[':
		p.nodes[at].list = true
		return p.container(at, p.list)
	case '"':
		return tok.String(), true
	case '0':
		return p.number(tok.String(), at), true
	case 't', 'f':
		return tok.Bool(), true
	default:
		return nil, true
	}
}

// container reads a list or an object and gathers its children.
func (p *parser) container(at int32, read func(at int32) (any, bool)) (any, bool) {
	if p.dec.StackDepth() > MaxDepth {
		p.fail(p.tooDeep(int(p.nodes[at].start)))
		return nil, false
	}
	first := len(p.open)
	value, ok := read(at)
	p.nodes[at].kidsFrom = int32(len(p.kids))
	p.kids = append(p.kids, p.open[first:]...)
	p.nodes[at].kidsTo = int32(len(p.kids))
	p.open = p.open[:first]
	return value, ok
}

func (p *parser) list(int32) (any, bool) {
	list := []any{}
	for {
		kind, value, ok := p.next(-1, "")
		if !ok {
			return nil, false
		}
		if kind == 0 {
			return list, true
		}
		list = append(list, value)
	}
}

func (p *parser) object(at int32) (any, bool) {
	object := map[string]any{}
	first := len(p.open)
	for {
		nameAt := p.skip(" \t\r\n,")
		tok, err := p.dec.ReadToken()
		if err != nil {
			p.fail(p.syntax(err))
			return nil, false
		}
		if tok.Kind() == '}' {
			return object, true
		}
		name := tok.String()
		_, twice := object[name]
		if twice {
			p.duplicate(name, nameAt, p.open[first:])
		}
		_, value, ok := p.next(nameAt, name)
		if !ok {
			return nil, false
		}
		if twice {
			p.open = p.open[:len(p.open)-1] // the first one stands
			continue
		}
		if object[name] = value; len(object) > MaxMembers {
			p.fail(p.tooWide(int(p.nodes[at].start)))
			return nil, false
		}
	}
}

func (p *parser) duplicate(name string, at int, siblings []int32) {
	for _, s := range siblings {
		if p.nodes[s].name == name {
			p.report(at, fmt.Sprintf("the name %s is given a second time in the same object; the first is at line %d, column %d",
				Quote(name), p.at(int(p.nodes[s].nameAt)).Line, p.at(int(p.nodes[s].nameAt)).Column),
				"", "keep one of the two")
			return
		}
	}
}

// number keeps a number as written, unless it is so long or so large that
// arithmetic on it would take for ever.
func (p *parser) number(text string, at int32) json.Number {
	if len(text) > MaxDigits || !exponentWithin(text) {
		p.report(int(p.nodes[at].start), "the number "+Cut(text)+" is out of bounds",
			fmt.Sprintf("at most %d characters and an exponent from -%d to %d", MaxDigits, MaxExponent, MaxExponent), "write it shorter")
		p.spoilt = true
	}
	return json.Number(text)
}

func exponentWithin(number string) bool {
	i := strings.IndexAny(number, "eE")
	if i < 0 {
		return true
	}
	exponent, err := strconv.Atoi(number[i+1:])
	return err == nil && -MaxExponent <= exponent && exponent <= MaxExponent
}

// skip gives the offset of the first byte from here on that is none of these.
func (p *parser) skip(bytes string) int {
	i := int(p.dec.InputOffset())
	for i < len(p.text) && strings.IndexByte(bytes, p.text[i]) >= 0 {
		i++
	}
	return i
}

// report notes a problem at the token just read.
func (p *parser) report(at int, found, expected, remedy string) {
	if len(p.problems) == MaxProblems {
		p.more++
		return
	}
	p.problems = append(p.problems, p.problem(p.at(at), string(p.dec.StackPointer()), found, expected, remedy))
}

// fail notes the fault that ends the reading, which is told in any case.
func (p *parser) fail(problem Problem) {
	if len(p.problems) == MaxProblems {
		p.problems = p.problems[:MaxProblems-1]
		p.more++
	}
	p.problems = append(p.problems, problem)
}
