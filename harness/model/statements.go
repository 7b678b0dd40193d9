package model

import (
	"legwork/harness/part"
	"legwork/harness/quantity"
)

// Slots that several statements have.
var (
	nameSlot   = Slot{Name: "NAME", Takes: NewName}
	numberSlot = Slot{Name: "NUMBER", Takes: NewName}
	endSlot    = Slot{Name: "END", Takes: AnEnd}
	stepSlot   = Slot{Name: "STEP", Takes: AStep}
	optionWord = Word{"option", []Slot{{Name: "OPTION", Takes: AnOption}}, "the option that it belongs to"}
	existWord  = Word{"existing", nil, "it is in the vehicle already: drawn dashed, tested, never cut or bought"}
)

// Statements lists what a draft may say besides devices, in the order of the
// reference.
func Statements() []Statement {
	return append(append(append(ofDraft(), ofVehicle()...), ofWires()...), ofShelf()...)
}

// ofDraft are the statements about the draft and its steps.
func ofDraft() []Statement {
	return []Statement{
		{Word: "draft", Slots: []Slot{{Name: "VERSION", Takes: AWord, Words: []string{"1"}}},
			Doc: "The version of the language that the draft is written in.", Example: "draft 1"},
		{Word: "harness", Label: true, Doc: "The title of the harness and what holds for the whole of it.",
			Words: []Word{
				{"system", []Slot{{Name: "VOLTS", Takes: AFigure, Dim: quantity.Voltage, Words: []string{"12V", "24V"}}}, "nominal volts; 12 V when not said, a guess"},
				{"profile", []Slot{{Name: "PROFILE", Takes: AWord, Words: profileNames()}}, "set of limits that is held; road when not said"},
				{"units", []Slot{{Name: "UNITS", Takes: AWord, Words: []string{"us", "metric"}}}, "how lengths and sizes are printed, and the ladder that sizes are chosen from; us when not said"},
			}, Example: `harness "Yard truck" system 12V profile road units us`},
		{Word: "step", Slots: []Slot{nameSlot}, Label: true, Doc: "Adds a moment of use, or changes the one that has this name.",
			Words: []Word{
				{"like", []Slot{stepSlot}, "the step that it takes key and engine from; every list that names that step then covers this one as well"},
				{"after", []Slot{stepSlot}, "the step that it follows; the one that it is like, or else running, when not said"},
				{"key", []Slot{{Name: "KEY", Takes: AWord, Words: keyPositions}}, "where the key stands; also a position that a key of the draft has besides"},
				{"engine", []Slot{{Name: "ENGINE", Takes: AWord, Words: engineWords}}, "what the engine does"},
			}, Example: `step night "Running, lamps on" like running`},
		{Word: "accept", Circuit: true, Slots: []Slot{{Name: "RULE", Takes: ARule}, {Name: "REASON", Takes: AText}},
			Doc:     "Accepts what a rule finds, for a reason: below a statement in that statement, at the margin in the whole draft.",
			Example: `accept unprotected-wire "ours for thirty years, inside a steel pipe"`},
		{Word: "note", Circuit: true, Slots: []Slot{{Name: "TEXT", Takes: Anything, Several: true}},
			Doc: "A remark for those who read the draft. legwork does not read it.", Example: `note "the old loom was green here"`},
	}
}

// ofVehicle are the statements about what the harness is built into.
func ofVehicle() []Statement {
	return []Statement{
		{Word: "place", Slots: []Slot{nameSlot}, Label: true, Settings: placeSettings,
			Doc: "A spot in the vehicle. Its name holds no hyphen.", Example: `place tank "Tank well" 60C wet`},
		{Word: "leg", Slots: []Slot{{Name: "PLACE", Takes: APlace}, {Name: "PLACE", Takes: APlace}}, Settings: legSettings,
			Doc: "A stretch of harness between two places. It is called by both: bay-dash.", Example: "leg bay dash 35in tape"},
		{Word: "metal", Slots: []Slot{nameSlot}, Label: true, Settings: metalSettings,
			Doc: "A body that carries return current: frame, engine block, tank. A draft without one has frame.", Example: `metal block "Engine block"`},
		{Word: "option", Slots: []Slot{nameSlot}, Label: true,
			Doc: "Something that a vehicle may have or not. `option NAME` on devices, circuits and wires uses it; `--with NAME` fits it.", Example: `option winch "Front winch"`},
	}
}

