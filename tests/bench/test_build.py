"""The build page without a browser: live answers, registering, printing, starting from something."""

from __future__ import annotations

import io
import json
import re
import xml.etree.ElementTree as ElementTree
from html import unescape
from importlib import resources
from pathlib import Path

import ezdxf
import pypdfium2
import zxingcpp
from PIL import Image

from api.bench import form
from api.settings import ClockingSense, Settings
from tagger.code import link, payload
from tagger.spec import AssemblySpec, Connection, Form, LengthBasis, Sizing
from tagger.store import Filter, Kind, OrderState, Store
from tagger.trade.identifying.readings import ASKED
from tests.bench.served import HOSE, Bench, serving
from tests.store.samples import assessment, spec
from tests.trade.specs import end


def _preview(bench: Bench, **changes: str) -> dict[str, object]:
    answer = bench.submit("/bench/build/preview", {**HOSE, **changes})
    assert answer.status_code == 200
    found: dict[str, object] = answer.json()
    return found


def test_the_preview_tells_rating_and_tag(bench: Bench) -> None:
    found = _preview(bench)
    html = str(found["html"])
    assert "Limited by the hose." in html
    assert "1251 mm (49 1/4 in)" in html and "<svg" in html
    assert found["problems"] == []


def test_what_follows_from_the_hose_is_filled_in(bench: Bench) -> None:
    settled = _preview(bench)["settled"]
    assert isinstance(settled, dict)
    assert (settled["hose.standard"], settled["end_a.size"]) == ("SAE 100R2", "12")
    settled = _preview(bench, **{"end_a.connection": "bspp"})["settled"]
    assert isinstance(settled, dict)
    assert (settled["end_a.size"], settled["end_b.size"]) == ("3/4", "3/4")


def test_problems_are_told_at_the_field_that_was_filled_in(bench: Bench) -> None:
    problems = _preview(bench, **{"end_a.size": "7", "length_mm": "long"})["problems"]
    assert isinstance(problems, list)
    assert {p["field"] for p in problems} == {"length_mm"}
    problems = _preview(bench, **{"end_a.size": "7"})["problems"]
    assert isinstance(problems, list)
    assert "end_a.size" in {p["field"] for p in problems}


def test_the_bench_speaks_of_parts_by_their_names_not_their_keys(bench: Bench) -> None:
    families = (c for c in Connection if c.sized_by is not Sizing.WORDS)  # "other" is a word of its own
    keys = re.compile(rf"\b({'|'.join([*families, *(f for f in Form if '_' in f)])})\b")
    measured = {"form": "male", "thread_od": "27", "tpi": "12", "seat": "37"}
    identified = bench.get("/bench/identify", params=measured).text
    assert "Only -12 37° flare (JIC) matches." in identified
    found = _preview(bench, **{"end_a.size": "7", "end_b.connection": "sae_45_flare"})
    whole = _preview(bench, **{"end_b.connection": "npt", "end_b.form": "male"})
    assert "37° flare (JIC)" in json.dumps(found["problems"], ensure_ascii=False)
    for shown in (identified, str(whole["html"]), str(found["html"])):
        assert not keys.search(re.sub(r"<[^>]*>", " ", shown))
    assert not keys.search(" ".join(f"{p['why']} {p['mend']}" for p in found["problems"]))  # type: ignore[attr-defined]


def test_whatever_identify_may_ask_for_has_a_field_on_the_bench(bench: Bench) -> None:
    measured = {"form": "female_swivel", "thread_id": "18.9", "tpi": "14", "seat": "60"}
    page = bench.get("/bench/identify", params=measured).text
    assert "Measure next:</strong> cone: whether it stands out" in page
    for feature in ASKED:
        for name in {"thread": ("thread_od", "thread_id")}.get(feature, (feature,)):
            assert f'name="{name}"' in page
    answered = bench.get("/bench/identify", params={**measured, "cone": "inside"}).text
    assert "Measure next:" not in answered or "cone: whether" not in answered
    assert '<option value="inside" selected>lies inside like a funnel</option>' in answered


