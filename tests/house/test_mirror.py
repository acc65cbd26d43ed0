"""Each module has its tests where a reader looks for them, and package roots stay empty."""

import ast
from pathlib import PurePosixPath

from tests.house.tree import ENGINE, ROOMS, ROOT, rooms

CATALOGUE = PurePosixPath("benchmate/joinery/__init__.py")


def test_every_module_has_its_tests() -> None:
    """`benchmate/<room>/<module>.py` is tested in `tests/<room>/test_<module>.py`."""
    modules = [path for path in rooms(*ENGINE, "store") if path.name != "__init__.py"]
    gaps = [str(path) for path in modules if not (ROOT / _mirror(path)).is_file()]
    assert modules
    assert not gaps, "\n".join(gaps)


def test_package_roots_import_nothing() -> None:
    """A root is a docstring, so that reaching one module never loads its neighbours."""
    roots = [path for path in rooms(*ROOMS) if path.name == "__init__.py"]
    full = [str(path) for path in roots if path != CATALOGUE and not _is_bare(path)]
    assert {path.parts[1] for path in roots} == set(ROOMS)
    assert not full, "\n".join(full)


def test_the_package_itself_is_a_docstring_and_a_version() -> None:
    """`import benchmate` costs nothing and tells the version."""
    docstring, version = _statements(PurePosixPath("benchmate/__init__.py"))
    assert isinstance(docstring, ast.Expr)
    assert isinstance(version, ast.Assign)
    assert ast.unparse(version.targets[0]) == "__version__"


def test_the_catalogue_imports_every_family() -> None:
    """The one root that may import reaches each family beside it, so that none is forgotten."""
    beside = {path.parts[2].removesuffix(".py") for path in rooms("joinery") if path != CATALOGUE}
    imported = [
        f"{node.module}.{name.name}".split(".")
        for node in _statements(CATALOGUE)
        if isinstance(node, ast.ImportFrom)
        for name in node.names
    ]
    assert {parts[2] for parts in imported if parts[:2] == ["benchmate", "joinery"]} == beside


def _mirror(path: PurePosixPath) -> PurePosixPath:
    return PurePosixPath("tests", *path.parts[1:-1], f"test_{path.name}")


def _statements(path: PurePosixPath) -> list[ast.stmt]:
    return ast.parse((ROOT / path).read_text("utf-8")).body


def _is_bare(path: PurePosixPath) -> bool:
    return [type(statement) for statement in _statements(path)] == [ast.Expr]
