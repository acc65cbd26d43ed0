"""The wedged half-dovetail: a tie or girt right through a post, its tail held down by a wedge."""
