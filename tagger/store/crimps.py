"""Crimp cards that the shop keeps for itself, by hose and fitting series (shell).

A card for a hose's part number is that hose's own. One without a part number is for the standard alone: measured
crimps are held against it, and it approves nothing.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, field
from typing import Any

from sqlalchemy import select

from tagger import phrases
from tagger.errors import Problem, Speaks, StoreError
from tagger.messages import Message, length
from tagger.spec import AssemblySpec, Hose
from tagger.store.base import Part
from tagger.store.models import CrimpRow
from tagger.store.proving import CrimpMeasured
from tagger.trade import geometry
from tagger.trade.cutting import EndName
from tagger.trade.fittings import Fittings, stock_key
from tagger.trade.tables import tables

LENGTHS = ("skive_outside_mm", "skive_inside_mm", "insertion_depth_mm")


@dataclass(frozen=True)
class CrimpValue:
    """The crimp diameter in mm for one hose and shell, with its band and where it comes from.

    ``hose_part``: the manufacturer's part number of the hose, empty for any of the standard. A skive is the
    length in mm that the cover (outside) or the tube (inside) is taken off; None is not given.
    """

    hose_standard: str
    hose_dash: int
    shell: str
    diameter_mm: float
    minus_mm: float
    plus_mm: float
    source: str
    hose_part: str = ""
    die: str | None = None
    skive_outside_mm: float | None = None
    skive_inside_mm: float | None = None
    insertion_depth_mm: float | None = None
    machine_setting: str | None = None
    by: str | None = None
    id: int | None = field(default=None, compare=False)  # given when it is kept

    def measured(self, end: str, measured_mm: float) -> CrimpMeasured:
        """A measured crimp held against this value. Raises pydantic's ValidationError for no diameter."""
        return CrimpMeasured.model_validate(
            {
                "end": end,
                "measured_mm": round(measured_mm, 3),
                "shell": self.shell,
                "low_mm": self.diameter_mm - self.minus_mm,
                "high_mm": self.diameter_mm + self.plus_mm,
                "source": self.source,
            }
        )


@dataclass(frozen=True)
class EndCard:
    """The crimp card of one end, or ``why`` there is none; ``wrong``: what must not be overlooked."""

    end: EndName
    card: CrimpValue | None = None
    why: Message | None = None
    wrong: bool = False

    @property
    def approved(self) -> bool | None:
        """Whether hose and fitting series have a card of their own; None where they are not both known."""
        return True if self.card else False if self.wrong else None

    def lines(self) -> list[Message]:
        """The card line by line."""
        card = self.card
        if card is None:
            return []
        crimp = Message(
            "stock-card-crimp",
            end=phrases.part(self.end),
            diameter=card.diameter_mm,
            plus=card.plus_mm,
            minus=card.minus_mm,
            series=card.shell,
            source=card.source,
        )
        return [crimp, *_details(card)]

    def as_dict(self, t: Speaks | None = None) -> dict[str, Any]:
        """``{"approved", "card", "message"}`` as plain JSON values; texts in the language of ``t``."""
        said = None
        if self.why is not None:
            said = self.why.as_json() | {"text": t(self.why) if t else str(self.why)}
        card = {k: v for k, v in vars(self.card).items() if k not in ("by", "id")} if self.card else None
        return {"approved": self.approved, "card": card, "message": said}


def _details(card: CrimpValue) -> Iterator[Message]:
    if card.die is not None:
        yield Message("stock-card-die", die=card.die)
    if card.skive_outside_mm is not None:
        yield Message("stock-card-skive-outside", length=card.skive_outside_mm)
    if card.skive_inside_mm is not None:
        yield Message("stock-card-skive-inside", length=card.skive_inside_mm)
    if card.insertion_depth_mm is not None:
        yield Message("stock-card-insertion", length=card.insertion_depth_mm)
    if card.machine_setting is not None:
        yield Message("stock-card-setting", setting=card.machine_setting)


