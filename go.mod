module legwork

go 1.26.8

require (
	github.com/alecthomas/kong v1.17.0
	github.com/dlclark/regexp2 v1.11.5
	github.com/google/go-cmp v0.7.0
	github.com/santhosh-tekuri/jsonschema/v6 v6.0.3
	github.com/stretchr/testify v1.12.1
	golang.org/x/term v0.48.0
)

require (
	go.yaml.in/yaml/v3 v3.0.5 // indirect
	golang.org/x/sys v0.50.0 // indirect
	golang.org/x/text v0.14.0 // indirect
)
