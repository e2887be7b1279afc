"""What the bench's pages answer, asked by program: the trade, tags, recipes, crimps, figures, lists."""

from __future__ import annotations

import io
import json
from collections.abc import Callable
from datetime import date
from importlib import resources
from pathlib import Path
from typing import Literal

import httpx
import openpyxl
import pytest

from api.rest.shared import EXAMPLE_SPEC
from api.settings import Settings
from tagger import signing
from tagger.code import link, payload
from tagger.spec import AssemblySpec, End, TagContent
from tagger.store import Role, Store
from tagger.trade import assess, layline, likeforlike, report
from tagger.trade.cutting import cut
from tagger.trade.fittings import Fitting
from tagger.trade.identifying.identify import Measurements, identify
from tagger.trade.tables import tables
from tests.bench.served import serving
from tests.rest.examples import CRIMP, LIST

SPEC = AssemblySpec.read(EXAMPLE_SPEC)


@pytest.fixture
def number(api: httpx.Client) -> str:
    made: str = api.post("/assemblies", json={"spec": EXAMPLE_SPEC, "built_on": "2019-05-01"}).json()[
        "numbers"
    ][0]
    return made


def _link(api: httpx.Client, number: str) -> str:
    text: str = api.get(f"/assemblies/{number}").json()["link"]
    return text


def test_identify_answers_as_the_library_does(api: httpx.Client) -> None:
    given = {"form": "male", "thread_od": "1 1/16 in", "tpi": 12, "seat": "37"}
    answer = api.post("/identify", json=given).json()
    assert answer == report.identification(identify(Measurements.read(**given)))  # type: ignore[arg-type]
    assert (answer["candidates"][0]["connection"], answer["candidates"][0]["dash"]) == ("sae_37_flare", 12)


def test_a_lay_line_is_read_as_the_library_reads_it(api: httpx.Client) -> None:
    text = "SAE 100R2AT / EN 853 2SN -12 WP 215 BAR"
    answer = api.post("/lay-line", json={"text": text}).json()
    assert answer == report.lay_line(layline.read(text, tables()), tables())
    assert {"standards", "dash", "dn", "edition", "printed_bar", "nearest"} <= answer.keys()
    checked = api.post("/check", json={**EXAMPLE_SPEC, "hose": answer["hose"]})
    assert checked.status_code == 200, "its hose is one of a spec"
    assert api.post("/lay-line", json={"text": ""}).status_code == 422


def test_measurements_that_cannot_be_read_are_named(api: httpx.Client) -> None:
    answer = api.post("/identify", json={"thread_od": "wide", "seat": "90"})
    assert answer.status_code == 422
    assert {p["field"] for p in answer.json()["problems"]} == {"thread_od", "seat"}
    assert api.post("/identify", json={}).status_code == 422
    assert api.post("/identify", json={"colour": "red"}).json()["problems"][0]["field"] == "colour"


def test_check_has_the_shape_of_the_command_line(api: httpx.Client, store: Store) -> None:
    answer = api.post("/check", json=EXAMPLE_SPEC).json()
    to_cut, cards = answer.pop("cut_length"), answer.pop("crimp_cards")
    assert answer == report.assessment(SPEC, assess(SPEC))
    assert to_cut == report.cut(cut(SPEC, {})) and cards.keys() == {"a", "b"}
    assert answer["ends"].keys() == {"a", "b"} and store.count() == 0


def test_specs_numbers_and_links_are_compared(api: httpx.Client, number: str) -> None:
    shorter = {**EXAMPLE_SPEC, "length_mm": 1000}
    expected = report.comparison(likeforlike.compare(SPEC, AssemblySpec.read(shorter)))
    assert expected["verdict"] == "does not replace"
    expected["signatures"] = {"a": None, "b": None}  # this shop signs nothing
    for a in (EXAMPLE_SPEC, number, _link(api, number)):
        assert api.post("/compare", json={"a": a, "b": shorter}).json() == expected
    wrong = api.post("/compare", json={"a": number, "b": {**EXAMPLE_SPEC, "length_mm": "long"}})
    assert [p["field"] for p in wrong.json()["problems"]] == ["b.length_mm"]


