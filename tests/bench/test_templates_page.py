"""Every label template at true size: what it holds, and what was measured of that very layout."""

from __future__ import annotations

import html
import io
import re
from pathlib import Path

import pytest
from PIL import Image, ImageStat

from api.settings import Settings
from tagger.printing import survival, template
from tests.bench.served import Bench

OWN = 'title = "Our own"\nsize = [60, 40]\n[[box]]\nkind = "qr"\nat = [1, 1]\nsize = [8, 8]\n'


@pytest.fixture
def settings(settings: Settings, tmp_path: Path) -> Settings:
    (tmp_path / "moved.toml").write_text('base = "sleeve_tag"\ntitle = "Ours"\nsize = [200, 34]\n')
    (tmp_path / "tight.toml").write_text(OWN)
    return settings.model_copy(update={"label_template_dirs": (tmp_path,)})


def _section(page: str, name: str) -> str:
    return html.unescape(page.split(f'id="t-{name}"')[1].split("</section>")[0])


def test_every_template_is_shown_in_its_size_with_what_it_holds_and_survives(bench: Bench) -> None:
    page = bench.get("/bench/templates?label=de").text
    assert '<svg width="100mm"' in page, "a line to hold a ruler to"
    for name in template.names():
        one, said = template.load(name), _section(page, name)
        width, height = re.findall(r'width="([\d.]+)mm" height="([\d.]+)mm"', said)[0]
        assert (float(width), float(height)) == one.size, name
        found = survival.measured(one)
        assert ("Not measured on this layout" in said) is (found is None and not one.traveller), name
        if found and not one.traveller:
            assert f"{found.shares['all']:g} %" in said and found.measured_on.isoformat() in said
        assert ("QR code with the whole specification" in said) is any(
            box.kind == "qr" and box.holds != "number" for box in one.box
        )
    assert "Reason" in _section(page, "do_not_use") and "a sign: do not use" in _section(page, "do_not_use")
    assert "Not measured on this layout" in _section(page, "moved"), "another layout is not what was measured"
    tight = _section(page, "tight")
    assert "tight.toml: box" in tight and "<image" not in tight, "what does not fit is said, not drawn"

    picture = bench.get("/bench/templates/hang_tag.png?label=de")
    dots = Image.open(io.BytesIO(picture.content))
    assert picture.headers["content-type"] == "image/png"
    assert dots.size == (round(100 / 25.4 * 203), round(60 / 25.4 * 203))
    assert round(dots.info["dpi"][0]) == 203
    other = bench.get("/bench/templates/hang_tag.png?label=fr").content
    assert other != picture.content
    cut = Image.open(io.BytesIO(bench.get("/bench/templates/metal_plate.png").content)).convert("L")
    assert cut.size == (round(101.6 / 25.4 * 203), round(50.8 / 25.4 * 203))
    letter = ImageStat.Stat(cut.crop((10, 95, 55, 140)))  # the A of its end, black on a printed label
    assert letter.mean[0] > 150 and letter.extrema[0][0] < 100, "a tool fills nothing"
    assert bench.get("/bench/templates/..%2Fhang_tag.png").status_code == 404
    assert bench.get("/bench/templates/nothing.png").status_code == 404


def test_the_digest_follows_every_symbol_and_the_size() -> None:
    hang = template.load("hang_tag")
    assert survival.digest(hang) == survival.digest(template.load("sheet_a4")), "the same label on a sheet"
    first = hang.box[0].model_copy(update={"at": (70.1, 0.2)})
    for changed in (
        {"size": (101, 60)},
        {"box": (first, *hang.box[1:])},
        {"box": tuple(box for box in hang.box if box.kind != "code128")},
    ):
        assert survival.digest(hang.model_copy(update=changed)) != survival.digest(hang)
    shrunk = template.load("shrink_sleeve")
    assert shrunk.sleeve is not None
    other = shrunk.sleeve.model_copy(update={"supplied_mm": 57.0})
    assert survival.digest(shrunk.model_copy(update={"sleeve": other})) != survival.digest(shrunk)
    words = tuple(b for b in hang.box if b.kind != "caution")
    assert survival.digest(hang.model_copy(update={"box": words})) == survival.digest(hang)
