package main

import (
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// mended brings the parts of a shortened block up to date: each part between
// two "..." runs, in the fresh output, from the line that it begins with to
// the line that it ends with. ok is false where one of these is gone; only a
// person can then say what the block is to show.
func mended(got, want []string) (fresh []string, ok bool) {
	for rest := want; len(rest) > 0; {
		if rest[0] == "..." {
			fresh, rest = append(fresh, "..."), rest[1:]
			continue
		}
		n := slices.Index(rest, "...")
		if n < 0 {
			n = len(rest)
		}
		first, last, found := span(got, rest[:n])
		if !found {
			return nil, false
		}
		fresh = append(fresh, got[first:last]...)
		got, rest = got[last:], rest[n:]
	}
	return fresh, true
}

// span finds where a part of a page lies in the output: the first place where
// its first line stands, up to its last line. A blank last line is the first
// blank one after what stands above it.
func span(got, part []string) (first, last int, ok bool) {
	body := part
	for len(body) > 1 && body[len(body)-1] == "" {
		body = body[:len(body)-1]
	}
	same := func(line string) func(string) bool {
		return func(s string) bool { return strings.TrimRight(s, " ") == strings.TrimRight(line, " ") }
	}
	first = slices.IndexFunc(got, same(body[0]))
	if first < 0 {
		return 0, 0, false
	}
	if len(body) < len(part) { // a whole finding or paragraph
		n := slices.Index(got[first:], "")
		return first, first + n + 1, n > 0
	}
	n := slices.IndexFunc(got[first:], same(body[len(body)-1]))
	return first, first + n + 1, n >= 0
}

func TestMended(t *testing.T) {
	out := []string{"a", "b 3", "c", "", "d", "e 5", "f"}
	for name, c := range map[string]struct{ want, fresh []string }{
		"to its last line":   {[]string{"a", "b 2", "c", "..."}, []string{"a", "b 3", "c", "..."}},
		"to the blank line":  {[]string{"a", "b 2", "", "..."}, []string{"a", "b 3", "c", "", "..."}},
		"two parts in order": {[]string{"a", "c", "...", "d", "f"}, []string{"a", "b 3", "c", "...", "d", "e 5", "f"}},
		"first line is gone": {[]string{"z", "c"}, nil},
		"parts out of order": {[]string{"d", "f", "...", "a", "c"}, nil},
	} {
		fresh, ok := mended(out, c.want)
		require.Equal(t, c.fresh != nil, ok, name)
		require.Equal(t, c.fresh, fresh, name)
	}
}
