"""The public pages without a browser: what is shown, refused, kept and answered to machines."""

from __future__ import annotations

import gzip
import io
import json
import re
from datetime import date, timedelta
from html import unescape
from pathlib import Path

import pytest
from fastapi.testclient import TestClient
from PIL import Image

from api.app import create_app
from api.scan import view
from api.settings import ClockingSense, Settings
from tagger.code import link, number, payload
from tagger.code.symbol import code128, qr
from tagger.i18n import Translator
from tagger.spec import AssemblySpec, Danger, TagContent, Tightening
from tagger.store import Assembly, Kind, ProofAllowance, ProofTest, Store
from tagger.trade import assess, tightened
from tagger.trade.tables import tables
from tests.scan.conftest import OTHER_SHOP, SPEC, path, register, scans, text

# --- record, tag, both, neither ---------------------------------------------------------------


def test_lower_case_and_dashes_find_the_same_record(client: TestClient, assembly: Assembly) -> None:
    dashed = f"{assembly.number[:5]}-{assembly.number[5:]}"
    for address in (
        f"/t/{assembly.number.lower()}",
        f"/T/{dashed}",
        f"/t/{dashed.lower()}/{assembly.digits}",
    ):
        answer = client.get(address)
        assert answer.status_code == 200
        assert "boom cylinder, rod side" in text(answer.text)  # only the record has the note


def test_lots_stay_with_the_shop_and_the_note_is_for_everyone(client: TestClient, store: Store) -> None:
    ends = {end: SPEC[end] | {"lot": f"F-{end}"} for end in ("end_a", "end_b")}
    made = register(store, **ends)
    store.withdraw("Burst below four times", hose_lot="H-2291")
    kinds = ("text/html", "application/json", "application/ld+json", "application/linkset+json")
    for accept in kinds:
        answer = client.get(path(made), headers={"accept": accept})
        assert answer.status_code == 200
        for lot in ("H-2291", "F-end_a", "F-end_b"):
            assert lot not in unescape(answer.text), accept
    assert "boom cylinder, rod side" in text(client.get(path(made)).text)
    assert store.assembly(made.number).spec.hose.lot == "H-2291"


def test_with_a_record_and_its_own_digits_nothing_is_warned_of(
    client: TestClient, assembly: Assembly
) -> None:
    shown = text(client.get(path(assembly)).text)
    assert "Shown from the tag only" not in shown
    assert "Tag and record differ" not in shown


def test_digits_that_differ_are_named_and_the_record_wins(
    client: TestClient, store: Store, assembly: Assembly
) -> None:
    other = register(store, length_mm=900.0, covers=[])
    shown = text(client.get(f"/T/{assembly.number}/{other.digits}").text)
    assert "Tag and record differ" in shown
    assert "Length Record: 1250 mm (49.21 in), between sealing faces Tag: 900 mm" in shown
    assert "Sleeves and guards Record: abrasion sleeve Tag: nothing" in shown
    assert "SAE 100R2 -12 (3/4 in), 1250 mm" in shown


def test_a_link_without_a_record_shows_the_tag_marked_as_such(client: TestClient, assembly: Assembly) -> None:
    shown = text(client.get(f"/T/{OTHER_SHOP}/{assembly.digits}").text)
    assert "Shown from the tag only" in shown
    assert "Ask the shop that built the hose" in shown
    assert "1250 mm (49.21 in)" in shown
    assert "boom cylinder" not in shown  # the note is not on the tag
    assert "H-2291" not in shown  # nor are lots


def test_damaged_digits_with_a_record_show_the_record_and_say_so(
    client: TestClient, assembly: Assembly
) -> None:
    answer = client.get(f"/T/{assembly.number}/{assembly.digits[:-1]}")
    assert answer.status_code == 200
    assert "Tag code damaged" in text(answer.text)
    assert "boom cylinder" in text(answer.text)


def test_damaged_digits_without_a_record_are_refused_with_words(
    client: TestClient, assembly: Assembly
) -> None:
    for at in range(len(assembly.digits)):
        wrong = str((int(assembly.digits[at]) + 3) % 10)
        answer = client.get(f"/T/{OTHER_SHOP}/{assembly.digits[:at]}{wrong}{assembly.digits[at + 1 :]}")
        assert answer.status_code == 404
    shown = text(answer.text)
    assert "Tag code" in shown
    assert "Scan the tag again" in shown


