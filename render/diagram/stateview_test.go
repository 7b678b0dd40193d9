package diagram_test

import (
	"context"
	"flag"
	"fmt"
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"legwork/harness"
	"legwork/harness/model"
	"legwork/harness/solve"
	"legwork/render/diagram"
	"legwork/render/scene"

	"github.com/stretchr/testify/require"
)

// stated draws a shipped draft in a step, with all that came of checking it.
func stated(t *testing.T, name, step, paper string) ([]diagram.Sheet, *harness.Result) {
	t.Helper()
	d := harness.Load(os.DirFS("../../testdata"), name)
	require.NoError(t, d.Err)
	r, err := d.Check(context.Background(), harness.Options{})
	require.NoError(t, err)
	sheets, _ := diagram.Schematic(diagram.Input{Model: r.Model, Routes: r.Routes, Sizes: r.Sizes, Paper: paper, Played: r.Sizes.Usual, Step: step})
	require.NotEmpty(t, sheets)
	return sheets, r
}

// stateSteps are three that differ in nearly every wire.
var stateSteps = []string{"off", "crank", "running"}

// The state view is held to the rules of the plain one, and every wire in it to
// what the solve says: 10 mA and more is a whole line, less a broken one; what
// is drawn live has volts, what is drawn as ground or dead has less than 1 V.
func TestStateViewOfShipped(t *testing.T) {
	for _, path := range shipped(t) {
		for _, step := range stateSteps {
			t.Run(filepath.Base(path)+" "+step, func(t *testing.T) {
				sheets, r := stated(t, filepath.Base(path), step, "a3")
				require.Empty(t, judged(t, r.Model, sheets).errors)
				require.NoError(t, numbers(r.Model, sheets))
				require.Empty(t, crowds(t, sheets))
				require.Empty(t, falseLines(r.Model, r.Sizes.Usual.Step(step), sheets))
			})
		}
	}
}

// falseLines lists the wires whose line says other than the state.
func falseLines(m *model.Model, st *solve.State, sheets []diagram.Sheet) []string {
	var out []string
	for _, w := range m.Wires {
		n := find(sheets, "wire", "wire", w.Number)
		if n == nil {
			continue
		}
		a, b := st.Shown(w.From), st.Shown(w.To)
		v, class := (a.Volts+b.Volts)/2, n.Get("state")
		flows := math.Abs(st.WireA[w.ID]) >= 0.01
		ok := flows == (class == "flow" || class == "back")
		switch class {
		case "live", "pull":
			ok = ok && a.OK && b.OK && v >= 1
		case "gnd":
			ok = ok && a.OK && math.Abs(v) < 1
		case "dead":
			ok = ok && (!a.OK || !b.OK || v < 1)
		}
		if !ok {
			out = append(out, w.Number+" is drawn as "+class)
		}
	}
	return out
}

// The comparison has to bite: the lines of one step are not those of another.
func TestFalseLinesBite(t *testing.T) {
	sheets, r := stated(t, "small.draft", "crank", "a3")
	require.Empty(t, falseLines(r.Model, r.Sizes.Usual.Step("crank"), sheets))
	require.NotEmpty(t, falseLines(r.Model, r.Sizes.Usual.Step("off"), sheets))
}

// Both views have the same paths: a reader goes from one to the other.
func TestStateViewKeepsThePaths(t *testing.T) {
	sheets, r := stated(t, "orchard-truck.draft", "crank", "a3")
	plain, _ := diagram.Schematic(diagram.Input{Model: r.Model, Routes: r.Routes, Sizes: r.Sizes, Paper: "a3"})
	require.Len(t, sheets, len(plain))
	for i := range plain {
		require.Equal(t, plain[i].Title, sheets[i].Title)
	}
	for _, w := range r.Model.Wires {
		require.Equal(t, find(plain, "wire", "wire", w.Number).Kids[0].Points, find(sheets, "wire", "wire", w.Number).Kids[0].Points, w.Number)
	}
	require.Equal(t, 3, countText(sheets, "State in step crank: hot, usual figures"), "in the title block of each sheet")
	require.Equal(t, 3, countText(sheets, "Reading this sheet: step crank"))
	require.Equal(t, 3, countText(sheets, "Contacts, outputs as then. Live rail: whole line."), "not cut")
	require.Zero(t, countText(plain, "Reading this sheet: step crank"))
}

