"""The texts of an assembly's record: what a shop notes beside the spec, such as whose it is.

This is their only list. Each is optional text of at most ``MAX_LENGTH`` characters; it goes into the
database and never into the symbol. Registering, finding, lists, exports, the command line, the
bench's forms, the JSON API and the fields of label templates all read the list here; what else a
new one needs is its column in ``store/models.py`` with a migration, and its caption
(``words-record-<name>``) in every language.
"""

from __future__ import annotations

from dataclasses import dataclass, fields

MAX_LENGTH = 120


@dataclass(frozen=True, kw_only=True)
class Record:
    """Base class of whatever carries these texts; None: not given."""

    customer: str | None = None
    machine: str | None = None
    position: str | None = None  # where on the machine
    reason: str | None = None  # why it was built although a source speaks of a danger


RECORD_FIELDS = tuple(field.name for field in fields(Record))


def recorded(holder: object) -> dict[str, str | None]:
    """The texts of anything that has them as attributes, by name."""
    return {name: getattr(holder, name) for name in RECORD_FIELDS}