def test_a_mistyped_number_says_which_place_looks_wrong(client: TestClient) -> None:
    answer = client.get("/T/7K3MQ9XWZR1")  # Z typed for 2
    assert answer.status_code == 404
    shown = text(answer.text)
    assert "The check character is wrong" in shown
    assert "7K3MQ-9XW2R1 (position 9: 2, not Z)" in shown
    assert 'href="/T/7K3MQ9XW2R1"' in answer.text


def test_an_unknown_number_alone_asks_for_the_symbol(client: TestClient) -> None:
    answer = client.get(f"/T/{OTHER_SHOP}")
    assert answer.status_code == 404
    assert "Scan the QR code on the tag" in text(answer.text)


def test_withdrawn_comes_first_and_there_is_no_guide(
    client: TestClient, store: Store, assembly: Assembly
) -> None:
    store.withdraw("The fitting lot cracked in the crimp", fitting_lot=None, tag=assembly.number)
    html = client.get(path(assembly)).text
    main = html[html.index('<main id="main">') :]
    shown = text(main)
    assert shown.startswith("Withdrawn: do not use The fitting lot cracked in the crimp")
    assert 'class="step' not in main
    assert "Do not install it" in shown


def test_a_withdrawn_hose_lot_withdraws_the_tag_and_lifting_it_ends_that(
    client: TestClient, store: Store, assembly: Assembly
) -> None:
    withdrawal = store.withdraw("Burst below four times", hose_lot="h-2291")
    assert "Withdrawn: do not use" in text(client.get(path(assembly)).text)
    store.lift(withdrawal.id, "retested")
    assert "Withdrawn: do not use" not in text(client.get(path(assembly)).text)


def test_an_old_assembly_is_over_its_storage_guidance(client: TestClient) -> None:
    spec = AssemblySpec.read(
        {
            "hose": {"standard": "SAE 100R2", "dash": 8},
            "end_a": {"connection": "orfs", "dash": 8, "form": "female_swivel"},
            "end_b": {"connection": "orfs", "dash": 8, "form": "male"},
            "length_mm": 700,
        }
    )
    for years, said in (
        (1, None),
        (3, "pages on storage that quote ISO 8331"),
        (7, "Maximum service life: 6 years"),
    ):
        built = date.today() - timedelta(days=round(365.25 * years))
        digits = payload.encode(assess(spec).content_of(spec, built))
        shown = text(client.get(f"/T/{OTHER_SHOP}/{digits}").text)
        assert ("Past its storage or service life" in shown) == (said is not None)
        assert said is None or said in shown


def test_a_shops_own_years_are_told_with_the_shops_own_source(store: Store, tmp_path: Path) -> None:
    (tmp_path / "rules.csv").write_text(
        "key,value,unit,text,source,confidence\n"
        "assembly_life_years_din,10,years,Total life,our insurer's letter of May,shop\n"
        "assembly_storage_years_din,1,years,Storage,our own rule,shop\n"
    )
    client = TestClient(create_app(Settings(tables_dir=tmp_path), store=store))
    spec = AssemblySpec.read(SPEC)
    for years, said in ((1.5, "Maximum storage time of a hose assembly: 1 year (our own rule)"), (7, "(our own rule)"),
                        (11, "Maximum service life: 10 years including storage (our insurer's letter of May)")):  # fmt: skip
        built = date.today() - timedelta(days=round(365.25 * years))
        digits = payload.encode(assess(spec).content_of(spec, built))
        shown = text(client.get(f"/T/{OTHER_SHOP}/{digits}").text)
        assert said in shown and "DIN 20066" not in shown


