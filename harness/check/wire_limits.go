package check

import (
	"legwork/gauge"
	"legwork/harness/diag"
	"legwork/harness/size"
)

// failing calls f for every wire whose judged floor of that name fails on
// figures that may decide.
func (p *Pass) failing(floor string, f func(w size.Wire, l gauge.Limit)) {
	for _, w := range p.Sizes.Wires {
		for _, l := range w.Judgement.Limits {
			if l.Name == floor && !l.OK && !l.Hint {
				f(w, l)
			}
		}
	}
}

// sizeSpan is the word to change: the size that the draft gives, or the
// wire's number.
func sizeSpan(w size.Wire) diag.Span {
	if !w.Wire.SizeAt.IsZero() {
		return w.Wire.SizeAt
	}
	return w.Wire.At
}
