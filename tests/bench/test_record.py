"""Proving: crimp and proof test, what they block, and the certificate."""

from __future__ import annotations

import html
import re

import pypdfium2
import pytest

from tagger.code import link, payload
from tagger.code import number as tag_number
from tagger.i18n import Translator
from tagger.messages import torque as newton_metres
from tagger.record_tag import tags_of
from tagger.settings import ShopSettings
from tagger.store import CrimpValue, Kind, Store
from tagger.trade import assess
from tests.bench.served import HOSE, Bench, Served


@pytest.fixture
def number(bench: Bench, store: Store) -> str:
    bench.submit("/bench/build", {**HOSE, "hose.standard": "EN 853 2SN"})
    return store.find().assemblies[0].number


def _test(
    bench: Bench, number: str, result: str, pressure: str = "6000 psi", hold: str = "60", note: str = ""
) -> int:
    fields = {"pressure_bar": pressure, "hold_s": hold, "medium": "water", "tester": "Bela", "result": result}
    fields |= {"note": note}
    return bench.submit(f"/bench/tag/{number}/proof", fields).status_code


def test_a_failed_test_blocks_the_tag_until_a_later_one_passes(
    bench: Bench, store: Store, number: str
) -> None:
    assert _test(bench, number, "failed") == 200
    refused = bench.submit("/bench/print", {"number": number, "as": "pdf"})
    assert refused.status_code == 422 and "failed" in refused.text
    assert store.times_printed(number) == 0
    assert _test(bench, number, "passed") == 422, "what was mended is not said"
    assert _test(bench, number, "passed", note="O-ring of end A replaced") == 200
    assert bench.submit("/bench/print", {"number": number, "as": "pdf"}).status_code == 200
    kinds = [event.kind for event in store.history(number)]
    assert kinds.count(Kind.PROOF_TESTED) == 2, "neither is taken back"


def test_too_low_a_pressure_or_too_short_a_hold_cannot_pass(bench: Bench, store: Store, number: str) -> None:
    called_for = store.assembly(number).assessment.test_pressure_bar
    assert called_for is not None
    assert _test(bench, number, "passed", f"{called_for - 1} bar") == 422
    assert _test(bench, number, "passed", hold="29") == 422
    assert store.last([number], Kind.PROOF_TESTED) == {}
    assert _test(bench, number, "failed", f"{called_for - 1} bar") == 200


def test_a_crimp_is_held_against_the_shops_value(bench: Bench, store: Store, number: str) -> None:
    refused = bench.submit(f"/bench/tag/{number}/crimp", {"crimp_a": "33.4", "shell_a": "two-wire"})
    assert refused.status_code == 422 and "no crimp diameter" in refused.text
    store.keep_crimp(CrimpValue("EN 853 2SN", 12, "two-wire", 33.4, 0.1, 0.2, "invented for a test"))
    bench.submit(
        f"/bench/tag/{number}/crimp",
        {"crimp_a": "33.5", "shell_a": "two-wire", "crimp_b": "33.7", "shell_b": "two-wire"},
    )
    [measured] = [e for e in store.history(number) if e.kind is Kind.CRIMPED]
    assert [(c["end"], c["holds"]) for c in measured.data["crimps"]] == [("a", True), ("b", False)]
    assert "out of tolerance" in str(store.blocked([number])[number])
    bench.submit(f"/bench/tag/{number}/crimp", {"crimp_b": "1.319 in", "shell_b": "two-wire"})
    assert store.blocked([number]) == {}


def test_the_certificate_says_what_was_recorded(bench: Bench, number: str) -> None:
    assert bench.get(f"/bench/tag/{number}/certificate.pdf").status_code == 404
    _test(bench, number, "passed")
    answer = bench.get(f"/bench/tag/{number}/certificate.pdf")
    assert answer.headers["content-type"] == "application/pdf"
    text = pypdfium2.PdfDocument(answer.content)[0].get_textpage().get_text_range()
    for words in (
        tag_number.format(number),
        "passed",
        "414 bar (6000 psi)",
        "60 s (required: 30 to 60 s)",
        "water",
        "Bela",
        "Ridge Hose",
    ):
        assert words in text
    _test(bench, number, "failed")
    failed = bench.get(f"/bench/tag/{number}/certificate.pdf")
    assert "FAILED" in pypdfium2.PdfDocument(failed.content)[0].get_textpage().get_text_range()


def test_no_passed_stands_first_on_the_certificate_of_a_withdrawn_hose(
    bench: Bench, store: Store, number: str
) -> None:
    _test(bench, number, "passed")
    assert f"Tag {tag_number.format(number)}: passed" in _certificate(bench, number)
    store.withdraw("cover blisters", tag=number)
    words = _certificate(bench, number)
    assert "WITHDRAWN - do not use (cover blisters)" in words
    assert f"Tag {tag_number.format(number)}: passed" not in words


