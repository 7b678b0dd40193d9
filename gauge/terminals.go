package gauge

import "slices"

// TerminalName is what a standard terminal number means.
type TerminalName struct {
	Number  string
	Meaning string
	Source  string
}

// din72552 is in the order of the standard. 87 and 88 are relay contacts
// there in another sense than on common relay bases: see [ISO7588].
var din72552 = [...]TerminalName{
	{"1", "coil low side / distributor low voltage", "din-72552"},
	{"4", "coil high voltage", "din-72552"},
	{"15", "battery positive through the ignition switch", "din-72552"},
	{"15a", "after ballast resistor, to coil and starter", "din-72552"},
	{"15e", "switched battery positive, live while cranking too", "din-72552"},
	{"17", "start (glow/start switch)", "din-72552"},
	{"19", "pre-heat", "din-72552"},
	{"30", "battery positive, direct", "din-72552"},
	{"30a", "positive of the second battery, 12/24 V change-over", "din-72552"},
	{"31", "return to battery - or ground, direct", "din-72552"},
	{"31a", "return to second battery -", "din-72552"},
	{"31b", "return through a switch or relay (switched ground)", "din-72552"},
	{"31c", "return to first battery -", "din-72552"},
	{"32", "motor return", "din-72552"},
	{"33", "motor main terminal (32 and 33 may swap)", "din-72552"},
	{"33a", "self-park cut-off", "din-72552"},
	{"33L", "left rotation", "din-72552"},
	{"33R", "right rotation", "din-72552"},
	{"45", "separate starter relay output / starter main input", "din-72552"},
	{"48", "start-repeat relay sensing", "din-72552"},
	{"49", "flasher input", "din-72552"},
	{"49a", "flasher output", "din-72552"},
	{"50", "starter control", "din-72552"},
	{"50a", "starter control (series-parallel switch output)", "din-72552"},
	{"51", "rectified generator output (AC generator d.c. side)", "din-72552"},
	{"53", "wiper motor + input", "din-72552"},
	{"53a", "wiper + for self-park", "din-72552"},
	{"53b", "wiper shunt / second speed", "din-72552-memory"},
	{"53c", "screen-washer pump", "din-72552-memory"},
	{"53e", "wiper brake winding", "din-72552-memory"},
	{"54", "stop lamps (and trailer feed)", "din-72552-memory"},
	{"55", "fog lamps", "din-72552-memory"},
	{"56", "headlamp feed", "din-72552-memory"},
	{"56a", "high beam", "din-72552-memory"},
	{"56b", "low beam", "din-72552-memory"},
	{"57", "side/parking lamps", "din-72552-memory"},
	{"58", "tail, side, license-plate, panel lamps", "din-72552-memory"},
	{"58L", "left tail/side", "din-72552-memory"},
	{"58R", "right tail/side", "din-72552-memory"},
	{"61", "charge warning lamp", "din-72552-memory"},
	{"71", "horn sequence input", "din-72552-memory"},
	{"75", "accessories (radio, lighter); dead while cranking in most cars", "din-72552-memory"},
	{"76", "loudspeaker", "din-72552-memory"},
	{"85", "relay coil end (ground side)", "din-72552-memory"},
	{"86", "relay coil start (supply side)", "din-72552-memory"},
	{"87", "DIN: input of break/change-over contact; ISO 7588 practice: make-contact output", "din-72552-memory"},
	{"87a", "DIN: first output (break side); ISO 7588 practice: break-contact output", "din-72552-memory"},
	{"87b", "second output", "din-72552-memory"},
	{"88", "DIN: input of make contact", "din-72552-memory"},
	{"88a", "DIN: make-side output", "din-72552-memory"},
	{"B+", "battery positive (alternator)", "din-72552-memory"},
	{"B-", "battery negative", "din-72552-memory"},
	{"D+", "dynamo/alternator positive: lamp and excitation", "din-72552-memory"},
	{"DF", "field", "din-72552-memory"},
	{"W", "phase tap for tachometer", "din-72552-memory"},
	{"C", "first direction tell-tale", "din-72552"},
	{"L", "left indicators", "din-72552"},
	{"R", "right indicators", "din-72552"},
}

// iso7588 holds the terminals of common relay bases; Meaning ends with the
// older number of the same pin.
var iso7588 = [...]TerminalName{
	{"30", "common, feed from the fuse (3)", "iso-7588"},
	{"85", "coil, ground side where a diode is fitted (2)", "iso-7588"},
	{"86", "coil, positive side where a diode is fitted (1)", "iso-7588"},
	{"87", "make contact, live when energized (5)", "iso-7588"},
	{"87a", "break contact, live at rest: insulate when unused (4)", "iso-7588"},
}

// DIN72552 finds the meaning of a vehicle terminal number (sources din-72552,
// din-72552-memory).
func DIN72552(number string) (TerminalName, bool) { return terminalIn(din72552[:], number) }

// ISO7588 finds the meaning of a terminal of a common relay base (source
// iso-7588).
func ISO7588(number string) (TerminalName, bool) { return terminalIn(iso7588[:], number) }

func terminalIn(list []TerminalName, number string) (TerminalName, bool) {
	i := slices.IndexFunc(list, func(t TerminalName) bool { return t.Number == number })
	if i < 0 {
		return TerminalName{}, false
	}
	return list[i], true
}
