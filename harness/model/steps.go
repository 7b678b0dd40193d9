package model

import (
	"slices"

	"legwork/harness/draft"
	"legwork/harness/part"
)

// maxSteps is how many moments of use a draft may have: a step set has 64 bits.
const maxSteps = 64

// usualSteps are the moments of use that every draft has, in order of play.
var usualSteps = []part.Step{
	{Name: "off", Key: "off", Engine: part.Still},
	{Name: "acc", Key: "acc", Engine: part.Still},
	{Name: "prime", Key: "run", Engine: part.Still},
	{Name: "koeo", Key: "run", Engine: part.Still},
	{Name: "gap", Key: "gap", Engine: part.Still},
	{Name: "engage", Key: "crank", Engine: part.Locked},
	{Name: "crank", Key: "crank", Engine: part.Turning},
	{Name: "running", Key: "run", Engine: part.Running},
	{Name: "stalled", Key: "run", Engine: part.Still},
	{Name: "coast", Key: "off", Engine: part.RunningDown},
	{Name: "rest", Key: "off", Engine: part.Still},
}

var (
	keyPositions = []string{"off", "acc", "run", "gap", "crank"}
	engineWords  = []string{string(part.Still), string(part.Locked), string(part.Turning), string(part.Running), string(part.RunningDown)}
	// groupWords stand for several steps in a list.
	groupWords = []string{"run", "always", "crank-only"}
)

// buildSteps merges the draft's steps into the usual ones.
func (b *builder) buildSteps() {
	for _, s := range usualSteps {
		b.m.Steps = append(b.m.Steps, Step{Step: s})
	}
	b.like = map[string]string{}
	given := newNameSet()
	for _, s := range b.inOrderOfLikeness() {
		b.buildStep(s, given)
	}
	for i := range b.m.Steps {
		b.m.Steps[i].ID = i
		if b.m.Steps[i].Key == "gap" {
			b.m.Steps[i].LastS = defaultGapS
		}
	}
	b.m.stepWords = stepWords(b.m.Steps, b.like)
}

// inOrderOfLikeness gives the draft's steps so that one that is like another,
// or follows it, comes behind it, wherever the two stand in the draft. Steps
// that are like each other in a ring stay where they are: they are reported.
func (b *builder) inOrderOfLikeness() []*draft.Stmt {
	if len(b.steps) > maxSteps {
		return b.steps // too many anyhow, and told
	}
	rest, out := slices.Clone(b.steps), make([]*draft.Stmt, 0, len(b.steps))
	for len(rest) > 0 {
		i := max(0, slices.IndexFunc(rest, func(s *draft.Stmt) bool { return !waits(s, rest) }))
		out, rest = append(out, rest[i]), slices.Delete(rest, i, i+1)
	}
	return out
}

// waits reports whether a step names another one of those not built yet.
func waits(s *draft.Stmt, unbuilt []*draft.Stmt) bool {
	for i, it := range s.Items[:max(0, len(s.Items)-1)] {
		if it.Raw != "like" && it.Raw != "after" {
			continue
		}
		for _, o := range unbuilt {
			if o != s && len(o.Items) > 0 && o.Items[0].Text == s.Items[i+1].Text && o.Items[0].Text != s.Items[0].Text {
				return true
			}
		}
	}
	return false
}

func (b *builder) stepAt(name string) int {
	return slices.IndexFunc(b.m.Steps, func(s Step) bool { return s.Name == name })
}

func (b *builder) stepNames() []string {
	var names []string
	for _, s := range b.m.Steps {
		names = append(names, s.Name)
	}
	return names
}

