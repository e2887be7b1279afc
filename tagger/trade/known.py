"""How much is known: every assembly of a hose and two of its natural ends, by how sure its rating is.

An assembly is as sure as its least sure part: verified, unverified where any part's figure is from memory or
by judgement, unknown where any part has none. Assemblies are counted, not built: each hose and each end is
rated once. Ends are straight or an elbow, in every form of their family, without a series.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from typing import Literal

from tagger.connection import code_points
from tagger.spec import Connection, End, Form, Hose, Material, Sizing
from tagger.trade import rows as row
from tagger.trade.rating import end_rating, hose_rating
from tagger.trade.results import PartRating
from tagger.trade.tables import Tables

Standing = Literal["verified", "unverified", "unknown"]
STANDINGS: tuple[Standing, ...] = ("verified", "unverified", "unknown")
MATERIALS = (Material.CARBON_STEEL, Material.STAINLESS_STEEL)
GRADES = ("standard", "document", "secondary", "memory", "judgement", "practice", "shop")
Shape = Literal["straight", "elbow_90"]
SHAPES: tuple[Shape, ...] = ("straight", "elbow_90")
EndKey = tuple[Connection, str, str, Shape]  # family, size, form and shape
ANY_BAR = 100.0  # of a shop's own row that is made up to count with


@dataclass(frozen=True)
class OnHose:
    """How sure the rating of a hose is, and of its natural ends by family."""

    hose: Standing
    ends: dict[Connection, Counter[Standing]]


@dataclass(frozen=True)
class Grid:
    """All hoses of the tables with their natural ends in one metal.

    ``grades``: the sources of the ends that have a rating, an end on each of its hoses.
    """

    material: Material
    hoses: tuple[OnHose, ...]
    grades: Counter[str]

    def assemblies(self, families: Iterable[Connection]) -> Counter[Standing]:
        """The assemblies of two ends of these families, by the standing of their rating."""
        wanted, found = set(families), Counter[Standing]()
        for one in self.hoses:
            ends = sum((n for family, n in one.ends.items() if family in wanted), Counter[Standing]())
            known = (ends["verified"] + ends["unverified"]) ** 2 if one.hose != "unknown" else 0
            verified = ends["verified"] ** 2 if one.hose == "verified" else 0
            unknown = ends.total() ** 2 - known
            found.update({"verified": verified, "unverified": known - verified, "unknown": unknown})
        return found

    def ends_of(self, family: Connection) -> Counter[Standing]:
        """The ends of a family, an end on each of its hoses."""
        return sum((one.ends.get(family, Counter()) for one in self.hoses), Counter[Standing]())


def share(counted: Counter[Standing], standing: Standing) -> float:
    """The share of a standing, 0 to 1."""
    return counted[standing] / max(counted.total(), 1)


def described(tables: Tables) -> tuple[Connection, ...]:
    """All families with sizes."""
    return tuple(family for family in tables.families if family.sized_by is not Sizing.WORDS)


def first_sixteen() -> tuple[Connection, ...]:
    """The families of version 0.1.0, to compare with what was known then."""
    rows = (r for r in code_points() if r["table"] == "connection")
    return tuple(Connection(r["name"]) for r in rows if int(r["point"]) < 16)


def grid(tables: Tables, material: Material) -> Grid:
    """All assemblies of the hoses in the tables with two natural ends in one metal."""
    rated: dict[EndKey, PartRating] = {}
    natural: dict[tuple[int, bool], tuple[EndKey, ...]] = {}
    found, grades = [], Counter[str]()
    for hose in hoses(tables):
        same = (hose.dash, tables.names_tube(hose))  # hoses with the same natural ends
        if same not in natural:
            natural[same] = tuple(natural_ends(hose, tables))
        ends: dict[Connection, Counter[Standing]] = {}
        for key in natural[same]:
            if key not in rated:
                rated[key] = end_rating("end_a", an_end(*key, material=material), tables)
            part = rated[key]
            ends.setdefault(key[0], Counter())[part.standing] += 1
            if part.value_bar is not None:
                grades[grade(part, tables)] += 1
        found.append(OnHose(hose_rating(hose, tables)[0].standing, ends))
    return Grid(material, tuple(found), grades)


def hoses(tables: Tables) -> Iterator[Hose]:
    """Every size of every hose standard that is rated, without an edition."""
    bores = [str(dash) for names, dash in tables.bores if names == "bore"]
    for name, rows in tables.hose_pressures.items():
        sizes = {r.dash for r in rows if r.dash != "all"} or set(bores)
        yield from (Hose(standard=name, dash=dash) for dash in sorted(map(int, sizes)) if dash < 64)


def natural_ends(hose: Hose, tables: Tables) -> Iterator[EndKey]:
    """The ends that are made for the hose without a jump size."""
    for family in described(tables):
        for size in tables.sizes(family):
            if tables.is_natural(family, size, hose):
                for form in tables.families[family].forms:
                    yield from ((family, size, form, shape) for shape in SHAPES)


def an_end(family: Connection, size: str, form: str, shape: Shape = "straight", *, material: Material) -> End:
    """An end by the size that the tables key."""
    sized = {"dash": int(size)} if family.sized_by is Sizing.DASH else {"size": size}
    return End.model_validate(
        {"connection": family, "form": form, "shape": shape, "material": material, **sized}
    )


def grade(part: PartRating, tables: Tables) -> str:
    """The grade of a rating's source."""
    if part.confidence != "published":
        return part.confidence
    known = tables.sources.get(part.source)
    return known.grade if known else "secondary"


def kept_once(tables: Tables, material: Material, *, every_form: bool) -> Tables:
    """The tables of a shop that has kept one figure for each family and size that nothing rates.

    ``every_form``: the figure is for the size, whatever the form; else it is that of the usual hose end, a
    female swivel where the family has one, and other forms stay as they are.
    """
    made = []
    for family in described(tables):
        forms = tables.families[family].forms
        usual = Form.FEMALE_SWIVEL.value if Form.FEMALE_SWIVEL.value in forms else forms[0]
        for form in forms if every_form else (usual,):
            for size in tables.sizes(family):
                if (
                    end_rating("end_a", an_end(family, size, form, material=material), tables).value_bar
                    is None
                ):
                    made.append(_row(family, size, form, material))
    rows = (*tables.raw["connection_pressure"], *made)
    return Tables.of({**tables.raw, "connection_pressure": rows})


def _row(family: Connection, size: str, form: str, material: Material) -> row.PressureRow:
    return row.PressureRow(
        family=family,
        size=size,
        forms=(form,),
        shapes=(),
        material=material.value,
        max_working_bar=ANY_BAR,
        printed=f"{ANY_BAR:g} bar",
        max_temperature_c=None,
        use="rating",
        applies_to="",
        source="the manufacturer's data",
        confidence="shop",
        note="",
    )