// ofWires are the statements about conductors and their ends.
func ofWires() []Statement {
	wire := func(word, doc, example string, words ...Word) Statement {
		return Statement{Word: word, Slots: []Slot{numberSlot, endSlot, endSlot}, Label: true, Settings: wireSettings, Colors: true, Families: true,
			Words: append([]Word{
				{"via", []Slot{{Name: "PLACE", Takes: APlace, Several: true}}, "places that it has to pass, in order, joined by commas"}, optionWord, existWord,
			}, words...), Circuit: true, Doc: doc, Example: example}
	}
	core := wire("core", "A core of the cable above it. What it does not say it has of the cable.", "core 301 A1.CRANK B1.S")
	drain := wire("drain", "The drain wire of the cable above it.", "drain 303 A1.SHIELD open")
	core.Under, drain.Under = "cable", "cable"
	return []Statement{
		{Word: "circuit", Slots: []Slot{nameSlot}, Label: true, Settings: circuitSettings, Families: true,
			Words: []Word{{"color", []Slot{{Name: "COLOR", Takes: AColor}}, "color of its wires that have none of their own"}, optionWord},
			Doc:   "Wires that do one job, with what holds for all of them. The wires stand below it; one that stands in none is in the circuit `loose`.", Example: `circuit pump "Fuel pump" drop 3% color GN/WH`},
		wire("wire", "A conductor that is bought, cut and crimped. The word `open` in place of an end leaves it bare on purpose.", "wire 202 K1.87 X2.cab.1 14AWG GN/WH"),
		wire("lead", "A pigtail that comes with a device: never bought, cut or resized. It has to say size and length.", "lead 31 B1.S X4.a.1 18AWG 12in"),
		wire("strap", "Joins two studs, or other posts. It runs straight and has to say its length.", "strap 91 E1 E2 4AWG 18in"),
		{Word: "cable", Slots: []Slot{nameSlot}, Label: true, Settings: cableSettings, Families: true, Words: []Word{optionWord, existWord}, Circuit: true,
			Doc: "Several cores in one jacket. The cores stand below it.", Example: "cable 300 20AWG 9ft shielded twisted"},
		core, drain,
		{Word: "together", Circuit: true, Slots: []Slot{{Name: "TERMINAL", Takes: AnEnd}, {Name: "NUMBER", Takes: AWire, Several: true}},
			Doc: "Allows two wires in one cavity. Studs, splices, buses and posts need no such line.", Example: "together K1.87 14 15"},
		{Word: "spare", Circuit: true, Slots: []Slot{{Name: "TERMINAL", Takes: AnEnd, Several: true}},
			Doc: "Terminals that stay without a wire on purpose.", Example: "spare X2.cab.5 X2.cab.6"},
	}
}

// ofShelf are the statements about parts that are defined once.
func ofShelf() []Statement {
	return []Statement{
		{Word: "include", Slots: []Slot{{Name: "FILE", Takes: AText}},
			Doc: "Takes in the statements of another file, in the draft's own folder or below it.", Example: `include "shelf.draft"`},
		{Word: "part", Slots: []Slot{{Name: "KIND", Takes: AKind}, nameSlot}, Label: true,
			Doc: "Defines a part of the shelf: a kind with its settings and lines, used by `part NAME` on a device.", Example: "part relay small-relay coil 85ohm contact 30A"},
		{Word: "plug", Under: "module", Slots: []Slot{nameSlot}, Label: true, Settings: plugSettings, Words: []Word{terminalsWord, sealsWord},
			Doc: "A housing of a controller that has several. The line of a terminal then says its cavity: `BAT feed 0.4A at A.12`.", Example: "plug A 24way sealed"},
	}
}

// LineWords are the words that a line below a device may say besides the
// settings of its role.
func LineWords(shape part.Shape) []Word {
	switch shape {
	case part.TerminalLines:
	case part.HalfLines:
		return []Word{terminalsWord, sealsWord}
	default:
		return nil
	}
	return []Word{{"at", []Slot{{Name: "PLUG.CAVITY", Takes: ACavity}}, "the cavity of a plug that it sits in"}}
}
