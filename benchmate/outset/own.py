"""What a framer likes to have suggested in a new frame: his own settings, as they reach here."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from fractions import Fraction

from benchmate.measure.length import Length
from benchmate.outset.answers import SHOP, Answers, Value
from benchmate.outset.written import nearest

LENGTHS = {
    "set back": "set_back",
    "tie housing": "housing",
    "brace housing": "housing",
    "peg": "peg_size",
    "peg shoulder": "peg_from_shoulder",
    "draw": "draw",
}
"""The questions that a length of his goes to."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Own:
    """His own lengths by the keys of his settings, a tenon's share of its timber, his tape."""

    lengths: Mapping[str, Length] = field(default_factory=dict)
    share: Fraction | None = None
    units: str = ""
    graduation: str = ""

    def shop(self) -> dict[str, Value]:
        """The shop's practice as values beside the answers."""
        found = {rule: self.lengths.get(rule) for rule in SHOP}
        return {f"shop.{rule}": value for rule, value in found.items() if value is not None}

    def text(self, question: str, answers: Answers) -> str:
        """What he would have suggested to a question; empty for nothing of his own."""
        if question == "units":
            return self.units
        if question == "graduation":
            return self.graduation
        if question == "thickness" and self.share is not None:
            post = answers.within("post")
            part = min(post.first, post.second).nm * self.share
            return answers.say(max(nearest(part, answers.grid), answers.grid))
        length = self.lengths.get(LENGTHS.get(question, ""))
        return answers.say(length) if length is not None else ""


NOTHING = Own()
"""Nothing of his own: the trade's suggestions stand."""
