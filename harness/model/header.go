package model

import (
	"legwork/gauge"
	"legwork/harness/draft"
	"legwork/harness/quantity"
)

// buildHeader reads "draft 1" and the harness line.
func (b *builder) buildHeader() {
	seen := map[string]*draft.Stmt{}
	for _, s := range b.header {
		head := nearestOf(s.Head.Raw, []string{"draft", "harness"})
		if s.Head.At.File != b.f.Name {
			b.headerIncluded(s, head)
			continue
		}
		if first := seen[head]; first != nil {
			b.say(duplicateRule, s.Head.At, "a second %s line; the first is line %d", head, first.Line)
			continue
		}
		seen[head] = s
		if head == "draft" {
			b.buildVersion(s)
		} else {
			b.buildHarness(s)
		}
	}
	if h := seen["harness"]; h == nil {
		b.guess("system", "12 V", "", b.top())
	}
}

// headerIncluded reads a head line of an included file: it may say its
// version, but there is one harness.
func (b *builder) headerIncluded(s *draft.Stmt, head string) {
	if head == "draft" {
		b.buildVersion(s)
		return
	}
	b.say(wordRule, s.Head.At, "harness stands in the draft itself, not in a file that it includes")
}

func (b *builder) buildVersion(s *draft.Stmt) {
	c := newCursor(s)
	if !c.more() {
		b.say(missingRule, s.Head.At, "draft needs the version of the language: draft 1")
		return
	}
	if it := c.take(); it.Raw != "1" {
		b.say(rangeRule, it.At, "this version reads draft 1, not %s", clip(it.Raw))
	}
	if c.more() {
		b.say(wordRule, c.peek().At, "draft takes a version and nothing else: %s", clip(c.peek().Raw))
	}
}

func (b *builder) buildHarness(s *draft.Stmt) {
	c := newCursor(s)
	if c.more() && !c.peek().Quoted {
		switch c.word() {
		case "system", "profile", "units", "":
		default:
			b.m.Title = c.take().Text
		}
	}
	var units string
	said := false
	f := &form{owner: "harness", name: "harness", label: &b.m.Title, words: map[string]func(*cursor, draft.Item){
		"system":  func(c *cursor, w draft.Item) { said = true; b.readSystem(c, w) },
		"profile": func(c *cursor, w draft.Item) { b.oneWord(c, w, profileNames(), &b.m.Profile) },
		"units":   func(c *cursor, w draft.Item) { b.oneWord(c, w, []string{"us", "metric"}, &units) },
	}}
	b.read(f, c)
	b.m.Metric = units == "metric"
	if !said {
		b.guess("system", "12 V", "", s.Head.At)
	}
}

// readSystem takes the nominal volts: 12 or 24.
func (b *builder) readSystem(c *cursor, w draft.Item) {
	if !c.isFigure() {
		b.say(missingRule, w.At, "system needs its volts: 12V or 24V")
		return
	}
	fig := b.takeFigure(c)
	switch {
	case fig.bad:
	case fig.Dim != quantity.Voltage:
		b.say(unitRule, fig.at, "system is 12V or 24V, not %s", clip(fig.Raw))
	case fig.Value > maxVolts:
		b.overVolts("system", fig)
	case fig.Value != 12 && fig.Value != 24:
		b.say(rangeRule, fig.at, "system is %s; this version takes 12V or 24V", clip(fig.Raw))
	default:
		b.m.SystemV = fig.Value
	}
}

func profileNames() []string {
	var names []string
	for _, p := range gauge.Profiles() {
		names = append(names, p.Name)
	}
	return names
}
