"""The invented week loads, twice the same, and its pages answer."""

from __future__ import annotations

import json
import re
import time
from collections.abc import Iterator
from functools import cache
from pathlib import Path

import pytest
from fastapi.testclient import TestClient
from PIL import Image
from pypdfium2 import PdfDocument

from api.app import create_app
from api.settings import Settings
from api.shared.papers import traveller
from examples.acts import WITHDRAWN
from examples.calendar import WEEK, Calendar
from examples.load import JOBS, Week, load_week, read_spec
from examples.run import loaded_week
from tagger.errors import StoreError
from tagger.i18n import LANGUAGES
from tagger.i18n.catalogue import rooms, source
from tagger.measuring import profile, reading, rectify, view
from tagger.measuring.reading import Lines
from tagger.papers import certificate
from tagger.record_tag import tags_of
from tagger.spec import AssemblySpec
from tagger.store import Filter, FittedState, Kind, Result, Store
from tagger.trade import assess
from tagger.trade.tables import tables
from tests.databases import fresh_sqlite
from tests.scan.conftest import text


@pytest.fixture(scope="module")
def week(tmp_path_factory: pytest.TempPathFactory) -> Iterator[tuple[Store, Week]]:
    """The week, and the store that it is in, loaded once."""
    calendar = Calendar()
    with Store.open(fresh_sqlite(tmp_path_factory.mktemp("week")), now=calendar) as store:
        before = time.process_time()
        loaded = load_week(store, calendar)
        assert time.process_time() - before < 5  # 1.4 s
        yield store, loaded


def test_loading_the_week_twice_changes_nothing(week: tuple[Store, Week]) -> None:
    store, first = week
    kept = _kept(store)
    wanted = AssemblySpec.read(
        {"hose": {"standard": "SAE 100R2", "dash": 12, "part": "TW 2W 12"}, "length_mm": 900,
         **{end: store.fitting("TW-1204").spec_end() for end in ("end_a", "end_b")}}
    )  # fmt: skip
    assert all(card.approved for card in store.crimp_cards(wanted, store.fittings_of(wanted)))
    again = Calendar()
    store.now = again
    second = load_week(store, again)
    assert kept == _kept(store)
    assert store.count() == sum(job.count for job in JOBS) + 11 + 1
    assert [one.number for one in second.service_run] == [one.number for one in first.service_run]
    assert second.order.reference == first.order.reference


def _kept(store: Store) -> tuple[object, ...]:
    """Whatever the week writes."""
    return (
        store.count(), store.events(), store.own_hoses(), store.crimps(), store.shop_rows(ended=True), store.orders(),
        store.fitted_reports(), store.withdrawals(), store.recipes(), list(store.every_photo()),
    )  # fmt: skip


def test_a_folder_with_the_week_of_another_version_is_told(tmp_path: Path) -> None:
    calendar, other = Calendar(), read_spec("pilot_line")
    with Store.open(fresh_sqlite(tmp_path), now=calendar) as store:
        store.register(other, assess(other), key="demonstration boom_rod_side")
        with pytest.raises(StoreError, match="not the invented week of this version"):
            loaded_week(store, calendar, tmp_path)
        assert store.count() == 1


def test_the_week_shows_what_a_shop_can_do(week: tuple[Store, Week]) -> None:
    store, loaded = week
    of = {name: built[0].number for name, built in loaded.built.items()}

    batch = store.proof_batch(of["deck_lift"])
    assert batch is not None and len(batch.numbers) == 12
    assert {proved.result for _, proved in store.proved_of(batch.numbers).values()} == {Result.PASSED}
    assert len(store.flushed(batch.numbers)) == 12
    assert [len(store.each([n], Kind.CRIMPED)) for n in batch.numbers] == [
        2 if n == 6 else 1 for n in range(12)
    ]
    assert not store.unreleased(batch.numbers)
    assert all(one.spec.end_a.fitting == "TW-0804" for one in loaded.built["deck_lift"])

    [recall] = store.withdrawals(holds=True)
    touched = store.assemblies(store.affected(recall.scope, recall.value))
    called = {one.customer: store.contacts_of(touched).get(one.number) for one in touched}
    assert len(called) == 2 and all(contact is not None and contact.phone for contact in called.values())

    assert {order.language for order in store.orders()} >= {"de", "fr"}
    [photo] = store.order_photos(loaded.order.reference)
    assert store.photo(photo.id).startswith(b"\xff\xd8")
    assert len(store.find(Filter(customer="Ostervale Timber Yard", machine="Forwarder 3")).assemblies) == 12
    assert {report.state for report in store.fitted_reports()} == {FittedState.AGREED, FittedState.WAITING}
    assert any(report.withdrawn for report in store.fitted_reports())

    old, new = (store.assembly(of[name]) for name in ("press_return", "press_return_new"))
    assert (old.replacement_built, old.replaced_by, new.fitted) == (new.number, None, False)
    danger = store.assembly(of["quench_line"])
    assert danger.reason and danger.assessment.warnings[0].severity == "danger"
    assert (
        set(store.held(list(of.values()))) == {of["bucket_tilt"]} == set(store.unreleased(list(of.values())))
    )
    assert store.last([of["auger_feed"]], Kind.CORRECTED) and len(store.void_numbers()) == 1


