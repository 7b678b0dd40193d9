package gauge

import "math"

// HeatPoint is a published current of a single wire in still air, with the
// make of the wire as it is taken for the heat balance.
type HeatPoint struct {
	Name       string
	Wire       Cylinder
	AmbientC   float64
	ConductorC float64
	Amps       float64 // published
	Source     string  // of the published current
}

// ModelA is what the heat balance gives, in amperes, nothing fitted.
func (p HeatPoint) ModelA() float64 { return p.Wire.AmpsIn(p.AmbientC, p.ConductorC) }

// Off is how far the model lies from the published current: -0.05 is 5 %
// below.
func (p HeatPoint) Off() float64 { return p.ModelA()/p.Amps - 1 }

// HeatPoints lists every published point that the heat balance is held
// against: aircraft wire in free air (five points), single PVC cores (eleven)
// and thin-wall vehicle cable (ten). Outside diameters of the first two are
// from memory; the rise of 40 K of the third is our reading of a list that
// does not state it.
func HeatPoints() []HeatPoint {
	return append(append(aircraftPoints(), corePoints()...), thinWallPoints()...)
}

// aircraftPoints: 19 strands of the nominal area of table 11-9, its largest
// tin-plated resistance, and a wall of 0.25 mm.
func aircraftPoints() (out []HeatPoint) {
	for _, p := range []struct {
		awg      int
		ambientC float64
		amps     float64
		source   string
	}{
		{22, 60, 16.2, "ac4313-curves-memory"}, {20, 60, 21.5, "ac4313-curves-memory"}, {12, 25, 68, "ac4313-curves-memory"},
		{12, 60, 61, "ac4313-curves-memory"}, {14, 50, 47, "ac4313-example-2"},
	} {
		s, _ := AircraftSize(p.awg)
		row := aircraftRow(s)
		d := strandFill * 2 * math.Sqrt(row.Cmil*MM2PerCmil/math.Pi)
		out = append(out, HeatPoint{
			AWGName(p.awg) + " aircraft wire, free air", Cylinder{d, d + 2*aircraftWallMM, s.OhmPerM(20)},
			p.ambientC, 200, p.amps, p.source,
		})
	}
	return out
}

const aircraftWallMM = 0.25

// corePoints: class 5 conductors; outside diameters of single cores with a
// PVC wall, from memory.
func corePoints() (out []HeatPoint) {
	outside := map[float64]float64{
		0.75: 2.4, 1: 2.6, 1.5: 3.0, 2.5: 3.6, 4: 4.1, 6: 4.7, 10: 6.0, 16: 7.1, 25: 8.8, 35: 10.1, 50: 12.0,
	}
	list, _ := AmpListOf("vde")
	for _, r := range list.Rows {
		s, _ := MetricSize(r.MM2)
		if mm, ok := outside[r.MM2]; ok {
			out = append(out, HeatPoint{
				s.Name + " PVC core, air", Cylinder{coreFill * math.Sqrt(r.MM2), mm, s.OhmPerM(20)}, 30, 70, r.Amps, list.Source,
			})
		}
	}
	return out
}

// coreFill is the diameter over a fine-stranded conductor of 1 mm2 on its label.
const coreFill = 1.27

// thinWallPoints: strands and outside diameter as in the list itself, largest
// resistance as remembered from ISO 6722.
func thinWallPoints() (out []HeatPoint) {
	for _, w := range thinWallCable {
		s, ok := ISOSize(w.mm2)
		if !ok || w.outsideMM == 0 {
			continue
		}
		made, _ := StrandingOf(s)
		out = append(out, HeatPoint{
			s.Name + " thin wall, air", Cylinder{made.OverMM(), w.outsideMM, s.OhmPerM(20)},
			TableAmbientC, TableAmbientC + listRiseK, w.amps, "thin-wall-list",
		})
	}
	return out
}

// ConductorC is the steady conductor temperature in Celsius of the wire at
// amps in still air at ambientC, the inverse of AmpsIn. ok is false when it
// would pass the melting point of copper, or when the wire or the current
// makes no sense (source heat-balance).
func (c Cylinder) ConductorC(ambientC, amps float64) (tempC float64, ok bool) {
	if !(amps >= 0 && ambientC > -kelvin && ambientC < copperMeltC && c.sound()) || c.AmpsIn(ambientC, copperMeltC) < amps {
		return 0, false
	}
	low, high := ambientC, copperMeltC
	for high-low > 1e-6 {
		mid := (low + high) / 2
		if mid == low || mid == high {
			break
		}
		if c.AmpsIn(ambientC, mid) < amps {
			low = mid
		} else {
			high = mid
		}
	}
	return high, true
}

// sound reports a wire that can exist: a conductor inside its insulation.
func (c Cylinder) sound() bool {
	return c.ConductorMM > 0 && c.OutsideMM > c.ConductorMM && c.OutsideMM < math.Inf(1) && c.OhmPerM20 > 0 && c.OhmPerM20 < math.Inf(1)
}

// CylinderOf is a wire as the heat balance sees it; c is how far its outside
// diameter may be trusted.
func CylinderOf(s Size, f Family) (wire Cylinder, c Confidence) {
	d := DiameterOf(s, f)
	return Cylinder{d.ConductorMM, d.OutsideMM, s.OhmPerM(20)}, d.Confidence()
}
