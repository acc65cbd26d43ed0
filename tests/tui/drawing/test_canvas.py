"""The canvas: a sheet that takes what falls on it and gives back runs of one role."""

from benchmate.tui.drawing.canvas import Canvas, Drawing, Role


def test_a_blank_sheet_has_its_size() -> None:
    """A fresh drawing is spaces, as wide and as high as asked; never less than nothing."""
    assert Canvas(4, 2).drawing().text == "    \n    "
    assert Canvas(-1, -3).drawing() == Drawing(())


def test_neighbours_of_one_role_form_one_run() -> None:
    """A row is given in as few runs as its roles allow."""
    canvas = Canvas(6, 1)
    canvas.write((0, 1), "ab", Role.LABEL)
    canvas.put([(0, 3)], "c", Role.LABEL)
    canvas.put([(0, 4)], "d", Role.LINE)
    expected = ((" ", Role.BLANK), ("abc", Role.LABEL), ("d", Role.LINE), (" ", Role.BLANK))
    assert canvas.drawing().rows == (expected,)


def test_what_falls_outside_is_left_out() -> None:
    """Writing past an edge neither fails nor wraps round to the other side."""
    canvas = Canvas(3, 2)
    canvas.write((0, -1), "xyz", Role.LABEL)
    canvas.write((1, 2), "pq", Role.LABEL)
    canvas.put([(-1, 0), (5, 0)], "!", Role.LABEL)
    assert canvas.drawing().text == "yz \n  p"
    assert canvas.role((-1, 0)) is None


def test_the_widest_run_of_roles_is_found() -> None:
    """The first of the widest; nothing where no cell fits."""
    canvas = Canvas(8, 1)
    canvas.write((0, 0), "----|---", Role.OUTLINE)
    canvas.put([(0, 4)], "|", Role.LINE)
    assert canvas.widest(0, Role.OUTLINE) == range(4)
    assert canvas.widest(0, Role.OUTLINE, Role.LINE) == range(8)
    assert not canvas.widest(0, Role.WASTE)


def test_a_stretch_of_cells_is_tested_for_its_roles() -> None:
    """All must match, and cells off the sheet match nothing."""
    canvas = Canvas(3, 1)
    assert canvas.all_of((0, 0), 3, Role.BLANK)
    assert not canvas.all_of((0, 1), 3, Role.BLANK)
    canvas.put([(0, 1)], "#", Role.WASTE)
    assert not canvas.all_of((0, 0), 3, Role.BLANK)
