"""The upgrade of the guide (``api/deploy/README.md``), from a database that the program's version 0.1 wrote itself.

``golden/written_by_0_1.copy.xz`` is the backup of an invented week's records, made by that version: a SQLite file with
four of today's steps of the tables.
"""

from __future__ import annotations

import lzma
import sqlite3
from contextlib import closing
from datetime import date
from pathlib import Path
from typing import Any

import pytest
from sqlalchemy.engine import make_url

from tagger.code import link, payload
from tagger.errors import StoreError
from tagger.store import Scope, Store
from tagger.store.backup import drill
from tests.store.samples import assessment, spec

WRITTEN = Path(__file__).parents[1] / "golden" / "written_by_0_1.copy.xz"
KEPT = "number, customer, machine, position, hose_lot, fitting_lot_a, built_on, digits, working_pressure_bar"


def _old_rows(file: Path) -> list[tuple[Any, ...]]:
    with closing(sqlite3.connect(file)) as old:
        return old.execute(f"SELECT {KEPT} FROM assembly").fetchall()


@pytest.fixture
def copy(tmp_path: Path) -> Path:
    file = tmp_path / "tags-20260101-023000.copy"
    file.write_bytes(lzma.decompress(WRITTEN.read_bytes()))
    return file


def test_records_of_version_0_1_are_all_there_after_install_and_start_and_a_copy_of_them_serves(
    copy: Path, new_url: str, tmp_path: Path
) -> None:
    """On SQLite its own file is started on; on PostgreSQL its copy is restored, which is the guide's way back as well."""
    before = _old_rows(copy)
    address = make_url(new_url)
    if address.get_backend_name() == "sqlite":
        Path(str(address.database)).write_bytes(copy.read_bytes())
    else:
        with Store.open(new_url) as store:
            with pytest.raises(StoreError, match="no checksum"):
                store.restore(copy)
            store.restore(copy, unsealed=True)
    with Store.open(new_url) as store:
        assert store.count() == len(before) == 19
        for number, customer, machine, position, hose_lot, fitting_lot, built_on, digits, bar in before:
            now = store.assembly(number)
            assert now is not None
            assert (now.customer, now.machine, now.position) == (customer, machine, position)
            assert (now.spec.hose.lot, now.spec.end_a.lot) == (hose_lot, fitting_lot)
            assert (now.built_on, now.digits) == (date.fromisoformat(built_on), digits)
            assert now.assessment.working_pressure.value_bar == bar, "what was registered stays what it was"
            tag = link.parse(link.build("https://tags.example.com", number, digits))
            content = payload.decode(tag.digits or "")
            assert content.spec.length_mm == now.spec.length_mm, "a tag printed then reads today"
        assert store.audit().broken is None and store.audit().head.links > 0
        [held] = store.withdrawals(holds=True)
        assert (held.scope, held.value) == (Scope.HOSE_LOT, "H-2310")
        assert len(store.affected(held.scope, "h 2310")) == sum(row[4] == "H-2310" for row in before) > 0
        [made] = store.register(spec(), assessment(), customer="Brindlemere Quarry")
        if address.get_backend_name() == "sqlite":
            store.backup(tmp_path / "after.copy")
            assert drill(tmp_path / "after.copy").rows["assembly"] == 20
    with Store.open(new_url) as store:
        assert store.assembly(made.number) is not None


def test_the_guide_tells_these_steps_in_this_order() -> None:
    guide = (Path(__file__).parents[2] / "api/deploy/README.md").read_text(encoding="utf-8")
    steps = guide.split("## A newer version")[1].split("\n## ")[0]
    told = [
        "start tagger-backup.service",
        "stop tagger",
        "pip install --upgrade",
        "start tagger\n",
        "--unsealed",
    ]
    places = [steps.index(step) for step in told]
    assert places == sorted(places)