def test_the_page_tells_how_cold_the_hose_may_get_and_how_far_the_clocking_may_be_off(
    client: TestClient, store: Store
) -> None:
    cold = text(client.get(path(register(store))).text)
    assert "Minimum hose temperature -40 °C -40 °F" in cold
    assert "Tolerance: ±5°" in cold and "Source: MIL-DTL-83796-5 page 6" in cold
    hose = {"standard": "EN 853 2SN", "dash": 12}
    made = register(store, hose=hose, fluid="water", max_temperature_c=60)
    wet = text(client.get(path(made)).text)
    assert "Minimum hose temperature 0 °C 32 °F Source" in wet
    acted_on = [w for w in made.assessment.warnings if w.code in view.FOR_THE_FITTER]
    assert "cold_limit_of_fluid" in {warning.code for warning in acted_on}
    assert all(text(Translator().html(warning.message)) in wet for warning in acted_on)


def test_what_a_phone_keeps_has_a_new_name_when_the_shop_has_a_new_address(store: Store) -> None:
    """A phone that kept the old shell would go on sending orders to the old address."""
    found = set()
    for changed in ({}, {"shop_name": "New name"}, {"shop_phone": "1"}, {"shop_email": "a@b.example"}):
        worker = TestClient(create_app(Settings(**changed), store=store)).get("/scan-worker.js").text
        again = TestClient(create_app(Settings(**changed), store=store)).get("/scan-worker.js").text
        assert worker == again
        found.add(worker)
    assert len(found) == 4


def test_a_figure_not_known_is_said_to_be_not_known(client: TestClient) -> None:
    spec = AssemblySpec.read(
        {
            "hose": {"standard": "SAE 100R2", "dash": 8},
            "end_a": {"connection": "jis_60", "size": "1/2", "form": "female_swivel"},
            "end_b": {"connection": "jis_60", "size": "1/2", "form": "female_swivel"},
            "length_mm": 700,
        }
    )
    shown = text(client.get(f"/T/{OTHER_SHOP}/{payload.encode(TagContent(spec=spec))}").text)
    assert "working pressure of this assembly is not known. Do not install it until" in shown
    assert "not known: use the fitting manufacturer's value" in shown
    assert "How far to tighten this joint is not known" in shown


def test_a_hose_asked_to_work_outside_its_limits_shows_the_danger_before_the_plate(
    client: TestClient, store: Store
) -> None:
    spec = AssemblySpec.read(SPEC | {"max_temperature_c": 150})
    [hot] = store.register(spec, assess(spec), reason="trial on a test stand")
    page = client.get(path(hot)).text
    seen = text(page)
    assert seen.index("is above the maximum temperature") < seen.index("Max. working pressure")
    assert "Do not install it until" in page


PARTLY_RATED = {
    "hose": {"standard": "SAE 100R2", "dash": 8},
    "end_a": {"connection": "sae_37_flare", "dash": 8, "form": "female_swivel"},
    "end_b": {"connection": "jis_60", "size": "1/2", "form": "female_swivel"},
    "clocking_deg": None,
}


@pytest.mark.parametrize("digits_only", [False, True])
def test_an_unknown_end_leaves_the_partial_truth_on_the_page(
    client: TestClient, store: Store, digits_only: bool
) -> None:
    made = register(store, **PARTLY_RATED)
    bar = made.content.at_most_bar
    assert bar is not None and made.content.unknown_parts == ("end_b",)
    shown = text(client.get(f"/T/{OTHER_SHOP}/{made.digits}" if digits_only else path(made)).text)
    assert f"Hose and end A: {round(bar)} bar" in shown and "at most End B, 1/2 JIS 60" in shown
    assert "use the fitting manufacturer's value" in shown and "Do not install it until" in shown


def test_unverified_parts_dangers_and_lubrication_stand_beside_the_figures_of_a_tag_without_a_record(
    client: TestClient,
) -> None:
    oiled = Tightening(torque_min_nm=80, torque_max_nm=90, lubrication="lightly_oiled")
    content = TagContent(
        spec=AssemblySpec.read(SPEC),
        working_pressure_bar=100,
        unverified_parts=("end_b",),
        dangers=(Danger.COLD,),
        tighten_a=oiled,
    )
    page = text(client.get(f"/T/{OTHER_SHOP}/{payload.encode(content)}").text)
    assert "100 bar 1450 psi End B unverified: no published source at hand" in page
    assert "DANGER: colder than the hose allows" in page
    assert "80 to 90 N·m 59 to 66 lbf·ft , lightly oiled" in page


