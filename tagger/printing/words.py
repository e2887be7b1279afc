"""The words that stand on tags only; everything else a tag says comes from ``tagger.words``.

Their translations are ``locales/<language>/LC_MESSAGES/printing.po``.
"""

from __future__ import annotations

from functools import lru_cache

from tagger.words import Words, messages


class TagWords(Words):
    """Plain words in one language, the tag's own before the general ones."""

    def t(self, message: str, **values: object) -> str:
        text = messages("tagger", self.language, "printing").get(message)
        if text is None:
            return super().t(message, **values)
        return text.format(**values) if values else text


@lru_cache(maxsize=8)
def words_in(language: str) -> TagWords:
    return TagWords(language)
