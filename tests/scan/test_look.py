"""Identifying by looking, on the public page: a picture is a link, the answers stand in the address, no script is needed."""

from __future__ import annotations

import re
from html import unescape
from urllib.parse import parse_qs, urlsplit

import pytest
from fastapi.testclient import TestClient

from tagger.i18n import LANGUAGES, Translator
from tagger.messages import Message
from tagger.trade.identifying import guided
from tests.scan.conftest import text

EN = Translator()


def choices_of(html: str) -> dict[str, str]:
    """Addresses by the words of their pictures."""
    group = re.search(r'role="group".*?</div>', html, re.DOTALL)
    assert group is not None
    found = re.findall(r'<a class="button second" href="([^"]*)">(.*?)</a>', group[0], re.DOTALL)
    return {text(inside): unescape(href) for href, inside in found}


def measure_link(html: str) -> str:
    return unescape(re.search(r'<a class="button" href="(/identify[^"]*)"', html)[1])  # type: ignore[index]


def test_pictures_lead_from_question_to_question_and_then_to_measuring_with_nothing_lost(
    client: TestClient,
) -> None:
    html, address = "", "/identify/look?diameter=26.9+mm&tpi=12&a=npt~3/4~male"
    for step, answer in (
        ("side", "female"),
        ("swivels", "yes"),
        ("seals", "cone"),
        ("cone", "inside"),
        ("seat", "37"),
    ):
        html = client.get(address).text
        assert str(EN(guided.question(step))) in text(html)
        drawn = re.findall(r'<a class="button second" href="[^"]*"><svg', html)
        assert len(drawn) == len(choices_of(html)) - 1, "each answer but 'cannot tell' has its picture"
        address = choices_of(html)[str(EN(guided.in_words(step, answer)))]
    html = client.get(address).text
    assert text(html).count("37° flare (JIC), female swivel") == 1
    assert "One kind of connection is still possible." in text(html)
    asked = parse_qs(urlsplit(measure_link(html)).query)
    assert asked == {
        "diameter": ["26.9 mm"],
        "tpi": ["12"],
        "a": ["npt~3/4~male"],
        "form": ["female_swivel"],
        "cone": ["inside"],
        "seat": ["37"],
    }
    assert "-12 37° flare (JIC), female swivel" in text(
        client.get(measure_link(html).replace("26.9+mm", "25+mm")).text
    )


def test_what_was_seen_goes_into_the_measurement_and_is_said_there_and_can_be_changed(
    client: TestClient,
) -> None:
    """The form may stay open: whether it swivels was not seen."""
    html = client.get("/identify/look?side=male&swivels=unknown&shape=parallel&seals=face").text
    link = measure_link(html)
    assert "form=male" in link, "only a male without a nut seals so"
    open_ = "/identify?side=male&shape=taper&diameter=21&tpi=14"
    page = client.get(open_)
    shown = text(page.text)
    assert page.status_code == 200 and "From the questions" in shown
    assert "Thread shape: taper" in shown
    cards = re.findall(r'<section class="card">.*?</section>', page.text, re.DOTALL)
    assert {"NPT" in text(card) or "BSPT" in text(card) for card in cards[:3]} == {True}
    assert any("Differs in: thread shape" in text(card) for card in cards), "a parallel thread is no match"
    offered = re.findall(r'type="radio" name="form" value="([^"]*)"', page.text)
    assert set(offered) == {"male", "male_swivel"} and "required" not in page.text
    for name in ("side", "shape"):
        assert f'type="hidden" name="{name}"' in page.text
    back = unescape(re.search(r'href="(/identify/look[^"]*)"', page.text)[1])  # type: ignore[index]
    assert parse_qs(urlsplit(back).query)["diameter"] == ["21"]
    assert "Change: Thread: outside (male)" in client.get(back).text


def test_a_seat_that_is_measured_says_more_than_what_seals_and_a_form_more_than_the_side(
    client: TestClient,
) -> None:
    """A hidden answer never speaks against what is entered in sight."""
    asked = {
        "form": "male",
        "diameter": "1 1/16 in",
        "tpi": "12",
        "seat": "boss",
        "seals": "cone",
        "side": "female",
    }
    first = re.search(
        r'<section class="card">.*?</section>', client.get("/identify", params=asked).text, re.DOTALL
    )
    assert first is not None and "SAE O-ring boss" in text(first[0]) and "Not a match" not in text(first[0])


def test_changing_the_language_loses_no_answer_and_no_reading(client: TestClient) -> None:
    """On every page of identify; it had begun anew."""
    for address in (
        "/identify/look?side=male&diameter=26.9+mm",
        "/identify?form=male&diameter=26.9+mm&seat=37",
        "/identify/layers?od=20&kind=fibre",
    ):
        html = client.get(f"{address}&lang=en").text
        (german,) = [unescape(a) for a in re.findall(r'href="(\?[^"]*lang=de)"', html)]
        before, after = parse_qs(urlsplit(address).query), parse_qs(german[1:])
        assert after == {**before, "lang": ["de"]}, address


