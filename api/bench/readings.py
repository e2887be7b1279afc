"""What the forms of a record and of a run say of proving: a proof test, and crimps as measured."""

from __future__ import annotations

from typing import Any

from pydantic import ValidationError

from tagger.errors import Problem, StoreError, TaggerError, problems_of
from tagger.messages import Message
from tagger.store import Assembly, CrimpMeasured, ProofTest, Store
from tagger.units import read_length_mm


def texts_of(form: Any) -> dict[str, str]:
    return {name: str(value).strip() for name, value in form.multi_items() if name != "csrf"}


def proof_test(given: dict[str, str], by: str) -> ProofTest:
    """The test that the form says. Raises TaggerError naming every field that is wrong."""
    if given.get("result") not in ("passed", "failed"):
        raise StoreError(Problem("result", None, Message("bench-no-result")))
    plain = ("pressure_bar", "hold_s", "medium", "note", "lower_source", "rating_source", "gauge", "method")
    values: dict[str, Any] = {name: given.get(name, "") for name in plain}
    values |= {name: given.get(name) or None for name in ("rating_bar", "gauge_valid_until")}
    values["tester"] = given.get("tester") or by
    values["rating_confirmed"] = bool(given.get("rating_confirmed"))
    try:
        return ProofTest.model_validate(values | {"passed": given["result"] == "passed"})
    except ValidationError as error:
        raise StoreError(problems_of(error)) from None


def crimps_of(known: Assembly, given: dict[str, str], store: Store, of: str = "") -> list[CrimpMeasured]:
    """The crimps of the ends whose diameter was entered; ``of`` ends the names of the fields of one of several.

    Each is held against the diameter that the shop keeps for that hose and shell. Raises StoreError naming
    every field that is wrong.
    """
    found, problems = list[CrimpMeasured](), list[Problem]()
    for end in ("a", "b"):
        if given.get(f"crimp_{end}{of}"):
            try:
                found.append(_crimp_of(end, known, given, store, of))
            except TaggerError as error:
                problems += error.problems
    if problems:
        raise StoreError(problems)
    return found


def _crimp_of(end: str, known: Assembly, given: dict[str, str], store: Store, of: str) -> CrimpMeasured:
    field, shell, hose = f"crimp_{end}{of}", f"shell_{end}", known.spec.hose
    value = store.crimp(
        hose.standard, hose.dash, given.get(shell, ""), part=hose.part, field=field if of else shell
    )
    try:
        return value.measured(end, read_length_mm(given[field]))
    except ValidationError as error:
        raise StoreError(Problem(field, given[field], p.message) for p in problems_of(error)) from None
    except TaggerError as error:
        raise error.within(field) from None
