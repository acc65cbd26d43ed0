"""The records everything else speaks in: timbers, joints, cuts, findings."""
