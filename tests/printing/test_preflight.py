"""Will it scan? Preflight says so before ink is spent, and names the mend."""

import dataclasses
from pathlib import Path

import numpy as np
import pytest

from tagger.code import link, payload
from tagger.errors import TemplateError
from tagger.i18n import Translator
from tagger.printing import curvature, template
from tagger.printing import preflight as flight
from tagger.printing.content import Tag
from tagger.printing.layout import lay_out
from tagger.printing.preflight import preflight

FOR = {"flag_label": 20, "thin_wrap": 25}  # a hose that the template is for, mm
KEYS = {"ok", "module_mm", "dots_per_module", "version", "level", "payload_bytes", "findings"}


def codes(result, severity):
    return [finding.code for finding in result.findings if finding.severity == severity]


@pytest.mark.parametrize("name", template.names())
def test_every_shipped_template_is_green_at_203_dpi(name, tag):
    result = preflight(tag, template.load(name), hose_od_mm=FOR.get(name, 45))
    assert result.ok
    assert result.grade in "AB"
    assert result.dots_per_module >= 3
    assert codes(result, "refuse") == []


def test_the_answer_has_the_agreed_keys(tag):
    answer = preflight(tag, template.load("hang_tag")).as_dict()
    assert set(answer) >= KEYS
    assert answer["level"] == "H"
    assert answer["payload_bytes"] <= 40
    assert all(set(one) == {"severity", "code", "id", "values", "text", "mend"} for one in answer["findings"])


@pytest.mark.parametrize("od", [15, 20, 25])
def test_a_thin_hose_refuses_a_wrap_label_and_names_the_mend(make_tag, od):
    result = preflight(make_tag(), template.load("wrap_label"), hose_od_mm=od)
    assert not result.ok
    (finding,) = [one for one in result.findings if one.code == "curvature"]
    assert "flag label or a hang tag" in finding.mend
    assert finding.message.id == "printing-flight-wrap-thin"
    assert "hoses from 39 mm" in finding.mend
    assert "curvature" in str(flight.refused(result, "wrap_label"))


def test_the_widest_code_that_a_thin_hose_takes_is_said_in_tenths_and_never_too_wide(make_tag):
    for od in (15.26, 20, 25):
        result = preflight(make_tag(), template.load("wrap_label"), hose_od_mm=od)
        (values,) = [one.message.values for one in result.findings if one.code == "curvature"]
        placed = [
            one
            for one in lay_out(make_tag(), template.load("wrap_label"), dpi=203).symbols
            if one.symbol.kind == "qr"
        ]
        symbol = min(placed, key=lambda one: one.symbol.size * one.module_mm).symbol
        widest = curvature.widest_mm(symbol.version, symbol.level, od)
        assert values["od"] == round(od, 1)
        assert widest - 0.1 < values["widest"] <= widest
        assert values["widest"] < values["side"]


@pytest.mark.parametrize(("od", "severity"), [(33, "refuse"), (40, "warn"), (50, "warn"), (80, "refuse")])
def test_a_wrap_label_says_whether_a_code_reads_from_every_side(make_tag, od, severity):
    result = preflight(make_tag(), template.load("wrap_label"), hose_od_mm=od)
    (finding,) = [one for one in result.findings if one.code == "facing"]
    assert finding.severity == severity
    assert result.ok is (severity == "warn")
    assert ("quarter turn" in finding.mend) is (severity == "warn")


def test_a_label_whose_codes_read_from_every_side_says_so_with_the_diameter_in_tenths(tmp_path, make_tag):
    """Two columns of small codes half a pitch apart, all the way round a thick hose."""
    column = (
        '[[box]]\nkind = "qr"\nholds = "number"\nlevels = ["M"]\nleast_module = 0.33\nsize = [14.1, 296.1]\n'
        'repeat = "down"\n'
    )
    columns = "".join(f"{column}at = {at}\n" for at in ([0.1, 0], [14.2, 7.05]))
    label = own(tmp_path, f'title = "Round"\nsize = [30, 314]\nwraps = "down"\n{columns}')
    (finding,) = [
        one for one in preflight(make_tag(), label, hose_od_mm=99.44).findings if one.code == "facing"
    ]
    assert (finding.severity, finding.message.values) == ("note", {"od": 99.4})


def test_figures_are_told_with_their_decimals(make_tag):
    result = preflight(make_tag(), template.load("hang_tag"))
    told = result.as_dict()
    assert told["side_mm"] == round(result.side_mm, 1) != round(result.side_mm)
    assert told["module_mm"] == round(result.module_mm, 3) != round(result.module_mm, 2)


def test_a_wrap_label_without_a_diameter_warns(make_tag):
    assert codes(preflight(make_tag(), template.load("wrap_label")), "warn") == ["curvature"]


