package model

import (
	"slices"

	"legwork/harness/part"
)

// needLines reports devices that do nothing without the lines below them and
// have none. A line that could not be read was told already.
func (b *builder) needLines() {
	joins := func(l part.Line) bool { return len(l.Refs) > 0 }
	for _, d := range b.m.Devices {
		if l := d.Kind.Lines; l != nil && l.Needed != "" && !b.lenient[d] && !slices.ContainsFunc(d.Lines, joins) {
			b.say(missingRule, d.At, "%s %s", d.Name, l.Needed)
		}
	}
}
