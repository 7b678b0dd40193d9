package part

import (
	"legwork/harness/quantity"
)

// Good is a part of the shelf that is no device: what wires are finished with.
type Good struct {
	Name     string // word of the draft: "terminal"
	Title    string
	Example  string
	Settings []Setting
}

// Goods lists what the shelf holds besides devices, by name.
func Goods() []*Good { return []*Good{&sealGood, &terminalGood} }

// GoodOf gives the good with that word; ok is false if there is none.
func GoodOf(name string) (g *Good, ok bool) {
	for _, g := range Goods() {
		if g.Name == name {
			return g, true
		}
	}
	return nil, false
}

var terminalGood = Good{
	Name:    "terminal",
	Title:   "A crimp terminal: a blade, its receptacle, a pin, a socket, or a ring where it has a thread.",
	Example: "part terminal receptacle-63-14 blade 6.3mm wire 16AWG 14AWG insulation 2.2mm 3.4mm strip 5mm",
	Settings: []Setting{
		named("wire", "thinnest and thickest conductor that its barrel takes, by gauge",
			Figure{Name: "thinnest", Dim: quantity.Gauge, Min: -3, Max: 30, Doc: "thinnest gauge"},
			Figure{Name: "thickest", Dim: quantity.Gauge, Min: -3, Max: 30, Doc: "thickest gauge"}),
		named("area", "thinnest and thickest conductor that its barrel takes, by area",
			Figure{Name: "thinnest", Dim: quantity.Area, Min: 0.05, Max: 240, Doc: "thinnest area"},
			Figure{Name: "thickest", Dim: quantity.Area, Min: 0.05, Max: 240, Doc: "thickest area"}),
		insulationSetting("outside of the insulation that its grip takes, least and most"),
		named("strip", "length to strip", Figure{Name: "length", Dim: quantity.Length, Min: 0.001, Max: 0.1, Doc: "strip length"}),
		named("blade", "width of the blade that it is or takes", Figure{Name: "width", Dim: quantity.Length, Min: 0.0003, Max: 0.02, Doc: "blade width"}),
		bare("thread", "a ring for this thread: M8", Figure{Name: "thread", Dim: quantity.Thread, Min: 2, Max: 20, Doc: "thread"}),
		bare("diameter", "a ring for this thread in inches: 1/4in", Figure{Name: "diameter", Dim: quantity.Length, Min: 0.002, Max: 0.02, Doc: "thread diameter"}),
	},
}

var sealGood = Good{
	Name:     "seal",
	Title:    "A seal around one wire in a sealed plug.",
	Example:  "part seal seal-green insulation 1.4mm 2.2mm",
	Settings: []Setting{must(insulationSetting("outside of the insulation that it closes around, least and most"))},
}

func insulationSetting(doc string) Setting {
	return named("insulation", doc,
		Figure{Name: "least", Dim: quantity.Length, Min: 0.0003, Max: 0.05, Doc: "least outside diameter"},
		Figure{Name: "most", Dim: quantity.Length, Min: 0.0003, Max: 0.05, Doc: "most outside diameter"})
}

func must(s Setting) Setting { s.Must = true; return s }
