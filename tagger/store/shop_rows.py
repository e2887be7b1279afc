"""The shop's own rows of the trade's tables: what a manufacturer said, kept once for every later assembly.

A row that is kept anew takes the place of the one with the same key, and one can be withdrawn; neither is ever
deleted. ``shop_revision`` changes with every such act, so that each process sees it at its next question.
"""

from __future__ import annotations

import json
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Any

from sqlalchemy import func, select
from sqlalchemy.orm import Session

from tagger import phrases
from tagger.errors import Problem, Speaks, StoreError
from tagger.messages import Message, length, pressure, temperature
from tagger.spec import Connection, Sizing
from tagger.store.base import Part
from tagger.store.locks import Turn, take
from tagger.store.models import ShopRowRow
from tagger.trade.keeping import ShopRow
from tagger.trade.own_hoses import OwnHose, belongs, own_hoses, rows_of
from tagger.trade.tables import compact_name, key_of, shop_row


@dataclass(frozen=True)
class KeptRow:
    """A row of the shop's: its table and cells as text, who kept it and when.

    ``ended_at`` is None while it holds; it ended by another in its place (``replaced_by``), or was withdrawn (``why``).
    """

    id: int
    table: str
    cells: dict[str, str]
    at: datetime
    by: str | None
    ended_at: datetime | None = None
    ended_by: str | None = None
    why: str | None = None
    replaced_by: int | None = None

    def as_dict(self, t: Speaks) -> dict[str, Any]:
        """As plain JSON values, its message in the language of ``t``."""
        return {
            "id": self.id,
            "table": self.table,
            "cells": self.cells,
            "at": self.at.isoformat(),
            "by": self.by,
            "ended_at": _moment(self.ended_at),
            "ended_by": self.ended_by,
            "why": self.why,
            "replaced_by": self.replaced_by,
            "message": self.message.as_json() | {"text": t(self.message)},
        }

    @property
    def message(self) -> Message:
        """What it says of which part, with its source."""
        limit, fluid = self.cells.get("max_temperature_c"), self.cells.get("fluid")
        if self.table == "hose_fluids":
            return _approval(self.cells)
        if self.table in ("hose_bend", "hose_size"):
            return _dimension(self.table, self.cells)
        said = _of_end(self.cells) if self.table == "connection_pressure" else _of_hose(self.cells)
        if fluid:
            said = Message("store-value-with", value=said, fluid=phrases.fluid(fluid))
        return Message("store-value-up-to", value=said, limit=temperature(float(limit))) if limit else said


