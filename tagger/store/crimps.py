"""Crimp diameters that the shop keeps for itself, by hose and shell."""

from __future__ import annotations

from dataclasses import dataclass, field

from sqlalchemy import select

from tagger.errors import Problem, StoreError
from tagger.messages import Message
from tagger.store.base import Part
from tagger.store.models import CrimpRow
from tagger.store.proving import CrimpMeasured


@dataclass(frozen=True)
class CrimpValue:
    """The crimp diameter in mm for one hose and shell, with its band and where it comes from."""

    hose_standard: str
    hose_dash: int
    shell: str
    diameter_mm: float
    minus_mm: float
    plus_mm: float
    source: str
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


class Crimps(Part):
    """The part of the store for crimp diameters."""

    def keep_crimp(self, value: CrimpValue, *, by: str | None = None) -> CrimpValue:
        """Keeps a crimp diameter; it holds from now on, earlier ones stay in the record."""
        figures = (value.diameter_mm, value.minus_mm, value.plus_mm)
        if not (1 <= value.diameter_mm <= 300 and 0 <= value.minus_mm <= 5 and 0 <= value.plus_mm <= 5):
            raise StoreError(Problem("diameter_mm", str(figures), Message("store-crimp-not-valid")))
        if not value.source.strip():
            raise StoreError(Problem("source", None, Message("store-crimp-source-missing")))
        if not value.shell.strip():
            raise StoreError(Problem("shell", None, Message("store-crimp-shell-missing")))
        with self.writing() as session:
            row = CrimpRow(
                hose_standard=value.hose_standard,
                hose_dash=value.hose_dash,
                shell=value.shell.strip(),
                diameter_mm=value.diameter_mm,
                minus_mm=value.minus_mm,
                plus_mm=value.plus_mm,
                source=value.source.strip(),
                at=self.now(),
                by=by,
            )
            session.add(row)
            session.flush()
            return _crimp(row)

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
            newest = {_key(row): _crimp(row) for row in session.scalars(query)}
            last = session.get(CrimpRow, after) if after is not None else None
        if after is not None and last is None:
            raise StoreError(Problem("after", after, Message("store-crimp-not-found", crimp=after)))
        return [newest[key] for key in sorted(newest) if last is None or key > _key(last)][:limit]

    def crimp(self, hose_standard: str, hose_dash: int, shell: str, *, field: str = "shell") -> CrimpValue:
        """The crimp diameter that holds for a hose and shell; ``field`` names the shell in an error.

        Raises StoreError where none is kept.
        """
        for value in self.crimps(hose_standard, hose_dash):
            if value.shell == shell:
                return value
        raise StoreError(Problem(field, shell, Message("store-crimp-none", shell=shell)))


def _key(row: CrimpRow) -> tuple[str, int, str]:
    return row.hose_standard, row.hose_dash, row.shell


def _crimp(row: CrimpRow) -> CrimpValue:
    return CrimpValue(
        row.hose_standard,
        row.hose_dash,
        row.shell,
        row.diameter_mm,
        row.minus_mm,
        row.plus_mm,
        row.source,
        row.by,
        row.id,
    )
