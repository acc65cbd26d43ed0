"""The one table of questions, in the order they are asked: the form and the engine go by it."""

from collections.abc import Callable

from benchmate.outset.answers import Answers
from benchmate.outset.joint_questions import JOINTS
from benchmate.outset.member_questions import MEMBERS, PLACES
from benchmate.outset.plan_questions import PLAN, PROJECT
from benchmate.outset.question import Cannot, Group, Question
from benchmate.outset.scarfing import cannot_scarf_plates, cannot_scarf_sills

GROUPS: tuple[Group, ...] = (PROJECT, PLAN, MEMBERS, PLACES, JOINTS)
"""Every group of questions, in order: a suggestion follows from answers before it alone."""

QUESTIONS: tuple[Question, ...] = tuple(each for group in GROUPS for each in group.questions)
"""Every question."""

WHOLE: tuple[tuple[str, Callable[[Answers], Cannot | None]], ...] = (
    ("longest", cannot_scarf_plates),
    ("longest", cannot_scarf_sills),
)
"""What only the whole of the answers can tell, and the question it is told at."""
