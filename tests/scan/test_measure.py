"""Measuring by a photo: from the photo to the readings, what is refused, and what is never taken by itself."""

from __future__ import annotations

import base64
import html
import re
from typing import Any
from urllib.parse import parse_qsl, urlsplit

from fastapi.testclient import TestClient

from tagger.units import read_length_mm
from tests.measuring import rendered
from tests.measuring.rendered import Scene
from tests.scan.conftest import text

SCENE = Scene(length=20.0)
ROUGH = {
    "edge_1": "86,2",
    "edge_2": "115.4",
    "crest_1": "41",
    "crest_2": "58",
}  # a comma is a decimal sign too


def _fields(page: str) -> dict[str, str]:
    """The form of the page with the lines, as it was sent."""
    form = page[page.index("data-measure-form") :]
    return dict(re.findall(r'<input[^>]*name="(\w+)"[^>]*value="([^"]*)"', form))


def test_a_photo_becomes_readings_that_lead_to_identify(client: TestClient) -> None:
    first = client.get("/measure")
    assert first.status_code == 200 and 'href="/measure/card-a4.pdf"' in first.text
    assert client.get("/measure/card-letter.pdf").content.startswith(b"%PDF")
    sent = {"photo": ("x.jpg", rendered.take(SCENE))}
    page = client.post("/measure", files=sent, data={"check": "100"}, headers={"Accept-Language": "en"})
    assert page.status_code == 200 and page.headers["Cache-Control"] == "no-store"
    strip = base64.b64decode(re.findall(r"base64,([\w+/=]+)", page.text)[0])
    fields = _fields(page.text) | ROUGH
    del fields["confirmed"]
    assert fields["check"] == "100" and fields["told"] == "1" and "threads" not in fields

    def read(**more: str) -> Any:
        return client.get("/measure/reading", params=fields | more)

    uncounted = read()
    assert uncounted.status_code == 422 and "pitches between lines 3 and 4 are not counted" in uncounted.text
    found = client.post("/measure/find", files={"photo": ("strip.jpg", strip)}, data=fields).json()
    assert set(found) == {"edge_1", "edge_2", "crest_1", "crest_2", "tilt", "threads"}
    lines = {name: str(value) for name, value in found.items()} | {"found": "1"}
    waiting = read(**lines)
    assert waiting.status_code == 200 and "Check the lines in the picture first" in text(waiting.text)
    assert 'href="/identify?form' not in waiting.text
    confirmed = read(**lines, confirmed="1")
    [href] = re.findall(r'href="(/identify\?form=male[^"]+)"', confirmed.text)
    asked = dict(parse_qsl(urlsplit(html.unescape(href)).query))
    diameter, band = (read_length_mm(part) for part in asked["diameter"].split("±"))
    pitch, pitch_band = (read_length_mm(part) for part in asked["pitch"].split("±"))
    assert abs(diameter - SCENE.diameter) < 0.2 and abs(pitch - SCENE.pitch) < 0.04
    assert f"{diameter:.2f} mm ± {band:.2f} mm" in asked["diameter"] and 0 < pitch_band < 0.1, "with its band"
    assert f"± {band:g} mm" in text(confirmed.text), "as it is shown"
    answered = client.get("/identify", params=asked)
    assert answered.status_code == 200 and f'value="{asked["diameter"]}"' in answered.text
    part = read(**lines, part="1").text
    assert "<html" not in part and "Outside diameter" in part

    for slip, said in (
        ({"distance": "25"}, "does not go with the photo"),
        ({"distance": "10 in", "check": ""}, "check line was not measured"),
        ({"check": "90"}, "Print the card at 100 %"),
        ({"edge_1": "zwölf"}, "is not a number"),
        ({"edge_1": "nan"}, "is not a number"),
        ({"z": "1e9"}, "is not a number"),
        ({"z": "-5"}, "no place"),
        ({"threads": "7.5"}, "no pitch of a thread"),
        ({"threads": "40"}, "no pitch of a thread"),
        ({"rest": "900"}, "cannot be as wide"),
        ({"rest": "1 1/4"}, "1 1/4"),
        ({"z_sd": "80"}, "do not tell threads apart"),
    ):
        answer = read(**(lines | {"confirmed": "1"} | slip))
        assert answer.status_code in (200, 422) and said in text(answer.text), slip
        assert ("/identify?form" in answer.text) == ("distance" in slip and slip["distance"] == "10 in"), slip


def test_what_is_no_photo_of_a_card_is_refused_with_what_to_do(client: TestClient) -> None:
    for sent, said in (
        (b"no picture", "not"),
        (b"", "No photo was chosen"),
        (b"\xff" * 15_000_001, "too large"),
    ):
        answer = client.post("/measure", files={"photo": ("x.jpg", sent)}, data={"check": "99"})
        assert answer.status_code == 422 and said in text(answer.text)
        assert 'role="alert"' in answer.text and 'value="99"' in answer.text  # what was typed stays
    assert client.post("/measure", data={"photo": "text"}).status_code == 422
    elsewhere = client.post(
        "/measure", files={"photo": ("x.jpg", b"x")}, headers={"Sec-Fetch-Site": "cross-site"}
    )
    assert elsewhere.status_code == 403
    broken = client.post("/measure/find", files={"photo": ("x.jpg", b"x")}, data=ROUGH | {"tilt": "0"})
    assert broken.status_code == 422 and broken.json()["problems"][0]["text"]
    for far_off in ("250", "9000"):  # a camera that may as well have lain on the table, or below it
        look = {"x": "60", "y": "100", "z": "250", "z_sd": far_off, "residual": "0.1", "threads": "10"}
        answer = client.get("/measure/reading", params=ROUGH | look | {"tilt": "0"})
        assert answer.status_code == 422, far_off
    assert client.get("/measure/reading", params=ROUGH | look | {"tilt": "0", "z_sd": "5"}).status_code == 200
