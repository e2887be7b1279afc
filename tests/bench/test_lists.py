"""Lists in: matched, run dry, registered whole; also when the machine dies in between."""

from __future__ import annotations

import contextlib
import csv
import datetime
import html
import io
import re
import signal
import threading
import time
from pathlib import Path
from typing import Literal

import httpx
import openpyxl
import pytest

from api.settings import Settings
from api.shared import list_import
from tagger import list_columns
from tagger.errors import SpecError
from tagger.store import Filter, Role, Store
from tagger.trade import assess
from tagger.trade.tables import tables
from tests import processes
from tests.bench.served import Bench, serving
from tests.ports import free_port
from tests.store.test_fittings import ROW as FITTING
from tests.volume import volume

HEADING = [
    "Hose type",
    "Dash",
    "End A",
    "end_a.dash",
    "end_a.form",
    "End B",
    "end_b.dash",
    "end_b.form",
    "OAL",
    "Qty",
    "Machine",
    "Colour",
]
GOOD = [
    "R2",
    12,
    "sae_37_flare",
    12,
    "female_swivel",
    "sae_37_flare",
    12,
    "female_swivel",
    1250,
    1,
    "Loader 4",
    "red",
]


def _xlsx(*rows: list[object]) -> bytes:
    book = openpyxl.Workbook()
    for row in (HEADING, *rows):
        book.active.append(row)
    out = io.BytesIO()
    book.save(out)
    return out.getvalue()


def _field(page: str, name: str) -> str:
    found = re.search(f'name="{name}" value="([^"]*)"', page)
    assert found is not None, name
    return html.unescape(found[1])


def _upload(bench: Bench, data: bytes, name: str = "order.xlsx") -> tuple[str, dict[str, object]]:
    """The matching page, and the form as it would be sent on."""
    page = bench.post("/bench/lists/read", data={"csrf": bench.csrf}, files={"file": (name, data)})
    assert page.status_code == 200, page.text
    return page.text, _form(page.text)


def _form(page: str) -> dict[str, object]:
    selects = re.findall(r'<select name="match".*?</select>', page, re.DOTALL)
    chosen = [re.search(r"<option selected>([^<]*)<", select) for select in selects]
    form: dict[str, object] = {name: _field(page, name) for name in ("key", "name", "cells")}
    form["match"] = [found[1] if found else "" for found in chosen]
    return form


def test_plain_columns_are_matched_and_others_left_out(bench: Bench) -> None:
    _, form = _upload(bench, _xlsx(GOOD))
    assert form["match"] == [
        "hose.standard", "hose.dash", "end_a.connection", "end_a.dash", "end_a.form", "end_b.connection",
        "end_b.dash", "end_b.form", "length_mm", "quantity", "machine", "",
    ]  # fmt: skip
    assert "Not read: Colour. Nothing from these columns" in bench.submit("/bench/lists/dry", form).text


def test_a_dry_run_names_every_problem_by_cell_and_writes_nothing(bench: Bench, store: Store) -> None:
    bad_length, bad_dash, bad_end = [*GOOD], [*GOOD], [*GOOD]
    bad_length[8], bad_dash[3], bad_end[5] = "long", 7, "gas thread"
    bad_length[6] = 7
    _, form = _upload(bench, _xlsx(GOOD, bad_length, GOOD, bad_dash, bad_end))
    page = bench.submit("/bench/lists/dry", form)
    assert page.status_code == 422
    assert re.findall(r'<td class="tagno">([A-Z]+\d+|row \d+)</td>', page.text) == ["F6", "I3", "G3", "D5"]
    assert store.count() == 0
    refused = bench.submit("/bench/lists/run", form)
    assert refused.status_code == 422 and store.count() == 0


