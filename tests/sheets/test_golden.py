"""The sheets byte by byte, to be read in the diff."""

from pathlib import Path

from tests.sheets.golden_files import GOLDEN, SHEETS, made


def test_the_sheets_are_as_they_were(tmp_path: Path) -> None:
    """Pages, texts and tables; `python -m tests.sheets.golden_files` writes them anew."""
    now = made(tmp_path)
    kept = {path.name: path.read_bytes() for path in GOLDEN.iterdir()}
    assert len(now) == 3 * len(SHEETS)
    assert sorted(now) == sorted(kept)
    changed = [name for name in now if now[name] != kept[name]]
    assert not changed