def test_compared_tags_are_told_signed_not_signed_or_broken(store: Store, tmp_path: Path) -> None:
    signing.renew(tmp_path / "keys.json", date(2026, 1, 2))
    keys = signing.load(tmp_path / "keys.json")
    [made] = store.register(SPEC, assess(SPEC))
    _, secret = store.make_token("tablet", Role.BUILDER)
    with (
        serving(Settings(signing_key=tmp_path / "keys.json"), store) as served,
        httpx.Client(
            base_url=f"{served.url}/api/v1", headers={"Authorization": f"Bearer {secret}"}, timeout=30
        ) as api,
    ):
        signed, forged = (keys.sign(number, made.digits) for number in (made.number, "00000000001"))
        links = [
            f"https://tags.example.com/T/{made.number}/{digits}" for digits in (signed, made.digits, forged)
        ]
        told = [
            api.post("/compare", json={"a": SPEC.as_dict(), "b": tag}).json()["signatures"]
            for tag in (*links, made.number)
        ]
    assert {one["a"] for one in told} == {None}
    assert [one["b"] and one["b"]["state"] for one in told] == ["signed", "unsigned", "broken", None]
    assert told[2]["b"] == {"state": "broken", "key_id": 1, "why": "altered"}


def test_a_tag_is_read_from_link_digits_and_photo(api: httpx.Client, number: str) -> None:
    text = _link(api, number)
    by_link = api.post("/read", json={"text": text}).json()
    assert (by_link["number"], by_link["link"]) == (number, text)
    assert AssemblySpec.read(by_link["spec"]) == SPEC.carried()
    by_digits = api.post("/read", json={"digits": link.parse(text).digits}).json()
    nobody = {"number": None, "link": None, "registered": None, "digits": None}
    assert by_digits == {**by_link, **nobody}
    photo = api.get(f"/assemblies/{number}/tag.png").content
    assert api.post("/read/photo", files={"image": ("tag.png", photo)}).json() == by_link


def test_read_says_of_a_forged_pressure_that_it_is_above_the_tables(api: httpx.Client, number: str) -> None:
    assert api.post("/read", json={"text": _link(api, number)}).json()["overrated"] is None
    digits = payload.encode(TagContent(spec=SPEC.carried(), working_pressure_bar=950))
    by_link = {"text": f"https://tags.example.com/T/00000000001/{digits}"}
    for asked in ({"digits": digits}, by_link):
        told = api.post("/read", json=asked).json()["overrated"]
        assert told["id"] == "scan-claims-more" and "The tag claims 950 bar" in told["text"]


def test_what_holds_no_spec_is_refused_in_words(api: httpx.Client, number: str) -> None:
    answers = [
        api.post("/read", json={"text": number}),
        api.post("/read", json={"digits": "12345"}),
        api.post("/read", json={}),
        api.post("/read/photo", files={"image": ("tag.png", b"no picture")}),
    ]
    for answer in answers:
        assert (answer.status_code, answer.headers["content-type"]) == (422, "application/problem+json")
        assert answer.json()["problems"][0]["why"]


def test_fit_steps_are_the_same_by_number_and_by_link_without_a_record(
    api: httpx.Client, number: str
) -> None:
    known = api.get("/fit-steps", params={"tag": number}).json()
    text = _link(api, number)
    other = text.replace(number.replace("-", ""), "00000000001")
    foreign = api.get("/fit-steps", params={"tag": other}).json()
    assert (known["read_from"], foreign["read_from"]) == ("record", "tag")
    assert known["end_a"] and {s["phase"] for s in known["end_a"]} >= {"check", "tighten"}
    assert [s["step"] for s in known["end_b"]] == [s["step"] for s in foreign["end_b"]]
    assert api.get("/fit-steps", params={"tag": "00000000001"}).status_code == 404


