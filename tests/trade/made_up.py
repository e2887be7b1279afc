"""Tables with made-up figures, so that a test proves a rule and not the figure of some source.

``tables_with`` puts rows in the place of all of ours of that file; families and threads stay ours.
"""

from __future__ import annotations

from typing import Any

from tagger.spec import AssemblySpec, Connection
from tagger.trade import rows as row
from tagger.trade.tables import Tables, tables
from tests.trade.specs import both, end

SOURCE = "an invented table"
HOSE = "MADE 1"


def tables_with(**files: list[Any]) -> Tables:
    """Ours, with these rows instead of all of ours of the same file."""
    return Tables.of({**tables().raw, **{name: tuple(rows) for name, rows in files.items()}})


def standard(name: str = HOSE, **more: Any) -> row.HoseStandard:
    """A hose standard for -40 to 100 °C, with SAE's length bands."""
    cells: dict[str, Any] = {
        "standard": name, "aliases": (), "construction": "one wire braid", "duty": "pressure", "bands": "sae",
        "min_temperature_c": -40.0, "max_temperature_c": 100.0, "source": SOURCE,
        "confidence": "published", "note": "",
    }  # fmt: skip
    return row.HoseStandard(**cells | more)


def hose(bar: float, dash: int = 12, **more: Any) -> row.HosePressureRow:
    """A working pressure of the made-up hose."""
    cells: dict[str, Any] = {
        "standard": HOSE, "edition": "", "dash": str(dash), "max_working_bar": bar, "printed": f"{bar:g} bar",
        "in_standard": "yes", "source": SOURCE, "confidence": "published", "note": "",
    }  # fmt: skip
    return row.HosePressureRow(**cells | more)


def edition(name: str, figures: str, from_year: int | None = None) -> row.HoseEdition:
    return row.HoseEdition(HOSE, name, figures, from_year, "an invented edition", SOURCE, "published")


def ending(bar: float, size: str = "12", **more: Any) -> row.PressureRow:
    """A working pressure of a 37 degree end, whatever its form and shape."""
    cells: dict[str, Any] = {
        "family": Connection("sae_37_flare"), "size": size, "forms": (), "shapes": (),
        "material": "carbon_steel", "max_working_bar": bar, "printed": f"{bar:g} bar",
        "max_temperature_c": None, "use": "rating",
        "applies_to": "", "source": SOURCE, "confidence": "published", "note": "",
    }  # fmt: skip
    return row.PressureRow(**cells | more)


def bend(radius: float, dash: int = 12, **more: Any) -> row.HoseBendRow:
    cells: dict[str, Any] = {
        "standard": HOSE, "dash": str(dash), "bend_radius_mm": radius, "printed": f"{radius:g} mm",
        "source": SOURCE, "confidence": "published", "note": "",
    }  # fmt: skip
    return row.HoseBendRow(**cells | more)


def body(bore: float | None, od: float, mass: float | None = None, dash: int = 12) -> row.HoseSizeRow:
    """A hose's bore and outside diameter in mm, and its mass in kg/m."""
    return row.HoseSizeRow(HOSE, str(dash), bore, od, mass, SOURCE, "published", "")


def fluid(name: str, least: float | None = None, most: float | None = None) -> row.HoseFluidRow:
    """A fluid the made-up hose is for between two temperatures; for neither, where there is no ``most``."""
    return row.HoseFluidRow(HOSE, name, least, most, SOURCE, "published", "")


def band(minus: float, plus: float, **more: Any) -> row.LengthBand:
    """A length tolerance for all lengths and bores."""
    cells: dict[str, Any] = {
        "bands": "sae", "over_mm": 0.0, "to_mm": None, "from_bore_mm": 0.0, "to_bore_mm": 1000.0,
        "minus": minus, "plus": plus, "unit": "mm", "source": SOURCE, "confidence": "published", "note": "",
    }  # fmt: skip
    return row.LengthBand(**cells | more)


def tight(**more: Any) -> row.TighteningRow:
    """How a made-up source tightens a 37 degree -12 swivel nut on a hose; name its figures."""
    cells: dict[str, Any] = {
        "family": Connection("sae_37_flare"), "size": "12", "part": ("nut",), "end_type": "swivel nut",
        "material": "carbon_steel", "screw": "", "torque_min_nm": None, "torque_max_nm": None,
        "flats_min": None, "flats_max": None, "turns_min": None, "turns_max": None, "basis": "torque",
        "lubrication": "", "use": "hose", "scope": "family", "source": SOURCE, "confidence": "published",
        "note": "",
    }  # fmt: skip
    return row.TighteningRow(**cells | more)


def nm(low: float | None, high: float, **more: object) -> row.TighteningRow:
    return tight(torque_min_nm=low, torque_max_nm=high, **more)


def flats(low: float | None, high: float, basis: str = "finger_tight", **more: object) -> row.TighteningRow:
    return tight(flats_min=low, flats_max=high, basis=basis, **more)


def bolt(screw: str, screw_class: str, low: float, high: float) -> row.ScrewTorque:
    """What a made-up general bolt table gives a screw."""
    return row.ScrewTorque(screw, screw_class, low, high, "", SOURCE, "published", "")


def rule(key: str, value: float) -> list[row.Rule]:
    """Our rules, one of them with another figure."""
    ours = {r.key: r for r in tables().raw["rules"]}
    ours[key] = row.Rule(key, value, ours[key].unit, ours[key].text, SOURCE, "published")
    return list(ours.values())


def assembly(**more: Any) -> AssemblySpec:
    """The made-up hose in -12 with a 37 degree swivel nut at both ends, 1000 mm long."""
    return both(HOSE, 12, end("sae_37_flare", 12), **more)


def made_up(**files: list[Any]) -> Tables:
    """Tables of the made-up hose: 100 bar, its ends 120 bar, everything else as given."""
    rows: dict[str, list[Any]] = {
        "hose_standards": [standard()],
        "hose_editions": [],
        "hose_pressure": [hose(100)],
        "connection_pressure": [ending(120)],
        "hose_bend": [bend(200)],
        "hose_size": [body(19, 30)],
        "hose_fluids": [],
        "tightening": [],
        "length_bands": [band(5, 10)],
    }
    return tables_with(**rows | files)
