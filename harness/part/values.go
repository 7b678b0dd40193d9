package part

import "slices"

// Value gives the first value of a setting as said, or its default; nil if
// the kind lacks the setting.
func (d *Device) Value(name string) *Value {
	return pick(d.Values, d.Kind.Settings, name, d.SystemV)
}

// Num gives the first figure of a setting in base units, its default if not
// said, 0 if it has none.
func (d *Device) Num(name string) float64 { return d.Value(name).num(0) }

// NumAt gives the i-th figure of a setting, as [Device.Num].
func (d *Device) NumAt(name string, i int) float64 { return d.Value(name).num(i) }

// Said reports whether the draft gives the setting.
func (d *Device) Said(name string) bool { v := d.Value(name); return v != nil && v.Said }

// Word gives the word of a setting, its default if not said.
func (d *Device) Word(name string) string { return d.Value(name).word() }

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

// wired reports whether something lands on the terminal.
func (d *Device) wired(name string) bool {
	i, ok := d.PinOf(name)
	return ok && d.Pins[i].Wired
}

// Value gives the first value of a setting of the line, or its default; nil
// if its role lacks the setting.
func (l *Line) Value(name string) *Value { return pick(l.Values, l.settings(), name, 12) }

// Num gives the first figure of a setting of the line.
func (l *Line) Num(name string) float64 { return l.Value(name).num(0) }

// Said reports whether the draft gives the setting on the line.
func (l *Line) Said(name string) bool { v := l.Value(name); return v != nil && v.Said }

// Word gives the word of a setting of the line.
func (l *Line) Word(name string) string { return l.Value(name).word() }

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

func (v *Value) word() string {
	if v == nil {
		return ""
	}
	return v.Word
}

// set reports whether the draft gave the i-th figure.
func (v *Value) set(i int) bool { return v != nil && i < len(v.Set) && v.Set[i] }

func pick(values []Value, settings []Setting, name string, systemV float64) *Value {
	for i := range values {
		if s := values[i].Setting; s != nil && s.Name == name {
			v := values[i].completed(systemV)
			return &v
		}
	}
	for i := range settings {
		if settings[i].Name == name {
			v := settings[i].Defaulted(systemV)
			return &v
		}
	}
	return nil
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
