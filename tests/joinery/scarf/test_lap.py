"""The lap's cuts and lines: which faces, which figures, which side is waste."""

import pytest

from benchmate.joinery.scarf.lap import lap_cuts, lap_lines, reduced_line
from benchmate.layout.step import Step
from benchmate.layout.walk import lay_out
from benchmate.model.directions import LONG_FACES, Face
from benchmate.model.solids import Axis
from tests.builders import length, lengths, line, read, real, set_in_words
from tests.joinery.scarf.plates import KINDS, both, plate

SQUARE = {"rule": "square", "inner": "7-1/2 x 7-1/2"}


def step(kind: str, name: str, timber: str = "one", **words: object) -> Step:
    """A step of a scarf by the name of its line."""
    layout = lay_out(plate(kind, **words), timber)  # type: ignore[arg-type]
    end = "east" if timber == "one" else "west"
    return layout.step(f"{end}-end-scarf/{name}")


@pytest.mark.parametrize(
    ("timber", "figures", "faces"),
    [
        ("one", ("12' 6",), "South face, underside and North face"),
        ("other", ("3'",), "top face, South face and North face"),
    ],
)
def test_the_shoulder_is_the_datum(timber: str, figures: tuple[str, ...], faces: str) -> None:
    """From the squared end, and never across the face the lap runs on along."""
    found = step("half lap", "shoulder", timber)
    assert read(found) == lengths(*figures)
    assert found.on == faces
    kept = "top face" if timber == "one" else "underside"
    assert f"Never across the {kept}" in found.caution
    assert [each.value for each in found.beside] == list(lengths("3'", "28'"))
    assert "counted once" in found.beside[1].words
    assert ("not overall" in found.caution) is (timber == "one")
    assert found.caution == found.caution.strip()


def test_other_marks_on_the_second_stick_count_from_its_shoulder() -> None:
    """Its squared end is the tip, 3' before zero."""
    layout = lay_out(plate(), "other")
    assert layout.shoulder == "west-end-scarf/shoulder"
    assert layout.stick.start == length("-3'")


def test_a_half_lap_line_runs_down_the_middle() -> None:
    """4" from the top on both, with the waste below on the one and above on the other."""
    for timber, side in (("one", "underside"), ("other", "top face")):
        found = step("half lap", "lap", timber)
        assert read(found) == lengths("4")
        assert found.readings[0].hook == "top face"
        assert found.waste_side == side
        assert found.beside[0].words == f"to come off the {side}"
        assert "Never measure this from the underside" in found.caution
        assert "for the engineer" in found.caution
        assert "clear of brace mortises" in found.caution
        assert "A published rule asks 6 times" in found.why


def test_a_splay_line_is_set_off_at_the_tip_and_at_the_shoulder() -> None:
    """2" in at the tip of the one and 6" at its shoulder; 12 and 1-5/16 on the square, 6.3 deg.

    4" of slope in 36" is 1.333 in 12 and 6.34 degrees (CALC).
    """
    found = step("stop-splayed", "lap")
    assert found.short == "Splay line"
    assert read(found) == lengths("2")
    assert "on the tip, at the east end" in found.readings[0].way
    assert found.beside[0].value == length("6")
    assert found.beside[0].words == "from the top face on the shoulder line"
    assert set_in_words(found.setting) == (
        'strike along the blade: blade 12" towards the east end, tongue 1-5/16"+, on the top edge; '
        "6.3° to the long edge"
    )
    assert read(step("stop-splayed", "lap", "other")) == lengths("6")


