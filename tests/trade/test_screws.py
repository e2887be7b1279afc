"""Which screw a flange's torque belongs to: told only by rows that say it of a hose's flange."""

from __future__ import annotations

from tagger.trade import screws
from tagger.trade.tables import tables


def test_every_range_names_its_screw_and_comes_from_a_row_for_hoses_and_cap_screws() -> None:
    found = {(key, *entry) for key, entries in screws.table().items() for entry in entries}
    assert found == {
        (f"{family}|{row.size}", row.torque_min_nm, row.torque_max_nm, row.screw)
        for family, rows in tables().tightening.items()
        for row in rows
        if all(("cap_screw" in row.part, row.use == "hose", row.screw, row.torque_max_nm is not None))
    }
    assert found and all(screw and high for _, _, high, screw in found)
