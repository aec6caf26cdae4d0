package rulebook

import (
	"errors"
	"io/fs"
	"maps"
	"slices"
	"strings"

	"greysill/checker/source"
)

// assembly is a rule book in the making: layer is laid upon layer, the later one
// winning, and everything that a layer changes is written down.
type assembly struct {
	*strict
	layers     int // so far
	around     surroundings
	inForce    map[string]*file          // rules, by path
	replaced   map[string]string         // by path: the name of whose rule is replaced
	levels     map[string][]*LevelChange // by path, in order
	added      map[string]*entry         // limits that no lower layer has, by name
	asides     []*SetAside
	amendments []*Amendment
}

func newAssembly() *assembly {
	return &assembly{
		strict: &strict{}, around: surroundings{limits: map[string]*Limit{}, cautions: map[string]string{}},
		inForce: map[string]*file{}, replaced: map[string]string{}, levels: map[string][]*LevelChange{}, added: map[string]*entry{},
	}
}

// lay puts a layer upon those that are there, the first one being the base.
func (a *assembly) lay(layer Layer) {
	amendment, base := &Amendment{}, a.layers == 0
	if a.layers++; !base {
		amendment = a.introduce(&layer)
	}
	all, problems := readLayer(layer)
	a.problems = append(a.problems, problems...)
	if all.limits != nil {
		amendment.Limits = a.readLimits(all.limits, a.around.limits, a.addition(base))
	}
	if all.cautions != nil {
		a.readCautions(all.cautions, a.around.cautions)
	}
	a.takeOut(amendment)
	a.putIn(all.rules, amendment)
}

// introduce reads what an amendment says of itself; what it sets is said to be
// set by that name.
func (a *assembly) introduce(layer *Layer) *Amendment {
	f := &file{layer: *layer, path: "amendment.json"}
	if _, err := fs.Stat(layer.FS, f.path); errors.Is(err, fs.ErrNotExist) {
		a.problems = append(a.problems, (&file{layer: *layer}).whole("holds no amendment.json", "a file that says whose rules these are", "greysill start --amendment writes one"))
		return &Amendment{Name: layer.Name}
	}
	if problem, ok := f.read(); !ok {
		a.problems = append(a.problems, problem)
		return &Amendment{Name: layer.Name}
	}
	amendment := a.readAmendment(f)
	layer.title = amendment.Name
	a.amendments = append(a.amendments, amendment)
	return amendment
}

// addition gives what is to be done with a limit that no lower layer has: in an
// amendment some rule has to use it.
func (a *assembly) addition(base bool) func(name string, e *entry) {
	return func(name string, e *entry) {
		if !base {
			a.added[name] = e
		}
	}
}

// takeOut takes the rules out that the amendment sets aside, and notes the levels
// that it changes.
func (a *assembly) takeOut(amendment *Amendment) {
	for _, aside := range amendment.SetAside {
		path := aside.Rule + ".rego"
		if a.known(aside.at, aside.Rule) {
			delete(a.inForce, path)
			a.asides = append(a.asides, aside)
		}
	}
	for _, change := range amendment.Levels {
		if a.known(change.at, change.Rule) {
			path := change.Rule + ".rego"
			a.levels[path] = append(a.levels[path], change)
		}
	}
}

// known requires a rule with the id to be in force.
func (a *assembly) known(e *entry, id string) bool {
	if id == "" {
		return false
	}
	if a.inForce[id+".rego"] != nil {
		return true
	}
	for _, aside := range a.asides {
		if aside.Rule == id {
			a.fail(e.record["rule"], "the rule "+source.Quote(id)+" is set aside already by "+aside.SetBy, "", "take it out here")
			return false
		}
	}
	a.unknown(e.record["rule"], "rule", id, a.ids())
	return false
}

func (a *assembly) ids() []string {
	ids := slices.Sorted(maps.Keys(a.inForce))
	for i := range ids {
		ids[i] = strings.TrimSuffix(ids[i], ".rego")
	}
	return ids
}

// putIn adds the layer's own rules. One that stands in place of another has to be
// announced, and what is announced has to be there.
func (a *assembly) putIn(rules []*file, amendment *Amendment) {
	announced := map[string]*Replacement{}
	for _, r := range amendment.Replaced {
		announced[r.Rule+".rego"] = r
	}
	var names []string
	for _, f := range rules {
		names = append(names, strings.TrimSuffix(f.path, ".rego"))
		if before := a.inForce[f.path]; before != nil {
			a.replaced[f.path] = before.setBy()
			delete(a.levels, f.path)
			if announced[f.path] == nil {
				a.problems = append(a.problems, f.whole("this rule would replace the one "+before.setBy()+" has, without saying so", "",
					`name it with the reason under "replaced" in amendment.json, or give the rule another name`))
			}
		} else if r := announced[f.path]; r != nil {
			a.fail(r.at, "there is no rule "+source.Quote(r.Rule)+" below this amendment to replace", "", "take it out of the list, or correct the id")
		}
		a.inForce[f.path] = f
	}
	for _, r := range amendment.Replaced {
		if r.Rule != "" && !slices.Contains(names, r.Rule) {
			a.unknown(r.at.record["rule"], "rule of this amendment", r.Rule, names)
		}
	}
}

// changeLevels lets a rule amount to what the amendments say.
func (a *assembly) changeLevels(m *module) {
	for _, c := range a.levels[m.path] {
		c.OldLevel, c.OldNotShown = m.rule.Level, m.rule.NotShown
		if c.Level == "" {
			c.Level = c.OldLevel
		}
		if c.NotShown == "" {
			c.NotShown = c.OldNotShown
		}
		if c.Level == c.OldLevel && c.NotShown == c.OldNotShown {
			a.fail(c.at, "this changes nothing: the rule has these levels already", "", "leave it out")
		}
		m.rule.Level, m.rule.NotShown = c.Level, c.NotShown
		m.rule.Changes = append(m.rule.Changes, c)
	}
}

// unusedLimits refuses the limits that an amendment adds and no rule compares
// with: a misspelt name would leave the limit that was meant as it was.
func (a *assembly) unusedLimits(modules []*module) {
	var used []string
	for _, m := range modules {
		used = append(used, m.rule.limits...)
	}
	slices.Sort(used)
	used = slices.Compact(used)
	for name, e := range a.added {
		if !slices.Contains(used, name) {
			expected, remedy := suggestion(name, used)
			if remedy == "" {
				remedy = "correct the name, or add the rule that compares with it"
			}
			a.problems = append(a.problems, e.problem(e.nameAt, "no rule compares with a limit "+source.Quote(name), expected, remedy))
		}
	}
}
