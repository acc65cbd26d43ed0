"""Sheets to take along: one timber, the frame and its joints as pages, plain text and tables."""
