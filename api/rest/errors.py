"""The errors in the description of the API: each with its form (RFC 9457) and an example.

``error_examples.json`` holds what the API really answered, by status; it is recorded with the other examples.
"""

from __future__ import annotations

import json
from importlib import resources
from typing import Any

from fastapi import FastAPI

from api.rest.problem import BASE, PROBLEM_JSON, ProblemDetails

USED = "The Idempotency-Key was used before, for another request."
TOO_LARGE = "The request is too large."
EXAMPLES: dict[str, dict[str, Any]] = json.loads(
    resources.files("api.rest").joinpath("error_examples.json").read_text(encoding="utf-8")
)


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
        own = answers.get("409", {}).get("description", "")
        answers["409"] = {"description": f"{USED} {own}".rstrip()}
    if "requestBody" in operation:
        answers["413"] = {"description": TOO_LARGE}
    schema = {"$ref": f"#/components/schemas/{ProblemDetails.__name__}"}
    for code, example in EXAMPLES.items():
        if code in answers:
            answers[code]["content"] = {PROBLEM_JSON: {"schema": schema, "example": example}}
