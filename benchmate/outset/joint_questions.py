"""The questions about the joints: every default of the trade, visible, with where it comes from."""

from fractions import Fraction
from functools import partial

from benchmate.outset import refused_joints, suggested
from benchmate.outset.answers import LAPPED, NONE, Answers
from benchmate.outset.plan_questions import COMMON
from benchmate.outset.question import Group, Kind, Question


def _half_inch(a: Answers) -> str:
    return a.say(a.size(Fraction(1, 2), 12))


def _draw(a: Answers) -> str:
    return a.say(a.size(Fraction(1, 8), 3))


def _same_as(a: Answers, *, question: str) -> str:
    return a.text(question)


def _pegged(a: Answers) -> bool:
    return a.word("pegs") != NONE


def _braced(a: Answers) -> bool:
    return a.braced


def _brace_pegged(a: Answers) -> bool:
    return a.braced and _pegged(a)


def _tenoned(a: Answers) -> bool:
    return a.word("ties") != LAPPED


def _corner_tenoned(a: Answers) -> bool:
    return a.word("corners") == "tenoned"


JOINTS = Group(
    "Joints",
    (
        Question(
            id="thickness",
            label="Tenon thickness",
            kind=Kind.LENGTH,
            suggest=suggested.thickness,
            about="Of posts, ties, end sills, and the cogs of ties.",
            source='A quarter of the timber, 2" in an 8": published (framers\' guild forum 5497).',
            refuse=refused_joints.thickness,
            shows="post-sw",
        ),
        Question(
            id="set back",
            label="Set-back from reference face",
            kind=Kind.LENGTH,
            suggest=partial(_same_as, question="thickness"),
            about="From the reference face to the near cheek of the same tenons.",
            source="As much as the tenon is thick: published (framers' guild forum 5497).",
            refuse=refused_joints.set_back,
            shows="post-sw",
        ),
        Question(
            id="relief",
            label="Relief at the corners",
            kind=Kind.LENGTH,
            suggest=suggested.relief,
            about="What comes off the gable side of tenons near the end of a sill or plate, so "
            "that relish is left.",
            source=COMMON,
            refuse=partial(refused_joints.less_than_half, question="relief", of="post"),
            shows="post-sw",
        ),
        Question(
            id="foot",
            label="Foot tenon length",
            kind=Kind.LENGTH,
            suggest=suggested.foot,
            about="Of every post in its sill.",
            source='A 2" stub: published (a web handbook of framing).',
            refuse=partial(refused_joints.deep, question="foot", into="sill", side_="first"),
            shows="post-sw",
        ),
        Question(
            id="head",
            label="Head tenon length",
            kind=Kind.LENGTH,
            suggest=suggested.head,
            about="Of every post in its plate.",
            source='About 4" is usual: common practice, no source.',
            refuse=partial(refused_joints.deep, question="head", into="plate", side_="first"),
            shows="post-sw",
        ),
        Question(
            id="corner",
            label="End sill tenon length",
            kind=Kind.LENGTH,
            suggest=suggested.corner,
            about="In the long sills, short of the corner posts' feet.",
            source=COMMON,
            asked=_corner_tenoned,
            refuse=partial(refused_joints.deep, question="corner", into="sill", side_="second"),
            shows="sill-west",
        ),
        Question(
            id="tie housing",
            label="Ties housed in the posts",
            kind=Kind.LENGTH,
            suggest=_half_inch,
            about="How deep the whole end goes in, to carry the tie; 0 for none.",
            source='1/2" is common, to 1": common practice, no source.',
            asked=_tenoned,
            refuse=partial(refused_joints.housing, question="tie housing"),
            may_be_zero=True,
            shows="tie-1",
        ),
        Question(
            id="brace housing",
            label="Braces housed",
            kind=Kind.LENGTH,
            suggest=_half_inch,
            about="In posts, plates and ties; 0 for none.",
            source='1/2" is common: common practice, no source.',
            asked=_braced,
            refuse=partial(refused_joints.housing, question="brace housing"),
            may_be_zero=True,
            shows="brace-sw",
        ),
        Question(
            id="brace thickness",
            label="Brace tenon thickness",
            kind=Kind.LENGTH,
            suggest=suggested.brace_thickness,
            about="A framing square's tongue is as wide.",
            source='1-1/2": published (a book on timber framing, 2016, as quoted).',
            asked=_braced,
            refuse=refused_joints.brace_thickness,
            shows="brace-sw",
        ),
        Question(
            id="brace set back",
            label="Brace set-back",
            kind=Kind.LENGTH,
            suggest=suggested.brace_set_back,
            about="From the flush face to the near cheek.",
            source='1-1/2": published (a book on timber framing, 2016, as quoted).',
            asked=_braced,
            refuse=refused_joints.brace_set_back,
            may_be_zero=True,
            shows="brace-sw",
        ),
        Question(
            id="brace tenon",
            label="Brace tenon length",
            kind=Kind.LENGTH,
            suggest=suggested.brace_tenon,
            about="Square to the face it enters; two that meet in a post share its width.",
            source='3" to 4": from memory; shorter where two share a post.',
            asked=_braced,
            refuse=partial(
                refused_joints.deep, question="brace tenon", into="post", side_="second"
            ),
            shows="brace-sw",
        ),
        Question(
            id="tie tenon",
            label="Tie tenon length",
            kind=Kind.LENGTH,
            suggest=suggested.tie_tenon,
            about="Beyond the housing, in the posts.",
            source='About 4" is usual: common practice, no source.',
            asked=_tenoned,
            refuse=partial(refused_joints.deep, question="tie tenon", into="post", side_="first"),
            shows="tie-1",
        ),
        Question(
            id="peg",
            label="Peg hole, posts and ties",
            kind=Kind.LENGTH,
            suggest=suggested.peg,
            about="Two to a tenon; size pegs by their hole.",
            source="1\" for ties and post tops, two to a tenon: published (a shop's web notes; "
            "framers' guild forum 854).",
            asked=_pegged,
            refuse=partial(refused_joints.peg_size, question="peg"),
            shows="post-sw",
        ),
        Question(
            id="brace peg",
            label="Peg hole, braces",
            kind=Kind.LENGTH,
            suggest=suggested.brace_peg,
            about="One to a tenon.",
            source="3/4\" where braces are pegged: published (framers' guild forum 4378).",
            asked=_brace_pegged,
            refuse=partial(refused_joints.peg_size, question="brace peg"),
            shows="brace-sw",
        ),
        Question(
            id="peg shoulder",
            label="Pegs from the shoulder",
            kind=Kind.LENGTH,
            suggest=suggested.peg_shoulder,
            about="To the holes' centre line, in the timber that receives the tenon.",
            source='1-1/2" with a 4" tenon: published (framers\' guild forum 854); half of a '
            "shorter one.",
            asked=_pegged,
            refuse=refused_joints.peg_shoulder,
            shows="post-sw",
        ),
        Question(
            id="brace peg shoulder",
            label="Brace pegs from the shoulder",
            kind=Kind.LENGTH,
            suggest=suggested.brace_peg_shoulder,
            about="To the hole's centre, in the timber that receives the brace.",
            source='1-1/2" or the middle of a shorter tenon: common practice, no source.',
            asked=_brace_pegged,
            refuse=refused_joints.brace_peg_shoulder,
            shows="brace-sw",
        ),
        Question(
            id="draw",
            label="Draw",
            kind=Kind.LENGTH,
            suggest=_draw,
            about="How much nearer the shoulder the tenon's own holes lie; 0 for none.",
            source='1/16" to 1/8" in hardwood: published (a builder\'s notes, 2007); others draw '
            "a quarter of the peg.",
            asked=_pegged,
            refuse=refused_joints.draw,
            may_be_zero=True,
            shows="post-sw",
        ),
    ),
)
