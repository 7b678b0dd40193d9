package part

import "strings"

// buy is the one row that most kinds want on a parts list: the kind with its
// figures, and the user's label.
func buy(what string, d *Device, figures ...string) []Purchase {
	words := []string{what}
	for _, f := range figures {
		if f != "" {
			words = append(words, f)
		}
	}
	if d.Label != "" {
		words = append(words, "("+d.Label+")")
	}
	return []Purchase{{What: strings.Join(words, " "), Count: 1}}
}
