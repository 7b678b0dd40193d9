package main

import (
	"legwork/gauge"
	"legwork/harness/shop"
)

// profiles prints the sets of limits side by side, and where the rule-books
// behind them disagree.
func (p *printer) profiles() {
	p.line("Profiles")
	all := gauge.Profiles()
	for _, f := range all {
		p.wrapped("  ", "      ", f.Name+": "+f.Title)
	}
	p.line("")
	p.table("", sideBySide(all))
	p.line("")
	p.wrapped("", "", "A note: a longer run breaks no rule of that profile. legwork explain PROFILE gives the document behind each limit.")
	p.disagreements()
}

// sideBySide is a table of limits by profile.
func sideBySide(all []gauge.Profile) shop.Table {
	t := shop.Table{Columns: []shop.Column{{Key: "limit", Name: "Limit"}}}
	for i, f := range all {
		t.Columns = append(t.Columns, shop.Column{Key: f.Name, Name: f.Name})
		for j, l := range f.Limits() {
			if i == 0 {
				t.Rows = append(t.Rows, []shop.Cell{shop.Word(l.Title)})
			}
			t.Rows[j] = append(t.Rows[j], shop.Word(l.Text))
		}
	}
	return t
}

func (p *printer) disagreements() {
	p.line("")
	p.line("Where rule-books disagree")
	seen := keysSeen{}
	for _, d := range gauge.Disagreements() {
		p.line("")
		p.line("  " + d.Topic)
		for _, q := range d.Positions {
			p.wrapped("    ", "      ", q.Says+"  ["+q.Source+"]")
			seen.add(q.Source)
		}
		p.wrapped("    taken: ", "      ", d.Taken)
	}
	p.keys("", seen)
}

// profile prints one set of limits, each with its document, beside the
// default profile and those that differ.
func (p *printer) profile(f gauge.Profile) {
	p.wrapped("", "  ", f.Name+": "+f.Title)
	p.wrapped("  ", "    ", sourceText(f.Source))
	p.line("")
	base := gauge.Profiles()[0]
	t := shop.Table{Columns: []shop.Column{{Key: "limit", Name: "Limit"}, {Key: f.Name, Name: f.Name}}}
	if base.Name != f.Name {
		t.Columns = append(t.Columns, shop.Column{Key: base.Name, Name: base.Name})
	}
	t.Columns = append(t.Columns, shop.Column{Key: "confidence", Name: "Confidence"}, shop.Column{Key: "source", Name: "Source"})
	seen := keysSeen{}
	for i, l := range f.Limits() {
		row := []shop.Cell{shop.Word(l.Title), shop.Word(l.Text)}
		if base.Name != f.Name {
			row = append(row, shop.Word(base.Limits()[i].Text))
		}
		t.Rows = append(t.Rows, append(row, shop.Word(l.Confidence().String()), shop.Word(l.Source)))
		seen.add(l.Source)
	}
	p.table("", t)
	p.keys("  ", seen)
	p.line("")
	p.wrapped("", "  ", "legwork explain profiles prints all side by side, with where rule-books disagree.")
}

// keysSeen holds keys of sources in the order in which they were met.
type keysSeen struct{ keys []string }

func (k *keysSeen) add(key string) {
	for _, have := range k.keys {
		if have == key {
			return
		}
	}
	k.keys = append(k.keys, key)
}

func (p *printer) keys(indent string, k keysSeen) {
	p.line("")
	p.line(indent + "Sources")
	for _, key := range k.keys {
		p.wrapped(indent+"  ", indent+"    ", sourceText(key))
	}
}
