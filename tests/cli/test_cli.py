"""The command line, run as a user runs it: real files, a real database, real decoders."""

from __future__ import annotations

import json
import os
import re
import shlex
import signal
import sqlite3
import subprocess
import sys
import time
from pathlib import Path
from typing import Any

import pypdfium2
import pytest
from PIL import Image

from tagger.code import link, number, payload
from tagger.printing import readers
from tagger.spec import AssemblySpec, Danger, TagContent
from tagger.store import Store
from tagger.trade import assess
from tests import processes
from tests.databases import registered_in
from tests.printing.ipp.endpoint import serving
from tests.test_spec import EXAMPLE

ROOT = Path(__file__).parents[2]
SERVICE_RUN = ROOT / "examples/week/service_run.csv"


class Shell:
    """Runs ``tagger`` in its own process, with a database of its own."""

    def __init__(self, folder: Path) -> None:
        self.folder = folder
        self.env = {
            **{name: value for name, value in os.environ.items() if not name.startswith("TAGGER_")},
            "TAGGER_DATABASE_URL": f"sqlite:///{folder}/tags.sqlite3",
            "TAGGER_BASE_URL": "https://tags.example-hose-shop.com",  # 26 characters
        }

    def __call__(self, *arguments: object, code: int = 0, **more: Any) -> subprocess.CompletedProcess[str]:
        command = ("-m", "tagger.cli", *map(str, arguments))
        done = processes.run(command, cwd=self.folder, env={**self.env, **more})
        assert done.returncode == code, f"exit {done.returncode}\n{done.stdout}\n{done.stderr}"
        return done

    def json(self, *arguments: object, code: int = 0) -> Any:
        return json.loads(self(*arguments, "--json", code=code).stdout)


@pytest.fixture
def tagger(tmp_path: Path) -> Shell:
    (tmp_path / "spec.json").write_text(json.dumps(EXAMPLE), encoding="utf-8")
    return Shell(tmp_path)


@pytest.mark.parametrize(
    ("form", "thread"),
    [("male", ("--thread-od", "1 1/16 in")), ("female_swivel", ("--thread-id", "1 in"))],
)
def test_identify_puts_the_dash_12_flare_first(tagger: Shell, form: str, thread: tuple[str, str]) -> None:
    # common practice, no source: 1 1/16-12 and a 37 degree seat is a -12; its female measures about 1 in
    answer = tagger.json("identify", "--form", form, *thread, "--tpi", "12", "--seat", "37")
    best = answer["candidates"][0]
    assert (best["connection"], best["dash"], best["form"]) == ("sae_37_flare", 12, form)
    assert best["likelihood"] < 1
    assert set(answer) >= {"candidates", "measure_next"}


def test_a_lay_line_is_read_with_its_standards_size_and_pressure(tagger: Shell) -> None:
    answer = tagger.json("lay-line", "SAE 100R2AT / EN 853 2SN -12 WP 215 BAR")
    assert answer["standards"] == ["SAE 100R2", "EN 853 2SN"]
    assert (answer["dash"], answer["dn"], answer["edition"], answer["printed_bar"]) == (12, 19, "AT", 215)
    assert tagger.json("lay-line", "EN 853 2NS")["nearest"][0] == "EN 853 2SN"


def test_check_answers_in_the_agreed_shape(tagger: Shell) -> None:
    answer = tagger.json("check", "spec.json")
    assert set(answer["working_pressure"]) >= {"value_bar", "limited_by", "source"}
    assert set(answer["length_tolerance_mm"]) >= {"minus", "plus", "source"}
    assert set(answer["ends"]) == {"a", "b"}
    for end in answer["ends"].values():
        assert set(end["torque_nm"]) >= {"min", "max", "basis", "source"}
        assert set(end["flats"]) >= {"min", "max", "basis", "source"}
    assert answer["test_pressure_bar"] == pytest.approx(2 * answer["working_pressure"]["value_bar"])
    assert answer["bend_radius_mm"] > 0
    assert answer["warnings"]


def test_check_registers_nothing(tagger: Shell) -> None:
    tagger("check", "spec.json")
    assert not (tagger.folder / "tags.sqlite3").exists()


