package part

import (
	"fmt"
	"maps"
	"slices"
	"strings"
)

// registry holds every kind by name. It is filled by define while the
// program starts and only read afterwards.
var registry = map[string]*Kind{}

// define checks the declaration of a kind and keeps it. A wrong declaration
// is a fault of this package, found at every start, so it panics.
func define(k Kind) *Kind {
	if k.mayHaveStuds() {
		k.Settings = append(k.Settings, flag(studsSetting, k.studsDoc()))
	}
	if err := k.verify(); err != nil {
		panic("part: kind " + k.Name + ": " + err.Error())
	}
	if _, twice := registry[k.Name]; twice {
		panic("part: kind " + k.Name + " is declared twice")
	}
	registry[k.Name] = &k
	return &k
}

// Kinds lists every kind by name.
func Kinds() []*Kind {
	return slices.SortedFunc(maps.Values(registry), func(a, b *Kind) int {
		if a.Name < b.Name {
			return -1
		}
		return 1
	})
}

// Of gives the kind with that word; ok is false if there is none.
func Of(name string) (k *Kind, ok bool) {
	k, ok = registry[name]
	return k, ok
}

// verify reports the first thing wrong with a declaration.
func (k *Kind) verify() error {
	for what, text := range map[string]string{"name": k.Name, "title": k.Title, "law": k.Law, "letter": k.Letter} {
		if text == "" {
			return fmt.Errorf("has no %s", what)
		}
	}
	if k.Stamp == nil {
		return fmt.Errorf("has no stamp")
	}
	if err := k.verifyTerminals(); err != nil {
		return err
	}
	if err := verifySettings(k.Settings); err != nil {
		return err
	}
	if k.Lines != nil {
		if err := verifySettings(k.Lines.Settings); err != nil {
			return err
		}
		for _, r := range k.Lines.Roles {
			if r.Word == "" || r.Doc == "" {
				return fmt.Errorf("role %q lacks a word or a doc", r.Word)
			}
			if err := verifySettings(r.Settings); err != nil {
				return fmt.Errorf("role %s: %w", r.Word, err)
			}
		}
	}
	return k.verifySymbols()
}

// verifyTerminals wants every name and alias once, and a doc for each.
func (k *Kind) verifyTerminals() error {
	seen := map[string]bool{}
	for _, t := range k.Terminals {
		if t.Doc == "" {
			return fmt.Errorf("terminal %s has no doc", t.Name)
		}
		for _, n := range append([]string{t.Name}, t.Aliases...) {
			if n == "" || seen[n] {
				return fmt.Errorf("terminal name %q is empty or not unique", n)
			}
			seen[n] = true
		}
	}
	if len(k.Terminals) == 0 && k.Lines == nil {
		return fmt.Errorf("has no terminals")
	}
	if k.Ground != "" && !k.hasTerminal(k.Ground) {
		return fmt.Errorf("ground terminal %s is not among its terminals", k.Ground)
	}
	if k.Self && len(k.Terminals) != 1 {
		return fmt.Errorf("is its own terminal but has %d", len(k.Terminals))
	}
	return nil
}

func (k *Kind) hasTerminal(name string) bool {
	return slices.ContainsFunc(k.Terminals, func(t Terminal) bool { return t.Name == name })
}

// TerminalsOf gives the fixed terminals that a device with these settings
// (and lines, where it has some) has, in the order of the declaration.
func (k *Kind) TerminalsOf(d *Device) []Terminal {
	out := make([]Terminal, 0, len(k.Terminals))
	for _, t := range k.Terminals {
		if k.Fits == nil || k.Fits(d, t.Name) {
			if k.Bolted != nil && k.Bolted(d) || d.Said(studsSetting) && !slices.Contains(k.Bladed, t.Name) {
				t.Landing = Post
			}
			out = append(out, t)
		}
	}
	return out
}

// studsSetting is the word for a device whose wires end in rings.
const studsSetting = "studs"

// mayHaveStuds reports whether a kind has fixed terminals that usually take a
// crimped terminal and may be studs on a heavy or on an old device.
func (k *Kind) mayHaveStuds() bool {
	return !k.Self && slices.ContainsFunc(k.Terminals, func(t Terminal) bool { return t.Landing != Post })
}

func (k *Kind) studsDoc() string {
	if len(k.Bladed) == 0 {
		return "its terminals are studs or screws: a ring under each nut, a bolted joint each"
	}
	return "its terminals are studs, all but " + strings.Join(k.Bladed, " and ") + ": a ring under each nut, a bolted joint each"
}
