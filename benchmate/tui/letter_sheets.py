"""The program's own capitals, drawn in pixels, for words to be read from two paces.

A sheet holds pictures side by side, five square pixels high, in the order of the characters named
beside it. Digits have square corners and capitals round ones, so that 0 and O, 5 and S, 8 and B
are told apart.
"""

SHEETS = (
    (
        "ABCDEFGHIJKLM",
        """
.#. ##. .## ##. ### ### .### #.# # ..# #.# #.. #...#
#.# #.# #.. #.# #.. #.. #... #.# # ..# #.# #.. ##.##
### ##. #.. #.# ##. ##. #.## ### # ..# ##. #.. #.#.#
#.# #.# #.. #.# #.. #.. #..# #.# # #.# #.# #.. #...#
#.# ##. .## ##. ### #.. .### #.# # .#. #.# ### #...#
""",
    ),
    (
        "NOPQRSTUVWXYZ",
        """
#..# .##. ##. .##. ##. .## ### #.# #.# #...# #.# #.# ###
##.# #..# #.# #..# #.# #.. .#. #.# #.# #...# #.# #.# ..#
#.## #..# ##. #..# ##. .#. .#. #.# #.# #.#.# .#. .#. .#.
#..# #..# #.. #.## #.# ..# .#. #.# #.# ##.## #.# .#. #..
#..# .##. #.. .### #.# ##. .#. .## .#. #...# #.# .#. ###
""",
    ),
    (
        "0123456789",
        """
### .# ### ### #.# ### ### ### ### ###
#.# ## ..# ..# #.# #.. #.. ..# #.# #.#
#.# .# ### .## ### ### ### ..# ### ###
#.# .# #.. ..# ..# ..# #.# .#. #.# ..#
### .# ### ### ..# ### ### .#. ### ###
""",
    ),
    (
        "'\"-+/.,:;()=",
        """
# #.# ... ... ..# . .. . .. .# #. ...
# #.# ... .#. ..# . .. # .# #. .# ###
. ... ### ### .#. . .. . .. #. .# ...
. ... ... .#. #.. . .# # .# #. .# ###
. ... ... ... #.. # #. . #. .# #. ...
""",
    ),
)
"""The characters of each sheet, and their pictures."""

SPACE = 2
"""Pixels of a space, besides the pixel that follows every character."""