def test_the_printed_tag_reads_back_as_the_spec_without_a_database(tagger: Shell, tmp_path: Path) -> None:
    (made,) = tagger.json("register", "spec.json")["numbers"]
    assert number.format(made) == made
    tagger("print", made, "--template", "hang_tag", "--out", "tag.png", "--dpi", "203")
    tagger("print", made, "--template", "hang_tag", "--out", "tag.pdf")
    page = pypdfium2.PdfDocument(tmp_path / "tag.pdf")[0].render(scale=300 / 72).to_pil()
    for picture in (Image.open(tmp_path / "tag.png"), page):
        seen = {name: read(readers.grey(picture)) for name, read in readers.qr_readers().items()}
        assert set(seen) == {"zxing-cpp", "OpenCV", "zbar"}
        links = {text for texts in seen.values() for text in texts}
        assert len(links) == 1, seen
        assert all(seen.values()), seen
    nowhere = "sqlite:////nonexistent/folder/no.sqlite3"
    answer = json.loads(tagger("read", "tag.png", "--json", TAGGER_DATABASE_URL=nowhere).stdout)
    expected = json.loads(json.dumps(EXAMPLE))
    del expected["note"], expected["hose"]["lot"], expected["end_a"]["lot"]
    assert answer["spec"] == expected
    assert answer["number"] == made
    assert answer["link"] == links.pop()
    assert tagger.json("read", answer["link"])["spec"] == expected


def test_every_refusal_names_field_value_and_mend(tagger: Shell, tmp_path: Path) -> None:
    wrong = {**EXAMPLE, "length_mm": "long", "colour": "red"}
    (tmp_path / "wrong.json").write_text(json.dumps(wrong), encoding="utf-8")
    refused = tagger.json("register", "wrong.json", code=1)["refused"]
    assert {(one["field"], one["value"]) for one in refused} == {("length_mm", "long"), ("colour", "red")}
    assert all(one["why"] and one["mend"] for one in refused)
    done = tagger("register", "wrong.json", code=1)
    assert "length_mm" in done.stderr
    assert "colour" in done.stderr


def test_a_size_the_family_has_not_is_refused_with_the_sizes_it_has(tagger: Shell, tmp_path: Path) -> None:
    wrong = json.loads(json.dumps(EXAMPLE))
    wrong["end_b"]["dash"] = 7
    (tmp_path / "wrong.json").write_text(json.dumps(wrong), encoding="utf-8")
    (refused, *_) = tagger.json("check", "wrong.json", code=1)["refused"]
    assert refused["field"] == "end_b.dash"
    assert refused["value"] == 7
    assert "8" in refused["mend"]


@pytest.mark.parametrize(
    "arguments", [(), ("frobnicate",), ("check",), ("register", "spec.json", "--count", "many")]
)
def test_wrong_usage_exits_with_2(tagger: Shell, arguments: tuple[str, ...]) -> None:
    tagger(*arguments, code=2)


def test_a_tag_read_without_a_database_tells_the_partial_truth_its_fluid_and_its_danger(
    tagger: Shell,
) -> None:
    content = TagContent(
        spec=AssemblySpec.read(EXAMPLE),
        at_most_bar=150,
        unknown_parts=("end_b",),
        dangers=(Danger.HEAT,),
    )
    url = link.build("https://tags.example.com", number.make(), payload.encode(content))
    said = tagger("read", url).stdout
    assert "Maximum working pressure: Hose and end A: 150 bar (2175 psi) at most. End B, " in said
    assert "DANGER: hotter than the hose allows\nFluid: " in said
    message = tagger.json("read", url)["working_pressure_message"]
    assert message["id"] == "words-two-sentences" and message["text"] in said
    assert tagger.json("read", url)["overrated"] is None


def test_digits_that_claim_more_pressure_than_the_tables_allow_are_not_believed(tagger: Shell) -> None:
    """Anybody can make such a code; the page and the phone show the lower pressure."""
    forged = TagContent(spec=AssemblySpec.read(EXAMPLE), working_pressure_bar=950)
    url = link.build("https://tags.example.com", number.make(), payload.encode(forged))
    said, answer = tagger("read", url).stdout, tagger.json("read", url)
    assert "The tag claims 950 bar (13780 psi). The tables allow 155 bar (2250 psi): use no more" in said
    [pressure] = [line for line in said.splitlines() if line.startswith("Maximum working pressure")]
    assert "155 bar (2250 psi)" in pressure
    assert answer["overrated"]["id"] == "scan-claims-more" and answer["overrated"]["text"] in said


