"""From features to the walk: every step of a timber, in the order a framer takes them."""

from collections.abc import Mapping
from dataclasses import replace

from benchmate.frame.frame import Frame
from benchmate.joinery import family_of
from benchmate.layout.common import mated_back_check, stick_tasks
from benchmate.layout.floors import MADE, floors_on
from benchmate.layout.marks import SHOULDER, is_mark
from benchmate.layout.outlines import struck
from benchmate.layout.slants import (
    other_end,
    parallel_rests,
    setting_of,
    slant_rests,
    start_words,
)
from benchmate.layout.step import LINE, Layout, Step
from benchmate.measure.length import ZERO, Length
from benchmate.model.directions import LONG_FACES, Face
from benchmate.model.feature import Asks, Feature, Line, Reading, Stage, Task
from benchmate.model.floors import Floors
from benchmate.model.project import Timber
from benchmate.model.solids import Axis
from benchmate.model.stick import ENDS, STICK, Stick, reference_for
from benchmate.model.words import lower_first
from benchmate.model.work import Work


def features_on(frame: Frame, timber: str) -> tuple[Feature, ...]:
    """Everything cut on one timber, in order from its reference end."""
    return _cut_on(frame, timber)[0]


def _cut_on(frame: Frame, timber: str) -> tuple[tuple[Feature, ...], Floors]:
    """The same, and the floors that joints of the timber leave over others."""
    return frame.once(f"cut on {timber}", lambda: _cut(frame, timber))


def _cut(frame: Frame, timber: str) -> tuple[tuple[Feature, ...], Floors]:
    records: tuple[Timber | Work, ...] = (frame.timber(timber), *frame.works_on(timber))
    found = tuple(
        feature
        for record in records
        for feature in _features_of(record, frame)
        if feature.timber == timber
    )
    floors = floors_on(frame.stick(timber), found)
    under = _under(records, frame, floors)
    cut = (under.get(each.id, each) for each in found)
    return tuple(sorted(cut, key=lambda feature: feature.at)), floors


def _features_of(record: Timber | Work, frame: Frame) -> tuple[Feature, ...]:
    """Both sides of a joint at once: whichever of its timbers is asked for first pays."""
    family = family_of(record)
    key = f"{family.table} {record.id}"
    return frame.once(key, lambda: _of_joint(record, family.features(record, frame)))


def _under(records: tuple[Timber | Work, ...], frame: Frame, floors: Floors) -> dict[str, Feature]:
    """The features whose mouths lie on floors of other joints, as they are with them.

    Only a family that can say so is asked; what another one says is told as a finding.
    """
    own = {floor.under for floor in floors}
    asked = (
        record
        for record in records
        if own.intersection(each.id for each in _features_of(record, frame))
    )
    return {
        feature.id: feature
        for record in asked
        if (under := family_of(record).under)
        for feature in _of_joint(record, under(record, frame, floors))
        if feature.id in own and feature.timber == floors[0].timber
    }


def _of_joint(record: Timber | Work, features: tuple[Feature, ...]) -> tuple[Feature, ...]:
    """The features of a record that know which joint they are a side of, if it is one."""
    if isinstance(record, Timber) or not record.joins():
        return features
    return tuple(
        replace(each, joint=record.id, meets=(*each.meets, *record.meets)) for each in features
    )


def lay_out(frame: Frame, timber: str) -> Layout:
    """The whole walk round one timber. Raises KeyError for an unknown id."""
    stick = frame.stick(timber)
    features, floors = _cut_on(frame, timber)
    steps = [_task_step(stick, STICK, "", task) for task in stick_tasks(stick, features)]
    late = _late(floors)
    for feature in features:
        title, faces = feature.title, struck(feature, stick)
        steps += [
            _line_step(stick, feature, line, line.faces or faces.get(line.id, ()))
            for line in feature.lines
            if is_mark(stick, feature, line)
        ]
        check = mated_back_check(stick, feature)
        tasks = (*feature.tasks, check) if check else feature.tasks
        rests = _rests(stick, feature)
        steps += [_task_step(stick, feature.id, title, task, rests) for task in tasks]
    return Layout(
        stick=stick,
        features=features,
        steps=tuple(sorted(steps, key=lambda step: _order(step, late))),
        shoulder=_shoulder_step(stick, features),
        least_wood=frame.project.practice.least_wood,
        floors=floors,
    )


def _order(step: Step, late: Mapping[str, int]) -> tuple[Stage, int, Stage]:
    """By stage; but what lies under another joint is made once that one is made and measured."""
    turn = late.get(step.feature, 0) if step.stage in MADE else 0
    return (max(MADE) if turn else step.stage, turn, step.stage)


def _late(floors: Floors) -> dict[str, int]:
    """How many joints lie one over the other above each feature that lies under any."""
    over: dict[str, set[str]] = {}
    for floor in floors:
        over.setdefault(floor.under, set()).add(floor.over)
    return {feature: _depth(feature, over, frozenset()) for feature in over}


def _depth(feature: str, over: Mapping[str, set[str]], seen: frozenset[str]) -> int:
    above = over.get(feature, set()) - seen
    return max((1 + _depth(each, over, seen | {feature}) for each in above), default=0)


def _shoulder_step(stick: Stick, features: tuple[Feature, ...]) -> str | None:
    """The step that makes the reference shoulder: a line to strike, or a task if it is scribed."""
    if not stick.near:
        return None
    shoulders = (
        f"{feature.id}/{SHOULDER}" for feature in features if _at_reference_shoulder(feature)
    )
    return next(shoulders, None)


