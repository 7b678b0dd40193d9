package scene

import "unicode"

// Width gives the width of a text in mm at the font size in mm, from the
// advance widths of Liberation Sans (which Arial and Helvetica share).
// Characters outside the tables are taken at the width of their like: wide
// scripts as a full square, marks that sit on other letters as nothing, the
// rest as wide as a capital.
func Width(text string, sizeMM float64, bold bool) float64 {
	sum := 0
	for _, r := range text {
		sum += advance(r, bold)
	}
	return float64(sum) * sizeMM / 1000
}

func advance(r rune, bold bool) int {
	ascii, latin := &regularASCII, &regularLatin
	if bold {
		ascii, latin = &boldASCII, &boldLatin
	}
	switch {
	case r >= 0x20 && r < 0x7F:
		return int(ascii[r-0x20])
	case r >= 0xA0 && r < 0x100:
		return int(latin[r-0xA0])
	}
	if w, ok := signs[r]; ok {
		return w
	}
	switch {
	case unicode.In(r, unicode.Mn, unicode.Me):
		return 0
	case r >= 0x1100 && unicode.In(r, unicode.Han, unicode.Hangul, unicode.Hiragana, unicode.Katakana, unicode.So):
		return 1000
	case r >= 0x2E80:
		return 1000
	}
	return 780
}

// Fit shortens a text to the width, ending it with an ellipsis where something
// had to go. The full text belongs into a title or a list.
func Fit(text string, sizeMM float64, bold bool, widthMM float64) string {
	if Width(text, sizeMM, bold) <= widthMM {
		return text
	}
	left := widthMM - Width("…", sizeMM, bold)
	runes := []rune(text)
	n := 0
	for n < len(runes) {
		left -= float64(advance(runes[n], bold)) * sizeMM / 1000
		if left < 0 {
			break
		}
		n++
	}
	for n > 0 && runes[n-1] == ' ' {
		n--
	}
	return string(runes[:n]) + "…"
}

// Wrap breaks a text at blanks into at most most lines of the width; what is
// left over is shortened on the last.
func Wrap(text string, sizeMM float64, bold bool, widthMM float64, most int) []string {
	var out []string
	rest := text
	for rest != "" && len(out) < most-1 {
		cut := lastBlank(rest, widthMM*1000/sizeMM, bold)
		if cut == 0 {
			break
		}
		out = append(out, rest[:cut])
		rest = rest[cut+1:]
	}
	if rest != "" {
		out = append(out, Fit(rest, sizeMM, bold, widthMM))
	}
	return out
}

// lastBlank gives the place of the last blank up to which the text fits into
// the room, or 0 where all of it fits or no blank does.
func lastBlank(text string, room float64, bold bool) int {
	cut, used := 0, 0.0
	for i, r := range text {
		if used > room {
			return cut
		}
		if r == ' ' && i > 0 {
			cut = i
		}
		used += float64(advance(r, bold))
	}
	if used <= room {
		return 0
	}
	return cut
}
