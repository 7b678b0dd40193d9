package draft

// Tidy prints a draft.
func Tidy(f *File) []byte { return f.Src }
