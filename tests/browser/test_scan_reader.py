"""The phone's own reader: same vectors, same words, same pictures as the library's Python."""

from __future__ import annotations

import json
import re
from collections.abc import Callable
from contextlib import suppress
from datetime import date, timedelta
from html import unescape
from itertools import product
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Page

from api.scan import fill, view
from api.scan.find import path_of
from api.scan.kit import shared_tables, tables_and_keys, words_of
from api.scan.tag_page import assessment_of
from api.scan.view import Shop, Tag
from api.scan.visitor import Reader
from tagger.code import link, payload
from tagger.code import number as tag_number
from tagger.errors import PayloadError, TaggerError
from tagger.spec import AssemblySpec, Connection, Fluid, PressureOverride, TagContent, Tightening
from tagger.trade import assess
from tagger.trade.present import lowered, overrated
from tagger.trade.tables import Tables, tables
from tests.browser.conftest import Live
from tests.browser.test_scan_tag import TWO_ELBOWS
from tests.code.signed_examples import KEYS, signed
from tests.test_spec import EXAMPLE
from tests.trade.specs import both, end
from tests.volume import volume

OpenPage = Callable[..., Page]
FOLDER = Path(__file__).parents[1] / "golden"
GOLDEN = [
    vector
    for version in payload.VERSIONS
    for vector in json.loads((FOLDER / f"payload_v{version}.json").read_text(encoding="utf-8"))
]
NUMBER = "7K3MQ9XW2R1"

DECODE = """async ([digits, base, tables]) => {
  const { decode } = await import(`${base}/payload.js`);
  return digits.map((each) => { try { return decode(each, tables); } catch (error) { return { refused: error.message }; } });
}"""
READ = """async ([paths, base, tables, language, today, shop]) => {
  const { read } = await import(`${base}/offline.js`);
  const { Kit } = await import(`${base}/kit.js`);
  const kit = new Kit(language, tables);
  return Promise.all(paths.map(async (path) => (await read(path, kit, today, shop)).html));
}"""


@pytest.fixture
def reader(live: Live, open_page: OpenPage) -> tuple[Page, str]:
    """A page of ours, and where its modules are."""
    page = open_page()
    page.goto(live.url + "/find")
    src = page.locator("script[type=module]").get_attribute("src")
    assert src
    return page, src.rsplit("/", 1)[0]


def test_golden_vectors_decode_in_the_browser(reader: tuple[Page, str]) -> None:
    page, base = reader
    digits = [vector["digits"] for vector in GOLDEN]
    found = page.evaluate(DECODE, [digits, base, shared_tables(tables())])
    for vector, content in zip(GOLDEN, found, strict=True):
        assert TagContent.model_validate(content) == payload.decode(vector["digits"]), vector["name"]


def test_damaged_digits_are_refused_in_the_browser_as_in_python(reader: tuple[Page, str]) -> None:
    page, base = reader
    digits = GOLDEN[0]["digits"]
    damaged = [digits[:at] + str((int(digits[at]) + 1) % 10) + digits[at + 1 :] for at in range(len(digits))]
    damaged += [digits[:-1], digits + "0", "", "12345", "x" * 20, "9" * 300]
    found = page.evaluate(DECODE, [damaged, base, shared_tables(tables())])
    for text, content in zip(damaged, found, strict=True):
        with pytest.raises(PayloadError):
            payload.decode(text)
        assert "refused" in content, text


def test_numbers_are_checked_alike(reader: tuple[Page, str]) -> None:
    page, base = reader
    numbers = [tag_number.make() for _ in range(50)]
    wrong = [n[:3] + ("A" if n[3] != "A" else "B") + n[4:] for n in numbers] + ["", "7K3MQ", "U" * 11]
    script = "async ([all, base]) => { const { isValid } = await import(`${base}/number.js`); return all.map(isValid); }"
    assert page.evaluate(script, [numbers + wrong, base]) == [True] * len(numbers) + [
        tag_number.is_valid(n) for n in wrong
    ]


