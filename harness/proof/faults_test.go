package proof

import (
	"flag"
	"fmt"
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness/check"
)

const root = "../.."

var update = flag.Bool("update", false, "write the generated pages anew")

// A slip is a fault that builders make, and what legwork does about it. It is
// found where it has rules and nothing else, found in part where it has rules
// and a rest, and not found where it has a rest alone.
type slip struct {
	what   string
	rules  string // ids, one blank between
	cannot string // why a draft can't show it, or not all of it
	notYet string // what legwork could tell and does not yet
}

// A chapter is a group of slips of one sort.
type chapter struct {
	title string
	slips []slip
}

var chapters = []chapter{power, relays, backfeed, grounds, protection, sizing, joints, signals, papers}

func (s slip) verdict() string {
	switch {
	case s.rules != "" && s.cannot == "" && s.notYet == "":
		return "found"
	case s.rules != "":
		return "in part"
	case s.notYet != "":
		return "not yet"
	}
	return "can't be drawn"
}

// Every rule that the table names exists and looks for something, and every
// slip says what becomes of it.
func TestFaultsNameRules(t *testing.T) {
	n := 0
	seen := map[string]bool{}
	for _, c := range chapters {
		for _, s := range c.slips {
			n++
			require.False(t, seen[s.what], "twice: %s", s.what)
			seen[s.what] = true
			require.True(t, s.rules != "" || s.cannot != "" || s.notYet != "", s.what)
			for _, id := range strings.Fields(s.rules) {
				_, ok := check.RuleOf(id)
				require.True(t, ok, "there is no rule %s; it stands beside: %s", id, s.what)
			}
		}
	}
	require.Equal(t, 99, n)
}

// Every rule about the harness answers some fault of the trade.
func TestRulesAnswerFaults(t *testing.T) {
	named := map[string]bool{}
	for _, c := range chapters {
		for _, s := range c.slips {
			for _, id := range strings.Fields(s.rules) {
				named[id] = true
			}
		}
	}
	for _, r := range check.Rules() {
		if r.Run != nil {
			require.True(t, named[r.ID] || beyond[r.ID] != "", "%s stands beside no fault in the table of faults", r.ID)
		}
	}
	for id, why := range beyond {
		_, ok := check.RuleOf(id)
		require.True(t, ok && why != "" && !named[id], id)
	}
}

func TestFaultsPageIsFresh(t *testing.T) { fresh(t, "docs/faults.md", faultsPage()) }

// fresh compares a generated page with what is on disk, or writes it.
func fresh(t *testing.T, page, want string) {
	t.Helper()
	path := root + "/" + page
	if *update {
		require.NoError(t, os.WriteFile(path, []byte(want), 0o644))
	}
	got, err := os.ReadFile(path)
	require.NoError(t, err)
	require.Equal(t, want, string(got), "stale page: go test ./harness/proof -update")
}

func faultsPage() string {
	var b, body strings.Builder
	count := map[string]int{}
	n := 0
	for _, c := range chapters {
		fmt.Fprintf(&body, "\n## %s\n\n| | fault | | found by | what is left |\n|---|---|---|---|---|\n", c.title)
		for _, s := range c.slips {
			n++
			count[s.verdict()]++
			fmt.Fprintf(&body, "| %d | %s | %s | %s | %s |\n", n, s.what, s.verdict(), links(s.rules), rest(s))
		}
	}
	b.WriteString("# Faults and the rules that find them\n\n" +
		"Ninety-nine faults that practice knows, told in our own words, and what legwork does about each. *in part* names the rest that no rule sees; *can't be drawn* means\n" +
		"that no draft holds what it would take; *not yet* is work to be done. Written from a table: `go test ./harness/proof -update`.\n\n")
	for _, v := range []string{"found", "in part", "not yet", "can't be drawn"} {
		fmt.Fprintf(&b, "- %s: %d\n", v, count[v])
	}
	b.WriteString(body.String())
	b.WriteString("\n## Rules beyond these faults\n\n| rule | why it is there |\n|---|---|\n")
	for _, r := range check.Rules() {
		if why := beyond[r.ID]; why != "" {
			fmt.Fprintf(&b, "| %s | %s |\n", links(r.ID), why)
		}
	}
	return b.String()
}

func links(rules string) string {
	var list []string
	for _, id := range strings.Fields(rules) {
		list = append(list, fmt.Sprintf("[%s](rules/%s.md)", id, id))
	}
	return strings.Join(list, ", ")
}

func rest(s slip) string {
	if s.notYet != "" && s.cannot != "" {
		return "Not yet: " + s.notYet + " Can't be drawn: " + s.cannot
	}
	if s.notYet != "" {
		return "Not yet: " + s.notYet
	}
	return s.cannot
}
