"""The payload's format as one JSON document, for readers written by others.

``python -m tagger.code.published > tagger/code/format.json`` writes it anew from the data that this
program reads with; README.md beside this file says what its keys mean.
"""

from __future__ import annotations

import json
from typing import Any

from tagger.code import number, payload, signature
from tagger.connection import code_points
from tagger.spec import dash_of_pipe, pipe_of_dash

ABOUT = "What a tag's digits say. See README.md in tagger/code. Generated: change the data, not this file."


def published() -> dict[str, Any]:
    """Layouts, rules and code points, as plain JSON values."""
    points: dict[str, dict[str, str]] = {}
    for row in code_points():
        points.setdefault(row["table"], {})[row["point"]] = row["name"]
    families = {row["name"]: row for row in code_points() if row["table"] == "connection"}
    return {
        "about": ABOUT,
        "number": {"alphabet": number.ALPHABET, "length": number.LENGTH, "check": "ISO/IEC 7064 MOD 33,32"},
        "check": {"name": "CRC-16/XMODEM", "bits": 16, "polynomial": 0x1021, "start": 0},
        "seal": {
            "key_id_bits": 8,
            "signature_bits": 512,
            "algorithm": "Ed25519 (RFC 8032)",
            "signed_text": signature.SIGNED_TEXT,
        },
        "version_bits": 4,
        "layouts": {str(v): payload.layout_as_written(v)["fields"] for v in payload.VERSIONS},
        "content": {str(v): payload.content_as_written(v)["rules"] for v in payload.VERSIONS},
        "points": points,
        "sized_by": {name: row["sized_by"] for name, row in families.items()},
        "joint": {name: row["joint"] for name, row in families.items()},
        "sizes": {
            "dash": "number",
            "tube": "text",
            "pipe": {str(dash_of_pipe(pipe_of_dash(dash))): pipe_of_dash(dash) for dash in range(1, 64)},
            "thread": "points",
            "named": "points",
        },
    }


if __name__ == "__main__":
    print(json.dumps(published(), indent=1, ensure_ascii=False))
