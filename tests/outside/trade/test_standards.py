"""Thread arithmetic, length bands, clocking and test factors against published standards."""

from __future__ import annotations

import csv
import math
from fractions import Fraction
from pathlib import Path

import pytest

from tagger.messages import Message
from tagger.spec import Connection, Hose
from tagger.trade import assess, geometry, rating
from tagger.trade.identifying.identify import Measurements, identify
from tagger.trade.likeforlike import end_for_end
from tagger.trade.tables import tables
from tests.trade.specs import both, end, example

FOLDER = Path(__file__).parent


def of(name: str) -> list[dict[str, str]]:
    with (FOLDER / name).open(encoding="utf-8", newline="") as file:
        return list(csv.DictReader(file))


def inches(text: str) -> float:
    return float(sum(Fraction(part) for part in text.split())) * 25.4


@pytest.mark.parametrize("row", of("asme_b1_1_basic_minor_diameters.csv"), ids=lambda row: row["thread"])
def test_female_minor_diameters_are_those_of_asme_b1_1(row: dict[str, str]) -> None:
    found = [
        t for t in tables().threads.values() if t.thread.startswith(row["thread"]) and t.thread_form == "un"
    ]
    assert found
    for thread in found:
        assert thread.female_minor_mm == pytest.approx(float(row["inches"]) * 25.4, abs=0.003)


@pytest.mark.parametrize("row", of("iso_228_1_threads.csv"), ids=lambda row: row["size"])
def test_bsp_threads_are_those_of_iso_228_1(row: dict[str, str]) -> None:
    thread = tables().threads[Connection.BSPP, row["size"]]
    assert thread.tpi == float(row["tpi"])
    if row["minor_mm"]:
        assert thread.female_minor_mm == pytest.approx(float(row["minor_mm"]), abs=0.002)
    if row["major_mm"]:
        assert thread.thread_od_mm == pytest.approx(float(row["major_mm"]), abs=0.011)


@pytest.mark.parametrize("row", of("asme_b1_20_1_pipe_threads.csv"), ids=lambda row: row["size"])
@pytest.mark.parametrize("family", [Connection.NPT, Connection.NPTF, Connection.NPSM])
def test_pipe_threads_are_those_of_asme_b1_20_1(family: Connection, row: dict[str, str]) -> None:
    thread = tables().threads[family, row["size"]]
    assert thread.tpi == float(row["tpi"])
    assert thread.thread_od_mm == pytest.approx(float(row["outside_diameter_in"]) * 25.4, abs=0.002)


@pytest.mark.parametrize("row", of("sae_j514_37_degree_flare_threads.csv"), ids=lambda row: row["dash"])
def test_37_degree_threads_and_nuts(row: dict[str, str]) -> None:
    thread = tables().threads[Connection.SAE_37_FLARE, row["dash"]]
    assert thread.thread.startswith(row["thread"])
    nuts = [h.hex_mm for h in tables().hexes if (h.family, h.size) == (Connection.SAE_37_FLARE, row["dash"])]
    assert any(nut == pytest.approx(inches(row["hex_in"]), abs=0.01) for nut in nuts)


@pytest.mark.parametrize(
    "row", of("din_20066_length_bands.csv"), ids=lambda row: f"{row['over_mm']} {row['bores']}"
)
def test_length_bands_are_those_of_din_20066(row: dict[str, str]) -> None:
    dash = {"up to DN 25": 16, "DN 32 to DN 50": 32, "DN 60 to DN 100": 40, "all bores": 12}[row["bores"]]
    length = float(row["over_mm"]) + 5
    found = geometry.length_tolerance(length, Hose(standard="EN 853 2SN", dash=dash), tables())
    scale = length / 100 if row["unit"] == "percent" else 1
    assert found is not None
    assert found.plus == pytest.approx(float(row["plus"]) * scale, abs=0.051)
    assert found.minus == pytest.approx(float(row["minus"]) * scale, abs=0.051)


def test_a_short_sae_assembly_is_within_an_eighth_of_an_inch() -> None:
    # SAE J517's first band, public engineering note on overall length of hose assemblies.
    found = geometry.length_tolerance(300, Hose(standard="SAE 100R2", dash=12), tables())
    assert found is not None and found.minus == found.plus == pytest.approx(25.4 / 8, abs=0.05)


@pytest.mark.parametrize(("length", "degrees"), [(609, 3), (700, 5)])
def test_clocking_tolerance_is_that_of_mil_dtl_83796_5(length: int, degrees: int) -> None:
    # MIL-DTL-83796-5, page 6: +/-3 degrees up to 2 ft (61 cm), +/-5 above.
    elbow = end("sae_37_flare", 12, shape="elbow_90")
    assert (
        assess(both("SAE 100R17", 12, elbow, clocking_deg=0, length_mm=length)).clocking_tolerance_deg
        == degrees
    )


