"""The joist dropped in from above: its end straight in a pocket, or a dovetail in a socket."""