def test_a_flange_torque_stands_with_its_screw_and_never_with_anothers(
    client: TestClient, store: Store
) -> None:
    flange = {"connection": "flange_code62", "dash": 20, "form": "flange_head"}
    found = register(
        store, hose={"standard": "SAE 100R12", "dash": 20}, end_a=flange, end_b=flange, clocking_deg=None
    )
    page = text(client.get(path(found)).text)
    assert "per M14 screw" in page and "each M14 screw to" in page
    unknown = Tightening(torque_min_nm=80, torque_max_nm=90)
    assert tightened.lines(unknown, found.spec.end_a, tables())[0].id == "words-torque-any-screw"


def test_a_shop_that_counts_clockwise_sees_its_own_figure_beside_the_standards(store: Store) -> None:
    settings = Settings(clocking_sense=ClockingSense.CLOCKWISE)
    client = TestClient(create_app(settings, store=store))
    shown = text(client.get(path(register(store))).text)
    assert "135° counter-clockwise, viewed from end A, elbow A pointing down" in shown
    assert "Clockwise from elbow A: 225°. Hold end A nearest you with elbow A pointing up" in shown
    guide = shown[shown.index("Set the elbows") :]
    assert "Clocking angle 225°, clockwise" in guide and "elbow A pointing up" in guide
    assert "135°" not in guide, "the step has one way of counting, and its picture the same"
    kept = client.get("/scan/now/kit-en.json").json()["/scan/shell?lang=en"]["text"]
    assert "data-clockwise" in kept, "a phone without a signal counts as the shop does"
    ours = TestClient(create_app(Settings(), store=store)).get("/scan/now/kit-en.json").json()
    assert "data-clockwise" not in ours["/scan/shell?lang=en"]["text"]


def test_a_visitors_units_are_remembered(client: TestClient, assembly: Assembly) -> None:
    assert 'class="units-metric"' in client.get(path(assembly)).text
    assert 'class="units-inch"' in client.get(path(assembly), params={"units": "inch"}).text
    assert 'class="units-inch"' in client.get("/find").text


# --- for machines -----------------------------------------------------------------------------


def test_the_same_address_answers_json(client: TestClient, store: Store, assembly: Assembly) -> None:
    answer = client.get(path(assembly), headers={"accept": "application/json"})
    assert answer.headers["content-type"] == "application/json"
    found = answer.json()
    assert AssemblySpec.read(found["spec"]) == assembly.spec.without_lots()
    assert found["read_from"] == "record"
    assert found["withdrawn"] == []
    assert link.parse(found["link"]).digits == assembly.digits
    other = client.get(f"/T/{OTHER_SHOP}/{assembly.digits}", headers={"accept": "application/json"}).json()
    assert other["read_from"] == "tag"
    assert other["withdrawn"] is None  # not known, which is not the same as not withdrawn
    assert AssemblySpec.read(other["spec"]) == assembly.spec.carried()


def test_a_refusal_as_json_names_field_why_and_mend(client: TestClient) -> None:
    answer = client.get("/T/7K3MQ9XWZR1", headers={"accept": "application/json"})
    assert answer.status_code == 404
    problem = answer.json()["problems"][0]
    assert problem["field"] == "number"
    assert problem["why"] and problem["mend"] and problem["text"]


def test_the_page_holds_json_ld_of_a_product(client: TestClient, assembly: Assembly) -> None:
    html = client.get(path(assembly)).text
    found = re.search(r'<script type="application/ld\+json">(.*?)</script>', html, re.DOTALL)
    assert found
    product = json.loads(found[1])
    assert product["@context"] == "https://schema.org"
    assert product["@type"] == "IndividualProduct"
    assert product["serialNumber"].replace("-", "") == assembly.number
    names = {entry["name"]: entry["value"] for entry in product["additionalProperty"]}
    assert names["Length"].startswith("1250 mm")
    alone = client.get(path(assembly), headers={"accept": "application/ld+json"})
    assert alone.json() == product


