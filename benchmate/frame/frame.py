"""A project with its real sticks: what the joint families and the layout work from."""

from collections import defaultdict
from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, field
from typing import Any, TypeVar, cast

from benchmate.frame.abutting import abutment_plane, abutting_reach, foothold
from benchmate.frame.flats import Flat, behind, carried, nearest
from benchmate.frame.levels import Levels, section_table
from benchmate.frame.meeting import Meeting, crossing, meet
from benchmate.frame.place import Place, Point
from benchmate.frame.rake import Rake, Slope
from benchmate.frame.reach import plumb_axis, reach
from benchmate.frame.site import Site
from benchmate.frame.through import unmeasured_passed, wood_passed
from benchmate.measure.length import ZERO, Length
from benchmate.measure.printing import Tape
from benchmate.measure.section import Section
from benchmate.measure.sums import Sum
from benchmate.model.directions import Direction, Face
from benchmate.model.progress import AsCut, Measured, Progress
from benchmate.model.project import Project, Timber
from benchmate.model.stick import Stick, Unmeasured, Wood, axis_from
from benchmate.model.work import Abutment, Bearing, Extension, Work

_Made = TypeVar("_Made")

_DRAWN = "the frame as drawn"
"""What a frame without real sizes is kept under."""


@dataclass(frozen=True, slots=True)
class Real:
    """The real sizes typed for one timber."""

    measured: Mapping[str, Measured] = field(default_factory=dict)
    as_cut: Mapping[str, AsCut] = field(default_factory=dict)


def real_of(progress: Progress) -> Real:
    """The real sizes kept in a timber's progress."""
    return Real(progress.measured, progress.as_cut)


