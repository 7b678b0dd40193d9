package harness

import (
	"fmt"
	"io/fs"
	"path"
	"slices"
	"strings"

	"legwork/harness/diag"
	"legwork/harness/draft"
)

// Bounds of what a draft may include.
const (
	maxIncludeDepth = 8
	maxIncludeFiles = 64
)

// includes reads the files that a draft includes, each once. Nothing outside
// the draft's own folder is opened: not by "..", not by a path from the root,
// and the file system given keeps links inside.
type includes struct {
	fsys  fs.FS
	shown func(name string) string // how a file is called in findings
	of    map[diag.Span]*draft.File
	files []*draft.File
	names []string // paths in fsys that are read, the draft's own first
	bytes int
	found diag.List
}

// follow reads what a file includes; chain holds the paths on the way to it.
func (in *includes) follow(f *draft.File, chain []string) {
	for _, s := range f.Stmts {
		if s.Word() != "include" || s.Bad {
			continue
		}
		if name, ok := in.nameOf(s, chain[len(chain)-1]); ok {
			in.read(s, name, chain)
		}
	}
}

// nameOf gives the path of the file that a statement names.
func (in *includes) nameOf(s *draft.Stmt, from string) (name string, ok bool) {
	if len(s.Items) != 1 || !s.Items[0].Quoted || s.Items[0].Text == "" {
		in.say(s.Head.At, `include takes the name of one file, in quotes: include "shelf.draft"`)
		return "", false
	}
	text := s.Items[0].Text
	name = path.Join(path.Dir(from), text)
	outside := path.IsAbs(text) || strings.Contains(text, `\`) || slices.Contains(strings.Split(text, "/"), "..")
	if outside || !fs.ValidPath(name) {
		in.say(s.Items[0].At, "%q lies outside the draft's folder: include a file beside the draft or below it", text)
		return "", false
	}
	return name, true
}

func (in *includes) read(s *draft.Stmt, name string, chain []string) {
	at := s.Items[0].At
	switch {
	case slices.Contains(chain, name):
		in.say(at, "%s includes itself, by way of %s", in.shown(name), in.shown(chain[len(chain)-1]))
		return
	case slices.Contains(in.names, name):
		return // read already: it adds nothing
	case len(chain) > maxIncludeDepth:
		in.say(at, "includes go at most %d files deep", maxIncludeDepth)
		return
	case len(in.names) > maxIncludeFiles:
		in.say(at, "a draft includes at most %d files", maxIncludeFiles)
		return
	}
	src, err := Read(in.fsys, name)
	if err == nil && in.bytes+len(src) > MaxDraftBytes {
		err = ErrTooLarge
	}
	if err != nil {
		in.say(at, "can't read %s: %v", in.shown(name), bareError(err))
		return
	}
	in.bytes += len(src)
	in.names = append(in.names, name)
	f, found := draft.Parse(in.shown(name), src)
	in.found = append(in.found, found...)
	in.of[s.Head.At] = f
	in.files = append(in.files, f)
	in.follow(f, append(slices.Clone(chain), name))
}

func (in *includes) say(at diag.Span, format string, args ...any) {
	in.found.Add(diag.Finding{Rule: "draft-include", Severity: diag.Fault, At: at, Msg: fmt.Sprintf(format, args...)})
}

// bareError takes the operation and the path off an error of the file system.
func bareError(err error) error {
	if p, ok := err.(*fs.PathError); ok {
		return p.Err
	}
	return err
}