def test_the_bench_offers_only_what_matches_and_asks_again_what_can_be_measured(bench: Bench) -> None:
    page = bench.get(
        "/bench/identify", params={"form": "male", "thread_od": "26.99", "tpi": "12", "seat": "45"}
    ).text
    offered = re.findall(r'data-connection="([^"]*)"', page)
    assert "37° flare" in page and "sae_37_flare" not in offered
    assert "Only connections in the tables are compared." in page
    stud = {"form": "male", "thread_od": "22", "pitch": "1.5", "seat": "boss"}
    asked = bench.get("/bench/identify", params=stud).text
    assert 'data-cannot="series"' in asked
    without = unescape(re.search(r'data-cannot="series" href="([^"]*)"', asked)[1])  # type: ignore[index]
    assert "Measure next:" not in bench.get(without).text
    told = bench.get("/bench/identify", params={**stud, "series": "L"}).text
    assert 'data-series="L"' in told and "end_a.series=L" in told


def test_a_whole_lay_line_in_the_hose_field_fills_standard_size_and_edition(bench: Bench) -> None:
    line = {
        "hose.standard": "NO SKIVE | SAE100R2AT-12 | EN853/2SN | 19mm | WP 21.5 MPa",
        "hose.dash": "",
        "hose.edition": "",
    }
    settled = _preview(bench, **line)["settled"]
    assert isinstance(settled, dict)
    assert (settled["hose.standard"], settled["hose.dash"]) == ("EN 853 2SN", "12")
    typed = _preview(bench, **{**line, "hose.standard": "SAE 100R2AT-12", "hose.dash": "8"})["settled"]
    assert isinstance(typed, dict) and typed["hose.dash"] == "8", "what was typed is not overwritten"
    assert typed["hose.edition"] == "AT"
    wrong = _preview(bench, **{**line, "hose.standard": "EN 853 2NS", "hose.dash": "12"})
    assert "EN 853 2SN" in json.dumps(wrong["problems"])


def test_a_lay_line_with_psi_for_bar_or_for_jetting_is_refused_where_it_stands(bench: Bench) -> None:
    def refused(line: str, dash: str = "") -> list[str]:
        found = _preview(bench, **{"hose.standard": line, "hose.dash": dash})["problems"]
        assert isinstance(found, list)
        return [problem["field"] for problem in found]

    assert refused("EN 853 2SN DN 19 WP 3100 BAR") == ["hose.rating.value_bar"]
    assert refused("EN 853 2SN JETTING HOSE WP 250 BAR", dash="12") == ["hose.standard"]


def test_two_elbows_ask_for_clocking(bench: Bench) -> None:
    found = _preview(bench, **{"end_a.shape": "elbow_90"})
    problems = found["problems"]
    assert isinstance(problems, list)
    assert found["clocking"] is True
    assert [p["field"] for p in problems] == ["clocking_deg"]


def test_building_registers_what_was_on_the_page(bench: Bench, store: Store) -> None:
    fields = {**HOSE, "hose.lot": "H-1", "end_b.lot": "F-2", "count": "3", "customer": "Quarry", "key": "k1"}
    answer = bench.submit("/bench/build", fields)
    assert answer.status_code == 200 and "3 tags registered" in answer.text
    made = store.find().assemblies
    assert len(made) == 3
    spec = made[0].spec
    assert (spec.length_mm, spec.length_basis) == (1251.0, LengthBasis.SEALING_FACE)
    assert (spec.hose.standard, spec.hose.lot, spec.end_a.lot, spec.end_b.lot) == (
        "SAE 100R2",
        "H-1",
        None,
        "F-2",
    )
    assert (made[0].customer, made[0].registered_by) == ("Quarry", "manager")
    bench.submit("/bench/build", fields)
    assert store.count() == 3, "the same page sent twice registers once"


def test_a_refused_build_shows_why_and_keeps_what_was_typed(bench: Bench, store: Store) -> None:
    store.withdraw("cover blisters", hose_lot="H-13")
    answer = bench.submit("/bench/build", {**HOSE, "hose.lot": "H-13"})
    assert answer.status_code == 422
    assert "cover blisters" in answer.text and 'value="H-13"' in answer.text
    assert store.count() == 0


