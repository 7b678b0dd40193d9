package part

import (
	"legwork/gauge"
	"legwork/harness/circuit"
	"legwork/harness/quantity"
)

// closedOhm stands for a way through that has no resistance of its own but
// has to open and close, so that it cannot be merged.
const closedOhm = 1e-5

// Ranges that several kinds share.
const (
	maxA   = 5000.0
	maxOhm = 1e7
)

func amps(name, doc string) Figure {
	return Figure{Name: name, Dim: quantity.Current, Min: 0, Max: maxA, Doc: doc}
}

func volts(name, doc string) Figure {
	return Figure{Name: name, Dim: quantity.Voltage, Min: 0, Max: 60, Doc: doc}
}

func ohms(name, doc string) Figure {
	return Figure{Name: name, Dim: quantity.Resistance, Min: 1e-4, Max: maxOhm, Doc: doc}
}

func seconds(name, doc string, most float64) Figure {
	return Figure{Name: name, Dim: quantity.Time, Min: 0, Max: most, Doc: doc}
}

func percent(name, doc string) Figure {
	return Figure{Name: name, Dim: quantity.Percent, Min: 0, Max: 100, Doc: doc}
}

// or gives the figure a default with the source it comes from.
func (f Figure) or(v float64, source string) Figure {
	f.Default, f.HasDefault, f.Source = v, true, source
	return f
}

// guess is or for a default that is listed among the guesses.
func (f Figure) guess(v float64, source string) Figure {
	f = f.or(v, source)
	f.Guess = true
	return f
}

// optional lets the figure be left out.
func (f Figure) optional() Figure { f.Optional = true; return f }

// by sets how the default follows the system's volts.
func (f Figure) by(s Scale) Figure { f.Scale = s; return f }

// named is a setting that is said by its name.
func named(name, doc string, figures ...Figure) Setting {
	return Setting{Name: name, Doc: doc, Figures: figures}
}

// bare is a setting that is recognized by the unit of its first figure.
func bare(name, doc string, figures ...Figure) Setting {
	return Setting{Name: name, Bare: true, Doc: doc, Figures: figures}
}

// oneOf is a bare word of a closed set; the first is the default.
func oneOf(name, doc string, words ...string) Setting {
	return Setting{Name: name, Bare: true, Doc: doc, Words: words, Default: words[0]}
}

// flag is a setting without a value.
func flag(name, doc string) Setting { return Setting{Name: name, Doc: doc} }

// resistor is the law of a plain resistance.
func resistor(ohm float64) circuit.Law {
	return circuit.Law{Kind: circuit.Resistor, Ohm: max(ohm, closedOhm)}
}

// leak is what an off device lets through.
func leak() circuit.Law {
	return circuit.Law{Kind: circuit.Resistor, Ohm: gauge.OffLeakOhm}
}

// counts reports whether a figure of that confidence counts at this grade.
func (s *Stamper) counts(c gauge.Confidence) bool { return s.Grade == Nominal || c.MayDecide() }

// contactOhm is the resistance of a key or switch contact: what the draft
// states, else a low figure, so only a nominal one.
func (s *Stamper) contactOhm(d *Device) float64 {
	if ohm := d.Num("contact-resistance"); ohm > 0 {
		return ohm
	}
	if s.counts(gauge.Low) {
		return gauge.SwitchContactOhm
	}
	return closedOhm
}
