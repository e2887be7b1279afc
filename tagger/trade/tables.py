"""The tables of the trade, loaded once, looked up by key.

``Tables.load(extra=folder)`` adds a shop's own rows: CSV files of the same names and columns
in that folder. A shop's row replaces ours of the same key and is shown as the shop's.
"""

from __future__ import annotations

import re
from collections import defaultdict
from collections.abc import Callable, Hashable, Iterable, Mapping, Sequence
from dataclasses import dataclass, field, replace
from functools import cache, lru_cache
from pathlib import Path
from typing import Any, Literal, TypeVar

from tagger.connection import names_tube
from tagger.errors import Problem, TradeError
from tagger.messages import Message
from tagger.spec import Connection, Hose, Sizing, dash_of_pipe
from tagger.trade import row_checks, row_reading
from tagger.trade import rows as row
from tagger.units import MM_PER_INCH

DATA = Path(__file__).parent / "data"

FILES: dict[str, type[Any]] = {
    "families": row.Family,
    "connections": row.ThreadRow,
    "plain_ends": row.PlainEnd,
    "seats": row.SeatRow,
    "cones": row.ConeRow,
    "origins": row.OriginRow,
    "motions": row.MotionRow,
    "look_alikes": row.LookAlike,
    "hexes": row.HexRow,
    "flanges": row.FlangeRow,
    "connection_pressure": row.PressureRow,
    "hose_standards": row.HoseStandard,
    "hose_editions": row.HoseEdition,
    "hose_pressure": row.HosePressureRow,
    "hose_bend": row.HoseBendRow,
    "hose_size": row.HoseSizeRow,
    "hose_fluids": row.HoseFluidRow,
    "same_hose": row.SameHose,
    "fluids": row.FluidRow,
    "sources": row.Source,
    "hose_vacuum": row.HoseVacuumRow,
    "hose_layers": row.HoseLayersRow,
    "bores": row.Bore,
    "lay_line_sizes": row.LayLineSize,
    "other_hoses": row.OtherHose,
    "tightening": row.TighteningRow,
    "screw_classes": row.ScrewClass,
    "screw_torques": row.ScrewTorque,
    "length_bands": row.LengthBand,
    "rules": row.Rule,
    "fit_steps": row.FitStep,
}

KEYS: dict[str, tuple[str, ...]] = {
    "families": ("family",),
    "connections": ("family", "size"),
    "plain_ends": ("family", "size", "series"),
    "seats": ("family", "form"),
    "cones": ("family", "form"),
    "origins": ("origin", "family"),
    "motions": ("family", "form"),
    "look_alikes": ("family", "other"),
    "hexes": ("family", "size"),
    "flanges": ("family", "size", "what"),
    "connection_pressure": ("family", "size", "series", "forms", "shapes", "material", "fluid"),
    "hose_standards": ("standard",),
    "hose_editions": ("standard", "edition"),
    "hose_pressure": ("standard", "edition", "dash", "part", "fluid"),
    "hose_bend": ("standard", "dash", "part"),
    "hose_size": ("standard", "dash", "part"),
    "hose_fluids": ("standard", "fluid", "part"),
    "same_hose": ("standard", "other"),
    "fluids": ("fluid",),
    "sources": ("source",),
    "hose_vacuum": ("standard", "dash"),
    "hose_layers": ("standard", "kind"),
    "bores": ("names", "dash"),
    "lay_line_sizes": ("printed",),
    "other_hoses": ("mark",),
    "tightening": ("family", "size", "series", "part", "material", "screw", "screw_class"),
    "screw_classes": ("family",),
    "screw_torques": ("screw", "screw_class"),
    "length_bands": ("bands",),
    "rules": ("key",),
    "fit_steps": ("step_id",),
}
"""What a shop's row replaces: every row of ours with these cells the same."""

T = TypeVar("T")
_MOST_FOUND = 4096
Bands = Literal["sae", "din"]  # length tolerances: SAE J517's, or DIN 20066's