class ShopRows(Part):
    """The part of the store for the shop's own rows."""

    def keep_shop_row(self, row: ShopRow, *, by: str | None = None) -> KeptRow:
        """Keeps a row; it holds from now on in the place of the one with the same key.

        The same row again changes nothing. Raises TradeError for a cell that cannot be used.
        """
        key = _key(row)

        def kept(session: Session) -> KeptRow:
            take(session, Turn.EVENTS)
            held = session.scalars(
                select(ShopRowRow).where(
                    ShopRowRow.table == row.table, ShopRowRow.key == key, ShopRowRow.ended_at.is_(None)
                )
            ).one_or_none()
            if held is not None and held.cells == row.cells:
                return _kept(held)
            now = self.now()
            if held is not None:
                held.ended_at, held.ended_by = now, by
                session.flush()
            made = ShopRowRow(table=row.table, key=key, cells=dict(row.cells), at=now, by=by)
            session.add(made)
            session.flush()
            if held is not None:
                held.replaced_by = made.id
            return _kept(made)

        return self.act(kept)

    def keep_shop_rows(self, rows: Iterable[ShopRow], *, by: str | None = None) -> list[KeptRow]:
        """Keeps several rows: all, or none."""
        return self.act(lambda _: [self.keep_shop_row(row, by=by) for row in rows])

    def keep_own_hose(self, hose: OwnHose, *, by: str | None = None) -> OwnHose:
        """Keeps a hose of the shop under its part number and dash, in the place of what was kept of it before.

        Raises TradeError for a figure that cannot be used; nothing is kept then.
        """

        def kept(_: Session) -> OwnHose:
            rows = [self.keep_shop_row(row, by=by) for row in rows_of(hose)]
            held = [row.id for row in rows]
            for earlier in [one for one in self.own_hoses() if one.key == hose.key]:
                self._end_rows(earlier, but=held, by=by)
            return hose

        return self.act(kept)

    def keep_own_hoses(self, hoses: Iterable[OwnHose], *, by: str | None = None) -> list[OwnHose]:
        """Keeps several hoses: all, or none."""
        return self.act(lambda _: [self.keep_own_hose(hose, by=by) for hose in hoses])

    def own_hoses(self) -> list[OwnHose]:
        """The hoses of the shop that hold, by part number and dash."""
        return own_hoses(ShopRow(row.table, row.cells) for row in self.shop_rows())

    def own_hoses_of(self, part: str) -> list[OwnHose]:
        """The hoses of the shop with that part number, in any spelling; of several sizes several."""
        wanted = compact_name(part)
        return [hose for hose in self.own_hoses() if wanted and hose.key[0] == wanted]

    def drop_own_hose(self, part: str, dash: int, why: str, *, by: str | None = None) -> OwnHose:
        """Withdraws a hose of the shop; what it rated is rated by its standard again. Raises StoreError."""
        if not why.strip():
            raise StoreError(Problem("reason", None, Message("store-shop-row-reason-missing")))

        def dropped(_: Session) -> OwnHose:
            found = [hose for hose in self.own_hoses() if hose.key == (compact_name(part), dash)]
            if not found:
                raise StoreError(
                    Problem("part", part, Message("store-own-hose-not-kept", part=part, dash=dash))
                )
            for hose in found:
                self._end_rows(hose, why=why.strip(), by=by)
            return found[-1]

        return self.act(dropped)

    def _end_rows(
        self, hose: OwnHose, *, but: Sequence[int] = (), why: str | None = None, by: str | None
    ) -> None:
        """Ends the rows that keep a hose: withdrawn, or for those of the ids ``but``, which stay."""
        with self.writing() as session:
            for row in session.scalars(select(ShopRowRow).where(ShopRowRow.ended_at.is_(None))):
                if row.id not in but and belongs(ShopRow(row.table, row.cells), hose):
                    row.ended_at, row.ended_by, row.why = self.now(), by, why
                    row.replaced_by = but[0] if but else None
            session.flush()

    def shop_rows(self, *, ended: bool = False) -> list[KeptRow]:
        """The rows that hold, oldest first; with ``ended`` those as well that were replaced or withdrawn."""
        query = select(ShopRowRow).order_by(ShopRowRow.id)
        if not ended:
            query = query.where(ShopRowRow.ended_at.is_(None))
        with self.reading() as session:
            return [_kept(row) for row in session.scalars(query)]

    def withdraw_shop_row(self, id: int, why: str, *, by: str | None = None) -> KeptRow:
        """Takes a row out of use; what it rated is unknown or unverified again. Raises StoreError."""
        if not why.strip():
            raise StoreError(Problem("reason", None, Message("store-shop-row-reason-missing")))
        with self.writing() as session:
            row = session.get(ShopRowRow, id)
            if row is None:
                raise StoreError(Problem("value", id, Message("store-shop-row-not-found", id=str(id))))
            if row.ended_at is not None:
                raise StoreError(Problem("value", id, Message("store-shop-row-ended", id=str(id))))
            row.ended_at, row.ended_by, row.why = self.now(), by, why.strip()
            session.flush()
            return _kept(row)

    def shop_revision(self) -> tuple[int, int]:
        """What changes whenever a row is kept, replaced or withdrawn."""
        with self.reading() as session:
            last, ended = session.execute(
                select(func.coalesce(func.max(ShopRowRow.id), 0), func.count(ShopRowRow.ended_at))
            ).one()
            return int(last), int(ended)

    def held_rows(self) -> list[tuple[str, Any]]:
        """The rows that hold, as ``Tables.load`` takes them. Raises TradeError for one that it cannot read."""
        return [(row.table, _read(row.table, row.cells)) for row in self.shop_rows()]


def _moment(at: datetime | None) -> str | None:
    return None if at is None else at.isoformat()


def _of_end(cells: dict[str, str]) -> Message:
    family = Connection(cells["family"])
    size = f"-{cells['size']}" if family.sized_by is Sizing.DASH else cells["size"]
    return Message(
        "store-value-end",
        size=size,
        series=cells.get("series") or "none",
        connection=phrases.connection(family),
        form=phrases.form(cells["forms"]),
        shape=cells["shapes"],
        material=phrases.material(cells["material"]),
        pressure=pressure(float(cells["max_working_bar"])),
        source=cells["source"],
    )


def _of_hose(cells: dict[str, str]) -> Message:
    return Message(
        "store-value-hose",
        standard=cells["standard"],
        dash=cells["dash"],
        edition=cells["edition"] or "none",
        part=cells.get("part") or "none",
        pressure=pressure(float(cells["max_working_bar"])),
        source=cells["source"],
    )


def _approval(cells: dict[str, str]) -> Message:
    return Message(
        "store-value-fluid",
        standard=cells["standard"],
        part=cells.get("part") or "none",
        fluid=phrases.fluid(cells["fluid"]),
        limit=temperature(float(cells["max_temperature_c"])),
        source=cells["source"],
    )


def _dimension(table: str, cells: dict[str, str]) -> Message:
    column = "bend_radius_mm" if table == "hose_bend" else "outside_diameter_mm"
    return Message(
        "store-value-dimension",
        which=table,
        standard=cells["standard"],
        dash=cells["dash"],
        part=cells.get("part") or "none",
        length=length(float(cells[column])),
        source=cells["source"],
    )


def _read(table: str, cells: dict[str, str]) -> Any:
    return shop_row(table, cells, f"value of the shop, {table}")


def _key(row: ShopRow) -> str:
    """The cells that name the row, as text. Raises TradeError for a cell that cannot be used."""
    return json.dumps(key_of(row.table, _read(row.table, row.cells)), default=str, ensure_ascii=False)


def _kept(row: ShopRowRow) -> KeptRow:
    return KeptRow(
        row.id,
        row.table,
        dict(row.cells),
        row.at,
        row.by,
        row.ended_at,
        row.ended_by,
        row.why,
        row.replaced_by,
    )
