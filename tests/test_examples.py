"""The invented week loads, twice the same, and its pages answer."""

from __future__ import annotations

import json
import re
from functools import cache
from pathlib import Path

from fastapi.testclient import TestClient

from api.app import create_app
from api.settings import Settings
from examples.load import JOBS, WEEK, WITHDRAWN, Calendar, load_week
from tagger.i18n import LANGUAGES
from tagger.i18n.catalogue import rooms, source
from tagger.record_tag import tags_of
from tagger.spec import AssemblySpec
from tagger.store import Store
from tagger.trade.tables import tables
from tests.scan.conftest import text


def test_loading_the_week_twice_changes_nothing(tmp_path: Path) -> None:
    with Store.open(f"sqlite:///{tmp_path}/week.sqlite3", now=Calendar()) as store:
        first = load_week(store, Calendar())
        count, events = store.count(), len(store.events())
        parts = (store.own_hoses(), store.crimps(), store.shop_rows(ended=True))
        wanted = AssemblySpec.read(
            {"hose": {"standard": "SAE 100R2", "dash": 12, "part": "TW 2W 12"}, "length_mm": 900,
             **{end: store.fitting("TW-1204").spec_end() for end in ("end_a", "end_b")}}
        )  # fmt: skip
        assert all(card.approved for card in store.crimp_cards(wanted, store.fittings_of(wanted)))
        second = load_week(store, Calendar())
        assert (store.count(), len(store.events())) == (count, events)
        assert parts == (store.own_hoses(), store.crimps(), store.shop_rows(ended=True))
    assert count == sum(job.count for job in JOBS) + 11
    assert [one.number for one in second.service_run] == [one.number for one in first.service_run]
    assert second.order.reference == first.order.reference


_WORD = re.compile(r"[^\W\d_]{3,}")
_CITED = r'<p class="source">.*?</p>|<footer>.*?</footer>|<nav class="choices".*?</nav>|<pre.*?</pre>'


def test_every_tag_of_the_week_opens_in_each_language_without_a_word_of_another(tmp_path: Path) -> None:
    """A word of another language: one that only others' catalogues use. What people wrote, and the names of
    sources, are as they are."""
    settings = Settings(database_url=f"sqlite:///{tmp_path}/week.sqlite3", public_requests_per_minute=10_000)
    with Store.open(settings.database_url, now=Calendar()) as store:
        week = load_week(store, Calendar())
        with TestClient(create_app(settings, store=store)) as client:
            for assembly in [built[0] for built in week.built.values()]:
                path = tags_of(store, [assembly], settings)[0].link.removeprefix("HTTP://127.0.0.1:8000")
                for language in LANGUAGES:
                    page = client.get(path, headers={"accept-language": language})
                    assert (page.status_code, page.headers["content-language"]) == (200, language)
                    assert assembly.number[:5] in page.text
                    assert (WITHDRAWN in page.text) == (assembly.spec.hose.lot == "H-2310")
                    foreign = {word.lower() for word in _said(page.text)} & _of_others_alone(language)
                    assert not foreign, (language, path)


def _said(html: str) -> list[str]:
    """The words of a page, without those that people wrote and the names of sources."""
    said = text(re.sub(_CITED, " ", html, flags=re.DOTALL))
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


def test_each_reel_of_the_week_is_one_hose(tmp_path: Path) -> None:
    with Store.open(f"sqlite:///{tmp_path}/week.sqlite3", now=Calendar()) as store:
        load_week(store, Calendar())
        lots = {item.spec.hose.lot for item in store.every() if item.spec.hose.lot}
        assert len(lots) >= 8
        assert {lot: len(store.hoses_of_lot(lot)) for lot in lots} == dict.fromkeys(lots, 1)
        assert all("lot_reason" not in event.data for event in store.events())
