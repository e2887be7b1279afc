"""Printing from the bench on a real IPP endpoint: jobs to their end, and every way they stop short."""

from __future__ import annotations

import re
import signal
import textwrap
import time
from collections.abc import Iterator
from pathlib import Path
from types import SimpleNamespace

import httpx
import pypdfium2
import pytest

from api.settings import Settings
from api.workers import print_queue
from tagger.printing import readers
from tagger.store import Kind, PrintJob, PrintState, Role, Store
from tests import processes
from tests.bench.served import HOSE, Bench, Served
from tests.bench.served import serving as serving_app
from tests.databases import fresh_sqlite
from tests.ports import free_port
from tests.printing.ipp.endpoint import Endpoint, cut_line, serving, until
from tests.printing.ipp.test_pwg import read_by_cups
from tests.store.samples import assessment, spec

PDF, PWG = "application/pdf", "image/pwg-raster"


@pytest.fixture
def number(bench: Bench, store: Store) -> str:
    answer = bench.submit("/bench/build", HOSE)
    assert answer.status_code == 200, answer.text
    return store.find(limit=1).assemblies[0].number


def _add(bench: Bench, uri: str, **fields: str) -> httpx.Response:
    return bench.submit("/bench/shop/printers", {"name": "Bench 1", "uri": uri, **fields})


def _print(bench: Bench, number: str, printer: int, **fields: str) -> PrintJob:
    given = {"number": number, "template": "hang_tag", "as": f"printer {printer}", "again": "1", **fields}
    answer = bench.submit("/bench/print", given)
    assert answer.status_code == 200, answer.text
    return bench.store.print_job(int(answer.url.path.rsplit("/", 1)[1]))


def _when(store: Store, job: PrintJob, state: PrintState) -> PrintJob:
    until(lambda: store.print_job(job.id).state is state)
    return store.print_job(job.id)


def _links_in(file: Path) -> set[str]:
    if file.suffix == ".pwg":
        pages = read_by_cups(file)
    else:
        pages = [p.render(scale=300 / 72).to_pil() for p in pypdfium2.PdfDocument(file.read_bytes())]
    return {str(text) for page in pages for text in readers.qr_readers()["zxing-cpp"](readers.grey(page))}


@pytest.mark.parametrize(("formats", "dpi"), [(PDF, 600), (PWG, 300)])
def test_a_printer_is_added_and_prints_the_tag_that_is_logged(
    bench: Bench, store: Store, number: str, tmp_path: Path, formats: str, dpi: int
) -> None:
    with serving(tmp_path / "spool", formats) as endpoint:
        page = _add(bench, endpoint.uri, template="hang_tag")
        assert page.status_code == 200
        assert "Example Printer" in page.text, "what it says of itself"
        [printer] = store.printers()
        assert (printer.dpi, printer.template, printer.added_by) == (dpi, "hang_tag", "manager")
        job = _when(store, _print(bench, number, printer.id), PrintState.DONE)
        [file] = endpoint.received()
        assert any(number in link for link in _links_in(file))
    assert (job.attempts, job.why) == (1, ())
    [event] = [e for e in store.history(number) if e.kind is Kind.PRINTED]
    assert event.data["printer"] == "Bench 1" and event.by == "manager"
    assert f'Printer: Bench 1. <a href="/bench/prints/{job.id}">' in bench.get(f"/bench/tag/{number}").text


@pytest.mark.parametrize(("name", "width", "height"), [("sheet_a4", 210.0, 297.0), ("own", 110.0, 70.0)])
def test_the_label_that_was_chosen_is_printed_and_logged_not_the_one_it_is_based_on(
    tmp_path: Path, store: Store, name: str, width: float, height: float
) -> None:
    """Read back from the printer's own file: its page, and the number on it."""
    (tmp_path / "labels").mkdir()
    (tmp_path / "labels" / "own.toml").write_text('base = "hang_tag"\ntitle = "Ours"\nsize = [110, 70]\n')
    settings = Settings(base_url="http://tags.example.com", label_template_dirs=(tmp_path / "labels",))
    with serving_app(settings, store) as served, Bench(served.url, store, "manager") as bench:
        assert bench.submit("/bench/build", HOSE).status_code == 200
        number = store.find(limit=1).assemblies[0].number
        with serving(tmp_path / "spool", PDF) as endpoint:
            _add(bench, endpoint.uri, template=name)
            printer = store.printers()[0].id
            job = _when(store, _print(bench, number, printer, template=name), PrintState.DONE)
            [file] = endpoint.received()
            [page] = pypdfium2.PdfDocument(file.read_bytes())
            assert [round(side / 72 * 25.4, 1) for side in page.get_size()] == [width, height]
            assert any(number in link for link in _links_in(file))
    assert job.template == name
    [event] = [e for e in store.history(number) if e.kind is Kind.PRINTED]
    assert event.data["template"] == name


