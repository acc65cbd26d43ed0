"""What a framer can change at the bench, with the timber and the step in hand: one list of it."""

from collections.abc import Callable, Iterator
from functools import partial
from typing import NamedTuple

from benchmate.frame.frame import Frame
from benchmate.joinery import family_of
from benchmate.model.work import Work
from benchmate.store.tables import WORK_FAMILIES
from benchmate.workbench.bench import Bench
from benchmate.workbench.field_words import JOINS
from benchmate.workbench.forms.copies import Copies
from benchmate.workbench.forms.form import Form, OpenEnd
from benchmate.workbench.forms.mirror import Mirror
from benchmate.workbench.forms.names import DropName, NewName, RenameName
from benchmate.workbench.forms.record import (
    HeadForm,
    NewTimber,
    NewWork,
    change_timber,
    change_work,
)
from benchmate.workbench.forms.removal import Removal
from benchmate.workbench.forms.renumber import Renumber


class Choice(NamedTuple):
    """One thing that can be changed, with a word beside it: the form for it, or a list of more."""

    text: str
    beside: str
    form: Callable[[], Form] | None
    more: Callable[[], "Choices"] | None = None


class Choices(NamedTuple):
    """A list to choose from, and what stands over it."""

    title: str
    choices: tuple[Choice, ...]


def choices(bench: Bench, timber: str, feature: str) -> Choices:
    """What can be changed with a timber in hand, and the joint or chamfer of one of its steps."""
    return Choices("What is to be changed?", tuple(_choices(bench, timber, feature)))


def _choices(bench: Bench, timber: str, feature: str) -> Iterator[Choice]:
    if timber:
        name = bench.frame.timber(timber).name
        yield Choice(f"Change {name}", timber, partial(change_timber, bench, timber))
        work = work_of(bench.frame, timber, feature)
        if work is not None:
            yield Choice(
                f"Change {work.id}", family_of(work).name, partial(change_work, bench, work.id)
            )
        if bench.frame.works_on(timber):
            yield Choice(f"A joint of {name}", "a list", None, partial(_joints, bench, timber))
    yield Choice("A new timber", "", partial(NewTimber, bench, timber))
    yield Choice(
        "A new joint or chamfer", "a list", None, partial(families, bench, OpenEnd(timber, ""))
    )
    if timber:
        yield Choice(f"One or many like {name}", "", partial(Copies, bench, timber))
        yield Choice(f"Mirror {name}", "its twin", partial(Mirror, bench, timber))
        yield Choice(f"Rename {name}", "", partial(_renaming, change_timber, bench, timber))
        if work is not None:
            yield Choice(f"Rename {work.id}", "", partial(_renaming, change_work, bench, work.id))
        kind = bench.frame.timber(timber).kind
        yield Choice(f"Renumber the {kind} timbers", "", partial(Renumber, bench, timber))
        yield Choice(f"Remove {name}", "", partial(Removal, bench, timber=timber))
        if work is not None:
            yield Choice(f"Remove {work.id}", "", partial(Removal, bench, (work.id,)))
    yield Choice("The project", "a list", None, partial(_project, bench))


def work_of(frame: Frame, timber: str, feature: str) -> Work | None:
    """The joint or chamfer that a part of a timber belongs to; None for its ends and itself."""
    for work in frame.works_on(timber):
        made = family_of(work).features(work, frame)
        if any((each.timber, each.id) == (timber, feature) for each in made):
            return next(each for each in frame.project.works if each.id == work.id)
    return None


def _renaming(change: Callable[[Bench, str], Form], bench: Bench, id_: str) -> Form:
    form = change(bench, id_)
    form.first = "id"
    form.title = f"Rename {form.title}"
    return form


def _joints(bench: Bench, timber: str) -> Choices:
    works = bench.frame.works_on(timber)
    names = {each.id: each.name for each in bench.timbers}
    found = (
        Choice(
            f"{work.id}: {family_of(work).name}",
            ", ".join(names[each] for each in work.timbers().values() if each != timber),
            partial(change_work, bench, work.id),
        )
        for work in works
    )
    return Choices(f"Joints and chamfers of {names[timber]}", tuple(found))


def families(bench: Bench, at: OpenEnd, base: str = "") -> Choices:
    """The families of joints, with a line on what each joins; those alone that settle an end.

    `base` is the file with what is still to be kept with the joint.
    """
    found = (
        Choice(
            family.name,
            JOINS[family.name],
            partial(NewWork, bench, family, at, base),
        )
        for family in WORK_FAMILIES
        if not at.end or "end" in family.record.model_fields
    )
    where = f" at the {at.words} of {at.timber}" if at.end else ""
    return Choices(f"Which joint{where}?", tuple(found))


def _project(bench: Bench) -> Choices:
    return Choices(
        "The project",
        (
            Choice("Name, tape, rule and the shop's practice", "", partial(HeadForm, bench)),
            Choice("A new line, level, length or section", "", partial(NewName, bench)),
            Choice("Rename one of them", "", partial(RenameName, bench)),
            Choice("Take one of them out", "l changes them", partial(DropName, bench)),
        ),
    )
