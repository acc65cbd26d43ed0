"""The mortise and housing of a brace."""

from benchmate.joinery.brace.hole import hole_cuts, hole_lines, hole_tasks
from benchmate.joinery.brace.legs import legs
from benchmate.joinery.brace.record import BraceJoint
from benchmate.model.directions import Face
from benchmate.model.feature import Line, Stage
from tests.builders import length, line, real
from tests.joinery.brace.bays import bay
from tests.joinery.brace.test_shape import hole


def lines(end: str = "foot", **words: object) -> tuple[Line, ...]:
    """The lines of one mortise of the brace of a bay."""
    frame = bay(**words)  # type: ignore[arg-type]
    shape = hole(frame, end)
    joint = next(
        work for work in frame.project.works if isinstance(work, BraceJoint) and end in work.id
    )
    return hole_lines(shape, legs(joint, frame.stick("brace"), frame), frame.project.tape)


def test_the_order_they_are_struck_in() -> None:
    """Ends, housing, sides, depth; flush on the near side, the housing is open there."""
    names = [each.id for each in lines()]
    assert names == [
        "nose-end",
        "heel-end",
        "housing-far",
        "housing-floor",
        "near-side",
        "far-side",
        "depth",
    ]


def test_unhoused_there_is_only_a_mortise() -> None:
    """One cut and no floor."""
    assert "housing-floor" not in [each.id for each in lines(joint={"housing": "0"})]
    assert len(hole_cuts(hole(bay(joint={"housing": "0"})))) == 1


def test_the_leg_is_told_at_the_nose_end() -> None:
    """To the face and to the seat, so that neither is taken for the other."""
    words = [beside.words for beside in line(lines(), "nose-end").beside]
    assert words[:2] == [
        "leg, along Post to the face of Beam",
        "leg to the housing's floor in Beam",
    ]


def test_a_nose_that_is_set_in_shortens_what_is_told_to_the_corner() -> None:
    """1" in, its end lies 35" from the beam, and not the leg of 36"."""
    found = line(lines(joint={"nose": "1"}), "nose-end")
    assert [(each.value, each.words) for each in found.beside[:2]] == [
        (length("1"), "nearer the corner than the long edge of Brace"),
        (length("35"), "from here along Post to the face of Beam"),
    ]
    assert found.at == length("8'") - length("35")
    assert found.why.startswith("The nose of Brace comes here")


def test_the_depth_counts_from_the_floor() -> None:
    """4" of tenon and 1/8" of clearance below the floor, 4-5/8" from the face in all."""
    depth = line(lines(), "depth")
    assert [(each.value, each.hook) for each in depth.readings] == [
        (length("4-1/8"), "housing floor")
    ]
    assert depth.beside[0].value == length("4-5/8")
    assert depth.at == length("8") - length("4-5/8")


def test_it_says_which_tenon_it_follows() -> None:
    """As drawn until the tenon was measured as cut."""
    assert "not been measured as cut" in line(lines(), "far-side").why
    cut = {"brace": real(as_cut={"foot-tenon": {"thickness": "1-7/16"}})}
    assert 'as cut: 1-7/16" thickness' in line(lines(real=cut), "far-side").why


def test_the_housing_is_cut_before_the_mortise() -> None:
    """Knifed, housed, bored, pared, tried."""
    tasks = hole_tasks(hole(bay()))
    assert [task.id for task in tasks] == [
        "section",
        "knife",
        "cut-housing",
        "bore",
        "pare-sides",
        "pare-ends",
        "try-depth",
    ]
    cut = next(task for task in tasks if task.id == "cut-housing")
    assert (cut.stage, cut.readings[0].value) == (Stage.CUT, length("1/2"))
    assert cut.faces == (Face.FAR_FIRST, Face.SECOND)


def test_by_square_rule_the_floor_follows_the_stick() -> None:
    """A post of 8-3/8" is housed 7/8" deep, and the floor stays where it was."""
    own = {"post": {"rule": "square", "inner": "8 x 8"}}
    frame = bay(own=own, real={"post": real({"all": {"first": "8-3/8"}})})
    floor = line(hole_lines(hole(frame), None, frame.project.tape), "housing-floor")
    assert floor.readings[0].value == length("7/8")
    assert floor.at == length("7-1/2")
    task = next(task for task in hole_tasks(hole(frame)) if task.id == "cut-housing")
    assert task.readings[0].value == length("7/8")
