package harness

import (
	"fmt"
	"strings"

	"legwork/gauge"
	"legwork/harness/model"
	"legwork/harness/quantity"
	"legwork/harness/solve"
)

func (r *Result) whyDevice(d *model.Device) Working {
	title := d.Kind.Name + " " + d.Name
	if d.Label != "" {
		title += " (" + d.Label + ")"
	}
	out := Working{Title: title}
	for _, f := range r.Sizes.Fuses {
		if f.Device == d {
			out.Groups = append(out.Groups, r.whyFuse(d, f.Index)...)
		}
	}
	for i, relay := range r.Sizes.Hot.Relays {
		if relay.Device == d {
			out.Groups = append(out.Groups, relayGroup("hot soak", r.Sizes.Hot, i), relayGroup("cold start", r.Sizes.Cold, i))
		}
	}
	return withGroups(out, r.loadGroup(d), r.terminalGroup(d))
}

func (r *Result) whyFuse(d *model.Device, index int) []Group {
	var groups []Group
	for _, f := range r.Sizes.Fuses {
		if f.Device != d || f.Index != index {
			continue
		}
		rating := "rating, given by the draft"
		if f.Chosen {
			rating = "rating, chosen"
		}
		load := Group{Title: "Load and rating", Steps: []gauge.Step{
			{Text: "largest steady load, in " + f.At, Value: f.LoadA, Unit: "A"},
			{Text: rating, Value: f.RatedA, Unit: "A"},
		}}
		if f.LoadA == 0 {
			load.Steps[0].Text = "carries no current in any step"
		}
		load.Steps = append(load.Steps, f.Why...)
		groups = append(groups, load)
	}
	behind := Group{Title: "Wires that it protects"}
	for i, g := range r.Sizes.Guards {
		if g.Fuse == d && g.Index == index {
			w := r.Sizes.Wires[i]
			amps, steps, _ := gauge.Ampacity(w.Conductor.Size, w.Conductor.Family, r.Routes.Paths[i].HotC, 1)
			text := fmt.Sprintf("wire %s, %s: carries", w.Wire.Number, w.Conductor.Size.Name)
			behind.Steps = append(behind.Steps, gauge.Step{Text: text, Value: amps, Unit: "A", Source: lastSource(steps)})
		}
	}
	if len(behind.Steps) > 0 {
		groups = append(groups, behind)
	}
	return groups
}

func lastSource(steps []gauge.Step) string {
	for i := len(steps) - 1; i >= 0; i-- {
		if steps[i].Source != "" {
			return steps[i].Source
		}
	}
	return ""
}

func relayGroup(corner string, h *solve.History, i int) Group {
	g := Group{Title: h.Relays[i].Name + ", " + corner}
	for _, s := range h.States {
		if s.Skipped != "" {
			continue
		}
		st := s.Relay[i]
		text := s.Step.Name + ": " + onOff(st.On)
		if st.InAboveV > 0 && st.Asked {
			text += fmt.Sprintf(", coil at %.0f C pulls in surely from %s, surely not below %s", st.CoilC,
				quantity.Text(st.InAboveV, quantity.Voltage), quantity.Text(st.OutBelowV, quantity.Voltage))
		}
		g.Steps = append(g.Steps, gauge.Step{Text: text, Value: round(st.Volts, 1e-6), Unit: "V"})
	}
	return g
}

func onOff(on bool) string {
	if on {
		return "on"
	}
	return "off"
}

func (r *Result) loadGroup(d *model.Device) Group {
	g := Group{Title: "Drop"}
	if d.Kind.Draws == nil {
		return g
	}
	for i := range d.Kind.Draws(d.Device) {
		if p, ok := r.Sizes.WorstDrop(d, i); ok {
			g.Steps = append(g.Steps, gauge.Step{
				Text: fmt.Sprintf("worst in %s: %s of %s allowed, %s with usual contacts", p.Step.Name,
					quantity.Text(p.DropV, quantity.Voltage), quantity.Text(p.LimitV, quantity.Voltage), quantity.Text(p.UsualV, quantity.Voltage)),
				Equation: "(post to post) - (across the load)", Value: p.DropV, Unit: "V",
			})
		}
	}
	return g
}

// terminalGroup gives the volts of every terminal of a device, a line each.
func (r *Result) terminalGroup(d *model.Device) Group {
	g := Group{Title: "Volts at its terminals, usual case"}
	for _, t := range d.Terminals {
		var parts []string
		for _, s := range r.Sizes.Usual.States {
			if s.Skipped != "" {
				continue
			}
			if reading := s.Reading(t); reading.OK {
				parts = append(parts, fmt.Sprintf("%s %.2f", s.Step.Name, round(reading.Volts, 1e-6)))
			} else {
				parts = append(parts, s.Step.Name+" open")
			}
		}
		g.Steps = append(g.Steps, gauge.Step{Text: t.Shown + ": " + strings.Join(parts, ", ")})
	}
	return g
}