@pytest.mark.parametrize(
    ("what", "words"),
    [
        ("7K3MQ-9XW2R2", "check character"),
        ("7K3MQ-9XW2R1", "tag number alone"),
        ("https://example.com/about/us", "not the link of a tag"),
        ("https://tags.example.com/T/7K3MQ9XW2R1/123456789012345", "damaged"),
        ("nowhere.png", "no such image file"),
        ("spec.json", "not a readable image"),
    ],
)
def test_what_cannot_be_read_is_refused_with_words(tagger: Shell, what: str, words: str) -> None:
    assert words in tagger("read", what, code=1).stderr


def test_compare_takes_files_and_tags(tagger: Shell, tmp_path: Path) -> None:
    (made,) = tagger.json("register", "spec.json")["numbers"]
    answer = tagger.json("compare", made, "spec.json")
    assert answer["verdict"] == "replaces"
    weaker = {**EXAMPLE, "hose": {"standard": "SAE 100R1", "dash": 12}}
    (tmp_path / "weaker.json").write_text(json.dumps(weaker), encoding="utf-8")
    answer = tagger.json("compare", made, "weaker.json")
    assert answer["verdict"] == "does not replace"
    assert {"field", "verdict", "reason"} <= set(answer["fields"][0])


def test_count_gives_so_many_numbers_and_a_key_only_once(tagger: Shell) -> None:
    first = tagger.json("register", "spec.json", "--count", 5, "--key", "monday")["numbers"]
    again = tagger.json("register", "spec.json", "--count", 5, "--key", "monday")["numbers"]
    assert len(set(first)) == 5
    assert again == first


def test_a_list_is_registered_and_printed_whole(tagger: Shell, tmp_path: Path) -> None:
    answer = tagger.json("run", SERVICE_RUN, "--template", "hang_tag", "--out", "run.pdf")
    assert len(set(answer["numbers"])) == 11
    assert len(pypdfium2.PdfDocument(tmp_path / "run.pdf")) == 11
    german = (
        SERVICE_RUN.read_text(encoding="utf-8")
        .replace("length_mm", "Länge (cm)")
        .replace("quantity", "Stück")
    )
    (tmp_path / "german.csv").write_text(german, encoding="utf-8")
    again = tagger.json("run", "german.csv", "--template", "hang_tag", "--out", "run2.pdf")
    assert not set(again["numbers"]) & set(answer["numbers"])
    assert tagger.json("show", again["numbers"][0])["spec"]["length_mm"] == 6400


def test_each_row_of_a_list_is_registered_with_what_is_known_of_it_alone(
    tagger: Shell, tmp_path: Path
) -> None:
    """Ends on one and the same hose that are rated otherwise, a lot that is given to another hose for a reason."""
    heading = (
        "hose.standard,hose.dash,hose.lot,end_a.connection,end_a.dash,end_a.form,"
        "end_b.connection,end_b.dash,end_b.form,length_mm,lot_reason"
    )
    nut, stud, face = "sae_37_flare,8,female_swivel", "sae_orb,8,male", "orfs,8,female_swivel"
    rows = [
        f"SAE 100R17,8,H-1,{nut},{nut},900,",
        f"SAE 100R17,8,H-1,{face},{face},900,",
        f"SAE 100R17,8,H-1,{nut},{stud},900,",
        f"SAE 100R2,8,H-1,{nut},{nut},900,other_manufacturer",
    ]
    (tmp_path / "list.csv").write_text("\n".join([heading, *rows]), encoding="utf-8")
    run = ("run", "list.csv", "--template", "hang_tag", "--out", "run.pdf", "--built-on", "2026-03-02")
    numbers = tagger.json(*run)["numbers"]
    with Store.open(tagger.env["TAGGER_DATABASE_URL"]) as store:
        made = [store.assembly(one) for one in numbers]
        reasons = [store.history(one)[0].data.get("lot_reason") for one in numbers]
    assert [one.assessment for one in made] == [assess(one.spec) for one in made]
    assert len({str(one.assessment.end_b) for one in made[:3]}) == 3, "or nothing is shown"
    assert {str(one.content.built_on) for one in made} == {"2026-03-02"}
    assert reasons == [None, None, None, "other_manufacturer"]


def test_a_list_with_one_bad_row_registers_nothing(tagger: Shell, tmp_path: Path) -> None:
    lines = SERVICE_RUN.read_text(encoding="utf-8").splitlines()
    lines[3] = lines[3].replace("din24_light,,15", "din24_light,,13", 1)
    (tmp_path / "list.csv").write_text("\n".join(lines), encoding="utf-8")
    refused = tagger.json("run", "list.csv", "--template", "hang_tag", "--out", "run.pdf", code=1)["refused"]
    assert refused[0]["field"] == "row 4.end_a.size"
    assert not (tmp_path / "run.pdf").exists()
    assert registered_in(tmp_path) == 0


