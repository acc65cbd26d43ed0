"""Which lines are struck."""

import pytest

from benchmate.layout.marks import is_mark
from benchmate.layout.walk import features_on
from tests.builders import chamfer, frame, line, real, sill, tenon, timber


@pytest.mark.parametrize(("first", "struck"), [("4", False), ("4-1/64", True), ("6", True)])
def test_a_far_cheek_on_the_far_face_is_no_line(first: str, struck: bool) -> None:
    """Where the stick ends there is nothing to strike; a hair inside it there is."""
    sizes = {"post": real({"foot-tenon": {"first": first}})}
    built = frame(timber("post"), tenon(), real=sizes)
    (tenoned,) = (each for each in features_on(built, "post") if each.id == "foot-tenon")
    assert is_mark(built.stick("post"), tenoned, line(tenoned.lines, "far-cheek")) is struck


@pytest.mark.parametrize(("at", "struck"), [("0", False), ("1/64", True)])
def test_a_mortise_that_starts_at_the_end_has_no_start_line(at: str, struck: bool) -> None:
    """The end itself is the mark."""
    built = frame(timber("post"), sill(), tenon(into="sill", at=at))
    (mortised,) = (each for each in features_on(built, "sill") if each.lines[0].id == "start")
    assert is_mark(built.stick("sill"), mortised, line(mortised.lines, "start")) is struck


def test_gauged_and_stated_lines_and_shoulders_are_always_struck() -> None:
    """A gauge line has no axis, a depth lies inside, and a shoulder is always the datum."""
    built = frame(timber("post"), sill(), tenon(into="sill", at="0"), chamfer())
    for owner, feature_id, line_id in (
        ("post", "inside-chamfer", "line"),
        ("post", "foot-tenon", "shoulder"),
        ("sill", "post-foot-mortise", "depth"),
    ):
        (found,) = (each for each in features_on(built, owner) if each.id == feature_id)
        assert is_mark(built.stick(owner), found, line(found.lines, line_id))
