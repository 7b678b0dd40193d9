package harness

import (
	"errors"
	"fmt"
	"slices"
	"strings"

	"legwork/harness/diag"
	"legwork/harness/draft"
	"legwork/harness/model"
)

// ErrOption is wrapped by the error for an option that the draft lacks.
var ErrOption = errors.New("unknown option")

// Fit builds the model anew with these options of the draft fitted and no
// others. The error names an option that the draft does not have; the model
// then stays as it is.
func (d *Draft) Fit(with []string) error {
	for _, name := range with {
		if _, ok := d.Model.OptionByName(name); !ok {
			return noOption(name, d.Model.Options)
		}
	}
	if slices.Equal(with, d.setup.With) {
		return nil
	}
	setup := d.setup
	setup.With = slices.Clone(with)
	d.Model, _ = d.rebuilt(setup)
	d.setup = setup
	return nil
}

// With names the options that are fitted, in the order of the draft.
func (r *Result) With() []string {
	names := []string{}
	for _, o := range r.Model.Options {
		if o.Fitted {
			names = append(names, o.Name)
		}
	}
	return names
}

func noOption(name string, options []*model.Option) error {
	if len(options) == 0 {
		return fmt.Errorf("%w %q: the draft has no options", ErrOption, name)
	}
	var names []string
	for _, o := range options {
		names = append(names, o.Name)
	}
	if near := diag.Nearest(name, names); near != "" {
		return fmt.Errorf("%w %q; did you mean %s?", ErrOption, name, near)
	}
	return fmt.Errorf("%w %q; there are %s", ErrOption, name, strings.Join(names, ", "))
}

// rebuilt builds the model of the draft with another setup. Trees that were
// let go of are read again; what was wrong with the text was told before.
func (d *Draft) rebuilt(setup model.Setup) (*model.Model, diag.List) {
	if setup.Included != nil {
		setup.Included = map[diag.Span]*draft.File{}
		for at, f := range d.setup.Included {
			setup.Included[at] = whole(f)
		}
	}
	return model.BuildWith(whole(d.File), setup)
}

func whole(f *draft.File) *draft.File {
	if len(f.Stmts) == 0 && len(f.Src) > 0 {
		f, _ = draft.Parse(f.Name, f.Src)
	}
	return f
}