def test_fit_steps_say_why_a_hose_is_not_to_be_installed_yet(api: httpx.Client, number: str) -> None:
    def doubts(text: str) -> list[str]:
        told: list[str] = api.get("/fit-steps", params={"tag": text}).json()["doubts"]
        return told

    own = _link(api, number)
    assert doubts(number) == doubts(own) == []
    wrong = {
        "hose": {"standard": "EN 856 4SP", "dash": 12},
        "fluid": "water_glycol",
        "max_temperature_c": 80,
    }
    body = {"spec": {**EXAMPLE_SPEC, **wrong}, "reason": "the customer asked for it in writing"}
    hot = api.post("/assemblies", json=body).json()["numbers"][0]
    told = doubts(hot)
    assert told[0].startswith("DANGER: hotter than the hose allows") and "is not known" in told[1]
    swapped = own.rsplit("/", 1)[0] + "/" + _link(api, hot).rsplit("/", 1)[1]
    assert "something else than the shop's record" in doubts(swapped)[0]


def test_no_tag_and_no_guide_is_handed_out_for_a_withdrawn_hose(api: httpx.Client, number: str) -> None:
    api.post("/withdrawals", json={"tag": number, "reason": "The crimp cracked"})
    for answer in (api.get("/fit-steps", params={"tag": number}), api.get(f"/assemblies/{number}/tag.pdf")):
        assert answer.status_code == 422
        assert "The crimp cracked" in answer.json()["problems"][0]["why"]


def test_preflight_says_whether_the_tag_scans(api: httpx.Client, number: str) -> None:
    found = api.get(f"/assemblies/{number}/preflight").json()
    assert found["ok"] and found["payload_bytes"] <= 40
    coarse = api.get(f"/assemblies/{number}/preflight", params={"dpi": 72})
    assert coarse.status_code == 422 or not coarse.json()["ok"]
    assert api.get(f"/assemblies/{number}/preflight", params={"template": "none"}).status_code == 422
    assert api.get("/assemblies/00000000001/preflight").status_code == 404


def test_nothing_is_built_in_the_future(api: httpx.Client) -> None:
    refused = api.post("/assemblies", json={"spec": EXAMPLE_SPEC, "built_on": "2999-12-31"})
    assert refused.status_code == 422
    assert refused.json()["problems"][0]["field"] == "built_on"
    assert "is in the future" in refused.text


def test_no_file_of_the_server_is_read_as_a_template(api: httpx.Client, number: str, tmp_path: Path) -> None:
    shipped = resources.files("label_templates").joinpath("hang_tag.toml").read_text(encoding="utf-8")
    (tmp_path / "own.toml").write_text(shipped, encoding="utf-8")
    for asked in ("preflight", "tag.png"):
        params = {"template": str(tmp_path / "own.toml")}
        refused = api.get(f"/assemblies/{number}/{asked}", params=params)
        assert refused.status_code == 422
        assert "is not a known template" in refused.text


def test_a_recipe_is_kept_without_lots_until_it_is_dropped(
    api: httpx.Client, device: Callable[[Role], httpx.Client]
) -> None:
    builder = device(Role.BUILDER)
    assert builder.put("/recipes/boom rod", json=EXAMPLE_SPEC).status_code == 200
    kept = builder.get("/recipes/boom rod").json()
    assert "lot" not in kept["spec"]["hose"] and kept["saved_by"] == "a builder"
    assert builder.delete("/recipes/boom rod").status_code == 403
    assert api.delete("/recipes/boom rod").json() == kept
    assert builder.get("/recipes/boom rod").status_code == 404 == api.delete("/recipes/boom rod").status_code
    assert api.get("/recipes").json() == []
    assert api.put("/recipes/hose 1%2F2 in", json=EXAMPLE_SPEC).json()["name"] == "hose 1/2 in"
    assert api.get("/recipes/hose 1%2F2 in").status_code == 200
    refused = builder.put("/recipes/hose 1%2F2 in", json={**EXAMPLE_SPEC, "length_mm": 900})
    assert refused.status_code == 409 and "manager" in refused.json()["problems"][0]["why"]
    assert api.get("/recipes/hose 1%2F2 in").json()["spec"]["length_mm"] == EXAMPLE_SPEC["length_mm"]


