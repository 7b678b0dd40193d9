package part

import (
	"legwork/gauge"
	"legwork/harness/circuit"
	"legwork/harness/quantity"
)

var _ = define(Kind{
	Name:   "link",
	Title:  "A fusible link: a short piece of thin wire that melts first.",
	Law:    "Copper of its size and length: R = ohm per meter x length. It protects wire four gauge numbers thicker, and thicker ones still; a rating that its maker states counts before that.",
	Letter: "F",
	Settings: []Setting{
		bare("size", "size of the link wire", Figure{Name: "gauge", Dim: quantity.Gauge, Min: 1, Max: 30, Doc: "AWG number; wire four numbers thicker ends at 4/0"}),
		bare("area", "size of the link wire, metric", Figure{Name: "area", Dim: quantity.Area, Min: 0.2, Max: 35, Doc: "conductor area"}),
		bare("length", "its length", Figure{Name: "length", Dim: quantity.Length, Min: 0.01, Max: 2, Doc: "length"}.guess(gauge.UsualLinkM, "fusible-link")),
		bare("rating", "current that it protects as, when its maker states one", Figure{Name: "current", Dim: quantity.Current, Min: 0.5, Max: 800, Doc: "rated current"}),
	},
	Terminals: []Terminal{
		{Name: "1", Aliases: []string{"LINE"}, Landing: Joint, Doc: "side of the source"},
		{Name: "2", Aliases: []string{"LOAD"}, Landing: Joint, Doc: "side of the load"},
	},
	Lacks: func(d *Device) string {
		switch size, area := d.Said("size"), d.Said("area"); {
		case size && area:
			return "has two sizes"
		case !size && !area && !d.Said("rating"):
			return "needs its size, as 14AWG, or the current that its maker states"
		}
		return ""
	},
	Stamp:  func(d *Device, s *Stamper) { s.Add(FuseElement, "1", "2", linkLaw(d, s), s.All()) },
	Symbol: fuseSymbol(line(-0.4, -2, -0.4, 2), line(0.4, -2, 0.4, 2)),
	Protects: func(d *Device) []Fuse {
		f := protects(d, "link")
		f[0].Wire, _ = linkSize(d)
		return f
	},
	Buys: func(d *Device) []Purchase {
		size, _ := linkSize(d)
		return buy("fusible link wire", d, size.Name, quantity.Text(d.Num("length"), quantity.Length))
	},
})

// linkSize gives the wire that the link is made of.
func linkSize(d *Device) (gauge.Size, bool) {
	if d.Said("size") {
		return gauge.AWGSize(int(d.Num("size")))
	}
	if d.Said("area") {
		return gauge.MetricSize(d.Num("area"))
	}
	return gauge.Size{}, false
}

func linkLaw(d *Device, s *Stamper) circuit.Law {
	size, ok := linkSize(d)
	if !ok {
		return resistor(closedOhm)
	}
	temp := d.AmbientC
	if s.Corner == ColdStart {
		temp = s.Start.Temp()
	}
	return resistor(size.OhmPerM(temp) * d.Num("length"))
}
