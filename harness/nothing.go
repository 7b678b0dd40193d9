package harness

import (
	"slices"

	"legwork/harness/diag"
	"legwork/harness/model"
)

// missingRule is the rule of what a draft has to have and has not.
const missingRule = "draft-missing"

// nothing answers a draft without a device and a wire: silence about it would
// read as a pass.
func nothing(m *model.Model) (f diag.Finding, empty bool) {
	if len(m.Devices) > 0 || len(m.Wires) > 0 {
		return f, false
	}
	return diag.Finding{
		Rule: missingRule, Severity: diag.Fault, At: diag.Span{File: m.File},
		Msg:    "there is nothing to check: the draft has no device and no wire",
		Detail: "A battery, a fuse, a switch and a lamp with the wires between them are a draft; each is one line.",
	}, true
}

// noSource answers a draft that nothing feeds, once, in place of every load
// that gets no current and every ground that leads to no battery.
func noSource(m *model.Model, found diag.List) diag.List {
	for _, d := range m.Devices {
		if d.Kind.Supplies != nil && len(d.Kind.Supplies(d.Device)) > 0 {
			return found
		}
	}
	found = slices.DeleteFunc(found, func(f diag.Finding) bool {
		return f.Rule == "load-without-feed" || f.Rule == "load-without-return"
	})
	return append(found, diag.Finding{
		Rule: missingRule, Severity: diag.Fault, At: diag.Span{File: m.File},
		Msg:    "there is no battery and no alternator in the draft: nothing in it gets current",
		Detail: "Draw the battery as a device, and its cables as wires; most rules can't run without.",
	})
}