@pytest.mark.parametrize("lang", ["en", "fr", "es", "de"])
def test_the_phone_says_what_the_server_says(reader: tuple[Page, str], lang: str) -> None:
    page, base = reader
    today = date.today().isoformat()
    too_high = assess(spec := AssemblySpec.read(TWO_ELBOWS)).content_of(spec)
    too_high = too_high.model_copy(
        update={"working_pressure_bar": 950.0, "at_most_bar": None, "unknown_parts": ()}
    )
    vectors = [
        *GOLDEN,
        {"name": "signed", "digits": signed("contract_example")},
        {"name": "claims too much", "digits": payload.encode(too_high)},
    ]
    paths = [f"/T/{NUMBER}/{vector['digits']}" for vector in vectors]
    shop = {
        "base": "https://tags.example.com",
        "name": "Quarry Road Hose",
        "phone": "+44 1632 960 111",
        "email": "orders@example.com",
        "clockwise": lang in ("fr", "de"),  # a shop's own way of counting the clocking angle
    }
    known = tables_and_keys(tables(), KEYS)
    found = page.evaluate(READ, [paths, base, known, words_of(lang, tables()), today, shop])
    for vector, html in zip(vectors, found, strict=True):
        content = payload.decode(vector["digits"])
        high = overrated(content, tables())
        state = KEYS.state(NUMBER, vector["digits"], content.built_on)
        shown = lowered(content, high)
        tag = Tag(NUMBER, vector["digits"], shown, None, content, overrated=high, signed=state)
        values = view.build(tag, assessment_of(tag, tables()), Reader(lang, tables()), Shop(*shop.values()))
        server = fill.fill(
            "tag",
            values | {"warnings": [], "dangers": [], "notices": values["notices"][2 if high else 1 :]},
            lang,
        )
        seen = (
            _without_first_notice(html)
            if high is None
            else _without_first_notice(_without_first_notice(html))
        )
        assert _plain(seen) == _plain(server), vector["name"]
        if high:
            assert set(_plain(values["notices"][1]["words"])) <= set(_plain(html)), vector["name"]


HELD = """async ([digits, base, tables]) => {
  const { decode } = await import(`${base}/payload.js`);
  const { held } = await import(`${base}/ceiling.js`);
  return digits.map((each) => { const { content, claimed } = held(decode(each, tables), tables); return [content.working_pressure_bar, content.at_most_bar, claimed]; });
}"""


def _claims() -> list[TagContent]:
    """True tags over hoses and ends, and forged ones that claim 950 bar: two in every three with a source."""
    found: list[TagContent] = []
    for place, (standard, family) in enumerate(product(sorted(tables().standards), tables().families)):
        if family is Connection.OTHER or place % volume(11, 2):
            continue
        size = tables().sizes(family)[-1]
        series = [None, *sorted(tables().series_of(family, size))][place % 3 :][:1]
        given = {"series": series[0]} if series and series[0] else {}
        ends = end(family, size, tables().families[family].forms[0], hose_dash=12, **given)
        for more in ({}, {"fluid": "phosphate_ester"}, {"max_temperature_c": 150}):
            with suppress(TaggerError):
                spec = both(standard, 12, ends, **more)
                true = assess(spec).content_of(spec)
                given = PressureOverride(value_bar=950, source="maker's data sheet")
                forged = true.model_copy(
                    update={"working_pressure_bar": 950.0, "at_most_bar": None, "unknown_parts": ()}
                )
                worded = forged.model_copy(
                    update={"spec": forged.spec.model_copy(update={"working_pressure": given})}
                )
                partly = forged.model_copy(
                    update={
                        "working_pressure_bar": None,
                        "at_most_bar": 950.0,
                        "unknown_parts": true.unknown_parts or ("end_b",),
                    }
                )
                found += [true, forged, worded, partly]
    return found


