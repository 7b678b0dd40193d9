package main

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"strings"

	"legwork/harness"
)

// stdio is how standard input is called where a draft is asked for, and
// standard output where a file is.
const stdio = "-"

// load reads a draft from a path, or from standard input. Findings carry the
// path as the user typed it.
func load(s streams, path string) (*harness.Draft, error) {
	if path == stdio {
		src, err := harness.ReadFrom(s.in)
		if err != nil {
			return nil, errUsage{fmt.Errorf("reading standard input: %w", err)}
		}
		d := harness.Parse("(standard input)", src)
		if d.Err != nil {
			return nil, errUsage{fmt.Errorf("can't read standard input: %w", errors.Unwrap(d.Err))}
		}
		return d, nil
	}
	if strings.TrimSpace(path) == "" {
		return nil, errUsage{errors.New("no draft is named: name a file, or - for standard input")}
	}
	d, err := loadFile(path)
	if err != nil {
		return nil, errUsage{fmt.Errorf("can't read %s: %w", path, bare(err))}
	}
	return d, nil
}

// loadFile reads the draft behind a path and what it includes. A link that the
// user names is followed; what lies beside it is seen through the folder of
// the real file, and nothing outside that folder is.
func loadFile(path string) (*harness.Draft, error) {
	file, err := filepath.EvalSymlinks(path)
	if err != nil {
		return nil, err
	}
	if info, err := os.Stat(file); err == nil && info.IsDir() {
		return nil, errors.New("a folder, not a draft")
	}
	root, err := os.OpenRoot(filepath.Dir(file))
	if err != nil {
		return nil, err
	}
	defer root.Close()
	d := harness.LoadAs(root.FS(), filepath.Base(file), path)
	return d, errors.Unwrap(d.Err)
}

// bare takes the operation and the path off an error of the file system, where
// the message already names the path.
func bare(err error) error {
	var p *fs.PathError
	if errors.As(err, &p) {
		return p.Err
	}
	return err
}

// output runs write on the file named by -o, or on standard output.
func output(s streams, path, draft string, write func(io.Writer) error) error {
	if path == "" || path == stdio {
		return write(s.out)
	}
	return save(path, draft, write)
}

// save writes a file whole or not at all. It refuses to write through a link,
// over anything but a regular file, or over the draft it was made from.
func save(path, draft string, write func(io.Writer) error) error {
	if err := mayWrite(path, draft); err != nil {
		return err
	}
	return replace(path, write)
}

// mayWrite says why a file may not be written, nil where it may.
func mayWrite(path, draft string) error {
	if sameFile(path, draft) {
		return errUsage{fmt.Errorf("%s is the draft itself; choose another name", path)}
	}
	info, err := os.Lstat(path)
	switch {
	case err != nil:
		return nil // not there yet, or the writing itself will tell
	case info.IsDir():
		return errUsage{fmt.Errorf("%s is a folder; name a file", path)}
	case info.Mode()&fs.ModeSymlink != 0:
		return errUsage{fmt.Errorf("%s is a link; legwork does not write through links", path)}
	case !info.Mode().IsRegular():
		return errUsage{fmt.Errorf("%s is not a regular file", path)}
	}
	return nil
}

// replace writes to a temporary file in the same folder, syncs and renames it.
// On any failure nothing is left behind and the old file stays.
func replace(path string, write func(io.Writer) error) (err error) {
	f, err := os.CreateTemp(filepath.Dir(path), ".legwork-*")
	if err != nil {
		return errUsage{fmt.Errorf("can't write %s: %w", path, bare(err))}
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
	if err := f.Chmod(modeOf(path)); err != nil {
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

// modeOf gives the permissions of the file that is replaced, or the usual ones
// of a new file.
func modeOf(path string) fs.FileMode {
	if info, err := os.Lstat(path); err == nil && info.Mode().IsRegular() {
		return info.Mode().Perm()
	}
	return 0o644
}

func sameFile(a, b string) bool {
	if a == "" || b == "" || b == stdio {
		return false
	}
	ia, err := os.Stat(a)
	if err != nil {
		return false
	}
	ib, err := os.Stat(b)
	return err == nil && os.SameFile(ia, ib)
}

// isFolder reports whether a user means a folder by what follows -o.
func isFolder(path string) bool {
	return strings.HasSuffix(path, "/") || strings.HasSuffix(path, string(filepath.Separator))
}