@pytest.mark.parametrize("language", ["en", "de"])
def test_a_certificate_with_all_that_it_may_say_and_the_traveller_of_twelve_are_a_page_each(
    week: tuple[Store, Week], language: str
) -> None:
    store, loaded = week
    deck = loaded.built["deck_lift"][6]
    shop = Settings(
        shop_name="Tidewrack Hose Shop", shop_address="Quay 4", shop_phone="1", shop_email="a@b.example"
    )
    ours = shop.tables(store.held_rows())
    papers = (
        certificate.of_last_test(store, deck.number, shop, ours, language),
        traveller.of_run(store, deck.run, shop, ours, language),
    )
    assert [len(PdfDocument(body)) for body in papers] == [1, 1]


def test_the_photo_of_the_week_is_measured_as_its_thread() -> None:
    """1 1/16-12 of 37° flare: the photo is rendered, with a diameter of 26.9 mm and a pitch of 2.117 mm."""
    with Image.open(WEEK / "old_end.jpg") as photo:
        grey = photo.convert("L")
    sight = rectify.find(grey)
    lines = profile.find(view.of(grey, sight), Lines(86.0, 116.0, 42.0, 56.0, 7))
    found = reading.read(lines, sight.camera, sight.residual)
    assert abs(found.diameter_mm - 26.9) < 0.1 and abs(found.pitch_mm - 2.117) < 0.01


_WORD = re.compile(r"[^\W\d_]{3,}")
_CITED = r'<p class="source">.*?</p>|<footer>.*?</footer>|<nav class="choices".*?</nav>|<pre.*?</pre>'


def test_every_tag_of_the_week_opens_in_each_language_without_a_word_of_another(
    week: tuple[Store, Week],
) -> None:
    """A word of another language: one that only others' catalogues use. What people wrote, and the names of
    sources, are as they are."""
    store, loaded = week
    settings = Settings(public_requests_per_minute=10_000)
    with TestClient(create_app(settings, store=store)) as client:
        for assembly in [built[0] for built in loaded.built.values()]:
            path = tags_of(store, [assembly], settings)[0].link.removeprefix("HTTP://127.0.0.1:8000")
            for language in LANGUAGES:
                page = client.get(path, headers={"accept-language": language})
                assert (page.status_code, page.headers["content-language"]) == (200, language)
                assert assembly.number[:5] in page.text
                assert (WITHDRAWN in page.text) == (assembly.spec.hose.lot == "H-2310")
                foreign = {word.lower() for word in _said(page.text)} & _of_others_alone(language)
                assert not foreign, (language, path)


def _said(html: str) -> list[str]:
    """The words of a page, without those that people wrote, tag numbers (by chance with a word in them) and the names of sources."""
    said = re.sub(r"\b[0-9A-Z]{5}-?[0-9A-Z]{6}\b", " ", text(re.sub(_CITED, " ", html, flags=re.DOTALL)))
    sources = {name for row in tables().sources.values() for name in (row.full, row.short)}
    for phrase in sorted(sources | _written(), key=len, reverse=True):
        said = said.replace(phrase, " ")
    return _WORD.findall(said)


@cache
def _written() -> set[str]:
    """The notes of the week's specs, and why its hose was withdrawn."""
    specs = (json.loads(file.read_text(encoding="utf-8")) for file in WEEK.glob("*.json"))
    return {spec["note"] for spec in specs if spec.get("note")} | {WITHDRAWN}


def _sentences(language: str) -> str:
    """A language's catalogues without comments and ids; what calls there are is alike in each language."""
    whole = "\n".join(source(language, room) for room in rooms(language))
    return re.sub(r"^(#.*| *[.\w-]+ =)", " ", whole, flags=re.MULTILINE)


@cache
def _of_others_alone(language: str) -> frozenset[str]:
    """Every word that the catalogues of other languages use and this one's do not, in small letters."""
    used = {each: {word.lower() for word in _WORD.findall(_sentences(each))} for each in LANGUAGES}
    return frozenset().union(*used.values()) - used[language]


def test_each_reel_of_the_week_is_one_hose(week: tuple[Store, Week]) -> None:
    store, _ = week
    lots = {item.spec.hose.lot for item in store.every() if item.spec.hose.lot}
    assert len(lots) >= 14
    assert {lot: len(store.hoses_of_lot(lot)) for lot in lots} == dict.fromkeys(lots, 1)
    assert all("lot_reason" not in event.data for event in store.events())