def test_a_measured_crimp_is_held_against_the_one_the_shop_keeps(
    api: httpx.Client, number: str, device: Callable[[Role], httpx.Client]
) -> None:
    crimp = {"end": "a", "measured_mm": 31.5, "shell": "F-12"}
    unknown = api.post(f"/assemblies/{number}/crimps", json={"crimps": [crimp]})
    assert (unknown.status_code, unknown.json()["problems"][0]["field"]) == (422, "crimps.1.shell")
    assert device(Role.BUILDER).put("/crimp-diameters", json=CRIMP).status_code == 403
    assert api.put("/crimp-diameters", json={**CRIMP, "hose_standard": "none"}).status_code == 422
    api.put("/crimp-diameters", json={**CRIMP, "hose_standard": "sae 100r2"})
    more = ("die", "skive_outside_mm", "skive_inside_mm", "insertion_depth_mm", "machine_setting")
    card = {**dict.fromkeys(more), **CRIMP, "hose_part": "", "id": 1, "by": "a manager"}
    assert api.get("/crimp-diameters").json() == [card]
    out = api.post(f"/assemblies/{number}/crimps", json={"crimps": [crimp]}).json()["data"]["crimps"][0]
    assert (out["holds"], out["low_mm"], out["high_mm"]) == (False, 30.8, 31.2)
    assert api.post("/prints", json={"numbers": [number]}).status_code == 422
    api.post(f"/assemblies/{number}/crimps", json={"crimps": [{**crimp, "measured_mm": 31.2}]})
    assert api.post("/prints", json={"numbers": [number]}).status_code == 200


def test_figures_count_by_day_and_name_the_oldest(api: httpx.Client, number: str) -> None:
    api.post("/prints", json={"numbers": [number]})
    found = api.get("/figures", params={"days": 7}).json()
    assert len(found["by_day"]["printed"]) == 7 and found["by_day"]["printed"][-1]["count"] == 1
    assert (found["totals"]["printed"], found["oldest"][0]["number"]) == (1, number)
    assert found["caution"] and api.get("/figures", params={"days": 1}).status_code == 422


def test_a_list_runs_dry_with_cells_and_registers_whole_once(
    api: httpx.Client, store: Store, device: Callable[[Role], httpx.Client]
) -> None:
    bad = LIST + LIST.splitlines()[1].replace("1250", "3") + "\n"
    dry = api.post("/lists/dry-run", files={"file": ("list.csv", bad)}).json()
    assert [(p["cell"], p["field"]) for p in dry["problems"]] == [("I3", "length_mm")]
    assert (dry["rows"], dry["pieces"], dry["columns"][-1]) == (1, 2, {"theirs": "qty", "ours": "quantity"})
    refused = api.post("/lists/run", files={"file": ("list.csv", bad)})
    assert (refused.status_code, refused.json()["problems"][0]["field"]) == (422, "I3 length_mm")
    assert store.count() == 0
    book = openpyxl.Workbook()
    for row in LIST.splitlines():
        book.active.append(row.split(","))
    out = io.BytesIO()
    book.save(out)
    for _ in range(2):
        made = api.post(
            "/lists/run", files={"file": ("list.xlsx", out.getvalue())}, headers={"Idempotency-Key": "k"}
        )
        assert made.status_code == 201
    assert store.count() == 2 == len(made.json()["numbers"])
    wrong = api.post("/lists/dry-run", files={"file": ("list.csv", LIST)}, data={"match": ["colour"]})
    assert {p["field"] for p in wrong.json()["problems"]} == {"match"}
    assert device(Role.BUILDER).post("/lists/run", files={"file": ("l.csv", LIST)}).status_code == 403


@pytest.mark.parametrize(
    ("heading", "cell"), [("carries", "petrol"), ("pressure psi", "6000"), ("length in", "40")]
)
def test_no_filled_column_of_a_list_is_passed_over_in_silence(
    api: httpx.Client, store: Store, heading: str, cell: str
) -> None:
    """A hose for petrol was registered as one for oil, because its column had another heading."""
    first, row = LIST.splitlines()
    more = {"file": ("list.csv", f"{first},{heading}\n{row},{cell}\n")}
    refused = api.post("/lists/run", files=more)
    assert (refused.status_code, store.count()) == (422, 0)
    [problem] = api.post("/lists/dry-run", files=more).json()["problems"]
    assert (problem["id"], problem["value"]) == ("papers-list-column-not-read", heading)
    chosen = api.post(
        "/lists/run", files=more, data={"match": [*first.replace("qty", "quantity").split(","), ""]}
    )
    assert chosen.status_code == 201, "who names the columns has left it out"


