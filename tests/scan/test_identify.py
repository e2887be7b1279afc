"""Identifying a hose without a tag: measure, pick, order; what the pages ask for next."""

from __future__ import annotations

import json
import re
from html import unescape
from typing import Literal
from urllib.parse import unquote

import pytest
from fastapi.testclient import TestClient

from api.app import create_app
from api.scan.identify import FIELD, MEASURED
from api.settings import Settings
from tagger.i18n import Translator
from tagger.messages import length
from tagger.store import Store
from tagger.trade.identifying.readings import ASKED
from tests.scan.conftest import SPEC, text


def test_identify_measures_picks_and_orders_a_hose_without_a_tag(client: TestClient, store: Store) -> None:
    asked = {"form": "female_swivel", "diameter": "1 in", "tpi": "12", "seat": "37"}
    html = client.get("/identify", params=asked).text
    cards = re.findall(r'<section class="card">.*?</section>', html, re.DOTALL)
    assert "-12 37° flare (JIC), female swivel" in text(cards[0])
    pick = unescape(re.search(r'href="(/identify\?a=[^"]*)"', cards[0])[1])  # type: ignore[index]
    second = client.get(pick).text
    same = unescape(re.search(r'href="(/identify/hose\?[^"]*)"', second)[1])  # type: ignore[index]
    assert "Hose between the ends" in text(client.get(same).text)
    filled = (
        f"{same}&standard=SAE+100R2&dash=12&length=49+1/4+in&shape_b=elbow_90&drop_b=56&covers=fire_sleeve"
    )
    html = client.get(filled).text
    assert "Max. working pressure" in text(html)
    spec = unescape(re.search(r'name="spec" value="([^"]*)"', html)[1])  # type: ignore[index]
    answer = client.post("/order", data={"spec": spec, "phone": "1", "quantity": "1"})
    assert "We have received your order request" in text(answer.text)
    (order,) = store.orders()
    assert order.number is None
    assert order.spec.length_mm == 1251.0  # 49 1/4 in is 1250.95 mm, kept to 0.1 mm
    assert order.spec.end_b.shape == "elbow_90"


@pytest.mark.parametrize(
    ("measured", "feature", "reading"),
    [
        ({"form": "female_swivel", "diameter": "18.9", "tpi": "14", "seat": "60"}, "cone", "inside"),
        ({"form": "male", "diameter": "18", "pitch": "1.5", "seat": "24"}, "nose", "10"),
        ({"form": "male", "diameter": "21", "tpi": "14", "seat": "taper"}, "flank", "60"),
    ],
)
def test_what_the_page_asks_for_next_can_be_filled_in(
    client: TestClient, measured: dict[str, str], feature: str, reading: str
) -> None:
    field = f'name="{feature}"'
    assert field not in client.get("/identify").text, "the page stays short until it is asked for"
    html = client.get("/identify", params=measured).text
    assert (
        Translator()(f"scan-ask-{feature}") in text(html) and field in html and f'href="#{feature}"' in html
    )
    first = re.search(r"likelihood (\d+) %", text(html))
    answered = client.get("/identify", params={**measured, feature: reading}).text
    after = re.search(r"likelihood (\d+) %", text(answered))
    assert first and after and int(after[1]) > int(first[1])
    assert field in answered, "what was filled in stays"


def test_whatever_may_be_measured_next_has_words_and_a_field(client: TestClient) -> None:
    for feature in ASKED:
        assert Translator().has(f"scan-ask-{feature}")
        assert feature == "series" or Translator().has(f"scan-feature-{feature}")
        assert FIELD.get(feature, feature) in MEASURED


def test_the_answer_is_one_sentence_with_its_tie_and_what_the_tables_lack(client: TestClient) -> None:
    asked = {"form": "male", "diameter": "20.9", "tpi": "14", "seat": "60"}
    page = text(client.get("/identify", params=asked).text)
    assert "It may be 1/2 BSPP" in page and "comes first only because" in page
    assert "Only connections in the tables are compared." in page
    asia = text(client.get("/identify", params={**asked, "origin": "asia"}).text)
    assert "more usual on machines from Asia" in asia


def test_what_cannot_be_measured_is_not_asked_again(client: TestClient) -> None:
    asked = {"form": "male", "diameter": "20.9", "tpi": "14", "seat": "60"}
    html = client.get("/identify", params=asked).text
    assert Translator()("scan-ask-cone") in text(html)
    (without,) = {unescape(a) for a in re.findall(r'href="(/identify\?[^"]*cannot=[^"]*)"', html)}
    after = client.get(without).text
    assert Translator()("scan-ask-cone") not in text(after)
    assert 'name="cannot" value="cone"' in after


