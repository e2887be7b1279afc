"""``python -m examples.glossary``: writes ``glossary.md``, the trade's words in every language, from the catalogues."""

from __future__ import annotations

from pathlib import Path

from tagger.i18n import LANGUAGES, Translator
from tagger.trade.glossary import TERMS

PAGE = Path(__file__).with_suffix(".md")


def text() -> str:
    """The page: a table with a row a word, its meaning in English last."""
    languages = [Translator(language) for language in LANGUAGES]
    lines = [
        "# The trade's words",
        "",
        "The page `/glossary` shows the same in the reader's language, with the meanings. Made by",
        "`python -m examples.glossary` from the catalogues (`tagger/i18n/*/glossary.ftl`).",
        "",
        f"| {' | '.join(LANGUAGES)} | what it means |",
        "|" + "---|" * (len(languages) + 1),
    ]
    for term in TERMS:
        words = " | ".join(t(f"glossary-term-{term}") for t in languages)
        lines.append(f"| {words} | {Translator('en')(f'glossary-means-{term}')} |")
    return "\n".join(lines) + "\n"


if __name__ == "__main__":
    PAGE.write_text(text(), encoding="utf-8")
