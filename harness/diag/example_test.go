package diag_test

import (
	"fmt"
	"os"

	"legwork/harness/diag"
)

// An invented draft with one fault, and how it is told.
func ExampleWriteText() {
	draft := "box A2 at dash\n" +
		"  fuse F3 \"Pump\" 30A in A2\n" +
		"circuit pump\n" +
		"  wire 201 F3.2 K1.30 18AWG\n"
	found := diag.List{{
		Rule:     "fuse-above-wire",
		Severity: diag.Danger,
		At:       diag.Span{File: "truck.draft", Line: 2, Col: 18, End: 21, Off: 32, EndOff: 35},
		Msg:      "fuse F3 is 30 A, wire 201 behind it carries 20.7 A",
		Detail: "A fuse protects wire: it has to open before the wire behind it gets hotter than " +
			"its insulation stands. This one would let the wire burn.",
		Values: []diag.Value{{Name: "fuse rating", Got: 30, Limit: 20.7, Unit: "A", Bound: diag.AtMost}},
		Related: []diag.Related{{
			At:  diag.Span{File: "truck.draft", Line: 4, Col: 23, End: 28, Off: 74, EndOff: 79},
			Msg: "wire 201 is 18 AWG",
		}},
		Fix: &diag.Fix{Msg: "make F3 20A, or wire 201 at least 14AWG"},
	}}
	err := diag.WriteText(os.Stdout, found, diag.TextOptions{
		Source: func(string) []byte { return []byte(draft) },
		Width:  80,
	})
	if err != nil {
		fmt.Println(err)
	}
	// Output:
	// truck.draft:2:18: danger: fuse F3 is 30 A, wire 201 behind it carries 20.7 A [fuse-above-wire]
	//   2 |   fuse F3 "Pump" 30A in A2
	//     |                  ^^^
	//     = why: A fuse protects wire: it has to open before the wire behind it gets
	//            hotter than its insulation stands. This one would let the wire burn.
	//     = value: fuse rating 30 A, at most 20.7 A
	//     = see: truck.draft:4:23: wire 201 is 18 AWG
	//     = fix: make F3 20A, or wire 201 at least 14AWG
}
