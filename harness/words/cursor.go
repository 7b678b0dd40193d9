package words

import (
	"strings"
	"unicode/utf8"
)

// cut gives the draft up to a place, and the line up to it.
func (v View) cut(lineNo, col int) (before, text string, ok bool) {
	src, start := string(v.File.Src), 0
	for n := 1; n < lineNo; n++ {
		i := strings.IndexByte(src[start:], '\n')
		if i < 0 {
			return "", "", false
		}
		start += i + 1
	}
	end := start
	for n := 1; n < col; n++ {
		r, size := utf8.DecodeRuneInString(src[end:])
		if size == 0 || r == '\n' {
			return "", "", false
		}
		end += size
	}
	return src[:end], src[start:end], lineNo > 0 && col > 0
}

// inStringOrComment reports whether the end of a line's beginning lies in one.
func inStringOrComment(text string) bool {
	open := false
	for i := range text {
		switch text[i] {
		case '"':
			open = !open
		case '#':
			if !open && (i == 0 || text[i-1] == ' ' || text[i-1] == '\t') {
				return true
			}
		}
	}
	return open
}

// typedWord is the part of a word before the cursor.
func typedWord(text string) string {
	return text[strings.LastIndexAny(text, " \t,")+1:]
}