def test_a_shop_that_counts_clockwise_keeps_the_standards_angle(store: Store) -> None:
    settings = Settings(clocking_sense=ClockingSense.CLOCKWISE)
    with serving(settings, store) as served, Bench(served.url, store, "builder") as bench:
        bench.submit("/bench/build", {**HOSE, "end_a.shape": "elbow_90", "clocking_deg": "90"})
        [made] = store.find().assemblies
        assert made.spec.clocking_deg == 270
        assert 'name="clocking_deg" value="90"' in bench.get(f"/bench/build?tag={made.number}").text


def test_the_printed_pdf_and_png_decode_to_the_spec(bench: Bench, store: Store) -> None:
    bench.submit(
        "/bench/build", {**HOSE, "end_a.shape": "elbow_90", "end_a.drop_mm": "56", "clocking_deg": "90"}
    )
    [made] = store.find().assemblies
    pdf = bench.submit("/bench/print", {"number": made.number, "template": "hang_tag", "as": "pdf"})
    asked = {"number": made.number, "template": "hang_tag", "as": "png", "reason": "lost", "again": "1"}
    png = bench.submit("/bench/print", asked)
    page = pypdfium2.PdfDocument(pdf.content)[0].render(scale=300 / 72).to_pil()
    for picture in (page, Image.open(io.BytesIO(png.content))):
        texts = [code.text for code in zxingcpp.read_barcodes(picture) if "/T/" in code.text]
        scanned = link.parse(texts[0])
        assert scanned.number == made.number and scanned.digits is not None
        assert payload.decode(scanned.digits).spec == made.spec.carried()
    prints = [e for e in store.history(made.number) if e.kind is Kind.PRINTED]
    assert [(e.by, e.data["as"], e.data["reason"]) for e in prints] == [
        ("manager", "pdf", ""),
        ("manager", "png", "lost"),
    ]


def test_a_plate_is_taken_to_the_engraver_as_lines_and_counted_as_printed(bench: Bench, store: Store) -> None:
    """SVG and DXF from the print page; a label for a printer is none, and says so. The preview has its lines, too."""
    seen = str(_preview(bench, template="metal_plate")["html"])
    [picture] = re.findall(r'<svg [^>]*width="101.6mm".*?</svg>', seen)
    assert "<text" not in picture and picture.count("<polygon") > 200
    assert len(re.findall(r'fill="(?!none)', picture)) == 2, (
        "only the modules of the code and the bars are dark"
    )
    bench.submit("/bench/build", HOSE)
    [made] = store.find().assemblies
    page = bench.get(f"/bench/run/{made.run}").text
    assert 'value="svg"' in page and 'value="dxf"' in page
    asked = {"number": made.number, "template": "metal_plate"}
    svg = bench.submit("/bench/print", {**asked, "as": "svg"})
    assert svg.headers["content-type"] == "image/svg+xml"
    [group] = ElementTree.fromstring(svg.text)
    assert {path.get("id") for path in group} == {"PLATE", "LINES", "TEXT", "SYMBOL"}
    dxf = bench.submit("/bench/print", {**asked, "as": "dxf", "again": "1", "reason": "lost"})
    assert (
        dxf.headers["content-type"] == "image/vnd.dxf"
        and f'"{made.number[:5]}-' in dxf.headers["content-disposition"]
    )
    assert not ezdxf.read(io.StringIO(dxf.text)).audit().errors  # type: ignore[attr-defined]
    wrong = bench.submit("/bench/print", {**asked, "template": "hang_tag", "as": "svg", "again": "1"})
    assert wrong.status_code == 422 and "this label is for a printer" in wrong.text
    prints = [e.data for e in store.history(made.number) if e.kind is Kind.PRINTED]
    assert [(e["template"], e["as"]) for e in prints] == [("metal_plate", "svg"), ("metal_plate", "dxf")]


