"""Each text of the record, by its declaration, on every way into and out of the database."""

from __future__ import annotations

import csv
import io
import json
import re
import zipfile
from collections.abc import Iterator
from datetime import date
from pathlib import Path
from typing import Any

import httpx
import pytest
from sqlalchemy import select

from api.bench.captions import caption
from api.rest.shared import EXAMPLE_SPEC
from api.settings import Settings
from api.web.identity import hash_password
from tagger import lists
from tagger.errors import SpecError, StoreError
from tagger.i18n import LANGUAGES, Translator
from tagger.printing.fields import lines_of
from tagger.record import MAX_LENGTH, RECORD_FIELDS, Record, recorded
from tagger.record_tag import tags_of
from tagger.settings import ShopSettings
from tagger.spec import AssemblySpec
from tagger.store import Registration, Role, Store
from tagger.store.models import AssemblyRow, RegistrationRow
from tagger.store.texts import Line
from tagger.trade import assess
from tests.bench.served import HOSE, PASSWORD, Bench, serving
from tests.cli.test_cli import Shell
from tests.databases import fresh_sqlite

TEXTS = {"cleanliness": "18/16/13"}


def text_of(name: str) -> str:
    """Something that the text may say; "Écluse 7" where it may say anything."""
    return TEXTS.get(name, "Écluse 7")


def asked(name: str) -> str:
    """A part of it in another case, to be found by."""
    return text_of(name)[:6].replace("Écluse", "éCLUSE")


SPEC = AssemblySpec.read(EXAMPLE_SPEC)
DAY = date(2026, 11, 25)

each_field = pytest.mark.parametrize("name", RECORD_FIELDS)


@pytest.fixture
def store(tmp_path: Path) -> Iterator[Store]:
    with Store.open(fresh_sqlite(tmp_path)) as opened:
        opened.add_person("manager", hash_password(PASSWORD), Role.MANAGER)
        yield opened


@pytest.fixture
def url(store: Store) -> Iterator[str]:
    with serving(Settings(base_url="http://tags.example.com"), store) as served:
        yield served.url


@pytest.fixture
def api(store: Store, url: str) -> Iterator[httpx.Client]:
    _, secret = store.make_token("a device", Role.MANAGER)
    headers = {"Authorization": f"Bearer {secret}"}
    with httpx.Client(base_url=f"{url}/api/v1", headers=headers, timeout=30) as client:
        yield client


@pytest.fixture
def bench(store: Store, url: str) -> Iterator[Bench]:
    with Bench(url, store, "manager") as signed_in:
        yield signed_in


def _only(name: str) -> dict[str, str | None]:
    """The texts of a record of which one is given."""
    return {**recorded(Record()), name: text_of(name)}


def _given(name: str, text: str) -> dict[str, Any]:
    return {name: text}


def _two(store: Store, name: str) -> str:
    """Registers one assembly with the text and one without; the number of the first."""
    [made] = store.register(SPEC, assess(SPEC), built_on=DAY, **_given(name, text_of(name)))
    store.register(SPEC, assess(SPEC), built_on=DAY)
    return made.number


@each_field
def test_the_json_api_registers_finds_and_shows_it(api: httpx.Client, name: str) -> None:
    made = api.post("/assemblies", json={"spec": EXAMPLE_SPEC, name: f" {text_of(name)} "}).json()["numbers"]
    api.post("/assemblies", json={"spec": EXAMPLE_SPEC})
    found = api.get("/assemblies", params={name: asked(name)}).json()["assemblies"]
    assert [one["number"] for one in found] == made
    assert {field: found[0][field] for field in RECORD_FIELDS} == _only(name)
    described = api.get("/openapi.json").json()["components"]["schemas"]
    assert name in described["RegisterIn"]["properties"]
    assert name in described["AssemblyOut"]["required"]


@each_field
def test_the_bench_asks_for_it_finds_it_and_shows_it(bench: Bench, store: Store, name: str) -> None:
    for page in ("/bench/build", "/bench/find"):
        assert f'name="{name}"' in bench.get(page).text
    bench.submit("/bench/build", {**HOSE, name: text_of(name), "key": "one"})
    bench.submit("/bench/build", {**HOSE, "key": "two"})
    [made] = [one for one in store.every() if recorded(one) == _only(name)]
    assert text_of(name) in bench.get(f"/bench/tag/{made.number}").text
    assert Translator()("bench-assemblies", count=1) in bench.get(f"/bench/find?{name}={asked(name)}").text
    copy = bench.get(f"/bench/build?tag={made.number}&replaces=1").text
    assert re.search(rf'name="{name}" value="{text_of(name)}"', copy)


