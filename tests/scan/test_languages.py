"""Every string of the public pages stands in every language."""

from __future__ import annotations

import re
from collections.abc import Iterator

import pytest
from fastapi.testclient import TestClient

from api.app import create_app
from api.scan import catalogue, fill, i18n
from api.scan.i18n import LANGUAGES, Translator, accepted, as_pattern
from api.settings import Settings
from tagger.spec import AssemblySpec
from tagger.store import Store
from tagger.trade import assess
from tests.scan.conftest import SPEC

OTHERS = [lang for lang in LANGUAGES if lang != "en"]


@pytest.mark.parametrize("lang", OTHERS)
@pytest.mark.parametrize("domain", ["tagger", "api"])
def test_no_string_is_missing(domain: str, lang: str) -> None:
    known = catalogue.translations(domain, lang)
    missing = sorted(text for text in catalogue.strings(domain) if not known.get(text))
    assert not missing


@pytest.mark.parametrize("lang", OTHERS)
@pytest.mark.parametrize("domain", ["tagger", "api"])
def test_a_translation_names_the_same_figures(domain: str, lang: str) -> None:
    places = re.compile(r"\{\w*\}")
    for text, translated in catalogue.translations(domain, lang).items():
        assert sorted(set(places.findall(text))) == sorted(set(places.findall(translated))), text


@pytest.mark.parametrize("lang", OTHERS)
def test_figures_survive_translation(lang: str) -> None:
    """A number in a sentence (37 degrees, 3.4 N·m) is the same number in every language."""
    numbers = re.compile(r"\d+(?:[./]\d+)*")
    for domain in ("tagger", "api"):
        for text, translated in catalogue.translations(domain, lang).items():
            assert sorted(numbers.findall(text)) == sorted(numbers.findall(translated)), text


class Recording(dict[str, str]):
    """A catalogue that remembers what it was asked for and did not have."""

    missed: set[str]

    def get(self, key: str, default: str | None = None) -> str:  # type: ignore[override]
        if key not in self:
            self.missed.add(key)
        return super().get(key, default or "")


@pytest.fixture
def pages(store: Store) -> Iterator[tuple[TestClient, list[str]]]:
    app = create_app(Settings(database_url="sqlite://", public_requests_per_minute=10_000), store=store)
    spec = AssemblySpec.read(SPEC)
    good, bad, other = (store.register(spec, assess(spec))[0] for _ in range(3))
    store.withdraw("reason", tag=bad.number)
    order = store.request_order(number=good.number, contact={"phone": "1"})
    changed = AssemblySpec.read(SPEC | {"length_mm": 900.0})
    digits = store.register(changed, assess(changed))[0].digits
    addresses = [
        f"/T/{good.number}/{good.digits}", f"/T/{bad.number}", f"/T/{other.number}/{digits}",
        f"/T/7K3MQ9XW2R1/{digits}", "/T/7K3MQ9XW2R2", f"/T/7K3MQ9XW2R1/{digits[:-1]}", "/T/7K3MQ9XW2R1",
        "/T/UUUUUUUUUUU", "/T/7K3", f"/order/{order.reference}", "/order/R-0000000", "/find", "/find?q=http://x/y",
        "/identify", "/identify?form=male&diameter=27&tpi=12&seat=45", "/identify?diameter=27", "/identify?form=male",
        "/identify/hose", "/identify/hose?a=npt~3/4~male&b=bspp~3/4~female_swivel",
        "/identify/hose?a=npt~3/4~male&b=bspp~3/4~female_swivel&standard=SAE+100R2&dash=8&length=x",
        "/identify/hose?a=npt~3/4~male&b=bspp~3/4~female_swivel&standard=SAE+100R2&dash=8&length=1000",
        "/scan/any/kit-de.json", "/scan.webmanifest",
    ]  # fmt: skip
    yield TestClient(app), addresses


@pytest.mark.parametrize("lang", OTHERS)
def test_no_page_asks_for_a_string_that_is_not_there(
    pages: tuple[TestClient, list[str]], lang: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Also strings that are looked up by a variable, which no extraction finds."""
    client, addresses = pages
    real = i18n.messages
    recording = Recording(real(lang))
    recording.missed = set()
    monkeypatch.setattr(i18n, "messages", lambda wanted: recording if wanted == lang else real(wanted))
    for made_before in (fill.translated, fill._parsed, i18n._patterns):
        made_before.cache_clear()
    for address in addresses:
        answer = client.get(address, headers={"accept-language": lang}, follow_redirects=False)
        assert answer.headers.get("content-language", lang) == lang
    assert not recording.missed


def test_the_browsers_language_is_taken_and_can_be_changed(store: Store) -> None:
    client = TestClient(create_app(Settings(database_url="sqlite://"), store=store))
    german = client.get("/find", headers={"accept-language": "de-AT,en;q=0.5"})
    assert '<html lang="de"' in german.text
    assert '<html lang="es"' in client.get("/find?lang=es", headers={"accept-language": "de"}).text
    assert '<html lang="es"' in client.get("/find", headers={"accept-language": "de"}).text
    assert accepted("xx, *;q=0.1") == "en"


def test_a_sentence_with_figures_is_translated_by_its_pattern() -> None:
    said = Translator("de").said("has 10 characters, a tag number has 11")
    assert said == "hat 10 Zeichen, eine Schildnummer hat 11"
    assert Translator("de").said("nobody wrote this") == "nobody wrote this"
    assert as_pattern("{0} of {1}").fullmatch("a of b")
