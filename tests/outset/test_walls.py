"""Sills, posts and plates."""

from benchmate.outset.walls import plates, post_name, posts, sills
from tests.outset.frames import answers, frame


def test_the_end_sills_are_tenoned_or_half_lapped() -> None:
    """Between the long ones, which run through."""
    tenoned, lapped = ("\n".join(sills(answers(corners=how))) for how in ("tenoned", "half-lapped"))
    assert tenoned.count('family = "tenon"') == 4
    assert 'far_end_at = "line 3"' in tenoned
    assert lapped.count('family = "lap"') == 4
    assert "far_end_at" not in lapped


def test_posts_are_named_by_their_corners() -> None:
    """The middle ones by their walls and bents."""
    names = [post_name(bent, "south") for bent in answers().bents]
    assert names == ["SW post", "South post 2", "SE post"]
    text = "\n".join(posts(answers()))
    assert text.count("[[timber]]") == 6
    assert text.count('relief_reference = "2"') == 4


def test_plates_flush_with_the_gables_get_relief_too() -> None:
    """So that a mortise at their end keeps its relish."""
    assert "\n".join(posts(answers(overhang="0"))).count('relief_reference = "2"') == 8


def test_a_plate_in_two_sticks_is_scarfed() -> None:
    """Each post tenoned into the stick over it."""
    long = {"length": "50'", "bays": "4", "longest": "34'"}
    text = "\n".join(plates(answers(long)))
    assert text.count('family = "scarf"') == 2
    assert '"South plate, stick 2"' in text
    made = frame(long, roof="none", braces="none")
    assert made.stick("plate-south-1").overall <= answers(long).length("longest")


def test_hands_come_out_by_themselves() -> None:
    """Opposite corners are alike, neighbours mirror one another."""
    made = frame(bays="1", length="12'", roof="none", braces="none")
    from benchmate.layout.likeness import hand  # noqa: PLC0415 - for this law alone

    hands = {key: hand(made, f"post-{key}") for key in ("sw", "se", "nw", "ne")}
    assert hands["sw"] == hands["ne"] != hands["se"] == hands["nw"]
