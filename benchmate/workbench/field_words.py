"""The one table of words for the fields of a form: what each is called, and a line of help.

It speaks as the tables of the README do. A field of one family goes before one of the same key in
all of them; the fields of a timber and of the project stand under their own names.
"""

from typing import NamedTuple

ANY = "*"
"""Stands for every family of joints."""

TIMBER, PROJECT, CHAMFER = "end cut", "project", "chamfer"


class Words(NamedTuple):
    """What a field is called, and a line of help."""

    label: str
    help: str


_EAST = "How far east of the frame's zero: a line, a figure, or a sum of them."
_NORTH = "How far north of the frame's zero: a line, a figure, or a sum of them."
_UP = "How high: a level, a figure, or a sum of them."
_SETS = "from the reference face to the near cheek"
_TIMBER_WORDS = {
    "id": ("Id", "Lower-case letters, digits and hyphens; the progress file's name."),
    "name": ("Name", "What you call it. Every timber has a name of its own."),
    "kind": ("Kind", "What it is in the frame: post, sill, tie, joist."),
    "species": ("Species", "What it is sawn from."),
    "section": ("Section", "A section's name, or 7 x 8: depth from the first face by the second."),
    "first_face": ("First face", "Where the first reference face looks: the building plane."),
    "second_face": ("Second face", "Where the other looks, square to the first. It sets the hand."),
    "reference_end": ("Reference end", "The end everything is measured from."),
    "at.east": ("Place, east", f"Of its reference arris; not for one that runs so. {_EAST}"),
    "at.north": ("Place, north", f"Of its reference arris; not for one that runs so. {_NORTH}"),
    "at.up": ("Place, up", f"Of its reference arris; not for one that stands. {_UP}"),
    "reference_end_at": ("Reference end at", "Where that end comes, if it meets nothing there."),
    "far_end_at": ("Far end at", "Where the far end comes, if it meets nothing there."),
    "incline.foot.east": ("Foot, east", f"Where the arris of a raking timber starts. {_EAST}"),
    "incline.foot.north": ("Foot, north", f"Where the arris of a raking timber starts. {_NORTH}"),
    "incline.foot.up": ("Foot, up", f"Where the arris of a raking timber starts. {_UP}"),
    "incline.head.east": ("Head, east", f"Where that arris ends. {_EAST}"),
    "incline.head.north": ("Head, north", f"Where that arris ends. {_NORTH}"),
    "incline.head.up": ("Head, up", f"Where that arris ends. {_UP}"),
    "incline.towards": ("Rises towards", "Where the head lies, seen from the foot."),
    "incline.run": ("Run", "In place of the head: how far it goes level."),
    "incline.rise": ("Rise", "In place of the head: how far it rises in that run."),
    "incline.corner.east": ("Corner, east", f"Of the right angle a brace closes. {_EAST}"),
    "incline.corner.north": ("Corner, north", f"Of the right angle a brace closes. {_NORTH}"),
    "incline.corner.up": ("Corner, up", f"Of the right angle a brace closes. {_UP}"),
    "incline.legs.north": ("Leg north", "From the corner: one leg level, one up or down."),
    "incline.legs.east": ("Leg east", "From the corner: one leg level, one up or down."),
    "incline.legs.south": ("Leg south", "From the corner: one leg level, one up or down."),
    "incline.legs.west": ("Leg west", "From the corner: one leg level, one up or down."),
    "incline.legs.up": ("Leg up", "From the corner: one leg level, one up or down."),
    "incline.legs.down": ("Leg down", "From the corner: one leg level, one up or down."),
    "roll.towards": ("Rolled towards", "For a level timber in a roof: the side that is raised."),
    "roll.run": ("Roll, run", "The roof it lies in: how far it goes level."),
    "roll.rise": ("Roll, rise", "The roof it lies in: how far it rises in that run."),
    "length": ("Length", "For one without a place, or from its one settled end."),
    "length_is": ("Length is", "Shoulder to shoulder (usual), or overall with its tenons."),
    "shoulder_level": (
        "Shoulder level",
        "Without a place: the level its reference shoulder is at.",
    ),
    "rule": ("Rule", "In place of the project's rule."),
    "inner": ("Inner section", "By square rule: the perfect timber inside this one."),
    "note": ("Note", r"Anything worth knowing at the bench. \n starts a new line."),
}

