"""From cuts to the ordered steps a framer walks round the timber with."""