def test_the_diameter_comes_from_the_assessment(make_tag):
    from tagger.trade import assess

    tag = make_tag()
    tag = dataclasses.replace(tag, assessment=assess(tag.spec))
    found = [one for one in preflight(tag, template.load("wrap_label")).findings if one.code == "curvature"]
    assert f"{tag.assessment.hose_od_mm:.1f} mm" in found[0].text


def own(tmp_path: Path, text: str) -> template.Template:
    file = tmp_path / "mine.toml"
    file.write_text(text, encoding="utf-8")
    return template.load(file)


def test_small_modules_and_low_levels_warn(tmp_path, make_tag):
    small = own(
        tmp_path,
        'title = "Small"\nsize = [40, 40]\n[[box]]\nkind = "qr"\nat = [1, 1]\nsize = [15.5, 15.5]\nleast_module = 0.3',
    )
    result = preflight(make_tag(), small, dpi=300)
    assert {"module", "level"} <= set(codes(result, "warn"))


def test_a_symbol_at_the_very_edge_has_no_quiet_zone(tmp_path, make_tag):
    """The quiet zone is looked at in the dots, whoever put something there."""
    label = own(
        tmp_path, 'title = "Edge"\nsize = [40, 40]\n[[box]]\nkind = "qr"\nat = [0, 0]\nsize = [30.55, 30.55]'
    )
    assert preflight(make_tag(), label).ok
    page = flight.lay_out(make_tag(), label)
    dots = flight.grey(flight.raster.draw(page.drawing, 203)).copy()
    assert flight._quiet_zones(page, dots) == []
    [placed] = page.symbols
    assert placed.symbol.quiet * placed.dots == round(placed.x / flight.dot_mm(203)), (
        "the zone ends with the label"
    )
    last = placed.symbol.full_size * placed.dots - 1
    for row, column in ((8, 100), (100, 0), (0, 100), (100, last), (last, 100), (last, last)):
        touched = dots.copy()
        touched[row, column] = 0
        (finding,) = flight._quiet_zones(page, touched)
        assert finding.severity == "refuse"
        assert "quiet zone" in finding.text
    assert np.array_equal(flight._cut(placed, dots, 203), dots[: last + 1, : last + 1])
    beside = dots.copy()
    beside[100, last + 1] = beside[last + 1, 100] = 0
    assert flight._quiet_zones(page, beside) == []
    assert flight._quiet_zones(page, dots[:, :last]) != [], "the label ends within it"


def test_a_label_without_a_code_is_refused(tmp_path, make_tag):
    label = own(
        tmp_path,
        'title = "None"\nsize = [40, 40]\n[[box]]\nkind = "text"\nfields = ["number"]\nat = [1, 1]\nsize = [30, 5]',
    )
    with pytest.raises(TemplateError, match="has no QR code"):
        preflight(make_tag(), label)


def test_a_finding_is_said_in_the_readers_language(make_tag):
    result = preflight(make_tag(), template.load("wrap_label"), hose_od_mm=20)
    said = {one["code"]: one for one in result.as_dict(Translator("de"))["findings"]}
    assert said["curvature"]["severity"] == "refuse"
    assert "Um einen Schlauch von 20 mm" in said["curvature"]["text"]
    assert "Schläuche ab 39 mm" in said["curvature"]["mend"]
    assert said["curvature"]["values"]["thinnest"] == 39


def test_a_repeated_code_that_differs_in_its_dots_is_read_by_itself(make_tag):
    page = flight.lay_out(make_tag(), template.load("thin_wrap"))
    codes = [placed for placed in page.symbols if placed.symbol.kind == "qr"]
    dots = flight.grey(flight.raster.draw(page.drawing, 203)).copy()
    letter, found = flight._read(codes, dots, 203)
    assert (letter, {one.severity for one in found}) == ("A", {"note"})
    third = codes[2]
    left, top = (round(at / flight.dot_mm(203)) for at in (third.x, third.y))
    dots[top : top + 40, left : left + 87] = 255
    _, found = flight._read(codes, dots, 203)
    refusals = {one.message.id: one.message.values for one in found if one.severity == "refuse"}
    assert refusals["printing-flight-codes"] == {"read": 1, "count": 2}, (
        "one of two that are not alike, dot by dot"
    )
    assert "printing-flight-readers" in refusals


def test_a_reader_that_gets_lost_on_the_label_is_given_each_code_by_itself_before_it_is_named():
    """OpenCV found no code on this label and read one of its two alone: the builder was told to make the box larger."""
    address = (
        "https://tags.example-hose-shop.com/T/6MVW1F8PFRK/"
        "1095067108597602832277027875770208385697784786914098764215270528164866232628673756563"
    )
    found = link.parse(address)
    tag = Tag(found.number, address.upper(), payload.decode(found.digits))
    result = preflight(tag, template.load("hang_tag"))
    assert result.ok and codes(result, "warn") == []