func countText(sheets []diagram.Sheet, text string) int {
	n := 0
	for _, s := range sheets {
		s.Scene.Walk(func(k *scene.Node) {
			if k.Text == text {
				n++
			}
		})
	}
	return n
}

// The classes stay apart without color: no two share width, core and dashes.
func TestClassesDifferInForm(t *testing.T) {
	sheets, _ := stated(t, "small.draft", "crank", "a3")
	seen := map[string]string{}
	for _, class := range []string{"flow", "back", "live", "pull", "gnd", "dead"} {
		line, core := sheets[0].Scene.Look("ins s-"+class), sheets[0].Scene.Look("ins rs-"+class)
		form := fmt.Sprint(line.Dash, line.WidthMM, core.WidthMM)
		require.Empty(t, seen[form], class)
		seen[form] = class
		require.Positive(t, line.WidthMM, class)
	}
}

var update = flag.Bool("update", false, "write the golden drawing anew")

// The whole state view of a small draft, kept: testdata/small-crank.svg, made
// with go test ./render/diagram -run Golden -update and looked at.
func TestStateViewGolden(t *testing.T) {
	sheets, _ := stated(t, "small.draft", "crank", "a3")
	require.Len(t, sheets, 1)
	var b strings.Builder
	require.NoError(t, scene.WriteSVG(&b, sheets[0].Scene))
	if *update {
		require.NoError(t, os.MkdirAll("testdata", 0o755))
		require.NoError(t, os.WriteFile("testdata/small-crank.svg", []byte(b.String()), 0o644))
	}
	kept, err := os.ReadFile("testdata/small-crank.svg")
	require.NoError(t, err)
	require.True(t, string(kept) == b.String(), "the state view of small.draft is not as kept")
}

// A lit charge lamp carries current: its wires are whole lines, never those of
// a conductor without use. The truck's lamp is fed by the key and grounded by
// the alternator's D+ until the engine runs. An empty 87a
// (cavity 4 of K5) has no circle.
func TestLampAndEmptySocket(t *testing.T) {
	sheets, r := stated(t, "forestry-carrier.draft", "koeo", "a3")
	lit := 0
	for _, d := range r.Model.Devices {
		if d.Label != "Charge lamp" {
			continue
		}
		for _, q := range d.Terminals {
			for _, e := range q.Ends {
				lit++
				require.Contains(t, []string{"flow", "back"}, find(sheets, "wire", "wire", e.Wire.Number).Get("state"))
			}
		}
	}
	require.NotZero(t, lit)
	all := drawOn(t, r.Model, "a3")
	require.Nil(t, find(all, "term", "pin", "K5.4"))
	require.NotNil(t, find(all, "term", "pin", "K5.5"))
}

// What a controller joins inside it belongs to battery minus: the sensors of
// the carrier stand on its sensor ground, and the throttle's return carries the
// 10 mA that its track draws. Signals that nobody drives in the sums float.
func TestSensorGroundIsGround(t *testing.T) {
	sheets, _ := stated(t, "forestry-carrier.draft", "running", "a3")
	for wire, class := range map[string]string{"408": "gnd", "409": "back", "401": "flow", "432": "gnd", "460": "dead"} {
		require.Equal(t, class, find(sheets, "wire", "wire", wire).Get("state"), wire)
	}
	require.Equal(t, "floats", find(sheets, "wl", "wire", "460").Kids[1].Text)
	require.Equal(t, "ground", find(sheets, "wl", "wire", "408").Kids[1].Text)
}
