module legwork

go 1.26.8

require github.com/stretchr/testify v1.12.1

require (
	github.com/alecthomas/kong v1.17.0 // indirect
	github.com/google/go-cmp v0.7.0 // indirect
	go.yaml.in/yaml/v3 v3.0.5 // indirect
	golang.org/x/sys v0.50.0 // indirect
	golang.org/x/term v0.48.0 // indirect
)
