"""The drawings of the ends."""

from collections.abc import Callable
from pathlib import Path

from benchmate.sheets.ends import ends
from benchmate.sheets.sheet import TimberSheet

SheetOf = Callable[[str], TimberSheet]


def test_an_end_with_a_tenon_is_drawn(sheet_of: SheetOf) -> None:
    """Both of a post's, each with the names of the faces round it, the reference ones numbered."""
    foot, head = ends(sheet_of("post-se"))
    assert ">foot</text>" in foot
    assert ">head</text>" in head
    for name in ("S 1", "E 2", "N", "W"):
        assert f">{name}</text>" in foot


def test_an_end_with_nothing_on_it_is_not(sheet_of: SheetOf) -> None:
    """A plate's ends are only sawn off."""
    assert ends(sheet_of("plate-north")) == ()


def test_a_stopped_tenon_leaves_its_end_out(sheet_of: SheetOf, spoilt: Path) -> None:
    """Only the head is left of the SE post's two."""
    assert spoilt.is_dir()
    (head,) = ends(sheet_of("post-se"))
    assert ">head</text>" in head
