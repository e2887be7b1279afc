"""The description of the API is whole and true, by the rules of OpenAPI 3.1 and JSON Schema 2020-12."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING, Any

import httpx
import pytest
from pydantic import ValidationError

from api.rest.shared import EXAMPLE_SPEC
from tagger import __version__
from tagger.store import Store
from tagger.trimmed import Trimmed

if TYPE_CHECKING:
    from jsonschema.protocols import Validator

KEYWORDS = {
    *("$ref", "type", "title", "description", "default", "examples", "format", "contentMediaType", "writeOnly"),
    *("properties", "required", "additionalProperties", "propertyNames", "items", "prefixItems", "anyOf", "oneOf"),
    *("allOf", "enum", "const", "discriminator", "minimum", "maximum", "exclusiveMinimum", "exclusiveMaximum"),
    *("minLength", "maxLength", "pattern", "minItems", "maxItems", "uniqueItems"),
}  # fmt: skip
"""Of JSON Schema 2020-12 (validation and applicator vocabularies) and OpenAPI 3.1, those that are used."""


@pytest.fixture(scope="session")
def validator() -> type[Validator]:
    from jsonschema import Draft202012Validator  # here: it takes seconds to import

    return Draft202012Validator


@pytest.fixture
def described(api: httpx.Client) -> dict[str, Any]:
    found: dict[str, Any] = api.get("/openapi.json").json()
    return found


def _operations(described: dict[str, Any]) -> Iterator[tuple[str, dict[str, Any]]]:
    for path, verbs in described["paths"].items():
        for verb, about in verbs.items():
            yield f"{verb.upper()} {path.removeprefix('/api/v1')}", about


def _media(described: dict[str, Any]) -> Iterator[tuple[str, str, dict[str, Any]]]:
    """Every body: where it stands, its media type, and what is said of it."""
    for name, about in _operations(described):
        parts = {"sends": about["requestBody"]} if "requestBody" in about else {}
        for code, part in (parts | about["responses"]).items():
            for media, content in part.get("content", {}).items():
                yield f"{name} {code}", media, content


def _schemas(schema: Any) -> Iterator[dict[str, Any]]:
    if not isinstance(schema, dict):
        return
    yield schema
    for name in ("properties", "$defs"):
        for inner in schema.get(name, {}).values():
            yield from _schemas(inner)
    for name in ("items", "additionalProperties", "propertyNames"):
        yield from _schemas(schema.get(name))
    for name in ("anyOf", "oneOf", "allOf", "prefixItems"):
        for inner in schema.get(name, ()):
            yield from _schemas(inner)


def test_every_example_fits_the_schema_beside_it(
    described: dict[str, Any], validator: type[Validator]
) -> None:
    wrong: dict[str, str] = {}
    shown = 0
    for place, media, content in _media(described):
        if "example" not in content or "schema" not in content or media.startswith("multipart/"):
            continue
        shown += 1
        fits = validator({**content["schema"], "components": described["components"]})
        for error in fits.iter_errors(content["example"]):
            wrong[f"{place} {error.json_path}"] = error.message
    assert wrong == {}
    assert shown > 200


def _sent(described: dict[str, Any]) -> Iterator[str]:
    """The names of the schemas that a body is made of."""
    schemas, seen = described["components"]["schemas"], set[str]()
    left = [
        content["schema"]["$ref"]
        for place, media, content in _media(described)
        if place.endswith(" sends") and media == "application/json" and "$ref" in content["schema"]
    ]
    while left:
        name = left.pop().rpartition("/")[2]
        if name not in seen:
            seen.add(name)
            yield name
            left += [inner["$ref"] for inner in _schemas(schemas[name]) if "$ref" in inner]


def _all_of(model: type[Trimmed]) -> Iterator[type[Trimmed]]:
    yield model
    for below in model.__subclasses__():
        yield from _all_of(below)


def _refused(model: type[Trimmed], field: str, text: str) -> str:
    """The kind of error that this text is refused with in this field, in words for programs; empty for none."""
    with pytest.raises(ValidationError) as refused:
        model.model_validate({field: text, "and one": "that nobody knows"})
    return next((str(item["type"]) for item in refused.value.errors() if item["loc"][:1] == (field,)), "")


def test_a_text_is_as_long_as_the_description_says_blanks_around_it_included(
    api: httpx.Client, described: dict[str, Any], validator: type[Validator]
) -> None:
    for text in ("EN 853 2SN DN 19".ljust(301), " "):
        assert api.post("/lay-line", json={"text": text}).status_code == 422
    assert api.post("/lay-line", json={"text": "EN 853 2SN DN 19".ljust(300)}).status_code == 200
    models = {model.__name__: model for model in _all_of(Trimmed)}
    longest = least = 0
    for name in _sent(described):
        for field, member in described["components"]["schemas"][name].get("properties", {}).items():
            for schema in (member, *member.get("anyOf", ())):
                if schema.get("type") != "string":
                    continue
                allowed = validator(schema)
                if most := schema.get("maxLength"):
                    longest += 1
                    assert allowed.is_valid("1" * most) and not allowed.is_valid("1" * most + " ")
                    assert _refused(models[name], field, "1" * most) != "string_too_long"
                    assert _refused(models[name], field, "1" * most + " ") == "string_too_long", (name, field)
                    assert _refused(models[name], field, " " + "1" * (most - 2) + " ") != "string_too_long"
                if schema.get("minLength"):
                    least += 1
                    for mark in map(chr, range(0x3100)):
                        blank = _refused(models[name], field, mark) == "string_too_short"
                        assert allowed.is_valid(mark) is not blank, (name, field, mark)
    assert longest >= 30 and least >= 7


def test_no_example_holds_a_control_character(described: dict[str, Any]) -> None:
    def texts(value: Any) -> Iterator[str]:
        if isinstance(value, dict):
            for key, inner in value.items():
                yield from (key, *texts(inner))
        elif isinstance(value, list):
            for inner in value:
                yield from texts(inner)
        elif isinstance(value, str):
            yield value

    for place, _, content in _media(described):
        for text in texts(content.get("example")):
            assert all(mark.isprintable() or mark in "\r\n" for mark in text), (place, text)


def test_every_operation_says_what_lets_a_program_in_and_where_it_is(described: dict[str, Any]) -> None:
    schemes = described["components"]["securitySchemes"]
    assert {scheme["scheme"] for scheme in schemes.values()} == {"bearer"}
    assert [server["url"] for server in described["servers"]] == ["https://tags.example.com"]
    assert described["info"]["version"] == __version__
    listed = {tag["name"] for tag in described["tags"]}
    for name, about in _operations(described):
        assert [needed.keys() <= schemes.keys() for needed in about["security"]] == [True], name
        assert set(about["tags"]) <= listed and about["tags"], name
        assert {"429", "503"} <= about["responses"].keys(), name


def test_no_two_operations_or_schemas_have_one_name(described: dict[str, Any]) -> None:
    """The framework puts the module before the names of schemas named alike; generators of clients drop them."""
    ids = [about["operationId"] for _, about in _operations(described)]
    assert len(set(ids)) == len(ids) > 90
    schemas = described["components"]["schemas"]
    assert [name for name in schemas if "__" in name] == []
    titles = [schema["title"] for schema in schemas.values()]
    assert sorted({title for title in titles if titles.count(title) > 1}) == []


def test_schemas_use_no_word_that_json_schema_does_not_know(
    described: dict[str, Any], validator: type[Validator]
) -> None:
    whole = [
        *described["components"]["schemas"].values(),
        *(c.get("schema") for _, _, c in _media(described)),
    ]
    whole += [p["schema"] for _, about in _operations(described) for p in about.get("parameters", ())]
    used = {word for schema in whole for inner in _schemas(schema) for word in inner}
    assert used - KEYWORDS == set()
    for schema in whole:
        if schema:
            validator.check_schema(schema)


def test_a_file_is_binary_whichever_way_it_goes(described: dict[str, Any]) -> None:
    sent = [
        member
        for schema in described["components"]["schemas"].values()
        for member in schema.get("properties", {}).values()
        if member.get("contentMediaType") == "application/octet-stream"
    ]
    got = [
        content for _, media, content in _media(described) if media.startswith(("application/pdf", "image/"))
    ]
    assert len(sent) >= 6 and len(got) >= 8
    assert {member["format"] for member in sent} == {"binary"}
    assert all(content["schema"] == {"type": "string", "format": "binary"} for content in got)


def test_true_is_no_number_and_no_number_is_true_or_a_day(api: httpx.Client, store: Store) -> None:
    card = {"hose_standard": "SAE 100R2", "hose_dash": 12, "shell": "F-12", "diameter_mm": 31, "plus_mm": 0.2,
            "minus_mm": 0.2, "source": "made up"}  # fmt: skip
    order = {"quantity": 1, "spec": EXAMPLE_SPEC, "contact": {"name": "Mara", "phone": "555 0100"}}
    wrong = (
        ("PUT", "/crimp-diameters", {**card, "diameter_mm": True}, "diameter_mm", "spec-not-a-number"),
        ("PUT", "/crimp-diameters", {**card, "insertion_depth_mm": False}, "insertion_depth_mm", "spec-not-a-number"),
        ("PUT", "/crimp-diameters", {**card, "hose_dash": True}, "hose_dash", "spec-not-a-whole-number"),
        ("POST", "/assemblies", {"spec": EXAMPLE_SPEC, "changes_considered": 1}, "changes_considered",
         "spec-not-yes-or-no"),
        ("POST", "/assemblies", {"spec": EXAMPLE_SPEC, "count": True}, "count", "spec-not-a-whole-number"),
        ("POST", "/assemblies", {"spec": EXAMPLE_SPEC, "built_on": 0}, "built_on", "spec-not-a-date"),
        ("POST", "/assemblies", {"spec": EXAMPLE_SPEC, "built_on": "0"}, "built_on", "spec-not-a-date"),
        ("POST", "/orders", {**order, "needed_by": 1900022400}, "needed_by", "spec-not-a-date"),
        ("GET", "/assemblies?built_to=0", None, "built_to", "spec-not-a-date"),
        ("GET", "/totals?since=0", None, "since", "spec-not-a-date"),
        ("GET", "/events?since=0.5", None, "since", "spec-not-a-date"),
    )  # fmt: skip
    for method, path, body, field, message in wrong:
        answer = api.request(method, path, json=body)
        assert answer.status_code == 422, (path, body, answer.text)
        [problem] = answer.json()["problems"]
        assert (problem["field"], problem["id"]) == (field, message)
    assert store.count() == 0 and api.get("/crimp-diameters").json() == []
    for path in (
        "/totals?since=2026-01-01",
        "/events?since=2026-01-01T00:00:00Z",
        "/events?since=2026-01-01",
    ):
        assert api.get(path).status_code == 200


def test_an_address_has_the_methods_that_are_described_and_no_other(api: httpx.Client) -> None:
    answer = api.request("DELETE", "/crimp-diameters/import")
    assert answer.status_code == 405
    assert answer.headers["allow"] == "POST"
