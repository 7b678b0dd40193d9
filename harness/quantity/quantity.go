// Package quantity is the one reader and the one printer of numbers with
// units. A quantity is written without a blank: 15A, 9ft6in, 2.5mm2, 85C.
package quantity

// Dim is what a quantity measures. Values are held in the base unit named
// beside each dimension.
type Dim int

// Every dimension, with its base unit.
const (
	None        Dim = iota
	Current         // A
	Voltage         // V
	Resistance      // ohm
	Power           // W
	Charge          // Ah
	Length          // m
	Area            // mm2
	Gauge           // AWG number; 1/0 is 0, 2/0 is -1, 3/0 is -2, 4/0 is -3
	Temperature     // C (degrees Celsius)
	Percent         // % (3% holds 3)
	Time            // s
	Frequency       // Hz
	Count           // plain number, or with the unit "way"
	Thread          // stud thread, mm: M8 holds 8; 1/4in and No10 are read as Length and Thread by the model
)

// Quantity is a number as written: its value in the base unit of Dim, the
// unit as typed and the raw text.
type Quantity struct {
	Value float64
	Dim   Dim
	Unit  string
	Raw   string
}
