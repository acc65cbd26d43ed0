"""The tenon with a diminished housing: full depth at the bottom, tapering to nothing at the top."""
