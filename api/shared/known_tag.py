"""What is known of one tag: the shop's record where there is one, else what the tag itself says."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import date
from typing import Final, Literal

from tagger import rated
from tagger.code import number as tag_number
from tagger.code import payload
from tagger.errors import PayloadError, Problem, StoreError, TaggerError
from tagger.messages import Message
from tagger.signing import NONE, Keys, Signed, state_of
from tagger.spec import TagContent
from tagger.store import Assembly, Store
from tagger.trade import assess, given
from tagger.trade.present import Overrated, lowered, overrated, says_no_more
from tagger.trade.results import Assessment
from tagger.trade.tables import Tables

State = Literal["same", "differ", "damaged"]
DAMAGED: Final = "damaged"


@dataclass(frozen=True)
class Tag:
    """What is known about one tag.

    ``content`` is what the page shows: the record's where there is one, else what the digits
    say; its pressure is the lower of that and today's rating. ``printed`` is what the digits say where that was readable; ``digits_state`` is
    ``None``, ``"same"``, ``"differ"`` or ``"damaged"``.
    """

    number: str
    digits: str | None
    content: TagContent
    record: Assembly | None = None
    printed: TagContent | None = None
    digits_state: State | None = None
    overrated: Overrated | None = None  # the content has the lower pressure of today
    fitted_on: date | None = None  # the earliest day that the shop recorded or agreed to
    signed: Signed | None = None  # how the digits stand to the shop's keys; None: nothing is said of it
    held: bool = (
        False  # the shop has not released it: a crimp or a proof test stands against it, or one is missing
    )

    @property
    def path(self) -> str:
        return f"/T/{self.number}" + (f"/{self.digits}" if self.digits else "")

    @property
    def whole_path(self) -> str:
        """The same with the record's digits where the tag was asked for by its number alone."""
        digits = self.digits or (self.record.digits if self.record else None)
        return f"/T/{self.number}" + (f"/{digits}" if digits else "")

    @property
    def withdrawn(self) -> bool:
        return bool(self.record and self.record.withdrawn)

    @property
    def void(self) -> bool:
        return bool(self.record and self.record.void)


def find(store: Store, typed: str, digits: str | None, tables: Tables, keys: Keys = NONE) -> Tag:
    """What is known about a tag: the record where there is one, else what the digits say.

    The pressure is held against ``tables``: the lower one is shown. The digits are held against ``keys``.

    Raises NumberError for a slip in the number, PayloadError for damaged digits that no record
    makes up for, StoreError where there is neither a record nor digits.
    """
    found = _find(store, typed, digits)
    high = overrated(found.content, tables, found.record.spec if found.record else None)
    number = [found.number] if found.record else []
    held = bool(store.unreleased(number) or store.kept_back(number))
    return replace(
        found,
        content=lowered(found.content, high),
        overrated=high,
        held=held,
        signed=state_of(keys, found.number, digits, found.printed.built_on if found.printed else None),
        fitted_on=store.fitted_on(number).get(found.number),
    )


def _find(store: Store, typed: str, digits: str | None) -> Tag:
    number = tag_number.validate(typed)
    record = store.assembly(number) if store.known(number) else None
    state, printed = compared(record, digits)
    if digits is None:
        if record is None:
            shown = tag_number.format(number)
            raise StoreError(Problem("number", shown, Message("scan-unknown_tag", number=shown)))
        return Tag(number, None, record.content, record)
    if record is None:
        return Tag(number, digits, printed or payload.decode(digits), None, printed)
    told = record.digits if state == DAMAGED else digits
    return Tag(number, told, record.content, record, printed, state)


def compared(record: Assembly | None, digits: str | None) -> tuple[State | None, TagContent | None]:
    """How a tag's digits stand to the record, and what they say where they can be read.

    The state is None for a tag without digits, and for one that is not registered here.
    """
    if digits is None:
        return None, None
    try:
        printed = payload.decode(digits)
    except PayloadError:
        return (DAMAGED if record else None), None
    if record is None:
        return None, printed
    return ("same" if says_no_more(printed, record.content) else "differ"), printed


def assessment_of(tag: Tag, tables: Tables) -> Assessment | None:
    """The record's assessment, or today's where that rates it lower; for a tag of another shop, what our
    tables say of its spec."""
    if tag.overrated:
        return tag.overrated.now
    if tag.record:
        return tag.record.assessment
    try:
        return assess(given.as_registered(tag.content.spec, tables), tables, made=True)
    except TaggerError:
        return None


def doubts(tag: Tag) -> tuple[Message, ...]:
    """Why this hose assembly is not to be installed yet: a page's guide then opens only by a deliberate act.

    A pressure that is known in part ("at most 190 bar") is no such reason.
    """
    content = tag.content
    found: list[Message] = []
    if tag.digits_state in ("differ", DAMAGED):
        found.append(Message(f"scan-fit-doubt-{tag.digits_state}"))
    if tag.signed and tag.signed.broken:
        found.append(tag.signed.message())
    if tag.overrated and tag.record is None:
        found.append(Message("scan-fit-doubt-claims"))
    found += rated.dangers(content)
    if content.working_pressure_bar is None and content.at_most_bar is None:
        found.append(Message("scan-pressure-not_known"))
    return tuple(found)