def test_gs1_digital_link_forms_resolve_to_the_page(client: TestClient, assembly: Assembly) -> None:
    giai = f"9506000{assembly.number}"
    own = client.get(path(assembly))
    for address in (
        f"/T/{assembly.digits}/8004/{giai}",
        f"/t/{assembly.digits}/8004/{giai.lower()}",
    ):
        answer = client.get(address)
        assert answer.status_code == 200
        assert text(answer.text) == text(own.text)
    for address in (f"/8004/{giai}", f"/01/09506000134352/21/{assembly.number}"):
        assert f"{assembly.number[:5]}-{assembly.number[5:]}" in text(client.get(address).text)
    assert client.get("/8004/950600012345678901").status_code == 404


def test_link_types_lead_to_their_part_of_the_page(client: TestClient, assembly: Assembly) -> None:
    address = f"/8004/9506000{assembly.number}"
    answer = client.get(address, params={"linkType": "gs1:instructions"}, follow_redirects=False)
    assert (answer.status_code, answer.headers["location"].split("#")[1]) == (307, "fit")
    assert client.get(address, params={"linkType": "gs1:pip"}, follow_redirects=False).status_code == 200
    everything = client.get(address, params={"linkType": "all"})
    assert everything.headers["content-type"] == "application/linkset+json"
    (links,) = everything.json()["linkset"]
    kinds = [key for key in links if key != "anchor"]
    assert all(kind.startswith("https://gs1.org/voc/") for kind in kinds)
    assert "https://gs1.org/voc/defaultLink" in kinds
    assert links["https://gs1.org/voc/instructions"][0]["href"].endswith("#fit")
    by_accept = client.get(address, headers={"accept": "application/linkset+json"})
    assert by_accept.json() == everything.json()


def test_an_unchanged_page_is_not_sent_again(client: TestClient, store: Store, assembly: Assembly) -> None:
    first = client.get(path(assembly))
    assert "must-revalidate" in first.headers["cache-control"]
    again = client.get(path(assembly), headers={"if-none-match": first.headers["etag"]})
    assert (again.status_code, again.content) == (304, b"")
    assert (
        client.get(path(assembly), headers={"accept-language": "de"}).headers["etag"] != first.headers["etag"]
    )
    store.withdraw("recalled", tag=assembly.number)
    after = client.get(path(assembly), headers={"if-none-match": first.headers["etag"]})
    assert after.status_code == 200
    assert "Withdrawn: do not use" in text(after.text)


def test_pages_are_packed_and_say_so(client: TestClient, assembly: Assembly) -> None:
    answer = client.get(path(assembly), headers={"accept-encoding": "gzip"})
    assert answer.headers["content-encoding"] == "gzip"
    assert int(answer.headers["content-length"]) < 20_000
    plain = client.get(path(assembly), headers={"accept-encoding": "identity"})
    assert "content-encoding" not in plain.headers
    assert "Accept-Encoding" in plain.headers["vary"]
    assert len(gzip.compress(plain.content)) < 20_000


def test_no_script_may_run_but_our_own_files(client: TestClient, assembly: Assembly) -> None:
    answer = client.get(path(assembly))
    policy = answer.headers["content-security-policy"]
    assert "script-src 'self'" in policy
    assert "unsafe" not in policy
    inline = re.findall(r"<script(?![^>]*\bsrc=)(?![^>]*application/ld\+json)[^>]*>", answer.text)
    assert not inline
    assert not re.search(r"\son\w+=", answer.text)
    assert not re.search(
        r'(?:src|href)="(?:https?:)?//', answer.text.split("<main")[0].replace("https://tags.example.com", "")
    )


# --- finding ----------------------------------------------------------------------------------


def _photo(modules: list[list[bool]], scale: int = 6, tall: int = 1) -> bytes:
    rows = [row for row in modules for _ in range(tall)]
    image = Image.new("L", (len(rows[0]) + 8, len(rows) + 8), 255)
    for y, row in enumerate(rows):
        for x, dark in enumerate(row):
            image.putpixel((x + 4, y + 4), 0 if dark else 255)
    image = image.resize((image.width * scale, image.height * scale), Image.Resampling.NEAREST).rotate(
        7, expand=True, fillcolor=255
    )
    out = io.BytesIO()
    image.convert("RGB").save(out, "JPEG", quality=80)
    return out.getvalue()


