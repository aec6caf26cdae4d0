package drawing

import "slices"

// key explains the lines, fillings and symbols that a drawing uses.
type key struct{ entries []keyEntry }

type keyEntry struct {
	words string
	draw  func(c *canvas, at point) // a sample, keySample wide and centred on a line at the place
}

const (
	keySample = 9.0
	keyRow    = 4.0
	keyColumn = 45.0
)

// add keeps an entry unless the words stand there already.
func (k *key) add(words string, draw func(*canvas, point)) {
	if !slices.ContainsFunc(k.entries, func(e keyEntry) bool { return e.words == words }) {
		k.entries = append(k.entries, keyEntry{words, draw})
	}
}

func (k *key) line(class, words string) {
	k.add(words, func(c *canvas, at point) { c.line(class, []point{at, at.plus(keySample, 0)}) })
}

func (k *key) area(class, words string) {
	k.add(words, func(c *canvas, at point) { c.rect(class, box{at.x, at.y - 1.3, at.x + keySample, at.y + 1.3}) })
}

func (k *key) symbol(kind string) {
	k.add(kind, func(c *canvas, at point) {
		if kind == "cleanout" {
			c.circle("fine", at.plus(keySample/2, 0), 0.7)
			return
		}
		c.symbol(kind, at.plus(keySample/2, 0))
	})
}

func (k *key) lettered(class, letters, words string) {
	k.add(words, func(c *canvas, at point) {
		c.line(class, []point{at, at.plus(keySample, 0)})
		c.text("service-letter", letters, at.plus(keySample/2, 0.36*smallLettering), middle, smallLettering)
	})
}

func (k *key) dimension() {
	k.add("distance as drawn, too small", func(c *canvas, at point) {
		a, b := at, at.plus(keySample, 0)
		c.line("dimension", []point{a, b})
		c.end(a, b)
		c.end(b, a)
	})
}

// marks explains the rings of findings.
func (k *key) marks(used []Mark) {
	for _, of := range []Standing{Fails, Warns, NotShown, Allowed} {
		if slices.ContainsFunc(used, func(m Mark) bool { return m.Of == of }) {
			k.add("finding of that number: "+string(of), func(c *canvas, at point) { c.ringed(Mark{Number: 1, Of: of}, at.plus(keySample/2, 0)) })
		}
	}
}

// draw writes the key in rows of columns: the first rows beside what else stands
// there, from one place on, the others from the left. It gives the height at
// which it ends.
func (k *key) draw(c *canvas, first point, leftmost, below float64) float64 {
	at, last := first, first.y
	for _, e := range k.entries {
		e.draw(c, at)
		c.text("note", cut(e.words, smallLettering, keyColumn-keySample-3), at.plus(keySample+1.5, 0.36*smallLettering), left, smallLettering)
		last = at.y
		if at.x += keyColumn; at.x+keyColumn > paperWidth+1 {
			at = point{leftmost, at.y + keyRow}
			if at.y < below {
				at.x = first.x
			}
		}
	}
	return max(last, below-keyRow) + keyRow
}