@dataclass(frozen=True, eq=False)
class Tables:
    """All rows, with the look-ups that need more than a filter."""

    families: dict[Connection, row.Family]
    threads: dict[tuple[Connection, str], row.ThreadRow]
    plain_ends: dict[tuple[Connection, str], tuple[row.PlainEnd, ...]]
    seats: tuple[row.SeatRow, ...]
    cones: tuple[row.ConeRow, ...]
    origins: tuple[row.OriginRow, ...]
    motions: dict[tuple[Connection, str], row.MotionRow]
    look_alikes: tuple[row.LookAlike, ...]
    hexes: tuple[row.HexRow, ...]
    flanges: tuple[row.FlangeRow, ...]
    end_pressures: dict[tuple[Connection, str], tuple[row.PressureRow, ...]]
    standards: dict[str, row.HoseStandard]
    editions: dict[str, tuple[row.HoseEdition, ...]]
    hose_pressures: dict[str, tuple[row.HosePressureRow, ...]]
    hose_bends: dict[str, tuple[row.HoseBendRow, ...]]
    hose_sizes: dict[str, tuple[row.HoseSizeRow, ...]]
    hose_fluids: dict[str, tuple[row.HoseFluidRow, ...]]
    same_hose: frozenset[frozenset[str]]
    fluids: dict[str, row.FluidRow]
    hose_vacuums: dict[tuple[str, str], tuple[row.HoseVacuumRow, ...]]
    hose_layers: dict[str, tuple[row.HoseLayersRow, ...]]
    bores: dict[tuple[str, int], row.Bore]
    lay_line_sizes: tuple[row.LayLineSize, ...]
    other_hoses: tuple[row.OtherHose, ...]
    tightening: dict[Connection, tuple[row.TighteningRow, ...]]
    screw_classes: dict[Connection, tuple[row.ScrewClass, ...]]
    screw_torques: dict[str, tuple[row.ScrewTorque, ...]]
    length_bands: tuple[row.LengthBand, ...]
    rules: dict[str, row.Rule]
    steps: tuple[row.FitStep, ...]
    raw: dict[str, tuple[Any, ...]]
    sources: dict[str, row.Source]
    published: dict[str, tuple[Any, ...]]
    spellings: dict[str, str]
    bands: Bands | None = None
    _found: dict[Hashable, Any] = field(default_factory=dict, init=False, repr=False)

    def once(self, key: Hashable, find: Callable[[], T]) -> T:
        """What ``find`` finds in these tables, found once for each ``key``, which holds all else that it depends on.

        It is the same object each time, so never to be changed.
        """
        found: T | None = self._found.get(key)
        if found is None:
            if len(self._found) >= _MOST_FOUND:
                self._found.clear()
            found = self._found[key] = find()
        return found

    @classmethod
    def load(
        cls,
        extra: Path | str | None = None,
        bands: Bands | None = None,
        kept: Iterable[tuple[str, Any]] = (),
    ) -> Tables:
        """Ours, and a shop's own from the folder ``extra``.

        ``kept``: more rows of the shop's (``shop_row``), each with the name of its table; they come after the folder's.
        ``bands``: whose length tolerances the shop holds to, "sae" or "din"; by default those of
        each hose's standard. Raises TradeError where a file there has a name or a cell that cannot be used.
        """
        kept = tuple(kept)
        if extra is None and not kept:
            return _of_ours(bands)
        raw = _ours() if extra is None else _with_shop_rows(_ours(), Path(extra))
        for table, row_ in kept:
            raw = merged(raw, table, [row_])
        return cls.of(raw, bands, published=_ours())

    @classmethod
    def of(
        cls,
        raw: dict[str, tuple[Any, ...]],
        bands: Bands | None = None,
        published: dict[str, tuple[Any, ...]] | None = None,
    ) -> Tables:
        """The tables of these rows, by the names of the files.

        Rows carry the short name of their source; ``raw`` keeps them as they are written. ``published``: the
        rows that a shop's own are held against; by default those of ``raw``.
        """
        against = {
            name: tuple(r for r in (published or raw)[name] if r.confidence not in ("shop", *row.UNVERIFIED))
            for name in ("connection_pressure", "hose_pressure", "hose_fluids")
        }
        sources = {r.source: r for r in raw["sources"]}
        written, raw = raw, {name: _with_short_names(rows, sources) for name, rows in raw.items()}
        return cls(
            families={r.family: r for r in raw["families"]},
            threads={(r.family, r.size): r for r in raw["connections"]},
            plain_ends=_grouped(raw["plain_ends"], lambda r: (r.family, r.size)),
            seats=raw["seats"],
            cones=raw["cones"],
            origins=raw["origins"],
            motions={(r.family, r.form): r for r in raw["motions"]},
            look_alikes=raw["look_alikes"],
            hexes=raw["hexes"],
            flanges=raw["flanges"],
            end_pressures=_grouped(raw["connection_pressure"], lambda r: (r.family, r.size)),
            standards={r.standard: r for r in raw["hose_standards"]},
            editions=_grouped(raw["hose_editions"], lambda r: r.standard),
            hose_pressures=_grouped(raw["hose_pressure"], lambda r: r.standard),
            hose_bends=_grouped(raw["hose_bend"], lambda r: r.standard),
            hose_sizes=_grouped(raw["hose_size"], lambda r: r.standard),
            hose_fluids=_grouped(raw["hose_fluids"], lambda r: r.standard),
            same_hose=frozenset(frozenset((r.standard, r.other)) for r in raw["same_hose"]),
            fluids={r.fluid: r for r in raw["fluids"]},
            hose_vacuums=_grouped(raw["hose_vacuum"], lambda r: (r.standard, r.dash)),
            hose_layers=_grouped(raw["hose_layers"], lambda r: r.standard),
            bores={(r.names, r.dash): r for r in raw["bores"]},
            lay_line_sizes=raw["lay_line_sizes"],
            other_hoses=raw["other_hoses"],
            tightening=_grouped(raw["tightening"], lambda r: r.family),
            screw_classes=_grouped(raw["screw_classes"], lambda r: r.family),
            screw_torques=_grouped(raw["screw_torques"], lambda r: r.screw),
            length_bands=raw["length_bands"],
            rules={r.key: r for r in raw["rules"]},
            steps=tuple(sorted(raw["fit_steps"], key=lambda r: r.order)),
            raw=written,
            sources=sources | {r.short: r for r in sources.values()},
            published=against,
            spellings={
                compact_name(name): r.standard
                for r in raw["hose_standards"]
                for name in (r.standard, *r.aliases)
            },
            bands=bands,
        )

    def sizes(self, family: Connection) -> list[str]:
        """The sizes of a family as the tables key them, smallest first."""
        return [*self.once(("sizes", family), lambda: tuple(self._sizes(family)))]

    def _sizes(self, family: Connection) -> list[str]:
        if family.is_flange:
            found = {r.size for r in self.flanges if r.family is family}
            return sorted(found, key=int)
        threaded = [size for kind, size in self.threads if kind is family]
        plain = {size for kind, size in self.plain_ends if kind is family}
        return threaded or sorted(plain, key=lambda size: size_order(family, size))

    def series_of(self, family: Connection, size: str) -> frozenset[str]:
        """The series that a size of the family is made in; empty where the family has none."""
        made = {r.series for r in self.plain_ends.get((family, size), ()) if r.series}
        return frozenset(made or self.families[family].series)

    def natural_hose(self, family: Connection, size: str) -> tuple[int, ...]:
        """The hose dashes a fitting of this size is made for unless a jump size is stated."""
        if family.is_flange:
            return (int(size),)
        if thread := self.threads.get((family, size)):
            return thread.hose_dashes
        return tuple(sorted({dash for r in self.plain_ends[family, size] for dash in r.hose_dashes}))

    def is_natural(self, family: Connection, size: str, hose: Hose) -> bool:
        """Whether a fitting of this size is made for the hose without a jump size being stated.

        Where the hose's dash names the tube (SAE 100R5), ends in dash and pipe sizes go by it; a tube or
        a thread in mm goes by the bore ("common practice, no source"). An end of no family is made for any.
        """
        dash = hose.dash
        if family.sized_by is Sizing.WORDS:
            return True
        if self.names_tube(hose) and family.sized_by in (Sizing.TUBE, Sizing.THREAD):
            bore = self.nominal_bore_mm(hose)
            dash = min(
                (abs(r.bore_mm - bore), r.dash) for (names, _), r in self.bores.items() if names == "bore"
            )[1]
        return dash in self.natural_hose(family, size)

    def names_tube(self, hose: Hose) -> bool:
        """Whether the hose's dash names the tube, so that its bore is smaller than the dash says."""
        standard = self.standard_of(hose.standard)
        return names_tube(standard.standard if standard else hose.standard)

    def nominal_bore_mm(self, hose: Hose) -> float:
        """The nominal bore by what the dash names."""
        usual = self.bores.get(("tube" if self.names_tube(hose) else "bore", hose.dash))
        return usual.bore_mm if usual else hose.dash * MM_PER_INCH / 16

    def standard_of(self, name: str) -> row.HoseStandard | None:
        """The hose standard of any spelling of it; None where there is none here.

        >>> tables().standard_of("100r2at").standard
        'SAE 100R2'
        """
        found = self.spellings.get(compact_name(name))
        return self.standards[found] if found else None

    def pressures_of(self, hose: Hose) -> tuple[row.HosePressureRow, ...]:
        """Every rating of the hose's standard; of a standard that is not here, a shop's own by the same name."""
        return self._of_hose(hose, "hose_pressures")

    def fluids_of(self, hose: Hose) -> tuple[row.HoseFluidRow, ...]:
        """What sources say of fluids in hoses of that standard; of one that is not here, a shop's own rows."""
        return self._of_hose(hose, "hose_fluids")

    def bends_of(self, hose: Hose) -> tuple[row.HoseBendRow, ...]:
        """The bend radii of the hose's standard and of its own part number, in its dash."""
        return tuple(r for r in self._of_hose(hose, "hose_bends") if r.dash == str(hose.dash))

    def sizes_of(self, hose: Hose) -> tuple[row.HoseSizeRow, ...]:
        """What is printed of the hose's size: of its own part number, else of any of its standard in its dash."""
        key = ("sizes of", hose.standard, hose.part, str(hose.dash))
        return self.once(key, lambda: self._sizes_of(hose))

    def _sizes_of(self, hose: Hose) -> tuple[row.HoseSizeRow, ...]:
        found = [r for r in self._of_hose(hose, "hose_sizes") if r.dash == str(hose.dash)]
        return tuple([r for r in found if r.part] or found)

    def _of_hose(self, hose: Hose, table: str) -> tuple[Any, ...]:
        """The rows of the hose's standard for any part number, after those for its own."""
        name, part = hose.standard, hose.part or ""
        return self.once((table, name, part), lambda: self._rows_of(name, part, getattr(self, table)))

    def _rows_of(self, name: str, part: str, rows: dict[str, tuple[Any, ...]]) -> tuple[Any, ...]:
        standard, own = self.standard_of(name), compact_name(name)
        if standard is not None:
            held = rows.get(standard.standard, ())
        else:
            held = next((theirs for name, theirs in rows.items() if compact_name(name) == own), ())
        part = compact_name(part)
        own_part = [r for r in held if r.part and compact_name(r.part) == part]
        return (*own_part, *[r for r in held if not r.part])

    def edition_of(self, hose: Hose, standard: str) -> row.HoseEdition | None:
        """The edition printed on the hose; None where none is named.

        A year names the edition in force then, where a source dates it; what a later year than
        the newest known edition's would say, nobody knows here.
        Raises TradeError listing the known editions.
        """
        if hose.edition is None:
            return None
        known = self.editions.get(standard, ())
        for item in known:
            if compact_name(item.edition) == compact_name(hose.edition):
                return item
        dated = [item for item in known if item.from_year]
        if dated and re.fullmatch(r"(19|20)\d\d", hose.edition):
            year, newest = int(hose.edition), int(self.rule("edition_year_known").value)
            if year > newest:
                why = Message("trade-edition-too-new", year=hose.edition, newest=str(newest))
                raise TradeError(Problem("hose.edition", hose.edition, why))
            older = [item for item in known if not item.from_year]
            in_force = [item for item in dated if item.from_year and item.from_year <= year]
            return max(in_force, key=lambda i: i.from_year or 0) if in_force else older[0]
        raise TradeError(
            Problem("hose.edition", hose.edition, _not_an_edition(hose.edition, standard, known))
        )

    def where_from(self, source: str) -> str:
        """What a source is, in a sentence or two; a shop's own source as the shop wrote it."""
        known = self.sources.get(source)
        return known.full if known else source

    def rule(self, key: str) -> row.Rule:
        return self.rules[key]