_PROJECT_WORDS = {
    "name": ("Name", "The project's name."),
    "demo": ("Demo", "yes only for demos that ship with the program."),
    "note": ("Note", r"Anything. \n starts a new line."),
    "units": ("Units", "How lengths are shown, and what a number without a unit is."),
    "graduation": ("Graduation", "The finest mark on your tape."),
    "rule": ("Rule", "mill: sticks as they are. square: joints reduced to an inner timber."),
    "shop.trim": ("Trim", "Wood to spare at each end of a stick."),
    "shop.guide_block": ("Guide block", "From a chamfer stop to the block that stops the tool."),
    "shop.bottom_clearance": ("Bottom clearance", "How much deeper a mortise is than its tenon."),
    "shop.least_wood": ("Least wood", "To leave between two joints; less is told. No strength."),
}

_ANY_WORDS = {
    "id": ("Id", "Names the joint; what is cut in the other timber is called after it."),
    "timber": ("Timber", "The timber that is cut first: the one with the tenon or the end."),
    "end": ("End", "Which of its ends."),
    "into": ("Into", "The timber that receives it."),
    "at": ("At", "Without places: where on the other its side comes, from that one's shoulder."),
    "drop": ("Drop", "Without places: how far below the other's reference face its top lies."),
    "housing": ("Housing", "How deep the whole end goes in; nothing if left empty."),
    "length": ("Length", "The tenon, from its shoulder to its end."),
    "thickness": ("Thickness", "The tenon, from cheek to cheek."),
    "set_back": ("Set-back", f"The tenon: {_SETS}. 0 is barefaced."),
    "relief_reference": ("Relief, reference edge", "What comes off the narrow edge on that side."),
    "relief_far": ("Relief, far edge", "What comes off the other narrow edge."),
    "bottom_clearance": (
        "Bottom clearance",
        "Mortise deeper than the tenon, in place of the shop's.",
    ),
    "ease": ("Ease", "Mortise longer than the timber, on the inside, so that rough stock enters."),
    "end_depth": (
        "End depth",
        "How deep the joist is at its end, from its top, if cut down there.",
    ),
    "end_clearance": ("End clearance", "Recess longer than the end, in place of the shop's."),
    "let_in": ("Let in", "How deep the end is let in; nothing if left empty."),
    "past": ("Past", "How far it stands past the far face."),
    "held_short": ("Held short", "How far it stays short of the far face."),
    "flare": ("Flare", "How much deeper or wider the tail is at its thick end, on each flank."),
    "meets": ("Meets", "Other joints that its cuts are meant to run into."),
    "pegs.count": ("Pegs, count", "1 to 4."),
    "pegs.size": ("Pegs, hole", "Pegs go by their hole. What carries load is the engineer's."),
    "pegs.from_shoulder": ("Pegs, from shoulder", "From where it bears to the holes' centre line."),
    "pegs.from_edge": ("Pegs, from edge", "From the reference narrow edge to the first centre."),
    "pegs.spacing": ("Pegs, spacing", "From one centre to the next."),
    "pegs.draw": ("Pegs, draw", "How much nearer the shoulder the tenon's own holes lie."),
    "pegs.bored_from": ("Pegs, bored from", "Which side face: reference (usual) or far."),
    "pegs.blind_depth": ("Pegs, blind depth", "How deep, if not bored right through."),
}