@pytest.mark.parametrize("place", ["pdf", "png", "printer 1"])
def test_a_label_that_would_not_scan_on_this_hose_is_refused_before_anything_is_written_down(
    bench: Bench, store: Store, number: str, place: str
) -> None:
    store.add_printer("Bench 1", f"ipp://127.0.0.1:{free_port()}/ipp/print", 203)
    asked = {"number": number, "template": "wrap_label", "as": place}
    answer = bench.submit("/bench/print", asked)
    assert answer.status_code == 422
    assert "Around a hose of 29.3 mm" in answer.text
    assert store.times_printed(number) == 0 and not store.print_jobs()
    assert bench.submit("/bench/print", {**asked, "template": "hang_tag"}).status_code == 200


def test_a_job_whose_label_would_not_scan_any_more_is_not_sent(
    bench: Bench, store: Store, number: str, tmp_path: Path
) -> None:
    """The template was another when the job was asked for."""
    with serving(tmp_path / "spool", PDF) as endpoint:
        printer = store.add_printer("Bench 1", endpoint.uri, 600).id
        asked = store.ask_print(printer, [number], "wrap_label", reason="", key=None, by="manager")
        other = _print(bench, number, printer)
        assert any(
            "Around a hose of 29.3 mm" in str(why) for why in _when(store, asked, PrintState.FAILED).why
        )
        _when(store, other, PrintState.DONE)
        assert len(endpoint.received()) == store.times_printed(number) == 1


def test_where_a_browser_printed_last_stands_first(bench: Bench, store: Store, number: str) -> None:
    store.add_printer("Bench 1", f"ipp://127.0.0.1:{free_port()}/ipp/print", 203)
    run = f"/bench/run/{store.assembly(number).run}"

    def first() -> str:
        return str(re.findall(r'<button name="as"[^>]*class="main" autofocus', bench.get(run).text)[0])

    assert 'value="pdf"' in first()
    _print(bench, number, store.printers()[0].id)
    assert 'value="printer 1"' in first()
    asked = {"number": number, "template": "hang_tag", "as": "pdf", "again": "1"}
    bench.submit("/bench/print", asked)
    assert 'value="pdf"' in first()


def test_one_page_sent_twice_is_one_job(bench: Bench, store: Store, number: str) -> None:
    printer = store.add_printer("Bench 1", f"ipp://127.0.0.1:{free_port()}/ipp/print", 203).id
    jobs = {_print(bench, number, printer, key="as shown", again="").id for _ in range(2)}
    assert len(jobs) == len(store.print_jobs()) == 1


def test_a_printer_that_is_off_leaves_a_job_that_says_so_and_is_sent_again(
    bench: Bench, store: Store, number: str, tmp_path: Path
) -> None:
    port = free_port()
    printer = store.add_printer("Bench 1", f"ipp://localhost:{port}/ipp/print", 600).id
    job = _when(store, _print(bench, number, printer), PrintState.FAILED)
    assert "cannot be reached (Connection refused)" in str(job.why)
    assert store.times_printed(number) == 0
    page = bench.get(f"/bench/prints/{job.id}").text
    assert "Send again" in page and "Cancel job" in page and "Connection refused" in page
    assert '<span class="count" title="waiting">1</span>' in bench.get("/bench/build").text
    with serving(tmp_path / "spool", PDF, port=port) as endpoint:
        bench.submit(f"/bench/prints/{job.id}", {"do": "again"})
        assert _when(store, job, PrintState.DONE).attempts == 2
        assert len(endpoint.received()) == 1
    assert store.times_printed(number) == 1