def _not_an_edition(edition: str, standard: str, known: tuple[row.HoseEdition, ...]) -> Message:
    if not known:
        return Message("trade-edition-none", edition=edition, standard=standard)
    names = tuple(item.edition for item in known)
    return Message("trade-edition-not-known", edition=edition, standard=standard, editions=names)


@lru_cache(maxsize=4096)
def compact_name(name: str) -> str:
    """A standard's name without case, spaces and punctuation, for comparing spellings."""
    return re.sub(r"[^a-z0-9]", "", name.casefold())


def size_order(family: Connection, size: str) -> float:
    """A number to sort the sizes of a family by."""
    if match := re.match(r"M(\d+)", size):
        return float(match[1])
    return float(dash_of_pipe(size)) if family.sized_by is Sizing.PIPE else float(size)


def _with_short_names(rows: tuple[Any, ...], sources: dict[str, row.Source]) -> tuple[Any, ...]:
    if not rows or not hasattr(rows[0], "source") or isinstance(rows[0], row.Source):
        return rows
    return tuple(replace(r, source=sources[r.source].short) if r.source in sources else r for r in rows)


def _grouped(items: Iterable[T], key: Any) -> dict[Any, tuple[T, ...]]:
    found: dict[Any, list[T]] = defaultdict(list)
    for item in items:
        found[key(item)].append(item)
    return {name: tuple(group) for name, group in found.items()}


