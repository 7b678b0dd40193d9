package draft

import "bytes"

// Unreadable says why a file as a whole is no draft to read: too large, not
// text, or text of another encoding. It gives "" where it can be read.
func Unreadable(src []byte) string {
	const fewZeros = 8
	switch {
	case len(src) > maxBytes:
		return "the file is too large: a draft has at most 16 MB"
	case bytes.HasPrefix(src, []byte{0xff, 0xfe}) || bytes.HasPrefix(src, []byte{0xfe, 0xff}):
		return "the file is kept as UTF-16: save it as UTF-8"
	case bytes.Count(src, []byte{0}) > fewZeros || mostlyControls(src):
		return "this is no text file: a draft is plain text kept as UTF-8"
	case bytes.Count(src, []byte{'\n'}) > maxLines:
		return "the file has too many lines: a draft has at most 500,000"
	}
	return ""
}

// mostlyControls reports whether so many control characters stand in a file
// that it is no text. What terminals are sent is left to the single lines.
func mostlyControls(src []byte) bool {
	const few, share = 8, 50
	n := 0
	for _, c := range src {
		if isControl(c) && c != '\n' && c != '\r' && c != 0x1b {
			n++
		}
	}
	return n > few && n > len(src)/share
}
