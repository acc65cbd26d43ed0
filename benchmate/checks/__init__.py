"""From a design to findings: what would spoil a timber, and the remedy."""
