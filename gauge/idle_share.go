package gauge

// IdleShare is what a machine gives at idle, as a share of its rating: 80 A
// of 140 A, the lower of two published machines. Another machine has another
// curve, so it is good for a hint, never for a verdict (source alternator-idle).
const IdleShare = 80.0 / 140
