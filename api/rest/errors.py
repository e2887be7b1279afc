"""The errors in the description of the API: each with its form (RFC 9457) and an example."""

from __future__ import annotations

from typing import Any

from fastapi import FastAPI

from api.rest.problem import BASE, PROBLEM_JSON, ProblemDetails, problem
from tagger.errors import Problem

USED = "The Idempotency-Key was used before, for another request."
TOO_LARGE = "The request is larger than is taken."
_EXAMPLES = {
    "401": problem(401, "Send a device's token: Authorization: Bearer ..."),
    "403": problem(403, "This needs a token of the role manager."),
    "404": problem(
        404, "number: is not registered here (given: '00000-000001'). Check the number.",
        [Problem("number", "00000-000001", "is not registered here", "Check the number.")],
    ),
    "409": problem(
        409, "key: was used before, for another request. Take a new key for a new request.",
        [Problem("key", None, "was used before, for another request", "Take a new key for a new request.")],
    ),
    "413": problem(413, "The request is larger than 20 MB. Send less."),
    "422": problem(
        422, "length_mm: is not a length (given: 'long'). Give mm, or a text with its unit: 49 1/4 in.",
        [Problem("length_mm", "long", "is not a length", "Give mm, or a text with its unit: 49 1/4 in.")],
    ),
}  # fmt: skip


def describe(app: FastAPI) -> None:
    """From now on the description tells every error with its media type and an example."""
    plain = app.openapi

    def openapi() -> dict[str, Any]:
        if app.openapi_schema is None:
            for path, verbs in plain()["paths"].items():
                if path.startswith(BASE):
                    for verb, operation in verbs.items():
                        _errors(verb, operation)
        return plain()

    app.openapi = openapi  # type: ignore[method-assign]


def _errors(verb: str, operation: dict[str, Any]) -> None:
    answers = operation["responses"]
    names = {parameter["name"] for parameter in operation.get("parameters", ())}
    if "Idempotency-Key" in names:
        answers["409"] = {"description": USED}
    if "requestBody" in operation:
        answers["413"] = {"description": TOO_LARGE}
    schema = {"$ref": f"#/components/schemas/{ProblemDetails.__name__}"}
    for code, example in _EXAMPLES.items():
        if code in answers:
            answers[code]["content"] = {PROBLEM_JSON: {"schema": schema, "example": example}}
