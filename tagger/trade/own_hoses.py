"""A hose of the shop under its manufacturer's part number, kept as rows of the shop's own tables.

Its figures are the hose manufacturer's, given with their source; none is assumed. It is rated by its
own rating, also above or below that of its standard, and bent by the larger radius of the two.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from typing import Annotated, Any, Self

from pydantic import BaseModel, BeforeValidator, ConfigDict, Field, ValidationError, model_validator

from tagger.errors import Problem, SpecError, TradeError, problems_of
from tagger.messages import Message, Value, length, pressure
from tagger.spec import Fluid, Hose, PressureBar, SpecValueError
from tagger.trade.keeping import ShopRow
from tagger.trade.tables import Tables, compact_name
from tagger.units import read_length_mm, read_temperature_c


def _listed(value: object) -> object:
    """Names in one text as a tuple: "mineral_oil; water_glycol"."""
    if isinstance(value, str):
        return tuple(name.strip() for name in value.split(";") if name.strip())
    return value


def _dash(value: object) -> object:
    return value.strip().removeprefix("-") if isinstance(value, str) else value


_SAME = 1.003  # one figure printed in two units
_Mm = Annotated[float, Field(gt=0, le=5000), BeforeValidator(lambda value: round(read_length_mm(value), 1))]


class OwnHose(BaseModel):
    """One hose of the shop. Lengths in mm, or a text with a unit; pressure in bar, or a text with a unit.

    ``max_temperature_c``: its rating holds up to there, and so do its ``fluids``, which need it.
    """

    model_config = ConfigDict(frozen=True, extra="forbid", str_strip_whitespace=True)

    part: Annotated[str, Field(min_length=1, max_length=40)]
    manufacturer: Annotated[str, Field(max_length=80)] = ""
    standard: Annotated[str, Field(min_length=1, max_length=40)]
    dash: Annotated[int, Field(ge=1, le=63), BeforeValidator(_dash)]
    edition: Annotated[str, Field(max_length=40)] = ""
    max_working_bar: Annotated[PressureBar, Field(gt=0)]
    bend_radius_mm: _Mm | None = None
    outside_diameter_mm: _Mm | None = None
    max_temperature_c: Annotated[float, Field(ge=-60, le=400), BeforeValidator(read_temperature_c)] | None = (
        None
    )
    fluids: Annotated[tuple[Fluid, ...], BeforeValidator(_listed)] = ()
    source: Annotated[str, Field(min_length=1, max_length=80)]

    @model_validator(mode="after")
    def _whole(self) -> Self:
        if self.fluids and self.max_temperature_c is None:
            raise SpecValueError("max_temperature_c", None, Message("trade-own-hose-fluid-heat"))
        return self

    @property
    def key(self) -> tuple[str, int]:
        """What names it: its part number without case, spaces and punctuation, and its dash."""
        return compact_name(self.part), self.dash

    def as_hose(self) -> dict[str, Any]:
        """The fields of a spec's hose that follow from it."""
        named = {"standard": self.standard, "dash": self.dash, "part": self.part}
        return named | ({"edition": self.edition} if self.edition else {})


def read_own_hose(data: object, tables: Tables) -> OwnHose:
    """A hose from plain values, its standard spelled as the tables spell it.

    Raises SpecError naming every field that is wrong.
    """
    try:
        hose = OwnHose.model_validate(data)
    except ValidationError as error:
        raise SpecError(
            Problem(p.field.partition(".")[0], p.value, p.message) for p in problems_of(error)
        ) from None
    if not compact_name(hose.part):
        raise SpecError(Problem("part", hose.part, Message("trade-own-hose-part")))
    standard = tables.standard_of(hose.standard)
    if slips := _slips_of_the_unit(hose, tables):
        raise SpecError(slips)
    if standard is None:
        return hose
    printed = Hose(standard=standard.standard, dash=hose.dash, edition=hose.edition or None)
    try:
        edition = tables.edition_of(printed, standard.standard)
    except TradeError as error:
        raise SpecError(Problem("edition", p.value, p.message) for p in error.problems) from None
    figures = edition.figures if edition else hose.edition
    return hose.model_copy(update={"standard": standard.standard, "edition": figures})


def _slips_of_the_unit(hose: OwnHose, tables: Tables) -> list[Problem]:
    """Lengths that no hose has, mostly inches typed as mm: an outside within the bore, a bend tighter than the hose."""
    bore = tables.nominal_bore_mm(Hose(standard=hose.standard, dash=hose.dash))
    outside, bend = hose.outside_diameter_mm, hose.bend_radius_mm
    if outside is not None and outside <= bore:
        said = Message("trade-own-hose-outside", outside=length(outside), bore=length(bore))
        return [Problem("outside_diameter_mm", outside, said)]
    across = outside or bore
    if bend is not None and bend < across:
        return [
            Problem(
                "bend_radius_mm",
                bend,
                Message("trade-own-hose-bend", bend=length(bend), across=length(across)),
            )
        ]
    return []


