package gauge

import "slices"

// RelayType is one relay as its sheet prints it; figures are 0 where the
// sheet says none.
type RelayType struct {
	Name          string
	CoilV         float64
	CoilOhm       float64
	OperateV      float64 // must have operated by, 20 C
	ReleaseV      float64 // must have released below, 20 C
	MakeA         float64 // resistive
	OtherA        float64 // second rating as printed: inductive, motor or break contact
	Other         string  // which of them
	DropMV        float64 // at 10 A
	OperateMS     float64
	ReleaseMS     float64
	LeastC, MostC float64 // place
	Note          string
	Source        string
}

var relayTypes = [...]RelayType{
	{"power, plug-in", 12, 75, 8, 0, 25, 10, "inductive", 50, 10, 7, -30, 85, "120 A switched for 3 s at 12.8 V", "relay-sheets-part"},
	{"mini 40 A", 12, 0, 0, 1.2, 40, 30, "break contact", 0, 7, 5, -55, 110, "60 A momentary; coil rise 52 K", "relay-sheets"},
	{"micro 30 A", 12, 109, 0, 0, 30, 20, "break contact", 0, 0, 0, -40, 125, "with a diode 85 is negative", "relay-sheets-part"},
	{"micro, high duty", 12, 0, 0, 0, 30, 17, "motor, 65 A at the start; lamp too", 0, 0, 0, 0, 85, "", "relay-sheets"},
	{"lamp control, on a board", 12, 300, 7.0, 0.5, 30, 0, "", 30, 10, 10, 0, 0, "30 A for 1 h; contact 3 mohm typical, 50 most", "relay-sheets"},
	{"dual mini", 12, 260, 7.2, 1.2, 20, 10, "inductive", 30, 3, 2, -30, 85, "35 A switched for 3 s", "relay-sheets"},
	{"mini 30/40 A, usual", 12, 90, 8.0, 1.2, 30, 15, "motor or lamp", 50, 10, 10, -40, 85, "80 to 100 ohm", "relay-sheets-usual"},
	{"mini 20/30 A, usual", 24, 330, 16, 2.4, 20, 0, "", 0, 10, 10, -40, 85, "300 to 360 ohm", "relay-sheets-usual"},
	{"workshop check", 12, 85, 0, 0, 0, 0, "", 0, 0, 0, 0, 0, "60 to 120 ohm is plausible", "relay-workshop"},
}

// RelayTypes lists relays as their sheets print them (sources relay-sheets,
// relay-sheets-part, relay-sheets-usual, relay-workshop).
func RelayTypes() []RelayType { return slices.Clone(relayTypes[:]) }

// contactShares is the rating of a contact by load over its resistive one.
var contactShares = [...]struct {
	load   string
	share  float64
	source string
}{
	{"heater", 1, "relay-sheets"},
	{"lamp", MotorShareOfContact, "relay-motor"},
	{"motor", MotorShareOfContact, "relay-motor"},
	{"inductive", 0.4, "relay-inductive"},
}

// ContactA is what a relay contact rated resistiveA may carry of a kind of
// load: heater, lamp, motor, inductive. ok is false for another kind, or a
// rating that is not from 0 to 1e6 A (sources relay-sheets, relay-motor,
// relay-inductive).
func ContactA(resistiveA float64, load string) (amps float64, c Confidence, ok bool) {
	for _, row := range contactShares {
		if row.load == load && resistiveA >= 0 && resistiveA <= mostA {
			return row.share * resistiveA, confidenceOf(row.source), true
		}
	}
	return 0, 0, false
}
