# METADATA
# title: "Odd \e[2J\e]0;owned\u0007\u202e<script>alert(1)</script> | **bold** [link](http://example.invalid) `code` &amp; \r::error::."
# description: "Odd \e[2J\e]0;owned\u0007\u202e<script>alert(1)</script> | **bold** [link](http://example.invalid) `code` &amp; \r::error::."
# custom:
#   subjects: beds
#   level: fail
#   measures:
#     - {field: area, bound: at least, limit: odd_area}
#   remedy: "Mend {subject}: \e[2J\e]0;owned\u0007\u202e<script>alert(1)</script> | **bold** [link](http://example.invalid) `code` &amp; \r::error::."
#   sources:
#     - title: "Odd \e[2J\e]0;owned\u0007\u202e<script>alert(1)</script> | **bold** [link](http://example.invalid) `code` &amp; \r::error::"
#       place: "Odd \e[2J\e]0;owned\u0007\u202e<script>alert(1)</script> | **bold** [link](http://example.invalid) `code` &amp; \r::error::"
#       standing: published
package greysill.bed.odd

import rego.v2

proved contains b.subject if {
	some b in input.beds
	b.area >= data.limits.odd_area.value + 100000
}

excused contains {"subject": b.subject, "reason": "Odd \u001b[2J\u001b]0;owned\u0007\u202e<script>alert(1)</script> | **bold** [link](http://example.invalid) `code` &amp; \r::error::."} if {
	some b in input.beds
	b.area < -1
}

excused contains {"subject": b.subject, "reason": "Odd \u001b[2J\u001b]0;owned\u0007\u202e<script>alert(1)</script> | **bold** [link](http://example.invalid) `code` &amp; \r::error::."} if {
	some b in input.beds
	b.mulch > 100
}
