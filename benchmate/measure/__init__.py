"""Lengths and sections: exact inside, read and printed as a framer writes them."""
