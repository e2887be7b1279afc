"""What a scanned or typed text is: a tag, a lot something was built from before, or not known here."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Literal

from api.shared.known_tag import State, compared
from tagger import phrases
from tagger.code import link, payload
from tagger.code import number as tag_number
from tagger.errors import Problem, StoreError, TaggerError
from tagger.messages import Message
from tagger.signing import NONE, Keys, Signed, state_of
from tagger.spec import AssemblySpec, Hose
from tagger.store import Assembly, Filter, Store, Withdrawal
from tagger.store.lots import named, one_lot
from tagger.trade import own_hoses
from tagger.trade.fittings import Fitting
from tagger.trade.one_hose import one_hose
from tagger.trade.own_hoses import OwnHose
from tagger.trade.tables import tables


@dataclass(frozen=True)
class Scanned:
    """``text`` is what the label says; of a lot, ``spec`` is that of the newest assembly built from it.

    ``end`` names the end that carries a fitting lot there; ``record`` is a tag's own, where it is
    registered here; ``withdrawals`` are those that hold for the tag or the lot. ``several``: the lot is
    known as more than one hose, so it does not say which. ``fitting`` is the shop's, of a stock
    number. ``hoses`` are the shop's own of a part number, one a size. ``digits``: how those on a tag
    stand to its record; ``signed``: how they stand to the shop's keys.
    """

    kind: Literal["tag", "fitting", "hose", "hose_lot", "fitting_lot", "unknown"]
    text: str
    say: Message
    number: str | None = None
    spec: AssemblySpec | None = None
    end: Literal["end_a", "end_b"] | None = None
    record: Assembly | None = None
    withdrawals: tuple[Withdrawal, ...] = ()
    several: bool = False
    fitting: Fitting | None = None
    hoses: tuple[OwnHose, ...] = ()
    digits: State | None = None
    signed: Signed | None = None

    @property
    def doubtful(self) -> bool:
        """A tag that is not registered here, says something else than its record, or whose signature does not fit."""
        if self.kind != "tag":
            return False
        broken = self.signed is not None and self.signed.broken
        return self.record is None or self.digits in ("differ", "damaged") or broken


def look_up(store: Store, text: str, keys: Keys = NONE) -> Scanned:
    """What the text is, and what is known of it; a tag first, then a stock number, a lot, a hose's part number.

    A tag's signature is held against ``keys``.
    """
    text = _label(text)
    if not text:
        return Scanned("unknown", text, Message("papers-scanned-nothing"))
    try:
        spec, number = spec_on(store, text)
    except TaggerError:
        return _fitting(store, text) or _lot_or_hose(store, text)
    record = store.assembly(number) if store.known(number) else None
    held = record.withdrawals if record else ()
    printed = link.parse(text).digits
    digits, _ = compared(record, printed)
    signed = signed_state(keys, number, printed)
    say = _with_signature(_tag(tag_number.format(number), record is not None, digits, held), signed)
    return Scanned(
        "tag",
        text,
        say,
        number,
        spec.to_build_again(),
        record=record,
        withdrawals=held,
        digits=digits,
        signed=signed,
    )


def signed_state(keys: Keys, number: str, digits: str | None) -> Signed | None:
    """How a tag's digits stand to the shop's keys; None without digits, with damaged ones, or where nothing is said."""
    try:
        built_on = payload.decode(digits).built_on if digits else None
    except TaggerError:
        return None
    return state_of(keys, number, digits, built_on)


def _with_signature(say: Message, signed: Signed | None) -> Message:
    if signed is None:
        return say
    said, *why = signed.lines()
    if why:
        return Message("papers-scanned-signature-broken", said=say, signature=said, why=why[0])
    return Message("papers-scanned-signature", said=say, signature=said)


def _tag(number: str, ours: bool, digits: State | None, held: Sequence[Withdrawal]) -> Message:
    """What is said of a tag: whose word its spec is, what its digits say beside the record, and a withdrawal."""
    if not ours:
        return Message("papers-scanned-tag-unknown", number=number)
    if digits in ("differ", "damaged"):
        if held:
            return Message(f"papers-scanned-tag-{digits}-withdrawn", number=number, reasons=_reasons(held))
        return Message(f"papers-scanned-tag-{digits}", number=number)
    if held:
        return Message("papers-scanned-tag-withdrawn", number=number, reasons=_reasons(held))
    return Message("papers-scanned-tag", number=number)


def spec_on(store: Store, text: str) -> tuple[AssemblySpec, str]:
    """The spec of a scanned or typed tag, of its record, else of its own digits; and its number.

    Raises LinkError, NumberError, PayloadError; StoreError for a number alone that is not registered.
    """
    scanned = link.parse(text)
    if store.known(scanned.number):
        return store.assembly(scanned.number).spec, scanned.number
    if scanned.digits:
        return payload.decode(scanned.digits).spec, scanned.number
    shown = tag_number.format(scanned.number)
    raise StoreError(Problem("tag", shown, Message("guard-tag-without-spec", number=shown)))


def _label(text: str) -> str:
    """What a scanner sends for a label, without the mark of the symbology and of GS1's lot (AI 10)."""
    text = text.strip()
    if text.startswith("]") and len(text) > 3:
        text = text[3:]
        text = text[2:] if text.startswith("10") else text
    return text.removeprefix("(10)")


