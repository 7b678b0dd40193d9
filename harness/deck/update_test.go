package deck

import "flag"

var update = flag.Bool("update", false, "rewrite docs/accuracy.md and the recorded answers of the simulator")
