"""What waits for another timber, and the next best job in the frame."""

import shutil
from collections.abc import Iterable
from pathlib import Path

import pytest

from benchmate.frame.frame import Frame
from benchmate.layout.standing import State
from benchmate.layout.waiting import awaited
from benchmate.layout.walk import lay_out
from benchmate.model.feature import Awaits, Stage
from benchmate.model.progress import AsCut, Measured
from benchmate.store.keeper import Keeper
from benchmate.store.reading import read_project
from benchmate.workbench.actions import Sizes
from benchmate.workbench.bench import Bench
from benchmate.workbench.jobs import (
    Job,
    Wait,
    Waits,
    _Shop,
    all_waits,
    comes_first,
    next_job,
    nothing_left,
    stuck,
    waits_in_brief,
    waits_in_words,
    waits_on,
)
from benchmate.workbench.walk import Walk

POSTS = ("post-sw", "post-se", "post-nw", "post-ne")
AS_CUT = ("foot-tenon/as-cut", "head-tenon/as-cut")

SHED = """
format = 1
name = "Shed"

[[timber]]
id = "sill"
name = "Sill"
kind = "sill"
section = "8 x 8"
first_face = "up"
second_face = "south"
reference_end = "west"
length = "12'"

[[timber]]
id = "post"
name = "Post"
kind = "post"
section = "6 x 6"
first_face = "south"
second_face = "west"
reference_end = "foot"
length = "7'"

[[timber]]
id = "girt"
name = "Girt"
kind = "girt"
section = "6 x 6"
first_face = "up"
second_face = "south"
reference_end = "west"
length = "7'"

[[joint]]
id = "foot"
family = "tenon"
timber = "post"
end = "foot"
into = "sill"
at = "2'"
length = "4"
thickness = "2"
set_back = "2"
"""


PEGGED = f"""{SHED.replace('length = "4"', "through = true")}
[joint.pegs]
count = 1
size = "1"
from_shoulder = "1-1/2"
from_edge = "3"
draw = "1/8"
"""
"""The shed with its post's foot right through the sill, pegged."""


def tick(bench: Bench, timber: str, *steps: str) -> None:
    """Tick steps of a timber."""
    for step in steps:
        bench.tick(timber, bench.walk(timber).layout.step(step))


def tick_all(bench: Bench, timber: str, but: Iterable[str] = ()) -> None:
    """Tick every step of a timber but some."""
    tick(bench, timber, *(step.id for step in bench.walk(timber).steps if step.id not in but))


def waits(bench: Bench, timber: str) -> Waits:
    """What waits on a timber."""
    return waits_on(bench.walk(timber), bench.walk)


def walks(bench: Bench) -> tuple[Walk, ...]:
    """Every timber as it stands, in file order."""
    return tuple(bench.walk(timber.id) for timber in bench.timbers)


def job(bench: Bench, timber: str, step: str = "stick/faces") -> Job:
    """The next best job with a step in hand."""
    found = next_job(walks(bench), timber, step)
    assert found is not None
    return found


def fresh(demo: Path) -> Bench:
    """The demo before any work was done."""
    for path in (demo / "progress").iterdir():
        path.unlink()
    return Bench(Keeper.open(demo))


def test_a_mortise_waits_for_its_tenon_as_cut(bench: Bench) -> None:
    """All but measuring the stick; the sill's last steps wait too, and no mortise measured for."""
    found = waits(bench, "sill-south")
    own = {step.id for step in bench.walk("sill-south").steps if step.feature == "se-foot-mortise"}
    assert set(found) == own - {"se-foot-mortise/section"} | {"end/saw", "stick/label"}
    (wait,) = all_waits(found)
    assert (wait.timber, wait.step) == ("post-se", "foot-tenon/as-cut")
    assert wait.words == "SE post: foot tenon, measure the tenon as cut"


def test_posts_wait_for_nothing(bench: Bench) -> None:
    """A timber that only has tenons can be worked from end to end."""
    assert not any(waits(bench, post) for post in POSTS)


