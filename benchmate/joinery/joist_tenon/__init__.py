"""The joist tenoned into a beam's side: a low soffit tenon with a haunch, or a tusk tenon."""