def test_a_forged_pressure_is_held_against_the_tables_on_the_phone_as_on_the_server(
    reader: tuple[Page, str],
) -> None:
    page, base = reader
    contents = [payload.decode(payload.encode(content)) for content in _claims()]
    assert len(contents) > volume(300, 1000)
    found = page.evaluate(HELD, [[payload.encode(c) for c in contents], base, shared_tables(tables())])
    for content, (bar, at_most, claimed) in zip(contents, found, strict=True):
        high = overrated(content, tables())
        shown = lowered(content, high)
        assert (bar, at_most) == (shown.working_pressure_bar, shown.at_most_bar), content
        assert claimed == (high.was_bar if high else None), content


def test_a_pressure_that_rests_on_a_manufacturers_word_for_a_part_stays_on_the_phone(
    reader: tuple[Page, str],
) -> None:
    """The end has no rating in the tables; the tag says that somebody gave one."""
    page, base = reader
    word = {"rating": {"value_bar": 140, "source": "the manufacturer's letter"}, "hose_dash": 12}
    spec = both("SAE 100R2", 12, end("jis_30", "M22x1.5", **word))
    content = assess(spec).content_of(spec)
    assert content.working_pressure_bar == 140
    assert overrated(payload.decode(payload.encode(content)), tables()) is None
    found = page.evaluate(HELD, [[payload.encode(content)], base, shared_tables(tables())])
    assert found == [[140, None, None]]


def test_the_phone_tells_a_shops_own_figures_with_their_source(
    reader: tuple[Page, str], tmp_path: Path
) -> None:
    """Years from the shop's rules, the cold limit of a hose and of its fluid: alike with and without a signal."""
    page, base = reader
    (tmp_path / "rules.csv").write_text(
        "key,value,unit,text,source,confidence\n"
        "assembly_life_years_din,10,years,Total life,our insurer's letter of May,shop\n"
    )
    ours, today = Tables.load(extra=tmp_path), date.today()
    spec = AssemblySpec.read(TWO_ELBOWS | {"hose": {"standard": "EN 853 2SN", "dash": 12}})
    for years, fluid, said in ((7, "water", "0 °C"), (11, "mineral_oil", "our insurer's letter of May")):
        changed = spec.model_copy(update={"fluid": Fluid(fluid), "max_temperature_c": 60})
        content = assess(changed, ours).content_of(changed, today - timedelta(days=366 * years))
        digits = payload.encode(content)
        shop = {"base": "https://tags.example.com", "name": "", "phone": "", "email": ""}
        paths = [f"/T/{NUMBER}/{digits}"]
        [html] = page.evaluate(
            READ, [paths, base, shared_tables(ours), words_of("en", ours), today.isoformat(), shop]
        )
        tag = Tag(NUMBER, digits, content, None, content)
        values = view.build(tag, assessment_of(tag, ours), Reader("en", ours), Shop(*shop.values()))
        server = fill.fill(
            "tag", values | {"warnings": [], "dangers": [], "notices": values["notices"][1:]}, "en"
        )
        assert _plain(_without_first_notice(html)) == _plain(server)
        assert said in unescape(html) and "DIN 20066" not in html.replace("quoting DIN 20066", "")


def test_the_phone_puts_the_ends_in_the_order_of_the_server(reader: tuple[Page, str]) -> None:
    """The rigid end first, the swivel last, for every pair of ends that turn in different ways."""
    page, base = reader
    today, shop = date.today(), {"base": "https://tags.example.com", "name": "", "phone": "", "email": ""}
    specs = [
        AssemblySpec.read({**EXAMPLE, "end_a": a, "end_b": b, "clocking_deg": None})
        for a in TURNING
        for b in TURNING
    ]
    contents = [assess(spec).content_of(spec, today) for spec in specs]
    older = Tightening(torque_min_nm=84, torque_max_nm=84)  # a nut's, as older tags carry it on a BSPP stud
    contents += [
        each.model_copy(update={"tighten_a": older})
        for each in contents
        if each.spec.end_a.connection == "bspp"
    ]
    digits = [payload.encode(content) for content in contents]
    paths = [f"/T/{NUMBER}/{each}" for each in digits]
    words = words_of("en", tables())
    found = page.evaluate(READ, [paths, base, shared_tables(tables()), words, today.isoformat(), shop])
    for content, each, html in zip(contents, digits, found, strict=True):
        tag = Tag(NUMBER, each, content, None, content)
        values = view.build(tag, assessment_of(tag, tables()), Reader("en", tables()), Shop(*shop.values()))
        server = fill.fill(
            "tag", values | {"warnings": [], "dangers": [], "notices": values["notices"][1:]}, "en"
        )
        assert _plain(_without_first_notice(html)) == _plain(server)


