package harness_test

import (
	"math/rand/v2"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"
)

// aFigure is a number at the start of a word, with what follows.
var aFigure = regexp.MustCompile(`^([0-9]+(?:\.[0-9]+)?)([a-zA-Z%]+)$`)

// scrambled changes a draft in up to six places: a line goes, comes twice or
// elsewhere, a word takes the place of another that stood like it, a figure
// grows or shrinks. The rest still reads.
func scrambled(src string, seed uint64) string {
	rng := rand.New(rand.NewPCG(seed, 3))
	lines := strings.Split(src, "\n")
	for range 1 + rng.IntN(6) {
		if i := rng.IntN(len(lines)); len(strings.Fields(lines[i])) > 0 {
			lines = scramble(rng, lines, i)
		}
		if len(lines) == 0 {
			return ""
		}
	}
	return strings.Join(lines, "\n")
}

func scramble(rng *rand.Rand, lines []string, i int) []string {
	words := strings.Fields(lines[i])
	indent := lines[i][:strings.Index(lines[i], words[0])]
	k := rng.IntN(len(words))
	switch rng.IntN(7) {
	case 0:
		return slices.Delete(lines, i, i+1)
	case 1:
		return slices.Insert(lines, i, lines[i])
	case 2:
		j := rng.IntN(len(lines))
		lines[i], lines[j] = lines[j], lines[i]
		return lines
	case 3:
		words = slices.Delete(words, k, k+1)
	case 4, 5:
		if other := likeness(rng, lines, words, k); other != "" {
			words[k] = other
		}
	case 6:
		words[k] = refigured(rng, words[k])
	}
	lines[i] = indent + strings.Join(words, "  ")
	return lines
}

// likeness gives the word that stands at the same place in another line of
// the same head, "" if the line drawn is of another.
func likeness(rng *rand.Rand, lines, words []string, k int) string {
	for range 20 {
		other := strings.Fields(lines[rng.IntN(len(lines))])
		if k < len(other) && (other[0] == words[0] || k == 0) {
			return other[k]
		}
	}
	return ""
}

// refigured makes a figure much larger or smaller, or nothing.
func refigured(rng *rand.Rand, word string) string {
	m := aFigure.FindStringSubmatch(word)
	if m == nil {
		return word
	}
	v, err := strconv.ParseFloat(m[1], 64)
	if err != nil {
		return word
	}
	factor := []float64{0, 0.001, 0.1, 0.5, 2, 10, 1000}[rng.IntN(7)]
	return strconv.FormatFloat(v*factor, 'f', -1, 64) + m[2]
}

// Drafts on which legwork failed once.
func TestDraftsThatFailedOnce(t *testing.T) {
	for _, src := range []string{
		"box A2\nfuse F1 10A from A2 6in\n", // a device without a terminal to measure from
		// A fuse that no rating is enough for was taken for none, an infinite way ahead.
		"battery G1 grounds-to frame\nstud E1 on frame M6\nfuse F1 bolt-down from G1 6in\nfuse F2 5A\nlamp P1 21W grounds-to frame\n" +
			"wire 1 G1.+ F1.1 8AWG 6in\nwire 2 F1.2 E1 8AWG 2ft\nwire 5 F1.2 F2.1 8AWG 6in\nwire 6 F2.2 P1.1 18AWG 2ft\n",
	} {
		requireOutcome(t, src)
	}
}