def test_a_tick_on_the_tenon_frees_its_mortise_at_once(bench: Bench) -> None:
    """And taking it off again makes what is still open wait again."""
    tick(bench, "post-se", "foot-tenon/as-cut")
    assert waits(bench, "sill-south") == {}
    tick(bench, "sill-south", "se-foot-mortise/start")
    bench.untick("post-se", bench.walk("post-se").layout.step("foot-tenon/as-cut"))
    found = waits(bench, "sill-south")
    assert "se-foot-mortise/start" not in found, "a ticked step waits no more"
    assert "se-foot-mortise/finish" in found


def test_a_mark_to_look_at_again_does_not_wait(bench: Bench) -> None:
    """It is on the wood already, so it is to be put right whatever the tenon is."""
    tick(bench, "sill-south", "se-foot-mortise/start")
    narrow = AsCut.model_validate({"width": "5-1/4"})
    sizes = Sizes(place="foot-tenon", measured=Measured(), as_cut=narrow)
    bench.set_sizes("post-se", "foot-tenon/as-cut", sizes)
    state = bench.walk("sill-south").standing("se-foot-mortise/start").state
    assert state is State.LOOK_AGAIN
    assert "se-foot-mortise/start" not in waits(bench, "sill-south")


def test_only_the_timbers_waited_for_are_asked(bench: Bench) -> None:
    """What waits on one timber costs that timber and the ones whose tenons it takes."""
    asked: list[str] = []

    def ask(timber: str) -> Walk:
        asked.append(timber)
        return bench.walk(timber)

    waits_on(bench.walk("sill-north"), ask)
    assert set(asked) == {"post-nw", "post-ne"}


def test_marks_that_wait_are_read_back_when_they_are_struck(bench: Bench) -> None:
    """A mortise's back-check waits with it; that of the stick's own ends does not."""
    found = waits(bench, "sill-north")
    assert "stick/back-check" not in found
    assert waits_in_words(found["ne-foot-mortise/back-check"]) == (
        "NE post: foot tenon, measure the tenon as cut"
    )


def test_a_small_window_tells_the_first_of_many_waits() -> None:
    """And how many more there are."""
    waits = tuple(Wait("post", each, f"Post: {each}") for each in ("knife", "saw", "pare"))
    assert waits_in_words(waits) == "Post: knife; Post: saw; Post: pare"
    assert [waits_in_brief(waits[:count]) for count in (0, 1, 3)] == [
        "",
        "Post: knife",
        "Post: knife; and 2 more",
    ]


def test_a_timber_is_stuck_when_all_that_is_open_waits(bench: Bench) -> None:
    """With anything else open, or nothing at all, it is not."""
    assert not stuck(bench.walk("sill-south"), waits(bench, "sill-south"))
    waiting = set(waits(bench, "sill-south"))
    tick_all(bench, "sill-south", but=waiting)
    assert stuck(bench.walk("sill-south"), waits(bench, "sill-south"))
    tick_all(bench, "sill-south")
    assert not stuck(bench.walk("sill-south"), waits(bench, "sill-south"))


def test_a_mark_to_look_at_again_comes_first(bench: Bench) -> None:
    """Rule 1: whatever is in hand, a mark that no longer holds is put right before it is cut."""
    found = job(bench, "post-se", "foot-tenon/far-cheek")
    assert (found.timber, found.step) == ("sill-south", "sw-foot-mortise/finish")
    assert found.words == "South sill, mortise for SW post: finish line"
    assert found.why == "It no longer reads as it was marked, and it is not cut yet."