@each_field
def test_the_command_line_registers_and_shows_it(tmp_path: Path, name: str) -> None:
    (tmp_path / "spec.json").write_text(json.dumps(EXAMPLE_SPEC), encoding="utf-8")
    tagger = Shell(tmp_path)
    (made,) = tagger.json("register", "spec.json", f"--{name.replace('_', '-')}", text_of(name))["numbers"]
    assert recorded(_Shown(tagger.json("show", made))) == _only(name)
    assert f"{Translator()(f'words-record-{name}')}: {text_of(name)}" in tagger("show", made).stdout


class _Shown:
    """A record printed as JSON, with its members as attributes."""

    def __init__(self, members: dict[str, object]) -> None:
        vars(self).update(members)


@each_field
def test_what_was_exported_is_read_in_again_with_it(api: httpx.Client, store: Store, name: str) -> None:
    _two(store, name)
    exported = api.get("/assemblies.csv").content
    rows = list(csv.DictReader(io.StringIO(exported.decode("utf-8-sig"))))
    assert [row[name] for row in rows] == ["", text_of(name)]
    api.post("/lists/run", files={"file": ("assemblies.csv", exported)}).raise_for_status()
    assert [getattr(one, name) for one in store.every()] == [text_of(name), None, None, text_of(name)]


@each_field
def test_the_export_of_everything_holds_it(api: httpx.Client, store: Store, name: str) -> None:
    _two(store, name)
    whole = zipfile.ZipFile(io.BytesIO(api.get("/everything.zip").content))
    without, with_it = map(json.loads, whole.read("assemblies.jsonl").splitlines())
    assert (without[name], with_it[name]) == (None, text_of(name))


@each_field
def test_a_list_gives_it_and_a_run_prints_it(tmp_path: Path, store: Store, name: str) -> None:
    cells: dict[str, object] = {
        "hose.standard": "SAE 100R2",
        "hose.dash": 12,
        "length_mm": 1250,
        name: text_of(name),
    }
    for end in ("end_a", "end_b"):
        cells |= {f"{end}.connection": "sae_37_flare", f"{end}.dash": 12, f"{end}.form": "female_swivel"}
    [listed] = lists.read_rows([[*cells], [*cells.values()]])
    row = Registration(listed.spec, assess(listed.spec), 1, DAY, **recorded(listed))
    [tag] = tags_of(store, store.register_many([row]), ShopSettings(base_url="https://tags.example.com"))
    assert lines_of((name,), tag, ("en",), caption=False) == (text_of(name),)


@each_field
def test_it_is_kept_clean_and_refused_when_too_long(store: Store, name: str) -> None:
    given = text_of(name).replace("7", "\n 7").replace("/", " \n/ ")
    [made] = store.register(SPEC, assess(SPEC), **_given(name, f"  {given} "))
    assert getattr(made, name) == text_of(name)
    with pytest.raises(StoreError) as refused:
        store.register(SPEC, assess(SPEC), **_given(name, "x" * (MAX_LENGTH + 1)))
    assert [problem.field for problem in refused.value.problems] == [name]
    column = AssemblyRow.__table__.c[name].type
    assert isinstance(column, Line) and column.length == MAX_LENGTH


def test_only_a_code_of_iso_4406_is_a_cleanliness(store: Store) -> None:
    """Three scale numbers for particles above 4, 6 and 14 µm, so none is above the one before; 0 to 28."""
    for good in ("18/16/13", "28/28/0", "0/0/0"):
        [made] = store.register(SPEC, assess(SPEC), cleanliness=good)
        assert made.cleanliness == good
    count = store.count()
    for wrong in ("18/16", "16/18/13", "29/16/13", "18/16/13/11", "clean", "NAS 6", "18-16-13", "１８/16/13"):
        with pytest.raises(StoreError) as refused:
            store.register(SPEC, assess(SPEC), cleanliness=wrong)
        assert [(p.field, p.value) for p in refused.value.problems] == [
            ("cleanliness", wrong.replace(" ", ""))
        ]
        cells: dict[str, object] = {"hose.standard": "SAE 100R2", "cleanliness": wrong}
        with pytest.raises(
            SpecError, match=r"row 2\.cleanliness: This is not a cleanliness code of ISO 4406"
        ):
            lists.read_rows([[*cells], [*cells.values()]])
    assert store.count() == count


def test_one_that_is_not_given_leaves_no_mark_on_a_request(store: Store) -> None:
    """So a request made before a text was declared is the same request afterwards."""
    store.register(SPEC, assess(SPEC), customer="Quarry", key="a request")
    with store.reading() as session:
        mark = session.scalar(select(RegistrationRow.fingerprint))
    assert mark == "7e3f694a4419a5def7c18aff0d9918c0f6abc6ceab53319272091bdaa47a28a3"


@each_field
@pytest.mark.parametrize("language", LANGUAGES)
def test_it_has_a_caption_in_every_language(name: str, language: str) -> None:
    t = Translator(language)
    assert t.has(f"words-record-{name}")
    assert t(caption(name)) != name
