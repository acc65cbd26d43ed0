"""The screens: the bench itself, and what opens over it."""
