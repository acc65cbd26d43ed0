from datetime import UTC, datetime

from hypothesis import given
from hypothesis import strategies as st

from benchmate.measure.length import Length
from benchmate.measure.reading import Unit
from benchmate.model.progress import (
    SIGN_WORDS,
    AsCut,
    Blemish,
    Measured,
    Progress,
    Signed,
    Tick,
    WrittenNote,
)
from benchmate.store.progress_file import progress_text, project_text
from benchmate.store.reading import parse_progress, parse_project
from tests.store.samples import CHAMFER, HEAD, JOINT, POST, SILL, STORE

NOTES = st.text(st.characters(exclude_categories=["C", "Z"]), max_size=20)
LENGTHS = st.integers(-(10**11), 10**11).map(Length)
SIZES = st.one_of(
    st.none(),
    st.integers(1, 3000).map(lambda count: Length.inches(0, count, 64)),
    st.integers(1, 100_000).map(Length.hundredths_mm),
)
HOOKS = st.text(
    st.characters(exclude_categories=["Cc", "Cs", "Zl", "Zp", "Cf"]), min_size=1, max_size=60
).filter(str.strip)
MOMENTS = st.datetimes(datetime(1970, 1, 2), datetime(9998, 12, 30), timezones=st.just(UTC))  # noqa: DTZ001 - bounds are given without
TICKS = st.builds(
    Tick,
    step=NOTES,
    marked=st.dictionaries(HOOKS, LENGTHS, max_size=3),
    on=NOTES,
    waste=NOTES,
    at=MOMENTS,
)
PLACES = st.from_regex(r"[a-c]{1,3}(-[a-c]{1,2})?", fullmatch=True)
TIMES = st.datetimes(datetime(1970, 1, 2), datetime(9998, 12, 30), timezones=st.just(UTC))  # noqa: DTZ001 - as above
TYPED = st.integers(1, 3000).map(lambda count: Length.inches(0, count, 64))
WORDS = st.text(st.characters(exclude_categories=["C", "Z"]), min_size=1, max_size=20)
WRITTEN = st.builds(WrittenNote, id=PLACES, about=NOTES, text=WORDS, at=TIMES)
BLEMISHES = st.builds(
    Blemish,
    id=PLACES,
    kind=st.sampled_from(("knot", "check", "wane", "other")),
    face=st.sampled_from(("first", "second", "far first", "far second")),
    from_end=TYPED | st.just(Length(0)),
    long=TYPED,
    from_arris=TYPED | st.just(Length(0)),
    wide=TYPED,
    deep=st.none() | TYPED,
    text=NOTES,
    at=TIMES,
)
PROGRESS = st.builds(
    Progress,
    timber=st.just("post-sw"),
    measured=st.dictionaries(PLACES, st.builds(Measured, first=SIZES, second=SIZES), max_size=3),
    as_cut=st.dictionaries(
        PLACES, st.builds(AsCut, thickness=SIZES, width=SIZES, length=SIZES), max_size=3
    ),
    ticks=st.lists(TICKS, max_size=4, unique_by=lambda tick: tick.step).map(tuple),
    signed=st.lists(
        st.builds(Signed, what=st.sampled_from(SIGN_WORDS), at=MOMENTS),
        unique_by=lambda signed: signed.what,
    ).map(tuple),
    notes=st.lists(WRITTEN, max_size=3, unique_by=lambda note: note.id).map(tuple),
    blemishes=st.lists(BLEMISHES, max_size=3, unique_by=lambda each: each.id).map(tuple),
)


@given(PROGRESS, st.sampled_from(Unit))
def test_progress_reads_back_as_it_was_written(progress: Progress, bare: Unit) -> None:
    """Law: write then read is the same record in either unit, and writing again the same text."""
    text = progress_text(progress)
    read = parse_progress(text.encode(), "post-sw", bare)
    assert read == progress
    assert progress_text(read) == text


