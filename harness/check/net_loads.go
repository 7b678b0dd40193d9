package check

import (
	"legwork/harness/model"
	"legwork/harness/part"
)

// byNet lists the loads by the net that feeds them and by the net that they
// return to.
type byNet struct{ fed, led map[int][]behind }

func (p *Pass) drawsByNet() *byNet {
	if p.draws != nil {
		return p.draws
	}
	p.draws = &byNet{map[int][]behind{}, map[int][]behind{}}
	add := func(list map[int][]behind, d *model.Device, pin string, l behind) {
		if n := p.netOf(d, pin); n >= 0 {
			list[n] = append(list[n], l)
		}
	}
	p.eachDraw(func(d *model.Device, i int, w part.Draw) {
		l := behind{device: d, index: i, sort: w.Type}
		add(p.draws.fed, d, w.Plus, l)
		add(p.draws.led, d, w.Minus, l)
		if w.EitherWay {
			l.turned = true
			add(p.draws.fed, d, w.Minus, l)
			add(p.draws.led, d, w.Plus, l)
		}
	})
	return p.draws
}

func (p *Pass) eachStarter(f func(behind)) {
	p.eachDraw(func(d *model.Device, i int, w part.Draw) {
		if w.Starter {
			f(behind{device: d, index: i, sort: w.Type})
		}
	})
}
