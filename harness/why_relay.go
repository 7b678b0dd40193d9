package harness

import (
	"fmt"
	"strings"

	"legwork/gauge"
	"legwork/harness/part"
	"legwork/harness/quantity"
	"legwork/harness/shop"
	"legwork/harness/solve"
)

// relayGroups shows a relay, a solenoid or a module's being awake in the two
// corners that are judged.
func (r *Result) relayGroups(i int) []Group {
	if r.Sizes.Hot.Relays[i].Kind == part.AliveState {
		return []Group{aliveGroup("Awake, hot soak", r.Sizes.Hot, i), aliveGroup("Awake, cold start", r.Sizes.Cold, i)}
	}
	return []Group{
		pullLaw(r.Sizes.Hot.Relays[i]),
		coilGroup("hot soak", r.Sizes.Hot, i), coilGroup("cold start", r.Sizes.Cold, i),
	}
}

// pullLaw says at which volts a coil pulls in, and how heat moves them.
func pullLaw(relay solve.Relay) Group {
	steps := []gauge.Step{{Text: "surely in from", Value: relay.InAboveV, Unit: "V", Source: voltsSource(relay, relay.InAboveV, "relay-pull-in")}}
	if relay.PairSaid {
		steps = append(steps, gauge.Step{Text: "surely out below", Value: relay.OutBelowV, Unit: "V", Source: voltsSource(relay, relay.OutBelowV, "relay-pull-in")})
	}
	if relay.ReleaseV > 0 {
		steps = append(steps, gauge.Step{Text: "surely let go below", Value: relay.ReleaseV, Unit: "V", Source: voltsSource(relay, relay.ReleaseV, "relay-release")})
	}
	return Group{Title: relay.Name + ": volts of its coil at 20 C", Steps: append(steps,
		gauge.Step{Text: "at another coil temperature", Equation: "volts (234.5 + T)/254.5", Source: "relay-temperature"},
		gauge.Step{Text: "a coil that was on before is warmer than its place", Equation: "T = Ta + 52 K (V/12)^2", Source: "relay-coil-rise"},
	)}
}

// voltsSource finds out where a coil's volts come from: the draft, the default
// of the device's kind, or else the figures of the trade.
func voltsSource(relay solve.Relay, volts float64, usual string) string {
	for _, name := range []string{"pull-in", "release", "hold"} {
		v := relay.Device.Value(name)
		if v == nil || v.Setting == nil {
			continue
		}
		for i, f := range v.Setting.Figures {
			if f.Dim != quantity.Voltage || i >= len(v.Nums) || v.Nums[i] != volts {
				continue
			}
			if i < len(v.Set) && v.Set[i] {
				return "stated"
			}
			return f.Source
		}
	}
	return usual
}

// coilGroup lists the steps in which a coil is energized or its contact
// stands closed; the others are named in one line.
func coilGroup(corner string, h *solve.History, i int) Group {
	t := shop.Table{Columns: []shop.Column{
		{Key: "step", Name: "Step"},
		{Key: "state", Name: "It is"},
		{Key: "coil_v", Name: "coil", Unit: "V", Kind: shop.Number},
		{Key: "coil_c", Name: "coil", Unit: "C", Kind: shop.Number},
		{Key: "in_v", Name: "in from", Unit: "V", Kind: shop.Number},
		{Key: "out_v", Name: "out below", Unit: "V", Kind: shop.Number},
	}}
	var idle []string
	for _, s := range h.States {
		if s.Skipped != "" {
			continue
		}
		st := s.Relay[i]
		if !st.On && !st.Asked {
			idle = append(idle, s.Step.Name)
			continue
		}
		volts := st.Volts
		if st.PullV != 0 {
			volts = st.PullV
		}
		t.Rows = append(t.Rows, []shop.Cell{
			shop.Word(s.Step.Name), shop.Word(stands(st)), shop.Figure(volts, 2),
			shop.Figure(st.CoilC, 0), shop.Figure(st.InAboveV, 2), shop.Figure(st.OutBelowV, 2),
		})
	}
	g := Group{Title: h.Relays[i].Name + ", " + corner}
	if len(t.Rows) > 0 {
		g.Table = &t
		g.Steps = append(g.Steps, gauge.Step{Text: "coil volts as it pulls in, or settled where it is held in", Source: gauge.NodeLaw})
	}
	if len(idle) > 0 {
		g.Steps = append(g.Steps, gauge.Step{Text: "not energized in " + strings.Join(idle, ", ")})
	}
	return g
}

// stands says where a relay stands and how sure that is.
func stands(st solve.RelayState) string {
	switch {
	case !st.On:
		return "out, though energized"
	case st.Held:
		return "held in"
	case st.Zone == solve.NotSure:
		return "in, not surely"
	}
	return "in"
}

// aliveGroup lists the steps with the volts at the feed of a module that has
// the least margin.
func aliveGroup(title string, h *solve.History, i int) Group {
	t := shop.Table{Columns: []shop.Column{
		{Key: "step", Name: "Step"},
		{Key: "state", Name: "It is"},
		{Key: "feed_v", Name: "tightest feed", Unit: "V", Kind: shop.Number},
		{Key: "feed", Name: "Feed"},
	}}
	for _, s := range h.States {
		if s.Skipped != "" {
			continue
		}
		st := s.Relay[i]
		feed := ""
		if w := h.Relays[i].Watch; st.Short >= 0 && st.Short < len(w) {
			feed = fmt.Sprintf("%s, asks %.3g V", w[st.Short].Plus, w[st.Short].AtLeastV)
		}
		t.Rows = append(t.Rows, []shop.Cell{shop.Word(s.Step.Name), shop.Word(awake(st)), shop.Figure(st.Volts, 2), shop.Word(feed)})
	}
	return Group{Title: title, Steps: []gauge.Step{{Text: "each feed, between its pin and the module's ground", Source: gauge.NodeLaw}}, Table: &t}
}

func awake(st solve.RelayState) string {
	switch {
	case st.On && st.BridgedS > 0:
		return fmt.Sprintf("awake, bridging %.0f ms", 1000*st.BridgedS)
	case st.On:
		return "awake"
	case st.Lost:
		return "dropped out"
	}
	return "asleep"
}
