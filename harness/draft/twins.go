package draft

import (
	"strings"
	"unicode/utf8"
)

// other is what [line.look] answers for a character outside ASCII that looks
// like no ASCII one.
const other = 0x80

// twin is what a character that was typed by mistake should have been. Want
// may be empty or longer than one character.
type twin struct{ name, want string }

// twins are the characters that keyboards, word processors and web pages put
// in the place of plain ones. Names and code points: Unicode.
var twins = map[rune]*twin{
	0x00a0: {"no-break space", " "}, 0x1680: {"wide space", " "}, 0x2002: {"wide space", " "},
	0x2003: {"wide space", " "}, 0x2004: {"wide space", " "}, 0x2005: {"wide space", " "},
	0x2006: {"wide space", " "}, 0x2007: {"figure space", " "}, 0x2008: {"narrow space", " "},
	0x2009: {"thin space", " "}, 0x200a: {"thin space", " "}, 0x202f: {"narrow no-break space", " "},
	0x205f: {"narrow space", " "}, 0x3000: {"full-width space", " "}, 0x2000: {"wide space", " "},
	0x2001: {"wide space", " "}, 0x2028: {"line separator", " "}, 0x2029: {"paragraph separator", " "},
	0x0085: {"next-line character", " "},

	0x00ad: {"soft hyphen", ""}, 0x200b: {"zero-width space", ""}, 0x200c: {"zero-width non-joiner", ""},
	0x200d: {"zero-width joiner", ""}, 0x2060: {"word joiner", ""}, 0xfeff: {"byte-order mark", ""},
	0x061c: {"Arabic letter mark", ""}, 0x200e: {"left-to-right mark", ""}, 0x200f: {"right-to-left mark", ""},
	0x202a: {"left-to-right embedding", ""}, 0x202b: {"right-to-left embedding", ""},
	0x202c: {"end of embedding", ""}, 0x202d: {"left-to-right override", ""},
	0x202e: {"right-to-left override", ""}, 0x2066: {"left-to-right isolate", ""},
	0x2067: {"right-to-left isolate", ""}, 0x2068: {"first-strong isolate", ""}, 0x2069: {"end of isolate", ""},

	0x2010: {"typographic hyphen", "-"}, 0x2011: {"no-break hyphen", "-"}, 0x2012: {"figure dash", "-"},
	0x2013: {"en dash", "-"}, 0x2014: {"em dash", "-"}, 0x2015: {"horizontal bar", "-"},
	0x2212: {"minus sign", "-"}, 0xfe63: {"small hyphen", "-"},

	0x201c: {"curly quote", `"`}, 0x201d: {"curly quote", `"`}, 0x201e: {"low quote", `"`},
	0x201f: {"curly quote", `"`}, 0x00ab: {"angle quote", `"`}, 0x00bb: {"angle quote", `"`},
	0x301d: {"curly quote", `"`}, 0x301e: {"curly quote", `"`}, 0x2033: {"inch mark", `"`},
	0x2018: {"curly single quote", "'"}, 0x2019: {"curly single quote", "'"}, 0x2032: {"foot mark", "'"},
	0x00b4: {"acute accent", "'"}, 0x02bc: {"modifier apostrophe", "'"},

	0x2044: {"fraction slash", "/"}, 0x2215: {"division slash", "/"}, 0x00f7: {"division sign", "/"},
	0x00d7: {"multiplication sign", "x"}, 0x00b7: {"middle dot", "."}, 0x2022: {"bullet", "."},
	0x3002: {"full-width period", "."}, 0x201a: {"low quote", ","}, 0x060c: {"Arabic comma", ","},
	0x3001: {"ideographic comma", ","}, 0x2026: {"ellipsis", ""}, 0x2116: {"number sign", "No"},
	0x2192: {"arrow", ">"}, 0x2190: {"arrow", "<"}, 0x2194: {"arrow", ">"}, 0x21d2: {"arrow", ">"},

	0x00b0: {"degree sign", ""}, 0x00ba: {"ordinal sign", ""}, 0x00aa: {"ordinal sign", ""},
	0x2103: {"degree Celsius sign", "C"}, 0x2109: {"degree Fahrenheit sign", "F"},
	0x212a: {"kelvin sign", "K"}, 0x212b: {"angstrom sign", "A"},
	0x00b9: {"superscript one", "1"}, 0x00b2: {"superscript two", "2"}, 0x00b3: {"superscript three", "3"},
	0x2070: {"superscript zero", "0"}, 0x2080: {"subscript zero", "0"}, 0x2081: {"subscript one", "1"},
	0x2082: {"subscript two", "2"}, 0x2083: {"subscript three", "3"}, 0x2084: {"subscript four", "4"},
	0x00bc: {"fraction sign", "1/4"}, 0x00bd: {"fraction sign", "1/2"}, 0x00be: {"fraction sign", "3/4"},
	0x215b: {"fraction sign", "1/8"}, 0x215c: {"fraction sign", "3/8"}, 0x215d: {"fraction sign", "5/8"},
	0x215e: {"fraction sign", "7/8"},
}

// look gives the ASCII character that stands at off or that the one there was
// meant to be, its length in bytes, and its entry when it is only a look-alike.
// Beyond the line it gives a blank of no length.
func (l *line) look(off int) (c byte, n int, t *twin) {
	if off >= len(l.s) {
		return ' ', 0, nil
	}
	if c = l.s[off]; c < 0x80 {
		return c, 1, nil
	}
	r, n := utf8.DecodeRuneInString(l.s[off:])
	if r >= 0xff01 && r <= 0xff5e {
		t = fullWidth[r-0xff01]
	} else if t = twins[r]; t == nil {
		return other, n, nil
	}
	if len(t.want) == 1 {
		return t.want[0], n, t
	}
	return other, n, t
}

var fullWidth = func() (all [94]*twin) {
	for i := range all {
		all[i] = &twin{"full-width character", string(rune('!' + i))}
	}
	return all
}()

// twin names a look-alike and says what it should be; t may be nil.
func (l *line) twin(off, n int, t *twin) {
	if t == nil {
		return
	}
	shown := quoted(l.s[off : off+n])
	switch t.want {
	case "":
		l.swap(off, off+n, article(t.name)+" "+shown+" stands here: delete it", "")
	default:
		l.swap(off, off+n, shown+" is "+article(t.name)+": expected "+quoted(t.want), t.want)
	}
}

// article puts a or an before a name.
func article(name string) string {
	if strings.ContainsRune("aeioAEIO", rune(name[0])) {
		return "an " + name
	}
	return "a " + name
}

// fullWidth names a run of full-width word characters, typed in one go, and
// gives its length.
func (l *line) fullWidth() int {
	from, at := l.pos, l.pos
	was := len(l.buf)
	for at < len(l.s) {
		c, n, t := l.look(at)
		if t == nil || t.name != fullWidth[0].name || !wchars[c] {
			break
		}
		l.buf = append(l.buf, c)
		at += n
	}
	want := string(l.buf[was:])
	l.swap(from, at, quoted(l.s[from:at])+" is of full-width characters: expected "+quoted(want), want)
	return at - from
}
