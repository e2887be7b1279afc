"""The sentences that the phone's scripts still look up by their English text."""

from __future__ import annotations

from functools import cache

from tagger import words


@cache
def messages(lang: str) -> dict[str, str]:
    """Every translated sentence of one language; empty for English."""
    return words.messages("tagger", lang, "tagger") | words.messages("api", lang, "api")
