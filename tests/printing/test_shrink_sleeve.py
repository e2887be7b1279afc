"""Printed flat, shrunk round the hose: what reads there, held against pictures made apart from the program's own."""

from __future__ import annotations

import math
from pathlib import Path

import cv2
import numpy as np
import pytest

from tagger.errors import TemplateError
from tagger.i18n import LANGUAGES, Translator
from tagger.printing import raster, template
from tagger.printing.boxes import Placed
from tagger.printing.content import Tag
from tagger.printing.kinds import Kinds
from tagger.printing.layout import lay_out
from tagger.printing.preflight import Finding, Preflight, preflight
from tagger.printing.readers import grey, qr_readers
from tagger.printing.template import Template
from tagger.spec import AssemblySpec
from tagger.trade import assess
from tests.printing.conftest import STRAIGHT, a_tag
from tests.printing.test_preflight import own
from tests.speed import damage, wounds
from tests.speed.seen import bars, seen
from tests.volume import volume

LABEL = template.load("shrink_sleeve")
SERVED = (30, 49)  # outside diameters of hoses in mm, as the README and the titles say
FINE = 36  # from here on a module is 0.35 mm on the hose too
READERS = qr_readers(frames=1)
PER_MM = 24.0
OWN = """
title = "Ours"
size = [60, {high}]
sleeve = {{ round_hose = "down", supplied_mm = {supplied}, recovered_mm = {recovered}, source = "our sleeve's data sheet" }}
[[box]]
kind = "qr"
at = [0.5, 0.5]
size = [36, 36]
"""


def found(result: Preflight, code: str) -> Finding | None:
    return next((one for one in result.findings if one.code == code), None)


def refusals(result: Preflight) -> list[str]:
    return [one.message.id for one in result.findings if one.severity == "refuse"]


def on_the_hose(tag: Tag, label: Template, placed: Placed, od: float) -> np.ndarray:
    """The label's dots squeezed and laid round a hose, its surface as ``damage.from_side`` takes it, with one code."""
    dots = grey(raster.draw(lay_out(tag, label, 203).drawing, 203))
    assert label.sleeve is not None
    dot, side = 25.4 / 203, placed.symbol.full_size * placed.module_mm
    quiet = placed.symbol.quiet * placed.module_mm
    left = round((placed.x - quiet) / dot)
    strip = np.rot90(dots[:, left : left + round(side / dot)])  # along the hose upward, round it across
    size = round(strip.shape[1] * dot * od / label.sleeve.supplied_mm * PER_MM), round(side * PER_MM)
    squeezed = cv2.resize(strip, size, interpolation=cv2.INTER_AREA)
    surface = np.full((size[1] + 200, round(math.pi * od * PER_MM)), 255, np.uint8)
    surface[100 : 100 + size[1], : size[0]] = squeezed
    return (surface / 255.0 * (damage.PAPER - damage.INK) + damage.INK).astype(np.uint8)


def who_reads(tag: Tag, label: Template, placed: Placed, od: float) -> set[str]:
    """The readers that read a code of the label on the hose, seen from straight above the code."""
    assert label.sleeve is not None
    middle = placed.y + placed.symbol.size * placed.module_mm / 2
    turn = middle / (label.sleeve.supplied_mm / 2)  # the same before and after: all of the turn shrinks alike
    seen = damage.from_side(on_the_hose(tag, label, placed, od), od, turn, np.random.default_rng(7))
    return {name for name, read in READERS.items() if placed.symbol.text in read(seen)}


def test_both_codes_read_by_two_of_three_on_every_hose_that_the_label_serves() -> None:
    tag = a_tag()
    codes = [placed for placed in lay_out(tag, LABEL, 203).symbols if placed.symbol.kind == "qr"]
    for od in np.linspace(*SERVED, volume(3, 20)):
        assert [len(who_reads(tag, LABEL, placed, float(od))) >= 2 for placed in codes] == [True, True], od