def test_a_second_print_asks_once(bench: Bench, store: Store) -> None:
    bench.submit("/bench/build", {**HOSE, "count": "2"})
    [one, other] = store.find().assemblies
    pressed = {"run": str(one.run), "template": "hang_tag", "as": "pdf"}
    assert bench.submit("/bench/print", {**pressed, "number": one.number}).content.startswith(b"%PDF")
    asked = bench.submit("/bench/print", pressed)  # from a tab that was drawn before
    assert asked.status_code == 409 and "already been printed" in asked.text
    assert (store.times_printed(one.number), store.times_printed(other.number)) == (1, 0)
    given = dict(re.findall(r'<input type="hidden" name="(again|run)" value="(\d+)"', asked.text))
    answered = {**pressed, **given, "number": re.findall(r'name="number" value="([^"]+)"', asked.text)}
    assert bench.submit("/bench/print", answered).content.startswith(b"%PDF")
    assert (store.times_printed(one.number), store.times_printed(other.number)) == (2, 1)
    fresh = bench.submit("/bench/print", {**pressed, "only_new": "1"})
    assert fresh.status_code == 409, "none is left that is new: it would print them all again"


def test_a_record_of_a_run_leads_to_the_print_of_its_own_tag(bench: Bench, store: Store) -> None:
    bench.submit("/bench/build", {**HOSE, "count": "3"})
    number = store.find().assemblies[1].number
    [address] = re.findall(r'href="(/bench/run/\d+\?[^"]*)"', bench.get(f"/bench/tag/{number}").text)
    assert re.findall(r'type="hidden" name="number" value="([^"]*)"', bench.get(address).text) == [number]


def test_nothing_is_built_in_the_future(bench: Bench, store: Store) -> None:
    answer = bench.submit("/bench/build", {**HOSE, "built_on": "2999-12-31"})
    assert "is in the future" in answer.text
    assert store.count() == 0


def test_no_file_of_the_server_is_read_as_a_template(bench: Bench, store: Store, tmp_path: Path) -> None:
    shipped = resources.files("label_templates").joinpath("hang_tag.toml").read_text(encoding="utf-8")
    file = tmp_path / "hang_tag.toml"
    file.write_text(shipped, encoding="utf-8")
    bench.submit("/bench/build", HOSE)
    [made] = store.find().assemblies
    for name in (str(file), str(tmp_path / "nothing.toml"), "../label_templates/hang_tag.toml"):
        answer = bench.submit("/bench/print", {"number": made.number, "template": name, "as": "pdf"})
        assert answer.status_code == 422
        assert "is not a known template" in answer.text
    assert not [event for event in store.history(made.number) if event.kind is Kind.PRINTED]


def test_a_run_prints_one_tag_each_with_its_serial(bench: Bench, store: Store) -> None:
    bench.submit("/bench/build", {**HOSE, "count": "5"})
    run = store.find().assemblies[0].run
    pdf = bench.submit("/bench/print", {"run": str(run), "template": "hang_tag", "as": "pdf"})
    document = pypdfium2.PdfDocument(pdf.content)
    assert len(document) == 5
    numbers = []
    for page in document:
        codes = zxingcpp.read_barcodes(page.render(scale=300 / 72).to_pil())
        numbers.append(next(link.parse(c.text).number for c in codes if "/T/" in c.text))
    assert numbers == [a.number for a in store.run(run)]
    assert store.count(Filter(printed=False)) == 0


def test_an_order_becomes_new_tags_with_its_lineage(bench: Bench, store: Store) -> None:
    bench.submit("/bench/build", {**HOSE, "hose.lot": "H-1", "machine": "L4"})
    [old] = store.find().assemblies
    order = store.request_order(
        number=old.number, quantity=2, contact={"phone": "1"}, changes="100 mm longer"
    )
    page = bench.get(f"/bench/build?order={order.reference}").text
    assert "Changes: 100 mm longer" in page
    assert f'name="order_reference" value="{order.reference}"' in page
    assert f'name="replaces" value="{old.number}"' in page and 'name="count" value="2"' in page
    assert 'value="H-1"' not in page, "the next hose comes from another reel"
    again = {**HOSE, "order_reference": order.reference, "replaces": old.number, "count": "2"}
    assert bench.submit("/bench/build", again).status_code == 422, "it is as long as the old one"
    assert store.order(order.reference).built == ()
    bench.submit("/bench/build", {**again, "length_mm": "1351 mm"})
    done = store.order(order.reference)
    assert done.state is OrderState.BUILDING and len(done.built) == 2
    assert store.assembly(done.built[0]).replaces == old.number


