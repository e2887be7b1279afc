"""The public pages in every language."""

from __future__ import annotations

import re
from collections.abc import Iterator

import pytest
from fastapi.testclient import TestClient

from api.app import create_app
from api.settings import Settings
from tagger.i18n import LANGUAGES, SOURCE, Translator
from tagger.spec import End, Tightening
from tagger.store import Store
from tagger.trade import tightened
from tagger.trade.tables import tables
from tests.i18n.test_catalogues import ALIKE, ENGLISH, entries, reads, texts
from tests.scan.conftest import OTHER_SHOP, SPEC, register, text

PILOT = {
    "hose": {"standard": "SAE 100R17", "dash": 4},
    "end_a": {"connection": "sae_37_flare", "dash": 4, "form": "female_swivel"},
    "end_b": {"connection": "npt", "size": "1/4", "form": "male"},
    "clocking_deg": None,
}
"""A line whose end B has no rating: its page begins with a danger."""

OTHERS = [language for language in LANGUAGES if language != SOURCE]


@pytest.mark.parametrize("language", OTHERS)
@pytest.mark.parametrize("room", ["fit", "scan"])
def test_figures_survive_translation(room: str, language: str) -> None:
    """A number in a sentence (37°, 3.4 N·m) is the same number in every language."""
    for id in _of(room):
        ours, theirs = (_numbers(lang, id) for lang in (SOURCE, language))
        assert ours == theirs, f"{language} {id}"


def _of(room: str) -> Iterator[str]:
    return (id for id in entries(SOURCE) if id.startswith(f"{room}-"))


def _numbers(language: str, id: str) -> list[str]:
    said = " ".join(texts(entries(language)[id])).replace(" ", " ")
    return sorted(re.findall(r"\d+(?:[./]\d+)*", re.sub(r"(?<=\d),(?=\d)", ".", said)))


@pytest.mark.parametrize("language", LANGUAGES)
def test_a_step_is_given_the_figures_that_its_message_uses(language: str) -> None:
    off = {
        step.step_id: (sorted(step.figures), sorted(reads(entries(language)[step.message]).values))
        for step in tables().steps
        if set(step.figures) != reads(entries(language)[step.message]).values
    }
    assert off == {}, off


@pytest.mark.parametrize("language", LANGUAGES)
def test_look_alikes_are_named_with_their_sizes_in_every_language(language: str) -> None:
    for alike in tables().look_alikes:
        assert reads(entries(language)[alike.message]).values == {"family", "other", "sizes"}


@pytest.mark.parametrize("language", LANGUAGES)
def test_a_step_says_one_flat_and_two_flats(language: str) -> None:
    from tagger import phrases

    t, start = Translator(language), phrases.basis("finger_tight")
    one, two = (t("fit-flats", flats=phrases.flats(n, n), flats_basis=start) for n in (1, 2))
    singular, plural = {
        "en": ("1 flat,", "2 flats,"),
        "fr": ("1 pan,", "2 pans,"),
        "es": ("1 cara más", "2 caras más"),
        "de": ("1 Schlüsselfläche weiter", "2 Schlüsselflächen weiter"),
    }[language]
    assert singular in one and plural in two
    half = t(phrases.flats(1, 1.5))
    assert half.endswith(" pan" if language == "fr" else plural.split(" ")[1].rstrip(","))


def test_the_browsers_language_is_taken_and_can_be_changed(store: Store) -> None:
    client = TestClient(create_app(Settings(database_url="sqlite://"), store=store))
    german = client.get("/find", headers={"accept-language": "de-AT,en;q=0.5"})
    assert '<html lang="de"' in german.text
    assert '<html lang="es"' in client.get("/find?lang=es", headers={"accept-language": "de"}).text
    assert '<html lang="es"' in client.get("/find", headers={"accept-language": "de"}).text


ORDER_PAGE = "/identify/hose?a=npt~3/4~male&b=bspp~3/4~female_swivel&standard=SAE+100R2&dash=8"


@pytest.fixture
def pages(store: Store) -> tuple[TestClient, list[str]]:
    app = create_app(Settings(database_url="sqlite://", public_requests_per_minute=10_000), store=store)
    ours = SPEC | {"note": None}
    good, bad, other = (register(store, **ours) for _ in range(3))
    pilot = register(store, **ours | PILOT)
    store.withdraw("4711", tag=bad.number)
    order = store.request_order(number=good.number, contact={"phone": "1"})
    digits = register(store, **ours | {"length_mm": 900.0}).digits
    return TestClient(app), [
        f"/T/{good.number}/{good.digits}", f"/T/{bad.number}", f"/T/{other.number}/{digits}", f"/T/{pilot.number}",
        f"/T/{OTHER_SHOP}/{digits}", f"/T/{OTHER_SHOP}",
        f"/T/{good.number}/{good.digits[:-1]}", f"/order/{order.reference}", "/order/R-0000000",
        "/find", "/nosuch",
        "/identify", "/identify?form=male&diameter=27&tpi=12&seat=45", "/identify?diameter=27", "/identify?form=male",
        "/identify?a=x", "/identify/hose", f"{ORDER_PAGE}&length=1000",
    ]  # fmt: skip


@pytest.mark.parametrize("language", OTHERS)
def test_no_english_stands_on_a_page_in_another_language(
    pages: tuple[TestClient, list[str]], language: str
) -> None:
    """Citations of sources are as they are; everything else is in the visitor's language."""
    client, addresses = pages
    off = {}
    for address in addresses:
        answer = client.get(address, headers={"accept-language": language}, follow_redirects=False)
        assert answer.headers["content-language"] == language
        cited = re.sub(
            r'<p class="source">.*?</p>|<footer>.*?</footer>|<nav class="choices".*?</nav>',
            " ",
            answer.text,
            flags=re.DOTALL,
        )
        said = text(cited)
        hits = {word.lower() for word in ENGLISH.findall(said)} - ALIKE.get(language, set())
        if hits:
            off[address] = (sorted(hits), said)
    assert off == {}, off


def test_beside_a_torque_a_count_of_flats_is_the_other_way_and_not_the_next_step() -> None:
    both = Tightening(
        torque_min_nm=96, torque_max_nm=106, flats_min=1, flats_max=1.5, flats_basis="finger_tight"
    )
    alone = both.model_copy(update={"torque_min_nm": None, "torque_max_nm": None})
    end = End.model_validate(PILOT["end_a"])
    for language, word in (("en", "or "), ("fr", "ou "), ("es", "o "), ("de", "oder ")):
        t = Translator(language)
        by_torque, count = (t(line) for line in tightened.lines(both, end, tables()))
        assert count.startswith(word) and not by_torque.startswith(word)
        assert count == word + t(*tightened.lines(alone, end, tables()))
