"""Gauge sheets on the web: anybody gets one, and what was found on it is corrected on the way to identify."""

from __future__ import annotations

import io
import re
from collections.abc import Iterator
from html import unescape
from pathlib import Path

import pypdfium2
import pytest
from fastapi.testclient import TestClient

from api.app import create_app
from api.scan import identify_kit
from api.scan.identify import MEASURED, _with_marks
from api.settings import Settings
from tagger.errors import SpecError
from tagger.gauges import KINDS
from tagger.i18n import LANGUAGES, Translator
from tagger.messages import Message
from tagger.store import Store
from tagger.trade.identifying import likelihood
from tagger.trade.identifying.marks import PAPER
from tagger.trade.tables import tables
from tagger.units import read_length_mm
from tests.databases import fresh_sqlite
from tests.scan.in_node import in_node


@pytest.fixture
def web(served: TestClient) -> TestClient:
    """A browser that has not chosen a language yet."""
    served.cookies.clear()
    return served


@pytest.fixture(scope="module")
def served(tmp_path_factory: pytest.TempPathFactory) -> Iterator[TestClient]:
    folder: Path = tmp_path_factory.mktemp("gauges")
    with Store.open(fresh_sqlite(folder)) as store:
        settings = Settings(public_requests_per_minute=100_000, base_url="http://testserver")
        yield TestClient(create_app(settings, store=store))


VALUES = {
    "identify-scale-beyond": {"given": "95"},
    "identify-mark-twice": {"mark": "D27.00"},
    "identify-mark-unreadable": {"given": "Q9"},
    "identify-mark-other-end": {"thread": "thread_id"},
}


def said(page: str) -> str:
    return " ".join(unescape(re.sub(r"<[^>]*>", " ", page)).split())


def test_anybody_gets_every_sheet_in_their_language_and_a_wrong_name_is_refused_in_words(
    web: TestClient,
) -> None:
    for language in LANGUAGES:
        t = Translator(language)
        page = web.get("/gauges", params={"lang": language})
        assert page.status_code == 200
        assert t("gauges-page-about") in said(page.text)
    for kind in KINDS:
        answer = web.get("/gauges/sheet.pdf", params={"kind": kind, "paper": "letter", "lang": "de"})
        assert answer.headers["content-type"] == "application/pdf"
        text = pypdfium2.PdfDocument(io.BytesIO(answer.content))[0].get_textpage().get_text_range()
        assert "".join(Translator("de")("gauges-card").split()) in "".join(text.split())
    for wrong in (
        {"kind": "x"},
        {"kind": "seats", "paper": "a0"},
        {"kind": "threads", "family": "<script>x"},
    ):
        answer = web.get("/gauges/sheet.pdf", params=wrong, headers={"accept": "text/html"})
        assert answer.status_code == 404
        assert "<script>x" not in answer.text


def test_the_sheets_code_leads_to_a_page_that_offers_the_sheets_marks_and_asks_for_the_check_line(
    web: TestClient,
) -> None:
    page = web.get("/identify", params={"sheet": "threads", "family": "orfs"}).text
    assert '<option value="D30.16">' in page and '<option value="F27.87">' in page
    assert 'name="scale"' in page
    assert re.search(r'<details id="found-on" open>', page)
    assert '<details id="found-on">' in web.get("/identify").text
    for sheet, mark in (("pitches", "P2.117"), ("seats", "A37"), ("hexes", "H31.75")):
        assert f'<option value="{mark}">' in web.get("/identify", params={"sheet": sheet}).text
    flanges = web.get("/identify", params={"sheet": "flanges", "family": "flange_code61"}).text
    assert '<option value="R44.40">' in flanges and '<option value="B52.40">' in flanges
    assert web.get("/identify", params={"sheet": "../x", "family": "<script>"}).status_code == 200


def test_marks_are_corrected_by_the_check_line_and_go_on_with_every_further_question(web: TestClient) -> None:
    asked = {"form": "male", "found": "D27.00 P1.814", "scale": "97"}
    page = web.get("/identify", params=asked).text
    first = re.search(r"<h3>(.*?)</h3>", page)
    assert first and "3/4" in first[1], "G 3/4 or R 3/4, held to a sheet that was printed at 97 %"
    assert 'value="D27.00 P1.814"' in page and 'name="scale" value="97"' in page
    for link in re.findall(r'href="(/identify\?[^"]*cannot[^"]*)"', page):
        assert "found=D27.00" in unescape(link) and "scale=97" in unescape(link)