def test_another_shops_tag_is_enough_to_start_from(bench: Bench, store: Store) -> None:
    bench.submit("/bench/build", HOSE)
    [made] = store.find().assemblies
    foreign = "0000000000" + "1"
    scanned = link.build("https://other.example.com", foreign, made.digits)
    answer = bench.get("/bench/scan", params={"text": scanned}).json()
    assert answer["kind"] == "tag" and answer["fields"]["length_mm"] == "1251"


def test_a_scan_of_nothing_is_told_and_is_no_lot(bench: Bench) -> None:
    nothing = {"kind": "unknown", "fields": {}, "say": "Nothing was scanned. Scan the code again."}
    for scanned in ("", "  ", "]C110", "(10)"):
        assert bench.get("/bench/scan", params={"text": scanned}).json() == nothing


def test_a_scanned_lot_says_what_it_is(bench: Bench, store: Store) -> None:
    bench.submit("/bench/build", {**HOSE, "hose.lot": "H-2291", "end_a.lot": "F-118"})
    hose = bench.get("/bench/scan", params={"text": "]C110h-2291"}).json()
    assert (hose["kind"], hose["fields"]["hose.standard"], hose["fields"]["hose.dash"]) == (
        "hose_lot",
        "SAE 100R2",
        "12",
    )
    fitting = bench.get("/bench/scan", params={"text": "F-118"}).json()
    assert (fitting["kind"], fitting["fields"]["connection"]) == ("fitting_lot", "sae_37_flare")
    assert bench.get("/bench/scan", params={"text": "X-1"}).json()["kind"] == "unknown"


def test_a_lot_spelled_otherwise_is_the_same_lot(bench: Bench, store: Store) -> None:
    made = spec(hose={"standard": "SAE 100R2", "dash": 12, "lot": "h  2291"})
    store.register(made, assessment())
    for text in ("H 2291", "h  2291", "H-2291"):
        assert bench.get("/bench/scan", params={"text": text}).json()["kind"] == "hose_lot"


def test_a_recipe_starts_a_build(bench: Bench, store: Store) -> None:
    saved = bench.submit("/bench/build", {**HOSE, "save_recipe": "1", "recipe_name": " boom  & arm"})
    assert saved.status_code == 200 and saved.url.params["recipe"] == "boom & arm"
    assert isinstance(store.recipe("boom & arm").spec, AssemblySpec)
    page = bench.get("/bench/build", params={"recipe": "boom & arm"})
    assert 'value="1251"' in page.text
    assert store.count() == 0

    shorter = {**HOSE, "length_mm": "900", "save_recipe": "1", "recipe_name": "boom & arm"}
    refused = bench.submit("/bench/build", shorter)
    assert refused.status_code == 422 and "A different spec is saved as" in refused.text
    assert 'name="recipe_name" value="boom &amp; arm"' in refused.text, "what was typed stays"
    assert 'name="recipe_replace"' in refused.text
    assert store.recipe("boom & arm").spec.length_mm == 1251
    assert bench.submit("/bench/build", {**shorter, "recipe_replace": "1"}).status_code == 200
    assert store.recipe("boom & arm").spec.length_mm == 900


def test_a_replacement_is_held_against_the_tag_it_replaces(bench: Bench, store: Store) -> None:
    bench.submit("/bench/build", HOSE)
    [old] = store.find().assemblies
    same = str(_preview(bench, replaces=old.number)["html"])
    assert "The new assembly replaces the old one" in same
    other = str(_preview(bench, replaces=old.number, **{"end_a.connection": "orfs"})["html"])
    assert "The new assembly does not replace the old one" in other
    assert "Compared with the tag it replaces" not in str(_preview(bench)["html"])