_FAMILY_WORDS = {
    "tenon": {
        "into": ("Into", "The timber that receives it; empty for a timber on its own."),
        "at": ("At", "Without places: where its other face crosses, from that one's shoulder."),
        "inset": ("Inset", "Without places: how far in from the other's face it stands."),
        "scribed": ("Scribed", "yes for a joint marked by hand from its mate."),
        "cheeks_from": ("Cheeks from", "Only on its own: the face the set-back starts from."),
        "through": ("Through", "yes for a tenon right through; its length then follows the wood."),
        "beyond": ("Beyond", "The third timber that what stands past goes on into."),
        "beyond_through": ("Through that too", "yes where it goes right through that one as well."),
        "all_round": ("All round", "What comes off both narrow edges without a relief."),
        "end_allowance": ("End allowance", "Wood left on the tenon's end until it is fitted."),
    },
    "diminished tenon": {
        "housing": ("Housing", "How deep at the underside; nothing at the top."),
        "length": ("Length", "The tenon, from the shoulder at the underside."),
    },
    "wedged half-dovetail": {
        "flare": ("Flare", "How much deeper the tail is at the post's far face."),
        "wedge_thin": ("Wedge, thin end", "At least the flare, or the tail does not come in."),
        "wedged": ("Wedged", "The straight edge that the wedge is driven over."),
        "depth": ("Depth", "Of the tenon at its shoulder; empty: out to the tie's other face."),
    },
    "joist pocket": {
        "bearing": ("Bearing", "How far the end goes in."),
        "diminished": ("Diminished", "The underside slopes up from so far back of the pocket."),
    },
    "dovetail joist": {
        "length": ("Length", "Of the tail, from its shoulder."),
        "flare": ("Flare", "How far each flank comes in at the shoulder."),
        "straight": ("Straight flank", "Where a flank that is left straight looks."),
        "wedge": ("Wedge", "Room for a dry wedge beside the tail."),
        "wedge_side": ("Wedge side", "Where the flank with the wedge looks."),
    },
    "soffit tenon": {
        "thickness": ("Depth of tenon", "From its top to its underside."),
        "haunch": ("Haunch", "How deep it is let in at the tenon, fading to nothing at the top."),
        "above_soffit": ("Above soffit", "How far the tenon lies above the underside."),
    },
    "tusk tenon": {
        "thickness": ("Depth of tenon", "Empty: a sixth of the beam's depth, as published."),
        "length": ("Length", "From the beam's face. Empty: twice the tenon's depth, as published."),
        "set_back": ("From the top", "To the tenon. Empty: its underside on the centre line."),
        "tusk": ("Tusk", "How far it is let in. Empty: a sixth of the joist, as published."),
        "tusk_height": ("Tusk height", "How high the tusk under the tenon is."),
        "horn": ("Horn", "How far the horn above is let in. Empty: as far as the tusk."),
    },
    "brace": {
        "length": ("Length", "The tenon, square to the face it enters."),
        "nose": ("Nose", "How much further in than the long edge the square nose starts."),
    },
    "rafter seat": {
        "timber": ("Rafter", "The rafter that is notched over the other."),
        "into": ("Bears on", "The level timber it crosses."),
        "let_in": ("Let in", "How deep the seat lies below that timber's top."),
        "step": ("Step", "How much of that timber is left standing outside the seat."),
    },
    "rafter tail": {
        "timber": ("Rafter", "The rafter whose free end it is."),
        "cut": ("Cut", "How the end is cut. Without a tail it stays square."),
        "level": ("Level cut", "How long it is, for plumb and level."),
    },
    "rafter ridge": {
        "timber": ("Rafter", "The rafter whose head it is."),
        "into": ("Ridge", "The level timber against whose side it comes."),
    },
    "rafter peak": {
        "timber": ("Rafter", "It keeps the half by its reference side, or has the tongue."),
        "into": ("Other rafter", "It has the other half, or the fork."),
        "cut": ("Cut", "butt, half lap or bridle."),
        "thickness": ("Tongue", "How thick the tongue of a bridle is."),
        "set_back": ("Tongue, set-back", "From its reference side; empty: in the middle."),
    },
    "joggle": {
        "notch": ("Notch", "How deep the abutment goes in. How deep it may, the engineer says."),
        "abutment": ("Abutment", "How the front of the notch looks."),
        "length": ("Length", "The tenon beyond the notch."),
    },
    "scarf": {
        "kind": ("Kind", "How the two sticks lap."),
        "into": ("Into", "The stick that it goes on in."),
        "at": ("At", "Where along the line its middle lies."),
        "length": ("Length", "From tip to tip; it counts once in both sticks."),
        "keeps": ("Keeps", "The face that the lap of the first stick runs along."),
        "butt": ("Butt", "Splayed: how high the abutments are."),
        "squint": ("Squint", "Under-squinted: how far the abutments lean."),
        "key": ("Key", "A slot through the middle for folding wedges."),
        "tongue": ("Tongue", "Bridled: how thick the tongues are."),
        "tongue_length": ("Tongue, length", "Bridled: how long they are."),
        "set_back": ("Tongue, set-back", f"Bridled: {_SETS} of the tongue."),
    },
    "lap": {
        "end": ("End", "The end that laps; empty for one that crosses."),
        "into_end": ("Other end", "The end of the other that laps too: a corner."),
        "side": ("Side", "The side of the other it comes in from: up for one that lies over it."),
        "share": ("Share", "How much of the common height is cut from the other; empty: half."),
        "flare": ("Flare", "A dovetail: narrower by so much on each side where it comes in."),
        "flare_reference": ("Flare, reference", "On the reference side alone."),
        "flare_far": ("Flare, far", "On the far side alone."),
        "cog": ("Cog", "How wide a cog is left standing in the notch."),
        "cog_set_back": ("Cog, set-back", "From the other's reference face; empty: the middle."),
    },
    CHAMFER: {
        "id": ("Id", "Names the chamfer."),
        "on": ("On", "The timbers that get it, with commas between."),
        "arrises": ("Arrises", "first-second is the reference arris, far-far the one across."),
        "leg": ("Leg", "Its size on each face."),
        "near_stop.shoulder": ("Near stop, from", "The end whose shoulder it is taken from."),
        "near_stop.distance": ("Near stop, distance", "From that shoulder."),
        "near_stop.level": ("Near stop, level", "In place of both, on an upright timber."),
        "far_stop.shoulder": ("Far stop, from", "The end whose shoulder it is taken from."),
        "far_stop.distance": ("Far stop, distance", "From that shoulder."),
        "far_stop.level": ("Far stop, level", "In place of both, on an upright timber."),
    },
    TIMBER: _TIMBER_WORDS,
    PROJECT: _PROJECT_WORDS,
    ANY: _ANY_WORDS,
}

