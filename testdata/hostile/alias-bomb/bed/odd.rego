# METADATA
# title: &a [x, x, x, x, x, x, x, x, x]
# e1: &b [*a, *a, *a, *a, *a, *a, *a, *a, *a]
# e2: &c [*b, *b, *b, *b, *b, *b, *b, *b, *b]
# e3: &d [*c, *c, *c, *c, *c, *c, *c, *c, *c]
# e4: &e [*d, *d, *d, *d, *d, *d, *d, *d, *d]
# e5: &f [*e, *e, *e, *e, *e, *e, *e, *e, *e]
# e6: &g [*f, *f, *f, *f, *f, *f, *f, *f, *f]
# e7: &h [*g, *g, *g, *g, *g, *g, *g, *g, *g]
# e8: &i [*h, *h, *h, *h, *h, *h, *h, *h, *h]
# e9: &j [*i, *i, *i, *i, *i, *i, *i, *i, *i]
# e10: &k [*j, *j, *j, *j, *j, *j, *j, *j, *j]
# e11: &l [*k, *k, *k, *k, *k, *k, *k, *k, *k]
package greysill.bed.odd

import rego.v2

proved contains b.subject if {
	some b in input.beds
	b.area > 0
}
