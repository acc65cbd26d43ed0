"""The arris line of a raking timber, by points, by run and rise, by legs.

Check values: trade notes 7.1 and 7.5. The source key stands beside each printed answer; CALC is
worked out from first principles there, and no book prints it.
"""

from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from benchmate.frame.levels import Levels
from benchmate.frame.place import Point
from benchmate.frame.rake import Rake, Slope, rake, root
from benchmate.measure.length import NM_PER_INCH, Length
from benchmate.measure.section import read_section
from benchmate.model.place import Incline
from tests.builders import length, lengths
from tests.compass import OPPOSITE
from tests.corner import sixtyfourths
from tests.space import TOWARDS

MANY = settings(max_examples=500)
COMPASS = ("north", "east", "south", "west")
ZERO = {"east": "0", "north": "0", "up": "0"}
VALUE = Levels({}, {"post": read_section("7 x 8")}).value


def raked(**words: object) -> Rake:
    """The arris line of an incline in the words of a project file."""
    return rake(Incline.model_validate(words), VALUE)


def by_legs(one: str, other: str) -> Rake:
    """A brace under a beam: a leg down the post and one out along the beam."""
    return raked(corner=ZERO, legs={"down": one, "east": other})


def by_run(run: str, rise: str) -> Rake:
    """A rafter from its foot."""
    return raked(foot=ZERO, towards="north", run=run, rise=rise)


def inches(line: Rake) -> Fraction:
    """The length along the arris in inches, exact."""
    return Fraction(line.length, NM_PER_INCH)


def printed(line: Rake, text: str) -> bool:
    """Whether a length rounds to a printed figure, to the last of its places."""
    places = len(text.partition(".")[2])
    return abs(inches(line) - Fraction(text)) <= Fraction(1, 2 * 10**places)


@pytest.mark.parametrize(
    ("legs", "answer", "source"),
    [
        (("24", "24"), "33.94", "NAV-60"),
        (("27", "27"), "38.18", "NAV-60"),
        (("30", "30"), "42.43", "NAV-60"),
        (("8", "8"), "11.31", "NAV-60"),
        (("40", "40"), "56.57", "NAV-61"),
        (("18", "24"), "30.000", "NAV-61"),
        (("36", "36"), "50.91", "Hodgson-11"),
        (("51", "51"), "72.12", "Hodgson-21: 6'-0.12\""),
        (("9", "12"), "15.000", "Hodgson-21"),
        (("36", "48"), "60.000", "Hodgson-21"),
        (("3'", "4'"), "60.000", "Hodgson-39: 12 and 9 stepped 4 times"),
        (("2'", "4'"), "53.666", "Hodgson-39: 12 and 6 stepped 4 times"),
        (("24", "24"), "33.941", "CALC"),
        (("36", "36"), "50.912", "CALC"),
        (("8' 3", "8' 3"), "140.007", "CALC; Hodgson-21 prints 11'-8\""),
        (("30", "40"), "50.000", "CALC"),
        (("24", "36"), "43.267", "CALC"),
        (("36", "60"), "69.971", "CALC"),
        (("36", "42"), "55.317", "CALC"),
        (("60", "60"), "84.85", "CALC"),
    ],
)
def test_braces_of_the_books(legs: tuple[str, str], answer: str, source: str) -> None:
    """Both legs, whichever runs along which timber, give the printed length."""
    for line in (by_legs(*legs), by_legs(*reversed(legs))):
        assert printed(line, answer), source


@pytest.mark.parametrize(
    ("run", "rise", "answer", "source"),
    [
        ("8'", "56", "111.140", "CALC; NAV-64 prints 111-1/8"),
        ("12' 6", "75", "167.705", "CALC; Griffith-21 prints 167.75"),
        ("12' 6", "12' 6", "212.13", "Griffith-IV: 17'-8-1/8\""),
        ("12'", "12'", "203.65", "Hodgson-28: 16'-11.65\""),
        ("12' 4", "12' 4", "209.30", "Hodgson-11: 17'-5.30\""),
        ("15'", "90", "201.246", "Hodgson-29: 12 and 6 stepped 15 times"),
        ("12'", "60", "156.000", "Verydays"),
        ("12'", "96", "173.07", "CALC"),
        ("10'", "80", "144.222", "CALC: 12'-0-1/4\""),
        ("12'", "9'", "180.000", "CALC"),
    ],
)
def test_rafters_of_the_books(run: str, rise: str, answer: str, source: str) -> None:
    """Run and rise give the printed length along the arris."""
    assert printed(by_run(run, rise), answer), source


def test_published_slips_are_not_repeated() -> None:
    """Trade notes 7.6: Hodgson's scan has 36-36 as 59-91; Griffith's "practically 14 ft" is not."""
    assert not printed(by_legs("36", "36"), "59.91")
    assert length("14'").nm - by_run("12' 6", "75").length > length("1/4").nm


@pytest.mark.parametrize("scale", [1, 7, 12, 1024])
def test_a_3_4_5_triangle_is_exact(scale: int) -> None:
    """Law 1: three, four and five, not a nanometre out."""
    three, four = (f"{side * scale}/64" for side in (3, 4))
    assert by_legs(three, four).length * 64 == 5 * scale * NM_PER_INCH
    assert by_run(four, three).length * 64 == 5 * scale * NM_PER_INCH


