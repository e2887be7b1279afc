"""What no browser's form should send is refused in words, in whichever field it stands."""

from __future__ import annotations

import re

from tagger.store import Store
from tests.bench.served import HOSE, Bench
from tests.volume import volume

WORST = ("x" * 41, "9" * 400)
ODD = volume(
    WORST,
    (
        *WORST,
        "\0",
        " ",
        "\u00a0",
        "x" * 5000,
        "-1",
        "NaN",
        "1e999",
        "9" * 5000,
        "1/0",
        "\u0663",
        "\u202e",
        "[",
        "=1",
    ),
)


def test_an_odd_value_in_any_field_of_the_build_is_no_error_of_the_server(bench: Bench, store: Store) -> None:
    page = bench.get("/bench/build").text
    names = sorted(set(re.findall(r'name="([a-z_.]+)"', page)) - {"csrf"})
    assert {"hose.standard", "hose.lot", "end_a.size", "length_mm", "count"} <= set(names)
    answered = {}
    for name in names:
        for odd in ODD:
            answered[name, odd[:50]] = bench.submit("/bench/build/preview", {**HOSE, name: odd}).status_code
    assert {asked: status for asked, status in answered.items() if status >= 500} == {}
    assert len(answered) == len(names) * len(ODD)
    refused = bench.submit("/bench/build", {**HOSE, "hose.standard": WORST[0], "length_mm": WORST[1]})
    assert refused.status_code == 422 and store.count() == 0


def test_an_odd_value_in_any_condition_of_a_search_is_no_error_of_the_server(bench: Bench) -> None:
    names = sorted(set(re.findall(r'name="([a-z_.]+)"', bench.get("/bench/find").text)) - {"csrf"})
    assert {"customer", "lot", "dash", "built_from"} <= set(names)
    for name in names:
        for odd in ODD:
            answer = bench.get("/bench/find", params={name: odd})
            assert answer.status_code < 500, (name, odd)


def test_a_host_that_a_visitor_invents_leads_nobody_there(bench: Bench) -> None:
    """Its name stands in the request alone: behind a proxy that passes it on, an answer that is kept would spread it."""
    invented = {"host": "evil.example", "x-forwarded-host": "evil.example", "x-forwarded-proto": "https"}
    for address in ("/bench/find/", "/find/", "/api/v1/people/", "/identify/"):
        answer = bench.get(address, headers=invented, follow_redirects=False)
        assert (answer.status_code, answer.headers["location"]) == (307, address.removesuffix("/")), address
    for address in (
        "/find",
        "/identify",
        "/bench/me",
        "/bench/shop",
        "/api/v1/openapi.json",
        "//evil.example/find/",
    ):
        answer = bench.get(address, headers=invented, follow_redirects=False)
        assert "evil.example" not in answer.text + str(answer.headers), address
