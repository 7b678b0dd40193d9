package words

import (
	"fmt"
	"strings"

	"legwork/harness/draft"
	"legwork/harness/model"
	"legwork/harness/part"
)

func (v View) wire(number string) string {
	w, ok := v.Model.WireByNumber(number)
	if !ok {
		return ""
	}
	text := fmt.Sprintf("%s: %s to %s, circuit %s", number, w.From.Shown, w.To.Shown, w.Circuit.Name)
	if w.Sized {
		text += ", " + w.Size.Name
	}
	return text
}

// part tells where a part of the shelf is used.
func (v View) part(name string) string {
	var users []string
	for _, d := range v.Model.Devices {
		if d.Part == name {
			users = append(users, d.Name)
		}
	}
	if len(users) == 0 {
		return ""
	}
	return "part " + name + ": " + strings.Join(users, ", ")
}

func (v View) device(d *model.Device) string {
	text := d.Kind.Name + " " + d.Name + quoted(d.Label)
	if d.Spot.Place != nil {
		text += " at " + d.Spot.Place.Name
	}
	if d.In != nil {
		text += " in " + d.In.Name
	}
	return text + "\n" + d.Kind.Title
}

// terminal tells what a terminal is and which wires land on it; a device that
// is named alone tells of itself where whole is set.
func (v View) terminal(name string, whole bool) string {
	t, ok := v.Model.TerminalByName(name)
	if !ok {
		d, ok := v.Model.DeviceByName(name)
		if !ok || !whole {
			return ""
		}
		return v.device(d)
	}
	pin := t.Device.Pins[t.Pin]
	text := t.Device.Name
	if !t.Device.Kind.Self {
		text += "." + pin.Name
	}
	if len(pin.Aliases) > 0 {
		text += " (" + strings.Join(pin.Aliases, ", ") + ")"
	}
	for _, f := range t.Device.Kind.Terminals {
		if f.Name == pin.Name && f.Doc != "" {
			text += ": " + f.Doc
		}
	}
	return lines(text, strings.SplitN(v.device(t.Device), "\n", 2)[0], landing(t))
}

func landing(t *model.Terminal) string {
	var numbers []string
	for _, e := range t.Ends {
		numbers = append(numbers, e.Wire.Number)
	}
	if len(numbers) == 0 {
		return ""
	}
	return "wires: " + strings.Join(numbers, ", ")
}

// named tells what the free name behind a setting is.
func (v View) named(s *part.Setting, it draft.Item) string {
	if !s.Free || it.Text == s.Name {
		return ""
	}
	if text := v.used(model.AMetal, it.Text); text != "" {
		return text
	}
	return v.used(model.APlace, it.Text)
}

func quoted(label string) string {
	if label == "" {
		return ""
	}
	return ` "` + label + `"`
}