def test_a_row_is_named_as_the_spreadsheet_counts_it_blank_rows_too(tagger: Shell, tmp_path: Path) -> None:
    heading, first, second, *_ = SERVICE_RUN.read_text(encoding="utf-8").splitlines()
    second = second.replace("SAE 100R2,12,H-2291", "SAE 100R2,12,H-2320")  # the lot of the first row's hose
    assert "H-2320" in second and first.split(",")[:2] != second.split(",")[:2]
    (tmp_path / "list.csv").write_text("\n".join([heading, first, "", "", second]), encoding="utf-8")
    refused = tagger.json("run", "list.csv", "--template", "hang_tag", "--out", "run.pdf", code=1)["refused"]
    assert [problem["field"] for problem in refused] == ["row 5.hose.lot"]
    long = second.replace("H-2320", "H-2291").replace("lift cylinder", "x" * 300)
    (tmp_path / "list.csv").write_text("\n".join([heading, first, "", long]), encoding="utf-8")
    refused = tagger.json("run", "list.csv", "--template", "hang_tag", "--out", "run.pdf", code=1)["refused"]
    assert [problem["field"] for problem in refused] == ["row 4.position"]
    assert registered_in(tmp_path) == 0


_DIES_ONCE_REGISTERED = """
import os, signal, sys
from tagger.cli import main
from tagger.store import Store

register = Store.register_drawn
def dying(*given, **named):
    register(*given, **named)
    os.kill(os.getpid(), signal.SIGKILL)  # the file has not its name yet
Store.register_drawn = dying
main(sys.argv[1:])
"""


def test_a_run_that_is_killed_leaves_all_its_numbers_or_none_and_never_a_file_without_them(
    tagger: Shell, tmp_path: Path
) -> None:
    lines = SERVICE_RUN.read_text(encoding="utf-8").splitlines()
    run = ("run", "many.csv", "--template", "hang_tag", "--out", "many.pdf")
    for count in (400, 20):
        many = [lines[0], *(line.replace(",4,Ostervale", f",{count},Ostervale") for line in lines[1:])]
        (tmp_path / "many.csv").write_text("\n".join(many), encoding="utf-8")
        program = ["-m", "tagger.cli"] if count == 400 else ["-c", _DIES_ONCE_REGISTERED]
        process = subprocess.Popen(
            [sys.executable, *program, *run],
            cwd=tmp_path,
            env=tagger.env,
            stderr=subprocess.DEVNULL,
            start_new_session=True,
        )
        while count == 400 and not [*tmp_path.glob("many.pdf.*.part")]:
            assert process.poll() is None
            time.sleep(0.02)
        if count == 400:  # labels are being written, nothing is registered
            os.killpg(process.pid, signal.SIGKILL)
        assert process.wait() == -signal.SIGKILL
        assert len(_registered(tagger)) == (0 if count == 400 else 27)
        assert not (tmp_path / "many.pdf").exists()
    for left in tmp_path.glob("many.pdf.*.part"):  # what a killed run left is cleared away the next day
        os.utime(left, (0, 0))
    answer = tagger.json(*run)
    assert {one.replace("-", "") for one in answer["numbers"]} == _registered(tagger)
    printed = pypdfium2.PdfDocument(tmp_path / "many.pdf")
    assert len(printed) == 27
    read = readers.qr_readers()["zxing-cpp"]
    for page in (
        printed[place] for place in (0, 13, 26)
    ):  # a label says a number that is registered, and no trial's
        texts = read(readers.grey(page.render(scale=203 / 72).to_pil()))
        assert texts and {link.parse(text).number for text in texts} <= _registered(tagger)
    assert not [*tmp_path.glob("many.pdf.*.part")]


_IS_OVERTAKEN = """
import subprocess, sys
from tagger.cli import main
from tagger.store import Store

register = Store.register_drawn
def overtaken(*given, **named):
    subprocess.run([sys.executable, "-m", "tagger.cli", *sys.argv[1:]], check=True)  # its labels are written already
    register(*given, **named)
Store.register_drawn = overtaken
sys.exit(main(sys.argv[1:]))
"""