def test_a_line_that_breaks_in_the_middle_counts_as_printed_and_is_never_sent_by_itself(
    bench: Bench, store: Store, number: str, tmp_path: Path
) -> None:
    with serving(tmp_path / "spool", PDF) as endpoint, cut_line(endpoint, after=3000) as uri:
        printer = store.add_printer("Bench 1", uri, 600).id
        job = _when(store, _print(bench, number, printer), PrintState.UNKNOWN)
        time.sleep(1.5)  # the queue has looked once more
        assert store.print_job(job.id).attempts == 1
    assert store.times_printed(number) == 1
    page = bench.get(f"/bench/prints/{job.id}").text
    assert "It may have been printed. Check Bench 1" in page and "Mark as printed" in page
    bench.submit(f"/bench/prints/{job.id}", {"do": "seen"})
    assert store.print_job(job.id).state is PrintState.DONE
    assert store.times_printed(number) == 1


def test_a_printer_out_of_labels_says_so_on_the_page(
    bench: Bench, store: Store, number: str, tmp_path: Path
) -> None:
    labels, command = tmp_path / "labels", tmp_path / "command"
    command.write_text(f"#!/bin/sh\necho 'STATE: +media-empty-error' >&2\n"
                       f"while [ ! -e {labels} ]; do sleep 0.1; done\necho 'STATE: -media-empty-error' >&2\n")  # fmt: skip
    command.chmod(0o755)
    with serving(tmp_path / "spool", PDF, "-c", str(command)) as endpoint:
        _add(bench, endpoint.uri)
        [printer] = store.printers()
        job = _print(bench, number, printer.id)
        until(lambda: "out of labels or paper" in str(store.print_job(job.id).why))
        assert store.print_job(job.id).state is PrintState.PRINTING
        assert "Printer status: out of labels or paper." in bench.get(f"/bench/prints/{job.id}/state").text
        assert "out of labels or paper" in bench.get(f"/bench/shop/printers/{printer.id}").text
        waiting = _print(bench, number, printer.id)
        until(lambda: "is busy" in str(store.print_job(waiting.id).why))
        labels.touch()
        assert _when(store, job, PrintState.DONE).why == ()
        assert _when(store, waiting, PrintState.DONE).why == ()
        assert len(endpoint.received()) == 2
    assert store.times_printed(number) == 2


def test_a_printer_that_was_reset_has_forgotten_the_job(
    bench: Bench, store: Store, number: str, tmp_path: Path
) -> None:
    command, port = tmp_path / "command", free_port()
    command.write_text("#!/bin/sh\nsleep 30\n")
    command.chmod(0o755)
    with serving(tmp_path / "spool", PDF, "-c", str(command), port=port):
        printer = store.add_printer("Bench 1", f"ipp://localhost:{port}/ipp/print", 600).id
        job = _when(store, _print(bench, number, printer), PrintState.PRINTING)
    until(lambda: "cannot be reached" in str(store.print_job(job.id).why))
    with serving(tmp_path / "spool", PDF, port=port):
        assert "no longer lists this job" in str(_when(store, job, PrintState.UNKNOWN).why)
    assert store.times_printed(number) == 1


def test_what_is_withdrawn_while_it_waits_is_not_printed(
    bench: Bench, store: Store, number: str, tmp_path: Path
) -> None:
    with serving(tmp_path / "spool", PDF) as endpoint:
        printer = store.add_printer("Bench 1", f"ipp://127.0.0.1:{free_port()}/ipp/print", 600).id
        job = _when(store, _print(bench, number, printer), PrintState.FAILED)
        store.withdraw("cover blisters", tag=number)
        assert "cannot be printed" in bench.submit(f"/bench/prints/{job.id}", {"do": "again"}).text
        store.retire_printer(printer)
        store.add_printer("Bench 1", endpoint.uri, 600)
        store.print_again(job.id)
        assert "cannot be printed" in str(_when(store, job, PrintState.FAILED).why)
        assert endpoint.received() == []


@pytest.mark.parametrize(
    ("fields", "told"),
    [
        ({"uri": "http://192.0.2.7/"}, "is not the address of a printer"),
        ({"uri": "ipp://169.254.169.254/latest"}, "not a local network address"),
        ({"uri": "OFF"}, "cannot be reached (Connection refused)"),
        ({"dpi": "203"}, "does not print at 203 dpi"),
        ({"dpi": "many"}, "many is not a valid resolution."),
        ({"template": "nonsense"}, "is not a known template"),
        ({"name": "  "}, "must have 1 to 40 characters"),
    ],
)
def test_a_printer_that_could_not_print_is_refused_with_what_to_do(
    bench: Bench, store: Store, pdf_printer: Endpoint, fields: dict[str, str], told: str
) -> None:
    given = {"name": "Bench 1", "uri": pdf_printer.uri, "dpi": "600"} | fields
    if given["uri"] == "OFF":
        given["uri"] = f"ipp://127.0.0.1:{free_port()}/ipp/print"
    answer = bench.submit("/bench/shop/printers", given)
    assert answer.status_code == 422 and told in answer.text
    assert store.printers() == []