def test_a_dry_run_tells_all_that_the_run_would_refuse(api: httpx.Client, store: Store) -> None:
    """Texts too long or with a control character, cut-offs longer than the hose: the run alone told them."""
    long = Fitting(
        stock_number="TW-9", end=End.model_validate({"connection": "sae_37_flare", "dash": 12, "form": "female_swivel"}),
        cut_off_mm=400, cut_off_kind="seat_to_hose_butt", source="an invented chart",
    )  # fmt: skip
    store.keep_fitting(long)
    first, row = LIST.splitlines()
    heading = f"{first},customer,machine,end_a.fitting,end_b.fitting"
    rows = [
        f"{row},{'x' * 121},,,",
        f"{row},,Lo\x07der,,",
        f"{row},,,,",
        f"{row.replace('1250', '790')},,,TW-9,TW-9",
    ]
    sent = {"file": ("list.csv", "\n".join([heading, *rows]))}
    told = api.post("/lists/dry-run", files=sent).json()["problems"]
    assert [(one["cell"], one["id"]) for one in told][:2] == [
        ("K2", "store-too-long"), ("L3", "store-control-character")]  # fmt: skip
    assert told[2:] and {one["cell"] for one in told[2:]} <= {"I5", "row 5"}, told
    assert (api.post("/lists/run", files=sent).status_code, store.count()) == (422, 0)


def test_a_dry_run_tells_a_danger_that_needs_a_reason(api: httpx.Client, store: Store) -> None:
    """It found nothing wrong with a list that the run then refused."""
    first, row = LIST.splitlines()
    petrol = {"file": ("list.csv", f"{first},medium\n{row},petrol\n")}
    [problem] = api.post("/lists/dry-run", files=petrol).json()["problems"]
    assert (problem["id"], problem["cell"]) == ("store-danger-reason", "row 2")
    assert (api.post("/lists/run", files=petrol).status_code, store.count()) == (422, 0)
    reasoned = {"file": ("list.csv", f"{first},medium,reason\n{row},petrol,for the museum\n")}
    assert api.post("/lists/dry-run", files=reasoned).json()["problems"] == []
    assert api.post("/lists/run", files=reasoned).status_code == 201


@pytest.mark.parametrize("bands", ["sae", "din"])
def test_a_list_holds_to_the_shops_length_bands(store: Store, bands: Literal["sae", "din"]) -> None:
    _, secret = store.make_token("tablet", Role.COUNTER)
    with serving(Settings(length_bands=bands), store) as served:
        headers = {"Authorization": f"Bearer {secret}"}
        with httpx.Client(base_url=f"{served.url}/api/v1", headers=headers) as api:
            [made] = api.post("/lists/run", files={"file": ("l.csv", LIST.replace(",2\n", ",1\n"))}).json()[
                "numbers"
            ]
    kept = store.assembly(made)
    assert kept.assessment == assess(kept.spec, length_bands=bands)
    other: Literal["sae", "din"] = "din" if bands == "sae" else "sae"
    assert kept.assessment.length_tolerance != assess(kept.spec, length_bands=other).length_tolerance


def test_words_of_a_list_are_read_as_chosen(api: httpx.Client) -> None:
    listed = LIST.replace("sae_37_flare,12,female_swivel", "our cone,12,nut", 1).encode()
    sent = {"files": {"file": ("list.csv", listed)}}
    assert api.post("/lists/run", **sent).status_code == 422
    chosen = {"our cone": "sae_37_flare", "nut": "female_swivel"}
    assert api.post("/lists/dry-run", **sent, data={"words": json.dumps(chosen)}).json()["problems"] == []
    for wrong in ("[]", "{", json.dumps({"our cone": "soup"})):
        refused = api.post("/lists/run", **sent, data={"words": wrong})
        assert refused.status_code == 422 and refused.json()["problems"][0]["field"] == "words", wrong
    assert api.post("/lists/run", **sent, data={"words": json.dumps(chosen)}).status_code == 201
