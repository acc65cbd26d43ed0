"""TOML in and out: strict reading, one small atomic write at a time."""
