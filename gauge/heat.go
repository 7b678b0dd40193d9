package gauge

import "math"

// ModelShare is the part of the heat-balance current that is taken where the
// ampacity table has no figure (source heat-balance): the table itself lies
// at 0.85 to 1.05 of the model in its 125 C column.
const ModelShare = 0.85

const (
	emissivity  = 0.9       // insulation surface
	wallConduct = 0.2       // W/(m K), insulation
	stefan      = 5.6704e-8 // W/(m2 K4)
	strandFill  = 5.0 / 4.358898943540674
	thinWallMM  = 0.40
	prandtlAir  = 0.707
	gravity     = 9.81
	kelvin      = 273.15
	surfaceK    = 1e-6 // surface temperature is found to this
	maxPasses   = 50
)

// Cylinder is a single insulated wire, horizontal in still air.
type Cylinder struct {
	ConductorMM float64 // over the strands
	OutsideMM   float64 // over the insulation
	OhmPerM20   float64
}

// AmpsIn is the steady current that holds the conductor at conductorC in
// still air at ambientC (Celsius), from
//
//	I^2 R20 (234.5+Tc)/254.5 = pi D (hc + hr)(Ts - Ta) = 2 pi lambda (Tc - Ts)/ln(D/d)
//
// with hc from the correlation of a horizontal cylinder and hr by radiation
// (source heat-balance). It is 0 unless conductorC is above ambientC, and for
// a wire that cannot exist.
func (c Cylinder) AmpsIn(ambientC, conductorC float64) float64 {
	if !(conductorC > ambientC && ambientC > -kelvin && conductorC < math.Inf(1) && c.sound()) {
		return 0
	}
	through := 2 * math.Pi * wallConduct / math.Log(c.OutsideMM/c.ConductorMM)
	surface := conductorC
	for range maxPasses { // film coefficients change slowly with temperature: a few passes suffice
		shed := c.shedWPerM(surface, ambientC)
		perK := shed / (surface - ambientC)
		next := (through*conductorC + perK*ambientC) / (through + perK)
		moved := math.Abs(next - surface)
		surface = next
		if moved < surfaceK {
			break
		}
	}
	return math.Sqrt(c.shedWPerM(surface, ambientC) / CopperAt(c.OhmPerM20, conductorC))
}

// shedWPerM is the heat that leaves one meter of surface at surfaceC.
func (c Cylinder) shedWPerM(surfaceC, ambientC float64) float64 {
	d := c.OutsideMM / 1000
	ts, ta := surfaceC+kelvin, ambientC+kelvin
	radiated := emissivity * stefan * (ts*ts + ta*ta) * (ts + ta)
	return math.Pi * d * (convection(d, ts, ta) + radiated) * (ts - ta)
}

// convection is the film coefficient in W/(m2 K) of a horizontal cylinder of
// diameter d meters, air properties at film temperature:
// Nu = {0.60 + 0.387 Ra^(1/6) / [1 + (0.559/Pr)^(9/16)]^(8/27)}^2.
func convection(d, ts, ta float64) float64 {
	film := (ts + ta) / 2
	conduct := 0.0241 * math.Pow(film/kelvin, 0.81)
	viscosity := 1.716e-5 * math.Pow(film/kelvin, 1.5) * (kelvin + 110.4) / (film + 110.4)
	density := 101325 / (287.05 * film)
	nu := viscosity / density
	rayleigh := gravity / film * (ts - ta) * d * d * d / (nu * nu) * prandtlAir
	shape := math.Pow(1+math.Pow(0.559/prandtlAir, 9.0/16), 8.0/27)
	nusselt := 0.60 + 0.387*math.Pow(math.Max(rayleigh, 0), 1.0/6)/shape
	return nusselt * nusselt * conduct / d
}

// thinWallA is the heat-balance current of a size with the thinnest vehicle
// wall, 0.40 mm: on small wires a thicker wall only sheds more heat.
func thinWallA(s Size, ambientC, conductorC float64) float64 {
	d := strandFill * 2 * math.Sqrt(s.AreaMM2/math.Pi)
	c := Cylinder{ConductorMM: d, OutsideMM: d + 2*thinWallMM, OhmPerM20: s.OhmPerM(20)}
	return c.AmpsIn(ambientC, conductorC)
}
