"""An open project on the bench: every tick, every typed size, every edit, undo and redo.

The screen and the plain commands both work through a `Bench`. It keeps nothing back: a change is
on disk before the call that made it returns, and after it, in the journal, what undoes it.
"""

import secrets
from collections.abc import Callable, Sequence
from datetime import UTC, datetime
from typing import NamedTuple

from benchmate.layout.noted import about_words, blemish_name, one_line
from benchmate.layout.step import Step
from benchmate.model.journal import (
    Action,
    Line,
    MovedPart,
    NamePart,
    ProgressPart,
    ProjectPart,
    TextPart,
)
from benchmate.model.progress import Blemish, Signed, SignWord, WrittenNote
from benchmate.model.words import LONGEST_NOTE, visible
from benchmate.store.keeper import Keeper
from benchmate.store.moving import Move
from benchmate.store.pieces import pieces_between, turned_text
from benchmate.workbench.actions import (
    Change,
    OvertakenError,
    Sizes,
    both,
    measured_by,
    next_id,
    tick_for,
    with_blemish,
    with_note,
    with_shown,
    with_sign,
    with_sizes,
    with_tick,
    without_noted,
)
from benchmate.workbench.history import Event, history_of
from benchmate.workbench.keeping import NotKeptError, NotUndoneError, told_if_not_kept
from benchmate.workbench.open_project import OpenProject, parsed
from benchmate.workbench.parts import parts_between, turned
from benchmate.workbench.timber_state import SIGNED_AS, Check, state_of


class Done(NamedTuple):
    """An action undone or done again: what it was, and where the framer stood.

    `already` says that nothing had to be changed for it.
    """

    words: str
    timber: str
    step: str
    already: bool = False


def now() -> datetime:
    """The time of a tick, to the second."""
    return datetime.now(UTC).replace(microsecond=0)