def test_200_pieces_from_one_spreadsheet_dry_run_fix_run(bench: Bench, store: Store) -> None:
    rows = [[*GOOD[:8], 1000 + n, 4, f"Loader {n}", ""] for n in range(50)]
    rows[30][8] = "?"
    _, form = _upload(bench, _xlsx(*rows))
    assert "I32" in bench.submit("/bench/lists/dry", form).text
    rows[30][8] = "41 in"
    _, form = _upload(bench, _xlsx(*rows))
    dry = bench.submit("/bench/lists/dry", form)
    assert "Register 200 and print" in dry.text and store.count() == 0
    done = bench.submit("/bench/lists/run", form)
    assert "200 tags registered" in done.text
    assert store.count() == 200
    bench.submit("/bench/lists/run", form)
    assert store.count() == 200, "sent twice, registered once"
    assert store.count(Filter(machine="Loader 30")) == 4


def test_a_size_that_became_a_day_is_told(bench: Bench) -> None:
    _, form = _upload(bench, _xlsx([*GOOD[:3], datetime.datetime(2026, 4, 3), *GOOD[4:]]))
    assert "The spreadsheet turned this into a date" in bench.submit("/bench/lists/dry", form).text


def test_what_was_exported_can_be_read_in_again(bench: Bench, store: Store) -> None:
    _, form = _upload(bench, _xlsx(GOOD))
    bench.submit("/bench/lists/run", form)
    exported = bench.get("/bench/find.csv").content
    [row] = list(csv.DictReader(io.StringIO(exported.decode("utf-8-sig"))))
    assert row["machine"] == "Loader 4"
    _, form = _upload(bench, exported, "assemblies.csv")
    bench.submit("/bench/lists/run", form)
    first, second = store.find().assemblies
    assert first.spec == second.spec and first.number != second.number
    book = openpyxl.load_workbook(io.BytesIO(bench.get("/bench/find.xlsx").content))
    assert len(list(book.active.iter_rows())) == 3


@pytest.mark.parametrize("text", ["", "[]", "{", "[[1", '{"a": 1}'])
def test_a_list_damaged_on_its_way_is_refused(bench: Bench, store: Store, text: str) -> None:
    page = bench.submit("/bench/lists/run", {"cells": text, "match": ["hose.dash"], "key": "k", "name": "n"})
    assert page.status_code == 422 and store.count() == 0


def test_a_file_that_is_no_list_is_refused_in_words(bench: Bench) -> None:
    for data, name in ((b"PK not really", "a.xlsx"), (b"hose.dash\n", "a.csv"), (b"", "a.csv")):
        page = bench.post("/bench/lists/read", data={"csrf": bench.csrf}, files={"file": (name, data)})
        assert page.status_code == 422, name


_SERVE = """
import os, signal, sys, uvicorn
from sqlalchemy import Engine, event
from api.app import create_app
from api.settings import Settings
url, port, when = sys.argv[1:]
if when == "written":  # the whole run is, and nothing of it is committed
    @event.listens_for(Engine, "commit")
    def dying(connection):
        if connection.exec_driver_sql("SELECT count(*) FROM assembly").scalar():
            os.kill(os.getpid(), signal.SIGKILL)
uvicorn.run(create_app(Settings(database_url=url, port=int(port))), port=int(port), log_level="error")
"""


def _serve(url: str, when: str = "") -> tuple[processes.Process, str]:
    port = free_port()
    process = processes.start(("-c", _SERVE, url, str(port), when))
    address = f"http://127.0.0.1:{port}"
    for _ in range(400):
        try:
            httpx.get(f"{address}/bench/sign-in")
            return process, address
        except httpx.TransportError:
            assert process.poll() is None, "the server did not start"
            time.sleep(0.05)
    raise AssertionError("the server did not start")


