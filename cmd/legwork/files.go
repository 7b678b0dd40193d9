package main

import (
	"fmt"
	"io"
	"os"
	"path/filepath"

	"legwork/harness"
)

// standard input is called by this name where a draft is asked for.
const stdinName = "-"

// load reads a draft from a path, or from standard input. Findings carry the
// path as the user typed it.
func load(s streams, path string) (*harness.Draft, error) {
	if path == stdinName {
		src, err := io.ReadAll(s.in)
		if err != nil {
			return nil, errUsage{fmt.Errorf("reading standard input: %w", err)}
		}
		return harness.Parse("(standard input)", src), nil
	}
	root, err := os.OpenRoot(filepath.Dir(path))
	if err != nil {
		return nil, errUsage{err}
	}
	defer root.Close()
	d := harness.Load(root.FS(), filepath.Base(path))
	if d.Err != nil {
		return nil, errUsage{d.Err}
	}
	if d.Name != path {
		d = harness.Parse(path, d.File.Src)
	}
	return d, nil
}

// save writes a file whole or not at all: to a temporary file in the same
// folder, synced, then renamed. It refuses to write through a link, or over
// the draft it was made from.
func save(path, draft string, write func(io.Writer) error) error {
	if sameFile(path, draft) {
		return errUsage{fmt.Errorf("%s is the draft itself; choose another name", path)}
	}
	if info, err := os.Lstat(path); err == nil && !info.Mode().IsRegular() {
		return errUsage{fmt.Errorf("%s is not a regular file", path)}
	}
	return replace(path, write)
}

func replace(path string, write func(io.Writer) error) (err error) {
	f, err := os.CreateTemp(filepath.Dir(path), ".legwork-*")
	if err != nil {
		return errUsage{err}
	}
	defer func() {
		if err != nil {
			f.Close()
			os.Remove(f.Name())
		}
	}()
	if err := write(f); err != nil {
		return err
	}
	if err := f.Chmod(0o644); err != nil {
		return err
	}
	if err := f.Sync(); err != nil {
		return err
	}
	if err := f.Close(); err != nil {
		return err
	}
	return os.Rename(f.Name(), path)
}

func sameFile(a, b string) bool {
	if a == "" || b == "" {
		return false
	}
	ia, err := os.Stat(a)
	if err != nil {
		return false
	}
	ib, err := os.Stat(b)
	return err == nil && os.SameFile(ia, ib)
}

// output runs write on the file named by -o, or on standard output.
func output(s streams, path, draft string, write func(io.Writer) error) error {
	if path == "" || path == stdinName {
		return write(s.out)
	}
	return save(path, draft, write)
}
