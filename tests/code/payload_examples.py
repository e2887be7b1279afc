"""Contents that between them use every field of the payload; the golden vectors are made of these."""

from __future__ import annotations

from datetime import date

from tagger.spec import AssemblySpec, Basis, Danger, TagContent, Tightening

BOTH = Tightening(
    torque_min_nm=81.9,
    torque_max_nm=96,
    flats_min=1,
    flats_max=1.25,
    flats_basis=Basis.FINGER_TIGHT,
    lubrication="lightly_oiled",
)


def _content(spec: dict[str, object], **rest: object) -> TagContent:
    return TagContent(spec=AssemblySpec.read(spec), **rest)  # type: ignore[arg-type]


def _end(connection: str, size: int | str, form: str = "female_swivel", **rest: object) -> dict[str, object]:
    return {"connection": connection, "dash" if isinstance(size, int) else "size": size, "form": form, **rest}


EXAMPLES: dict[str, TagContent] = {
    "contract_example": _content(
        {
            "hose": {"standard": "SAE 100R2", "dash": 12},
            "end_a": _end("sae_37_flare", 12),
            "end_b": _end("sae_37_flare", 12, shape="elbow_90", drop_mm=56),
            "length_mm": 1250,
            "max_temperature_c": 100,
            "fluid": "mineral_oil",
            "covers": ["abrasion_sleeve"],
        },
        working_pressure_bar=155.1,
        tighten_a=BOTH,
        tighten_b=BOTH,
        built_on=date(2026, 11, 25),
    ),
    "two_elbows_every_figure": _content(
        {
            "hose": {"standard": "SAE 100R2", "edition": "S", "dash": 12},
            "end_a": _end("sae_37_flare", 16, shape="elbow_90", drop_mm=60.5, hose_dash=12),
            "end_b": _end("orfs", 16, shape=67, drop_mm="2 1/4 in", hose_dash=12, material="stainless_steel"),
            "length_mm": "49 1/4 in",
            "length_basis": "elbow_centreline",
            "clocking_deg": 270,
            "max_temperature_c": -20,
            "fluid": "refrigerant",
            "covers": ["spring_guard", "bend_restrictor"],
            "vacuum_bar": 0.84,
            "working_pressure": {
                "value_bar": 120,
                "source": "maker's data sheet",
                "fluid": "refrigerant",
                "max_temperature_c": -20,
            },
        },
        working_pressure_bar=120,
        unverified_parts=("hose", "end_b"),
        dangers=(Danger.FLUID, Danger.COLD),
        tighten_a=BOTH,
        tighten_b=BOTH,
        built_on=date(2054, 11, 8),
    ),
    "nothing_optional": _content(
        {
            "hose": {"standard": "SAE 100R1", "dash": 4},
            "end_a": _end("npt", "1/4", "male"),
            "end_b": _end("din24_light", "8"),
            "length_mm": 10,
        }
    ),
    "flanges_and_ceiling_torque": _content(
        {
            "hose": {"standard": "EN 856 4SH", "dash": 32},
            "end_a": _end("flange_code62", 32, "flange_head", shape="elbow_45"),
            "end_b": _end("flange_code61", 32, "flange_head"),
            "length_mm": 100_000,
        },
        working_pressure_bar=207,
        tighten_a=Tightening(torque_max_nm=550, screw="M20"),
        tighten_b=Tightening(torque_min_nm=62, torque_max_nm=77.5, lubrication="not_stated", screw="1/2 in"),
    ),
    "metric_threads": _content(
        {
            "hose": {"standard": "ISO 18752 420", "dash": 10},
            "end_a": _end("metric_orb", "M22x1.5", "male"),
            "end_b": _end("jis_30", "M24x1.5", material="brass"),
            "length_mm": 333.3,
            "length_basis": "thread_end",
        },
        tighten_b=Tightening(
            torque_min_nm=1500.1,
            torque_max_nm=1600,
            flats_min=0.25,
            flats_max=0.3333,
            flats_basis=Basis.WRENCH_RESISTANCE,
        ),
    ),
    "hose_named_in_full": _content(
        {
            "hose": {"standard": "Shop's own 4-wire", "edition": "2019", "dash": 8},
            "end_a": _end("bspp", "1/2"),
            "end_b": _end("jis_60", "1/2", "female_fixed", material="aluminium"),
            "length_mm": 800,
            "working_pressure": {"value_bar": 280, "source": "a letter in the drawer"},
        },
        working_pressure_bar=280,
    ),
    "known_parts_only": _content(
        {
            "hose": {"standard": "EN 853 2SN", "dash": 8},
            "end_a": _end("metric_orb", "M22x1.5", "male", series="S"),
            "end_b": _end("sae_orb", 8, "male", shape="elbow_90"),
            "length_mm": 700,
            "vacuum_bar": 1,
        },
        at_most_bar=190.3,
        unknown_parts=("end_a", "end_b"),
        dangers=(Danger.PRESSURE,),
        tighten_b=Tightening(flats_min=9, flats_max=18, flats_basis=Basis.NOT_STATED),
        key_id=255,
    ),
    "nothing_known_and_a_source_that_names_the_fluid": _content(
        {
            "hose": {"standard": "EN 853 2SN", "dash": 8},
            "end_a": _end("jis_30", "M22x1.5"),
            "end_b": _end("jis_30", "M22x1.5"),
            "length_mm": 700,
            "working_pressure": {
                "value_bar": 200,
                "source": "test certificate",
                "fluid": "mineral_oil",
                "max_temperature_c": 80,
            },
        },
        working_pressure_bar=200,
        dangers=(Danger.HEAT,),
    ),
    "described_end": _content(
        {
            "hose": {"standard": "SAE 100R2", "dash": 8},
            "end_a": {
                "connection": "other",
                "description": "Block, face seal M20x1.5",
                "form": "male",
                "shape": "elbow_90",
            },
            "end_b": _end("sae_37_flare", 8),
            "length_mm": 900,
        },
        at_most_bar=190,
        unknown_parts=("end_a",),
    ),
    "ends_without_a_thread_of_their_own": _content(
        {
            "hose": {"standard": "EN 853 2SN", "dash": 6},
            "end_a": _end("qd_iso16028", 6, "coupler_male"),
            "end_b": _end("din_standpipe", "12L", "standpipe"),
            "length_mm": 640,
        },
        at_most_bar=330,
        unknown_parts=("end_a", "end_b"),
    ),
    "named_size_and_banjo": _content(
        {
            "hose": {"standard": "EN 853 1SN", "dash": 6},
            "end_a": _end("french_gas", "13.25"),
            "end_b": _end("banjo_bsp", "3/8", "eye"),
            "length_mm": 640,
        },
        working_pressure_bar=120,
        unverified_parts=("end_a",),
    ),
}
