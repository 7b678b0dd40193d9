// What check prints, and in which order:
//
//   - findings first, the worst included, as a compiler prints them; then a
//     summary that fits on one screen; the verdict last, where the eye ends.
//   - A name is printed as the user typed it. A number has its unit and the
//     figure that it is held against: "M2 in prime loses 302 mV, 360 mV
//     allowed".
//   - What passes shows its narrowest margin. What rests on a guess, did not
//     run or was never looked at is said, not left out; what is alike is put
//     on one line, what is many is counted, and a flag shows the rest.
//   - Lines stay within the terminal. Color marks severities only, and only on
//     a terminal that wants it.

package main

import (
	"fmt"
	"strings"

	"legwork/harness"
	"legwork/harness/check"
	"legwork/harness/diag"
	"legwork/harness/model"
)

// shown is what of a check is printed.
type shown struct {
	pass    bool
	all     bool // every finding
	guesses bool // every guess
	moved   []harness.Leeway
	by      narrowing
}

// writeReport prints the outcome of a check: findings first, then one screen
// of what was done, how near the limits it came, and what it rests on.
func writeReport(s streams, r *harness.Result, o shown) error {
	if err := writeFindings(s.out, r.Findings, r.Draft.Source, o.all); err != nil {
		return err
	}
	p := newPrinter(s.out)
	if len(r.Findings) > 0 {
		p.line("")
	}
	p.head(r)
	p.narrowed(o.by)
	p.margins(r.Margins())
	p.accepted(r.Accepted)
	if r.Sizes != nil {
		p.guesses(r.Model.Guesses, o.guesses)
		p.leeways(o.moved)
		p.skipped(r.Skipped)
		p.line("")
		p.wrapped("Not looked at: ", "  ", strings.Join(harness.NotLookedAt(), "; "))
	}
	p.verdict(r, o.pass)
	return p.err
}

func (p *printer) head(r *harness.Result) {
	title := r.Model.Title
	if title == "" {
		title = r.Draft.Name
	}
	p.wrapped("", "  ", title)
	if r.Sizes == nil {
		p.wrapped("  ", "  ", "Nothing was worked out and no rule ran: "+r.Skipped[0].Reason+".")
		return
	}
	ran := fmt.Sprintf("all %s ran", count(r.Ran, "rule"))
	if n := len(r.Skipped); n > 0 {
		ran = fmt.Sprintf("%s ran, %d could not", count(r.Ran, "rule"), n)
	}
	p.wrapped("  ", "  ", fmt.Sprintf("%s, %s, %s; %s; profile %s",
		count(len(r.Model.Wires), "wire"), count(len(r.Model.Devices), "device"), stepsSolved(r), ran, r.Profile.Name))
	p.coldStart(r)
	p.options(r.Model.Options)
}

// options says which options of the draft are fitted, and which are not.
func (p *printer) options(list []*model.Option) {
	var with, without []string
	for _, o := range list {
		name := o.Name
		if o.Label != "" {
			name += " (" + o.Label + ")"
		}
		if o.Fitted {
			with = append(with, name)
		} else {
			without = append(without, name)
		}
	}
	if len(with) > 0 {
		p.wrapped("  ", "  ", "with "+strings.Join(with, ", "))
	}
	if len(without) > 0 {
		p.wrapped("  ", "  ", "not fitted: "+strings.Join(without, ", ")+"; check --with NAME fits one")
	}
}

func stepsSolved(r *harness.Result) string {
	solved := 0
	for _, s := range r.Sizes.Hot.States {
		if s.Skipped == "" {
			solved++
		}
	}
	return count(solved, "step") + " solved in 3 cases"
}

func count(n int, noun string) string {
	if n == 1 {
		return "1 " + noun
	}
	return fmt.Sprintf("%d %ss", n, noun)
}

func (p *printer) accepted(list []check.Accepted) {
	if len(list) == 0 {
		return
	}
	p.line("")
	p.line(fmt.Sprintf("Accepted by the draft (%d)", len(list)))
	for _, a := range list {
		p.wrapped("  ", "    ", fmt.Sprintf("%s: %s: %s (%s)", a.At, a.Rule, a.Msg, a.Reason))
	}
}

// skipped lists the rules that could not run, those with one reason together.
func (p *printer) skipped(list []check.Skip) {
	byReason := map[string][]string{}
	var reasons []string
	for _, s := range list {
		if byReason[s.Reason] == nil {
			reasons = append(reasons, s.Reason)
		}
		byReason[s.Reason] = append(byReason[s.Reason], s.Rule)
	}
	for _, why := range reasons {
		p.line("")
		p.wrapped("", "  ", fmt.Sprintf("Did not run (%s): %s", why, strings.Join(byReason[why], ", ")))
	}
}

func (p *printer) verdict(r *harness.Result, pass bool) {
	var n [diag.Danger + 1]int
	for _, f := range r.Findings {
		n[f.Severity]++
	}
	word := "Passes"
	if !pass {
		word = "Does not pass"
	}
	p.line("")
	p.wrapped("", "  ", fmt.Sprintf("%s: %s, %s, %s, %s", word, count(n[diag.Danger], "danger"),
		count(n[diag.Fault], "fault"), count(n[diag.Warning], "warning"), count(n[diag.Note], "note")))
	if hasBattery(r) {
		p.wrapped("", "", "Before power: battery off, no sparks near fuel, air bags left alone; codes and licensed hands first.")
	}
}

func hasBattery(r *harness.Result) bool {
	for _, d := range r.Model.Devices {
		if d.Kind.Supplies == nil {
			continue
		}
		for _, s := range d.Kind.Supplies(d.Device) {
			if s.Battery {
				return true
			}
		}
	}
	return false
}