def _at_reference_shoulder(feature: Feature) -> bool:
    struck = any(line.id == SHOULDER and line.at == ZERO for line in feature.lines)
    scribed = feature.at == ZERO and any(task.id == SHOULDER for task in feature.tasks)
    return struck or scribed


def _line_step(stick: Stick, feature: Feature, line: Line, faces: tuple[Face, ...]) -> Step:
    side = _waste_side(stick, feature, line)
    other = other_end(stick, line, faces)
    return Step(
        id=f"{feature.id}/{line.id}",
        feature=feature.id,
        stage=line.stage,
        title=f"{feature.title}: {lower_first(line.title)}",
        short=line.title,
        faces=faces,
        sides=tuple(map(stick.pose.words, faces)),
        on=faces_in_words(stick, faces),
        readings=line.readings or _readings(stick, line),
        beside=(*other, *line.beside),
        waste=line.waste or (f"Towards the {side}." if side else ""),
        waste_side=side,
        why=line.why,
        caution=line.caution,
        asks=Asks.NOTHING,
        lasting=line.lasting,
        line=line.id,
        draws=line.id,
        rests=slant_rests(line),
        setting=setting_of(stick, line, faces),
        leads_on=bool(other),
    )


_MADE_TO_LINES = (Stage.KNIFE, Stage.CUT, Stage.FINISH)


def _rests(stick: Stick, feature: Feature) -> tuple[Reading, ...]:
    """Where the lines of a joint lie, so that what was cut to one is told when it moves.

    The saw cut at an end has its own figure, so the ends have none.
    """
    return tuple(
        rest
        for line in feature.lines
        if line.lasting and feature.id != ENDS
        for rest in _line_rests(stick, line)
    )


def _line_rests(stick: Stick, line: Line) -> tuple[Reading, ...]:
    """Where one line lies, for a tick to remember; nothing for one that is gauged from an arris."""
    if line.axis is None:
        return parallel_rests(line)
    at = Reading(
        value=line.at,
        hook=lower_first(line.title),
        way=f"from the {_from(stick, line.axis)}",
        key=f"{line.id}{LINE}",
    )
    return (at, *slant_rests(line))


def _from(stick: Stick, axis: Axis) -> str:
    """What a reading on an axis counts from."""
    if axis is not Axis.ALONG:
        return stick.pose.words(reference_for(axis))
    end = stick.pose.words(Face.REFERENCE_END)
    return f"{end} shoulder" if stick.near else f"squared {end}"


def _task_step(
    stick: Stick, feature: str, title: str, task: Task, rests: tuple[Reading, ...] = ()
) -> Step:
    lead = f"{title}: {lower_first(task.title)}" if title else task.title
    return Step(
        id=f"{feature}/{task.id}",
        feature=feature,
        stage=task.stage,
        title=lead,
        short=task.title,
        faces=task.faces,
        sides=tuple(map(stick.pose.words, task.faces)),
        on=faces_in_words(stick, task.faces),
        readings=task.readings,
        beside=task.beside,
        waste=task.waste,
        waste_side="",
        why=task.why,
        caution=task.caution,
        asks=task.asks,
        lasting=task.lasting,
        line=None,
        draws=task.draws or None,
        rests=rests if task.lasting and task.stage in _MADE_TO_LINES else (),
        setting=task.setting,
    )


def _readings(stick: Stick, line: Line) -> tuple[Reading, ...]:
    """The ways to measure a line: across from a reference face, or along from shoulder and end."""
    if line.axis is None:
        raise ValueError(f"line {line.id} is gauged, so it must state its readings")
    found_on = start_words(line)
    if line.axis is Axis.ALONG:
        return _along(stick, line.at, found_on)
    face = reference_for(line.axis)
    hook, across = stick.pose.words(face), stick.pose.words(face.opposite)
    return (Reading(value=line.at, hook=hook, way=f"in towards the {across}{found_on}"),)


def _along(stick: Stick, at: Length, found_on: str) -> tuple[Reading, ...]:
    start, finish = (stick.pose.words(end) for end in (Face.REFERENCE_END, Face.FAR_END))
    from_end = Reading(
        value=at - stick.start, hook=f"squared {start}", way=f"towards the {finish}{found_on}"
    )
    if not stick.near or at == ZERO:
        return (from_end,)
    way = finish if at > ZERO else start
    return (
        Reading(value=abs(at), hook=f"{start} shoulder line", way=f"towards the {way}{found_on}"),
        from_end,
    )


def _waste_side(stick: Stick, feature: Feature, line: Line) -> str:
    """The face or end the waste lies towards, read off the cuts the line bounds.

    Nothing for a line between two cuts, with waste on both sides.
    """
    if line.axis is None:
        return ""
    reference = Face.REFERENCE_END if line.axis is Axis.ALONG else reference_for(line.axis)
    place = line.axis.value.index(1)
    sides = {
        reference if plane.normal[place] > 0 else reference.opposite
        for cut in feature.cuts
        for plane in cut.planes
        if plane.line == line.id
    }
    return stick.pose.words(sides.pop()) if len(sides) == 1 else ""


def faces_in_words(stick: Stick, faces: tuple[Face, ...]) -> str:
    """Faces as a framer would list them: `all four faces and the foot's end grain`."""
    long_faces = tuple(face for face in faces if not face.is_end)
    words = (
        ["all four faces"]
        if set(long_faces) == set(LONG_FACES)
        else [stick.pose.words(face) for face in long_faces]
    )
    words += [f"end grain of the {stick.pose.words(face)}" for face in faces if face.is_end]
    if len(words) < 2:  # noqa: PLR2004 - nothing to join
        return "".join(words)
    return f"{', '.join(words[:-1])} and {words[-1]}"
