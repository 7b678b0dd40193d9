package check

import "legwork/harness/diag"

// The rules below are reported by the stages before this one; they are
// declared here so that they are explained, accepted and listed like any other.

var _ = define(Rule{
	ID: "draft-unreadable", Severity: diag.Fault, Stage: Drafted,
	Title:  "The file of a draft can't be read.",
	Why:    "It does not exist, is no plain file, or is larger than 16 MB. Nothing of it was looked at.",
	Misses: "Nothing: a file that was read in part is not judged.",
})

var _ = define(Rule{
	ID: "draft-syntax", Severity: diag.Fault, Stage: Drafted,
	Title:  "A line of the draft can't be read.",
	Why:    "A draft is one statement a line; a deeper-indented line belongs to the line above. The message says what was expected at the caret. Every mistake of the file is told in one run.",
	Misses: "A line that reads well but says something else than was meant.",
})

var _ = define(Rule{
	ID: "draft-word", Severity: diag.Fault, Stage: Drafted,
	Title:  "A word is not one that may stand here.",
	Why:    "Kinds, settings, colors, families and step names come from closed sets. The message gives the nearest word that would be read.",
	Misses: "A valid word in the wrong place that happens to be read.",
})

var _ = define(Rule{
	ID: "draft-name", Severity: diag.Fault, Stage: Drafted,
	Title:  "A name stands for nothing in the draft.",
	Why:    "A wire, a bus or a setting names a device, terminal, place, metal or rule that is not there. It is told once, however often it is used, with the nearest name that is.",
	Misses: "A name that exists but is not the one that was meant.",
})

var _ = define(Rule{
	ID: "draft-unit", Severity: diag.Fault, Stage: Drafted,
	Title:  "A figure has the wrong unit, or none.",
	Why:    "Every figure carries its unit without a blank, as 15A, 9ft6in or 2.5mm2, so that amperes are never taken for millimeters.",
	Misses: "A figure with the right unit and the wrong size that is still in range.",
})

var _ = define(Rule{
	ID: "draft-range", Severity: diag.Fault, Stage: Drafted,
	Title:  "A figure lies outside what its setting allows.",
	Why:    "Every setting has a range, wide enough for what vehicles have, so that a slipped digit is seen.",
	Misses: "A slipped digit that stays inside the range.",
})

var _ = define(Rule{
	ID: "draft-duplicate", Severity: diag.Fault, Stage: Drafted,
	Title:  "A name or a setting is given twice.",
	Why:    "Names are unique within their set, and not by case alone; a setting is said once. Two wires of one number would make every paper ambiguous.",
	Misses: "Two names that differ only in look, such as O1 and 01.",
})

var _ = define(Rule{
	ID: "draft-missing", Severity: diag.Fault, Stage: Drafted,
	Title:  "Something that has to be said is missing.",
	Why:    "A wire needs two ends, an accept needs a reason, some settings have no sensible default. The message says what has to stand there.",
	Misses: "What may be left out: its assumed value is listed among the guesses.",
})

var _ = define(Rule{
	ID: "draft-limit", Severity: diag.Fault, Stage: Drafted,
	Title:  "The draft is larger than legwork reads.",
	Why:    "Sizes are bounded before anything is allocated: 16 MB, 64 KB a line, 200,000 wires, 512 cavities, 64 steps.",
	Misses: "Nothing: what lies over a limit is not read.",
})

var _ = define(Rule{
	ID: "draft-include", Severity: diag.Fault, Stage: Drafted,
	Title:  "A file that the draft includes is not read.",
	Why:    "A draft includes files beside it or below it, never above or by a path from the root, at most 64 of them and 8 deep, regular files of 16 MB in all. A file that includes itself is told once; one that is read already adds nothing. A draft from standard input has no folder and includes nothing.",
	Misses: "Two files that define the same part alike: that is a duplicate name.",
})

var _ = define(Rule{
	ID: "over-60-volts", Severity: diag.Danger, Stage: Drafted,
	Title:  "The draft has more than 60 V d.c.",
	Why:    "Above 60 V d.c. a touch can kill, arcs do not go out by themselves, and other rules, parts and training apply. legwork refuses to work on such a system, whether a figure says it or batteries in series add up to it.",
	Misses: "High voltage made inside a device, such as an ignition coil.",
})

var _ = define(Rule{
	ID: "wire-shorter-than-path", Severity: diag.Warning, Stage: Routed,
	Title:  "A wire's given length is less than its way.",
	Why:    "The legs between its two ends, with a tail at each end, are longer than the length that the draft gives. A lead that is too short can't be plugged in (a fault); a wire that is too short is cut twice.",
	Misses: "Slack for engine movement, drip loops and service.",
})

var _ = define(Rule{
	ID: "no-way-between-places", Severity: diag.Fault, Stage: Routed,
	Title:  "No legs lead from one end of a wire to the other.",
	Why:    "The two ends lie at places that no chain of legs joins, so the length is not known and 10 ft are assumed. Add the missing leg, or give the wire its length.",
	Misses: "A way that exists on paper but not in the vehicle.",
})

var _ = define(Rule{
	ID: "program-fault", Severity: diag.Fault, Stage: Solved,
	Title:  "legwork contradicts itself.",
	Why:    "The currents at a point do not add up to nothing, which is a mistake in legwork and not in the harness. Do not trust this report; please keep the draft and report it.",
	Misses: "A mistake that is consistent with itself.",
})
