package diagram_test

import (
	"strings"
	"testing"

	"legwork/render/scene"

	"github.com/stretchr/testify/require"
)

// Every color that a draft may say is drawn in a paint of its own, none as the
// gray of what is unknown: the letters of IEC 60757 and TN (tan), which shops
// write. GNYE is the pair of green and yellow.
func TestEveryColorIsPainted(t *testing.T) {
	for word, want := range map[string][]string{
		"BK": {"cBK"}, "BN": {"cBN"}, "RD": {"cRD"}, "OG": {"cOG"}, "YE": {"cYE"}, "GN": {"cGN"}, "BU": {"cBU"}, "VT": {"cVT"},
		"GY": {"cGY"}, "WH": {"cWH"}, "PK": {"cPK"}, "TQ": {"cTQ"}, "GD": {"cGD"}, "SR": {"cSR"}, "TN": {"cTN"}, "TAN": {"cTN"},
		"TN/WH": {"cTN", "cWH"}, "RD/TN": {"cRD", "cTN"}, "GNYE": {"cGN", "cYE"},
	} {
		src := strings.Replace(source(t, "least.draft"), "S1.1", "S1.1  "+word, 1)
		m := build(t, "painted "+word, src)
		var got []string
		for _, s := range drawOn(t, m, "a4") {
			s.Scene.Walk(func(n *scene.Node) {
				if n.Class != "wire" || n.Get("wire") != "2" {
					return
				}
				for _, k := range n.Kids {
					words := strings.Fields(k.Class)
					if words[0] == "ins" || words[0] == "tr" {
						require.Contains(t, styled(s.Scene), words[2], word)
						got = append(got, words[2])
					}
				}
			})
		}
		require.Equal(t, want, got, word)
	}
}

// styled lists the classes that have a stroke of their own.
func styled(s *scene.Scene) []string {
	var out []string
	for _, k := range s.Styles {
		if k.Stroke != "" {
			out = append(out, k.Class)
		}
	}
	return out
}

// Over a rail with room its words are whole: what it is called, and when it
// is live.
func TestRailSaysWhenItIsLive(t *testing.T) {
	for _, draft := range []string{"orchard-truck.draft", "utility-trailer.draft"} {
		found := 0
		for _, s := range drawOn(t, build(t, draft, source(t, draft)), "a3") {
			s.Scene.Walk(func(n *scene.Node) {
				if n.Class == "about" && strings.Contains(n.Kids[0].Text, ": always live") {
					found++
				}
			})
		}
		require.NotZero(t, found, draft)
	}
}
