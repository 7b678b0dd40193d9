package diag

import (
	"strings"
	"unicode/utf8"
)

// Nearest gives the word of among that word was probably meant to be, "" if
// none is near. Upper and lower case count as equal; a letter added, dropped
// or changed, or two neighbors swapped, counts one. One such slip is allowed
// for every three letters of word, three at most. Of several equally near the
// first in alphabetical order is taken, so that the order of among is free.
func Nearest(word string, among []string) string {
	folded := []rune(strings.ToLower(word))
	if len(folded) == 0 {
		return ""
	}
	allowed := min(len(folded)/3, 3)
	best, bestAt := "", allowed+1
	for _, candidate := range among {
		if n := utf8.RuneCountInString(candidate); n == 0 || max(n-len(folded), len(folded)-n) > allowed {
			continue
		}
		at := slips(folded, []rune(strings.ToLower(candidate)))
		if at < bestAt || (at == bestAt && at <= allowed && candidate < best) {
			best, bestAt = candidate, at
		}
	}
	return best
}

// slips is the optimal string alignment distance between a and b.
func slips(a, b []rune) int {
	before := make([]int, len(b)+1) // two rows up
	above := make([]int, len(b)+1)
	row := make([]int, len(b)+1)
	for j := range above {
		above[j] = j
	}
	for i := 1; i <= len(a); i++ {
		row[0] = i
		for j := 1; j <= len(b); j++ {
			change := 1
			if a[i-1] == b[j-1] {
				change = 0
			}
			row[j] = min(above[j]+1, row[j-1]+1, above[j-1]+change)
			if i > 1 && j > 1 && a[i-1] == b[j-2] && a[i-2] == b[j-1] {
				row[j] = min(row[j], before[j-2]+1)
			}
		}
		before, above, row = above, row, before
	}
	return above[len(b)]
}
