package gauge

import (
	"cmp"
	"slices"
)

// Ways in which a figure was seen.
const (
	read       = "read"
	readSecond = "read in a document that quotes it"
	computed   = "computed here"
	memory     = "from memory"
	practice   = "common practice"
	stated     = "stated"
)

// SourceOf finds a source by its key.
func SourceOf(key string) (Source, bool) {
	for _, list := range [...][]Source{conductorSources, deviceSources, practiceSources, usualSources} {
		if i := slices.IndexFunc(list, func(s Source) bool { return s.Key == key }); i >= 0 {
			return list[i], true
		}
	}
	return Source{}, false
}

// Sources lists every cited source by key.
func Sources() []Source {
	out := slices.Concat(conductorSources, deviceSources, practiceSources, usualSources)
	slices.SortFunc(out, func(a, b Source) int { return cmp.Compare(a.Key, b.Key) })
	return out
}

// confidenceOf is the confidence of the source of a key. A key without a
// source counts as memory, so that a slip of the pen cannot decide anything.
func confidenceOf(key string) Confidence {
	s, ok := SourceOf(key)
	if !ok {
		return Memory
	}
	return s.Confidence
}

// String gives the word printed beside a figure.
func (c Confidence) String() string {
	switch c {
	case Memory:
		return "memory"
	case Low:
		return "low"
	case Medium:
		return "medium"
	case High:
		return "high"
	case Computed:
		return "computed"
	}
	return "invalid"
}
