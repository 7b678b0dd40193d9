package draft

import (
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// tidied gives the tidy form of a source and checks that printing it again
// changes nothing.
func tidied(t testing.TB, src string) string {
	f, _ := Parse("x", []byte(src))
	once := string(Tidy(f))
	g, _ := Parse("x", []byte(once))
	require.Equal(t, once, string(Tidy(g)), "printing twice prints once")
	return once
}

func TestTidySmallDraft(t *testing.T) {
	got := tidied(t, string(sample(t, "small.draft")))
	want, err := os.ReadFile("testdata/small.tidy")
	require.NoError(t, err)
	require.Equal(t, string(want), got)
}

func TestTidyLeastDraftIsTidy(t *testing.T) {
	src := string(sample(t, "least.draft"))
	require.Equal(t, src, tidied(t, src))
}

func TestTidy(t *testing.T) {
	for name, c := range map[string]struct{ src, want string }{
		"blanks and line ends": {"\ufeff\r\n\r\nfuse\tF1   10A  \r\n\r\n \t\r\nlamp P1\r\n\r\n", "fuse F1  10A\n\nlamp P1\n"},
		"no last newline":      {"fuse F1", "fuse F1\n"},
		"empty":                {"\n\n", ""},
		"commas":               {"x a ,b,  c", "x a, b, c\n"},
		"tabs become blanks":   {"a\n\tb\n\t\tc\n", "a\n  b\n    c\n"},
		"a block has columns and one comment column": {
			"wire 1 G1.+ F1.1 RD # a\nwire 12 A B # b\nwire 3 Q1.12 B GN/WH 3in\n",
			"wire 1   G1.+   F1.1  RD          # a\nwire 12  A      B                 # b\nwire 3   Q1.12  B     GN/WH  3in\n",
		},
		"widths as displayed": {"lamp \"灯\" 5W\nlamp \"e\u0301\" 5W\nlamp \"abc\" 5W\n",
			"lamp \"灯\"   5W\nlamp \"e\u0301\"    5W\nlamp \"abc\"  5W\n"},
		"names of devices line up over kinds": {"fuse F1 10A\nbattery G1\nwire 1 A B\n", "fuse    F1  10A\nbattery G1\nwire 1  A  B\n"},
		"a blank line or a comment parts blocks": {
			"wire 1 A B\n\nwire 100 A B\n# x\nwire 2000 A B\n", "wire 1  A  B\n\nwire 100  A  B\n# x\nwire 2000  A  B\n",
		},
		"a setting stays with its figures": {"motor M1 at bay draws 8A 13V sheet needs 9V when crank in A2",
			"motor M1  at bay  draws 8A 13V sheet  needs 9V when crank  in A2\n"},
		"a figure joins its unit":           {"motor M1 draws 8.5 A 13.5 V", "motor M1  draws 8.5A 13.5V\n"},
		"feet and inches join":              {"leg a b 9 ft 6 in tape\nleg 3 m 4 m", "leg a  b  9ft6in  tape\nleg 3  m  4m\n"},
		"a box is no inch":                  {"fuse F1 15 in A2", "fuse F1  15  in A2\n"},
		"a name joins nothing":              {"wire 15 A V\nfuse 3 A\nbus 1 30 A", "wire 15  A  V\nfuse 3  A\nbus 1  30 A\n"},
		"key positions":                     {"keyswitch S1\n run 30 15 A\n gap 30 lasts 12 ms", "keyswitch S1\n  run  30 15 A\n  gap  30  lasts 12ms\n"},
		"a faulty line is kept":             {"wire 1  A   B\nwire   2 A  = B  \t\nwire 300 C D\n", "wire 1  A  B\nwire   2 A  = B  \t\nwire 300  C  D\n"},
		"a faulty line keeps all indents":   {"a\n    b  c\n    d  = e\n    f  g\n", "a\n    b c\n    d  = e\n    f g\n"},
		"a faulty indent keeps all indents": {"a\n    b  1\n  c\n", "a\n    b 1\n  c\n"},
		"a lone carriage return stays":      {"a \r", "a \r\r\n"},
		"comments keep their level": {
			"#  top\na\n    # of a\n    b\n    # of b's row\n# of c\nc\n   # below c\n", "#  top\na\n  # of a\n  b\n  # of b's row\n# of c\nc\n  # below c\n",
		},
	} {
		t.Run(name, func(t *testing.T) { require.Equal(t, c.want, tidied(t, c.src)) })
	}
}

func TestTidyLeavesLongLinesOutOfTheBlock(t *testing.T) {
	long := `"` + strings.Repeat("x", 100) + `"`
	got := tidied(t, "lamp P1 \"a\" 5W\nlamp P2000 "+long+" 5W\nlamp P30 \"bcd\" 5W\n")
	require.Equal(t, "lamp P1   \"a\"    5W\nlamp P2000  "+long+"  5W\nlamp P30  \"bcd\"  5W\n", got)

	// Alone either line fits; in common columns the second would be 103 wide.
	wide := strings.Repeat("y", 60)
	got = tidied(t, "lamp "+wide+" 5W\nlamp P2 "+strings.Repeat("z", 36)+"\n")
	for _, line := range strings.Split(got, "\n") {
		require.LessOrEqual(t, len(line), 100)
	}
}