class Frame:
    """One project with one set of real sizes; make a new one when either changes.

    A stick is worked out when first asked for, so asking for one timber costs that timber and
    the ones it meets. `tape` is what its words show lengths on, if not the project's own: it
    moves no mark.
    """

    def __init__(
        self, project: Project, real: Mapping[str, Real], tape: Tape | None = None
    ) -> None:
        self.project = project
        self.tape = project.tape if tape is None else tape
        self.levels = Levels(project.names, section_table(project.sections, project.inner))
        self._real = real
        self._timbers = {timber.id: timber for timber in project.timbers}
        self._made: dict[str, object] = {}
        works = [stored.proportioned(self.wood, project.bare) for stored in project.works]
        self._by_id = {work.id: work for work in works}
        self._works: defaultdict[str, list[Work]] = defaultdict(list)
        for work in works:
            for timber in self._cut_into(work):
                self._works[timber].append(work)
        self._site = Site(
            timber=self.timber,
            wood=self.wood,
            bearing=self.bearing,
            abutment=self.abutment,
            beyond=self._beyond,
            value=self.value,
        )

    def timber(self, timber: str) -> Timber:
        """A timber's stored record. Raises KeyError for an unknown id."""
        return self._timbers[timber]

    def works_on(self, timber: str) -> tuple[Work, ...]:
        """The joints and chamfers that touch a timber, in file order."""
        return tuple(self._works.get(timber, ()))

    def cut_through(self, work: Work) -> tuple[Work, ...]:
        """The joints that one goes through: it is cut into a timber of theirs as well."""
        met = (self._by_id[each] for each in work.meets if each in self._by_id)
        return tuple(each for each in met if work.cuts_through(each) is not None)

    def _cut_into(self, work: Work) -> tuple[str, ...]:
        """Every timber that a work is cut into: those it names, then those it goes through."""
        through = (work.cuts_through(each) for each in self.cut_through(work))
        named = (*work.timbers().values(), *(each for each in through if each is not None))
        return tuple(dict.fromkeys(named))

    def value(self, total: Sum) -> Length:
        """What a sum of names and lengths comes to. Raises LevelError."""
        return self.levels.value(total)

    def wood(self, timber: str) -> Wood:
        """A timber's section: drawn, inner and real. Raises KeyError for an unknown id."""
        return self.once(f"wood of {timber}", lambda: Wood(**self._section_of(timber)))

    def stick(self, timber: str) -> Stick:
        """A timber with its real sizes. Raises KeyError for an unknown id."""
        return self.once(f"stick of {timber}", lambda: self._make_stick(self._timbers[timber]))

    def place(self, timber: str) -> Place | None:
        """Where a timber stands in the building; None for one without a place."""
        return self.once(f"place of {timber}", lambda: self._site.place(timber))

    def standing(self, timber: str) -> Place:
        """Where a timber with a place stands. Raises ValueError for one without."""
        found = self.place(timber)
        if found is None:
            raise ValueError(f"{self.wood(timber).name} does not stand anywhere")
        return found

    def face(self, timber: str, face: Face, place: str) -> Flat:
        """The plane of a placed timber's long face, as deep as the frame counts on at a joint.

        The wood lies behind it. Raises ValueError for a timber without a place.
        """
        return self._site.face(timber, face, place)

    def rake(self, timber: str) -> Rake:
        """The line a raking timber's arris is said to run on. Raises ValueError for another."""
        return self._site.rake(timber)

    def slope(self, timber: str) -> Slope:
        """How a timber slopes: along itself if it rakes, across if it is rolled."""
        return self._site.slope(timber)

    def entry(self, bearing: Bearing) -> Face:
        """The face of the receiving timber that an end enters."""
        return self._site.entry(bearing)

    def drawn(self) -> "Frame":
        """The same frame without real sizes, as the drawing has it."""
        if not self._real:
            return self
        return self.once(_DRAWN, lambda: Frame(self.project, {}, self.tape))

    def carry_over(self, before: "Frame") -> None:
        """Take over what others worked out that comes to the same here.

        Those are the names that are defined as they were, and the drawing of the same project.
        """
        self.levels.carry_over(before.levels)
        if before.project is self.project:
            self._made |= {_DRAWN: before.drawn()}

    def once(self, key: str, make: Callable[[], _Made]) -> _Made:
        """What `make` gives, worked out when first asked for under a key, and kept."""
        if key not in self._made:
            self._made[key] = make()
        return cast("_Made", self._made[key])

    def bearing(self, timber: str, end: Direction) -> Bearing | None:
        """What an end of a placed timber bears in, which settles its shoulder; None for nothing."""
        found = (
            bearing
            for work in self.works_on(timber)
            for bearing in work.bearings()
            if bearing.timber == timber and bearing.end is end
        )
        return next(found, None) if self._timbers[timber].placed else None

    def abutment(self, timber: str, end: Direction) -> Abutment | None:
        """Where an end of a placed timber stops at another stick of its line; None for nowhere."""
        found = (
            abutment
            for work in self.works_on(timber)
            for abutment in work.abutments()
            if abutment.timber == timber and abutment.end is end
        )
        return next(found, None) if self._timbers[timber].placed else None

    def meeting(self, bearing: Bearing, *, at: Sum | None, inset: Sum) -> Meeting:
        """How an end meets the side it bears in: by the places of both, or as typed.

        Raises MeetingError as `meet` does.
        """
        stick, receiver = self.stick(bearing.timber), self.stick(bearing.into)
        end = stick.pose.end(bearing.end)
        here, there = self.place(bearing.timber), self.place(bearing.into)
        if here is not None and there is not None:
            across = crossing(stick, end, here, receiver, there)
        else:
            across = (ZERO if at is None else self.value(at), self.value(inset))
        return meet(stick, end, receiver, at=across[0], inset=across[1])

    def recess(self, bearing: Bearing, met: Meeting) -> Length:
        """How deep an end goes in through the real face of the timber it bears in.

        Under square rule what that stick has over its inner timber counts, on a far face.
        """
        if met.entry.is_reference:
            return bearing.depth
        return bearing.depth + self.wood(bearing.into).over(met.into, bearing.place)

    def neighbours(self, timber: str) -> tuple[str, ...]:
        """The timbers that share a joint with this one, itself first."""
        found = [timber]
        for work in self.works_on(timber):
            if work.joins():
                found.extend(self._cut_into(work))
        return tuple(dict.fromkeys(found))

    def inputs(self, timber: str) -> tuple[object, ...]:
        """Everything a timber's marks follow from: while it is equal, so are they."""
        near, own = self.neighbours(timber), self.works_on(timber)
        works = tuple(each for work in own for each in (work, *self.cut_through(work)))
        sums = [self.timber(timber).sums(), *(work.sums() for work in works)]
        totals = (total for each in sums for total in each.values())
        return (
            self.timber(timber),
            works,
            tuple(map(self.value, totals)),
            tuple(map(self.stick, near)),
            tuple(map(self.place, near)),
            self.project.practice,
            self.tape,
        )

    def nominal(self, timber: Timber) -> Section:
        """The section a timber is drawn with. Raises KeyError for an unknown section name."""
        if isinstance(timber.section, Section):
            return timber.section
        return self.project.sections[timber.section]

    def inner(self, timber: Timber) -> Section | None:
        """The perfect timber inside, under square rule. Raises KeyError if none is given."""
        if not timber.square_ruled(self.project.rule):
            return None
        if timber.inner is not None:
            return timber.inner
        return self.project.inner[str(timber.section)]

    def _section_of(self, timber_id: str) -> dict[str, Any]:
        timber, real = self._timbers[timber_id], self._real.get(timber_id, Real())
        return {
            "id": timber.id,
            "name": timber.name,
            "pose": timber.pose,
            "nominal": self.nominal(timber),
            "inner": self.inner(timber),
            "measured": real.measured,
            "as_cut": real.as_cut,
        }

    def _make_stick(self, timber: Timber) -> Stick:
        ends = (timber.reference_end, timber.reference_end.opposite)
        near, far = (self._beyond(timber.id, end) for end in ends)
        bearings = [self.bearing(timber.id, end) for end in ends]
        near_housed, far_housed = (each.depth if each else ZERO for each in bearings)
        return Stick(
            **self._section_of(timber.id),
            body=self._site.body(timber.id),
            near=near,
            far=far,
            trim=self.project.practice.trim,
            near_housed=near_housed,
            far_housed=far_housed,
            placed=timber.placed,
            unsure={
                timber.pose.end(each.end): found
                for each in bearings
                if each and (found := self._unmeasured(each))
            },
            lapped=tuple(
                timber.pose.end(each.end) for each in self._extensions(timber.id) if each.lap
            ),
            unsure_beyond={
                timber.pose.end(each.end): found
                for each in self._extensions(timber.id)
                if each.through
                and (found := unmeasured_passed(self.wood(each.through.into), each.through))
            },
            scribed=tuple(
                timber.pose.end(each.end) for each in self._extensions(timber.id) if each.scribed
            ),
        )

    def _unmeasured(self, bearing: Bearing) -> Unmeasured | None:
        """The far face an end bears on by mill rule, while nobody has measured it there."""
        wood = self.wood(bearing.into)
        entry = self._site.entry(bearing)
        measured = wood.measured_depth(axis_from(entry), bearing.place)
        if entry.is_reference or wood.inner is not None or measured is not None:
            return None
        words = f"{wood.name}'s {wood.pose.words(entry)}"
        return Unmeasured(words, bearing.into, bearing.place)

    def _extensions(self, timber: str) -> Iterator[Extension]:
        """The tenons on the ends of a timber, each as long as it comes to."""
        found = (each for work in self.works_on(timber) for each in work.extensions())
        yield from (self._worked_out(each) for each in found if each.timber == timber)

    def _worked_out(self, extension: Extension) -> Extension:
        """A tenon that goes through, by the wood that it passes."""
        if extension.through is None:
            return extension
        passed = wood_passed(self.wood(extension.through.into), extension.through)
        return extension._replace(length=passed + extension.length)

    def _beyond(self, timber: str, end: Direction) -> Length:
        found = (
            each.length if each.shape == "square" else self._reach(each)
            for each in self._extensions(timber)
            if each.end is end
        )
        return max(found, default=ZERO)

    def _reach(self, extension: Extension) -> Length:
        """How far a slanting tip reaches along its own timber."""
        wood, place = self.wood(extension.timber), self.standing(extension.timber)
        end = wood.pose.end(extension.end)
        reference = end is Face.REFERENCE_END
        shoulder = ZERO if reference else self._site.body(wood.id)
        flat = self._tip(extension, place.point(shoulder, ZERO, ZERO))
        tip = carried(flat.moved(extension.length), place)
        axis, deep = plumb_axis(wood.pose), self._deep(extension, wood, wood.place_at(end))
        outward = -1 if reference else 1
        bearing = self.bearing(extension.timber, extension.end)
        if extension.front is None or bearing is None:
            nosed = extension.shape == "nosed"
            return reach(tip, axis, deep, shoulder, outward=outward, nosed=nosed)
        stands = foothold(carried(flat.turned, place), axis, deep, shoulder, outward=outward)
        there = self.standing(bearing.into)
        front = abutment_plane(stands, extension.front, place, there)
        return abutting_reach(stands, front, tip)

    def _deep(self, extension: Extension, wood: Wood, at: str) -> Length:
        """How deep a slanting tip goes in from the reference edge: a free end is never reduced."""
        axis, places = plumb_axis(wood.pose), (extension.place or f"{at}-tenon", at)
        if extension.level:
            line = self.rake(wood.id)
            return wood.held(axis) - Length(nearest(extension.level.nm * line.rise, line.length))
        free = extension.shape in ("plumb", "level")
        return wood.depth(axis, *places) if free else wood.framed(axis, *places)

    def _tip(self, extension: Extension, shoulder: Point) -> Flat:
        """The plane of a slanting tip, through its shoulder, with all of the timber behind it."""
        pose = self._timbers[extension.timber].pose
        if extension.along:
            top = self._timbers[extension.along].pose.face(Direction.UP)
            return self._site.face(extension.along, top, extension.place)
        bearing = self.bearing(extension.timber, extension.end)
        if extension.shape in ("parallel", "nosed") and bearing is not None:
            entry = self._site.entry(bearing)
            return self._site.face(bearing.into, entry, bearing.place).turned.through(shoulder)
        plumb = pose.direction(pose.end(extension.end))
        looks = plumb if extension.shape == "plumb" else extension.end
        return behind(looks, 0).through(shoulder)
