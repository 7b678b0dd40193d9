// Package harness is the front door of legwork: it reads a draft, plays it
// through its steps of use, sizes its wires and runs the rules.
//
//	d := harness.Load(root.FS(), "truck.draft")              // never nil
//	r, err := d.Check(ctx, harness.Options{Profile: "road"}) // err: context or program fault only
//	for f := range r.Findings.AtLeast(diag.Fault) {
//		fmt.Println(f)
//	}
package harness

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"path"
	"strings"

	"legwork/harness/diag"
	"legwork/harness/draft"
	"legwork/harness/model"
)

// MaxDraftBytes bounds a draft before it is read: 16 MB.
const MaxDraftBytes = 16 << 20

// ErrTooLarge is wrapped by the error for a draft over MaxDraftBytes.
var ErrTooLarge = errors.New("larger than 16 MB, the most that a draft may have")

// Draft is a draft as read: its text, its tree and its model, with every
// mistake found on the way.
type Draft struct {
	Name     string
	File     *draft.File
	Included []*draft.File // what it includes, in the order in which it is read
	Model    *model.Model
	Findings diag.List
	Err      error // the file could not be read at all; nil otherwise

	setup model.Setup
}

// Load reads a draft from a file system, with the files that it includes. It
// never gives nil: what could not be read is told in Err and Findings.
func Load(fsys fs.FS, name string) *Draft { return LoadAs(fsys, name, name) }

// LoadAs is Load for a draft that findings call by another name, such as the
// path that a user typed; what it includes is called by its place beside it.
func LoadAs(fsys fs.FS, name, shown string) *Draft {
	src, err := Read(fsys, name)
	if err != nil {
		d := Parse(shown, nil)
		d.Err = fmt.Errorf("reading %s: %w", shown, err)
		d.Findings = diag.List{{
			Rule: "draft-unreadable", Severity: diag.Fault, At: diag.Span{File: shown}, Msg: d.Err.Error(),
		}}
		return d
	}
	in := &includes{
		fsys: fsys, of: map[diag.Span]*draft.File{}, names: []string{name}, bytes: len(src),
		shown: func(file string) string { return beside(name, shown, file) },
	}
	file, found := draft.Parse(shown, src)
	in.follow(file, []string{name})
	return build(file, append(found, in.found...), model.Setup{Included: in.of}, in.files)
}

// beside gives the shown name of an included file: the draft's own shown name
// with the way from the draft to the file.
func beside(name, shown, file string) string {
	if dir := path.Dir(name); dir != "." {
		file = strings.TrimPrefix(file, dir+"/")
	}
	if i := strings.LastIndexAny(shown, `/\`); i >= 0 {
		return shown[:i+1] + file
	}
	return file
}

// Parse reads a draft from memory; name is used in findings. It can include
// nothing: there is no folder to read from.
func Parse(name string, src []byte) *Draft {
	file, found := draft.Parse(name, src)
	return build(file, found, model.Setup{}, nil)
}

func build(file *draft.File, found diag.List, setup model.Setup, included []*draft.File) *Draft {
	m, more := model.BuildWith(file, setup)
	found = append(found, more...)
	found.Sort()
	var unread error
	if why := draft.Unreadable(file.Src); why != "" {
		unread = fmt.Errorf("reading %s: %w", file.Name, errors.New(why))
	}
	return &Draft{Name: file.Name, Err: unread, File: file, Included: included, Model: m, Findings: found, setup: setup}
}

// Read gives the bytes of a draft that is a regular file of MaxDraftBytes at
// most. The file is looked at before it is opened: to open a pipe would wait
// for its writer.
func Read(fsys fs.FS, name string) ([]byte, error) {
	info, err := fs.Stat(fsys, name)
	switch {
	case err != nil:
		return nil, err
	case info.IsDir():
		return nil, errors.New("a folder, not a draft")
	case !info.Mode().IsRegular():
		return nil, errors.New("not a regular file")
	}
	f, err := fsys.Open(name)
	if err != nil {
		return nil, err
	}
	defer f.Close()
	return ReadFrom(f)
}

// ReadFrom gives the bytes of a draft from a stream, MaxDraftBytes at most.
func ReadFrom(r io.Reader) ([]byte, error) {
	src, err := io.ReadAll(io.LimitReader(r, MaxDraftBytes+1))
	if err == nil && len(src) > MaxDraftBytes {
		return nil, ErrTooLarge
	}
	return src, err
}

// Source gives the text of the draft, or of a file that it includes, for the
// printing of findings; nil for another file's name.
func (d *Draft) Source(name string) []byte {
	if name == d.Name {
		return d.File.Src
	}
	for _, f := range d.Included {
		if f.Name == name {
			return f.Src
		}
	}
	return nil
}
