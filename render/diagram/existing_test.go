package diagram_test

import (
	"strings"
	"testing"

	"legwork/harness/diag"
	"legwork/harness/draft"
	"legwork/harness/model"
	"legwork/render/diagram"
	"legwork/render/scene"

	"github.com/stretchr/testify/require"
)

const existingDraft = `draft 1
option winch "Front winch"
option beacon
metal frame
battery G1 existing grounds-to frame
fuse F1 15A existing
fuse F2 20A
switch S1 existing closed when running
lamp P1 21W led existing grounds-to frame
lamp P2 21W grounds-to frame option winch
lamp P3 21W grounds-to frame option beacon
cap X9
module A1 "Speed controller"
  plug A 12way
  BAT feed 0.2A when running at A.1
  SPEED input at A.7
  LOW sensor-ground at A.8
  GND ground at A.12
sensor B2 "Speed sensor"
stud E1 on frame
splice J1 existing
wire 1 G1.+ F1.1 16AWG existing
wire 2 F1.2 S1.1 16AWG RD/WH existing
wire 3 S1.2 P1.1 16AWG existing
wire 4 G1.+ F2.1
wire 5 F2.2 P2.1 option winch
wire 6 F2.2 P3.1 option beacon
wire 7 F2.2 A1.BAT
wire 8 A1.GND E1
wire 9 P1.1 X9 16AWG existing
wire 10 F2.2 J1
wire 11 J1 open
cable 300 20AWG shielded twisted
  core 301 A1.SPEED B2.S
  core 302 A1.LOW B2.-
  drain 303 A1.LOW open
`

func buildWith(t *testing.T, src string, with ...string) *model.Model {
	t.Helper()
	f, _ := draft.Parse("old.draft", []byte(src))
	m, found := model.BuildWith(f, model.Setup{With: with})
	for _, x := range found {
		require.Less(t, x.Severity, diag.Fault, x.Msg)
	}
	require.NotNil(t, m)
	return m
}

// words gives all texts of the sheets in one string, one a line.
func words(sheets []diagram.Sheet) string {
	var b strings.Builder
	for _, s := range sheets {
		s.Scene.Walk(func(n *scene.Node) {
			if n.Shape == scene.Text {
				b.WriteString(n.Text + "\n")
			}
		})
	}
	return b.String()
}

// What is there already is dashed, what is new is not.
func TestExistingIsDashed(t *testing.T) {
	m := buildWith(t, existingDraft, "winch")
	sheets := draw(t, m)
	require.Empty(t, judged(t, m, sheets).errors)
	require.NoError(t, numbers(m, sheets))
	for _, w := range m.Wires {
		for _, k := range find(sheets, "wire", "wire", w.Number).Kids {
			if painted := strings.HasPrefix(k.Class, "case ") || strings.HasPrefix(k.Class, "ins ") || strings.HasPrefix(k.Class, "tr "); painted {
				require.Equal(t, w.Existing, strings.HasSuffix(k.Class, " ex"), "wire %s: %s", w.Number, k.Class)
			}
		}
	}
	for dev, old := range map[string]bool{"G1": true, "F1": true, "S1": true, "P1": true, "F2": false, "P2": false, "B2": false} {
		n := 0
		for _, k := range find(sheets, "dev", "dev", dev).Kids {
			if strings.HasSuffix(k.Class, " exs") {
				n++
			}
		}
		require.Equal(t, old, n > 0, dev)
	}
	require.Contains(t, words(sheets), "Dashed: existing.")
	require.NotContains(t, words(draw(t, build(t, "l", source(t, "least.draft")))), "Dashed")
}

// What is not fitted is not drawn, and the title block says so.
func TestOptionsInTheTitleBlock(t *testing.T) {
	m := buildWith(t, existingDraft, "winch")
	sheets := draw(t, m)
	require.NotNil(t, find(sheets, "dev", "dev", "P2"))
	require.Nil(t, find(sheets, "dev", "dev", "P3"))
	require.Contains(t, words(sheets), "Options: with winch; without beacon\n")
	require.Contains(t, words(draw(t, buildWith(t, existingDraft))), "Options: without winch, beacon\n")
}

// Caps and bare ends have symbols, and only caps with a name of their own are
// in the index; pins say their cavities; cores are ringed and the drain is
// tied to the ring.
func TestEndsCavitiesAndCables(t *testing.T) {
	m := buildWith(t, existingDraft)
	sheets := draw(t, m)
	require.NotNil(t, find(sheets, "dev", "dev", "X9"))
	require.NotNil(t, find(sheets, "dev", "dev", "303.open"))
	text := words(sheets)
	require.Contains(t, text, "\nopen\n")
	require.NotContains(t, text, "303.open")
	require.Contains(t, text, "A.7 input\n")
	require.Contains(t, text, "20 drain\n")
	require.Contains(t, text, "shielded, twisted\n")
	ties, cores := 0, 0
	for _, s := range sheets {
		s.Scene.Walk(func(n *scene.Node) {
			if n.Class == "cable" && n.Get("cable") == "300" {
				for _, k := range n.Kids {
					if k.Class == "syf" {
						ties++
					} else {
						require.Contains(t, k.Class, "link")
					}
				}
				cores++
			}
		})
	}
	require.Equal(t, 1, ties, "one drain")
	require.NotZero(t, cores)
}

// Spare cavities are named where their plug is drawn; a cavity with a wire on
// one side is none.
func TestSpareCavitiesAreNamed(t *testing.T) {
	const src = `draft 1
metal frame
battery G1 grounds-to frame
fuse F1 10A
connector X1 8way
  half loom pins
  half bed sockets
  spare loom.3 loom.4 bed.3 bed.4 loom.7 bed.7 loom.2
lamp P1 grounds-to frame
wire 1 G1.+ F1.1
wire 2 F1.2 X1.loom.1
wire 3 X1.bed.1 P1.1
wire 4 X1.bed.2 open
`
	text := words(draw(t, buildWith(t, src)))
	require.Contains(t, text, "Spare cavities\nX1\n3-4, 7\n")
	require.NotContains(t, words(draw(t, build(t, "l", source(t, "least.draft")))), "Spare")
}