def test_a_printer_of_neither_format_is_refused(bench: Bench, tmp_path: Path) -> None:
    with serving(tmp_path / "spool", "image/jpeg") as endpoint:
        assert "supports neither PDF nor PWG Raster" in _add(bench, endpoint.uri).text


@pytest.fixture(scope="module")
def pdf_printer(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Endpoint]:
    with serving(tmp_path_factory.mktemp("pdf") / "spool", PDF) as endpoint:
        yield endpoint


@pytest.mark.parametrize("role", ["builder", "counter"])
def test_only_a_manager_adds_looks_at_and_retires_printers(served: Served, store: Store, role: str) -> None:
    printer = store.add_printer("Bench 1", "ipp://192.0.2.7/ipp/print", 203).id
    with Bench(served.url, store, role) as other:
        assert _add(other, "ipp://192.0.2.8/ipp/print").status_code == 403
        assert other.get(f"/bench/shop/printers/{printer}").status_code == 403
        assert other.submit(f"/bench/shop/printers/{printer}/retire").status_code == 403
        assert other.get("/bench/prints").status_code == 200
    assert [p.name for p in store.printers()] == ["Bench 1"]


def test_a_retired_printer_is_offered_no_more(bench: Bench, store: Store, number: str) -> None:
    printer = store.add_printer("Bench 1", "ipp://192.0.2.7/ipp/print", 203).id
    run = f"/bench/run/{store.assembly(number).run}"
    assert "Print on Bench 1" in bench.get(run).text
    bench.submit(f"/bench/shop/printers/{printer}/retire")
    assert "Print on Bench 1" not in bench.get(run).text
    refused = bench.submit("/bench/print", {"number": number, "as": f"printer {printer}"})
    assert refused.status_code == 422 and "is not a printer in use" in refused.text


def test_a_program_prints_on_a_printer_by_its_name(
    bench: Bench, served: Served, store: Store, number: str, pdf_printer: Endpoint
) -> None:
    _add(bench, pdf_printer.uri)
    _, secret = store.make_token("tablet", Role.BUILDER)
    headers = {"Authorization": f"Bearer {secret}", "Idempotency-Key": "one"}
    with httpx.Client(base_url=f"{served.url}/api/v1", headers=headers) as api:
        assert api.get("/printers").json() == [{"name": "Bench 1", "dpi": 600, "template": None}]
        body = {"numbers": [number], "printer": "bench 1", "reason": "the tag was lost"}
        asked = [api.post("/prints", json=body) for _ in range(2)]
        assert [answer.status_code for answer in asked] == [202, 202]
        job = asked[0].json()["id"]
        assert asked[1].json()["id"] == job
        until(lambda: api.get(f"/print-jobs/{job}").json()["state"] == "done")
        assert api.get("/print-jobs/4711").status_code == 404
        refused = api.post("/prints", json={**body, "printer": "Bench 9"}, headers={"Idempotency-Key": "two"})
        assert refused.status_code == 422 and "is not a printer in use" in refused.text
    assert store.times_printed(number) == 1


_VICTIM = textwrap.dedent("""
    import os, signal, sys, time
    from api.workers import print_queue
    from api.settings import Settings
    from tagger.store import Store
    from tests.store.samples import assessment, spec

    url, uri, when = sys.argv[1:]
    with Store.open(url) as store:
        made = store.register(spec(), assessment(), count=2)
        printer = store.add_printer("Bench 1", uri, 600).id
        job = store.ask_print(printer, [a.number for a in made], "hang_tag", by="Bela")
        if when == "sent":  # the printer has it, and nothing is written down yet
            Store.print_taken = lambda *_: os.kill(os.getpid(), signal.SIGKILL)
            queue = print_queue.PrintQueue(store, Settings(base_url="https://tags.example.com"))
            queue.start()
            time.sleep(60)
        os.kill(os.getpid(), signal.SIGKILL)
""")


