"""The words that stand on tags only; everything else a tag says comes from ``tagger.words``.

Their translations are ``locales/<language>/LC_MESSAGES/printing.po``.
"""

from __future__ import annotations

from functools import cache, lru_cache
from importlib import resources

from babel.messages.pofile import read_po

from tagger.words import Words


class TagWords(Words):
    """Plain words in one language, the tag's own before the general ones."""

    def t(self, message: str, **values: object) -> str:
        text = own(self.language).get(message)
        if text is None:
            return super().t(message, **values)
        return text.format(**values) if values else text


@cache
def own(language: str) -> dict[str, str]:
    """The tag's own messages in one language; English needs none."""
    file = resources.files("tagger").joinpath(f"locales/{language}/LC_MESSAGES/printing.po")
    if not file.is_file():
        return {}
    with file.open("rb") as source:
        return {str(m.id): str(m.string) for m in read_po(source) if m.id and m.string}


@lru_cache(maxsize=8)
def words_in(language: str) -> TagWords:
    return TagWords(language)