func (b *builder) buildStep(s *draft.Stmt, given *nameSet) {
	c := newCursor(s)
	name, ok := b.firstName(s, c, "step")
	if !ok || !b.declare(given, name, "step", s.Items[0].At) {
		return
	}
	if slices.Contains(groupWords, name) {
		b.say(duplicateRule, s.Items[0].At, "%s stands for several steps in a list and can't be a step", name)
		return
	}
	step := Step{Step: part.Step{Name: name, Key: "run", Engine: part.Still}, Added: true, At: s.Items[0].At}
	at := b.stepAt(name)
	if at >= 0 {
		step = b.m.Steps[at]
		step.At = s.Items[0].At
	}
	after := -1
	f := &form{owner: "step " + name, name: name, label: &step.Label, words: map[string]func(*cursor, draft.Item){
		"like":   func(c *cursor, w draft.Item) { after = b.stepLike(c, w, &step, after) },
		"after":  func(c *cursor, w draft.Item) { after = b.knownStep(c, w, after) },
		"key":    func(c *cursor, w draft.Item) { b.oneWord(c, w, b.keyWords(), &step.Key) },
		"engine": func(c *cursor, w draft.Item) { b.oneWord(c, w, engineWords, (*string)(&step.Engine)) },
	}}
	b.read(f, c)
	b.placeStep(step, at, after)
}

// placeStep puts a changed step back, or an added one behind another.
func (b *builder) placeStep(step Step, at, after int) {
	switch {
	case at >= 0 && (after < 0 || after == at):
		b.m.Steps[at] = step
	case at >= 0: // moves: steps between close up
		if after > at {
			after--
		}
		b.m.Steps = slices.Insert(slices.Delete(b.m.Steps, at, at+1), after+1, step)
	case len(b.m.Steps) == maxSteps:
		b.say(limitRule, step.At, "step %s is one too many; at most %d steps", step.Name, maxSteps)
	case after < 0:
		b.m.Steps = slices.Insert(b.m.Steps, b.stepAt("running")+1, step)
	default:
		b.m.Steps = slices.Insert(b.m.Steps, after+1, step)
	}
}

func (b *builder) stepLike(c *cursor, w draft.Item, step *Step, after int) int {
	i := b.knownStep(c, w, -1)
	if i < 0 {
		return after
	}
	step.Key, step.Engine = b.m.Steps[i].Key, b.m.Steps[i].Engine
	b.like[step.Name] = b.m.Steps[i].Name
	if after < 0 && step.Added && b.stepAt(step.Name) < 0 {
		return i // an added step comes behind the one that it is like
	}
	return after
}

// knownStep reads the name of a step that exists; instead gives otherwise.
func (b *builder) knownStep(c *cursor, w draft.Item, instead int) int {
	var name string
	if !b.oneWord(c, w, b.stepNames(), &name) {
		return instead
	}
	return b.stepAt(name)
}

// oneWord reads one word of a closed set behind a setting's name.
func (b *builder) oneWord(c *cursor, name draft.Item, set []string, to *string) bool {
	word := c.word()
	if word == "" {
		b.say(missingRule, name.At, "%s needs a word: %s", name.Raw, oneOf(set))
		return false
	}
	it := c.take()
	if !slices.Contains(set, word) {
		b.sayUnknown(wordRule, it.At, word, set, "%s can't be %q", name.Raw, clip(word))
		return false
	}
	*to = word
	return true
}

// stepWords gives what each word of a step list stands for. A step that is
// like another is in every list that names the other.
func stepWords(steps []Step, like map[string]string) map[string]part.StepSet {
	words := map[string]part.StepSet{}
	for i, s := range steps {
		bit := part.StepSet(1) << uint(i)
		for name, n := s.Name, 0; name != "" && n <= len(steps); name, n = like[name], n+1 {
			words[name] |= bit
		}
		words["always"] |= bit
		if s.Key == "run" {
			words["run"] |= bit
		}
	}
	words["crank-only"] = words["crank"]
	words["crank"] |= words["engage"]
	return words
}

// StepsOf gives the steps that words of a list stand for, and the words that
// stand for none.
func (m *Model) StepsOf(words []string) (set part.StepSet, unknown []string) {
	for _, w := range words {
		s, ok := m.stepWords[w]
		if !ok {
			unknown = append(unknown, w)
		}
		set |= s
	}
	return set, unknown
}

// defaultGapS is how long a key is taken to travel between its contacts, s
// (common practice; its kind lists it as a guess).
const defaultGapS = 0.050