def _seen(angle_deg: float, from_a: bool) -> float:
    """The angle counter-clockwise from end A's elbow to end B's, seen along the hose from one of its ends.

    Elbow A points down, elbow B at ``angle_deg`` counter-clockwise seen from A; x and y are A's view.
    """
    side = 1 if from_a else -1  # from the other end left and right change sides
    down = math.radians(-90)
    a = math.atan2(math.sin(down), side * math.cos(down))
    b = math.atan2(math.sin(down + math.radians(angle_deg)), side * math.cos(down + math.radians(angle_deg)))
    return math.degrees(b - a) % 360


@pytest.mark.parametrize("angle", [0, 45, 90, 180, 270, 315])
def test_clocking_stays_when_the_ends_change_places_by_mil_dtl_83796_5(angle: int) -> None:
    # MIL-DTL-83796-5 Figure 3: counter-clockwise from the near elbow to the far one.
    assert _seen(angle, from_a=True) == pytest.approx(angle)
    from_b_to_a = -_seen(angle, from_a=False) % 360  # B is near: counted from B's elbow to A's
    assert from_b_to_a == pytest.approx(angle)
    elbow = end("sae_37_flare", 12, shape="elbow_90")
    spec = both("SAE 100R17", 12, elbow, clocking_deg=angle)
    assert end_for_end(spec).clocking_deg == angle


@pytest.mark.parametrize(
    "row", of("bolt_tables_by_class.csv"), ids=lambda row: f"{row['screw']} {row['source'][:20]}"
)
def test_a_torque_belongs_to_one_property_class_and_the_guide_of_a_flange_says_so(
    row: dict[str, str],
) -> None:
    """General bolt tables, not flange tables: the stronger class takes more torque at one size."""
    assert float(row["torque_nm"]) < float(row["stronger_nm"])
    for family, step in (("flange_code61", "screw_class"), ("flange_code62", "screw_class_62")):
        found = assess(both("EN 856 4SH", 16, end(family, 16, "flange_head"))).end_a.steps
        assert step in found and found.index(step) < found.index("flange_cross")
    said = str(Message("fit-screw_class"))
    assert said.index("10.9") < said.index("more") < said.index("8.8")


@pytest.mark.parametrize(
    "row", of("bolt_torques.csv"), ids=lambda row: f"{row['screw']} {row['class']} {row['source'][:20]}"
)
def test_a_general_bolt_table_is_kept_by_class(row: dict[str, str]) -> None:
    """Told beside the torque of a flange whose source names no class; never the torque itself."""
    kept = [
        (r.torque_min_nm, r.torque_max_nm)
        for r in tables().raw["screw_torques"]
        if (r.screw, r.screw_class, r.source) == (row["screw"], row["class"], row["source"])
    ]
    assert (float(row["torque_min_nm"]), float(row["torque_max_nm"])) in kept
    for family in ("flange_code61", "flange_code62"):
        assert row["source"] not in {r.source for r in tables().raw["tightening"] if r.family == family}


def test_proof_is_twice_and_burst_four_times_the_working_pressure() -> None:
    # SAE J343 by a public testing page; US Navy NAVEDTRA 14018 chapter 6 (proof twice operating pressure).
    found = assess(example())
    working = found.working_pressure.value_bar
    assert working is not None
    assert found.test_pressure_bar == pytest.approx(2 * working, abs=0.1)
    assert found.burst_pressure_bar == pytest.approx(4 * working, abs=0.1)


def test_dash_is_sixteenths_of_an_inch_of_hose_bore() -> None:
    # Common practice, no source: -4 is 1/4 in, -12 is 3/4 in, -32 is 2 in.
    for dash, mm in ((4, 6.35), (12, 19.05), (32, 50.8)):
        assert geometry.bore_mm(Hose(standard="EN 853 2SN", dash=dash), tables()) == pytest.approx(
            mm, abs=0.4
        )


def test_37_degree_flare_runs_from_2_to_40() -> None:
    # Common practice, no source.
    sizes = tables().sizes(Connection.SAE_37_FLARE)
    assert (sizes[0], sizes[-1]) == ("2", "40")


def test_37_and_45_degree_flares_share_the_thread_in_the_published_sizes_only() -> None:
    # Two public pages: -2, -3, -4, -5, -8 and -10 share it; -6 and -12 do not.
    threads = tables().threads
    shared = {
        size for (family, size), t in threads.items()
        if family is Connection.SAE_45_FLARE and t.pitch_mm == threads[Connection.SAE_37_FLARE, size].pitch_mm
        and t.thread_od_mm == threads[Connection.SAE_37_FLARE, size].thread_od_mm
    }  # fmt: skip
    assert shared == {"2", "3", "4", "5", "8", "10"}


