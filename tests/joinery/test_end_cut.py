"""The ends of a timber: squared, overall, and a body between the shoulders."""

import pytest

from benchmate.joinery import FAMILIES
from benchmate.joinery.end_cut import FAMILY, features, no_body
from benchmate.measure.length import Length
from benchmate.model.directions import LONG_FACES
from benchmate.model.feature import Feature, Stage
from benchmate.model.project import Timber
from tests.builders import codes, corners, frame, girt_between, length, line, sill, tenon, timber


def _check_post() -> Feature:
    built = corners()
    (feature,) = features(built.timber("post-sw"), built)
    return feature


def test_the_catalogue_knows_the_family() -> None:
    """Every timber has end cuts, so its record is the timber itself."""
    assert FAMILY in FAMILIES
    assert (FAMILY.name, FAMILY.table, FAMILY.record) == ("end cut", "timber", Timber)


def test_the_overall_length_of_the_check_post() -> None:
    """Common practice, no source: 8' 8" = 5" foot tenon + 7' 11" body + 4" head tenon."""
    overall = line(_check_post().lines, "overall")
    assert overall.readings[0].value == length("8' 8")
    assert overall.readings[0].hook == "squared foot"
    assert [beside.value for beside in overall.beside] == [
        length("7' 11"),
        length("5"),
        length("4"),
    ]


def test_allowances_on_the_tenons_count_in_the_overall_length() -> None:
    """What is left on a tenon's end until it has been fitted has to be there to begin with."""
    built = frame(timber("post"), tenon(end_allowance="1/2"))
    (feature,) = features(built.timber("post"), built)
    assert line(feature.lines, "overall").readings[0].value == length("8' 4-1/2")
    assert line(feature.lines, "square").at == -length("5-1/2")


def test_a_timber_without_tenons_is_as_long_as_its_body() -> None:
    """No tenon is named beside its overall length."""
    built = frame(sill())
    (feature,) = features(built.timber("sill"), built)
    overall = line(feature.lines, "overall")
    assert (overall.at, len(overall.beside)) == (length("16'"), 0)


@pytest.mark.parametrize(
    ("ends", "said"),
    [((), "has no tenons"), (("head",), "its shoulder"), (("foot", "head"), "both shoulders")],
)
def test_the_overall_length_says_what_lies_beyond_shoulders(
    ends: tuple[str, ...], said: str
) -> None:
    """A joint the post does not have would send the framer looking for it."""
    joints = [tenon(id=f"post-{end}", end=end) for end in ends]
    built = frame(timber("post"), *joints)
    (feature,) = features(built.timber("post"), built)
    assert said in line(feature.lines, "overall").why


def test_only_the_overall_line_is_held_to_its_figure() -> None:
    """How much came off the rough end is a look at the stick: its tick never goes out of date."""
    assert {found.id: found.lasting for found in _check_post().lines} == {
        "square": False,
        "overall": True,
    }


def test_the_rough_stick_has_the_shop_s_trim_at_both_ends() -> None:
    """Squaring starts the trim in from the rough end, and the stick needs it twice."""
    built = frame(timber("post"), shop={"trim": "1-1/2"})
    (feature,) = features(built.timber("post"), built)
    square = line(feature.lines, "square")
    assert square.readings[0].value == length("1-1/2")
    assert square.beside[0].value == length("8' 2")


def test_the_cuts_keep_the_timber_between_its_two_end_lines() -> None:
    """Law 4: what lies before the square line or beyond the overall line goes."""
    feature = _check_post()
    start, finish = (line(feature.lines, name).at.nm for name in ("square", "overall"))
    taken = [
        any(cut.takes(x, 0, 0) for cut in feature.cuts)
        for x in (start - 1, start + 1, 0, finish - 1, finish + 1)
    ]
    assert taken == [True, False, False, False, True]


def test_the_end_lines_go_right_round_and_the_saw_waits() -> None:
    """Both lines are struck on four faces first; sawing comes after the layout."""
    feature = _check_post()
    assert {found.faces for found in feature.lines} == {LONG_FACES}
    assert {found.stage for found in feature.lines} == {Stage.END}
    (saw,) = feature.tasks
    assert saw.stage is Stage.CUT
    assert saw.caution


