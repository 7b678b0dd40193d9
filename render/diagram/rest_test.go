package diagram_test

import (
	"slices"
	"strings"
	"testing"

	"legwork/render/diagram"
	"legwork/render/scene"

	"github.com/stretchr/testify/require"
)

const restDraft = `draft 1
metal frame
battery G1 grounds-to frame
keyswitch S9
  off B ACC
  run B IGN
fuse F1 5A
fuse F2 5A
switch S1 closed when off, acc, koeo
switch S2 closed when running
switch S3 closed
switch S4 open
switch S5 change-over closed when off
switch S6 change-over closed when running
relay K1 change-over
lamp P1 grounds-to frame
lamp P2 grounds-to frame
lamp P3 grounds-to frame
lamp P4 grounds-to frame
lamp P5 grounds-to frame
lamp P6 grounds-to frame
lamp P7 grounds-to frame
circuit a "A"
  wire 1 G1.+ S9.B
  wire 2 S9.ACC F1.1
  wire 3 S9.IGN F2.1
  wire 4 F1.2 S1.1
  wire 5 F1.2 S2.1
  wire 6 F1.2 S3.1
  wire 7 F1.2 S4.1
  wire 8 F1.2 S5.COM
  wire 9 F1.2 S6.COM
  wire 10 F2.2 K1.30
  wire 11 S1.2 P1.1
  wire 12 S2.2 P2.1
  wire 13 S3.2 P3.1
  wire 14 S4.2 P4.1
  wire 15 S5.NO P5.1
  wire 16 S6.NC P6.1
  wire 17 K1.87a P7.1
`

// bold counts the bold strokes of a device: its closed blades.
func bold(sheets []diagram.Sheet, dev string) int {
	n := 0
	for _, s := range sheets {
		s.Scene.Walk(func(g *scene.Node) {
			if g.Class != "dev" || g.Get("dev") != dev {
				return
			}
			for _, k := range g.Kids {
				if slices.Contains(strings.Fields(k.Class), "syb") {
					n++
				}
			}
		})
	}
	return n
}

// Contacts stand as in off with no volts: what the draft closes in off is
// drawn closed, a key switch joins what its position off joins, relays rest.
func TestContactsStandAsInOff(t *testing.T) {
	m := build(t, "rest.draft", restDraft)
	sheets := draw(t, m)
	require.Empty(t, judged(t, m, sheets).errors)
	for dev, closed := range map[string]int{"S1": 1, "S2": 0, "S3": 1, "S4": 0, "S5": 1, "S6": 0, "K1": 0, "S9": 1} {
		require.Equal(t, closed, bold(sheets, dev), dev)
	}
}