@pytest.mark.parametrize(
    ("asked", "id"),
    [
        ({"found": "D27.00"}, "identify-scale-missing"),
        ({"found": "D27.00", "scale": "95"}, "identify-scale-beyond"),
        ({"diameter": "27", "scale": "99"}, "identify-scale-alone"),
        ({"diameter": "27", "found": "D27.00", "scale": "99"}, "identify-mark-twice"),
        ({"found": "Q9", "scale": "99"}, "identify-mark-unreadable"),
        ({"found": "F24.70", "scale": "99"}, "identify-mark-other-end"),
        ({"found": "D27.00", "scale": "99", "form": "flange_head"}, "identify-mark-other-end"),
    ],
)
def test_marks_that_cannot_be_trusted_give_no_answer_and_say_why(
    web: TestClient, asked: dict[str, str], id: str
) -> None:
    answer = web.get("/identify", params={"form": "male", **asked})
    assert answer.status_code == 422
    assert "<h3>" not in answer.text
    assert said(str(Message(id, **VALUES.get(id, {}))))[-30:] in said(answer.text)


def test_an_outside_diameter_leaves_every_hose_that_any_source_prints_so_and_never_gives_a_pressure(
    web: TestClient,
) -> None:
    sheet = web.get("/identify", params={"sheet": "hoses"}, follow_redirects=False)
    assert (sheet.status_code, sheet.headers["location"]) == (303, "/gauges/hose")
    for standard in ("EN 853 1SN", "EN 857 2SC", "SAE 100R7"):
        for row in tables().hose_sizes[standard]:
            printed = row.outside_diameter_mm / 0.98  # the strip was printed at 98 %: it reads larger
            whole = web.get("/gauges/hose", params={"od": f"{printed:.3f}", "scale": "98"}).text
            page = said(whole.split("<main")[1].split("</main>")[0])
            [sizes] = re.findall(rf"{standard}: ([-\d, ]+)", page)
            assert f"-{row.dash}" in sizes.replace(" ", "").split(","), (standard, row.dash)
            assert not {"bar", "psi", "MPa"} & set(re.findall(r"[A-Za-z]+", page))
            assert "SAE 100R9" in page, "no source prints it, so it is not excluded"
    assert web.get("/gauges/hose", params={"od": "25"}).status_code == 422, (
        "the size of the print is not known"
    )
    assert web.get("/gauges/hose", params={"od": "25", "scale": "95"}).status_code == 422
    assert web.get("/gauges/hose", params={"od": "<b>", "scale": "100"}).status_code == 422
    nothing = web.get("/gauges/hose", params={"od": "200", "scale": "100"}).text
    assert "None of the hoses" in said(nothing) and "<li>" not in nothing


BY_PHONE = """
const [pool, all] = given, known = unpacked(pool);
answer(all.map((asked) => withMarks(asked, known, lengthOf)));"""


def test_the_phone_without_a_signal_corrects_and_refuses_marks_as_the_server_does() -> None:
    found = ("D26.99", "D26,99; p2.117+a37", "F24.70 H31.75", "R44.40 B52.40", "A37", "D27 F25", "D26.99 Q1", "26.99", "D1234", "D26.99 D27", "H" * 99, "")  # fmt: skip
    lines = (
        "100",
        "97",
        "103 mm",
        "3.9",
        "3,96 in",
        '4"',
        "101.6",
        "96.9",
        "4.13 in",
        "wide",
        "1/0 in",
        "",
        "nan",
        "10 cm",
    )
    asked = [
        {"form": form, "found": text, "scale": line, **more}
        for form, more in (("male", {}), ("female_swivel", {}), ("flange_head", {}), ("", {}), ("male", {"diameter": "27"}), ("male", {"seat": "37", "hex": "32"}))
        for text in found
        for line in lines
    ]  # fmt: skip
    modules = {"marks.js": "withMarks", "measures.js": "lengthOf", "ranker.js": "unpacked"}
    phone = in_node(modules, BY_PHONE, [identify_kit.candidates(tables()), asked])
    refused = 0
    for each, answer in zip(asked, phone, strict=True):
        whole = {name: each.get(name, "") for name in MEASURED}
        try:
            marked, errors = _with_marks(whole)
        except SpecError as error:
            assert [p["message"]["id"] for p in answer["problems"]] == [
                p.message.id for p in error.problems
            ], each
            refused += 1
            continue
        assert not answer["problems"], (each, answer)
        assert answer["paper"] is (errors is not None), each
        for name in ("diameter", "pitch", "hex", "flange_od", "bolt_spacing"):
            there = answer["asked"].get(name, "")
            assert (read_length_mm(there) if there else None) == (
                read_length_mm(marked[name]) if marked[name] else None
            )
        assert answer["asked"].get("seat", "") == marked["seat"]
    assert 0.4 * len(asked) < refused < 0.95 * len(asked)
    errors = likelihood.Errors()
    kept = identify_kit.candidates(tables())
    assert kept["paper"] == {name: PAPER.of(name) for name in likelihood.CONTINUOUS}
    assert kept["errors"] == {name: errors.of(name) for name in likelihood.CONTINUOUS}