def test_a_run_whose_server_is_killed_is_whole_or_not_there(tmp_path: Path, password_hash: str) -> None:
    url = f"sqlite:///{tmp_path / 'tags.sqlite3'}"
    with Store.open(url) as store:
        store.add_person("manager", password_hash, Role.MANAGER)
        rows = [[*GOOD[:8], 1000 + n, 20, "", ""] for n in range(volume(20, 200))]
        whole, outcomes, form = 20 * len(rows), set(), None
        for delay in volume((None,), (None, 0.05, 0.15, 0.3, 0.5, 0.8, 1.2, 1.8, 2.6)):
            process, address = _serve(url, "written" if delay is None else "")
            with Bench(address, store, "manager") as bench:
                form = form or _upload(bench, _xlsx(*rows))[1]
                run = {**form, "key": f"killed after {delay}"}
                before = store.count()

                def sent(bench: Bench = bench, run: dict[str, object] = run) -> None:
                    with contextlib.suppress(httpx.TransportError):
                        bench.submit("/bench/lists/run", run)

                sender = threading.Thread(target=sent)
                sender.start()
                if delay is not None:
                    time.sleep(delay)
                    process.send_signal(signal.SIGKILL)
                assert process.wait() == -signal.SIGKILL
                sender.join()
            written = store.count() - before
            assert written in ((0,) if delay is None else (0, whole)), f"half a run: {written}"
            outcomes.add(written)
            if outcomes == {0, whole}:
                break
        # Sent again with its key, the run that was cut off is done once.
        process, address = _serve(url)
        try:
            before = store.count()
            with Bench(address, store, "manager") as bench:
                for _ in range(2):
                    bench.submit("/bench/lists/run", {**(form or {}), "key": "killed after None"})
            assert store.count() - before == whole
        finally:
            process.kill()
            process.wait()


def test_a_list_longer_than_one_page_holds_is_refused() -> None:
    with pytest.raises(SpecError, match="more than 5000 rows"):
        list_import.read("a.csv", b"hose.dash\n" + b"12\n" * 5001)


@pytest.mark.parametrize("bands", ["sae", "din"])
def test_a_list_holds_to_the_shops_length_bands(
    store: Store, settings: Settings, bands: Literal["sae", "din"]
) -> None:
    own = settings.model_copy(update={"length_bands": bands})
    with serving(own, store) as served, Bench(served.url, store, "manager") as bench:
        _, form = _upload(bench, _xlsx(GOOD))
        bench.submit("/bench/lists/run", form)
    [kept] = store.find().assemblies
    assert kept.assessment == assess(kept.spec, length_bands=bands)


OWN = "Hose type,Dash,end_a.connection,end_a.dash,end_a.form,end_b.connection,end_b.dash,end_b.form"
ROW = "R2,12,sae_37_flare,12,female_swivel,sae_37_flare,12,female_swivel"


def _lengths(bench: Bench, store: Store, heading: str, *cells: str, delimiter: str = ",") -> list[float]:
    text = "\n".join((f"{OWN},{heading}", *(f"{ROW},{cell}" for cell in cells)))
    _, form = _upload(bench, text.replace(",", delimiter).replace("#", ",").encode(), "list.csv")
    assert form["match"][-1] == "length_mm"  # type: ignore[index]
    assert bench.submit("/bench/lists/run", form).status_code == 200
    return [item.spec.length_mm for item in reversed(store.find().assemblies)]


def test_the_unit_in_a_heading_is_read(bench: Bench, store: Store) -> None:
    lengths = _lengths(bench, store, "Length (in)", "236", "49 1/4", "900 mm")
    assert lengths == [5994.4, 1251.0, 900.0]


@pytest.mark.parametrize(
    ("heading", "mm"),
    [
        ("OAL mm", 150.0), ("Overall length [cm]", 1500.0), ("Length ft", 45720.0), ('OAL"', 3810.0),
        ("Length ″", 3810.0), ("Length (”)", 3810.0), ("Length''", 3810.0), ("Length'", 45720.0),
    ],
)  # fmt: skip
def test_each_unit_that_a_heading_may_name(bench: Bench, store: Store, heading: str, mm: float) -> None:
    assert _lengths(bench, store, heading, "150") == [mm]