def test_no_passed_stands_first_on_the_certificate_of_a_crimp_out_of_its_band(
    bench: Bench, store: Store, number: str
) -> None:
    _test(bench, number, "passed")
    value = CrimpValue("EN 853 2SN", 12, "two-wire", 33.4, 0.1, 0.2, "invented for a test")
    store.record_crimps(number, [value.measured("a", 34.5), value.measured("b", 34.5)])
    store.record_crimps(number, [value.measured("b", 33.5)])
    words = _certificate(bench, number)
    assert "CRIMP OUT OF TOLERANCE - do not use" in words and "End A 34.5 mm" in words
    assert f"Tag {tag_number.format(number)}: passed" not in words


def test_the_certificate_names_fluid_temperature_and_what_is_not_known(bench: Bench, store: Store) -> None:
    jis = {
        "end_b.same": "",
        "end_b.connection": "jis_60",
        "end_b.size": "3/4",
        "end_b.form": "female_swivel",
        "end_b.shape": "straight",
    }
    bench.submit("/bench/build", HOSE | jis)
    (made,) = store.find().assemblies
    assert made.content.unknown_parts == ("end_b",)
    _test(bench, made.number, "failed", "300 bar")
    answer = bench.get(f"/bench/tag/{made.number}/certificate.pdf")
    said = " ".join(pypdfium2.PdfDocument(answer.content)[0].get_textpage().get_text_range().split())
    assert "at most. End B, 3/4 JIS 60" in said and "use the fitting manufacturer's value" in said
    assert "Fluid mineral oil only" in said and "Maximum temperature 100 °C" in said


def test_the_certificate_names_the_torque_with_what_it_holds_for_and_what_other_sources_say(
    bench: Bench, number: str, store: Store
) -> None:
    torque = store.assembly(number).assessment.end_a.torque
    assert torque is not None and "others" in torque.basis.values
    _test(bench, number, "passed")
    answer = bench.get(f"/bench/tag/{number}/certificate.pdf")
    assert len(pypdfium2.PdfDocument(answer.content)) == 1
    said = " ".join(pypdfium2.PdfDocument(answer.content)[0].get_textpage().get_text_range().split())
    t = Translator("en")
    assert f"Tightening, end A {t.figure(newton_metres(torque.min, torque.max))}, {t(torque.basis)}" in said
    assert "other sources" in said and torque.source in said


def _overrated(store: Store, number: str, bar: float = 420) -> str:
    """A record as an older program left it, rated at ``bar`` whatever today's tables say."""
    spec = store.assembly(number).spec
    then = assess(spec)
    rated = then.working_pressure.model_copy(update={"value_bar": bar})
    return store.register(spec, then.model_copy(update={"working_pressure": rated}))[0].number


def test_what_was_rated_too_high_has_the_lower_pressure_on_page_paper_and_a_tag_printed_again(
    bench: Bench, store: Store, number: str
) -> None:
    old = _overrated(store, number)
    now = round(store.assembly(number).content.working_pressure_bar or 0)
    page = bench.get(f"/bench/tag/{old}").text
    assert "registered for 420 bar" in page and f'<p class="big">{now} bar' in page
    _test(bench, old, "passed", f"{2 * now} bar")
    paper = _certificate(bench, old)
    assert f"{now} bar" in paper and "420 bar" not in paper
    [tag] = tags_of(store, [store.assembly(old)], ShopSettings())
    digits = link.parse(tag.link).digits or ""
    assert round(payload.decode(digits).working_pressure_bar or 0) == now
    assert "Tag and record differ" not in bench.get(f"/T/{old}/{digits}").text
    higher = payload.encode(tag.content.model_copy(update={"working_pressure_bar": 600}))
    assert "Tag and record differ" in bench.get(f"/T/{old}/{higher}").text


def test_a_value_above_every_published_one_is_said_on_page_and_paper(bench: Bench, store: Store) -> None:
    told = {"hose.rating.value_bar": "390", "hose.rating.source": "data sheet 7"}
    bench.submit("/bench/build", {**HOSE, **told, "hose.edition": "AT"})
    [unsure] = store.find().assemblies
    assert unsure.content.working_pressure_bar == 155.1 and unsure.assessment.above_published == ()
    bench.submit("/bench/build", {**HOSE, **told, "hose.edition": "AT", "hose.rating.confirmed": "1"})
    made = store.find().assemblies[0]
    [above] = made.assessment.above_published
    sentence = Translator("en")(above)
    assert sentence in html.unescape(bench.get(f"/bench/tag/{made.number}").text)
    assert "is above every published rating of this part" in bench.get(f"/T/{made.number}").text
    _test(bench, made.number, "failed")
    assert sentence in _certificate(bench, made.number)


