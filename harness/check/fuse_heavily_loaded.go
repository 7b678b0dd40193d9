package check

import (
	"fmt"
	"math"

	"legwork/gauge"
	"legwork/harness/diag"
	"legwork/harness/part"
	"legwork/harness/quantity"
	"legwork/harness/size"
	"legwork/harness/solve"
)

var _ = define(Rule{
	ID:       "fuse-heavily-loaded",
	Severity: diag.Warning,
	Title:    "A load is too close to the rating of its fuse.",
	Why: "A fuse warms with its load and ages when it is hot; held near its rating it opens one day for no reason, usually far from home. " +
		"Keep the steady load at four fifths of the rating or less. A load above the rating is a fault: the fuse will open. " +
		"Where more flows than the loads behind it draw, a larger fuse only feeds what takes the rest.",
	Equation: "steady load <= 80 % of the rating (road)",
	Figures:  []string{"load-on-fuse"},
	Misses:   "Inrush, and a fuse box hotter than its place: a fuse at 85 C carries about an eighth less.",
	Needs:    States,
	Bad: `battery G1  cca 540A  grounds-to frame
fuse    F1  5A  from G1 6in
heater  R1  draws 4.5A 13.5V  grounds-to frame
wire 1  G1.+  F1.1  14AWG  6in
wire 2  F1.2  R1.1  14AWG  4ft
`,
	Good: `battery G1  cca 540A  grounds-to frame
fuse    F1  7.5A  from G1 6in
heater  R1  draws 4.5A 13.5V  grounds-to frame
wire 1  G1.+  F1.1  14AWG  6in
wire 2  F1.2  R1.1  14AWG  4ft
`,
	Run: fuseHeavilyLoaded,
})

func fuseHeavilyLoaded(p *Pass) {
	for _, f := range p.Sizes.Fuses {
		limit := p.Profile.LoadOfFuse * f.RatedA
		if f.RatedA <= 0 || f.LoadA <= limit*(1+rounding) {
			continue
		}
		out := diag.Finding{
			At: f.Device.Protects()[f.Index].At,
			Msg: fmt.Sprintf("%s is rated %s and carries %s in %s, %.0f %% of it", f.Device.Name,
				quantity.Text(f.RatedA, quantity.Current), quantity.Text(f.LoadA, quantity.Current), f.At, 100*f.LoadA/f.RatedA),
			Detail: p.lighten(f),
			Values: []diag.Value{{Name: "load", Got: f.LoadA, Limit: limit, Unit: "A", Bound: diag.AtMost}},
		}
		if f.LoadA > f.RatedA {
			out.Severity = diag.Fault
		}
		out.Fix = p.largerFuse(f)
		p.Report(out)
	}
}

// rounding is what the solving of currents may add: 80 A on 100 A is 80 %.
const rounding = 1e-6

// unknown is the share of a fuse's current from which it counts that no load
// behind the fuse takes it.
const unknown = 0.1

// lighten says what to do about a fuse's load: nothing that would feed a
// current of which the draft has no load.
func (p *Pass) lighten(f size.Fuse) string {
	s := p.Sizes.Hot.Step(f.At)
	if s == nil {
		return "Fit a larger fuse if every wire behind it carries that."
	}
	known := p.drawnBehind(s, f)
	if f.LoadA-known > unknown*f.LoadA {
		return fmt.Sprintf("The loads behind it draw %s of that: find what takes the rest. A larger fuse would only feed it.",
			quantity.Text(known, quantity.Current))
	}
	return "Fit a larger fuse if every wire behind it carries that, or part the load over two fuses."
}

// drawnBehind adds up what loads and coils behind a fuse draw in a step, the
// one with the largest peak at it.
func (p *Pass) drawnBehind(s *solve.State, f size.Fuse) float64 {
	el := f.Device.Protects()[f.Index]
	from, to := el.In, el.Out
	if s.FuseA.Of(f.Device, f.Index) < 0 {
		from, to = to, from
	}
	sum, peak := 0.0, 0.0
	for _, l := range p.loadsOf(f.Device, from, to) {
		amps := math.Abs(s.DrawA.Of(l.device, l.index))
		sum += amps
		if w := l.device.Draws()[l.index]; amps > 0 && w.PeakA > 0 {
			peak = math.Max(peak, w.ExtraA(amps))
		}
	}
	beyond := p.graph().beyond(p.graph().on, p.netOf(f.Device, to), f.Device)
	for i, r := range p.Sizes.Hot.Relays {
		for _, c := range coils(r.Device) {
			if r.Kind == part.RelayState && r.CoilOhm > 0 && (beyond[p.netOf(r.Device, c.A)] || beyond[p.netOf(r.Device, c.B)]) {
				sum += math.Abs(s.Relay[i].Volts) / gauge.CopperAt(r.CoilOhm, s.Relay[i].CoilC)
			}
		}
	}
	return sum + peak
}