@cache
def _ours() -> dict[str, tuple[Any, ...]]:
    """The rows of our own files, read once."""
    return {name: tuple(row_reading.read_rows(DATA / f"{name}.csv", kind)) for name, kind in FILES.items()}


@cache
def _of_ours(bands: Bands | None) -> Tables:
    """Our own files alone, the same tables for everyone who asks for them."""
    return Tables.of(_ours(), bands, published=_ours())


def _with_shop_rows(raw: dict[str, tuple[Any, ...]], folder: Path) -> dict[str, tuple[Any, ...]]:
    """Ours with a shop's rows from a folder. Raises TradeError with the problems of all its files at once."""
    if not folder.is_dir():
        raise TradeError(
            Problem("shop tables", str(folder), Message("trade-not-a-folder", folder=str(folder)))
        )
    problems: list[Problem] = []
    shop: dict[str, list[Any]] = {}
    for path in sorted(folder.glob("*.csv")):
        try:
            shop[path.stem] = _shop_rows(path)
        except TradeError as error:
            problems += error.problems
    if problems:
        raise TradeError(problems)
    for table, rows in shop.items():
        raw = merged(raw, table, rows)
    return raw


def _shop_rows(path: Path) -> list[Any]:
    if path.stem not in FILES:
        tables = tuple(sorted(FILES))
        raise TradeError(
            Problem(path.name, None, Message("trade-not-a-table", file=path.name, tables=tables))
        )
    return [_as_shops(r) for r in row_reading.read_rows(path, FILES[path.stem], _check_of(path.stem))]


