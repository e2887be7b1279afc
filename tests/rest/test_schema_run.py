"""What a stranger's program makes up from the description alone finds no server error and no answer that it does not tell of."""

from __future__ import annotations

from pathlib import Path

import httpx

from tests.rest.schema_run import run
from tests.volume import volume

EVERY_DAY = (("--phases", "fuzzing", "--max-examples", "3"),)
PROVED = (
    ("--phases", "examples,coverage", "--max-examples", "1"),  # every limit of every field, from both sides
    ("--phases", "fuzzing,stateful", "--max-examples", "200"),
)


def test_requests_made_up_from_the_description_meet_no_error_and_no_untold_answer(
    api: httpx.Client, tmp_path: Path
) -> None:
    described = api.get("/openapi.json").json()["paths"]
    cases = 0
    for place, options in enumerate(volume(EVERY_DAY, PROVED)):
        folder = tmp_path / str(place)
        folder.mkdir()
        done = run(folder, *options, filled=volume(False, True))
        assert done.right, done.output[-6000:]
        assert done.operations == sum(len(verbs) for verbs in described.values())
        cases += done.cases
    assert cases >= volume(300, 20_000)
