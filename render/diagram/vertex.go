package diagram

import "legwork/harness/part"

// lastSlot is the number of rows a sheet can have. Rows that nothing stands
// in take no height.
const lastSlot = 8

// wantOf gives the row that a kind asks for and those it may move to.
func wantOf(it *item) (want int, may []int) {
	switch it.form.row {
	case part.FuseRow:
		return 1, []int{1, 3, 5}
	case part.SwitchRow:
		if it.mate == nil && it.form.cols == 1 {
			return 3, []int{1, 3, 5, 7}
		}
	case part.ConnectorRow:
		return 4, []int{2, 4, 6, 8}
	case part.SensorRow:
		return 7, []int{3, 5, 7}
	case part.LoadRow:
		if it.unit {
			return 5, []int{5}
		}
		if it.form.cols > 1 && !it.form.lying {
			return 5, []int{5, 7}
		}
		return 5, []int{3, 5, 7}
	}
	return 3, []int{3, 5, 7}
}

// vertex is an item or a bar among the things that stand over one another.
type vertex struct {
	item        *item
	bar         *bar
	next        []link
	before      int // links into it that are not yet counted
	late        int
	place, want int
	may         []int
	hangs       bool // bar without upper members: stays close to its lower ones
}

// link says that to stands at least diff rows under its owner.
type link struct {
	to     *vertex
	diff   int
	strand *strand
	pin    *pin // of the joint itself, where there is no strand
}
