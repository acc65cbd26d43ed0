"""Setting a frame out: from its driving dimensions to the text of a project file."""