def test_a_photo_of_the_qr_code_opens_the_tag(client: TestClient, assembly: Assembly) -> None:
    address = link.build("https://other.example.org", assembly.number, assembly.digits)
    modules = qr(address).modules
    photo = _photo([[bool(cell) for cell in row] for row in modules])
    answer = client.post("/find", files={"image": ("tag.jpg", photo, "image/jpeg")}, follow_redirects=False)
    assert (answer.status_code, answer.headers["location"]) == (303, path(assembly))


def test_a_photo_of_the_bar_code_opens_the_number(client: TestClient, assembly: Assembly) -> None:
    bars = code128(assembly.number).modules
    photo = _photo([[bool(cell) for cell in bars[0]]], scale=4, tall=40)
    answer = client.post("/find", files={"image": ("tag.jpg", photo, "image/jpeg")}, follow_redirects=False)
    assert (answer.status_code, answer.headers["location"]) == (303, f"/T/{assembly.number}")


def test_a_photo_without_a_tag_is_refused_with_words(client: TestClient) -> None:
    blank = io.BytesIO()
    Image.new("RGB", (300, 200), "white").save(blank, "PNG")
    for data, said in (
        (blank.getvalue(), "shows no readable code"),
        (b"no picture", "is not a readable image"),
    ):
        answer = client.post("/find", files={"image": ("x.png", data, "image/png")})
        assert answer.status_code == 422
        assert said in text(answer.text)


def test_a_photo_of_two_tags_is_refused_with_both_numbers(client: TestClient, store: Store) -> None:
    made = [register(store), register(store)]
    picture = Image.new("L", (1200, 600), 255)
    for place, one in enumerate(made):
        modules = qr(link.build("https://tags.example.com", one.number, one.digits)).modules
        file = io.BytesIO(_photo([[bool(cell) for cell in row] for row in modules], scale=4))
        picture.paste(Image.open(file).convert("L").resize((560, 560)), (place * 600 + 20, 20))
    data = io.BytesIO()
    picture.save(data, "PNG")
    answer = client.post(
        "/find", files={"image": ("x.png", data.getvalue())}, headers={"accept-language": "de"}
    )
    assert answer.status_code == 422
    assert all(number.format(one.number) in answer.text for one in made)


def test_a_typed_link_of_any_shop_opens_here(client: TestClient, assembly: Assembly) -> None:
    typed = f"HTTPS://ANOTHER.EXAMPLE/T/{assembly.number}/{assembly.digits}"
    answer = client.get("/find", params={"q": typed}, follow_redirects=False)
    assert answer.headers["location"] == path(assembly)


def test_the_address_alone_leads_to_finding_a_tag(client: TestClient) -> None:
    answer = client.get("/", follow_redirects=False)
    assert (answer.status_code, answer.headers["location"]) == (303, "/find")
    for typed in ("x" * 5000, f"https://tags.example.com/T/7K3MQ9XW2R1/{'7' * 5000}"):
        page = client.get("/find", params={"q": typed}, headers={"accept": "text/html"})
        assert page.status_code == 422 and "???" not in page.text


@pytest.mark.parametrize("address", ["/T/", "/nosuch", f"/T/{OTHER_SHOP}/123/extra"])
def test_an_address_that_holds_nothing_is_told_in_the_readers_language(
    client: TestClient, address: str
) -> None:
    page = client.get(address, headers={"accept": "text/html", "accept-language": "de"})
    assert page.status_code == 404
    assert "<h1>Seite nicht gefunden</h1>" in page.text and 'action="/find"' in page.text
    assert client.get(address, headers={"accept": "application/json"}).json()["problems"][0]["mend"]


def test_head_is_get_without_its_body_and_no_scan(
    client: TestClient, store: Store, assembly: Assembly
) -> None:
    asked = client.head(path(assembly))
    assert (asked.status_code, asked.content) == (200, b"")
    assert [event for event in store.history(assembly.number) if event.kind is Kind.SCANNED] == []
    got = client.get(path(assembly))
    assert asked.headers["etag"] == got.headers["etag"]
    scans(client).write()
    assert [event.kind for event in store.history(assembly.number)][-1] is Kind.SCANNED


