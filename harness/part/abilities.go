package part

import "strings"

// Abilities names what the kind can do, in the order in which a reader asks.
func (k *Kind) Abilities() []string {
	var out []string
	for _, a := range [...]struct {
		has  bool
		text string
	}{
		{k.Supplies != nil, "supplies current"},
		{k.Protects != nil, "opens on too much current"},
		{k.Draws != nil, "draws current"},
		{k.Switches != nil, "makes and breaks a path"},
		{k.Drives != nil, "commands outputs"},
		{k.Kicks != nil, "kicks when it is switched off, unless suppressed"},
		{k.Grounds != nil, "says where it wants its return"},
		{k.Passes != nil, "lets current through"},
		{k.Inside != nil, "has ways inside by which current comes or returns"},
		{k.Holds != nil, "keeps terminals at volts of its own"},
		{k.Couples != nil, "mates terminals"},
		{k.Joins, "joins wires"},
		{k.Ground != "", "may return through metal (grounds-to)"},
		{k.Buys != nil, "stands on the parts list"},
	} {
		if a.has {
			out = append(out, a.text)
		}
	}
	return out
}

// abilities prints them as one sentence.
func (k *Kind) abilities() string {
	all := k.Abilities()
	if len(all) == 0 {
		return "None."
	}
	text := strings.Join(all, "; ") + "."
	return strings.ToUpper(text[:1]) + text[1:]
}
