package check

import (
	"fmt"

	"legwork/harness/diag"
	"legwork/harness/part"
	"legwork/harness/quantity"
)

var _ = define(Rule{
	ID:       "restart-in-key-gap",
	Severity: diag.Fault,
	Title:    "A controller loses its feed while the key travels from run to start.",
	Why: "Between run and start a key switch may open one contact before it closes the next. " +
		"A controller that is without its feed for longer than it can bridge restarts just as the engine begins to turn, " +
		"and loses the first revolutions or the whole start. " +
		"Feed it from a contact that stays closed through the gap, or join run and start with diodes.",
	Equation: "time bridged >= time that the key is between its contacts",
	Misses:   "Bounce of worn contacts. A gap that the draft does not state is taken as 50 ms between the contacts that run and crank share.",
	Needs:    States,
	Run:      restartInKeyGap,
})

func restartInKeyGap(p *Pass) {
	h := p.Sizes.Hot
	for _, s := range states(h) {
		if s.Step.LastS <= 0 || s.Step.Engine != part.Still {
			continue
		}
		for i, r := range h.Relays {
			if r.Kind != part.AliveState || !s.Relay[i].Lost {
				continue
			}
			p.Report(diag.Finding{
				At: r.Device.At,
				Msg: fmt.Sprintf("%s restarts in the key gap: it is without a feed for %s and bridges %s", r.Device.Name,
					quantity.Text(s.Step.LastS, quantity.Time), quantity.Text(r.HoldsS, quantity.Time)),
				Detail: "Take its feed from a contact that the gap keeps closed, or state how long it bridges a loss (holds).",
				Values: []diag.Value{{Name: "bridges", Got: 1000 * r.HoldsS, Limit: 1000 * s.Step.LastS, Unit: "ms", Bound: diag.AtLeast}},
			})
		}
	}
}
