package main

import (
	"errors"
	"strings"

	"legwork/gauge"
)

// sizeCmd takes every figure as text, so that all mistakes are told at once.
type sizeCmd struct {
	Amps         string `help:"Continuous current of the load, such as 20A."`
	Length       string `help:"One-way distance from the source to the load along the wire, such as 15ft or 4.5m; the way back is counted by --return."`
	Return       string `default:"wire" help:"How the current comes back: wire or metal."`
	Volts        string `help:"System volts; 12V if not said."`
	Drop         string `help:"Most that the wire may lose, out and back: 3% or 0.5V; the profile's figure for controllers, pumps and ignition if not said."`
	Insulation   string `help:"Family, such as GXL, or class temperature, such as 105C; the usual one of the profile if not said."`
	Ambient      string `help:"Hottest place on its way; 30C if not said."`
	Bundle       string `help:"Conductors loaded together in its bundle, itself and its return included; 1 if not said."`
	Profile      string `default:"road" help:"Limits to size by (see explain profiles)."`
	Area         string `help:"What a size stands for: awg, sae or iso; the profile's if not said."`
	DropBy       string `help:"How drop is worked out: copper (at its temperature) or chart (circular mils, K = 10.75); the profile's if not said."`
	StartCurrent string `help:"First current of a motor or lamp, held against the fuse."`
	StartTime    string `help:"How long the first current lasts, such as 200ms."`
	Fuse         string `help:"Fuse that is already there, such as 30A; one is chosen if not said."`
	FuseStyle    string `help:"Style of the fuse, such as blade, maxi or bolt-down."`
	Format       string `default:"text" help:"How to print: text or json."`
}

// Run sizes one wire without a draft.
func (c *sizeCmd) Run(s streams) error {
	q, err := c.ask()
	if err != nil {
		return errUsage{err}
	}
	got, err := gauge.SizeWire(q.ask)
	if err != nil {
		return err
	}
	sheet := sizeSheet{Answer: got, asked: q}
	if c.Format == "json" {
		err = sheet.writeJSON(s.out)
	} else {
		p := newPrinter(s.out)
		p.sizeSheet(sheet)
		err = p.err
	}
	if err == nil && !got.OK {
		err = errFindings
	}
	return err
}

// joined ties a negative figure to the flag before it, --ambient -20C, which
// would otherwise read as a flag of its own.
func joined(args []string) []string {
	var out []string
	for _, a := range args {
		last := len(out) - 1
		if last >= 0 && strings.HasPrefix(out[last], "--") && !strings.Contains(out[last], "=") && len(a) > 1 && a[0] == '-' && a[1] >= '0' && a[1] <= '9' {
			out[last] += "=" + a
			continue
		}
		out = append(out, a)
	}
	return out
}

// mistakes collects what is wrong with the flags, one line for each.
type mistakes []string

func (m *mistakes) say(flag, reason string) { *m = append(*m, "--"+flag+": "+reason) }

func (m mistakes) err() error {
	if len(m) == 0 {
		return nil
	}
	return errors.New(strings.Join(m, "\n  "))
}