def test_of_two_runs_of_a_list_at_once_one_is_refused_and_the_file_holds_what_is_registered(
    tagger: Shell, tmp_path: Path
) -> None:
    run = ("run", str(SERVICE_RUN), "--out", "run.pdf", "--json")
    slow = subprocess.run(
        [sys.executable, "-c", _IS_OVERTAKEN, *run],
        cwd=tmp_path,
        env=tagger.env,
        capture_output=True,
        text=True,
        check=False,
    )
    assert slow.returncode == 1
    assert "cli-run-meanwhile" in slow.stdout
    assert not [*tmp_path.glob("*.part")]
    printed = pypdfium2.PdfDocument(tmp_path / "run.pdf")
    told = {
        one.replace("-", "")
        for page in printed
        for one in re.findall(r"\b\w{5}-\w{6}\b", page.get_textpage().get_text_range())
    }
    assert told == _registered(tagger) and len(told) == len(printed) == 11


def _registered(tagger: Shell) -> set[str]:
    file = tagger.folder / "tags.sqlite3"
    if not file.exists():
        return set()
    connection = sqlite3.connect(f"file:{file}?mode=ro", uri=True)
    try:
        return {row[0] for row in connection.execute("select number from assembly")}
    except sqlite3.OperationalError:  # the tables are not there yet
        return set()
    finally:
        connection.close()


def test_show_tells_the_record_and_its_history(tagger: Shell) -> None:
    (made,) = tagger.json("register", "spec.json", "--customer", "Brindlemere Quarry")["numbers"]
    tagger("print", made, "--template", "hang_tag", "--out", "tag.pdf")
    shown = tagger.json("show", made.lower().replace("-", ""))
    assert shown["customer"] == "Brindlemere Quarry"
    assert [line["kind"] for line in shown["history"]] == ["registered", "printed"]


def test_a_network_printer_prints_and_only_what_it_took_is_logged(tagger: Shell, tmp_path: Path) -> None:
    with Store.open(tagger.env["TAGGER_DATABASE_URL"]) as store:
        spec = AssemblySpec.read(EXAMPLE)
        [made] = store.register(spec, assess(spec))
        with serving(tmp_path / "spool", "application/pdf") as printer:
            refused = tagger("print", made.number, "--printer", printer.uri, "--dpi", "203", code=1)
            assert "does not print at 203 dpi" in refused.stderr
            assert store.times_printed(made.number) == 0
            done = tagger.json("print", made.number, "--printer", printer.uri)
            (file,) = printer.received()
            thin = ("print", made.number, "--printer", printer.uri, "--template", "wrap_label")
            assert "wrap_label: curvature" in tagger(*thin, code=1).stderr
            assert (store.times_printed(made.number), len(printer.received())) == (1, 1)
            forced = tagger.json(*thin, "--force")
            assert (forced["state"], len(printer.received())) == ("completed", 2)
        assert (done["state"], done["tags"]) == ("completed", 1)
        page = pypdfium2.PdfDocument(file)[0].render(scale=300 / 72).to_pil()
        assert made.number in str(readers.qr_readers()["zxing-cpp"](readers.grey(page)))
        assert store.times_printed(made.number) == 2
        with serving(tmp_path / "given-up", "application/pdf", "-c", "/bin/false") as printer:
            assert (
                "then cancelled it" in tagger("print", made.number, "--printer", printer.uri, code=1).stderr
            )
        assert store.times_printed(made.number) == 3, "some of it may have come out"
        assert "cannot be reached" in tagger("print", made.number, "--printer", printer.uri, code=1).stderr
        assert store.times_printed(made.number) == 3


def test_nothing_is_built_in_the_future(tagger: Shell) -> None:
    done = tagger("register", "spec.json", "--built-on", "2999-12-31", code=2)
    assert "is in the future. Enter the date of assembly" in done.stderr
    assert "is not a date" in tagger("register", "spec.json", "--built-on", "soon", code=2).stderr
    assert not (tagger.folder / "tags.sqlite3").exists()


@pytest.mark.parametrize(
    "arguments",
    [
        *(
            ("print", "7K3MQ-9XW2R1", "--out", "o.png", "--dpi", dpi)
            for dpi in ("0", "-1", "99", "1201", "a")
        ),
        *(("preflight", "7K3MQ-9XW2R1", "--hose-od", od) for od in ("-5", "0", "nan", "inf", "1e9", "a")),
    ],
)
def test_figures_no_printer_or_hose_has_are_wrong_usage(tagger: Shell, arguments: tuple[str, ...]) -> None:
    done = tagger(*arguments, code=2)
    assert f"{arguments[-1]} is not a" in done.stderr
    assert "Traceback" not in done.stderr


