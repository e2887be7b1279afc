"""Refusals as people read them: where, what was entered, why, and what to do."""

from __future__ import annotations

import re
from datetime import date
from typing import Final

from tagger.errors import Problem, TaggerError
from tagger.i18n import Translator
from tagger.messages import Message

_CAPTIONS: Final = {
    "file": Message("cli-file"),
    "heading": Message("cli-heading"),
    "number": Message("cli-number"),
    "spec": Message("cli-spec"),
    "link": Message("cli-link"),
    "digits": Message("cli-digits"),
    "image": Message("cli-image"),
    "template": Message("cli-template"),
    "printer": Message("cli-printer"),
    "tag": Message("cli-tag"),
    "list": Message("cli-list"),
}
"""Captions of what is not a field of a file; a file's fields keep the names they have in it."""
_PLACE: Final = re.compile(r"(?:row (?P<row>\d+))?\.?(?:column (?P<column>\d+)|cell (?P<cell>[A-Z]+\d+))?")
_LONGEST: Final = 60  # characters of a value that are shown


def refusal_text(error: TaggerError, t: Translator) -> str:
    """Every problem of a refusal, one a line."""
    return "\n".join(_line(problem, t) for problem in error.problems)


def _line(problem: Problem, t: Translator) -> str:
    place, why = _place(problem.field, t), _ended(t(problem.message))
    said = f"{why} {t.mend(problem.message)}".rstrip()
    value = problem.value.isoformat() if isinstance(problem.value, date) else problem.value
    if value is None or str(value) in why:
        return t("cli-problem", place=place, said=said)
    return t("cli-problem-value", place=place, said=said, value=str(value)[:_LONGEST])


def _ended(sentence: str) -> str:
    """With a full stop, which the words of a library or a printer may lack."""
    return sentence if sentence.endswith((".", "!", "?")) else f"{sentence}."


def _place(field: str, t: Translator) -> str:
    """The field as a person looks for it: "row 4, end_a.size" of a list, else its name or caption."""
    if (caption := _CAPTIONS.get(field)) is not None:
        return t(caption)
    found = _PLACE.match(field)
    if found is None or not found[0]:
        return field
    row, rest = found["row"], field[found.end() :].lstrip(".")
    if found["cell"]:
        cell = found["cell"]
        return t("cli-row-cell", row=row, cell=cell) if row else t("cli-cell", cell=cell)
    if found["column"]:
        return t("cli-column", column=found["column"])
    return t("cli-row-field", row=row, field=rest) if rest else t("cli-row", row=row)
