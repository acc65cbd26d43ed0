"""The panes of the bench screen: the figure, the words, the drawing."""
