"""The largest perfect timber inside every stick of a class."""

from itertools import chain

from hypothesis import given
from hypothesis import strategies as st

from benchmate.frame.inner import least_measured, safe_inner
from benchmate.measure.section import read_section
from benchmate.model.progress import Measured
from benchmate.model.solids import Axis
from benchmate.model.stick import Wood
from tests.builders import frame, length, real, timber
from tests.corner import measured

PLACES = st.dictionaries(st.sampled_from(("all", "foot", "head", "tie")), measured(5, 9))


def woods(*sticks: dict[str, dict[str, str]]) -> tuple[Wood, ...]:
    """Posts drawn 7 x 8, each measured at these places."""
    names = [f"post-{number}" for number in range(len(sticks))]
    parts = (timber(name, section="7 x 8") for name in names)
    found = frame(*parts, real=dict(zip(names, map(real, sticks), strict=True)))
    return tuple(map(found.wood, names))


def test_the_smallest_at_any_joint_of_any_member_counts() -> None:
    """Trade notes 1.2, Timberbee: no larger than the smallest actual section of the class."""
    found = woods(
        {"foot": {"first": "7-1/8", "second": "7-7/8"}, "head": {"first": "6-15/16"}},
        {"all": {"first": "7", "second": "8-1/4"}, "tie": {"second": "7-3/4"}},
        {},
    )
    assert safe_inner(found) == read_section("6-15/16 x 7-3/4")


def test_a_post_sawn_out_of_square() -> None:
    """Trade notes 1.2, YearOfMud: a 7 x 7 that measures 7-1/4 x 6-3/4 holds no 7 x 7."""
    found = woods({"all": {"first": "7-1/4", "second": "6-3/4"}})
    assert safe_inner(found) == read_section("7-1/4 x 6-3/4")


def test_nothing_measured_says_nothing() -> None:
    """Sizes as drawn are no proof of what is safe."""
    assert safe_inner(woods({}, {})) is None
    assert safe_inner(woods({"foot": {}})) is None
    assert safe_inner(()) is None


def test_a_side_nobody_measured_is_not_known() -> None:
    """A size as drawn is no proof, so there is no section until both sides were measured."""
    found = woods({"foot": {"first": "6-3/4"}})
    assert safe_inner(found) is None
    assert least_measured(found, Axis.FIRST) == length("6-3/4")
    assert least_measured(found, Axis.SECOND) is None


@given(st.lists(PLACES, min_size=1, max_size=4))
def test_it_fits_inside_every_measured_stick(sticks: list[dict[str, Measured]]) -> None:
    """Law: no measured side is smaller, and one of each is as small."""
    names = [f"post-{number}" for number in range(len(sticks))]
    typed = {
        name: real({place: size.model_dump(exclude_none=True) for place, size in stick.items()})
        for name, stick in zip(names, sticks, strict=True)
    }
    built = frame(*(timber(name, section="7 x 8") for name in names), real=typed)
    found = safe_inner(map(built.wood, names))
    sizes = list(chain.from_iterable(stick.values() for stick in sticks))
    firsts = [size.first for size in sizes if size.first]
    seconds = [size.second for size in sizes if size.second]
    assert (found is None) is (not firsts or not seconds)
    if found is not None:
        assert (found.first, found.second) == (min(firsts), min(seconds))