def inserted(fittings: Fittings, cards: Iterable[EndCard], spec: AssemblySpec) -> Fittings:
    """The fittings with the insertion depth of their end's crimp card, where their own row has none."""
    found = dict(fittings)
    for one in cards:
        key = stock_key(getattr(spec, one.end).fitting or "")
        fitting, depth = found.get(key), one.card.insertion_depth_mm if one.card else None
        if fitting is None or depth is None or fitting.insertion_depth_mm is not None:
            continue
        deeper = fitting.model_copy(update={"insertion_depth_mm": depth})
        if deeper.seat_to_butt_mm is None or deeper.seat_to_butt_mm > 0:
            found[key] = deeper
    return found


def _card(name: EndName, spec: AssemblySpec, own: Mapping[str, CrimpValue], fittings: Fittings) -> EndCard:
    number, part = getattr(spec, name).fitting, phrases.part(name)
    fitting = fittings.get(stock_key(number)) if number else None
    if fitting is None:
        return EndCard(name, why=Message("stock-card-no-fitting", end=part))
    if fitting.fitting_series is None:
        return EndCard(name, why=Message("stock-card-no-series", end=part, number=fitting.stock_number))
    if spec.hose.part is None:
        return EndCard(name, why=Message("stock-card-no-part", end=part))
    card = own.get(stock_key(fitting.fitting_series))
    if card is None:
        why = Message("stock-card-not-approved", end=part, hose=spec.hose.part, series=fitting.fitting_series)
        return EndCard(name, why=why, wrong=True)
    given, deep = card.insertion_depth_mm, fitting.insertion_depth_mm
    if given is not None and deep is not None and given != deep:
        why = Message(
            "stock-insertion-differs",
            end=part,
            number=fitting.stock_number,
            fitting=length(deep),
            card=length(given),
        )
        return EndCard(name, card, why, wrong=True)
    return EndCard(name, card)