def rows_of(hose: OwnHose) -> list[ShopRow]:
    """The rows that keep it."""
    sized = {"standard": hose.standard, "dash": str(hose.dash)}
    limit = "" if hose.max_temperature_c is None else f"{hose.max_temperature_c:g}"
    common = {"part": hose.part, "source": hose.source, "confidence": "shop", "note": ""}
    rows = [
        ShopRow(
            "hose_pressure",
            {
                **sized,
                "edition": hose.edition,
                "max_working_bar": f"{hose.max_working_bar:g}",
                "printed": "",
                "in_standard": "yes",
                "fluid": "",
                "max_temperature_c": limit,
                **common,
                "note": hose.manufacturer,
            },
        )
    ]
    if hose.bend_radius_mm is not None:
        bend = {"bend_radius_mm": f"{hose.bend_radius_mm:g}", "printed": ""}
        rows.append(ShopRow("hose_bend", {**sized, **bend, **common}))
    if hose.outside_diameter_mm is not None:
        size = {"bore_mm": "", "outside_diameter_mm": f"{hose.outside_diameter_mm:g}", "mass_kg_m": ""}
        rows.append(ShopRow("hose_size", {**sized, **size, **common}))
    for fluid in hose.fluids:
        approval = {"standard": hose.standard, "fluid": str(fluid), "min_temperature_c": ""}
        rows.append(ShopRow("hose_fluids", {**approval, "max_temperature_c": limit, **common}))
    return rows


def above_published(hose: OwnHose, tables: Tables) -> float | None:
    """The highest published rating in bar of its standard and dash, where its own is above it; else None."""
    published = [
        r.max_working_bar
        for r in tables.published["hose_pressure"]
        if r.standard == hose.standard and r.dash in (str(hose.dash), "all")
    ]
    highest = max(published, default=None)
    return highest if highest is not None and hose.max_working_bar > highest * _SAME else None


def named(hose: OwnHose) -> str:
    """Standard, dash and edition, as lay lines have them."""
    return f"{hose.standard} -{hose.dash} {hose.edition}".strip()


def said(hose: OwnHose, tables: Tables) -> Message:
    """Its rating with its source, and that it is above every published one where it is."""
    known: dict[str, Value] = {"pressure": pressure(hose.max_working_bar), "source": hose.source}
    highest = above_published(hose, tables)
    if highest is None:
        return Message("trade-own-hose-rating", **known)
    return Message("trade-own-hose-above", **known, highest=pressure(highest))


def own_hoses(rows: Iterable[ShopRow]) -> list[OwnHose]:
    """The shop's hoses as its rows keep them, by part number and dash."""
    kept = [row for row in rows if row.cells.get("part")]
    found = (
        _hose(row.cells, kept) for row in kept if row.table == "hose_pressure" and not row.cells["fluid"]
    )
    return sorted(found, key=lambda hose: hose.key)


def belongs(row: ShopRow, hose: OwnHose) -> bool:
    """Whether a row is one of those that keep this hose."""
    cells = row.cells
    if compact_name(cells.get("part") or "") != hose.key[0]:
        return False
    if row.table == "hose_fluids":
        return (cells["standard"], cells["source"]) == (hose.standard, hose.source)
    return cells.get("dash") == str(hose.dash) and not cells.get("fluid")


def _hose(cells: Mapping[str, str], rows: Iterable[ShopRow]) -> OwnHose:
    limit = cells.get("max_temperature_c")
    data: dict[str, Any] = {name: cells[name] for name in ("part", "standard", "edition", "source")}
    data |= {"manufacturer": cells["note"], "dash": int(cells["dash"])}
    data |= {"max_working_bar": float(cells["max_working_bar"])}
    data |= {"max_temperature_c": float(limit) if limit else None}
    plain = OwnHose.model_validate(data)
    more: dict[str, Any] = {}
    fluids: list[Fluid] = []
    for row in rows:
        if not belongs(row, plain) or row.cells["standard"] != plain.standard:
            continue
        if row.table == "hose_fluids" and row.cells["max_temperature_c"] == limit:
            fluids.append(Fluid(row.cells["fluid"]))
        for table, name in (("hose_bend", "bend_radius_mm"), ("hose_size", "outside_diameter_mm")):
            if row.table == table:
                more[name] = float(row.cells[name])
    return plain.model_copy(update={**more, "fluids": tuple(fluids)})