@pytest.mark.parametrize(("overall", "found"), [("9-1/64", ()), ("9", ("timber-no-body",))])
def test_tenons_that_leave_no_body(overall: str, found: tuple[str, ...]) -> None:
    """9" of tenon need more than 9" overall, or the length was meant shoulder to shoulder."""
    built = frame(
        timber("post", length=overall, length_is="overall"),
        tenon(),
        tenon(id="post-head", end="head", length="4"),
    )
    (feature,) = features(built.timber("post"), built)
    assert codes(feature.findings) == found


def test_a_body_below_zero_is_said_as_it_is() -> None:
    """Law 7: the message gives the true figure, never a clamped one."""
    built = frame(timber("post", length="4", length_is="overall"), tenon())
    finding = no_body(built.stick("post"), built.project.tape)
    assert built.stick("post").body == Length.inches(-1)
    assert finding is not None
    assert '-1"' in finding.message


@pytest.mark.parametrize(("length", "found"), [("200'", ()), ("150' + 150'", ("timber-too-long",))])
def test_a_timber_longer_than_any_tree_is_stopped(length: str, found: tuple[str, ...]) -> None:
    """A sum is held to the same limit as a length typed outright."""
    built = frame(timber("post", length=length))
    (feature,) = features(built.timber("post"), built)
    assert codes(feature.findings) == found


def test_housings_are_counted_in_and_told_apart() -> None:
    """Shoulder to shoulder is the clear span and both housings (trade notes 2.2, computed)."""
    built = girt_between()
    (feature,) = features(built.timber("girt"), built)
    beside = {each.words: each.value for each in line(feature.lines, "overall").beside}
    assert beside["clear between the timbers it meets"] == length("9' 6")
    assert beside["of it is body, shoulder to shoulder"] == length("9' 7-1/4")
    assert beside["of the body goes into the other timber at the east end"] == length("3/4")


def test_a_timber_placed_beyond_what_it_meets_has_no_body() -> None:
    """Its foot would lie above its head: the remedy speaks of places, not of a typed length."""
    posts = (
        sill(length=None, at={"north": "0", "up": "9'"}, reference_end_at="0", far_end_at="16'"),
        timber("post", at={"east": "3'", "north": "0"}, length=None, far_end_at="8'"),
    )
    built = frame(*posts, tenon(into="sill"))
    (feature,) = features(built.timber("post"), built)
    (finding,) = feature.findings
    assert (finding.code, built.stick("post").body) == ("timber-no-body", Length.feet(-1))
    assert "stand" in finding.remedy


def test_a_scribed_end_is_left_long() -> None:
    """Its shoulder is found by laying up, so the overall figure is only a guide."""
    built = frame(
        sill(length=None, at={"north": "0", "up": "0"}, reference_end_at="0", far_end_at="16'"),
        timber("post", at={"east": "3'", "north": "0"}, length="8'"),
        tenon(into="sill", scribed=True),
    )
    (feature,) = features(built.timber("post"), built)
    (saw,) = feature.tasks
    for caution in (line(feature.lines, "overall").caution, saw.caution):
        assert "Leave it long: the foot is scribed" in caution
    (plain,) = features(built.timber("sill"), built)
    assert "scribed" not in line(plain.lines, "overall").caution


def test_ends_scribed_to_a_mate_without_a_place_are_left_long_too() -> None:
    """Or to one that is not in the frame at all."""
    joints = [tenon(id=f"post-{end}", end=end, scribed=True) for end in ("foot", "head")]
    built = frame(timber("post"), *joints)
    (feature,) = features(built.timber("post"), built)
    caution = line(feature.lines, "overall").caution
    assert "Leave it long: the foot and the head are scribed" in caution


def test_a_timber_without_tenons_is_one_length() -> None:
    """Shoulder to shoulder is told only where it is another figure than the overall."""
    built = frame(timber("post"))
    (feature,) = features(built.timber("post"), built)
    assert line(feature.lines, "overall").beside == ()