def test_a_hold_longer_than_called_for_is_said_on_the_certificate(bench: Bench, number: str) -> None:
    assert "hold time 30 to 60 s." in bench.get(f"/bench/tag/{number}").text
    _test(bench, number, "passed", hold="90")
    answer = bench.get(f"/bench/tag/{number}/certificate.pdf")
    text = pypdfium2.PdfDocument(answer.content)[0].get_textpage().get_text_range()
    assert "90 s (required: 30 to 60 s; longer than required)" in text


def test_the_certificate_is_in_the_language_asked_for_else_in_the_shops(bench: Bench, number: str) -> None:
    _test(bench, number, "failed")
    french = bench.get(f"/bench/tag/{number}/certificate.pdf?lang=fr")
    text = pypdfium2.PdfDocument(french.content)[0].get_textpage().get_text_range()
    assert "NON CONFORME - ne pas utiliser" in " ".join(text.split()) and "414 bar" in text and "eau" in text
    shops = bench.get(f"/bench/tag/{number}/certificate.pdf", headers={"accept-language": "fr"})
    text = pypdfium2.PdfDocument(shops.content)[0].get_textpage().get_text_range()
    assert "FAILED - do not use" in text, "a paper for a customer is not in the builder's language"


def test_the_record_page_tells_the_history(bench: Bench, number: str) -> None:
    _test(bench, number, "passed")
    bench.submit(f"/bench/tag/{number}/event", {"kind": "fitted", "note": "boom, rod side"})
    page = bench.get(f"/bench/tag/{number.lower()}").text
    assert "boom, rod side" in page and "414 bar" in page
    assert bench.submit(f"/bench/tag/{number}/event", {"kind": "withdrawn"}).status_code == 422


def test_both_records_say_that_a_replacement_is_built_until_it_is_installed(
    bench: Bench, store: Store, number: str
) -> None:
    bench.submit("/bench/build", {**HOSE, "replaces": number})
    new = store.find(limit=1).assemblies[0].number
    old_page, new_page = bench.get(f"/bench/tag/{number}").text, bench.get(f"/bench/tag/{new}").text
    assert "A replacement is built." in old_page and "Replaced by" not in old_page
    assert "This replacement is built." in new_page
    bench.submit(f"/bench/tag/{new}/event", {"kind": "fitted"})
    assert "Replaced by" in bench.get(f"/bench/tag/{number}").text
    assert "This replacement is built." not in bench.get(f"/bench/tag/{new}").text


def _certificate(bench: Bench, number: str) -> str:
    answer = bench.get(f"/bench/tag/{number}/certificate.pdf")
    text: str = pypdfium2.PdfDocument(answer.content)[0].get_textpage().get_text_range()
    return " ".join(text.split())


def test_a_pressure_in_the_wrong_unit_is_refused_as_a_slip(bench: Bench, store: Store, number: str) -> None:
    fields = {"pressure_bar": "6000", "hold_s": "60", "medium": "water", "result": "passed"}
    refused = bench.submit(f"/bench/tag/{number}/proof", fields)
    assert refused.status_code == 422 and "above the minimum burst pressure" in refused.text
    assert store.each([number], Kind.PROOF_TESTED) == []


def test_a_test_that_was_too_high_is_certified_as_held_until_the_letter_is_there(
    bench: Bench, store: Store, number: str
) -> None:
    assert _test(bench, number, "passed", "500 bar") == 200
    assert "HELD - do not use" in _certificate(bench, number)
    page, printing = bench.get(f"/bench/tag/{number}").text, 'class="button main" href="/bench/run/'
    assert printing not in page, "nothing to print of what is held but the tag that says so"
    assert re.search(r"water, \S+<br>500 bar", page), "the tester's name runs into no pressure"
    assert bench.submit("/bench/print", {"number": number, "as": "pdf"}).status_code == 422
    letter = {"allowed_by": "Hose and fitting manufacturer", "allowed_on": "", "document": "letter 12"}
    wrong = bench.submit(f"/bench/tag/{number}/allow", letter)
    assert wrong.status_code == 422 and store.held([number])
    assert (
        bench.submit(f"/bench/tag/{number}/allow", {**letter, "allowed_on": "2026-01-05"}).status_code == 200
    )
    words = _certificate(bench, number)
    assert "Pressure test certificate" in words and "tested at 500 bar" in words and "passed" not in words
    assert "Hose and fitting manufacturer, 2026-01-05, letter 12" in words.replace("\r\n", " ")
    assert printing in bench.get(f"/bench/tag/{number}").text
    assert bench.submit("/bench/print", {"number": number, "as": "pdf"}).status_code == 200