def test_a_progress_file_can_be_read_by_a_framer() -> None:
    """A line on what it is, then what was measured, what was cut and each tick."""
    progress = Progress(
        timber="post-sw",
        measured={"foot-tenon": Measured(first=Length.inches(7, 1, 8))},
        as_cut={"foot-tenon": AsCut(thickness=Length.inches(2))},
        ticks=(
            Tick(
                step="foot-tenon/shoulder",
                marked={"squared foot": Length.inches(4)},
                on="all four faces",
                waste="Towards the foot.",
                at=datetime(2026, 5, 4, 9, 30, tzinfo=UTC),
            ),
            Tick(step="stick/label", at=datetime(2026, 5, 4, 10, 0, tzinfo=UTC)),
        ),
    )
    assert progress_text(progress) == (
        "# Ticks and real sizes of one timber. Correct a figure here and benchmate reads it; it\n"
        "# writes the file anew at every tick, without comments.\n"
        "format = 1\n"
        'timber = "post-sw"\n'
        "\n"
        "[measured.foot-tenon]\n"
        'first = "7-1/8 in"\n'
        "\n"
        "[as_cut.foot-tenon]\n"
        'thickness = "2 in"\n'
        "\n"
        "[[tick]]\n"
        'step = "foot-tenon/shoulder"\n'
        'on = "all four faces"\n'
        'waste = "Towards the foot."\n'
        "at = 2026-05-04 09:30:00+00:00\n"
        "\n"
        "[tick.marked]\n"
        '"squared foot" = "4 in"\n'
        "\n"
        "[[tick]]\n"
        'step = "stick/label"\n'
        "at = 2026-05-04 10:00:00+00:00\n"
    )


def test_a_project_reads_back_as_it_was_written() -> None:
    """All its tables, in the program's order, without what is as it would be unsaid."""
    text = (
        HEAD.replace("Apple store", "[[timber]] and [timber]")
        + 'demo = true\nunits = "mm"\ngraduation = "1 mm"\n[shop]\ntrim = "30"\n'
        + '[lengths]\ndeck = "40"\n'
        + '[levels]\n"floor top" = "joist depth + 20"\n[sections]\njoist = "150 x 50"\n'
    )
    project = parse_project((text + SILL + POST + JOINT).encode())
    written = project_text(project)
    assert parse_project(written.encode()) == project
    assert "length_is" not in written
    assert project_text(parse_project(written.encode())) == written


def test_work_is_grouped_by_table() -> None:
    """Joints before chamfers, each in their own order, however the project has them."""
    second = JOINT.replace("sw-foot", "sw-head").replace('end = "foot"', 'end = "head"')
    project = parse_project((STORE + second).encode())
    shuffled = project.model_copy(update={"works": tuple(reversed(project.works))})
    read = parse_project(project_text(shuffled).encode())
    assert [work.id for work in read.works] == ["sw-head", "sw-foot", "inside-chamfer"]


def test_a_bare_project_is_short() -> None:
    """A new frame without a timber yet."""
    assert project_text(parse_project(HEAD.encode())) == HEAD


def test_a_joint_keeps_its_pegs() -> None:
    """In a table of their own below it, which the next joint does not take for its own."""
    pegs = '[joint.pegs]\ncount = 1\nsize = "1"\nfrom_shoulder = "1-1/2"\nfrom_edge = "2"\n'
    head = JOINT.replace("sw-foot", "sw-head").replace('end = "foot"', 'end = "head"')
    project = parse_project((HEAD + SILL + POST + JOINT + pegs + head).encode())
    written = project_text(project)
    assert parse_project(written.encode()) == project
    assert written.count("[joint.pegs]") == 1
    assert "\ncount = 1\n" in written


def test_a_chamfer_keeps_its_stops() -> None:
    """Tables inside an entry go with it."""
    project = parse_project((HEAD + POST + CHAMFER).encode())
    assert parse_project(project_text(project).encode()) == project