class Bench(OpenProject):
    """One project folder open for work, or for reading only."""

    def __init__(self, keeper: Keeper, clock: Callable[[], datetime] = now) -> None:
        super().__init__(keeper)
        self._clock = clock

    def by_project(self) -> "Bench":
        """The same project shown on its own tape, as what is printed has to be."""
        return self if self.tape == self.project.tape else Bench(self._keeper, self._clock)

    def tick(self, timber: str, step: Step) -> Sizes | None:
        """Tick a step with what it reads now. Raises NotKeptError.

        A measuring step measures: the sizes it shows are kept with the tick where none were typed.
        Gives what is kept at its place then, or None where the tick brings no size.
        """
        before = self.sizes(timber, step)
        feature = self.walk(timber).layout.feature(step.feature)
        parts = feature.sizes if feature else ()
        sizes = measured_by(step, parts, before)
        at = self._clock()
        ticked = both(with_tick(step.id, tick_for(step, at)), with_shown(step, parts, before))
        self._act(f"tick on {step.title}", timber, step.id, ticked, at)
        return None if sizes == before else sizes

    def untick(self, timber: str, step: Step) -> None:
        """Take a step's tick off. Raises NotKeptError."""
        if self.walk(timber).progress.tick(step.id) is None:
            return
        words = f"tick taken off {step.title}"
        self._act(words, timber, step.id, with_tick(step.id, None), self._clock())

    def sign(self, timber: str, what: SignWord) -> bool:
        """Sign something of a whole timber, or take it off; whether it is signed then.

        A second check that is void is made anew instead. Raises NotKeptError.
        """
        walk, at = self.walk(timber), self._clock()
        void = what == "checked" and state_of(walk).check is Check.AGAIN
        signing = void or walk.progress.sign(what) is None
        words = SIGNED_AS[what] if signing else f"no longer {SIGNED_AS[what]}"
        signed = Signed(what=what, at=at) if signing else None
        self._act(words, timber, "", with_sign(what, signed), at)
        return signing

    def set_sizes(self, timber: str, step: str, sizes: Sizes) -> None:
        """Keep real sizes typed at a step. Raises NotKeptError."""
        words = f"sizes at {sizes.place.replace('-', ' ')}"
        self._act(words, timber, step, with_sizes(sizes), self._clock())

    def add_note(self, timber: str, step: str, about: str, text: str) -> None:
        """Write a note about a step, a joint or, with nothing, the timber. Raises NotKeptError."""
        walk, at = self.walk(timber), self._clock()
        id_ = next_id("note", (each.id for each in walk.progress.notes))
        note = WrittenNote(id=id_, about=about, text=text, at=at)
        words = f"note on {about_words(walk.layout, about)}"
        self._act(words, timber, step, with_note(note), at)

    def add_blemish(self, timber: str, step: str, blemish: Blemish) -> None:
        """Note a blemish of the stick, under the next free id. Raises NotKeptError."""
        walk, at = self.walk(timber), self._clock()
        id_ = next_id(blemish.kind, (each.id for each in walk.progress.blemishes))
        kept = blemish.model_copy(update={"id": id_, "at": at})
        words = f"noted: {blemish_name(walk.layout.stick, kept, walk.tape)}"
        self._act(words, timber, step, with_blemish(kept), at)

    def take_out(self, timber: str, step: str, noted: WrittenNote | Blemish) -> None:
        """Take a note or a blemish out. Raises NotKeptError."""
        walk = self.walk(timber)
        if isinstance(noted, Blemish):
            words = f"taken out: {blemish_name(walk.layout.stick, noted, walk.tape)}"
        else:
            words = f"note taken out: {one_line(noted.text)}"
        self._act(words, timber, step, without_noted(noted), self._clock())

    def set_name(
        self, table: str, name: str, text: str, *, timber: str = "", step: str = ""
    ) -> None:
        """Write another text for a name of the project. Raises BadTextError, NotKeptError.

        `timber` and `step` are where the framer stands, so that undoing brings him back there.
        """
        old = self._put_name(table, name, text)
        wrote = self._keeper.written()[table][name]
        if old != wrote:
            part = NamePart(what="name", table=table, name=name, was=old, now=wrote)
            self._note(f"{name} written as {text}", timber, step, (part,), self._clock())

    def edit_project(
        self,
        words: str,
        new_text: str,
        *,
        timber: str = "",
        step: str = "",
        moves: Sequence[Move] = (),
    ) -> None:
        """Write the whole project file anew, as one action. Raises BadProjectError, NotKeptError.

        `words` say what was done ("NE post added"), `new_text` is made from `project_text()`; a
        file that others have changed since is left. `timber` and `step` are as for a name, and
        `moves` take progress to other ids.
        """
        base = self.project_text()
        parsed(new_text)

        def change(text: str) -> str:
            if text != base:
                raise NotKeptError(
                    "project.toml has just been changed outside; look at what it says now, then "
                    "try again"
                )
            return new_text

        before, after = self._rewrite(change, moves)
        pieces = pieces_between(before, after)
        if pieces:
            went = tuple(
                MovedPart(old=each.old, new=each.new, features=each.features) for each in moves
            )
            part = TextPart(what="text", pieces=pieces, moves=went)
            self._note(words, timber, step, (part,), self._clock())

    def undo(self) -> Done | None:
        """Take the last action back; None if there is none. Raises NotKeptError.

        What somebody has changed outside since is left as it is, and that action can no longer be
        taken back: NotUndoneError.
        """
        action = self._keeper.past().to_undo
        return None if action is None else self._turn(action, back=True)

    def redo(self) -> Done | None:
        """Do again what was last taken back; None if there is nothing. Raises as `undo` does."""
        action = self._keeper.past().to_redo
        return None if action is None else self._turn(action, back=False)

    def history(self, timber: str) -> tuple[Event, ...]:
        """What was done on a timber, and on the whole frame, newest first."""
        return history_of(self.walk(timber), self._keeper.past())

    def journal_trouble(self) -> str:
        """What is wrong with the journal and was not told before; empty for nothing."""
        return self._keeper.journal_trouble()

    def _act(self, words: str, timber: str, step: str, change: Change, at: datetime) -> None:
        """Change what is kept for a timber, and note it as one action."""
        before, after = self._keep(timber, change)
        self._note(words, timber, step, parts_between(before, after), at)

    def _note(
        self,
        words: str,
        timber: str,
        step: str,
        parts: Sequence[ProgressPart | ProjectPart],
        at: datetime,
    ) -> None:
        """Put an action that is on disk into the journal; one that changed nothing is none."""
        if parts:
            action = Action(
                id=secrets.token_hex(6),
                at=at,
                words=visible(words)[:LONGEST_NOTE],
                timber=timber,
                name=self._names.get(timber, ""),
                step=step,
                parts=tuple(parts),
            )
            self._keeper.note(Line(did=action))

    def _turn(self, action: Action, *, back: bool) -> Done:
        """Take an action back, or do it again, and note that."""
        with told_if_not_kept():
            self._keeper.check_writing()
        try:
            changed = self._swap(action, back=back)
        except OvertakenError as error:
            self._keeper.note(Line(left=action.id))
            not_done = "not undone" if back else "not done again"
            raise NotUndoneError(f"{error}, changed outside; {not_done}") from error
        self._keeper.note(Line(undone=action.id) if back else Line(redone=action.id))
        return Done(self._said(action), action.timber, action.step, already=not changed)

    def _said(self, action: Action) -> str:
        """An action in words, with its timber by the name it has now."""
        if action.of_frame:
            return action.words
        name = self._names.get(action.timber, action.name or action.timber)
        return f"{name}, {action.words}"

    @property
    def _names(self) -> dict[str, str]:
        return {timber.id: timber.name for timber in self.timbers}

    def _swap(self, action: Action, *, back: bool) -> bool:
        """Put what was before an action in place of what was after it, or the other way round.

        Whether that changed anything. Raises OvertakenError where neither is there any more.
        """
        first = action.parts[0]
        if isinstance(first, NamePart):
            return self._swap_name(first, back=back)
        if isinstance(first, TextPart):
            return self._swap_text(first, self._said(action), back=back)
        parts = [part for part in action.parts if not isinstance(part, ProjectPart)]
        try:
            before, after = self._keep(action.timber, turned(parts, back=back))
        except OvertakenError as error:
            raise OvertakenError(f"{self._said(action)}: {error}") from error
        return before != after

    def _swap_name(self, part: NamePart, *, back: bool) -> bool:
        self.look()
        there, put = (part.now, part.was) if back else (part.was, part.now)
        found = self._keeper.written().get(part.table, {}).get(part.name)
        if found is None:
            raise OvertakenError(f"{part.name} is gone")
        if found not in (there, put):
            raise OvertakenError(f"{part.name} is {found} now")
        self._put_name(part.table, part.name, put)
        return found != put

    def _swap_text(self, part: TextPart, said: str, *, back: bool) -> bool:
        def change(text: str) -> str:
            found = turned_text(text, part.pieces, back=back)
            if found is None:
                raise OvertakenError(f"{said}: these lines of project.toml are others now")
            return found

        moves = tuple(Move(each.old, each.new, each.features) for each in part.moves)
        before, after = self._rewrite(change, tuple(m.back() for m in moves) if back else moves)
        return before != after