@pytest.mark.parametrize(
    ("given", "family", "size"),
    [
        # OEM manual tables; public port and thread identification pages.
        ({"thread_od": "1 3/16 in", "tpi": 12, "seat": "face"}, "orfs", "12"),
        ({"thread_od": "9/16 in", "tpi": 18, "seat": "face"}, "orfs", "4"),
        ({"thread_od": "9/16 in", "tpi": 18, "seat": "37"}, "sae_37_flare", "6"),
        ({"thread_od": "9/16 in", "tpi": 18, "seat": "boss"}, "sae_orb", "6"),
        ({"thread_od": "3/4 in", "tpi": 16, "seat": "37"}, "sae_37_flare", "8"),
        ({"thread_od": "3/4 in", "tpi": 16, "seat": "45"}, "sae_45_flare", "8"),
        ({"thread_od": "0.54 in", "tpi": 18, "seat": "taper"}, "npt", "1/4"),
        ({"thread_od": "13.1", "tpi": 19, "seat": "60"}, "bspp", "1/4"),
        ({"thread_od": "16", "pitch": 1.5, "seat": "24", "tube_od": 10}, "din24_light", "10"),
    ],
)
def test_published_identification_examples(given: dict[str, object], family: str, size: str) -> None:
    found = identify(Measurements.read(form="male", **given))
    same_thread = [c for c in found.candidates[:2] if (c.connection, c.size) == (family, size)]
    assert same_thread and not same_thread[0].contradicts


def codes(standard: str, dash: int, **more: object) -> dict[str, str]:
    found = assess(both(standard, dash, end("sae_37_flare", dash), **more))
    return {w.code: w.severity for w in found.warnings}


def test_en_853_2sn_is_for_minus_40_to_100_degrees_and_for_no_ester() -> None:
    # EN 853:2015, abstract: -40 to +100 °C; not for castor-oil or ester fluids.
    assert "too_hot" not in codes("EN 853 2SN", 8, max_temperature_c=100)
    assert codes("EN 853 2SN", 8, max_temperature_c=101)["too_hot"] == "danger"
    assert "too_cold" not in codes("EN 853 2SN", 8, max_temperature_c=-40)
    assert codes("EN 853 2SN", 8, max_temperature_c=-41)["too_cold"] == "danger"
    assert codes("EN 853 2SN", 8, fluid="synthetic_ester")["fluid_not_suited"] == "danger"


def test_en_853_2sn_takes_water_based_fluids_to_70_degrees_and_water_above_freezing() -> None:
    # EN 853:2015, abstract: water based fluids -40 to +70 °C, water 0 to +70 °C.
    assert "too_hot_for_fluid" not in codes("EN 853 2SN", 8, fluid="water_glycol", max_temperature_c=70)
    assert codes("EN 853 2SN", 8, fluid="water_glycol", max_temperature_c=71)["too_hot_for_fluid"] == "danger"
    assert codes("EN 853 2SN", 8, fluid="water")["cold_limit_of_fluid"] == "care"


@pytest.mark.parametrize("standard", ["EN 854 2TE", "EN 856 4SH", "EN 856 R13", "EN 857 2SC"])
def test_esters_are_not_for_the_other_en_hoses_either(standard: str) -> None:
    # EN 854:2015 and EN 856:2015, abstracts; EN 857:2015, scope as quoted on a public page.
    assert codes(standard, 12, fluid="synthetic_ester")["fluid_not_suited"] == "danger"


@pytest.mark.parametrize(("dash", "bar"), [(3, 25), (4, 25), (5, 20), (6, 20), (8, 16), (10, 16)])
def test_en_854_1te_is_not_rated_as_sae_100r6(dash: int, bar: float) -> None:
    # EN 854 1TE, from memory; makers sell SAE 100R6 under the name, whose figures are higher.
    rated, _ = rating.hose_rating(Hose(standard="EN 854 1TE", dash=dash), tables())
    assert (rated.value_bar, rated.confidence) == (bar, "memory")


def test_common_practice_tightens_a_12_by_1_to_1_1_2_flats_from_finger_tight() -> None:
    # Common practice, no source.
    rows = tables().tightening[Connection.SAE_37_FLARE]
    kept = [r for r in rows if r.size == "12" and r.confidence == "practice"]
    assert [(r.flats_min, r.flats_max, r.basis) for r in kept] == [(1, 1.5, "finger_tight")]


def test_nonferrous_fittings_take_half_of_the_steel_torque() -> None:
    # A diesel engine's workshop manual; another manual says 70 %.
    assert tables().rule("soft_metal_percent").value == 50


def test_storage_and_service_years_are_those_of_the_standards() -> None:
    # ISO 8331 (1991) as quoted on two public storage pages; DIN 20066 as quoted on a public technical page.
    years = {key: tables().rule(key).value for key in tables().rules if "_years_" in key}
    assert (years["bulk_hose_years_iso"], years["assembly_storage_years_iso"]) == (4, 2)
    assert (years["bulk_hose_years_din"], years["assembly_storage_years_din"]) == (4, 2)
    assert years["assembly_life_years_din"] == 6
