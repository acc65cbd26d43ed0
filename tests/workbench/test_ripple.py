"""What a change moves."""

from benchmate.layout.walk import lay_out
from benchmate.workbench.ripple import ripple
from tests.builders import corners, real


def test_equal_frames_move_nothing() -> None:
    """Nothing is told where nothing changes."""
    found = ripple(corners(), corners(), ("post-sw", "sill"), frozenset())
    assert found.moved == ()
    assert found.ticked == 0


def test_only_steps_that_last_are_told() -> None:
    """A fresh measurement is not itself a moved mark."""
    after = corners(real={"post-se": real(measured={"foot-tenon": {"first": "6-1/16"}})})
    found = ripple(corners(), after, ("post-se",), frozenset({("post-se", "foot-tenon/far-cheek")}))
    assert {moved.step for moved in found.moved} == {
        "foot-tenon/far-cheek",
        "foot-tenon/saw-far-first",
    }
    cheek = next(moved for moved in found.moved if moved.step.endswith("far-cheek"))
    assert cheek.words == "to come off the North face"
    assert not cheek.ticked, "the mark itself has not moved"


def test_a_step_new_in_one_frame_is_not_a_moved_mark() -> None:
    """Steps are compared by id; ids do not depend on sizes."""
    ids = [
        [step.id for step in lay_out(frame, "post-se").steps]
        for frame in (
            corners(),
            corners(real={"post-se": real(measured={"all": {"first": "7", "second": "7"}})}),
        )
    ]
    assert ids[0] == ids[1]