def test_a_file_that_cannot_be_written_is_refused_before_anything_is_registered(tagger: Shell) -> None:
    for out, words in (("no/such/o.pdf", "not an existing folder"), ("o.txt", "neither in .pdf nor in .png")):
        done = tagger("run", SERVICE_RUN, "--out", out, code=1)
        assert words in done.stderr
        assert registered_in(tagger.folder) == 0
    (made,) = tagger.json("register", "spec.json")["numbers"]
    (tagger.folder / "taken.pdf").mkdir()
    done = tagger("print", made, "--out", "taken.pdf", code=1)
    assert "taken.pdf: This is a folder, not a file." in done.stderr
    assert "Traceback" not in done.stderr


def test_a_picture_of_too_many_pixels_is_refused(tagger: Shell, tmp_path: Path) -> None:
    for side in (8_000, 14_000):  # more than we unpack; more than Pillow opens
        Image.new("1", (side, side), 1).save(tmp_path / "large.png")
        assert (
            "image: The image is too large. Use a photo of at most 20 megapixels."
            in tagger("read", "large.png", code=1).stderr
        )


def test_templates_and_preflight_answer(tagger: Shell) -> None:
    names = {one["name"] for one in tagger.json("templates")["templates"]}
    assert {"hang_tag", "wrap_label"} <= names
    (made,) = tagger.json("register", "spec.json")["numbers"]
    answer = tagger.json("preflight", made, "--template", "hang_tag")
    assert set(answer) >= {
        "ok",
        "module_mm",
        "dots_per_module",
        "version",
        "level",
        "payload_bytes",
        "findings",
    }
    assert answer["ok"] is True
    assert answer["payload_bytes"] <= 40


def test_a_withdrawn_tag_is_not_printed(tagger: Shell, tmp_path: Path) -> None:
    made, other = tagger.json("register", "spec.json", "--count", 2)["numbers"]
    with Store.open(tagger.env["TAGGER_DATABASE_URL"]) as store:
        store.withdraw("blistered cover", tag=made)
    done = tagger("print", made, other, "--out", "tag.pdf", code=1)
    assert made in done.stderr
    assert "blistered cover" in done.stderr
    assert not (tmp_path / "tag.pdf").exists()
    tagger("print", other, "--out", "tag.pdf")


def test_a_part_used_sheet_starts_at_its_first_free_label(tagger: Shell, tmp_path: Path) -> None:
    made = tagger.json("register", "spec.json", "--count", 3)["numbers"]
    tagger("print", *made, "--template", "sheet_a4", "--out", "sheet.pdf", "--start", 7)
    assert len(pypdfium2.PdfDocument(tmp_path / "sheet.pdf")) == 2


def test_an_unknown_template_is_refused_with_those_there_are(tagger: Shell) -> None:
    (made,) = tagger.json("register", "spec.json")["numbers"]
    done = tagger("print", made, "--template", "nice_one", "--out", "tag.pdf", code=1)
    assert "hang_tag" in done.stderr


def test_backup_and_restore_keep_everything(tagger: Shell, tmp_path: Path) -> None:
    (made,) = tagger.json("register", "spec.json")["numbers"]
    tagger("backup", "copy.sqlite3")
    tagger("restore", "copy.sqlite3", TAGGER_DATABASE_URL=f"sqlite:///{tmp_path}/other.sqlite3")
    shown = tagger("show", made, "--json", TAGGER_DATABASE_URL=f"sqlite:///{tmp_path}/other.sqlite3").stdout
    assert json.loads(shown)["spec"] == EXAMPLE


def test_a_dated_backup_is_kept_and_drilled(tagger: Shell, tmp_path: Path) -> None:
    tagger("register", "spec.json")
    (tmp_path / "copies").mkdir()
    kept = tagger.json("backup", "copies", "--keep", "2")
    assert kept["removed"] == []
    assert tagger.json("drill", kept["file"])["sha256"] == kept["sha256"]
    copy = tmp_path / "copies" / Path(kept["file"]).name
    copy.write_bytes(copy.read_bytes()[:-1])
    assert "changed after the backup" in tagger("drill", str(copy), code=1).stderr
    assert "At least one backup is kept" in tagger("backup", "copies", "--keep", "0", code=1).stderr