GROUPS = {
    "at": "Its place",
    "incline": "A timber that rakes, in place of its place",
    "roll": "A level timber in a roof",
    "pegs": "Pegs",
    "shop": "The shop's practice",
    "near_stop": "The stop nearer the reference end",
    "far_stop": "The stop at the far end",
}
"""What stands over the fields of a part of a record."""

JOINS = {
    "tenon": "any end in any side it meets square",
    "diminished tenon": "a level end, let in deep at the underside and nothing at the top",
    "wedged half-dovetail": "a level end right through a post, held by a wedge",
    "joist pocket": "a joist dropped into the top of a level timber",
    "dovetail joist": "a joist's dovetailed end dropped into a socket",
    "soffit tenon": "a joist's low tenon under a sloping haunch, in a beam's side",
    "tusk tenon": "a joist's tenon in the middle of a beam, with a tusk under it",
    "brace": "one end of a raking timber in a post, beam or sill",
    "rafter seat": "a rafter notched over a level timber it crosses",
    "rafter tail": "a rafter's free end, cut plumb or level",
    "rafter ridge": "a rafter's head against a level timber's side",
    "rafter peak": "two rafters' heads without a ridge",
    "joggle": "a raking end let in to abut: a heel, a strut",
    "scarf": "two sticks of one line, end to end",
    "lap": "a timber let in from one side of another that it crosses or ends at",
    CHAMFER: "stopped chamfers on one timber or several alike",
}
"""What each family joins, for one who is choosing."""


def words_for(family: str, key: str) -> Words:
    """The words for a field of a family, by its dotted key."""
    for table in (family, ANY):
        found = _FAMILY_WORDS.get(table, {}).get(key)
        if found is not None:
            return Words(*found)
    raise KeyError(f"{family}: {key}")
