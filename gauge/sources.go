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

// byKey is every source by key; it is never written to.
var byKey = sourcesByKey()

// sourceLists is all of them as they are written down.
func sourceLists() [][]Source {
	return [][]Source{
		networkSources, conductorSources, deviceSources, practiceSources, usualSources, protectionSources, electricSources, buildSources, profileSources,
	}
}

func sourcesByKey() map[string]*Source {
	index := make(map[string]*Source, 512)
	for _, list := range sourceLists() {
		for i := range list {
			index[list[i].Key] = &list[i]
		}
	}
	return index
}

// SourceOf finds a source by its key.
func SourceOf(key string) (Source, bool) {
	s, ok := byKey[key]
	if !ok {
		return Source{}, false
	}
	return *s, true
}

// Sources lists every cited source by key.
func Sources() []Source {
	out := make([]Source, 0, len(byKey))
	for _, s := range byKey {
		out = append(out, *s)
	}
	slices.SortFunc(out, func(a, b Source) int { return cmp.Compare(a.Key, b.Key) })
	return out
}

// confidenceOf is the confidence of the source of a key. A key without a
// source counts as memory, so that a slip of the pen cannot decide anything.
func confidenceOf(key string) Confidence {
	if s, ok := byKey[key]; ok {
		return s.Confidence
	}
	return Memory
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
