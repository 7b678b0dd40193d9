// Package deck writes a harness as netlists for a circuit simulator, one for
// each step of use, so that anyone can hold what legwork says against a program
// that shares nothing with it.
//
// The decks are made from the model, the conductors, and the laws of the
// devices, not from the network that package solve builds of them.
package deck