def test_a_change_that_an_order_asks_for_is_made_or_ticked_as_considered(bench: Bench, store: Store) -> None:
    bench.submit("/bench/build", HOSE)
    [old] = store.find().assemblies
    order = store.request_order(number=old.number, contact={"phone": "1"}, changes="new bend restrictor?")
    fields = {**HOSE, "order_reference": order.reference}
    assert 'name="changes_considered"' in bench.get(f"/bench/build?order={order.reference}").text
    why = "asks for a change: “new bend restrictor?”"
    assert why in str(_preview(bench, order_reference=order.reference)["html"])
    assert why in bench.submit("/bench/build", fields).text
    assert store.count() == 1
    ticked = {**fields, "changes_considered": "1"}
    assert why not in str(_preview(bench, order_reference=order.reference, changes_considered="1")["html"])
    bench.submit("/bench/build", ticked)
    longer = str(_preview(bench, order_reference=order.reference, length_mm="1300")["html"])
    assert "Compared with what was ordered" in longer and why not in longer
    assert "<strong>Overall length:</strong> Old: 1251 mm" in longer, "a slip beside the change is seen"
    as_it_is = _preview(bench, order_reference=order.reference)
    assert "Compared with what was ordered" not in str(as_it_is["html"])
    [new, _] = store.find().assemblies
    assert "Considered, nothing entered." in bench.get(f"/bench/tag/{new.number}").text


def test_an_order_that_is_built_as_it_came_is_held_against_nothing(bench: Bench, store: Store) -> None:
    """Its pressure rested on a manufacturer's word, which is asked anew, and no fluid is named: neither is a change."""
    word = {"rating": {"value_bar": 140, "source": "the manufacturer's letter"}, "hose_dash": 12}
    ordered = spec(end_a=end("jis_30", "M22x1.5", **word))
    order = store.request_order(spec=ordered, contact={"phone": "1"})
    fields = form.fields_of(order.spec.to_build_again(), ClockingSense.STANDARD)
    as_it_came = {name: str(value) for name, value in fields.items() if value not in (None, "", [], False)}
    heading, asked = "Compared with what was ordered", {**as_it_came, "order_reference": order.reference}
    answer = bench.submit("/bench/build/preview", asked).json()
    assert "M22x1.5 JIS 30° flare" in unescape(answer["html"]) and heading not in answer["html"]
    longer = str(bench.submit("/bench/build/preview", {**asked, "length_mm": "1300"}).json()["html"])
    [listed] = re.findall(f"{heading}.*?<ul>(.*?)</ul>", longer, re.DOTALL)
    assert listed.count("<li>") == 1 and "1300 mm" in listed


def test_a_pressure_entered_is_read_aloud_and_counts_above_the_tables_when_ticked(
    bench: Bench, store: Store
) -> None:
    jack = {
        **HOSE, "hose.standard": "a jack hose", "hose.dash": "4", "end_a.connection": "other",
        "end_a.size": "3/8 NPT jack", "end_a.form": "male", "working_pressure.source": "data sheet 9",
    }  # fmt: skip
    psi = {**jack, "working_pressure.value_bar": "10150 psi"}
    answer = bench.submit("/bench/build/preview", psi).json()
    assert answer["readings"]["working_pressure.value_bar"] == "700 bar (10150 psi)"
    assert "is not used. It is above every rating" in answer["html"]
    bench.submit("/bench/build", {**psi, "working_pressure.confirmed": "1"})
    [made] = store.find().assemblies
    assert made.content.working_pressure_bar == 699.8
    assert made.spec.working_pressure is not None and made.spec.working_pressure.confirmed
    again = bench.get(f"/bench/build?tag={made.number}").text
    assert 'name="working_pressure.confirmed" value="1" checked' in again
    known = {**HOSE, "working_pressure.value_bar": "1500", "working_pressure.source": "typed"}
    refused = bench.submit("/bench/build", known)
    assert refused.status_code == 422 and "No such part works above 1000 bar" in refused.text


UNRATED = {
    **HOSE, "hose.standard": "EN 853 2SN", "hose.dash": "8",
    "end_a.connection": "jis_30", "end_a.size": "M22x1.5", "length_mm": "1000",
}  # fmt: skip


