package gauge

import (
	"fmt"
	"math"
)

// Return says how the current comes back to the source.
type Return uint8

const (
	// ByWire comes back through a second wire of the same size and length.
	ByWire Return = iota
	// ByMetal comes back through frame or body, which is taken as copper-free.
	ByMetal
)

// String is wire or metal.
func (r Return) String() string {
	switch r {
	case ByWire:
		return "wire"
	case ByMetal:
		return "metal"
	}
	return "invalid"
}

// OneWayM is the distance in meters from the source to the load, along the
// wire. It is a type of its own, so that it cannot be taken for the length of
// conductor that the current passes.
type OneWayM float64

// ConductorM is the length in meters of all the conductor that the current
// passes, out and back.
type ConductorM float64

// OneWayFt makes a one-way distance of feet.
func OneWayFt(feet float64) OneWayM { return OneWayM(feet * MeterPerFoot) }

// ConductorFt makes a length of conductor of feet: what drop charts call the
// round trip, and aircraft tables the run with its ground wire.
func ConductorFt(feet float64) ConductorM { return ConductorM(feet * MeterPerFoot) }

// Conductor is the length of conductor over a one-way distance: twice that by
// wire, once by metal.
func (l OneWayM) Conductor(r Return) ConductorM {
	if r == ByMetal {
		return ConductorM(l)
	}
	return 2 * ConductorM(l)
}

// Feet is the length in feet.
func (l ConductorM) Feet() float64 { return float64(l) / MeterPerFoot }

// Drop is a drop with its working.
type Drop struct {
	Volts float64
	Share float64 // of the system volts; 0 when those are not above zero
	Why   []Step
}

// DropOver is the exact drop of amps through a length of conductor of one
// size, at conductor temperature tempC (Celsius): I R(T) L, and its share of
// systemV (sources copper-temperature, far-end-short).
func DropOver(l ConductorM, s Size, tempC, amps, systemV float64) Drop {
	perM := s.OhmPerM(tempC)
	d := Drop{Volts: DropV(perM, float64(l), amps)}
	if systemV > 0 {
		d.Share = d.Volts / systemV
	}
	d.Why = []Step{
		{Text: fmt.Sprintf("%s, %.4g mm2 of copper at 20 C", s.Name, s.AreaMM2), Equation: "rho20 / A", Value: s.OhmPerM(20), Unit: "ohm/m", Source: s.Source},
		{Text: fmt.Sprintf("conductor at %.4g C", tempC), Equation: "R20 (234.5 + T)/254.5", Value: perM, Unit: "ohm/m", Source: "copper-temperature"},
		{Text: fmt.Sprintf("%.4g A through %.4g m of conductor, out and back", amps, float64(l)), Equation: "I R L", Value: d.Volts, Unit: "V", Source: "far-end-short"},
		{Text: fmt.Sprintf("of %.4g V", systemV), Equation: "100 V / Vsystem", Value: 100 * d.Share, Unit: "%", Source: "stated"},
	}
	return d
}

// MaxOhmFor is the largest resistance in ohm of all the conductor that loses
// no more than volts at amps; +Inf when nothing flows.
func MaxOhmFor(amps, volts float64) float64 {
	if amps == 0 {
		return math.Inf(1)
	}
	return volts / amps
}

// CmilFor is the circular-mil rule over a length of conductor: CM = K I L / E
// with L in feet out and back (source circular-mil).
func CmilFor(l ConductorM, k, amps, volts float64) float64 {
	return CmilNeeded(k, amps, l.Feet(), volts)
}
