"""The trade's words: a page in each language, a document, both from the catalogues, true to their glossaries."""

from __future__ import annotations

import csv
import re
from html import unescape

import pytest
from fastapi.testclient import TestClient

from api.app import create_app
from api.settings import Settings
from examples import glossary
from tagger.i18n import LANGUAGES, Translator
from tagger.i18n.languages import folder
from tagger.store import Store
from tagger.trade.glossary import TERMS
from tests.databases import fresh_sqlite


def test_anybody_reads_every_word_and_its_meaning_and_the_words_of_the_other_languages(
    tmp_path_factory: pytest.TempPathFactory,
) -> None:
    with Store.open(fresh_sqlite(tmp_path_factory.mktemp("glossary"))) as store:
        web = TestClient(create_app(Settings(base_url="http://testserver"), store=store))
        for language in LANGUAGES:
            t, page = Translator(language), web.get("/glossary", params={"lang": language})
            assert page.status_code == 200
            said = " ".join(unescape(re.sub(r"<[^>]*>", " ", page.text)).split())
            for term in TERMS:
                assert f'id="{term}"' in page.text
                assert " ".join(t(f"glossary-means-{term}").split()) in said
                for other in LANGUAGES:
                    assert Translator(other)(f"glossary-term-{term}") in said
        assert 'href="/glossary"' in web.get("/find").text
        assert 'href="/glossary"' in web.get("/bench/sign-in").text


def test_the_document_is_what_its_command_makes() -> None:
    assert glossary.PAGE.read_text(encoding="utf-8") == glossary.text(), "python -m examples.glossary"


@pytest.mark.parametrize("language", LANGUAGES)
def test_its_words_are_those_of_the_glossary_beside_the_catalogue(language: str) -> None:
    """So that a page and the glossary cannot call one thing by two words; the rest is told below."""
    rows = csv.DictReader(folder(language).joinpath("glossary.csv").read_text(encoding="utf-8").splitlines())
    terms = {re.sub(r" \(.*\)", "", row["term"]).lower() for row in rows}
    t = Translator(language)
    strays = {term for term in TERMS if t(f"glossary-term-{term}").lower() not in terms}
    assert strays <= {
        "working_pressure",  # "maximum" of the term, in the languages whose glossary has the pressure alone
        "finger_tight",  # "flats" and the start from which they are counted: two rows
        "wrench_resistance",
        "look_alike",
        "connection",
        "withdrawn",
    }, {term: t(f"glossary-term-{term}") for term in strays}
