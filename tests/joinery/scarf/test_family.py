"""The scarf in the catalogue: both halves of one record, and what waits for what."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from benchmate.joinery import family_of
from benchmate.joinery.scarf.family import FAMILY
from benchmate.joinery.tenon.family import features as tenon_features
from benchmate.layout.step import Layout
from benchmate.layout.walk import lay_out
from benchmate.measure.length import Length
from benchmate.model.feature import Awaits
from tests.builders import codes, frame, length, real, tenon, timber
from tests.joinery.scarf.plates import KINDS, joint_of, plate, scarf, sides, stick


def test_the_catalogue_knows_it() -> None:
    """By the word a project file uses."""
    assert FAMILY.name == joint_of(plate()).family == "scarf"
    assert family_of(joint_of(plate())) is FAMILY


@pytest.mark.parametrize("kind", KINDS)
@pytest.mark.parametrize(("keeps", "first"), [("up", "one"), ("down", "other")])
def test_the_second_stick_waits_for_the_first_as_cut(kind: str, keeps: str, first: str) -> None:
    """The one whose lap keeps the face both share is cut first."""
    features = {side.timber: side for side in sides(plate(kind, joint={"keeps": keeps}))}
    leading = features.pop(first)
    (other,) = features.values()
    assert (leading.awaits, leading.mated) == ((), False)
    assert other.awaits == (Awaits(first, f"{leading.id}/as-cut"),)
    assert other.mated
    assert (bool(leading.sizes), bool(other.sizes)) == (True, False)


def test_either_half_belongs_to_its_own_end() -> None:
    """Named after it, at its shoulder, measured at the joint or at that end."""
    one, other = sides(plate())
    assert (one.id, one.title, one.at) == ("east-end-scarf", "East end scarf", length("12' 6"))
    assert (other.id, other.title, other.at) == ("west-end-scarf", "West end scarf", length("0"))
    assert one.place == ("east-end-scarf", "east-end")


def laid(kind: str) -> tuple[Layout, Layout]:
    """Both sticks, with a key where there may be one."""
    key = {"key": "1-1/2"} if "spl" in kind or "squint" in kind else {}
    made = plate(kind, joint=key)
    return lay_out(made, "one"), lay_out(made, "other")


@pytest.mark.parametrize("kind", KINDS)
def test_every_line_has_a_face_and_every_cut_line_its_waste(kind: str) -> None:
    """A framer is told where to strike and which side goes."""
    for layout in laid(kind):
        for step in layout.steps:
            if step.line and step.feature.endswith("scarf"):
                assert step.faces
                assert step.why
                only_measured = kind == "under-squinted" and step.line == "shoulder"
                assert bool(step.waste) is not only_measured


def test_a_stick_may_be_scarfed_at_both_its_ends() -> None:
    """The middle stick of three has a half at either end, each with its own id."""
    made = frame(
        stick("one", reference_end_at="0"),
        stick("other"),
        stick("third", far_end_at="40'"),
        scarf(),
        scarf("bridled", id="second", timber="other", into="third", at="28'", keeps="down"),
    )
    other = made.stick("other")
    assert (other.near, other.far) == (length("3'"), length("33"))
    assert other.body == length("14'") - length("18") - length("15")
    ids = [feature.id for feature in lay_out(made, "other").features]
    assert ids == ["end", "west-end-scarf", "east-end-scarf"]


@pytest.mark.parametrize(
    ("east", "found"),
    [("14'", ()), ("14' 11-63/64", ()), ("15' 1/64", ("mortise-off-the-end",))],
)
def test_a_post_may_stand_under_a_scarf(east: str, found: tuple[str, ...]) -> None:
    """Its mortise lies in the lower lap, from 12' 6" to the tip at 15' 6", but not past it.

    Over or near a support is where a scarf best lies (common practice, no source).
    """
    post = timber("post", at={"east": east, "north": "0"}, length=None, reference_end_at="0")
    head = tenon(id="post-head", timber="post", end="head", into="one", length="2")
    made = frame(
        stick("one", reference_end_at="0"),
        stick("other", far_end_at="28'"),
        scarf(keeps="down"),
        post,
        head,
    )
    sides = {side.timber: side for side in tenon_features(head, made)}
    assert codes(sides["one"].findings) == found
    assert made.stick("post").body == length("8' 4")


SMALL = ("butt", "squint", "tongue", "tongue_length", "set_back")
"""The sizes that only some kinds have."""

SIZES = st.integers(1, 64).map(lambda count: (Length.inches(0, 1, 4) * count).exact_text())
"""Up to 16", in quarters."""


@given(
    kind=st.sampled_from(sorted(KINDS)),
    keys=st.fixed_dictionaries(dict.fromkeys(("length", *SMALL), SIZES)),
    start=st.integers(0, 15),
    cut=st.fixed_dictionaries(dict.fromkeys(("thickness", "width", "length"), SIZES)),
)
@settings(max_examples=80, deadline=None)
def test_whatever_is_typed_is_laid_out_or_told(
    kind: str, keys: dict[str, str], start: int, cut: dict[str, str]
) -> None:
    """Law 7: impossible sizes are findings, never a crash or a repair."""
    needed = {key: keys[key] for key in SMALL if KINDS[kind].get(key)}
    made = plate(
        kind,
        joint={"length": keys["length"], **needed},
        one={"reference_end_at": f"{start}'"},
        real={"one": real(as_cut={"east-end-scarf": cut})},
    )
    for name in ("one", "other"):
        layout = lay_out(made, name)
        assert layout.shoulder is None or layout.step(layout.shoulder).line == "shoulder"