def test_a_lower_test_is_certified_as_tested_and_names_who_asked(bench: Bench, number: str) -> None:
    fields = {"pressure_bar": "300", "hold_s": "60", "medium": "water", "result": "passed"}
    assert bench.submit(f"/bench/tag/{number}/proof", fields).status_code == 422
    bench.submit(f"/bench/tag/{number}/proof", {**fields, "lower_source": "drawing 7"})
    words = _certificate(bench, number)
    assert "tested at 300 bar" in words and "drawing 7" in words and "passed" not in words


def test_an_old_record_of_6000_bar_is_not_certified(bench: Bench, store: Store, number: str) -> None:
    then = {"pressure_bar": 6000.0, "hold_s": 60, "medium": "water", "passed": True, "tester": "Bela"}
    store.record(
        number, Kind.PROOF_TESTED, {**then, "called_for_bar": 413.6, "called_for_s": 30.0, "note": ""}
    )
    words = _certificate(bench, number)
    assert "HELD - do not use" in words and "minimum burst pressure" in words and "passed" not in words
    assert "Held: do not use" in bench.get(f"/bench/tag/{number}").text


def test_a_builder_without_the_right_cannot_release_what_is_held(
    served: Served, store: Store, bench: Bench, number: str
) -> None:
    _test(bench, number, "passed", "500 bar")
    letter = {"allowed_by": "A", "allowed_on": "2026-01-05", "document": "B"}
    with Bench(served.url, store, "builder") as builder:
        assert builder.submit(f"/bench/tag/{number}/allow", letter).status_code == 403
    assert store.held([number])


def test_an_unverified_hose_asks_for_the_manufacturers_pressure(bench: Bench, store: Store) -> None:
    bench.submit("/bench/build", HOSE)
    number = store.find().assemblies[0].number
    assert "Not known or unverified: the hose" in bench.get(f"/bench/tag/{number}").text
    assert _test(bench, number, "passed", "345 bar") == 422
    fields = {"pressure_bar": "345", "hold_s": "60", "medium": "water", "result": "passed"}
    given = {"rating_bar": "2500 psi", "rating_source": "data sheet 9"}
    assert 'name="rating_confirmed"' not in bench.get(f"/bench/tag/{number}").text
    high = bench.submit(f"/bench/tag/{number}/proof", {**fields, **given, "rating_bar": "700"})
    assert high.status_code == 422 and 'name="rating_confirmed"' in high.text
    assert bench.submit(f"/bench/tag/{number}/proof", {**fields, **given}).status_code == 200
    words = _certificate(bench, number)
    assert f"Tag {tag_number.format(number)}: passed" in words and "data sheet 9" in words


def test_a_slip_is_made_void_and_its_page_says_do_not_fit(bench: Bench, store: Store, number: str) -> None:
    assert bench.submit(f"/bench/tag/{number}/void", {"void_reason": ""}).status_code == 422
    page = bench.submit(f"/bench/tag/{number}/void", {"void_reason": "registered twice"}).text
    assert "VOID, do not fit." in page and "registered twice" in page
    assert 'class="button main" href="/bench/run/' not in page
    assert bench.submit("/bench/print", {"number": number, "as": "pdf"}).status_code == 422
    assert "void" in bench.get("/bench/find").text
    assert store.withdrawals() == []


def test_a_correction_is_shown_with_both_values_and_certified_anew(
    bench: Bench, store: Store, number: str
) -> None:
    _test(bench, number, "passed")
    assert bench.submit(f"/bench/tag/{number}/void", {"void_reason": "a slip"}).status_code == 422
    given = {"customer": "Harbour Cranes", "hose.lot": "H-77", "correct_reason": "wrong label"}
    page = bench.submit(f"/bench/tag/{number}/correct", given).text
    assert "Customer: not recorded → Harbour Cranes." in page and "Reel lot: not recorded → H-77." in page
    pdf = bench.get(f"/bench/tag/{number}/certificate.pdf").content
    words = " ".join(pypdfium2.PdfDocument(pdf)[0].get_textpage().get_text_bounded().split())
    assert "Issued anew on" in words and "Hose lot: H-77 instead of not recorded" in words
    again = bench.submit(f"/bench/tag/{number}/correct", given)
    assert again.status_code == 422 and "Nothing differs" in again.text


def test_what_is_built_from_another_tag_has_no_lots_of_it(bench: Bench, store: Store) -> None:
    lots = {"hose.lot": "H-1234", "end_a.lot": "F-1234", "end_b.lot": "F-1235"}
    bench.submit("/bench/build", {**HOSE, **lots})
    [old] = store.find().assemblies
    for address in (f"/bench/build?tag={old.number}", f"/bench/build?tag={old.number}&replaces=1"):
        page = bench.get(address).text
        assert not [lot for lot in lots.values() if lot in page]
    scanned = bench.get("/bench/scan", params={"text": old.number}).json()["fields"]
    assert [scanned[name] for name in lots] == [""] * 3