def test_the_series_of_a_stud_goes_with_it_to_the_order(client: TestClient) -> None:
    asked = {"form": "male", "diameter": "22", "pitch": "1.5", "seat": "boss"}
    assert 'name="series"' in client.get("/identify", params=asked).text
    html = client.get("/identify", params={**asked, "series": "S"}).text
    pick = unescape(re.search(r'href="(/identify\?a=[^"]*)"', html)[1])  # type: ignore[index]
    assert "metric_orb~M22x1.5~male~S" in unquote(pick)
    assert "M22x1.5 S" in text(client.get(pick).text)


@pytest.mark.parametrize("unit", ["mm", "in"])
def test_a_bare_fraction_is_inches_in_a_shop_of_inches_and_refused_with_words_in_one_of_mm(
    store: Store, unit: Literal["mm", "in"]
) -> None:
    """1 1/16 is never 1.06 mm."""
    asked = {"form": "male", "diameter": "1 1/16", "tpi": "12", "seat": "37"}
    with TestClient(create_app(Settings(length_unit=unit), store=store)) as client:
        answer = client.get("/identify", params=asked)
    page = text(answer.text)
    assert answer.status_code == (200 if unit == "in" else 422)
    assert ("-12 37° flare (JIC), male" in page) is (unit == "in")
    assert ("The fraction 1 1/16 has no unit." in page) is (unit == "mm")


def test_each_form_and_each_seat_has_its_picture_beside_its_words(client: TestClient) -> None:
    asked = {"form": "female_swivel", "diameter": "18.9", "tpi": "14", "seat": "60"}
    html = client.get("/identify", params=asked).text
    pictures = {}
    for name in ("form", "seat", "cone"):
        labels = re.findall(
            rf'<label[^>]*><input type="radio" name="{name}" value="([^"]*)".*?</label>', html
        )
        shown = dict(
            re.findall(rf'name="{name}" value="([^"]+)"[^>]*>(<svg.*?</svg>)<span>[^<]+</span></label>', html)
        )
        assert set(shown) == set(labels) - {""} and len(shown) >= 2, name
        pictures |= {(name, value): picture for value, picture in shown.items()}
    assert pictures["form", "female_swivel"] != pictures["form", "female_fixed"]
    told_apart = {value for name, value in pictures if name == "seat"} - {"60"}  # as steep as 30°
    assert len({pictures["seat", value] for value in told_apart}) == len(told_apart)
    assert pictures["cone", "outside"] != pictures["cone", "inside"]
    assert all('aria-hidden="true"' in picture for picture in pictures.values())


def test_a_hexagon_alone_is_an_answer_on_the_page_too(client: TestClient) -> None:
    page = client.get("/identify?form=male&hex=32")
    assert page.status_code == 200
    assert "nan" not in text(page.text)


def test_a_seat_that_does_not_fit_cannot_be_picked(client: TestClient) -> None:
    asked = {"form": "male", "diameter": "1 1/16 in", "tpi": "12", "seat": "45"}
    html = client.get("/identify", params=asked).text
    for card in re.findall(r'<section class="card">.*?</section>', html, re.DOTALL):
        if "37° flare" in text(card).split("·")[0]:
            assert "Not a match. Differs in: seat." in text(card)
            assert "Use for end A" not in text(card)
            break
    else:
        raise AssertionError("the 37 degree flare is not named at all")


def test_a_hose_that_cannot_be_is_refused_by_field(client: TestClient) -> None:
    address = "/identify/hose?a=npt~3/4~male&b=bspp~3/4~female_swivel&standard=SAE+100R2&dash=8&length=1000"
    answer = client.get(address)
    assert answer.status_code == 422
    assert "End A" in text(answer.text)
    assert "jump size" in text(answer.text)
    impossible = json.dumps(SPEC | {"hose": {"standard": "SAE 100R2", "dash": 6}})
    answer = client.post("/order", data={"spec": impossible, "phone": "1"})
    assert answer.status_code == 422
    assert client.get("/identify?a=nonsense").status_code == 422
    assert client.get("/identify?a=x~1~male").status_code == 422


@pytest.mark.parametrize(("unit", "mm", "drop"), [("mm", 49.0, 52.0), ("in", 1244.6, 1320.8)])
def test_a_bare_length_of_a_hose_is_read_in_the_shops_unit_and_echoed_in_both(
    store: Store, unit: Literal["mm", "in"], mm: float, drop: float
) -> None:
    settings = Settings(base_url="https://tags.example.com", length_unit=unit)
    end = "sae_37_flare~6~female_swivel"
    with TestClient(create_app(settings, store=store), base_url="https://tags.example.com") as client:
        address = f"/identify/hose?a={end}&b={end}&standard=SAE+100R2&dash=6&length=49&drop_a=52"
        page = text(client.get(address).text)
        asked = text(client.get(f"/identify/hose?a={end}&b={end}").text)
    assert str(Translator()("scan-hose-read", length=length(mm))) in page
    assert str(Translator()("scan-hose-read", length=length(drop))) in page
    assert f"A number without a unit is {'inches' if unit == 'in' else 'mm'}." in asked
    assert ("(49 in)" in page) is (unit == "in")
