package drawing

import (
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func somewhere(t *rapid.T, name string) point {
	return point{rapid.Float64Range(0, 180).Draw(t, name+" x"), rapid.Float64Range(0, 200).Draw(t, name+" y")}
}

// TestLabelsKeepApart: whatever is to be lettered where, labels lie in the frame, no
// two overlap, and no leader runs through another label.
func TestLabelsKeepApart(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := &placer{frame: box{0, 0, 184, 200}}
		for i := range rapid.IntRange(0, 30).Draw(t, "lines") {
			p.drawn = append(p.drawn, stroke{somewhere(t, "from "+strconv.Itoa(i)), somewhere(t, "to "+strconv.Itoa(i))})
		}
		type placed struct {
			box
			leader stroke
		}
		var all []placed
		for i := range rapid.IntRange(1, 40).Draw(t, "labels") {
			l := &label{lines: []string{strings.Repeat("m", rapid.IntRange(1, 20).Draw(t, "letters"))}, size: lettering, choices: []point{somewhere(t, "label "+strconv.Itoa(i))},
				clear: 1, inside: rapid.Bool().Draw(t, "inside"), marks: make([]Mark, rapid.IntRange(0, 7).Draw(t, "marks"))}
			at, leader, ok := p.place(l)
			if !ok {
				require.Contains(t, p.omitted, l)
				continue
			}
			require.True(t, at.within(p.frame))
			for _, other := range all {
				require.False(t, at.overlaps(other.box))
				require.False(t, leader.meets(other.box) && !other.holds(leader.a), "the new leader")
				require.False(t, other.leader.a.to(other.leader.b) > 1 && other.leader.meets(at), "a leader that was there")
			}
			all = append(all, placed{at, leader})
		}
	})
}

func TestALabelStandsBesideItsPlace(t *testing.T) {
	p := &placer{frame: box{0, 0, 100, 100}}
	at, leader, ok := p.place(&label{lines: []string{"bed-1"}, size: lettering, choices: []point{{50, 50}}, clear: 1})
	require.True(t, ok)
	require.False(t, at.holds(point{50, 50}))
	require.Less(t, leader.a.to(leader.b), 1+reaches[0]+0.01)
	at, _, _ = p.place(&label{lines: []string{"bed-2"}, size: lettering, choices: []point{{20, 20}}, inside: true})
	require.Equal(t, point{20, 20}, point{(at.left + at.right) / 2, (at.top + at.bottom) / 2})
}

func TestALabelWithoutRoomIsTold(t *testing.T) {
	p := &placer{frame: box{0, 0, 10, 4}}
	_, _, ok := p.place(&label{name: "bed-1", lines: []string{"a long name"}, size: lettering, choices: []point{{5, 2}}})
	require.False(t, ok)
	p.place(&label{name: "may go", near: true, lines: []string{"a long name"}, size: lettering, choices: []point{{5, 2}}})
	require.Equal(t, []string{"No room for the lettering of: bed-1."}, p.unlettered())
}

func TestStrokeMeetsBox(t *testing.T) {
	b := box{10, 10, 20, 20}
	for s, meets := range map[stroke]bool{
		{point{0, 0}, point{30, 30}}:   true,
		{point{12, 12}, point{13, 13}}: true,
		{point{0, 15}, point{9, 15}}:   false,
		{point{0, 21}, point{30, 21}}:  false,
		{point{0, 25}, point{25, 0}}:   true,
		{point{0, 15}, point{15, 0}}:   false,
		{point{15, 0}, point{15, 30}}:  true,
	} {
		require.Equal(t, meets, s.meets(b), s)
	}
}

func TestLetteringIsCutToItsWidth(t *testing.T) {
	require.Equal(t, "bed-1", cut("bed-1", lettering, 20))
	long := cut(strings.Repeat("W", 10_000), lettering, 20)
	require.LessOrEqual(t, textWidth(long, lettering), 20.0)
	require.True(t, strings.HasSuffix(long, "…"))
	require.Greater(t, textWidth("WWW", 1), textWidth("iii", 1))
	require.InDelta(t, 2*textWidth("bed-1", 1), textWidth("bed-1", 2), 1e-12)
}

func TestTextIsEscaped(t *testing.T) {
	c := &canvas{}
	c.text("id", `</text><script>"x"&`+"\u202e\x00", point{1, 2}, left, 2)
	require.NotContains(t, c.String(), "<script")
	require.Contains(t, c.String(), `&lt;/text&gt;&lt;script&gt;&#34;x&#34;&amp;\u202e\u0000</text>`)
	c.Reset()
	c.open("g", "data-id", `"><script>`)
	require.Equal(t, `<g data-id="&#34;&gt;&lt;script&gt;">`, c.String())
}
