package main

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"legwork/gauge"
	"legwork/harness/diag"
	"legwork/harness/quantity"
)

// sizeAsk is an ask with what was taken because it was not said.
type sizeAsk struct {
	ask     gauge.Ask
	metric  bool // the length was given in meters
	assumed []string
}

// askReader reads the flags of a sizeCmd.
type askReader struct {
	sizeAsk
	wrong mistakes
	bad   map[string]bool // flags that were told of already
}

func (c *sizeCmd) ask() (sizeAsk, error) {
	r := &askReader{bad: map[string]bool{}}
	profiles := gauge.Profiles()
	at := r.word("profile", c.Profile, namesOf(profiles, func(p gauge.Profile) string { return p.Name }))
	amps, _ := r.figure("amps", c.Amps, true, quantity.Current)
	length, _ := r.figure("length", c.Length, true, quantity.Length)
	r.ask = gauge.NewAsk(amps, gauge.OneWayM(length), profiles[at])
	r.metric = !strings.HasSuffix(c.Length, "ft") && !strings.HasSuffix(c.Length, "in")
	r.words(c)
	r.figures(c)
	for _, no := range r.ask.Check() {
		if !r.bad[no.Field] {
			r.wrong.say(no.Field, no.Reason)
		}
	}
	return r.sizeAsk, r.wrong.err()
}

func (r *askReader) words(c *sizeCmd) {
	r.ask.Return = gauge.Return(r.word("return", c.Return, []string{"wire", "metal"}))
	r.word("format", c.Format, []string{"text", "json"})
	if c.Area != "" {
		r.ask.Area = gauge.AreaRule(r.word("area", c.Area, namesOf(gauge.AreaRules(), gauge.AreaRule.String)))
	}
	if c.DropBy != "" {
		r.ask.DropBy = gauge.DropRule(r.word("drop-by", c.DropBy, namesOf(gauge.DropRules(), gauge.DropRule.String)))
	}
	if c.FuseStyle != "" {
		styles := gauge.FuseFamilies()
		r.ask.FuseStyle = styles[r.word("fuse-style", c.FuseStyle, styles)]
	}
}

func (r *askReader) figures(c *sizeCmd) {
	if v, ok := r.figure("volts", c.Volts, false, quantity.Voltage); ok {
		r.ask.SystemV = v
	} else {
		r.take("volts 12 V")
	}
	r.drop(c.Drop)
	r.insulation(c.Insulation)
	if v, ok := r.figure("ambient", c.Ambient, false, quantity.Temperature); ok {
		r.ask.AmbientC = v
	} else {
		r.take("ambient 30 C, as in a cabin; an engine bay is 85 C and more")
	}
	if v, ok := r.figure("bundle", c.Bundle, false, quantity.Count); !ok {
		r.take("no other loaded conductor in its bundle")
	} else if v != math.Trunc(v) {
		r.refuse("bundle", fmt.Sprintf("%g is no whole number of conductors", v))
	} else {
		r.ask.Loaded = int(max(min(v, math.MaxInt32), math.MinInt32))
	}
	r.ask.StartA, _ = r.figure("start-current", c.StartCurrent, false, quantity.Current)
	r.ask.StartS, _ = r.figure("start-time", c.StartTime, false, quantity.Time)
	r.ask.FuseA, _ = r.figure("fuse", c.Fuse, false, quantity.Current)
}

func (r *askReader) drop(text string) {
	v, ok := r.figure("drop", text, false, quantity.Percent, quantity.Voltage)
	switch {
	case !ok:
		r.take(fmt.Sprintf("drop %.3g %%, as for controllers, pumps and ignition; profile %s gives other loads %.3g %%", 100*r.ask.DropShare, r.ask.Profile.Name, 100*r.ask.Profile.DropOther))
	case strings.HasSuffix(text, "%"):
		r.ask.DropShare = v / 100
	default:
		r.ask.DropShare = v / r.ask.SystemV
	}
}

func (r *askReader) insulation(text string) {
	if text == "" {
		if c := r.ask.Profile.InsulationC; c > 0 {
			r.take(fmt.Sprintf("insulation of %g C", c))
		} else {
			r.take("the usual family of each size, 125 C")
		}
		return
	}
	if quantity.Looks(text) {
		v, _ := r.figure("insulation", text, false, quantity.Temperature)
		r.ask.Family = gauge.RatedFamily(v)
		return
	}
	families := gauge.Families()
	all := namesOf(families, func(f gauge.Family) string { return f.Name })
	if at := slices.IndexFunc(all, func(n string) bool { return strings.EqualFold(n, text) }); at >= 0 {
		r.ask.Family = families[at]
		return
	}
	r.refuse("insulation", fmt.Sprintf("%q is no family%s; there are %s, or a class temperature such as 105C", text, meant(text, all), strings.Join(all, ", ")))
}

// figure reads a quantity of one of dims; ok is false where it is not said or
// not readable.
func (r *askReader) figure(flag, text string, needed bool, dims ...quantity.Dim) (v float64, ok bool) {
	want := quantity.Want(dims[0])
	if len(dims) > 1 {
		want += ", or " + quantity.Want(dims[1])
	}
	rng, _ := gauge.AskRangeOf(flag)
	want += ", " + rng.String()
	if text == "" {
		if needed {
			r.refuse(flag, "is needed: "+want)
		}
		return 0, false
	}
	q, err := quantity.Parse(text)
	switch {
	case err != nil:
		r.refuse(flag, err.Error()+"; wanted "+want)
	case len(dims) == 1 && q.Dim == dims[0] && !rng.Has(q.Value):
		r.refuse(flag, text+" is not "+rng.String())
	case slices.Contains(dims, q.Dim):
		return q.Value, true
	case q.Dim == quantity.Count:
		r.refuse(flag, fmt.Sprintf("%s has no unit; wanted %s", text, want))
	default:
		r.refuse(flag, fmt.Sprintf("%s is %s; wanted %s", text, q.Dim.Named(), want))
	}
	return 0, false
}

// word finds a word among those that a flag takes; 0 where it is none.
func (r *askReader) word(flag, text string, among []string) int {
	at := slices.Index(among, text)
	if at < 0 {
		r.refuse(flag, fmt.Sprintf("%q is not one of %s%s", text, strings.Join(among, ", "), meant(text, among)))
	}
	return max(at, 0)
}

func (r *askReader) refuse(flag, reason string) {
	r.bad[flag] = true
	r.wrong.say(flag, reason)
}

func (r *askReader) take(what string) { r.assumed = append(r.assumed, what) }

func meant(text string, among []string) string {
	if near := diag.Nearest(text, among); near != "" {
		return ", did you mean " + near + "?"
	}
	return ""
}

func namesOf[T any](list []T, name func(T) string) []string {
	out := make([]string, len(list))
	for i, v := range list {
		out[i] = name(v)
	}
	return out
}