def test_a_heading_that_names_no_plain_unit_is_told_and_nothing_is_read_as_mm(
    bench: Bench, store: Store
) -> None:
    """788 under "Length (1/16 in)", matched by hand, was 788 mm; 14 under "Length (dm)" was 14 mm."""
    headings = ["L (1/16 in)", "Length (dm)", "Length (mm or in)", "Length mm/in", "Length, yards"]
    for heading in headings:
        _, form = _upload(bench, f'{OWN},"{heading}"\n{ROW},788\n'.encode(), "list.csv")
        form["match"] = [*form["match"][:-1], "length_mm"]  # type: ignore[index]
        refused = bench.submit("/bench/lists/run", form)
        assert refused.status_code == 422 and "does not name one unit" in refused.text, heading
    assert store.count() == 0


def test_a_decimal_comma_is_read_as_one(bench: Bench, store: Store) -> None:
    assert _lengths(bench, store, "Length (in)", "49#25", delimiter=";") == [1251.0]


def test_a_decimal_comma_that_split_a_row_is_told_and_not_dropped(bench: Bench, store: Store) -> None:
    text = f"{OWN},Length (in),Machine\n{ROW},49,25,Loader 4\n"
    _, form = _upload(bench, text.encode(), "list.csv")
    dry = bench.submit("/bench/lists/dry", form)
    assert "A decimal comma may have split a value in two" in dry.text and ">K2<" in dry.text
    bench.submit("/bench/lists/run", form)
    assert store.count() == 0


def test_a_cut_length_never_fills_the_overall_length(bench: Bench, store: Store) -> None:
    _, form = _upload(bench, f"{OWN},Cut length mm\n{ROW},1100\n".encode(), "list.csv")
    assert form["match"][-1] == ""  # type: ignore[index]
    form["match"] = [*form["match"][:-1], "length_mm"]  # type: ignore[index]
    refused = bench.submit("/bench/lists/run", form)
    assert refused.status_code == 422 and store.count() == 0
    assert "not the overall length" in refused.text


def test_words_of_the_trade_are_proposed_and_the_choice_is_shown(bench: Bench, store: Store) -> None:
    row = "2SN,12,JIC,12,Female swivel,ORFS,12,swivel,900"
    _, form = _upload(bench, f"{OWN},Length\n{row}\n{row}\n".encode(), "list.csv")
    dry = bench.submit("/bench/lists/dry", form)
    assert dry.status_code == 200, dry.text
    assert '<option value="sae_37_flare" selected>' in dry.text
    bench.submit("/bench/lists/run", form)
    spec = store.find().assemblies[0].spec
    assert [str(spec.end_a.connection), str(spec.end_a.form)] == ["sae_37_flare", "female_swivel"]
    assert [str(spec.end_b.connection), str(spec.end_b.form)] == ["orfs", "female_swivel"]


def test_a_tube_size_with_its_series_is_both_family_and_size(bench: Bench, store: Store) -> None:
    heading = "Hose type,Dash,End A,end_a.form,End B,end_b.form,Length"
    _, form = _upload(bench, f"{heading}\n4SP,10,20S,swivel,20S,swivel,900\n".encode(), "list.csv")
    bench.submit("/bench/lists/run", form)
    end = store.find().assemblies[0].spec.end_a
    assert (str(end.connection), end.size) == ("din24_heavy", "20")


