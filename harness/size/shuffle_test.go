package size

import (
	"math/rand/v2"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// sizesByNumber sizes a draft and gives the size of every wire.
func sizesByNumber(t *testing.T, src string) map[string]string {
	t.Helper()
	c := settled(t, src)
	list := map[string]string{}
	for _, w := range c.m.Wires {
		list[w.Number] = c.now(w).Size.Name
	}
	return list
}

// shuffled changes the order of a draft's statements; an indented line stays
// with the one above it, and the first stays first.
func shuffled(rng *rand.Rand, src string) string {
	var blocks []string
	for _, line := range strings.SplitAfter(src, "\n") {
		if strings.HasPrefix(line, " ") {
			blocks[len(blocks)-1] += line
			continue
		}
		blocks = append(blocks, line)
	}
	rest := blocks[1:]
	rng.Shuffle(len(rest), func(i, j int) { rest[i], rest[j] = rest[j], rest[i] })
	return strings.Join(blocks, "")
}

// Of wires that are alike, as three equal ones in a row are, the same one
// grows in whatever order the draft tells them.
func TestSizesDoNotHangOnTheOrderOfTheDraft(t *testing.T) {
	rng := rand.New(rand.NewPCG(5, 3))
	list := []string{`draft 1
battery G1 cca 600A grounds-to frame
fuse F1 10A from G1 6in
wire 90 G1.+ F1.1 8AWG 6in
splice J1
splice J2
motor M1 draws 7.3A 13.5V grounds-to frame
wire 1 F1.2 J1 12ft
wire 2 J1 J2 12ft
wire 3 J2 M1.+ 12ft
`, `draft 1
battery G1 cca 600A grounds-to frame
fuse F1 20A from G1 6in
wire 90 G1.+ F1.1 8AWG 6in
splice J1
lamp P1 55W 13.5V grounds-to frame
lamp P2 55W 13.5V grounds-to frame
wire 1 F1.2 J1 14ft
wire 2 J1 P1.1 14ft
wire 3 J1 P2.1 14ft
`}
	for range 150 {
		list = append(list, newOracleNet(rng).text.String())
	}
	for _, src := range list {
		want := sizesByNumber(t, src)
		for range 3 {
			require.Equal(t, want, sizesByNumber(t, shuffled(rng, src)), src)
		}
	}
}
