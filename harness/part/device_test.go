package part

import (
	"strconv"
	"testing"

	"github.com/stretchr/testify/require"
)

// steps are those of every draft, in their order.
var steps = []Step{
	{"off", "off", Still}, {"acc", "acc", Still}, {"prime", "run", Still}, {"koeo", "run", Still}, {"gap", "gap", Still}, {"engage", "crank", Locked},
	{"crank", "crank", Turning}, {"running", "run", Running}, {"stalled", "run", Still}, {"coast", "off", RunningDown}, {"rest", "off", Still},
}

const (
	atOff     StepSet = 1 << 0
	atPrime   StepSet = 1 << 2
	atEngage  StepSet = 1 << 5
	atCrank   StepSet = 1 << 6
	atRunning StepSet = 1 << 7
	always    StepSet = 1<<11 - 1
)

// say gives a setting its figures, as the model would.
func say(settings []Setting, name string, nums ...float64) Value {
	for i := range settings {
		if s := &settings[i]; s.Name == name {
			v := s.Defaulted(12)
			v.Said = true
			for j, n := range nums {
				v.Nums[j], v.Set[j] = n, true
			}
			return v
		}
	}
	panic("no setting " + name)
}

// device makes a 12 V device of a kind with its terminals, as the model would.
func device(t *testing.T, kind string, values ...Value) *Device {
	t.Helper()
	k, ok := Of(kind)
	require.True(t, ok, kind)
	d := &Device{Name: "X1", Kind: k, SystemV: 12, AmbientC: 20, Values: values}
	return d
}

// pinned gives the device its terminals.
func pinned(d *Device) *Device {
	d.Pins = nil
	for _, t := range d.Kind.TerminalsOf(d) {
		d.Pins = append(d.Pins, Pin{Name: t.Name, Aliases: t.Aliases, Landing: t.Landing, Line: -1, Quiet: t.Quiet})
	}
	for i, l := range d.Lines {
		switch d.Kind.Lines.Shape {
		case TerminalLines, BusLines:
			d.Pins = append(d.Pins, Pin{Name: l.Name, Line: i})
		case HalfLines:
			for n := 1; n <= int(d.Num("ways")); n++ {
				d.Pins = append(d.Pins, Pin{Name: l.Name + "." + strconv.Itoa(n), Line: i})
			}
		}
	}
	return d
}

// word says a setting by one of its words.
func word(settings []Setting, name, w string) Value {
	v := say(settings, name)
	v.Word = w
	return v
}

// on adds steps to a value.
func on(v Value, set StepSet) Value { v.When = set; return v }

func of(kind string) []Setting { k, _ := Of(kind); return k.Settings }

// moduleLine makes a line of a module.
func moduleLine(name, role string, values ...Value) Line {
	return Line{Name: name, Role: roleOf(role), Values: values}
}

func roleOf(role string) *Role {
	k, _ := Of("module")
	for i := range k.Lines.Roles {
		if k.Lines.Roles[i].Word == role {
			return &k.Lines.Roles[i]
		}
	}
	panic("no role " + role)
}

// stamped gives what a device puts into the network.
func stamped(d *Device, c Corner, g Grade) *Stamper {
	s := &Stamper{Steps: steps, Corner: c, Grade: g}
	d.Kind.Stamp(d, s)
	return s
}

// branch gives the only branch of a use between two terminals in a step.
func branch(t *testing.T, s *Stamper, use Use, a, b string, step int) Branch {
	t.Helper()
	var found []Branch
	for _, x := range s.Branches {
		if x.Use == use && x.A == a && x.B == b && x.Steps.Has(step) {
			found = append(found, x)
		}
	}
	require.Len(t, found, 1, "%s to %s in step %d", a, b, step)
	return found[0]
}