def test_what_can_still_be_saved_is_looked_at_before_what_is_cut(bench: Bench) -> None:
    """Rule 1: the SW tenon is sawn, so the line on the sill goes first, wherever it is."""
    thick = Measured.model_validate({"first": "7-1/4"})
    kept = bench.sizes("post-sw", bench.walk("post-sw").layout.step("foot-tenon/as-cut"))
    sizes = Sizes(place="foot-tenon", measured=thick, as_cut=kept.as_cut)
    bench.set_sizes("post-sw", "foot-tenon/section", sizes)
    assert bench.walk("post-sw").look_again
    assert job(bench, "post-sw").timber == "sill-south"
    tick(bench, "sill-south", "sw-foot-mortise/finish")
    sawn = job(bench, "post-se")
    assert (sawn.timber, sawn.step) == ("post-sw", "foot-tenon/saw-far-first")
    assert sawn.why == "It no longer reads as it was marked."


def test_of_two_marks_alike_the_one_on_the_timber_in_hand_comes_first(bench: Bench) -> None:
    """Rule 1: no walking to another timber for what can be done on this one."""
    tick(bench, "sill-north", "ne-foot-mortise/start")
    narrow = AsCut.model_validate({"width": "5-1/4"})
    sizes = Sizes(place="foot-tenon", measured=Measured(), as_cut=narrow)
    bench.set_sizes("post-ne", "foot-tenon/as-cut", sizes)
    assert job(bench, "sill-north").step == "ne-foot-mortise/start"
    assert job(bench, "plate-north").step == "sw-foot-mortise/finish"


def test_from_a_step_that_waits_the_job_is_what_it_waits_for(bench: Bench) -> None:
    """Rule 2: to the tenon's timber, at the next step there, although the sill has open steps."""
    tick(bench, "sill-south", "sw-foot-mortise/finish")
    found = job(bench, "sill-south", "se-foot-mortise/depth")
    assert (found.timber, found.step) == ("post-se", "foot-tenon/far-cheek")
    assert found.why == "South sill waits for it."


def test_from_a_timber_that_can_only_wait_the_job_is_what_it_waits_for(bench: Bench) -> None:
    """Rule 2: also from a step that is ticked, and before any other timber that is begun."""
    tick(bench, "sill-south", "sw-foot-mortise/finish")
    tick_all(bench, "sill-south", but=set(waits(bench, "sill-south")))
    assert job(bench, "sill-south").timber == "post-se"
    assert job(bench, "plate-south").timber == "post-sw"


def test_the_timber_in_hand_goes_on_once_it_is_begun(bench: Bench) -> None:
    """Rule 3: at its earliest open step, whichever is in hand."""
    tick(bench, "sill-south", "sw-foot-mortise/finish")
    found = job(bench, "post-se", "stick/label")
    assert (found.timber, found.step) == ("post-se", "foot-tenon/far-cheek")
    assert found.why == "Go on with the timber in hand."
    onward = job(bench, "sill-south")
    assert (onward.timber, onward.step) == ("sill-south", "sw-foot-mortise/depth")


def test_a_timber_begun_comes_before_one_that_is_not(bench: Bench) -> None:
    """Rule 4: from a timber not begun to the first that is."""
    tick(bench, "sill-south", "sw-foot-mortise/finish")
    found = job(bench, "post-ne")
    assert (found.timber, found.step) == ("post-sw", "head-tenon/as-cut")
    assert found.why == "It is begun, and South plate waits for it."
    tick_all(bench, "post-sw")
    tick_all(bench, "post-se")
    last = job(bench, "post-ne")
    assert (last.timber, last.why) == ("sill-south", "It is begun.")


def test_a_timber_that_others_wait_for_comes_before_those_that_wait(demo: Path) -> None:
    """Rule 4: with nothing begun the posts come first, wherever they stand in the file."""
    bench = fresh(demo)
    found = job(bench, "plate-north")
    assert (found.timber, found.step) == ("post-sw", "stick/crown")
    assert found.why == "South sill and South plate wait for it."
    turned = next_job(walks(bench)[::-1], "plate-north", "stick/faces")
    assert turned is not None
    assert turned.timber == "post-ne"
    tick(bench, "plate-north", "stick/faces")
    begun = next_job(walks(bench)[::-1], "sill-north", "stick/faces")
    assert begun is not None
    assert begun.timber == "plate-north"


