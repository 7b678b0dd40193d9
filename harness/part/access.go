package part

import "legwork/gauge"

// DefaultAt gives the default of a figure in a system of that many volts.
func (f Figure) DefaultAt(systemV float64) float64 {
	if !(systemV > 0) {
		systemV = 12
	}
	k := systemV / 12
	switch f.Scale {
	case ByVolts:
		return f.Default * k
	case ByVolts2:
		return f.Default * k * k
	case OverVolts:
		return f.Default / k
	}
	return f.Default
}

// Defaulted gives the value of a setting that the draft does not say: figures
// at their defaults, 0 for those that have none.
func (s *Setting) Defaulted(systemV float64) Value {
	v := Value{Setting: s, Word: s.Default, Nums: make([]float64, len(s.Figures)), Set: make([]bool, len(s.Figures))}
	for i, f := range s.Figures {
		if f.HasDefault {
			v.Nums[i] = f.DefaultAt(systemV)
		}
	}
	return v
}

// completed gives the value with the figures that the draft leaves out at
// their defaults in a system of that many volts.
func (v Value) completed(systemV float64) Value {
	full := v.Setting.Defaulted(systemV)
	for i := range full.Nums {
		if i < len(v.Nums) && i < len(v.Set) && v.Set[i] {
			full.Nums[i], full.Set[i] = v.Nums[i], true
		}
	}
	if v.Word == "" {
		v.Word = full.Word
	}
	v.Nums, v.Set = full.Nums, full.Set
	return v
}

// Acquaint tells every device what it has to know of the others: the
// resistance of the strongest battery, or of the whole row where it is one of
// several in series, and the highest setpoint of a machine that charges. With a
// second battery beside, the starter hangs on the stronger one, as a rule; none
// of it depends on which stands first in the draft. The model calls it once, when all devices are read.
func Acquaint(devices []*Device) {
	var ohm, charge float64
	for _, d := range devices {
		if d.Kind == nil || d.Kind.Supplies == nil {
			continue
		}
		for _, s := range d.Kind.Supplies(d) {
			if s.Battery && s.RatedV > 0 {
				row := s.Ohm * d.scale() * 12 / s.RatedV // of as many in series as give the system's volts
				if ohm == 0 || row < ohm {
					ohm = row
				}
			}
			charge = max(charge, s.SetpointV)
		}
	}
	for _, d := range devices {
		d.BatteryOhm, d.ChargeV = ohm, charge
	}
}

// batteryOhm is the resistance of the draft's own battery, or of a usual one.
func (d *Device) batteryOhm() float64 {
	if d.BatteryOhm > 0 {
		return d.BatteryOhm
	}
	warm, _ := gauge.BatteryOhm(gauge.UsualCCA)
	return warm * d.scale()
}

// scale is the system's volts over 12.
func (d *Device) scale() float64 {
	if !(d.SystemV > 0) {
		return 1
	}
	return d.SystemV / 12
}

// halfV is half the system's volts: what a load needs when nothing is said.
func (d *Device) halfV() float64 { return 6 * d.scale() }

// SymbolOf gives the form of the symbol that the device as set is drawn with;
// ok is false if the kind names a form that it lacks.
func (k *Kind) SymbolOf(d *Device) (s Symbol, ok bool) {
	form := ""
	if k.Form != nil {
		form = k.Form(d)
	}
	if form == "" {
		return k.Symbol, true
	}
	for _, other := range k.Others {
		if other.Name == form {
			return other, true
		}
	}
	return k.Symbol, false
}
