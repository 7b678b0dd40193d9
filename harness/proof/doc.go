// Package proof holds what shows that the rules together do their work: which
// faults of the trade they find, how many mistakes put into sound drafts they
// answer, and what people ask that a check answers. Its tests write the pages
// docs/faults.md, docs/mutation.md and docs/questions.md; nothing imports it.
package proof