def shed(tmp_path: Path) -> Bench:
    """A sill that waits for a post, and a girt that meets neither."""
    (tmp_path / "project.toml").write_text(SHED)
    return Bench(Keeper.open(tmp_path))


def stop_the_post(bench: Bench) -> None:
    """Tick all of the post but its tenon as cut, and then find it too thin for a tenon."""
    tick_all(bench, "post", but=["foot-tenon/as-cut"])
    thin = Measured.model_validate({"first": "3"})
    sizes = Sizes(place="foot-tenon", measured=thin, as_cut=AsCut())
    bench.set_sizes("post", "foot-tenon/section", sizes)


def test_a_timber_on_which_nothing_waits_comes_before_one_that_will(tmp_path: Path) -> None:
    """Rule 4: with the post stopped, the girt can be finished and the sill cannot."""
    bench = shed(tmp_path)
    assert job(bench, "sill").why == "Sill waits for it."
    stop_the_post(bench)
    found = job(bench, "sill")
    assert (found.timber, found.why) == ("girt", "It is the next to begin. Sill is stopped.")
    tick_all(bench, "girt")
    assert job(bench, "girt").timber == "sill"


def test_what_is_stopped_or_waits_is_no_job(tmp_path: Path) -> None:
    """Nothing is left but a post that cannot be cut and the mortise that waits for it."""
    bench = shed(tmp_path)
    stop_the_post(bench)
    tick_all(bench, "girt")
    tick_all(bench, "sill", but=set(waits(bench, "sill")))
    assert next_job(walks(bench), "sill", "stick/faces") is None
    assert nothing_left(walks(bench)) == (
        "Nothing more can be done now. Stopped: Sill, Post. Waiting: Sill."
    )


def test_an_unreadable_timber_is_no_job(tmp_path: Path) -> None:
    """What cannot be read is told by name; what it meets cannot be trusted either."""
    (tmp_path / "progress").mkdir()
    (tmp_path / "progress" / "post.toml").write_text("format = ")
    bench = shed(tmp_path)
    assert job(bench, "sill").timber == "girt"
    tick_all(bench, "girt")
    assert next_job(walks(bench), "sill", "stick/faces") is None
    assert nothing_left(walks(bench)) == "Nothing more can be done now. Unreadable: Sill, Post."


def test_when_all_is_ticked_there_is_no_job(tmp_path: Path) -> None:
    """The frame is done, and that is what is said."""
    bench = shed(tmp_path)
    for timber in bench.timbers:
        tick_all(bench, timber.id)
    assert next_job(walks(bench), "post", "stick/label") is None
    assert nothing_left(walks(bench)) == "Every step of every timber is ticked."


@pytest.mark.parametrize("timber", ["post-se", "sill-south"])
def test_following_the_jobs_finishes_the_frame_without_a_step_out_of_order(
    demo: Path, timber: str
) -> None:
    """Job after job from anywhere, every step is ticked once and none before its turn."""
    bench = fresh(demo)
    place, count = (timber, "stick/faces"), sum(len(walk.steps) for walk in walks(bench))
    for _ in range(count):
        found = next_job(walks(bench), *place)
        assert found is not None
        assert found.step not in waits(bench, found.timber)
        assert bench.walk(found.timber).standing(found.step).state is State.OPEN
        tick(bench, found.timber, found.step)
        place = (found.timber, found.step)
    assert next_job(walks(bench), *place) is None


DEMOS = Path(__file__).parents[2] / "projects"


@pytest.mark.parametrize(
    "demo_name", ["orchard-tool-shed", "hillside-wood-store", "meadow-cart-house"]
)
def test_no_two_timbers_of_a_demo_wait_for_each_other(demo_name: str) -> None:
    """Done as soon as nothing is waited for, timber after timber, every step gets its turn."""
    frame = Frame(read_project(DEMOS / demo_name), {})
    layouts = {timber.id: lay_out(frame, timber.id) for timber in frame.project.timbers}
    left = {
        Awaits(timber, step.id): awaited(layout, step)
        for timber, layout in layouts.items()
        for step in layout.steps
    }
    while free := [step for step, first in left.items() if not left.keys() & set(first)]:
        for step in free:
            del left[step]
    assert left == {}


