package deck

const accuracyHead = `# How right the volts are

This page is written by a test (` + "`go test ./harness/deck -update`" + `); the figures are those of the last time. Two things judge legwork that share no code
with its solver.

**Exact arithmetic.** Networks of up to 200 nodes, with conductances of a ratio up to 1e10, are solved in rational numbers (` + "`harness/circuit`" + `: oracle tests).
While all sources stand on the reference every voltage is within 1e-12 of the exact one, however small; elsewhere within 1e-10 V.

**A circuit simulator**, ngspice, judges the modeling. Twenty-one small drafts have a deck written by hand from the laws on paper, with volts worked out by hand where
that is easy (` + "`harness/deck/testdata/hand`" + `); twenty of them are older than any code that writes decks. Every node agrees within 1e-9, and where a tired battery makes the
starter click, neither side finds a state at rest. Then legwork writes decks itself (` + "`legwork export DRAFT spice`" + `): for all shipped drafts in four cases, and for 300
generated ones with relays, diodes, controllers, loads of constant power, tired batteries and returns that have lost their ground. They are made from the model,
not from the network that legwork solves; what a device does is said once for both (` + "`harness/part`" + `), and judged by the decks written by hand.

*Frozen* decks have contacts, controllers and coil temperatures as legwork found them: they judge the volts. *Live* decks have switches with hysteresis and
controllers that live off their feeds, each step begun from where the simulator itself ended the one before; a step is played in up to three phases, as the
starter's pull and the controllers' commands come one after the other. They judge the contacts.

A reading is one node in one step. The bar is 1e-9 of the volts, or 1e-9 V, where conductances span no more than 1e6.

`

const accuracyWeak = `
Nodes that hang on a leak, behind a blocked diode or a load that is off, span more. There neither is asked to be right to nine digits: both are held against
arithmetic of 90 digits, on the pieces of the laws that were found. Readings of the same steps in which the simulator's own error is above the bar are held
against it too.

`

const accuracyOrder = `
## Contacts that an operating point does not decide

Where two relays lock each other out, where a relay's own load takes its volts, or where the key's travel ends before a relay has moved, it is time that decides:
the simulator's switches find no operating point, or another state at rest. Each such step is played once more, one contact at a time by the times to operate
and release, with all volts from the simulator; the column above counts what is then still different.

`

const accuracyChatter = `
Relays that never settle are held out by both sides, and named (%d steps). Let go, every one of these steps goes round for ever by the simulator's volts too. Loads of constant power that can't be fed at all, %d in all steps, are left out by both.

`

const accuracyTail = `
## Time

Measured apart from the tests, on a shared virtual machine with two x86-64 cores, as CPU of user and system; the least of three runs of one simulator process that
reads and solves the eleven frozen decks of a generated draft (` + "`harness/generate_test.go`" + `, nominal figures), and of seven plays of the same draft by ` + "`solve.Run`" + `, which
builds its network first and, beyond what the decks ask, moves the relays: some thirty networks instead of eleven.

| wires | nodes | simulator, process | legwork, in process | ratio |
|---|---|---|---|---|
| 100 | 169 | 18 ms | 0.51 ms | 35 |
| 1,000 | 1,595 | 100 ms | 4.3 ms | 23 |
| 10,000 | 15,949 | 2.4 s | 51 ms | 47 |

At these sizes the two were within 5e-11 of the volts on every node that nine digits are asked of, and every contact was at rest by the simulator's volts (seen when
measured, not kept by a test). The simulator's time has the start of a process in it and the reading of text; [performance.md](performance.md) has legwork as a process.

## Also kept by tests

- One live deck a step, as the command writes it, ends with the contacts that legwork found, in every step of the shipped drafts (` + "`TestLiveDecksAsExported`" + `).
- Currents cancel at every node within the larger of 1 uA and 64 units of rounding of the sum of |g v|, by the laws of the decks at the volts found; energy in
  equals energy out within 1e-9 of it in every step of the shipped drafts (` + "`TestEnergyAndCurrents`" + `).
- Loops of straps, wires of no length and parts that float are exact or named (` + "`TestLoopsAndNothing`" + ` in ` + "`harness/circuit`" + `, ` + "`21-loop.cir`" + `).
- A load of constant power collapses where its closed form says, E^2/4R or its cut-off (` + "`TestCollapse`" + ` in ` + "`harness/circuit`" + `).
- A diode of two straight pieces lies within 60 mV of an exponential junction from 2 % of its rating to all of it, by closed form and in the harnesses above with
  the simulator's own diode (` + "`TestDiodeCorner`, `TestDiodesInHarnesses`" + `). Below that the junction needs less: what a diode lets through by microamperes
  is not told.

Without ngspice these tests compare with its recorded answers, and say so; under CI its absence is a fault.
`
