"""The page of a tag without a browser: from record, tag, both or neither, and what it says."""

from __future__ import annotations

from datetime import date, timedelta
from html import unescape
from pathlib import Path

import pytest
from fastapi.testclient import TestClient

from api.app import create_app
from api.scan import view
from api.settings import ClockingSense, Settings
from tagger.code import number, payload
from tagger.i18n import Translator
from tagger.spec import AssemblySpec, Danger, TagContent, Tightening
from tagger.store import Assembly, Kind, Store
from tagger.trade import assess, tightened
from tagger.trade.tables import tables
from tests.scan.conftest import OTHER_SHOP, PARTLY_RATED, SPEC, path, register, text


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


def test_digits_that_differ_in_one_thing_name_it(client: TestClient, assembly: Assembly) -> None:
    """How the nut of either end is tightened, and the day."""
    own = assembly.content
    firm = Tightening(torque_min_nm=57, torque_max_nm=63)
    for changed, said in (
        ({"tighten_a": firm}, "Tightening, end A Record: "),
        ({"tighten_b": firm}, "Tightening, end B Record: "),
        ({"built_on": date(2020, 2, 3)}, "Built on Record: "),
    ):
        digits = payload.encode(own.model_copy(update=changed))
        shown = text(client.get(f"/T/{assembly.number}/{digits}").text)
        assert "Tag and record differ" in shown and said in shown, changed
        assert shown.count(" Record: ") == 1, changed


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