@MANY
@given(st.integers(0, 10**24))
def test_a_root_is_the_nearest_whole(square: int) -> None:
    """Law 1: a square root rounds once, to the nearest nanometre."""
    found = root(square)
    assert (2 * found - 1) ** 2 <= 4 * square or found == 0
    assert 4 * square < (2 * found + 1) ** 2


@pytest.mark.parametrize(
    ("legs", "foot", "head", "heading"),
    [
        ({"down": "3'", "east": "2'"}, ("0", "0", "-3'"), ("2'", "0", "0"), "east"),
        ({"west": "2'", "down": "3'"}, ("0", "0", "-3'"), ("-2'", "0", "0"), "west"),
        ({"up": "3'", "east": "2'"}, ("2'", "0", "0"), ("0", "0", "3'"), "west"),
        ({"up": "3'", "south": "2'"}, ("0", "-2'", "0"), ("0", "0", "3'"), "north"),
    ],
)
def test_legs_worked_by_hand(
    legs: dict[str, str],
    foot: tuple[str, str, str],
    head: tuple[str, str, str],
    heading: str,
) -> None:
    """A brace under a beam has its foot on the post; one that stands on a sill has it there."""
    line = raked(corner=ZERO, legs=legs)
    assert line.foot == tuple(each.nm for each in lengths(*foot))
    assert line.head == tuple(each.nm for each in lengths(*head))
    assert (line.run, line.rise, line.aside) == (length("2'").nm, length("3'").nm, 0)
    assert Incline.model_validate({"corner": ZERO, "legs": legs}).heading.word == heading


@MANY
@given(
    st.sampled_from(COMPASS),
    st.tuples(*(sixtyfourths(-200, 200),) * 3),
    sixtyfourths(1, 200),
    sixtyfourths(1, 200),
)
def test_every_way_to_say_a_line_gives_the_same(
    word: str, at: tuple[Length, Length, Length], run: Length, rise: Length
) -> None:
    """Two points, run and rise, legs from the corner under the beam and from the one on the sill.

    By second opinion: the head lies `run` that way and `rise` up.
    """
    axis, sense = TOWARDS[word]
    foot = (at[0].nm, at[1].nm, at[2].nm)
    over = tuple(each + sense * run.nm * (place == axis) for place, each in enumerate(foot))
    level, head = (over[0], over[1], foot[2]), (over[0], over[1], foot[2] + rise.nm)
    under = (foot[0], foot[1], head[2])
    out, up = run.exact_text(), rise.exact_text()
    lines = {
        raked(foot=stored(foot), head=stored(head), towards=word),
        raked(foot=stored(foot), towards=word, run=out, rise=up),
        raked(corner=stored(under), legs={"down": up, word: out}),
        raked(corner=stored(level), legs={OPPOSITE[word]: out, "up": up}),
    }
    length = root(run.nm**2 + rise.nm**2)
    assert lines == {Rake(foot=foot, head=head, run=run.nm, rise=rise.nm, aside=0, length=length)}


def stored(point: Point) -> dict[str, str]:
    """A point in the words of a project file."""
    return {name: Length(nm).exact_text() for name, nm in zip(ZERO, point, strict=True)}


@pytest.mark.parametrize(
    ("head", "run", "aside"),
    [
        ({"east": "4'", "north": "0", "up": "3'"}, "4'", "0"),
        ({"east": "4'", "north": "1/16", "up": "3'"}, "4'", "1/16"),
        ({"east": "-4'", "north": "0", "up": "3'"}, "-4'", "0"),
        ({"east": "0", "north": "4'", "up": "3'"}, "0", "4'"),
    ],
)
def test_a_head_that_lies_elsewhere_is_seen(head: dict[str, str], run: str, aside: str) -> None:
    """How far it lies out of the plane, and whether it lies ahead at all."""
    line = raked(foot=ZERO, head=head, towards="east")
    assert (line.run, abs(line.aside)) == (length(run).nm, length(aside).nm)


def test_a_line_may_be_said_in_names() -> None:
    """The width of the post it stands on, for one."""
    line = raked(foot=ZERO, towards="north", run="post width - 2", rise="post depth + 1")
    assert (line.run, line.rise) == (length("6").nm, length("8").nm)
    assert inches(line) == 10


def test_half_an_incline_is_a_misuse() -> None:
    """A record that was not checked is not taken for a line."""
    foot = Incline.model_validate({"foot": ZERO, "towards": "east", "run": "1", "rise": "1"})
    with pytest.raises(ValueError, match="a head, or run and rise"):
        rake(foot.model_copy(update={"rise": None}), VALUE)
    with pytest.raises(ValueError, match="a foot, or a corner and legs"):
        rake(foot.model_copy(update={"foot": None}), VALUE)


@pytest.mark.parametrize(
    ("rise", "same"),
    [(8_000, True), (8_017, True), (8_018, False), (7_982, False), (-8_000, False)],
)
def test_slopes_that_part_by_less_than_a_thousandth_are_one(rise: int, same: bool) -> None:
    """8 in 12 and 8.017 in 12 differ by 1 in 1,020; 8.018 by more than a thousandth."""
    assert Slope(12_000, 8_000).like(Slope(12_000, rise)) is same