class Crimps(Part):
    """The part of the store for crimp diameters."""

    def keep_crimp(self, value: CrimpValue, *, by: str | None = None) -> CrimpValue:
        """Keeps a crimp diameter; it holds from now on, earlier ones stay in the record.

        Raises StoreError for what no crimp can be: over the fitting it is wider than the hose's own bore,
        so 1.18 is a figure in inches.
        """
        figures = (value.diameter_mm, value.minus_mm, value.plus_mm)
        if not (1 <= value.diameter_mm <= 300 and 0 <= value.minus_mm <= 5 and 0 <= value.plus_mm <= 5):
            raise StoreError(Problem("diameter_mm", str(figures), Message("store-crimp-not-valid")))
        bore = geometry.bore_mm(Hose(standard=value.hose_standard, dash=value.hose_dash), tables())
        if value.diameter_mm <= bore:
            wrong = Message("store-crimp-below-bore", diameter=length(value.diameter_mm), bore=length(bore))
            raise StoreError(Problem("diameter_mm", value.diameter_mm, wrong))
        for name in LENGTHS:
            given = getattr(value, name)
            if given is not None and not 0 <= given <= 300:
                raise StoreError(Problem(name, given, Message("stock-card-length", most=300)))
        if not value.source.strip():
            raise StoreError(Problem("source", None, Message("store-crimp-source-missing")))
        if not value.shell.strip():
            raise StoreError(Problem("shell", None, Message("store-crimp-shell-missing")))
        return self._add_crimp(value, by)

    def _add_crimp(self, value: CrimpValue, by: str | None, *, dropped: bool = False) -> CrimpValue:
        """Adds a row, which holds from now on."""
        with self.writing() as session:
            row = CrimpRow(
                hose_standard=value.hose_standard,
                hose_dash=value.hose_dash,
                hose_part=" ".join(value.hose_part.split()),
                die=_or_none(value.die),
                machine_setting=_or_none(value.machine_setting),
                **{name: getattr(value, name) for name in LENGTHS},
                shell=value.shell.strip(),
                diameter_mm=value.diameter_mm,
                minus_mm=value.minus_mm,
                plus_mm=value.plus_mm,
                source=value.source.strip(),
                dropped=dropped,
                at=self.now(),
                by=by,
            )
            session.add(row)
            session.flush()
            return _crimp(row)

    def drop_crimp(self, id: int, *, by: str | None = None) -> CrimpValue:
        """Deletes a card; what was measured against it keeps its band. Raises StoreError where it does not hold."""
        with self.writing():
            found = self.crimp_card(id)
            self._add_crimp(found, by, dropped=True)
            return found

    def crimp_card(self, id: int) -> CrimpValue:
        """A card that holds, by its id. Raises StoreError."""
        found = next((value for value in self.crimps() if value.id == id), None)
        if found is None:
            raise StoreError(Problem("crimp", id, Message("store-crimp-not-found", crimp=id)))
        return found

    def keep_crimps(self, values: Mapping[int, CrimpValue], *, by: str | None = None) -> list[CrimpValue]:
        """Keeps all of them, or none. ``values``: by row, as the spreadsheet numbers it; problems name it ("row 3.source")."""
        with self.writing():
            found = []
            for row, value in values.items():
                try:
                    found.append(self.keep_crimp(value, by=by))
                except StoreError as error:
                    raise error.within(f"row {row}") from None
            return found

    def crimps(
        self,
        hose_standard: str | None = None,
        hose_dash: int | None = None,
        *,
        limit: int | None = None,
        after: int | None = None,
    ) -> list[CrimpValue]:
        """The crimp diameters that hold, by hose and shell; of one hose when asked.

        With ``limit`` so many of them, from the one that follows the one with the id ``after``.
        """
        query = select(CrimpRow).order_by(CrimpRow.id)
        if hose_standard is not None:
            query = query.where(CrimpRow.hose_standard == hose_standard)
        if hose_dash is not None:
            query = query.where(CrimpRow.hose_dash == hose_dash)
        with self.reading() as session:
            rows = {_key(row): row for row in session.scalars(query)}
            newest = {key: _crimp(row) for key, row in rows.items() if not row.dropped}
            last = session.get(CrimpRow, after) if after is not None else None
        if after is not None and last is None:
            raise StoreError(Problem("after", after, Message("store-crimp-not-found", crimp=after)))
        return [newest[key] for key in sorted(newest) if last is None or key > _key(last)][:limit]

    def crimps_of(self, hose_standard: str, hose_dash: int, part: str | None = None) -> list[CrimpValue]:
        """The cards that may be worked to for a hose, by shell: its part's own, else the standard's."""
        found: dict[str, CrimpValue] = {}
        for value in self.crimps(hose_standard, hose_dash):  # those without a part number come first
            if not value.hose_part or (part and stock_key(value.hose_part) == stock_key(part)):
                found[value.shell] = value
        return [found[shell] for shell in sorted(found)]

    def crimp_cards(self, spec: AssemblySpec, fittings: Fittings) -> tuple[EndCard, EndCard]:
        """The crimp card of each end: of the hose's own part and the series of the end's fitting."""
        own = {
            stock_key(value.shell): value
            for value in self.crimps_of(spec.hose.standard, spec.hose.dash, spec.hose.part)
            if value.hose_part
        }
        return _card("end_a", spec, own, fittings), _card("end_b", spec, own, fittings)

    def crimp(
        self, hose_standard: str, hose_dash: int, shell: str, *, part: str | None = None, field: str = "shell"
    ) -> CrimpValue:
        """The crimp diameter that holds for a hose and shell; ``field`` names the shell in an error.

        The card of the hose's own ``part`` holds before that of the standard; another part's never does.
        Raises StoreError where none is kept.
        """
        for value in self.crimps_of(hose_standard, hose_dash, part):
            if value.shell == shell:
                return value
        raise StoreError(Problem(field, shell, Message("store-crimp-none", shell=shell)))


def _or_none(text: str | None) -> str | None:
    return (text or "").strip() or None


def _key(row: CrimpRow) -> tuple[str, int, str, str]:
    return row.hose_standard, row.hose_dash, stock_key(row.hose_part), row.shell


def _crimp(row: CrimpRow) -> CrimpValue:
    return CrimpValue(
        row.hose_standard,
        row.hose_dash,
        row.shell,
        row.diameter_mm,
        row.minus_mm,
        row.plus_mm,
        row.source,
        row.hose_part,
        row.die,
        row.skive_outside_mm,
        row.skive_inside_mm,
        row.insertion_depth_mm,
        row.machine_setting,
        row.by,
        row.id,
    )