TURNING: tuple[dict[str, Any], ...] = (
    end("npt", "3/4", "male"),
    end("sae_orb", 12, "male"),
    end("sae_37_flare", 12, "male"),
    end("orfs", 12),
    end("flange_code61", 12, "flange_head"),
    end("bspp", "3/4", "male", material="stainless_steel"),
    end("sae_37_flare", 12, "female_fixed"),
    end("qd_iso16028", 12, "coupler_female"),
    end("banjo_bsp", "3/4", "eye"),
)


def _without_first_notice(html: str) -> str:
    """The phone says in its first notice why it shows the tag and not a record."""
    return re.sub(r'<div class="notice.*?</div>', "", html, count=1, flags=re.DOTALL)


def _plain(html: str) -> list[str]:
    """Elements and text without the blanks between them, for comparing."""
    pieces = re.split(r"(<[^>]*>)", unescape(html))
    return [" ".join(piece.split()) for piece in pieces if piece.strip()]


def test_scanned_texts_lead_to_the_same_page_as_in_python(reader: tuple[Page, str]) -> None:
    page, base = reader
    texts = [
        f"HTTPS://A.EXAMPLE/T/{NUMBER}/123456789012", f"https://a.example/t/{NUMBER.lower()}", NUMBER, "7k3mq-9xw2r1",
        f"HTTPS://A.EXAMPLE/T/123456789012/8004/9506000{NUMBER}", f"https://a.example/8004/9506000{NUMBER}",
        "https://a.example/shop/", "hello", "HTTPS://A.EXAMPLE/T/7K3MQ9XWZR1/123456789012", "",
    ]  # fmt: skip
    script = "async ([all, base]) => { const { addressOf } = await import(`${base}/camera.js`); return all.map(addressOf); }"
    expected = [path_of(link.parse(text)) if link.is_valid(text) else None for text in texts]
    assert page.evaluate(script, [texts, base]) == expected
    assert sum(found is not None for found in expected) == 6


def test_the_tables_a_phone_keeps_are_small() -> None:
    import gzip

    shared: Any = json.dumps(shared_tables(tables()), ensure_ascii=False).encode()
    assert len(gzip.compress(shared)) < 25_000


NOTED = """async (base) => {
  const { note, known } = await import(`${base}/held.js`), fetched = window.fetch;
  const list = { as_of: "2026-11-27T10:00:02+00:00", withdrawn: [], void: [], held: [] };
  window.fetch = async () => new Response(JSON.stringify(list), { headers: { date: "Fri, 27 Nov 2026 10:00:01 GMT" } });
  const seen = new DOMParser().parseFromString('<section class="withdrawn" data-reason="cracked"></section>', "text/html");
  await note("7K3MQ9XW2R1", seen);
  window.fetch = fetched;
  return (await known("7K3MQ9XW2R1")).withdrawn?.reason ?? null;
}"""


def test_a_withdrawal_seen_holds_over_a_list_younger_than_the_date_it_came_with(
    reader: tuple[Page, str],
) -> None:
    """A server writes its date once a second; a list made just before the withdrawal may bear a later time."""
    page, base = reader
    assert page.evaluate(NOTED, base) == "cracked"
