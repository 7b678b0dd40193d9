package deck

import (
	"fmt"
	"math"
	"slices"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness/solve"
)

// inventedNetworks is how many generated networks are played.
const inventedNetworks = 300

// ratioKept is the ratio of conductances up to which the simulator is asked for
// nine digits; where more has to be bridged, exact arithmetic judges both.
const ratioKept = 1e6

// row is what came out for a group of networks.
type row struct {
	group             string
	networks, nodes   int
	decks             int
	compared          int     // readings held against the simulator
	worstV, worstRel  float64 // among them
	weak              int     // readings beyond ratioKept, held against exact arithmetic
	weakV, weakRel    float64 // ours against exact
	simV              float64 // the simulator's against exact, there
	contacts          int
	silent, order     []string // steps that an operating point does not decide
	chatter, disagree []string
	collapsed         int
	frozenMissing     []string
}

func rowOf(rows []*row, n *network) ([]*row, *row) {
	if len(rows) == 0 || rows[len(rows)-1].group != n.group {
		rows = append(rows, &row{group: n.group})
	}
	r := rows[len(rows)-1]
	r.networks++
	r.nodes = max(r.nodes, n.decks.points.count)
	return rows, r
}

// frozenDecks are the decks of all steps of all networks.
func frozenDecks(t *testing.T, list []*network) []string {
	var decks []string
	for _, n := range list {
		for i := range n.hist.States {
			decks = append(decks, written(t, n.decks.Frozen(i)))
		}
	}
	return decks
}

// compare takes the simulator's answer for one step into the row.
func (r *row) compare(n *network, step int, a answer) {
	s := n.hist.States[step]
	r.decks++
	r.collapsed += len(s.Collapsed)
	if len(s.Chatter) > 0 {
		r.chatter = append(r.chatter, fmt.Sprintf("%s %s: %s", n.name, s.Step.Name, relays(n.hist, s.Chatter)))
	}
	if !a.found() {
		r.frozenMissing = append(r.frozenMissing, n.name+" "+s.Step.Name)
		return
	}
	k, volts := n.decks.Frozen(step), n.volts(s)
	lines, slopes := k.straighten(s, volts)
	ratio := ratios(n.decks.points.count, lines, slopes)
	var judge []float64
	kept := !slices.ContainsFunc(ratio, func(x float64) bool { return x > ratioKept && !math.IsInf(x, 1) })
	for node, v := range volts {
		want := a.volts[nodeName(node)]
		switch {
		case math.IsNaN(v) || math.IsInf(ratio[node], 1):
		case kept || ratio[node] <= ratioKept && relative(v, want) <= 1e-9:
			r.compared++
			r.worstV, r.worstRel = max(r.worstV, math.Abs(v-want)), max(r.worstRel, relative(v, want))
		default:
			if judge == nil {
				judge = n.judge(lines, ratio)
			}
			r.weak++
			r.weakV, r.weakRel = max(r.weakV, math.Abs(v-judge[node])), max(r.weakRel, relative(v, judge[node]))
			r.simV = max(r.simV, math.Abs(want-judge[node]))
		}
	}
}

// relative is a difference against the larger of the two and 1 V: the bar is a
// billionth of the volts, or a billionth of a volt.
func relative(a, b float64) float64 {
	return math.Abs(a-b) / max(1, math.Abs(a), math.Abs(b))
}

// judge gives the volts of all nodes by exact arithmetic.
func (n *network) judge(lines []straight, ratio []float64) []float64 {
	held := make([]bool, len(ratio))
	for i, r := range ratio {
		held[i] = !math.IsInf(r, 1)
	}
	volts := make([]float64, len(ratio))
	for i, v := range exact(len(ratio), lines, held) {
		if v != nil {
			volts[i], _ = v.Float64()
		}
	}
	return volts
}

// volts are those of a state by node, NaN where it floats or nothing is wired.
func (n *network) volts(s *solve.State) []float64 {
	volts := make([]float64, n.decks.points.count)
	for i := range volts {
		volts[i] = math.NaN()
	}
	volts[0] = 0
	for _, t := range n.hist.Model.Terminals {
		volts[n.decks.points.terminal[t.ID]] = s.Volts[t.ID]
	}
	return volts
}

func relays(h *solve.History, list []int) string {
	text := ""
	for i, r := range list {
		if i > 0 {
			text += ", "
		}
		text += h.Relays[r].Name
	}
	return text
}

// TestAgainstSimulator is the second oracle: the model, as written for a
// circuit simulator, gives the same volts and the same contacts.
func TestAgainstSimulator(t *testing.T) {
	list := append(shipped(t), invented(t, inventedNetworks)...)
	path := simulator(t)
	if path == "" {
		t.Log("there is no ngspice here: compared with its recorded answers")
		compareNetworks(t, list)
		return
	}
	answers := simulate(t, path, frozenDecks(t, list))
	players := play(t, path, list)
	trials := try(t, path, players)
	var rows []*row
	var r *row
	at := 0
	for i, n := range list {
		rows, r = rowOf(rows, n)
		for step := range n.hist.States {
			r.compare(n, step, answers[at])
			at++
		}
		r.contact(players[i], trials)
	}
	for _, r := range rows {
		require.Empty(t, r.frozenMissing, r.group)
		require.LessOrEqual(t, r.worstRel, 1e-9, r.group)
		require.LessOrEqual(t, r.weakRel, 1e-8, r.group)
		require.Empty(t, r.disagree, r.group)
	}
	if *update {
		recordNetworks(t, list, answers)
	}
	accuracyPage(t, rows)
}

// contact takes the played contacts of a network into the row.
func (r *row) contact(p *player, trials []*trial) {
	r.contacts += p.checked
	for _, step := range p.silent {
		r.silent = append(r.silent, p.name+" "+p.hist.States[step].Step.Name)
	}
	for _, step := range p.differ {
		r.order = append(r.order, p.name+" "+p.hist.States[step].Step.Name)
	}
	for _, x := range trials {
		if x.player == p && !x.agrees() {
			r.disagree = append(r.disagree, p.name+" "+p.hist.States[x.k.Step].Step.Name)
		}
	}
}
