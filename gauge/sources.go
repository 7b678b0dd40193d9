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
var byKey = sortedSources()

func sortedSources() []Source {
	out := slices.Concat(networkSources, conductorSources, deviceSources, practiceSources, usualSources, protectionSources, electricSources, buildSources, profileSources)
	slices.SortFunc(out, func(a, b Source) int { return cmp.Compare(a.Key, b.Key) })
	return out
}

// SourceOf finds a source by its key.
func SourceOf(key string) (Source, bool) {
	i, ok := slices.BinarySearchFunc(byKey, key, func(s Source, key string) int { return cmp.Compare(s.Key, key) })
	if !ok {
		return Source{}, false
	}
	return byKey[i], true
}

// Sources lists every cited source by key.
func Sources() []Source { return slices.Clone(byKey) }

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