def test_a_leaning_abutment_is_set_off_on_the_face_and_at_the_splay() -> None:
    """1/2" in 2" is 14 degrees off square, 3" in 12" (CALC)."""
    found = step("under-squinted", "abutment")
    assert read(found) == lengths("12' 6-1/2")
    assert found.on == "South face, underside and North face"
    assert found.readings[0].way.endswith("on the underside")
    further = found.beside[0]
    assert further.value == length("1/2")
    assert further.words == "nearer the west end on the splay line"
    assert set_in_words(found.setting) == (
        'strike along the tongue: blade 12" towards the east end, tongue 3", on the top edge; '
        "saw 14° off square"
    )
    assert "Further in is further from the east end" in found.caution
    assert "Not measured here yet" in found.caution
    measured = {"one": real({"all": {"first": "8-1/4"}})}
    found = step("under-squinted", "abutment", real=measured)
    assert "Not measured" not in found.caution
    assert read(found) == lengths("12' 6-9/16")
    assert "Not measured" not in step("under-squinted", "abutment", "other").caution
    tip = step("under-squinted", "tip")
    assert read(tip) == lengths("15' 5-1/2")
    assert "Not measured" not in tip.caution
    assert "Not measured here yet" in step("under-squinted", "tip", "other").caution
    assert tip.beside[0].words == "from the top face, east end grain"
    assert tip.waste == "Towards the east end: the wedge along the top face."


def test_the_shoulder_of_a_leaning_abutment_is_only_measured_from() -> None:
    """It is struck beside the lap, where the inner corner comes, and no cut runs along it."""
    found = step("under-squinted", "shoulder")
    assert found.on == "South face and North face"
    assert found.waste == ""
    assert "not sawn along it" in found.caution
    (half, _) = both(plate("under-squinted"))
    assert not any(plane.line == "shoulder" for cut in lap_cuts(half) for plane in cut.planes)
    squared = step("under-squinted", "shoulder", one=SQUARE, other=SQUARE)
    assert squared.on == "South face and North face"
    other = step("under-squinted", "shoulder", "other", one=SQUARE, other=SQUARE)
    assert other.on == "South face, underside and North face"


@pytest.mark.parametrize("kind", KINDS)
def test_the_cuts_take_the_other_half_and_leave_this_one(kind: str) -> None:
    """Half-way along the lap, a spot near the kept face stays and one near the other goes."""
    for half, middle in zip(both(plate(kind)), lengths("14'", "-18"), strict=True):
        cuts = lap_cuts(half)
        high, low = (any(cut.takes(middle.nm, length(u).nm, 1) for cut in cuts) for u in ("1", "7"))
        assert (high, low) == ((False, True) if half.leads else (True, False))
        before = half.at.nm + (-1 if half.end is Face.FAR_END else 1) * length("6").nm
        for deep in ("1", "7"):
            assert not any(cut.takes(before, length(deep).nm, 1) for cut in cuts)


def test_by_square_rule_the_far_faces_come_down_along_the_lap() -> None:
    """1/2" off the north side of both, and off the underside of the lower."""
    made = plate(one=SQUARE, other=SQUARE)
    one, other = both(made)
    assert [each.id for each in lap_lines(one, made.project.tape)] == [
        "shoulder",
        "lap",
        "reduced-second",
    ]
    lines = lap_lines(other, made.project.tape)
    assert [each.id for each in lines][2:] == ["reduced-second", "reduced-first"]
    found = line(lines, reduced_line(Axis.FIRST))
    assert (found.at, found.beside[0].value) == lengths("7-1/2", "1/2")
    assert "Measure before cutting" in found.why
    shoulder = step("half lap", "shoulder", "other", one=SQUARE, other=SQUARE)
    assert set(shoulder.faces) == set(LONG_FACES)
    assert "Across the underside no deeper than its reduction" in shoulder.caution


def test_the_second_lap_says_what_it_follows() -> None:
    """The first as drawn, or as it was measured once cut."""
    drawn = step("half lap", "lap", "other")
    assert "Follows One's lap as drawn" in drawn.why
    made = {"one": real(as_cut={"east-end-scarf": {"thickness": "4-1/16"}})}
    found = step("half lap", "lap", "other", real=made)
    assert read(found) == lengths("4-1/16")
    assert "Follows One's lap as cut: 4-1/16" in found.why
    assert "cut it first" in step("half lap", "lap").why


def test_the_tip_says_how_high_its_butt_is() -> None:
    """The same on both sticks, whichever leads."""
    for timber in ("one", "other"):
        found = step("under-squinted", "tip", timber)
        assert [each.value for each in found.beside if "of butt" in each.words] == [length("2")]