def test_faded_on_the_thinnest_hose_the_bars_along_it_are_still_read_by_both_readers_of_bars() -> None:
    """Squeezed to three fifths, with a quarter of the contrast, the codes are read by one reader of three alone."""
    tag = a_tag()
    label = seen(tag, LABEL, 203)
    for trial in range(volume(1, 8)):
        chance = np.random.default_rng(trial)
        pictures = label.photos(wounds.faded(label.whole, chance), chance)
        assert set().union(*map(bars, pictures)) == {tag.number}


def test_preflight_passes_the_hoses_that_the_readme_names_and_refuses_those_it_cannot_hold_on() -> None:
    tag = a_tag()
    for od in map(float, SERVED):
        result = preflight(tag, LABEL, hose_od_mm=od)
        assert result.ok and found(result, "curvature") is None and found(result, "text") is None, od
        small = found(result, "module")
        assert (small is None) is (od >= FINE), od
        if small is not None:
            squeezed, said = result.module_mm * od / 50.8, small.message.values["module"]
            assert isinstance(said, float) and said == round(said, 3)
            assert squeezed - 0.001 < said <= squeezed, "in thousandths, and never more than it is"
    told = found(result, "sleeve")
    assert told is not None and told.severity == "warn", "printed on another sleeve than it is judged for"
    assert (
        "shrinks to 96 %" in told.text and "not data of a sleeve" in told.text and "your sleeve" in told.mend
    )
    for od, says in ((25.4, "stays loose"), (50.8, "does not go over")):
        result = preflight(tag, LABEL, hose_od_mm=od)
        assert refusals(result) == ["printing-flight-shrink-fit"]
        refused = found(result, "sleeve")
        assert refused is not None and says in refused.text
    assert refusals(preflight(tag, LABEL)) == ["printing-flight-shrink-unknown"]


def test_a_code_too_wide_for_the_sleeve_is_refused_and_does_not_read_in_pictures_either(
    tmp_path: Path,
) -> None:
    """30.7 mm on a sleeve of 32 mm is nearly a third of the way round it, on every hose."""
    tag = a_tag()
    label = own(tmp_path, OWN.format(high=48, supplied=32, recovered=16))
    [placed] = lay_out(tag, label, 203).symbols
    for od in (24.0,):
        result = preflight(tag, label, hose_od_mm=od)
        assert refusals(result) == ["printing-flight-shrink-unread"]
        assert len(who_reads(tag, label, placed, od)) < 2


def test_a_shop_makes_one_template_a_sleeve_by_its_two_diameters(tmp_path: Path) -> None:
    text = (
        'base = "shrink_sleeve"\ntitle = "Ours"\n[sleeve]\nround_hose = "down"\n'
        'supplied_mm = "2 1/4 in"\nrecovered_mm = 19\nsource = "data sheet, page 2"\n'
    )
    label = own(tmp_path, text)
    assert label.box == LABEL.box and label.sleeve is not None and label.sleeve.supplied_mm == 57.15
    result = preflight(a_tag(), label, hose_od_mm=52)
    told = found(result, "sleeve")
    assert (
        result.ok
        and told is not None
        and told.severity == "note"
        and "source: data sheet, page 2" in told.text
    )
    assert refusals(preflight(a_tag(), label, hose_od_mm=19)) == ["printing-flight-shrink-fit"]
    assert (
        own(tmp_path, text.replace('"2 1/4 in"', "48.4")).size == LABEL.size
    )  # the thinnest that the README names
    with pytest.raises(TemplateError, match=r"mine\.toml: size: A sleeve of 48.3 mm lies 75.8 mm wide"):
        own(tmp_path, text.replace('"2 1/4 in"', "48.3"))


def test_a_label_may_go_round_the_hose_with_its_width_too(tmp_path: Path) -> None:
    text = OWN.format(high=48, supplied=64, recovered=30).replace('"down"', '"across"')
    assert preflight(a_tag(), own(tmp_path, text), hose_od_mm=40).ok
    narrow = text.replace("supplied_mm = 64", "supplied_mm = 39")
    assert refusals(preflight(a_tag(), own(tmp_path, narrow), hose_od_mm=36)) == [
        "printing-flight-shrink-unread"
    ]


