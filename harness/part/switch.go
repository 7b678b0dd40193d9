package part

import "legwork/harness/quantity"

var _ = define(Kind{
	Name:   "switch",
	Title:  "A switch moved by hand, by foot or by what it watches.",
	Law:    "A contact of 10 mohm (a low figure, so only a nominal one), or of the resistance that the draft states, in the steps in which it is closed. When the draft does not say, it is closed whenever the key is not off: a guess.",
	Letter: "S",
	Settings: append(contactSettings(),
		Setting{Name: "closed", Steps: true, Doc: "steps in which it is closed; alone: always"},
		Setting{Name: "open", Steps: true, Doc: "steps in which it is open; alone: always"},
		oneOf("action", "one way, or from one contact to another (terminals COM, NC, NO)", "make", "change-over"),
		Setting{Name: "stops", Words: []string{StopsStarter, StopsPump, StopsEngine}, Doc: "what it is there to stop, when it is open: every way to it has to pass the switch; engine: battery and machines alike"},
		oneOf("moved-by", "what moves it, for the drawing", "hand", "pedal", "pressure"),
	),
	Terminals: []Terminal{
		{Name: "1", Aliases: []string{"IN"}, Doc: "one side"},
		{Name: "2", Aliases: []string{"OUT"}, Doc: "other side; the metal when the switch grounds to it"},
		{Name: "COM", Doc: "change-over: common"},
		{Name: "NC", Doc: "change-over: joined to COM while not moved", Quiet: true},
		{Name: "NO", Doc: "change-over: joined to COM while moved", Quiet: true},
	},
	Ground: "2",
	Fits:   func(d *Device, t string) bool { return (d.Word("action") == "change-over") == (t != "1" && t != "2") },
	Stamp:  stampSwitch,
	Symbol: contact("", "1", "2", -3, dashed(-0.8, 0, -2.8, 0), line(-2.8, -0.7, -2.8, 0.7)),
	Others: []Symbol{
		contact("pedal", "1", "2", -3.4, dashed(-0.8, 0, -2.6, 0), line(-2.2, -0.9, -3, 0.9, -3.5, 0.9)),
		contact("pressure", "1", "2", -3.4, dashed(-0.8, 0, -2, 0), rect(-3.4, -0.7, 1.4, 1.4), text("p", -2.7, 0.42)),
		changeOver("change-over", "COM", "NO", "NC", -3.4, dashed(-0.8, 0, -2.8, 0), line(-2.8, -0.7, -2.8, 0.7)),
	},
	Form: func(d *Device) string {
		if d.Word("action") == "change-over" {
			return "change-over"
		}
		if w := d.Word("moved-by"); w != "hand" {
			return w
		}
		return ""
	},
	Assumes: func(d *Device) []Assumption {
		if d.Said("closed") || d.Said("open") {
			return nil
		}
		return []Assumption{{What: "steps in which " + d.Name + " is closed", Value: "all with the key not at off"}}
	},
	Switches: func(d *Device) []Contact {
		if d.Word("action") == "change-over" {
			rest := d.contact("COM", "NC", "step")
			rest.AtRest = true
			return []Contact{d.contact("COM", "NO", "step"), rest}
		}
		return []Contact{d.contact("1", "2", "step")}
	},
	Buys: func(d *Device) []Purchase { return buy("switch", d) },
})

// What a switch may be there to stop.
const (
	StopsStarter = "starter"
	StopsPump    = "pump"
	StopsEngine  = "engine"
)

// contactSettings are those of every kind that switches.
func contactSettings() []Setting {
	carry := func(load string) Figure {
		return Figure{Name: "current", Dim: quantity.Current, Min: 0, Max: maxA, Doc: "largest " + load + " current"}
	}
	return []Setting{
		named("contact", "current that its contact may switch into a resistive load", carry("resistive")),
		named("motor", "current that it may switch into a motor", carry("motor")),
		named("lamp", "current that it may switch into lamps", carry("lamp")),
		named("contact-resistance", "resistance of its closed contact, from the sheet or as measured",
			Figure{Name: "resistance", Dim: quantity.Resistance, Min: 1e-6, Max: 10, Doc: "resistance of the closed contact"}),
	}
}

// contact describes one path with the ratings of the device.
func (d *Device) contact(a, b, by string) Contact {
	c := Contact{A: a, B: b, By: by, Stops: d.Word("stops"), ResistiveA: d.Num("contact"), MotorA: d.Num("motor"), LampA: d.Num("lamp"), Ohm: d.Num("contact-resistance"), At: d.At}
	if v := d.Value("contact"); v != nil && v.Said && !v.At.IsZero() {
		c.At = v.At
	}
	return c
}

// closedIn gives the steps in which a switch is moved.
func closedIn(d *Device, s *Stamper) StepSet {
	all := s.All()
	if v := d.Value("closed"); v.Said {
		if v.When == NoSteps {
			return all
		}
		return v.When & all
	}
	if v := d.Value("open"); v.Said {
		if v.When == NoSteps {
			return NoSteps
		}
		return all &^ v.When
	}
	return s.Where(func(st Step) bool { return st.Key != "off" })
}

func stampSwitch(d *Device, s *Stamper) {
	moved, law := closedIn(d, s), resistor(s.contactOhm(d))
	if d.Word("action") == "change-over" {
		s.Add(ContactElement, "COM", "NO", law, moved)
		s.Add(ContactElement, "COM", "NC", law, s.All()&^moved)
		return
	}
	s.Add(ContactElement, "1", "2", law, moved)
}
