"""An assembly to register. Its figures are invented for these tests; no table is asked."""

from __future__ import annotations

from tagger.spec import AssemblySpec
from tagger.trade.results import Assessment, EndAdvice, WorkingPressure


def spec(**changes: object) -> AssemblySpec:
    end = {"connection": "sae_37_flare", "dash": 12, "form": "female_swivel", "lot": "F-118"}
    return AssemblySpec.read(
        {
            "hose": {"standard": "SAE 100R2", "dash": 12, "lot": "H-2291"},
            "end_a": end,
            "end_b": {**end, "shape": "elbow_90", "drop_mm": 56, "lot": "F-119"},
            "length_mm": 1250,
            "note": "boom cylinder, rod side",
            **changes,
        }
    )


def assessment(bar: float | None = 172.0) -> Assessment:
    nothing = EndAdvice(torque=None, flats=None)
    return Assessment(
        working_pressure=WorkingPressure(value_bar=bar, limited_by="hose", source="invented for a test"),
        test_pressure_bar=None,
        burst_pressure_bar=None,
        length_tolerance=None,
        clocking_tolerance_deg=None,
        bend_radius_mm=None,
        bend_radius_source="",
        hose_od_mm=None,
        hose_od_source="",
        end_a=nothing,
        end_b=nothing,
    )