def test_an_audit_names_what_was_changed_and_what_was_cut_off(tagger: Shell, tmp_path: Path) -> None:
    tagger("register", "spec.json")
    copied = tagger.json("backup", "copy.sqlite3")
    found = tagger.json("audit", "--head", copied["head"])
    assert (found["ok"], found["head"], found["broken"]) == (True, copied["head"], None)
    assert "The chain holds" in tagger("audit", "--backup", "copy.sqlite3").stdout
    assert "Not a link of the chain" in tagger("audit", "--head", "7:xyz", code=1).stderr
    with sqlite3.connect(tmp_path / "tags.sqlite3") as past_the_program:
        past_the_program.executescript(
            "DROP TRIGGER design_no_update; UPDATE design SET assessment = json_set(assessment, '$.x', 955.1);"
        )
    broken = json.loads(tagger("audit", "--json", code=1).stdout)
    assert (broken["ok"], broken["broken"]["table"]) == (False, "design")
    assert "is not as it was recorded" in tagger("audit", "--lang", "en", code=1).stdout


def test_everything_moves_and_the_old_database_opens_no_more(tagger: Shell, tmp_path: Path) -> None:
    (made,) = tagger.json("register", "spec.json")["numbers"]
    new = f"sqlite:///{tmp_path}/new.sqlite3"
    moved = tagger.json("move", new)
    assert (
        moved["to"] == new and moved["rows"]["assembly"] == 1 and set(moved["digests"]) == set(moved["rows"])
    )
    assert "were moved to another one" in tagger("show", made, code=1).stderr
    assert made in tagger("show", made, TAGGER_DATABASE_URL=new).stdout
    assert moved["head"] in tagger("audit", TAGGER_DATABASE_URL=new).stdout


def test_the_report_on_the_tables_has_three_shares_by_family_and_grades_and_identify(tagger: Shell) -> None:
    found = tagger.json("tables", "report")
    steel, stainless = found["grids"]
    assert (steel["material"], stainless["material"]) == ("carbon_steel", "stainless_steel")
    for grid in (steel, stainless):
        for row in (grid["all_families"], *(r for r in grid["families"] if r["ends"])):
            assert sum(row[name] for name in ("verified", "unverified", "unknown")) == pytest.approx(
                1, abs=0.001
            )
        assert sum(row["share"] for row in grid["grades"]) == pytest.approx(1, abs=0.001)
    assert {row["family"] for row in steel["families"]} >= {"npt", "bspt", "staple"}
    assert steel["first_sixteen_families"]["unknown"] <= 0.25
    assert next(row["measured"] for row in found["identify"]) == "diameter"
    assert all(row["among_three"] >= row["first"] > 0 for row in found["identify"])


def test_tables_hold_together(tagger: Shell) -> None:
    assert tagger.json("tables", "check") == {"ok": True, "findings": []}


def test_schema_is_a_json_schema_of_a_spec(tagger: Shell) -> None:
    schema = json.loads(tagger("schema").stdout)
    assert set(schema["required"]) == {"hose", "end_a", "end_b", "length_mm"}


def test_building_for_an_order_asks_for_its_change_and_moves_it_on(tagger: Shell, tmp_path: Path) -> None:
    [number] = tagger.json("register", "spec.json")["numbers"]
    with Store.open(tagger.env["TAGGER_DATABASE_URL"]) as store:
        order = store.request_order(number=number, contact={"phone": "1"}, changes="100 mm longer")
    build = ("register", "spec.json", "--order", order.reference)
    assert "100 mm longer" in tagger(*build, code=1).stderr
    made = tagger.json(*build, "--changes-considered")["numbers"]
    with Store.open(tagger.env["TAGGER_DATABASE_URL"]) as store:
        done = store.order(order.reference)
        assert (str(done.state), len(done.built), len(made)) == ("building", 1, 1)


def test_a_slip_is_corrected_and_made_void_on_the_command_line(tagger: Shell) -> None:
    [number] = tagger.json("register", "spec.json", "--customer", "Quarry")["numbers"]
    tagger("correct", number, "--customer", "Harbour", "--hose-lot", "H-9", "--reason", "wrong label")
    record = tagger.json("show", number)
    assert (record["customer"], record["spec"]["hose"]["lot"]) == ("Harbour", "H-9")
    assert (
        "Nothing differs"
        in tagger("correct", number, "--customer", "Harbour", "--reason", "x", code=1).stderr
    )
    tagger("void", number, "--reason", "registered twice")
    assert "VOID, do not fit: registered twice" in tagger("show", number).stdout
    assert "is void" in tagger("print", number, "--out", "tag.pdf", code=1).stderr


