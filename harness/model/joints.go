package model

import (
	"slices"
	"strings"

	"legwork/harness/draft"
)

// spareStmt is a spare line under a device: its names are terminals of it.
type spareStmt struct {
	stmt *draft.Stmt
	d    *Device
}

// buildJoint reads the statements about terminals that stand by themselves:
// together and spare take the rest of the line.
func (b *builder) buildJoint() {
	for _, s := range b.joint {
		c := newCursor(s)
		if !c.more() {
			if !s.Bad {
				b.say(missingRule, s.Head.At, "%s needs a terminal", s.Head.Raw)
			}
			continue
		}
		if nearestOf(s.Head.Raw, []string{"spare", "together"}) == "spare" {
			for c.more() {
				for _, r := range refsOf(c.take()) {
					b.quiet(b.resolve(r))
				}
			}
			continue
		}
		b.buildTogether(s, c)
	}
	for _, s := range b.spares {
		for _, it := range s.stmt.Items {
			for _, r := range refsOf(it) {
				b.quietOf(s.d, r)
			}
		}
	}
}

// quiet marks a terminal that stays without a wire on purpose.
func (b *builder) quiet(t *Terminal) {
	if t != nil {
		t.Device.Pins[t.Pin].Quiet = true
	}
}

func (b *builder) quietOf(d *Device, r draft.Ref) {
	pin := strings.Join(r.Parts, ".")
	if t := d.called(pin); t != nil {
		b.quiet(t)
	} else {
		b.noTerminal(d, pin, r.At, "")
	}
}

// buildTogether reads "together TERMINAL 14 15".
func (b *builder) buildTogether(s *draft.Stmt, c *cursor) {
	refs := refsOf(c.take())
	j := Together{At: s.Head.At}
	if len(refs) > 0 {
		j.Terminal = b.resolve(refs[0])
	}
	count, good := 0, true
	for c.more() {
		for _, r := range refsOf(c.take()) {
			count++
			w := b.m.wireNumbered[strings.Join(r.Parts, ".")]
			switch {
			case w == nil:
				good = false
				if !b.numSet.has(r.Raw) {
					b.noName("wire", r.Raw, r.At, nil) // a near number is no hint
				}
			case j.Terminal != nil && w.From != j.Terminal && w.To != j.Terminal:
				good = false
				b.say(nameRule, r.At, "wire %s does not end at %s", w.Number, fullName(j.Terminal))
			case slices.Contains(j.Wires, w):
				b.say(duplicateRule, r.At, "together names wire %s twice", w.Number)
			default:
				j.Wires = append(j.Wires, w)
			}
		}
	}
	if count < 2 {
		b.say(missingRule, s.Head.At, "together needs a terminal and two wires, as: together K1.87 14 15")
		return
	}
	if j.Terminal != nil && good {
		b.m.Together = append(b.m.Together, j)
	}
}

// buildAccepts reads "accept RULE "reason"". Whether the rule exists and
// found something is looked at when the rules have run.
func (b *builder) buildAccepts() {
	for _, s := range b.accepts {
		c := newCursor(s.stmt)
		rule := c.word()
		if rule == "" {
			if !s.stmt.Bad {
				b.say(missingRule, s.stmt.Head.At, "accept needs a rule and a reason: accept RULE \"reason\"")
			}
			continue
		}
		a := &Accept{Rule: rule, Scope: s.scope, At: c.take().At}
		if !c.more() || !c.peek().Quoted || strings.TrimSpace(c.peek().Text) == "" {
			b.say(missingRule, a.At, "accept %s needs a reason in quotes", clip(rule))
			continue
		}
		a.Reason = c.take().Text
		if c.more() {
			b.say(wordRule, c.peek().At, "accept takes a rule and a reason and nothing else: %s", clip(c.peek().Raw))
		}
		b.m.Accepts = append(b.m.Accepts, a)
	}
}
