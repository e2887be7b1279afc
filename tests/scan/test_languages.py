"""The public pages in every language."""

from __future__ import annotations

import re
from collections.abc import Iterator

import pytest
from fastapi.testclient import TestClient

from api.app import create_app
from api.settings import Settings
from tagger.i18n import LANGUAGES, SOURCE, Translator
from tagger.store import Store
from tagger.trade.tables import tables
from tests.i18n.test_catalogues import entries, reads, texts

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
    assert off == {}


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


def test_the_browsers_language_is_taken_and_can_be_changed(store: Store) -> None:
    client = TestClient(create_app(Settings(database_url="sqlite://"), store=store))
    german = client.get("/find", headers={"accept-language": "de-AT,en;q=0.5"})
    assert '<html lang="de"' in german.text
    assert '<html lang="es"' in client.get("/find?lang=es", headers={"accept-language": "de"}).text
    assert '<html lang="es"' in client.get("/find", headers={"accept-language": "de"}).text
