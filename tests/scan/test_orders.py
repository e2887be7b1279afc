"""Order requests as a stranger sends them: what is refused, and in which words."""

from __future__ import annotations

import pytest
from fastapi.testclient import TestClient

from tests.scan.test_pages import text


@pytest.mark.parametrize("spec", ["[" * 100_000, '{"length_mm": 1, "length_mm": 2}', "{hose: 1}"])
def test_a_spec_that_is_none_is_refused(client: TestClient, spec: str) -> None:
    answer = client.post("/order", data={"spec": spec, "phone": "1"}, follow_redirects=False)
    assert answer.status_code == 422
    assert "cannot be read" in text(answer.text)
