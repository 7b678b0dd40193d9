package draft

import (
	"strings"
	"unicode"
	"unicode/utf8"
)

// alike pairs Cyrillic and Greek letters with the Latin ones that they look
// like.
const alike = "АA ВB ЕE КK МM НH ОO РP СC ТT ХX УY аa еe оo рp сc хx уy ЅS ІI ЈJ ѕs іi јj " +
	"ΑA ΒB ΕE ΖZ ΗH ΙI ΚK ΜM ΝN ΟO ΡP ΤT ΥY ΧX οo νv"

// alien counts what tells whether a word is of another script: its letters
// with a Latin look-alike, whether it has others, and whether it has Latin
// letters or figures.
func alien(text string) (alikes int, others, latin, figures bool) {
	for _, r := range text {
		switch {
		case r < 0x80 && unicode.IsLetter(r) || r >= 0x80 && unicode.Is(unicode.Latin, r):
			latin = true
		case r < 0x80:
			figures = true
		case strings.ContainsRune(alike, r):
			alikes++
		case unicode.IsLetter(r):
			others = true
		}
	}
	return alikes, others, latin, figures
}

// scripts names letters of another script that stand in a word for Latin
// ones, as in a device name or a unit. A word that can well be of the other
// script is left alone, and so are the unit signs for ohm and micro.
func (l *line) scripts(from int, text string) string {
	const few = 2
	alikes, others, latin, figures := alien(text)
	if alikes == 0 || others || !latin && (!figures || alikes > few) {
		return text
	}
	var meant strings.Builder
	first, last, script := -1, 0, "Cyrillic"
	for off, r := range l.s[from:l.pos] {
		want := latinFor(r)
		if want == 0 {
			_, n := utf8.DecodeRuneInString(l.s[from+off:])
			meant.WriteString(l.s[from+off:][:n])
			continue
		}
		meant.WriteByte(want)
		if unicode.Is(unicode.Greek, r) {
			script = "Greek"
		}
		if first < 0 {
			first = from + off
		}
		last = from + off + utf8.RuneLen(r)
	}
	if first < 0 {
		return text
	}
	shown, want := l.s[first:last], meant.String()[first-from:]
	want = want[:len(want)-(l.pos-last)]
	l.swap(first, last, quoted(shown)+" is "+script+" script: expected the Latin "+quoted(want), want)
	return strings.Map(func(r rune) rune {
		if want := latinFor(r); want != 0 {
			return rune(want)
		}
		return r
	}, text)
}

// latinFor gives the Latin letter that a letter of another script looks like,
// 0 when there is none.
func latinFor(r rune) byte {
	if r < 0x80 {
		return 0
	}
	i := strings.IndexRune(alike, r)
	if i < 0 {
		return 0
	}
	return alike[i+utf8.RuneLen(r)]
}