def _fitting(store: Store, text: str) -> Scanned | None:
    for fitting in store.fittings_named([text]).values():
        say = Message("papers-scanned-fitting", number=fitting.stock_number, end=phrases.end(fitting.end))
        return Scanned("fitting", text, say, fitting=fitting)
    return None


def _lot_or_hose(store: Store, text: str) -> Scanned:
    """A lot that is known or withdrawn is told before a part number that is spelled alike."""
    lot = _lot(store, text)
    if lot.kind != "unknown" or lot.withdrawals:
        return lot
    return _hose(store, text) or lot


def _hose(store: Store, text: str) -> Scanned | None:
    found = tuple(store.own_hoses_of(text))
    if not found:
        return None
    say = Message("papers-scanned-hose", part=found[0].part, hoses=tuple(map(own_hoses.named, found)))
    return Scanned("hose", text, say, several=len(found) > 1, hoses=found)


_LOOKED_AT = 20  # the newest may have been corrected to another lot since


def _lot(store: Store, text: str) -> Scanned:
    """A lot says what it is where something has been built from it before."""
    held = tuple(store.withdrawn_lots(text)) if text else ()
    for assembly in store.find(Filter(lot=text), limit=_LOOKED_AT).assemblies if text else ():
        spec = assembly.spec
        if one_lot(spec.hose.lot, text):
            hoses = store.hoses_of_lot(text)
            say = _hose_lot(text, hoses, held)
            return Scanned("hose_lot", text, say, spec=spec, several=_several(hoses), withdrawals=held)
        if not one_lot(spec.end_a.lot, text) and not one_lot(spec.end_b.lot, text):  # corrected since
            continue
        end: Literal["end_a", "end_b"] = "end_a" if one_lot(spec.end_a.lot, text) else "end_b"
        say = _fitting_lot(text, held)
        return Scanned("fitting_lot", text, say, spec=spec, end=end, withdrawals=held)
    return Scanned("unknown", text, _first_use(text, held), withdrawals=held)


def _hose_lot(lot: str, hoses: Sequence[Hose], held: Sequence[Withdrawal]) -> Message:
    what = tuple(map(named, hoses))
    if held:
        return Message("papers-scanned-hose-lot-withdrawn", lot=lot, hoses=what, reasons=_reasons(held))
    return Message("papers-scanned-hose-lot", lot=lot, hoses=what)


def _several(hoses: Sequence[Hose]) -> bool:
    return any(not one_hose(hoses[0], other, tables()) for other in hoses[1:])


def _fitting_lot(lot: str, held: Sequence[Withdrawal]) -> Message:
    if held:
        return Message("papers-scanned-fitting-lot-withdrawn", lot=lot, reasons=_reasons(held))
    return Message("papers-scanned-fitting-lot", lot=lot)


def _first_use(text: str, held: Sequence[Withdrawal]) -> Message:
    if held:
        return Message("papers-scanned-unknown-withdrawn", text=text, reasons=_reasons(held))
    return Message("papers-scanned-unknown", text=text)


def _reasons(held: Sequence[Withdrawal]) -> str:
    """The reasons as they were typed in."""
    return "; ".join(withdrawal.reason for withdrawal in held)
