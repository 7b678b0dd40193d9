package model

import (
	"fmt"
	"slices"
	"strings"

	"legwork/harness/diag"
	"legwork/harness/draft"
	"legwork/harness/quantity"
)

// nameSet is one set of names in which each may be given once, and not
// another that differs by case alone.
type nameSet struct {
	fold  map[string]int32 // by lower-case name: its index in the lists
	order []string         // names as given
	given []named          // beside order
}

// named is what bears a name, and where it got it.
type named struct {
	what string // "relay"
	at   diag.Span
}

func newNameSet() *nameSet { return &nameSet{fold: map[string]int32{}} }

// grow makes room for that many names in a set that is empty or nearly so.
func (s *nameSet) grow(names int) {
	if len(s.order) == 0 {
		s.fold = make(map[string]int32, names)
	}
	s.order, s.given = slices.Grow(s.order, names), slices.Grow(s.given, names)
}

// has reports whether the set holds exactly this name.
func (s *nameSet) has(name string) bool {
	i, ok := s.fold[strings.ToLower(name)]
	return ok && s.order[i] == name
}

// declare puts a name into its set. A name that is there already is reported
// with its first place, and gives false.
func (b *builder) declare(s *nameSet, name, what string, at diag.Span) bool {
	key := strings.ToLower(name)
	i, taken := s.fold[key]
	if !taken {
		s.fold[key] = int32(len(s.order))
		s.order, s.given = append(s.order, name), append(s.given, named{what, at})
		return true
	}
	first := s.given[i]
	where := fmt.Sprintf("on line %d", first.at.Line)
	if first.at.File != at.File && !first.at.IsZero() {
		where += " of " + first.at.File
	}
	msg := fmt.Sprintf("%s %s has the name of the %s %s", what, clip(name), first.what, where)
	if old := s.order[i]; old != name {
		msg = fmt.Sprintf("%s %s differs from %s %s by case alone", what, clip(name), clip(old), where)
	}
	f := b.say(duplicateRule, at, "%s", msg)
	if !first.at.IsZero() {
		f.Related = []diag.Related{{At: first.at, Msg: "first given here"}}
	}
	return false
}

// missing is a name that was used and that nothing bears.
type missing struct {
	says     string // "no device %q in this draft"
	word     string
	at       diag.Span
	whole    func(near string) string // what to write there instead
	count    int
	expected []string
	seq      int
}

// noName notes the use of an unknown name; it is reported once, at its first
// use, with how often it is used.
func (b *builder) noName(what, word string, at diag.Span, expected []string) {
	if !b.ghosts[word] {
		b.note(missing{says: "no " + what + " %q in this draft", word: word, at: at, expected: expected,
			whole: func(near string) string { return near }})
	}
}

func (b *builder) note(m missing) {
	key := m.says + "\x00" + m.word
	if first := b.unknown[key]; first != nil {
		first.count++
		return
	}
	m.count, m.seq = 1, len(b.unknown)
	b.unknown[key] = &m
}

// sayMissing reports the unknown names.
func (b *builder) sayMissing() {
	all := make([]*missing, 0, len(b.unknown))
	for _, m := range b.unknown {
		all = append(all, m)
	}
	slices.SortFunc(all, func(x, y *missing) int { return x.seq - y.seq })
	b.unsaid = max(0, len(all)-maxFindings-1)
	for _, m := range all[:min(len(all), maxFindings+1)] {
		says := fmt.Sprintf(m.says, clip(m.word))
		if m.count > 1 {
			says += fmt.Sprintf(", named %d times", m.count)
		}
		b.sayUnknownIn(m.whole, nameRule, m.at, m.word, m.expected, "%s", says)
	}
}

// nameOf reads an item as a name: one word without dots, or a string. It
// reports what can't be one.
func (b *builder) nameOf(it draft.Item, what string) (string, bool) {
	name := it.Text
	if !it.Quoted {
		if it.IsList() {
			b.say(nameRule, it.At, "%s takes one name, not the list %s", article(what), clip(it.Raw))
			return "", false
		}
		if len(it.List) == 1 && len(it.List[0].Parts) == 1 {
			name = it.List[0].Parts[0]
		}
	}
	if strings.Contains(name, ".") {
		if _, err := quantity.Parse(it.Raw); err == nil {
			b.say(missingRule, it.At, "%s needs a name before %s", article(what), clip(it.Raw))
			return "", false
		}
		b.say(nameRule, it.At, "the name %s of %s holds a dot", clip(it.Raw), article(what))
		return "", false
	}
	if strings.TrimSpace(name) == "" {
		b.say(nameRule, it.At, "%s needs a name that is not empty", article(what))
		return "", false
	}
	return name, true
}

// article puts "a" or "an" before a word.
func article(word string) string {
	if word != "" && strings.ContainsRune("aeiouAEIOU", rune(word[0])) {
		return "an " + word
	}
	return "a " + word
}