def test_the_proof_test_of_the_examples_passes_as_it_is_written_there(tagger: Shell) -> None:
    readme = (ROOT / "examples/README.md").read_text(encoding="utf-8").replace("\\\n", "")
    number = tagger("register", ROOT / "examples/week/boom_rod_side.json").stdout.strip()
    (written,) = re.findall(r"^ +tagger (proof \$NUMBER .*)$", readme, re.MULTILINE)
    done = tagger(*shlex.split(written.replace("$NUMBER", number)))
    assert "\nproof test passed: 310 bar (4500 psi), 60 s" in done.stdout


def test_a_proof_test_and_its_allowance_are_recorded_on_the_command_line(tagger: Shell) -> None:
    spec = {**EXAMPLE, "hose": {"standard": "EN 853 2SN", "dash": 12}}
    (tagger.folder / "spec.json").write_text(json.dumps(spec), encoding="utf-8")
    [number] = tagger.json("register", "spec.json")["numbers"]
    asked = tagger("proof", number).stdout
    assert "Proof test: 414 bar (6000 psi), held 30 to 60 s, with liquid" in asked
    made = ("--hold", "60", "--medium", "water", "--tester", "Bela")
    passed = ("proof", number, "--result", "passed", *made)
    assert "nothing was recorded" in tagger("proof", number, "--pressure", "414", *made, code=1).stderr
    assert "minimum burst pressure" in tagger(*passed, "--pressure", "6000", code=1).stderr
    assert "confirm it" in tagger(*passed, "--pressure", "500", code=1).stderr
    assert "proof test" not in tagger("show", number).stdout, "nothing was recorded so far"
    held = tagger.json(*passed, "--pressure", "500", "--confirmed")
    assert (held["result"], held["required"]["pressure_bar"]) == ("held", 413.6)
    letter = ("--by", "both manufacturers", "--on", "2026-01-05", "--document", "letter 12")
    assert tagger.json("allow", number, *letter)["allowed"]["document"] == "letter 12"
    assert "not held" in tagger("allow", number, *letter, code=1).stderr
    assert "proof test passed: 414 bar" in tagger(*passed, "--pressure", "6000 psi").stdout
    assert "proof test passed: 414 bar (6000 psi), 60 s" in tagger("show", number).stdout


def test_what_is_right_although_it_is_unusual_is_confirmed_on_the_command_line(tagger: Shell) -> None:
    jack = {"standard": "jack hose", "dash": 6}
    end = {"connection": "other", "description": "G 3/8 male, flat", "form": "male", "shape": "straight"}
    spec = {
        "hose": jack, "end_a": end, "end_b": end, "length_mm": 102_000,
        "working_pressure": {"value_bar": 700, "source": "invented data sheet"},
    }  # fmt: skip
    (tagger.folder / "spec.json").write_text(json.dumps(spec), encoding="utf-8")
    assert "is over 100000 mm" in tagger("register", "spec.json", code=1).stderr
    long = ("--length-confirmed",)
    assert tagger.json("check", "spec.json", *long)["working_pressure"]["value_bar"] is None
    both = (*long, "--pressure-confirmed")
    assert tagger.json("check", "spec.json", *both)["working_pressure"]["value_bar"] == 700
    [number] = tagger.json("register", "spec.json", *both)["numbers"]
    kept = tagger.json("show", number)["spec"]
    assert (kept["length_confirmed"], kept["working_pressure"]["confirmed"]) == (True, True)
    (tagger.folder / "spec.json").write_text(json.dumps(EXAMPLE), encoding="utf-8")
    assert (
        "no working pressure to confirm"
        in tagger("check", "spec.json", "--pressure-confirmed", code=1).stderr
    )


def test_a_shop_that_tests_first_prints_the_job_card_and_no_tag(tagger: Shell) -> None:
    [number] = tagger.json("register", "spec.json")["numbers"]
    first: dict[str, Any] = {"TAGGER_PROOF_FIRST": "1"}
    refused = tagger("print", number, "--out", "tag.pdf", code=1, **first)
    assert "before the proof test has passed" in refused.stderr and not (tagger.folder / "tag.pdf").exists()
    tagger("print", number, "--template", "traveller_a5", "--out", "card.pdf", **first)
    refused = tagger("run", SERVICE_RUN, "--out", "tags.pdf", code=1, **first)
    assert "no tag before the proof test" in refused.stderr
    with Store.open(tagger.env["TAGGER_DATABASE_URL"]) as store:
        assert store.count() == 1, "nothing of the list is registered"
