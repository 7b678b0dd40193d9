package part

import "legwork/gauge"

var _ = define(Kind{
	Name:  "coil",
	Title: "An ignition coil.",
	Law: "A resistance between + and -: rated volts / rated current, or as stated. The current is the average while it fires; the driver or the points that break it are part of what - is wired to. " +
		"Its kick is its purpose: whatever breaks the current has to stand it.",
	Letter:   "T",
	Settings: loadSettings(named("primary", "resistance of the primary winding", ohms("resistance", "primary resistance"))),
	Terminals: []Terminal{
		{Name: "+", Aliases: []string{"15"}, Doc: "feed"},
		{Name: "-", Aliases: []string{"1"}, Doc: "to the driver or points; the metal when the coil grounds to it"},
	},
	Ground: "-",
	Stamp: func(d *Device, s *Stamper) {
		s.Add(LoadElement, "+", "-", resistor(coilRating(d).ohm()), s.All())
	},
	Symbol: Symbol{
		Half: 4, Columns: 1, Row: LoadRow, Pins: upDown("+", "-", 4), Body: Box{X1: -1.1, Y1: -2.4, X2: 3.6, Y2: 2.2},
		Strokes: []Stroke{
			line(0, -4, 0, -2.1), arc(0, -2.1, 0, -0.7, 0.7, true), arc(0, -0.7, 0, 0.7, 0.7, true), arc(0, 0.7, 0, 2.1, 0.7, true), line(0, 2.1, 0, 4),
			line(1.15, -2.1, 1.15, 2.1), line(1.5, -2.1, 1.5, 2.1),
			arc(2.65, -2.1, 2.65, -0.7, 0.7, false), arc(2.65, -0.7, 2.65, 0.7, 0.7, false), arc(2.65, 0.7, 2.65, 2.1, 0.7, false),
			line(2.65, 2.1, 0, 2.1), dot(0, 2.1, 0.2), line(2.65, -2.1, 3.1, -2.1), line(3.1, -2.1, 3.1, -2.5), fill(2.85, -1.9, 3.35, -1.9, 3.1, -1.2),
		},
	},
	Assumes: func(d *Device) []Assumption {
		if d.Said("primary") {
			return nil
		}
		return usual(gauge.UsualCoilA, "usual-coil")(d)
	},
	Draws: func(d *Device) []Draw {
		w := d.draw(coilRating(d), "+", "-", ResistiveLoad)
		w.Critical = true
		return []Draw{w}
	},
	Buys: func(d *Device) []Purchase { return buy("ignition coil", d) },
})

// coilRating takes the primary's resistance before anything else.
func coilRating(d *Device) rating {
	if v := d.Value("primary"); v.Said && v.num(0) > 0 {
		rated := gauge.LampRatedV * d.scale()
		return rating{rated / v.num(0), rated, true, v}
	}
	return d.rated(gauge.UsualCoilA)
}