def test_a_word_not_known_is_told_once_with_the_nearest_and_mended_in_the_page(
    bench: Bench, store: Store
) -> None:
    row = "R2,12,jicc,12,female_swivel,orfs,12,female_swivel,900"
    _, form = _upload(bench, f"{OWN},Length\n{row}\n{row}\n{row}\n".encode(), "list.csv")
    dry = bench.submit("/bench/lists/dry", form)
    assert dry.status_code == 422
    assert re.findall(r'<td class="tagno">([A-Z]+\d+|row \d+)</td>', dry.text) == ["C2"]
    [told] = re.findall(r"The nearest: ([^<]*)", dry.text)
    assert "37° flare" in html.unescape(told) and "sae_45_flare" not in told
    mended = {"word_column": "end_a.connection", "word_theirs": "jicc", "word_ours": "sae_37_flare"}
    assert bench.submit("/bench/lists/dry", form | mended).status_code == 200
    bench.submit("/bench/lists/run", form | mended)
    assert store.count() == 3


def test_hose_and_shape_are_words_too_and_one_problem_is_told_once(bench: Bench, store: Store) -> None:
    """2SNK was told for each row again and could be mended in the spreadsheet alone, "90 elbow" as well."""
    heading = f"{OWN},Shape A,Length".replace("Hose type", "Hose")
    row = "2SNK,12,JIC,12,swivel,JIC,12,swivel,{},900"
    text = "\n".join((heading, *(row.format(shape) for shape in ("90 elbow", "90°", "bent", "30"))))
    _, form = _upload(bench, text.encode(), "list.csv")
    dry = bench.submit("/bench/lists/dry", form)
    assert re.findall(r'<td class="tagno">([A-Z]+\d+|row \d+)</td>', dry.text) == ["I4", "A2"]
    assert "Also in 2 other cells, A3 to A5" in dry.text and "2 problems" in dry.text
    only = "\n".join((heading, row.format("bent")))
    one = bench.submit("/bench/lists/dry", _upload(bench, only.encode(), "list.csv")[1])
    assert '<option value="EN 853 2SN">' in one.text, "both words are asked for in one look"
    mended = {
        "word_column": ["hose.standard", "end_a.shape"],
        "word_theirs": ["2SNK", "bent"],
        "word_ours": ["EN 853 2SN", "elbow_45"],
    }
    again = bench.submit("/bench/lists/dry", form | mended)
    assert again.status_code == 200 and '<option value="elbow_90" selected>' in again.text
    bench.submit("/bench/lists/run", form | mended)
    made = [item.spec for item in reversed(store.find().assemblies)]
    assert [one.end_a.angle_deg for one in made] == [90, 90, 45, 30]
    assert {one.hose.standard for one in made} == {"EN 853 2SN"}


def test_a_hose_of_no_standard_goes_on_as_typed_where_its_rating_is_given(bench: Bench, store: Store) -> None:
    heading = f"{OWN},Length,working_pressure.value_bar,working_pressure.source,Also"
    row = "Own Line 7" + ROW.removeprefix("R2") + ",900,120,its data sheet,"
    _, form = _upload(bench, f"{heading}\n{row}\n".encode(), "list.csv")
    dry = bench.submit("/bench/lists/dry", form)
    assert dry.status_code == 200 and "word_ours" not in dry.text
    bench.submit("/bench/lists/run", form)
    assert store.find().assemblies[0].spec.hose.standard == "Own Line 7"


def test_a_stock_number_fills_in_its_end(bench: Bench, store: Store) -> None:
    store.keep_fitting(FITTING)
    row = dict(zip(HEADING, GOOD, strict=True)) | {"End A": None, "end_a.dash": None, "end_a.form": None}
    heading = [*row, "end_a.fitting"]
    for number, fields in (("tw-1204", []), ("TW-1205", ["end_a.fitting"])):
        dry = list_import.dry_run(
            [[*heading], [*row.values(), number]],
            [*list_columns.guess(heading)],
            tables(),
            datetime.date(2026, 3, 2),
            store,
        )
        assert [problem.field for _, problem in dry.problems] == fields
        assert [registration.spec.end_a.connection for registration in dry.rows] == ["sae_37_flare"][
            : len(dry.rows)
        ]
        assert len(dry.rows) == (not fields)