def test_pegs_lock_nobody_out(tmp_path: Path) -> None:
    """Post and sill wait for one another in turn, and the jobs still bring both to their end.

    The tenon is as long as the sill is deep, its mortise waits for it as cut, the sill's holes for
    the mortise and the tenon's for the sill's.
    """
    (tmp_path / "project.toml").write_text(PEGGED, "utf-8")
    bench = Bench(Keeper.open(tmp_path))
    place, done = ("post", "stick/faces"), []
    for _ in range(sum(len(walk.steps) for walk in walks(bench))):
        found = next_job(walks(bench), *place)
        assert found is not None, nothing_left(walks(bench))
        assert found.step not in waits(bench, found.timber)
        tick(bench, found.timber, found.step)
        place = (found.timber, found.step)
        done.append(found.step)
    assert nothing_left(walks(bench)) == "Every step of every timber is ticked."
    order = (
        "foot-mortise/section",
        "end/overall",
        "foot-tenon/as-cut",
        "foot-mortise/bore-far",
        "foot-mortise-pegs/bore-pegs",
        "foot-tenon-pegs/prick-pegs",
        "foot-tenon-pegs/peg-line",
        "foot-tenon-pegs/bore-pegs",
    )
    first = [done.index(step) for step in order]
    assert first == sorted(first)


def test_the_far_end_is_sawn_only_once_every_joint_is_laid_out(bench: Bench) -> None:
    """Sawing to length waits for what the timber's marks wait for, and for no cutting."""
    assert waits_in_words(waits(bench, "sill-south")["end/saw"]) == (
        "SE post: foot tenon, measure the tenon as cut"
    )
    tick(bench, "post-se", "foot-tenon/as-cut")
    assert "end/saw" not in waits(bench, "sill-south")
    bench.untick("post-se", bench.walk("post-se").layout.step("foot-tenon/as-cut"))
    marks = [each.id for each in bench.walk("sill-south").steps if each.stage is Stage.MARK]
    tick(bench, "sill-south", *marks)
    found = waits(bench, "sill-south")
    assert "end/saw" not in found
    assert found["stick/label"] == found["se-foot-mortise/knife"]


def test_the_label_waits_while_any_other_step_does(bench: Bench) -> None:
    """It goes on last of all; one that is on already waits no more."""
    assert "stick/label" in waits(bench, "sill-north")
    tick(bench, "sill-north", "stick/label", "end/saw")
    assert not {"stick/label", "end/saw"} & set(waits(bench, "sill-north"))


def test_a_mark_of_the_whole_stick_is_not_cut_until_any_of_it_is(bench: Bench) -> None:
    """The overall line of a post is past saving once a tenon of it is sawn."""
    tick(bench, "sill-south", "sw-foot-mortise/finish")
    tick(bench, "post-nw", "end/overall")
    make_posts_longer(bench)
    for walk in walks(bench):
        if walk.timber.id != "post-nw":
            again = zip(walk.steps, walk.standings, strict=True)
            stale = [step.id for step, each in again if each.state is State.LOOK_AGAIN]
            tick(bench, walk.timber.id, *stale)
    found = job(bench, "post-nw")
    assert (found.step, found.why) == (
        "end/overall",
        "It no longer reads as it was marked, and it is not cut yet.",
    )
    tick(bench, "post-nw", "foot-tenon/as-cut")
    assert job(bench, "post-nw").why == "It no longer reads as it was marked."


def make_posts_longer(bench: Bench) -> None:
    """Have an editor make every post longer, so that its overall line no longer holds."""
    path = bench.folder / "project.toml"
    path.write_text(path.read_text().replace('length = "7\' 4"', 'length = "7\' 5"'))
    bench.look()


