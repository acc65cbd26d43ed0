"""The joist in its pocket: dropped in from above, bearing on the pocket's floor."""
