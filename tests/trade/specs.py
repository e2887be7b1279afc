"""Specs for the trade's tests: the contract's example, and ways to vary it."""

from __future__ import annotations

import copy
from typing import Any

from tagger.spec import AssemblySpec, Connection, End, Form, Sizing
from tagger.trade.tables import tables
from tests.test_spec import EXAMPLE


def example(**changes: Any) -> AssemblySpec:
    """The contract's example; ``hose__dash=16`` changes the hose's dash, None takes a key away."""
    data = copy.deepcopy(EXAMPLE)
    for path, value in changes.items():
        place, keys = data, path.split("__")
        for key in keys[:-1]:
            place = place[key]
        if value is None:
            place.pop(keys[-1], None)
        else:
            place[keys[-1]] = value
    return AssemblySpec.read(data)


def end(connection: str, size: str | int, form: str = "female_swivel", **more: Any) -> dict[str, Any]:
    """One end as JSON values."""
    terms = {Sizing.DASH: "dash", Sizing.WORDS: "description"}
    name = terms.get(Connection(connection).sized_by, "size")
    return {"connection": connection, name: int(size) if name == "dash" else str(size), "form": form, **more}


def an_end(connection: Connection, size: str, form: str, **more: Any) -> End:
    return End.model_validate(end(connection, size, form, **more))


def a_size(family: Connection) -> str:
    """A middle size of the family; a description where it has none."""
    sizes = tables().sizes(family)
    return sizes[2] if sizes else "Block M20x1.5"


def both(standard: str, dash: int, ends: dict[str, Any], **more: Any) -> AssemblySpec:
    """A straight assembly with the same end twice."""
    return AssemblySpec.read(
        {
            "hose": {"standard": standard, "dash": dash},
            "end_a": ends,
            "end_b": ends,
            "length_mm": 1000,
            **more,
        }
    )


FORMS = tuple(Form)
