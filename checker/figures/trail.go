package figures

import "strings"

// trail words where water goes from a node: "shower-1 → pipe-1 → bed-1". Where
// it divides, a further trail begins at the fork: "bed-1 → basin-1; bed-1 →
// basin-2". Where trails join, what follows is told once.
func (n *network) trail(from int, first []way, s season) string {
	if len(first) == 0 {
		return none
	}
	t := teller{network: n, season: s, told: make([]bool, len(n.nodes))}
	t.told[from] = true
	t.branch([]string{n.nodes[from].id}, first)
	return strings.Join(t.trails, "; ")
}

type teller struct {
	*network
	season season
	told   []bool
	trails []string
}

func (t *teller) branch(trail []string, ways []way) {
	fork := trail[len(trail)-1]
	for i, w := range ways {
		if i > 0 {
			trail = []string{fork}
		}
		t.follow(append(trail, t.nodes[w.to].id), w.to)
	}
}

func (t *teller) follow(trail []string, here int) {
	ways := t.nodes[here].ways[t.season]
	if t.told[here] || len(ways) == 0 {
		t.trails = append(t.trails, strings.Join(trail, " → "))
		return
	}
	t.told[here] = true
	t.branch(trail, ways)
}

// listed joins names to a list, "none" when there are none.
func listed(names []string) string {
	if len(names) == 0 {
		return none
	}
	return strings.Join(names, ", ")
}
