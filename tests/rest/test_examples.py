"""The description of the API: a summary and an example for every operation, as really answered."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

import httpx
import pytest

from api.rest.errors import EXAMPLES as ERRORS
from api.rest.examples import EXAMPLES
from tagger.store import Store
from tests.rest.examples import record, record_errors

WITHOUT_A_CLOCK = ("POST /identify", "POST /check", "GET /templates", "PUT /crimp-diameters")


def _operations(described: dict[str, Any]) -> Iterator[tuple[str, dict[str, Any]]]:
    for path, verbs in described["paths"].items():
        for verb, about in verbs.items():
            yield f"{verb.upper()} {path.removeprefix('/api/v1')}", about


def _examples(about: dict[str, Any]) -> list[str]:
    """What lacks an example: the body that is sent, the answer that is right."""
    parts = {"sends": about["requestBody"]} if "requestBody" in about else {}
    parts |= {code: answer for code, answer in about["responses"].items() if code.startswith("2")}
    return [n for n, p in parts.items() if not any("example" in m for m in p.get("content", {}).values())]


def test_every_operation_has_a_summary_and_examples(api: httpx.Client) -> None:
    operations = dict(_operations(api.get("/openapi.json").json()))
    assert len(operations) >= 55
    assert [name for name, about in operations.items() if not about.get("summary")] == []
    assert {name: missing for name, about in operations.items() if (missing := _examples(about))} == {}


def test_the_examples_are_what_the_api_answers(api: httpx.Client, store: Store) -> None:
    """The file made anew has the same operations, bodies and members; and the same words where no clock is in them."""
    recorded = record(api, store)
    assert recorded.keys() == EXAMPLES.keys() == dict(_operations(api.get("/openapi.json").json())).keys()
    for name, example in EXAMPLES.items():
        assert recorded[name].keys() == example.keys(), name
        now, then = recorded[name]["answers"], example["answers"]
        if isinstance(then, dict):
            assert now.keys() == then.keys(), name
    for name in WITHOUT_A_CLOCK:
        now, then = (
            {member: value for member, value in kept[name]["answers"].items() if member != "by"}
            for kept in (recorded, EXAMPLES)
        )
        assert now == then, name


def test_every_operation_describes_its_errors_with_an_example(api: httpx.Client) -> None:
    described = api.get("/openapi.json").json()
    members = described["components"]["schemas"]["ProblemDetails"]["properties"].keys()
    for name, about in _operations(described):
        errors = {code: answer for code, answer in about["responses"].items() if code[0] == "4"}
        assert {"401", "403", "422"} <= errors.keys(), name
        assert ("413" in errors) == ("requestBody" in about), name
        for code, answer in errors.items():
            assert answer["description"] and answer["content"].keys() == {"application/problem+json"}, (
                name,
                code,
            )
            told = answer["content"]["application/problem+json"]
            assert told["schema"]["$ref"].endswith("/ProblemDetails")
            assert told["example"].keys() == members and told["example"]["status"] == int(code)


def test_the_errors_in_the_description_are_what_the_api_answers(api: httpx.Client, store: Store) -> None:
    recorded = record_errors(api, store)
    assert recorded == ERRORS
    for status, error in recorded.items():
        assert error["status"] == int(status) and error["detail"]


@pytest.mark.parametrize("name", sorted(EXAMPLES))
def test_no_example_is_a_real_address(name: str) -> None:
    assert "127.0.0.1" not in str(EXAMPLES[name])
