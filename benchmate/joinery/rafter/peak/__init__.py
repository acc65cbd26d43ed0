"""The rafter peak: the heads of a pair butted, half-lapped or bridled."""