def test_a_manufacturers_value_is_asked_for_kept_with_a_tick_and_held_for_the_next_build(
    bench: Bench, store: Store
) -> None:
    asked = bench.submit("/bench/build/preview", UNRATED).json()
    assert list(asked["asks"]) == ["end_a.rating"]
    told = {"end_a.rating.value_bar": "3000 psi", "end_a.rating.source": "catalogue, page 7", "keep": "1"}
    answer = bench.submit("/bench/build/preview", UNRATED | told).json()
    assert answer["asks"] == {} and "207 bar" in answer["readings"]["end_a.rating.value_bar"]
    assert bench.submit("/bench/build", UNRATED | told).status_code == 200
    [made] = store.find(limit=1).assemblies
    assert made.content.working_pressure_bar == 206.8
    [kept] = store.shop_rows()
    assert (kept.by, kept.cells["source"]) == ("manager", "catalogue, page 7")
    later = bench.submit("/bench/build/preview", UNRATED).json()
    assert later["asks"] == {} and "your shop&#39;s value (source: catalogue, page 7)" in later["html"]


def test_psi_typed_as_bar_is_not_kept(bench: Bench, store: Store) -> None:
    slip = {"end_a.rating.value_bar": "900", "end_a.rating.source": "catalogue, page 7", "keep": "1"}
    refused = bench.submit("/bench/build", UNRATED | slip)
    assert refused.status_code == 422 and "does not rate the part here" in refused.text
    assert store.count() == 0 and store.shop_rows(ended=True) == []


def test_a_length_is_read_aloud_and_a_fraction_without_a_unit_is_refused(bench: Bench, store: Store) -> None:
    bare = {**HOSE, "length_mm": "49 1/4"}
    answer = bench.submit("/bench/build/preview", bare).json()
    assert "length_mm" not in answer["readings"]
    assert [p["id"] for p in answer["problems"]] == ["spec-unit-bare-fraction"]
    assert bench.submit("/bench/build", bare).status_code == 422 and store.count() == 0
    said = bench.submit("/bench/build/preview", {**HOSE, "length_mm": "49 1/4 in"}).json()["readings"]
    assert said["length_mm"] == "1251 mm (49 1/4 in)"


def test_a_shop_that_works_in_inches_reads_bare_numbers_and_fractions_so(
    settings: Settings, store: Store
) -> None:
    inches = settings.model_copy(update={"length_unit": "in"})
    with serving(inches, store) as served, Bench(served.url, store, "manager") as bench:
        bench.submit("/bench/build", {**HOSE, "length_mm": "49 1/4"})
        bench.submit("/bench/build", {**HOSE, "length_mm": "40"})
        second, first = store.find().assemblies
        assert (first.spec.length_mm, second.spec.length_mm) == (1251.0, 1016)
        again = bench.get(f"/bench/build?tag={first.number}").text
        assert 'name="length_mm" value="1251 mm"' in again, "a copy is not read as inches"
        page = bench.get("/bench/identify?form=male&thread_od=1 1/16&tpi=12&seat=37").text
        assert "has no unit" not in page and "37" in page


def test_over_100_m_is_built_with_a_tick(bench: Bench, store: Store) -> None:
    fields = {**HOSE, "length_mm": "103 m"}
    assert bench.submit("/bench/build", fields).status_code == 422
    answer = bench.submit("/bench/build/preview", fields).json()
    assert [p["field"] for p in answer["problems"]] == ["length_confirmed"]
    assert bench.submit("/bench/build", {**fields, "length_confirmed": "1"}).status_code == 200
    assert store.find().assemblies[0].spec.length_mm == 103_000


def test_a_jump_size_is_named_by_its_label_and_its_value_offered(bench: Bench) -> None:
    fields = {**HOSE, "end_a.size": "8"}
    html = unescape(bench.submit("/bench/build/preview", fields).json()["html"])
    assert 'data-fill="end_a.hose_dash" data-value="12"' in html and "hose_dash)" not in html
    assert "End A, Jump size: tail for hose dash" in html and "It is a jump size: use 12" in html
    answer = bench.submit("/bench/build/preview", {**fields, "end_a.hose_dash": "12"}).json()
    assert answer["problems"] == []
