"""The README's picture shows the program as it is."""

import re

from tests.pictures.__main__ import PICTURE, draw, words_in


async def test_the_picture_says_what_the_first_screen_says() -> None:
    """Word for word; run `python -m tests.pictures` when the screen has changed."""
    kept, fresh = (
        re.sub(r"^.*?</style>", "", svg, flags=re.DOTALL)
        for svg in (
            PICTURE.read_text(encoding="utf-8"),
            await draw(),
        )
    )
    assert words_in(kept) == words_in(fresh)
