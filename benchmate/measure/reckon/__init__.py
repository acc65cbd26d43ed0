"""The calculator at hand: lines such as `12' 6 - 2 x 7-1/2`, read and reckoned without a float."""