def test_changing_an_answer_drops_what_hangs_on_it_and_keeps_the_rest(client: TestClient) -> None:
    html = client.get("/identify/look?side=female&swivels=yes&seals=cone&cone=inside&hex=32").text
    changes = [unescape(a) for a in re.findall(r'<li>[^<]*<a href="([^"]*)"', html)]
    assert parse_qs(urlsplit(changes[2]).query) == {"side": ["female"], "swivels": ["yes"], "hex": ["32"]}
    assert parse_qs(urlsplit(changes[3]).query)["seals"] == ["cone"]


def test_answers_that_cannot_all_be_true_say_so_and_name_what_one_wrong_answer_would_leave(
    client: TestClient,
) -> None:
    html = client.get("/identify/look?side=male&swivels=no&shape=taper&seals=boss").text
    assert "No connection in the tables has all of this." in text(html)
    assert "SAE O-ring boss (ORB), male (Thread shape: taper" in text(html)
    assert "Measure the end" not in text(html)


def test_no_page_says_a_pressure_and_each_says_that_it_never_does(client: TestClient) -> None:
    for query in ("", "?side=male&shape=taper", "?side=none&form=flange_head"):
        shown = text(re.search(r"<main.*</main>", client.get(f"/identify/look{query}").text, re.DOTALL)[0])  # type: ignore[index]
        assert "It never says what pressure an end or a hose may take." in shown
        assert not re.search(r"\d\s*(bar|psi|MPa)\b", shown)


@pytest.mark.parametrize("lang", LANGUAGES)
def test_every_language_asks_answers_and_refuses_in_its_own_words(client: TestClient, lang: str) -> None:
    t = Translator(lang)
    html = client.get(f"/identify/look?side=none&lang={lang}").text
    assert str(t("identify-step-form")) in unescape(html)
    for form in guided.THREADLESS:
        assert str(t(f"identify-answer-form-{form}")) in unescape(html)
    refused = client.get(f"/identify/look?side=%3Cb%3Eboth&shape=taper&lang={lang}")
    assert refused.status_code == 422 and "<b>both" not in refused.text
    assert str(
        t.mend(Message("identify-not-an-answer", value="x", known=("male", "female", "none", "unknown")))
    ) in unescape(refused.text)


def test_a_hose_by_its_layers_is_told_what_it_cannot_be_with_reasons_and_never_a_rating(
    client: TestClient,
) -> None:
    page = client.get("/identify/layers?od=20.4&kind=wire_braid&layers=1&lay_line=SAE+100R12+-8+WP+276+BAR")
    shown = text(re.search(r"<main.*</main>", page.text, re.DOTALL)[0])  # type: ignore[index]
    assert page.status_code == 200
    assert "This only excludes standards. It never rates a hose" in shown
    assert "The lay line names SAE 100R12, but the measurements exclude it. Do not use the hose" in shown
    assert "Reinforcement in the tables: 4 wire spirals. Source: Common practice, no source." in shown
    left, out = shown.split("Excluded")[0], shown.split("Excluded")[1]
    assert "EN 853 1SN Sizes: -8 (outside diameter" in left and "EN 853 2SN" in out
    assert not re.search(r"\d\s*(bar|psi|MPa)\b", left.split("Not excluded")[1])
    for query, why in (
        ("layers=2", "Choose the kind of reinforcement."),
        ("od=1+1/16", "has no unit"),
        ("kind=%3Cb%3E", "is not an answer"),
        ("od=20&bore=25", "smaller than the outside diameter"),
    ):
        refused = client.get(f"/identify/layers?{query}")
        assert refused.status_code == 422 and why in text(refused.text) and "<b>" not in refused.text


def test_what_a_phone_keeps_of_looking_is_every_picture_once(client: TestClient) -> None:
    kept = client.get("/scan/now/identify-en.json").json()["/scan/identify?lang=en"]["text"]
    drawn = re.findall(r'<i data-step="(\w+)" data-answer="(\w+)" data-sides="([\w ]+)"><svg', kept)
    assert {(step, answer) for step, answer, _ in drawn} == {
        (step, answer) for step, words in guided.WORDS.items() for answer in words
    }
    for step, answer in {(step, answer) for step, answer, _ in drawn}:
        sides = " ".join(of for one, word, of in drawn if (one, word) == (step, answer)).split()
        assert sorted(sides) == ["female", "male", "none", "unknown"], "one picture for each side"
