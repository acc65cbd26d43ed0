"""The real section is the one measured nearest to the joint."""

from tests.builders import frame, length, real, timber
from tests.proof.stock import stock


def test_a_section_comes_from_the_nearest_place_measured() -> None:
    """At the joint, at its end of the stick, all along it, and last as ordered; side by side."""
    post = timber("post")
    sizes = real(
        {
            "foot-tenon": {"first": "6-1/4"},
            "foot": {"first": "6-1/8", "second": "5-7/8"},
            "all": {"second": "6-1/16"},
        }
    )
    found = stock(frame(post).project, post, sizes)
    assert found.section("foot-tenon") == (length("6-1/4").nm, length("5-7/8").nm)
    assert found.section("head-tenon") == (length("6").nm, length("6-1/16").nm)


def test_square_rule_counts_on_the_inner_timber() -> None:
    """What the stick is over it is what comes off where it meets another."""
    post = timber("post", section="post")
    built = frame(post, rule="square", sections={"post": "6 x 6"}, inner={"post": "5-1/2 x 5"})
    found = stock(built.project, post, real({"all": {"first": "6-1/4"}}))
    assert (found.framed(1, "foot-tenon"), found.over(1, "foot-tenon")) == (
        length("5-1/2").nm,
        length("3/4").nm,
    )
    assert found.over(2, "foot-tenon") == length("1").nm


def test_mill_rule_counts_on_the_stick_itself() -> None:
    """Nothing is over, whatever it measures."""
    post = timber("post")
    found = stock(frame(post).project, post, real({"all": {"first": "6-1/4"}}))
    assert found.framed(1, "foot-tenon") == length("6-1/4").nm
    assert found.over(1, "foot-tenon") == 0


def test_a_size_as_cut_belongs_to_its_own_end() -> None:
    """What was not measured is not known."""
    post = timber("post")
    sizes = real(as_cut={"foot-tenon": {"width": "4-7/8"}})
    found = stock(frame(post).project, post, sizes)
    assert found.cut("foot-tenon", "width") == length("4-7/8").nm
    assert found.cut("foot-tenon", "length") is None
    assert found.cut("head-tenon", "width") is None
