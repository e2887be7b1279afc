"""The bench in every language: the language is chosen, kept, and every page is whole in it."""

from __future__ import annotations

import html
import re

import httpx
import pytest

from api.settings import Settings
from tagger.i18n import LANGUAGES, SOURCE, Translator
from tagger.messages import Message
from tagger.spec import MAX_COUNT
from tagger.store import CrimpValue, ProofTest, Store
from tests.bench.served import HOSE, Bench
from tests.i18n.test_catalogues import ALIKE, ENGLISH

OTHERS = tuple(language for language in LANGUAGES if language != SOURCE)


def _pages(bench: Bench, store: Store) -> list[str]:
    """The addresses of every page with something on it."""
    bench.submit("/bench/build", {**HOSE, "hose.lot": "H-5", "customer": "Q1", "machine": "L4"})
    [item] = store.find().assemblies
    order = store.request_order(number=item.number, quantity=2, contact={"phone": "1"}, changes="X")
    store.keep_crimp(CrimpValue("SAE 100R2", 12, "S-2", 33.4, 0.1, 0.2, "Q"))
    test = ProofTest(pressure_bar=345, hold_s=60, medium="water", passed=False, tester="B.")
    store.record_proof_test(item.number, test, by="manager")
    withdrawal = store.withdraw("X", tag=item.number)
    return [
        "/bench/build", "/bench/build?clocking_deg=90&end_a.shape=elbow_90&end_b.shape=elbow_45", "/bench/prints",
        f"/bench/build?order={order.reference}", "/bench/identify?form=male", f"/bench/run/{item.run}",
        f"/bench/tag/{item.number}", "/bench/orders", f"/bench/orders/{order.reference}", "/bench/find",
        "/bench/machine?customer=Q1&machine=L4", "/bench/withdrawn?scope=hose_lot&value=H-5",
        f"/bench/withdrawn/{withdrawal.id}", "/bench/lists", "/bench/figures", "/bench/shop", "/bench/me",
        "/bench/shop/crimps", "/bench/hoses", "/bench/customer?name=Q1", f"/bench/run/{item.run}/flush", "/bench/papers",
    ]  # fmt: skip


def _words(page: str) -> str:
    """What a page shows or says: text between tags, and the attributes that are read out or shown."""
    body = re.sub(r"<(script|style|svg|code|datalist)\b.*?</\1>", " ", page, flags=re.DOTALL)
    said = re.findall(r'(?:placeholder|title|aria-label|data-label|data-ask|aria-valuetext)="([^"]*)"', body)
    return html.unescape(" ".join([re.sub(r"<[^>]*>", " ", body), *said]))


@pytest.mark.parametrize("language", LANGUAGES)
def test_no_page_shows_the_name_of_a_message_or_of_a_value(bench: Bench, store: Store, language: str) -> None:
    bench.cookies.set("lang", language)
    for address in _pages(bench, store):
        answer = bench.get(address)
        shown = _words(answer.text)
        assert f'<html lang="{language}">' in answer.text, address
        assert re.findall(r"\b(?:bench|words|trade|spec|charts)-[a-z_]+(?:-[a-z_]+)*|\{ ?\$", shown) == [], (
            address
        )


def test_a_request_that_is_too_large_is_refused_in_the_language_of_the_page(bench: Bench) -> None:
    bench.cookies.set("lang", "de")
    answer = bench.submit("/bench/lists/read", files={"file": ("list.csv", b"x" * 21_000_000)})
    assert answer.status_code == 413 and "Die Anfrage ist größer als 20" in html.unescape(answer.text)


@pytest.mark.parametrize("language", OTHERS)
def test_the_benchs_own_words_are_in_the_language_of_the_page(
    bench: Bench, store: Store, settings: Settings, language: str
) -> None:
    """Titles of labels, sources and typed text stay as they are; everything the bench itself says does not."""
    bench.cookies.set("lang", language)
    allowed = ALIKE.get(language, set())
    for address in ("/bench/orders", "/bench/prints", "/bench/lists", "/bench/me", "/bench/find"):
        shown = _words(bench.get(address).text).replace(settings.shop_name, "")
        words = {word.lower() for word in ENGLISH.findall(shown)}
        assert words <= allowed, address


def test_the_language_is_the_persons_choice_else_the_browsers_else_the_shops(stranger: httpx.Client) -> None:
    def language(**more: dict[str, str]) -> str:
        return str(re.findall(r'<html lang="(\w+)">', stranger.get("/bench/sign-in", **more).text)[0])

    assert language() == "en"
    assert language(headers={"accept-language": "fr-CA, en;q=0.5"}) == "fr"
    assert language(params={"lang": "de"}) == "de"
    assert language(headers={"accept-language": "fr"}) == "de", "the choice is kept"
    assert language(params={"lang": "xx"}) == "de"


def test_every_page_offers_every_language_at_its_own_address(bench: Bench) -> None:
    page = html.unescape(bench.get("/bench/find?customer=Quarry&lang=es").text)
    for code, name in LANGUAGES.items():
        assert re.search(
            rf'<a href="/bench/find\?customer=Quarry&lang={code}" lang="{code}"[^>]*>{name}</a>', page
        )


@pytest.mark.parametrize("language", LANGUAGES)
def test_a_refused_field_is_named_as_on_the_form(bench: Bench, language: str) -> None:
    t = Translator(language)
    bench.cookies.set("lang", language)
    page = bench.submit("/bench/build", {**HOSE, "count": "0"}).text
    assert f"<span>{t('bench-field-count')}</span>" in page
    named = t("bench-caption", field=Message("bench-field-count"))
    why = t("bench-not-a-quantity", value="0", most=MAX_COUNT)
    assert f"<strong>{named}</strong> {why}" in html.unescape(page)
