"""The sentences that the phone's scripts look up by their English text."""

from __future__ import annotations

import re
from functools import cache
from importlib import resources


@cache
def in_scripts() -> frozenset[str]:
    """t("...") or N_("...") in a JavaScript module, also inside template strings."""
    folder = resources.files("api").joinpath("static", "reader")
    scripts = (file.read_text(encoding="utf-8") for file in folder.iterdir() if file.name.endswith(".js"))
    return frozenset(text for script in scripts for text in re.findall(r'\b(?:t|N_)\("([^"]*)"', script))