def test_a_joint_pared_or_measured_is_cut(bench: Bench) -> None:
    """A tick from the cut on tells that wood is gone, not the sawing alone."""
    tick(bench, "sill-south", "sw-foot-mortise/finish")
    tick(bench, "sill-north", "ne-foot-mortise/start")
    pared = next(
        each.id
        for each in bench.walk("sill-north").steps
        if each.feature == "ne-foot-mortise" and each.stage is Stage.PARE
    )
    tick(bench, "sill-north", pared)
    narrow = AsCut.model_validate({"width": "5-1/4"})
    sizes = Sizes(place="foot-tenon", measured=Measured(), as_cut=narrow)
    bench.set_sizes("post-ne", "foot-tenon/as-cut", sizes)
    found = job(bench, "sill-north")
    assert (found.step, found.why) == (
        "ne-foot-mortise/start",
        "It no longer reads as it was marked.",
    )


def test_a_stopped_timber_is_no_job_while_another_has_one(tmp_path: Path) -> None:
    """With the post in hand stopped, the job is elsewhere and says so; then it is the last."""
    bench = shed(tmp_path)
    tick(bench, "post", "stick/faces")
    thin = Measured.model_validate({"first": "3"})
    sizes = Sizes(place="foot-tenon", measured=thin, as_cut=AsCut())
    bench.set_sizes("post", "foot-tenon/section", sizes)
    assert bench.walk("post").stopped
    found = job(bench, "post")
    assert (found.timber, found.why) == ("girt", "It is the next to begin. Post is stopped.")
    tick_all(bench, "girt")
    last = job(bench, "girt")
    assert bench.walk(last.timber).stopped


def test_a_part_is_measured_as_cut_only_once_it_is_cut(bench: Bench) -> None:
    """Its mate is cut to what was kept, so a tenon that is not there must not be kept."""
    walk = bench.walk("post-ne")
    step = walk.layout.step("foot-tenon/as-cut")
    (first,) = comes_first(walk, step)
    assert (first.timber, first.step) == ("post-ne", "foot-tenon/saw-first")
    for each in walk.steps:
        if each.feature == "foot-tenon" and each.stage in (Stage.CUT, Stage.PARE):
            tick(bench, "post-ne", each.id)
    assert comes_first(bench.walk("post-ne"), step) == ()
    tick(bench, "post-ne", step.id)
    assert comes_first(bench.walk("post-ne"), step) == ()


def test_a_stick_is_sawn_to_length_only_once_it_is_laid_out(bench: Bench) -> None:
    """Not with its ends unsquared, a line to strike or the back-check open; other steps may be."""
    walk = bench.walk("post-ne")
    saw = walk.layout.step("end/saw")
    (first,) = comes_first(walk, saw)
    assert first.step == "end/square"
    for each in walk.steps:
        if each.stage in (Stage.END, Stage.MARK, Stage.BACK_CHECK):
            assert comes_first(bench.walk("post-ne"), saw)
            tick(bench, "post-ne", each.id)
    assert comes_first(bench.walk("post-ne"), saw) == ()
    assert comes_first(walk, walk.layout.step("foot-tenon/knife")) == ()


def test_a_timber_is_not_said_to_wait_for_itself(tmp_path: Path) -> None:
    """What lies under a notch waits for that, on the same stick, and comes right after it."""
    name, waiting = "plate-south-1", "s2-head-mortise/bore-far"
    folder = Path(shutil.copytree(DEMOS / "meadow-cart-house", tmp_path / "cart-house"))
    bench = Bench(Keeper.open(folder))
    own = [each.step for each in waits(bench, name)[waiting] if each.timber == name]
    assert own == ["tie-2-south-notch/try-floor"]
    tick_all(bench, name, but={waiting, *own})
    for other in ("post-s2", "tie-2"):
        tick_all(bench, other)
    found = job(bench, name, waiting)
    assert (found.step, found.why) == (own[0], "It comes before that.")
    shop = _Shop(walks(bench))
    assert bench.walk(name).timber.name not in shop.waiting[name]
