"""The scarf: two sticks of one line joined end to end, each lapping half of the other."""
