package draft

import "unicode"

// displayWidth gives the columns that text takes on a screen: none for marks
// that stand on another character and for hidden ones, two for the wide
// characters of East Asian scripts and for pictures, one for the rest. The
// ranges are those of Unicode Standard Annex 11 in blocks, which is as exact
// as screens are.
func displayWidth(text string) int {
	n := 0
	for i := 0; i < len(text); i++ {
		if text[i] >= 0x80 {
			return n + wideWidth(text[i:])
		}
		n++
	}
	return n
}

func wideWidth(text string) int {
	n := 0
	for _, r := range text {
		switch {
		case unicode.In(r, unicode.Mn, unicode.Me, unicode.Cf):
		case wide(r):
			n += 2
		default:
			n++
		}
	}
	return n
}

func wide(r rune) bool {
	return r >= 0x1100 && r <= 0x115f || // Hangul initial letters
		r >= 0x2e80 && r <= 0x303e || r >= 0x3041 && r <= 0xa4cf || // CJK, kana
		r >= 0xac00 && r <= 0xd7a3 || // Hangul syllables
		r >= 0xf900 && r <= 0xfaff || r >= 0xfe30 && r <= 0xfe6f ||
		r >= 0xff00 && r <= 0xff60 || r >= 0xffe0 && r <= 0xffe6 || // full width
		r >= 0x1f300 && r <= 0x1f64f || r >= 0x1f680 && r <= 0x1f6ff ||
		r >= 0x1f900 && r <= 0x1f9ff || // pictures
		r >= 0x20000 && r <= 0x3fffd // CJK extensions
}
