"""The errors in the description of the API: each with its form (RFC 9457) and an example.

``error_examples.json`` holds what the API really answered, by status; it is recorded with the other examples.
"""

from __future__ import annotations

import json
from importlib import resources
from typing import Any

from api.rest.problem import PROBLEM_JSON, ProblemDetails

USED = "The Idempotency-Key was used before, for another request."
TOO_LARGE = "The request is too large."
TOO_MANY = "Too many requests within a minute."
AWAY = "The database is busy, full or away; nothing was done."
AGAIN = {
    "Retry-After": {
        "description": "Seconds to wait before the request is sent again.",
        "schema": {"type": "integer", "minimum": 0},
    }
}
EXAMPLES: dict[str, dict[str, Any]] = json.loads(
    resources.files("api.rest").joinpath("error_examples.json").read_text(encoding="utf-8")
)


def put_into(operation: dict[str, Any]) -> None:
    """Gives an operation of the description each error that it answers: words, media type, example."""
    answers = operation["responses"]
    names = {parameter["name"] for parameter in operation.get("parameters", ())}
    if "Idempotency-Key" in names:
        own = answers.get("409", {}).get("description", "")
        answers["409"] = {"description": f"{USED} {own}".rstrip()}
    if "requestBody" in operation:
        answers["413"] = {"description": TOO_LARGE}
    answers["429"] = {"description": TOO_MANY, "headers": AGAIN}
    answers["503"] = {"description": AWAY, "headers": AGAIN}
    schema = {"$ref": f"#/components/schemas/{ProblemDetails.__name__}"}
    for code, answer in answers.items():
        if not code.startswith("2"):
            answer["content"] = {PROBLEM_JSON: {"schema": schema}}
            if code in EXAMPLES:
                answer["content"][PROBLEM_JSON]["example"] = EXAMPLES[code]