def test_a_replacement_is_told_as_built_on_both_pages_until_it_is_installed(
    client: TestClient, store: Store
) -> None:
    spec = AssemblySpec.read(SPEC)
    [old] = store.register(spec, assess(spec))
    [new] = store.register(spec, assess(spec), replaces=old.number)
    for one in (old, new):
        assert "A replacement is built" in text(client.get(path(one)).text)
    as_values = client.get(path(old), headers={"accept": "application/json"}).json()
    assert (as_values["replaced_by"], as_values["replacement_built"]) == (None, number.format(new.number))
    store.record(new.number, Kind.FITTED)
    assert "A newer hose has replaced it." in text(client.get(path(old)).text)
    assert "A replacement is built" not in text(client.get(path(new)).text)


def test_what_a_proof_test_loaded_too_high_says_do_not_install_and_has_no_fitting_guide(
    client: TestClient, store: Store
) -> None:
    made, other = register(store), register(store)
    called = made.assessment.test_pressure_bar
    assert called is not None
    test = ProofTest(
        pressure_bar=called * 1.5,
        hold_s=60,
        medium="water",
        passed=True,
        tester="Bela",
        rating_bar=called / 2,
        rating_source="invented for a test",
    )
    store.record_proof_test(made.number, test)
    page = client.get(path(made)).text
    assert "Held by the shop: do not install" in text(page) and 'id="step-1"' not in page
    assert client.get(path(made), headers={"accept": "application/json"}).json()["held"] is True
    assert "Held by the shop" not in text(client.get(path(other)).text)
    assert 'id="step-1"' in client.get(path(other)).text
    letter = ProofAllowance(
        allowed_by="both manufacturers", allowed_on=date(2026, 1, 5), document="letter 12"
    )
    store.allow_proof_test(made.number, letter)
    assert "Held by the shop" not in text(client.get(path(made)).text)


def test_a_void_record_says_do_not_fit_and_has_no_fitting_guide(client: TestClient, store: Store) -> None:
    made = register(store)
    other = register(store)
    store.void(made.number, "customer Smith, wrong reel")
    page = text(client.get(path(made)).text)
    assert "VOID: do not fit" in page and "there is no fitting guide" in page
    assert "Smith" not in page and 'id="step-1"' not in client.get(path(made)).text
    assert client.get(path(made), headers={"accept": "application/json"}).json()["void"] is True
    assert "VOID" not in text(client.get(path(other)).text)


GATE = '<details class="gate">'


def forged(bar: float = 420.0) -> str:
    """The digits of a true tag, but for its pressure."""
    spec = AssemblySpec.read(SPEC)
    return payload.encode(assess(spec).content_of(spec).model_copy(update={"working_pressure_bar": bar}))


def test_a_hose_that_must_not_be_installed_yet_has_its_guide_behind_a_deliberate_act_that_says_why(
    client: TestClient, store: Store, assembly: Assembly
) -> None:
    """Digits that differ or cannot be read, a fluid the hose is not for, a pressure wholly unknown or too high."""
    other = register(store, length_mm=900.0)
    water = SPEC | {"fluid": "phosphate_ester", "max_temperature_c": None}
    [wrong] = store.register(AssemblySpec.read(water), assess(AssemblySpec.read(water)), reason="test stand")
    unknown = payload.encode(TagContent(spec=AssemblySpec.read(SPEC)))
    for address, why in (
        (f"/T/{assembly.number}/{other.digits}", "The tag says something else than the shop's record"),
        (path(assembly)[:-1], "the tag cannot be compared with the shop's record"),
        (path(wrong), "only with the hose manufacturer's approval"),
        (f"/T/{OTHER_SHOP}/{unknown}", "The working pressure of this assembly is not known"),
        (f"/T/{OTHER_SHOP}/{forged()}", "The tag claims more pressure than the tables allow"),
    ):
        page = client.get(address).text
        before, behind = page[page.index('id="fit"') :].split(GATE)
        assert "Do not install this hose assembly yet" in before and why in text(before), address
        assert "#step-1" not in before and 'id="step-1"' in behind, address


