"""Files and functions stay small enough to be read in one look."""

import ast
import functools
import math
import statistics
from collections.abc import Iterator, Sequence
from pathlib import PurePosixPath
from typing import NamedTuple

from tests.house.tree import ENGINE, ROOT, python, rooms

Function = ast.FunctionDef | ast.AsyncFunctionDef


class Sized(NamedTuple):
    """Something with a length, and where to find it."""

    lines: int
    where: str


def test_files_are_short() -> None:
    """Half of the engine's files fit in 150 lines and nine tenths in 350; no file passes 600."""
    engine = [_file(path) for path in rooms(*ENGINE)]
    assert statistics.median(size.lines for size in engine) <= 150, _longest(engine)
    assert _ninth_decile(engine) <= 350, _longest(engine)
    _none_over(600, [_file(path) for path in python()])


def test_screens_and_widgets_stay_thin() -> None:
    """A screen composes, binds and forwards, so 300 lines are enough for any file of the tui."""
    _none_over(300, [_file(path) for path in rooms("tui")])


def test_functions_are_short() -> None:
    """Half of the engine's functions fit in 10 lines and nine tenths in 30; none passes 60."""
    engine = _functions(rooms(*ENGINE))
    assert statistics.median(size.lines for size in engine) <= 10, _longest(engine)
    assert _ninth_decile(engine) <= 30, _longest(engine)
    _none_over(60, _functions(python()))


def test_the_engine_explains_itself() -> None:
    """Nine tenths of what the engine offers other rooms carries a docstring."""
    public = [found for path in rooms(*ENGINE) for found in _public(path)]
    bare = [where for where, docstring in public if not docstring]
    assert public
    assert len(bare) <= len(public) / 10, "\n".join(bare)


def test_the_ninth_decile_is_the_size_that_nine_tenths_keep_to() -> None:
    """Of ten things, nine are no longer than the ninth decile."""
    assert _ninth_decile([Sized(lines, "") for lines in range(1, 11)]) == 9
    assert _ninth_decile([Sized(7, "")]) == 7


def _file(path: PurePosixPath) -> Sized:
    return Sized((ROOT / path).read_text("utf-8").count("\n"), str(path))


@functools.cache
def _parsed(path: PurePosixPath) -> ast.Module:
    return ast.parse((ROOT / path).read_text("utf-8"))


def _functions(paths: Sequence[PurePosixPath]) -> list[Sized]:
    return [
        Sized((node.end_lineno or node.lineno) - node.lineno + 1, f"{path}:{node.lineno}")
        for path in paths
        for node in ast.walk(_parsed(path))
        if isinstance(node, Function)
    ]


def _public(path: PurePosixPath) -> Iterator[tuple[str, str | None]]:
    """The module and its public classes, functions and methods, each with its docstring."""
    inside: list[ast.Module | ast.ClassDef] = [_parsed(path)]
    yield str(path), ast.get_docstring(_parsed(path))
    while inside:
        for node in inside.pop().body:
            if isinstance(node, Function | ast.ClassDef) and not node.name.startswith("_"):
                yield f"{path}:{node.lineno}", ast.get_docstring(node)
                if isinstance(node, ast.ClassDef):
                    inside.append(node)


def _ninth_decile(sizes: Sequence[Sized]) -> int:
    return sorted(sizes)[math.ceil(len(sizes) * 9 / 10) - 1].lines


def _none_over(limit: int, sizes: Sequence[Sized]) -> None:
    long = [size for size in sizes if size.lines > limit]
    assert sizes
    assert not long, _longest(long)


def _longest(sizes: Sequence[Sized]) -> str:
    return "\n".join(f"{size.where}: {size.lines} lines" for size in sorted(sizes)[:-11:-1])
