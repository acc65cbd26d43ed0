"""The text of a project with nothing in it yet, whose comments show what belongs where."""

from collections.abc import Mapping

from benchmate.outset.tables import cell, shop_table
from benchmate.outset.written import MM

_INCH = {
    "length": "8'",
    "span": "12'",
    "post": "8 x 8",
    "inner": "7-1/2 x 7-1/2",
    "tenon": "4",
    "thick": "2",
}
_METRIC = {
    "length": "2400",
    "span": "3600",
    "post": "200 x 200",
    "inner": "190 x 190",
    "tenon": "100",
    "thick": "50",
}

_EXAMPLE = """\
# What belongs where. Take the # off a line to use it; README.md lists every key.

# Plan lines: distances east or north of the frame's zero, which lies where you put it.
# [lines]
# "line 1" = "0"                 # west
# "line a" = "0"                 # south
# "line b" = "line a + span"     # north: a sum of other names, so that it follows them

# [lengths]
# span = "{span}"
# "post height" = "{length}"

# Levels: distances up.
# [levels]
# "sill top" = "0"
# "plate underside" = "sill top + post height"

# Depth in from the first reference face by depth in from the second.
# [sections]
# post = "{post}"
# sill = "{post}"
{inner}
# One of these for every timber: what it is, how its reference faces look, where its arris runs.
# [[timber]]
# id = "post-sw"
# name = "SW post"
# kind = "post"
# section = "post"
# first_face = "south"
# second_face = "west"
# reference_end = "foot"
# at = {{ east = "line 1", north = "line a" }}
# far_end_at = "plate underside"

# [[timber]]
# id = "sill-south"
# name = "South sill"
# kind = "sill"
# section = "sill"
# first_face = "up"
# second_face = "south"
# reference_end = "west"
# at = {{ north = "line a", up = "sill top" }}
# reference_end_at = "line 1"
# far_end_at = "line 1 + span"

# And one of these for every joint: both its timbers are marked from it.
# [[joint]]
# id = "sw-foot"
# family = "tenon"
# timber = "post-sw"
# end = "foot"
# into = "sill-south"
# length = "{tenon}"
# thickness = "{thick}"
# set_back = "{thick}"
# relief_reference = "{thick}"
"""

_INNER = """
# By square rule: the perfect timber inside each.
# [inner]
# post = "{inner}"
# sill = "{inner}"
"""


def blank_text(
    name: str, units: str, graduation: str, rule: str, shop: Mapping[str, str] | None = None
) -> str:
    """A project file without timbers, sound as it is: each key of its head on a line of its own.

    `shop` is the shop's practice that it states.
    """
    head = {"name": name, "units": units, "graduation": graduation, "rule": rule}
    lines = ["format = 1", *(f"{key} = {cell(value)}" for key, value in head.items())]
    sizes = _METRIC if units == MM else _INCH
    inner = _INNER.format(inner=sizes["inner"]) if rule == "square" else ""
    practice = tuple(shop_table(shop)) if shop else ()
    return "\n".join((*lines, "", *practice, _EXAMPLE.format(**{**sizes, "inner": inner})))