def test_where_there_is_no_guide_or_it_is_shut_the_tightening_values_are_shut_too(
    client: TestClient, store: Store, assembly: Assembly
) -> None:
    """Withdrawn, void, held, digits that differ, cannot be read or claim too much, not for its fluid: a value read in
    passing is used."""
    withdrawn, void, other = register(store), register(store), register(store, length_mm=900.0)
    failed = register(store)
    store.withdraw("The fitting lot cracked in the crimp", tag=withdrawn.number)
    store.void(void.number, "wrong reel")
    store.record_proof_test(failed.number, FAILED)
    water = SPEC | {"fluid": "phosphate_ester", "max_temperature_c": None}
    [wrong] = store.register(AssemblySpec.read(water), assess(AssemblySpec.read(water)), reason="test stand")
    differ = f"/T/{assembly.number}/{other.digits}"
    claims = f"/T/{OTHER_SHOP}/{forged()}"
    for address in (
        path(withdrawn),
        path(void),
        path(failed),
        path(wrong),
        differ,
        path(assembly)[:-1],
        claims,
    ):
        for shown, behind in _tightening(client.get(address).text):
            assert "N·m" not in shown and "flat" not in shown, address
            assert "Show the tightening values all the same" in behind and "N·m" in behind, address
    for shown, behind in _tightening(client.get(path(assembly)).text):
        assert "N·m" in shown and not behind


FAILED = ProofTest(pressure_bar=300, hold_s=60, medium="water", passed=False, tester="Bela")


def _tightening(page: str) -> list[tuple[str, str]]:
    """Of each end what stands open after the heading of its tightening, and what is folded away by a gate."""
    spec = page[page.index('id="spec"') : page.index('class="facts"')]
    ends = [end.partition("<strong>Tightening</strong>")[2] for end in spec.split('class="end"')[1:]]
    assert len(ends) == 2 and all(ends)
    found = []
    for end in ends:
        shown, gate, rest = end.partition(GATE)
        behind, closed, after = rest.partition("</details>")
        assert bool(gate) == bool(closed)
        found.append((text(shown + after.partition("<details")[0]), text(behind)))
    return found


def test_a_record_whose_rating_was_lowered_since_keeps_its_guide_and_a_tag_within_the_tables_too(
    client: TestClient, store: Store
) -> None:
    """The shop's own record tells the lower pressure; digits that claim no more than the tables are no forgery."""
    spec = AssemblySpec.read(SPEC)
    now = assess(spec)
    rated = now.working_pressure.model_copy(update={"value_bar": 420.0})
    [older] = store.register(spec, now.model_copy(update={"working_pressure": rated}))
    allowed = now.working_pressure.value_bar
    assert allowed is not None
    for address in (
        path(older),
        f"/T/{OTHER_SHOP}/{forged(allowed)}",
        f"/T/{OTHER_SHOP}/{forged(allowed - 60)}",
    ):
        page = client.get(address).text
        assert GATE not in page and 'href="#step-1"' in page, address


def test_a_pressure_known_in_part_is_no_reason_to_hide_the_guide(client: TestClient, store: Store) -> None:
    made = register(store, **PARTLY_RATED)
    for address in (path(made), f"/T/{OTHER_SHOP}/{made.digits}", path(register(store))):
        page = client.get(address).text
        assert GATE not in page and 'href="#step-1"' in page


def test_the_mechanic_is_told_what_he_can_act_on_and_not_what_only_the_builder_settles(
    client: TestClient, store: Store
) -> None:
    """Which edition, whose figure: a row of yellow boxes that nobody reads hides the one that counts."""
    made = register(store)
    codes = {w.code for w in made.assessment.warnings}
    assert {"edition_not_given", "flats_two_bases"} <= codes
    page = client.get(path(made)).text
    assert '<div class="notice care"><p>' not in page[page.index('id="spec"') : page.index('id="order"')]
    ends = {end: {"connection": "npt", "size": "3/4", "form": "male"} for end in ("end_a", "end_b")}
    rigid = register(store, **ends, clocking_deg=None)
    assert "Neither end swivels" in text(client.get(path(rigid)).text)
