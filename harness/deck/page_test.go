package deck

import (
	"fmt"
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

const accuracyFile = "../../docs/accuracy.md"

// accuracyPage writes docs/accuracy.md with -update. Without, what does not
// hang on the simulator's version has to stand there already: the networks,
// their sizes, and what chatters.
func accuracyPage(t *testing.T, rows []*row) {
	t.Helper()
	page := accuracyText(rows)
	if *update {
		require.NoError(t, os.WriteFile(accuracyFile, []byte(page), 0o644))
	}
	old, err := os.ReadFile(accuracyFile)
	require.NoError(t, err)
	require.Equal(t, lastingLines(page), lastingLines(string(old)), "go test ./harness/deck -update brings the page up to date")
}

// lastingLines keeps the first four columns of the first table, and what chatters.
func lastingLines(page string) []string {
	var list []string
	for line := range strings.Lines(page) {
		if cells := strings.Split(line, "|"); len(cells) > 9 {
			list = append(list, strings.Join(cells[:5], "|"))
		} else if strings.HasPrefix(line, "- chatter") {
			list = append(list, line)
		}
	}
	return list
}

func accuracyText(rows []*row) string {
	var b strings.Builder
	b.WriteString(accuracyHead)
	b.WriteString("| network | cases | nodes | steps | readings | worst, V | relative | contacts | disagree |\n|---|---|---|---|---|---|---|---|---|\n")
	for _, r := range rows {
		fmt.Fprintf(&b, "| %s | %d | %d | %d | %d | %.0e | %.0e | %d | %d |\n",
			r.group, r.networks, r.nodes, r.decks, r.compared, r.worstV, r.worstRel, r.contacts, len(r.disagree))
	}
	b.WriteString(accuracyWeak)
	b.WriteString("| network | readings | legwork against exact, V | relative | simulator against exact, V |\n|---|---|---|---|---|\n")
	for _, r := range rows {
		if r.weak > 0 {
			fmt.Fprintf(&b, "| %s | %d | %.0e | %.0e | %.0e |\n", r.group, r.weak, r.weakV, r.weakRel, r.simV)
		}
	}
	b.WriteString(accuracyOrder)
	var silent, order, chatter []string
	collapsed := 0
	for _, r := range rows {
		silent, order, chatter = append(silent, r.silent...), append(order, r.order...), append(chatter, r.chatter...)
		collapsed += r.collapsed
	}
	fmt.Fprintf(&b, "No operating point (%d steps): %s.\n\nAnother state at rest (%d steps): %s.\n", len(silent), grouped(silent), len(order), grouped(order))
	fmt.Fprintf(&b, accuracyChatter, len(chatter), collapsed)
	for _, c := range chatter {
		fmt.Fprintf(&b, "- chatter in %s\n", c)
	}
	b.WriteString(accuracyTail)
	return b.String()
}

// grouped lists names of a network and a step, each network once.
func grouped(list []string) string {
	var out []string
	last := ""
	for _, x := range list {
		i := strings.LastIndexByte(x, ' ')
		if x[:i] == last {
			out[len(out)-1] += " " + x[i+1:]
			continue
		}
		last = x[:i]
		out = append(out, x)
	}
	return strings.Join(out, ", ")
}
