"""What a scanned or typed text is: a tag, a lot something was built from before, or not known here."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Literal

from tagger.code import link, payload
from tagger.code import number as tag_number
from tagger.errors import Problem, StoreError, TaggerError
from tagger.spec import AssemblySpec, Hose
from tagger.store import Assembly, Filter, Store, Withdrawal
from tagger.store.withdrawals import lot_key


@dataclass(frozen=True)
class Scanned:
    """``text`` is what the label says; of a lot, ``spec`` is that of the newest assembly built from it.

    ``end`` names the end that carries a fitting lot there; ``record`` is a tag's own, where it is
    registered here; ``withdrawals`` are those that hold for the tag or the lot.
    """

    kind: Literal["tag", "hose_lot", "fitting_lot", "unknown"]
    text: str
    say: str
    number: str | None = None
    spec: AssemblySpec | None = None
    end: Literal["end_a", "end_b"] | None = None
    record: Assembly | None = None
    withdrawals: tuple[Withdrawal, ...] = ()


def look_up(store: Store, text: str) -> Scanned:
    """What the text is, and what is known of it; a tag first, then a lot."""
    text = _label(text)
    try:
        spec, number = spec_on(store, text)
    except TaggerError:
        return _lot(store, text)
    record = store.assembly(number) if store.known(number) else None
    say = f"Spec taken from tag {tag_number.format(number)}."
    held = record.withdrawals if record else ()
    return Scanned(
        "tag", text, say + _warning(held), number, without_lots(spec), record=record, withdrawals=held
    )


def spec_on(store: Store, text: str) -> tuple[AssemblySpec, str]:
    """The spec of a scanned or typed tag, of its record, else of its own digits; and its number.

    Raises LinkError, NumberError, PayloadError; StoreError for a number alone that is not registered.
    """
    scanned = link.parse(text)
    if store.known(scanned.number):
        return store.assembly(scanned.number).spec, scanned.number
    if scanned.digits:
        return payload.decode(scanned.digits).spec, scanned.number
    raise StoreError(
        Problem("tag", tag_number.format(scanned.number), "is not registered here, and the number alone holds no spec",
                "Scan the QR code on the tag: it holds the whole spec.")
    )  # fmt: skip


def without_lots(spec: AssemblySpec) -> AssemblySpec:
    """The next hose comes from other reels and bins: their lots must be given again."""
    return spec.carried().model_copy(update={"note": spec.note})


def _label(text: str) -> str:
    """What a scanner sends for a label, without the mark of the symbology and of GS1's lot (AI 10)."""
    text = text.strip()
    if text.startswith("]") and len(text) > 3:
        text = text[3:]
        text = text[2:] if text.startswith("10") else text
    return text.removeprefix("(10)")


def _lot(store: Store, text: str) -> Scanned:
    """A lot says what it is where something has been built from it before."""
    held, wanted = tuple(store.withdrawn_lots(text)) if text else (), lot_key(text)
    warning = _warning(held)
    for assembly in store.find(Filter(lot=text), limit=1).assemblies if text else ():
        spec = assembly.spec
        if lot_key(spec.hose.lot) == wanted:
            say = f"Hose lot {text}: {_hose(spec.hose)}.{warning}"
            return Scanned("hose_lot", text, say, spec=spec, withdrawals=held)
        end: Literal["end_a", "end_b"] = "end_a" if lot_key(spec.end_a.lot) == wanted else "end_b"
        return Scanned(
            "fitting_lot", text, f"Fitting lot {text}.{warning}", spec=spec, end=end, withdrawals=held
        )
    say = f"{text}: nothing has been built from this lot before.{warning}"
    return Scanned("unknown", text, say, withdrawals=held)


def _warning(held: Sequence[Withdrawal]) -> str:
    return f" WITHDRAWN, do not use it: {'; '.join(w.reason for w in held)}." if held else ""


def _hose(hose: Hose) -> str:
    return f"{hose.standard} -{hose.dash}"
