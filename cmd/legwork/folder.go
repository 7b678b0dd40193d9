package main

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
)

// page is one file of a folder that is written as a whole.
type page struct {
	name  string
	write func(io.Writer) error
}

// saveAll writes pages into a folder, all or none: into a new folder inside it
// first, then by renaming, which is not begun unless every name is free or a
// regular file. A folder that was made for it goes again if that fails.
func saveAll(dir, draft string, pages []page) (err error) {
	dir = filepath.Clean(dir)
	made := false
	if _, err := os.Stat(dir); errors.Is(err, fs.ErrNotExist) {
		made = true
	}
	if err := os.MkdirAll(dir, 0o755); err != nil {
		return errUsage{fmt.Errorf("can't make the folder %s: %w", dir, bare(err))}
	}
	defer func() {
		if err != nil && made {
			os.Remove(dir)
		}
	}()
	for _, p := range pages {
		if err := mayWrite(filepath.Join(dir, p.name), draft); err != nil {
			return err
		}
	}
	stage, err := os.MkdirTemp(dir, ".legwork-*")
	if err != nil {
		return errUsage{fmt.Errorf("can't write to %s: %w", dir, bare(err))}
	}
	defer os.RemoveAll(stage)
	for _, p := range pages {
		if err := replace(filepath.Join(stage, p.name), p.write); err != nil {
			return err
		}
	}
	for _, p := range pages {
		if err := os.Rename(filepath.Join(stage, p.name), filepath.Join(dir, p.name)); err != nil {
			return err
		}
	}
	return nil
}
