package gauge

import (
	"slices"
	"strings"
)

const (
	finalXLP = 250 // C, cross-linked insulation at the end of a short (source k-factors)
	finalPVC = 160 // C, thermoplastic PVC
)

// families is in order of name. Class temperatures are of the conductor;
// types whose class was not seen stand at the lowest of their standard, so
// that they can be judged on the careful side.
var families = [...]Family{
	{Name: "GPT", TempC: 85, ShortC: finalPVC, Source: "family-pvc", Title: "general purpose, PVC"},
	{Name: "GTE", TempC: 85, ShortC: finalPVC, Source: "family-least", Title: "general purpose, thermoplastic elastomer"},
	{Name: "GXL", TempC: 125, ShortC: finalXLP, Source: "family-read", Title: "general purpose, cross-linked polyolefin"},
	{Name: "HDT", TempC: 85, ShortC: finalPVC, Source: "family-pvc", Title: "heavy duty, PVC"},
	{Name: "HTE", TempC: 85, ShortC: finalPVC, Source: "family-least", Title: "heavy duty, thermoplastic elastomer"},
	{Name: "ISO-A", TempC: 85, ShortC: finalPVC, Source: "iso-class", Title: "temperature class A"},
	{Name: "ISO-B", TempC: 100, ShortC: finalPVC, Source: "iso-class", Title: "temperature class B"},
	{Name: "ISO-C", TempC: 125, ShortC: finalPVC, Source: "iso-class", Title: "temperature class C"},
	{Name: "ISO-D", TempC: 150, ShortC: finalPVC, Source: "iso-class", Title: "temperature class D"},
	{Name: "ISO-E", TempC: 175, ShortC: 225, Source: "iso-class", ShortSource: "iso-overload", Title: "temperature class E"},
	{Name: "ISO-F", TempC: 200, ShortC: 250, Source: "iso-class", ShortSource: "iso-overload", Title: "temperature class F"},
	{Name: "ISO-G", TempC: 225, ShortC: 275, Source: "iso-class", ShortSource: "iso-overload", Title: "temperature class G"},
	{Name: "ISO-H", TempC: 250, ShortC: 300, Source: "iso-class", ShortSource: "iso-overload", Title: "temperature class H"},
	{Name: "SGR", TempC: 85, ShortC: finalPVC, Source: "family-least", Title: "battery cable, rubber"},
	{Name: "SGT", TempC: 85, ShortC: finalPVC, Source: "family-pvc", Title: "battery cable, PVC"},
	{Name: "SGX", TempC: 125, ShortC: finalXLP, Source: "family-agreed", Title: "battery cable, cross-linked polyolefin"},
	{Name: "STX", TempC: 125, ShortC: finalXLP, Source: "family-agreed", Title: "battery cable, thin wall, cross-linked polyolefin"},
	{Name: "SXL", TempC: 125, ShortC: finalXLP, Source: "family-agreed", Title: "heavy wall, cross-linked polyolefin"},
	{Name: "TWE", TempC: 85, ShortC: finalPVC, Source: "family-least", Title: "thin wall, thermoplastic elastomer"},
	{Name: "TWP", TempC: 85, ShortC: finalPVC, Source: "family-pvc", Title: "thin wall, PVC"},
	{Name: "TXL", TempC: 125, ShortC: finalXLP, Source: "family-read", Title: "thin wall, cross-linked polyolefin"},
}

// FamilyOf finds a kind of insulation by its name, in upper or lower case.
func FamilyOf(name string) (Family, bool) {
	for _, f := range families {
		if strings.EqualFold(f.Name, name) {
			return f, true
		}
	}
	return Family{}, false
}

// FamilyFor is the kind of insulation taken when the draft names none: GXL up
// to 8 AWG, SGX above (source sae-types); ISO 6722 class C, which is as good
// for 125 C, for metric sizes.
func FamilyFor(s Size) Family {
	name := "GXL"
	switch {
	case s.Metric:
		name = "ISO-C"
	case s.AWG < 8:
		name = "SGX"
	}
	f, _ := FamilyOf(name)
	return f
}

// Confidence is how far the class temperature of the family may be trusted.
func (f Family) Confidence() Confidence { return confidenceOf(f.Source) }

// shortKey is the source of ShortC.
func (f Family) shortKey() string {
	if f.ShortSource == "" {
		return "k-factors"
	}
	return f.ShortSource
}

// metric reports a class of ISO 6722, whose cable is thin-walled.
func (f Family) metric() bool { return strings.HasPrefix(f.Name, "ISO-") }

// Families lists every kind of insulation by name.
func Families() []Family { return slices.Clone(families[:]) }
