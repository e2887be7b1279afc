"""One example for every operation, put into the description of the API.

examples.json holds them by method and path: what is sent (``sends``), what is answered
(``answers``), and the media types where they are not JSON.
"""

from __future__ import annotations

import json
from importlib import resources
from typing import Any

JSON = "application/json"
PRINTS, JOB = (
    "POST /prints",
    "GET /print-jobs/{job}",
)  # the first answers with the second, where a printer is named
EXAMPLES: dict[str, dict[str, Any]] = json.loads(
    resources.files("api.rest").joinpath("examples.json").read_text(encoding="utf-8")
)


def put_into(name: str, operation: dict[str, Any]) -> None:
    """Gives an operation of the description its example, where there is one. ``name``: "GET /hoses"."""
    example = EXAMPLES.get(name)
    if example is None:
        return
    answer = next(answer for code, answer in operation["responses"].items() if code.startswith("2"))
    _of_media(answer, example.get("answers_as", JSON))["example"] = example["answers"]
    if name == PRINTS:
        _of_media(operation["responses"]["202"], JSON)["example"] = EXAMPLES[JOB]["answers"]
    if "sends" in example:
        _of_media(operation["requestBody"], example.get("sends_as", JSON))["example"] = example["sends"]


def _of_media(part: dict[str, Any], media: str) -> dict[str, Any]:
    found: dict[str, Any] = part.setdefault("content", {}).setdefault(media, {})
    return found
