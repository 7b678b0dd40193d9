package part

import "slices"

// Value gives the first value of a setting as said, or its default; nil if
// the kind lacks the setting.
func (d *Device) Value(name string) *Value {
	return pick(d.Values, d.Kind.Settings, name, d.SystemV)
}

// Num gives the first figure of a setting in base units, its default if not
// said, 0 if it has none.
func (d *Device) Num(name string) float64 { return d.NumAt(name, 0) }

// NumAt gives the i-th figure of a setting, as [Device.Num].
func (d *Device) NumAt(name string, i int) float64 {
	return figure(d.Values, d.Kind.Settings, name, i, d.SystemV)
}

// Said reports whether the draft gives the setting.
func (d *Device) Said(name string) bool { v := first(d.Values, name); return v != nil && v.Said }

// Word gives the word of a setting, its default if not said.
func (d *Device) Word(name string) string { return wordOf(d.Values, d.Kind.Settings, name) }

// All gives every value of a repeated setting that the draft says.
func (d *Device) All(name string) []Value { return every(d.Values, name, d.SystemV) }

// PinOf gives the index of the terminal with that name or alias. Names go
// before aliases.
func (d *Device) PinOf(name string) (i int, ok bool) {
	i = slices.IndexFunc(d.Pins, func(p Pin) bool { return p.Name == name })
	if i < 0 {
		i = slices.IndexFunc(d.Pins, func(p Pin) bool { return slices.Contains(p.Aliases, name) })
	}
	return max(i, 0), i >= 0
}

// has reports whether the device has the terminal.
func (d *Device) has(name string) bool { _, ok := d.PinOf(name); return ok }

// WordFor gives the word of a setting with which the device would have a
// terminal of its kind that it lacks, by name or alias: change-over for 87a of
// a relay. It is "" where no one word does.
func (d *Device) WordFor(name string) string {
	i := slices.IndexFunc(d.Kind.Terminals, func(t Terminal) bool { return t.Name == name || slices.Contains(t.Aliases, name) })
	if i < 0 || d.Kind.Fits == nil || d.Kind.Fits(d, d.Kind.Terminals[i].Name) {
		return ""
	}
	for j := range d.Kind.Settings {
		s := &d.Kind.Settings[j]
		for _, word := range s.Words {
			with := *d
			with.Values = append([]Value{{Setting: s, Word: word, Said: true}}, d.Values...)
			if d.Kind.Fits(&with, d.Kind.Terminals[i].Name) {
				return word
			}
		}
	}
	return ""
}

// wired reports whether something lands on the terminal.
func (d *Device) wired(name string) bool {
	i, ok := d.PinOf(name)
	return ok && d.Pins[i].Wired
}

// Value gives the first value of a setting of the line, or its default; nil
// if its role lacks the setting.
func (l *Line) Value(name string) *Value { return pick(l.Values, l.settings(), name, 12) }

// Num gives the first figure of a setting of the line.
func (l *Line) Num(name string) float64 { return figure(l.Values, l.settings(), name, 0, 12) }

// Said reports whether the draft gives the setting on the line.
func (l *Line) Said(name string) bool { v := first(l.Values, name); return v != nil && v.Said }

// Word gives the word of a setting of the line.
func (l *Line) Word(name string) string { return wordOf(l.Values, l.settings(), name) }

// When gives the steps that the line names, NoSteps when it names none.
func (l *Line) When() StepSet {
	set := NoSteps
	for _, v := range l.Values {
		set |= v.When
	}
	return set
}

func (l *Line) settings() []Setting {
	if l.Role == nil {
		return nil
	}
	return l.Role.Settings
}

func (v *Value) num(i int) float64 {
	if v == nil || i >= len(v.Nums) {
		return 0
	}
	return v.Nums[i]
}

// set reports whether the draft gave the i-th figure.
func (v *Value) set(i int) bool { return v != nil && i < len(v.Set) && v.Set[i] }

// first gives the first value that the draft says of a setting, nil for none.
func first(values []Value, name string) *Value {
	for i := range values {
		if s := values[i].Setting; s != nil && s.Name == name {
			return &values[i]
		}
	}
	return nil
}

func pick(values []Value, settings []Setting, name string, systemV float64) *Value {
	if v := first(values, name); v != nil {
		full := v.completed(systemV)
		return &full
	}
	if s := settingOf(settings, name); s != nil {
		v := s.Defaulted(systemV)
		return &v
	}
	return nil
}

func settingOf(settings []Setting, name string) *Setting {
	for i := range settings {
		if settings[i].Name == name {
			return &settings[i]
		}
	}
	return nil
}

// figure is the i-th figure that pick would give, 0 where there is none.
// Nearly everything that is asked of a device is a single figure, so it is
// found without making the whole value.
func figure(values []Value, settings []Setting, name string, i int, systemV float64) float64 {
	s := settingOf(settings, name)
	if v := first(values, name); v != nil {
		if v.set(i) && i < len(v.Nums) {
			return v.Nums[i]
		}
		s = v.Setting
	}
	if s == nil || i >= len(s.Figures) || !s.Figures[i].HasDefault {
		return 0
	}
	return s.Figures[i].DefaultAt(systemV)
}

// wordOf is the word of the value that pick would give, "" where there is none.
func wordOf(values []Value, settings []Setting, name string) string {
	s := settingOf(settings, name)
	if v := first(values, name); v != nil {
		if v.Word != "" {
			return v.Word
		}
		s = v.Setting
	}
	if s == nil {
		return ""
	}
	return s.Default
}

func every(values []Value, name string, systemV float64) []Value {
	var out []Value
	for _, v := range values {
		if v.Said && v.Setting != nil && v.Setting.Name == name {
			out = append(out, v.completed(systemV))
		}
	}
	return out
}