def test_text_is_judged_as_high_as_it_is_on_the_hose(tmp_path: Path) -> None:
    text = OWN.format(high=48, supplied=50.8, recovered=25.4)
    text += '[[box]]\nkind = "text"\nfields = ["number"]\nat = [37, 1]\nsize = [22, 5]\ntext = 2.4\n'
    small = found(preflight(a_tag(), own(tmp_path, text), hose_od_mm=30), "text")
    assert small is not None and "1.4 mm" in small.text


def test_a_run_is_judged_on_its_thickest_hose_too() -> None:
    """The sleeve of a run must go over all of its hoses: 37.2 mm it does, 66.7 mm it does not."""
    kinds, tags = Kinds(), []
    for dash in (16, 32):
        ends = {
            f"end_{e}": {"connection": "sae_37_flare", "dash": dash, "form": "female_swivel"} for e in "ab"
        }
        spec = {**STRAIGHT, **ends, "hose": {"standard": "SAE 100R2", "dash": dash}}
        tags.append(a_tag(spec, assessment=assess(AssemblySpec.read(spec))))
        kinds.add(tags[-1], lay_out(tags[-1], LABEL))
    judged = [preflight(tag, LABEL).ok for tag in kinds.worst(bends=LABEL.bends)]
    assert sorted(judged) == [False, True]


@pytest.mark.parametrize(
    ("change", "key", "says"),
    [
        (("recovered_mm = 25.4", "recovered_mm = 51"), "sleeve, recovered_mm", "smaller recovered than the 50.8 mm"),
        (("size = [60, 48]", "size = [60, 80]"), "size", "lies 79.7 mm wide when flat"),
        (("size = [60, 48]", 'size = [60, 48]\nwraps = "down"'), "wraps", "cannot have this key"),
        (("size = [60, 48]", 'size = [60, 48]\non_hose = "always"'), "on_hose", "cannot have this key"),
        (('source = "our sleeve\'s data sheet"', 'source = ""'), "sleeve.source", ""),
        ((', source = "our sleeve\'s data sheet"', ""), "sleeve.source", "value is missing"),
        (("supplied_mm = 50.8", "supplied_mm = -3"), "sleeve.supplied_mm", "minimum"),
        (('kind = "qr"', 'kind = "clocking_drawing"'), "box 1 (clocking_drawing)", "angles and shapes would be wrong"),
        (('kind = "qr"', 'kind = "end"\nend = "a"'), "box 1 (end)", "angles and shapes would be wrong"),
        (('round_hose = "down"', 'round_hose = "along"'), "sleeve.round_hose", "down"),
        (('kind = "qr"', 'kind = "code128"\nturn = 90'), "box 1 (code128), turn", "bars would be squeezed"),
    ],
)  # fmt: skip
def test_what_a_sleeve_cannot_carry_is_refused_with_file_key_and_mend(
    tmp_path: Path, change: tuple[str, str], key: str, says: str
) -> None:
    text = OWN.format(high=48, supplied=50.8, recovered=25.4)
    assert change[0] in text
    with pytest.raises(TemplateError) as caught:
        own(tmp_path, text.replace(*change, 1))
    told = {one.field: one for one in caught.value.problems}
    assert f"mine.toml: {key}" in told
    assert says in str(caught.value) and told[f"mine.toml: {key}"].mend


def test_the_readme_and_the_titles_name_the_hoses_it_serves() -> None:
    readme = (Path(template.__file__).parents[2] / "label_templates" / "README.md").read_text(
        encoding="utf-8"
    )
    assert f"hoses of {SERVED[0]} to {SERVED[1]} mm" in readme.split("`shrink_sleeve` |")[1].split("\n")[0]
    assert f"modules of 0.35 mm from {FINE} mm on" in readme
    for language in LANGUAGES:
        assert {str(od) for od in SERVED} <= set(Translator(language)(LABEL.named).split())