def shop_row(table: str, cells: Mapping[str, str], where: str) -> Any:
    """One row of a shop's own, from its cells as text. Raises TradeError naming ``where`` and the column."""
    return _as_shops(row_reading.read_row(cells, FILES[table], where, _check_of(table)))


def merged(raw: dict[str, tuple[Any, ...]], table: str, shop: Sequence[Any]) -> dict[str, tuple[Any, ...]]:
    """The rows with a shop's own of one table: each takes the place of all of the same key."""
    taken = {key_of(table, r) for r in shop}
    others = [r for r in raw[table] if key_of(table, r) not in taken]
    return {**raw, table: (*others, *shop)}


def key_of(table: str, item: Any) -> tuple[Any, ...]:
    """The cells of a row that name it; a shop's row takes the place of all with the same."""
    return tuple(getattr(item, cell) for cell in KEYS[table])


def _check_of(table: str) -> row_reading.Check:
    standards = frozenset(r.standard for r in _ours()["hose_standards"])
    return lambda item: row_checks.wrong(table, item, standards)


def _as_shops(item: Any) -> Any:
    return replace(item, confidence="shop") if hasattr(item, "confidence") else item


@lru_cache(maxsize=1)
def tables() -> Tables:
    """Our own tables, read once."""
    return Tables.load()