@pytest.mark.parametrize("when", ["written down", "sent"])
def test_a_kill_loses_no_job_and_prints_none_twice(tmp_path: Path, pdf_printer: Endpoint, when: str) -> None:
    url, before = f"sqlite:///{tmp_path / 'tags.sqlite3'}", len(pdf_printer.received())
    done = processes.run(("-c", _VICTIM, url, pdf_printer.uri, when))
    assert done.returncode == -signal.SIGKILL, done.stderr
    with Store.open(url) as store, serving_app(Settings(base_url="https://tags.example.com"), store):
        [job] = store.print_jobs()
        numbers = list(job.numbers)
        if when == "written down":
            assert _when(store, job, PrintState.DONE).attempts == 1
        else:  # the printer is asked by the job's name, and has it: the queue goes on at once
            behind = store.ask_print(job.printer_id, numbers[:1], "hang_tag", by="Bela")
            assert _when(store, job, PrintState.DONE).attempts == 1, "it is never sent again by itself"
            _when(store, behind, PrintState.DONE)
            assert [store.times_printed(number) for number in numbers] == [2, 1]
            assert len(pdf_printer.received()) == before + 2
            return
        assert len(pdf_printer.received()) == before + 1
        assert [store.times_printed(number) for number in numbers] == [1, 1]


def test_a_job_whose_sender_is_gone_is_looked_for_at_its_printer(
    tmp_path: Path, pdf_printer: Endpoint, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Not in a list that shows an earlier job: not printed. Not in a list that shows none of ours: in doubt."""
    monkeypatch.setattr("api.workers.print_queue._SILENT", 1.0)
    settings = Settings(base_url="https://tags.example.com")
    with Store.open(f"sqlite:///{tmp_path / 'tags.sqlite3'}") as store:
        number = store.register(spec(), assessment())[0].number
        used, fresh = (store.add_printer(name, pdf_printer.uri, 600).id for name in ("Used", "Fresh"))
        with serving_app(settings, store):
            _when(store, store.ask_print(used, [number], "hang_tag"), PrintState.DONE)
        gone = [store.ask_print(printer, [number], "hang_tag") for printer in (used, fresh)]
        assert {job.id for job in (store.next_print(), store.next_print()) if job} == {job.id for job in gone}
        behind = store.ask_print(used, [number], "hang_tag")
        with serving_app(settings, store):  # another process, as far as those jobs are concerned
            told = _when(store, gone[0], PrintState.FAILED)
            assert "the printer does not list it: it was not printed" in str(told.why)
            assert "It may have been printed" in str(_when(store, gone[1], PrintState.UNKNOWN).why)
            _when(store, behind, PrintState.DONE)
        assert store.times_printed(number) == 3, "once, perhaps, and the one behind"
        late = store.print_job(gone[0].id)
        store.print_taken(late, 4711)  # its sender was only slow
        assert store.print_job(late.id).state is PrintState.PRINTING and store.times_printed(number) == 4


def test_a_job_on_its_way_is_left_alone_as_long_as_its_sender_gives_signs(
    tmp_path: Path, pdf_printer: Endpoint, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A clock of our own: how long the machine itself takes is no silence of the sender."""
    clock = SimpleNamespace(monotonic=lambda: now)
    now, given_up = 0.0, []
    monkeypatch.setattr(print_queue, "time", clock)
    monkeypatch.setattr(print_queue, "find_given_up", lambda *asked: given_up.append(asked))
    with Store.open(fresh_sqlite(tmp_path)) as store:
        number = store.register(spec(), assessment())[0].number
        store.ask_print(store.add_printer("Slow", pdf_printer.uri, 600).id, [number], "hang_tag")
        job = store.next_print()
        assert job is not None
        queue = print_queue.PrintQueue(store, Settings(base_url="https://tags.example.com"))
        for _ in range(10):  # longer together than the silence that is waited for
            store.print_goes_on([job])
            queue._look_after_others()
            now += print_queue._SILENT / 2
        _handed(queue)
        assert not given_up
        now += print_queue._SILENT / 2  # twice without a sign since the last look
        queue._look_after_others()
        _handed(queue)
        assert [asked[2].id for asked in given_up] == [job.id]


def _handed(queue: print_queue.PrintQueue) -> None:
    for thread in list(queue._hands):
        thread.join()
