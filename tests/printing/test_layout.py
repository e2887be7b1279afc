"""What stands on a label, and where."""

import json
import re
from dataclasses import replace
from datetime import date
from itertools import pairwise, permutations
from pathlib import Path

import numpy as np
import pytest

from tagger import phrases, rated
from tagger.drawing import Grid, Line, Text
from tagger.i18n import LANGUAGES, Translator
from tagger.messages import Message, angle, torque
from tagger.printing import raster, template
from tagger.printing.fonts import text_width
from tagger.printing.layout import lay_out
from tagger.printing.sizing import dot_mm, qr_size
from tagger.printing.textfit import fit
from tagger.printing.words import voices
from tagger.settings import ShopSettings
from tagger.spec import AssemblySpec, Danger, Tightening
from tagger.trade import assess
from tests.printing.conftest import LONGEST, RATED, STRAIGHT, a_tag

WEEK = Path(__file__).parents[2] / "examples" / "week"
README = (Path(__file__).parents[2] / "label_templates" / "README.md").read_text(encoding="utf-8")
CAPITALS = 0.729  # of the em
TWO_SYMBOLS = (
    "hang_tag",
    "hang_tag_two",
    "sheet_a4",
    "sheet_letter",
    "roll_4x6",
    "roll_continuous",
    "flag_label",
    "sleeve_tag",
    "shrink_sleeve",
    "do_not_use",
)
SMALL_SYMBOLS = {"end_tag_a": 1, "end_tag_b": 1, "sleeve_tag": 2, "traveller_stub": 1}
"""Beside those with the specification: codes with the number's link alone."""


def texts(page):
    return [item.text for item in page.drawing.items if isinstance(item, Text)]


def codes(page):
    return [placed for placed in page.symbols if placed.symbol.kind == "qr"]


@pytest.mark.parametrize("dpi", [203, 300, 600])
@pytest.mark.parametrize("name", template.names())
def test_modules_and_bars_are_whole_dots(name, dpi, tag):
    label = template.load(name)
    page = lay_out(tag, label, dpi)
    for placed in page.symbols:
        for length in (placed.x, placed.y, placed.module_mm):
            assert length / dot_mm(dpi) == pytest.approx(round(length / dot_mm(dpi)), abs=1e-6)
    for placed in codes(page):
        assert placed.dots >= 3
        small = (
            label.box[placed.box].holds == "number"
        )  # the code round thin hoses: label_templates/README.md
        assert placed.module_mm >= (0.338 if small else 0.368)


@pytest.mark.parametrize("name", TWO_SYMBOLS)
def test_two_symbols_of_a_label_are_one_symbol_drawn_twice(name, tag):
    for dpi in (203, 300, 600):
        first, second = codes(lay_out(tag, template.load(name), dpi))[:: 3 if name == "sleeve_tag" else 1]
        assert np.array_equal(first.symbol.modules, second.symbol.modules)


@pytest.mark.parametrize("name", template.names())
def test_every_module_is_printed_as_its_symbol_has_it(name, tag):
    """The dots of the whole label, read back module by module."""
    page = lay_out(tag, template.load(name))
    dots = np.asarray(raster.draw(page.drawing, 203).convert("L")) < 128
    for placed in codes(page):
        size, step = placed.symbol.size, placed.dots
        left, top = round(placed.x / dot_mm(203)), round(placed.y / dot_mm(203))
        seen = dots[top : top + size * step, left : left + size * step].reshape(size, step, size, step)
        assert np.array_equal(seen.all(axis=(1, 3)), seen.any(axis=(1, 3)))
        modules = np.rot90(seen.all(axis=(1, 3)), placed.turn // 90)
        assert np.array_equal(modules, placed.symbol.modules)


def test_the_highest_level_whose_modules_stay_large_enough_is_taken(tag):
    assert qr_size(tag.link, 30.6, ("H", "Q", "M"), 0.37, 203).level == "H"
    middle = qr_size(tag.link, 19.5, ("H", "Q", "M"), 0.37, 203)
    assert middle.level in "QM"
    assert middle.dots == 3
    assert qr_size(tag.link, 12.0, ("H", "Q", "M"), 0.37, 203) is None


def test_the_largest_module_comes_before_the_largest_version(tag):
    size = qr_size(tag.link, 30.6, ("H",), 0.37, 203)
    assert size.dots == 4
    assert size.side_mm <= 30.62
    assert qr_size(tag.link, 30.6, ("H",), 0.37, 203, grow=False).version <= size.version <= 9


def on_the_label(placed):
    """Left, top, right and bottom of the dark and light modules, without the quiet zone."""
    side = placed.symbol.size * placed.module_mm
    return placed.x, placed.y, placed.x + side, placed.y + side


def wounds(label):
    """Corners torn off 20 mm deep, bands of 8 mm along every edge, and fold lines with what wears beside them."""
    width, height = label.size
    for x in (0, width - 20):
        for y in (0, height - 20):
            yield x, y, x + 20, y + 20
    yield from (
        (0, 0, 8, height),
        (width - 8, 0, width, height),
        (0, 0, width, 8),
        (0, height - 8, width, height),
    )
    for box in label.box:
        if box.kind == "fold":
            yield box.at[0] - 2, box.at[1], box.at[0] + box.size[0] + 2, box.at[1] + box.size[1]


@pytest.mark.parametrize("name", template.names())
def test_no_torn_corner_edge_or_fold_takes_every_symbol(name, longest):
    """Of labels that go round a hose every side has symbols of its own: no wound takes them all."""
    label = template.load(name)
    for dpi in (203, 300, 600):
        placed = codes(lay_out(longest[0], label, dpi))
        if label.wraps:  # a symbol faces every side: their columns reach from edge to edge
            return
        assert len(placed) == (2 if name in TWO_SYMBOLS else 1) + SMALL_SYMBOLS.get(name, 0)
        for left, top, right, bottom in wounds(label):
            hit = [
                one
                for one in map(on_the_label, placed)
                if one[0] < right - 0.01
                and one[2] > left + 0.01
                and one[1] < bottom - 0.01
                and one[3] > top + 0.01
            ]
            assert len(hit) < max(2, len(placed)), (left, top, right, bottom)


@pytest.mark.parametrize("name", ["sleeve_tag", "roll_continuous", "do_not_use", "hang_tag"])
def test_no_band_of_8_mm_rubbed_across_or_along_takes_every_symbol(name, tag):
    label = template.load(name)
    placed = [on_the_label(one) for one in codes(lay_out(tag, label))]
    for side in (0, 1):
        for start in np.arange(0, label.size[side] - 8, 0.5):
            left = [one for one in placed if one[side + 2] <= start or one[side] >= start + 8]
            assert left, (side, start)


BELOW_H = {
    *((name, 300) for name in ("wrap_label", "roll_2x1", "end_tag_a", "end_tag_b")),
    *((name, dpi) for name in ("thin_wrap", "sleeve_tag") for dpi in (203, 300, 600)),
}
"""Small codes with the number's link alone. Round a hose a wider symbol would not read; two elbows with an edition need 25.9 mm of a label of 25.4 mm."""


@pytest.mark.parametrize("dpi", [203, 300, 600])
@pytest.mark.parametrize("name", template.names())
def test_level_h_holds_on_every_template_but_those_the_readme_names(name, dpi, longest, tag):
    label = template.load(name)
    levels = {one.symbol.level for each in (tag, *longest[::12]) for one in codes(lay_out(each, label, dpi))}
    assert (levels == {"H"}) is ((name, dpi) not in BELOW_H)


def test_the_readme_names_the_templates_below_level_h():
    rows = re.findall(r"^\| `(\w+)` \| (\d+) \| [QM] \|", README, re.MULTILINE)
    assert {(name, int(dpi)) for name, dpi in rows} == BELOW_H


@pytest.mark.parametrize("name", template.names())
def test_no_text_has_capitals_below_1_6_mm(name, longest, assessed):
    """Of the em 0.729 are the height of a capital, from the font's own OS/2 table."""
    for tag in (*longest[::5], *assessed):
        for item in lay_out(tag, template.load(name)).drawing.items:
            assert not isinstance(item, Text) or item.size * CAPITALS >= 1.6 - 1e-3, item


def test_number_pressure_tightening_and_clocking_are_read_at_arms_length(make_tag):
    """70 cm ask for capitals of about 3.5 mm, a rule of thumb; what is broader than its place may be a little less."""
    sizes = {
        i.text: i.size * CAPITALS
        for i in lay_out(make_tag(), template.load("hang_tag")).drawing.items
        if isinstance(i, Text)
    }
    for text in ("207 bar", "3000 psi", "135°"):
        assert sizes[text] >= 3.49, text
    for text, least in ((make_tag().shown_number, 3.49), ("103–115 N·m", 3.49), ("1 to 1 1/4 flats", 3.45)):
        assert sizes[text] >= least, text


def _as_assessed(spec):
    """A tag with the trade's own values."""
    read = AssemblySpec.read(spec)
    return replace(a_tag(spec), content=assess(read).content_of(read, date(2026, 11, 25)))


@pytest.mark.parametrize("language", LANGUAGES)
def test_what_is_read_at_arms_length_is_as_large_as_its_width_allows(language, longest, assessed):
    """Of the invented week, of the trade's own values and of the longest: capitals in mm, on the hang tag."""
    label = template.load("hang_tag").in_languages([language])
    week = [
        _as_assessed(json.loads(file.read_text(encoding="utf-8"))) for file in sorted(WEEK.glob("*.json"))
    ]
    plain = Tightening(
        torque_min_nm=103.4, torque_max_nm=115.6, flats_min=1.5, flats_max=1.75, flats_basis="finger_tight"
    )
    elbows = LONGEST["two flare elbows, stainless, jump size"]
    bare = [a_tag(elbows, tighten_a=plain, tighten_b=plain)]
    for tags, torque_mm, turn_mm in (((*week, *assessed), 3.49, 3.3), ((*longest, *bare), 3.2, 3.2)):
        for tag in tags:
            items = [i for i in lay_out(tag, label).drawing.items if isinstance(i, Text) and i.bold]
            sizes = {item.text: item.size * CAPITALS for item in items}
            assert sizes[tag.shown_number] >= 3.49
            if tag.spec.clocking_deg is not None:
                assert sizes[f"{tag.spec.clocking_deg}°"] >= 3.49
            for text, capitals in sizes.items():
                if "N·m" in text:
                    assert capitals >= torque_mm, text
                elif re.fullmatch(
                    r"\d.* (flats?|turns?|pans?|tours?|caras?|vueltas?|Flächen?|Umdrehung(en)?)", text
                ):
                    assert capitals >= turn_mm, text


@pytest.mark.parametrize("language", LANGUAGES)
def test_a_short_torque_has_its_other_unit_beside_it_where_a_turn_would_be_small_else(language):
    """German "1 1/2 bis 1 3/4 Flächen" takes two lines: it and the torque had capitals of 2.9 mm."""
    flare = {"connection": "sae_37_flare", "dash": 4, "form": "male"}
    spec = {"hose": {"standard": "SAE 100R2", "dash": 4}, "end_a": flare, "end_b": flare}
    values = Tightening(
        torque_min_nm=15, torque_max_nm=15, flats_min=1.5, flats_max=1.75, flats_basis="wrench_resistance"
    )
    tag = a_tag({**STRAIGHT, **spec}, tighten_a=values, tighten_b=values)
    items = lay_out(tag, template.load("hang_tag").in_languages([language])).drawing.items
    said = [item for item in items if isinstance(item, Text)]
    [*torques] = [item for item in said if item.text.endswith(" N·m")]
    assert [item.text for item in torques] == ["15 N·m"] * 2
    turn = Translator(language)(Message("printing-flats", count="1 3/4", many=1.75)).split()[-1]
    turns = [item for item in said if item.text.split()[-1:] == [turn]]
    assert len(turns) == 2 and all(item.size * CAPITALS >= 3.37 for item in (*torques, *turns))
    shape = Translator(language)(phrases.shape(tag.spec.end_a))
    assert sum(shape in item.text for item in said) == 2, "nothing is left out for it"


def _reach(text):
    """How far letters go below and above their baseline, in ems, by the bold face's glyf table."""
    below = 0.216 if re.search("[gjpqy]", text) else 0.142 if re.search(r"[,;()Q]", text) else 0.093
    return below, 0.774 if re.search(r"[a-zß-ÿ()]", text) else 0.75


@pytest.mark.parametrize("language", LANGUAGES)
def test_no_letters_of_the_hang_tag_touch_those_of_the_line_below(language, longest, assessed):
    """A torque's decimal comma reaches farther down than its digits; lines of large figures may stand close."""
    label = template.load("hang_tag").in_languages([language])
    for tag in (*longest, *assessed):
        said = [i for i in lay_out(tag, label).drawing.items if isinstance(i, Text) and i.text.strip()]
        for one, below in permutations(said, 2):
            (left, right), (start, end) = across(one), across(below)
            if left < end and start < right and one.y < below.y:
                clear = below.y - _reach(below.text)[1] * below.size - one.y - _reach(one.text)[0] * one.size
                assert clear > 0, (one.text, below.text, clear)


@pytest.mark.parametrize("dpi", [203, 300, 600])
def test_both_codes_of_the_hang_tag_have_version_9_and_level_h(dpi, longest, tag):
    """Version 8 was read in 89 of 100 photographs with blobs over a tenth of it, version 9 in 94."""
    for each in (tag, *longest[::12]):
        placed = codes(lay_out(each, template.load("hang_tag"), dpi))
        assert [(one.symbol.version, one.symbol.level) for one in placed] == [(9, "H")] * 2


@pytest.mark.parametrize("language", LANGUAGES)
def test_how_the_threads_are_oiled_stands_beside_torque_and_turn_at_arms_length(language, make_tag):
    values = Tightening(
        torque_min_nm=103, torque_max_nm=115, flats_min=1, flats_max=1.25, flats_basis="finger_tight",
        lubrication="threads_fluid_or_grease",
    )  # fmt: skip
    tag = make_tag(tighten_a=values, tighten_b=values)
    items = lay_out(tag, template.load("hang_tag").in_languages([language])).drawing.items
    said = [item for item in items if isinstance(item, Text)]
    oiled = Translator(language)(phrases.lubrication(values))
    assert [item.text for item in said].count(oiled) == 2
    assert all(item.size * CAPITALS >= 3.4 for item in said if "N·m" in item.text)


def test_nothing_runs_into_anything_beside_it(longest, assessed):
    """Each text ends before the next begins, on the hang tag of every language."""
    for language in LANGUAGES:
        label = template.load("hang_tag").in_languages([language])
        for tag in (*longest[::5], *assessed):
            said = [i for i in lay_out(tag, label).drawing.items if isinstance(i, Text)]
            spans = [(i.y, *across(i), i) for i in said]
            for place, (y, left, right, one) in enumerate(spans):
                for other_y, other_left, other_right, other in spans[place + 1 :]:
                    if abs(y - other_y) < 0.6 * min(one.size, other.size):
                        assert right <= other_left + 0.05 or other_right <= left + 0.05, (
                            one.text,
                            other.text,
                        )


@pytest.mark.parametrize("name", [name for name in template.names() if name != "do_not_use"])
def test_no_line_to_write_on_runs_through_the_text_below_it(name):
    """On the smallest label it lay on the word for the danger: 0.236 of an em below the baseline, by the font."""
    for language in LANGUAGES:
        tag = a_tag(STRAIGHT, **RATED["a fluid and a heat beyond the limits"])
        items = lay_out(tag, template.load(name).in_languages([language])).drawing.items
        said = [item for item in items if isinstance(item, Text) and not item.turn]
        for line in said:
            left, right = across(line)
            for below in said:
                start, end = across(below)
                if "__" in line.text and start < right and left < end and line.y < below.y:
                    assert line.y + 0.236 * line.size <= below.y - CAPITALS * below.size + 0.01, below.text


@pytest.mark.parametrize("language", LANGUAGES)
def test_figures_of_two_parts_that_meet_on_one_line_have_a_line_between_them(language, longest, assessed):
    """A turn of "1 1/4 a 1 1/2 caras" stood half a millimetre before "100 °C", "-12 (3/4 in)" one before "315°"."""
    for name in (
        "hang_tag",
        "hang_tag_two",
        "roll_continuous",
        "roll_4x2",
        "roll_4x6",
        "flag_label",
        "end_tag_b",
    ):
        label, near = template.load(name).in_languages([language]), 1.9 if name == "hang_tag_two" else 1.2
        for tag in (*longest[::5], *assessed):
            items = lay_out(tag, label).drawing.items
            walls = [item for item in items if isinstance(item, Line) and item.x1 == item.x2]
            said = [item for item in items if isinstance(item, Text) and re.search(r"\d", item.text)]
            for one, other in permutations(said, 2):
                right, left = across(one)[1], across(other)[0]
                if abs(one.y - other.y) < min(one.size, other.size) and 0 <= left - right < near:
                    assert any(right <= wall.x1 <= left and wall.y1 <= one.y <= wall.y2 for wall in walls), (
                        name,
                        one.text,
                        other.text,
                    )


@pytest.mark.parametrize("language", LANGUAGES)
def test_a_length_beside_an_angle_says_between_which_points_it_is(language, longest):
    """A hose's edition gives way before it."""
    label = template.load("hang_tag").in_languages([language])
    told = Translator(language)(phrases.length_basis("elbow_centreline"))
    turned = [tag for tag in longest if tag.spec.clocking_deg is not None]
    assert turned
    for tag in turned:
        assert told in " ".join(texts(lay_out(tag, label)))


@pytest.mark.parametrize("language", LANGUAGES)
def test_a_danger_is_told_in_full_beside_a_plate_to_write_on(language):
    """In French the caption's second line took its room on the roll."""
    unknown = {"working_pressure_bar": None, "unknown_parts": ("hose", "end_a", "end_b")}
    tag = a_tag({**STRAIGHT, "fluid": "water_oil_emulsion"}, **unknown, dangers=(Danger.HEAT,))
    [danger] = rated.dangers(tag.content)
    for name in ("hang_tag", "roll_continuous"):
        said = " ".join(texts(lay_out(tag, template.load(name).in_languages([language]))))
        assert Translator(language)(danger).replace("\u00a0", " ") in said, name


@pytest.mark.parametrize("language", LANGUAGES)
def test_a_line_to_write_on_is_as_large_as_the_plate_has_room(language):
    parts = ("hose", "end_a", "end_b")
    for name, dangers, least in (
        ("hang_tag", (), 3.0),
        ("roll_continuous", (), 3.0),
        ("hang_tag", (Danger.HEAT,), 2.8),
        ("roll_continuous", (Danger.HEAT,), 3.0),
        ("hang_tag_two", (), 2.6),
        ("hang_tag_two", (Danger.HEAT,), 2.6),
    ):
        tag = a_tag(STRAIGHT, working_pressure_bar=None, unknown_parts=parts, dangers=dangers)
        items = lay_out(tag, template.load(name).in_languages([language])).drawing.items
        assert min(item.size for item in items if isinstance(item, Text) and "__" in item.text) >= least, name


@pytest.mark.parametrize("language", LANGUAGES)
def test_the_danger_is_bold_on_the_smallest_label_and_round_the_thinnest_hose(language):
    tag = a_tag(STRAIGHT, **RATED["a fluid and a heat beyond the limits"])
    word = Translator(language)("report-danger", text="").strip(" :\u00a0")
    for name in ("roll_2x1", "thin_wrap"):
        items = lay_out(tag, template.load(name).in_languages([language])).drawing.items
        bold = [item.bold for item in items if isinstance(item, Text) and item.text.startswith(word)]
        assert bold and all(bold), name


@pytest.mark.parametrize("language", LANGUAGES)
def test_no_tightening_value_is_smaller_than_the_eye_reads_in_oily_light(language, longest):
    """On the flag label's narrow block a torque had capitals of 1.6 mm, to keep words that the picture says."""
    for name in ("flag_label", "roll_4x2", "end_tag_a", "sleeve_tag", "hang_tag"):
        label = template.load(name).in_languages([language])
        for tag in longest[::5]:
            items = [i for i in lay_out(tag, label).drawing.items if isinstance(i, Text) and i.bold]
            for item in items:
                assert "N·m" not in item.text or item.size * CAPITALS >= 2.18, (name, item.text)


def across(item):
    width = text_width(item.text, item.size, item.bold)
    left = item.x - {"start": 0, "middle": 0.5, "end": 1}[item.anchor] * width
    return left, left + width


@pytest.mark.parametrize("name", [name for name in template.names() if name != "do_not_use"])
def test_shop_and_day_stand_on_every_template(name, make_tag):
    tag = make_tag(STRAIGHT, shop="Quarry Road Hose, +44 1632 960 111")
    said = " ".join(texts(lay_out(tag, template.load(name))))
    assert "Quarry Road Hose, +44 1632 960 111" in said
    assert "2026-11-25" in said


@pytest.mark.parametrize("name", ["roll_4x2", "metal_plate"])
@pytest.mark.parametrize("language", LANGUAGES)
def test_a_flange_with_torque_and_flats_fits_a_small_label_whoever_knows_its_screw(name, language):
    label = ShopSettings().template(name, [language])
    t = Translator(language)
    for code in (61, 62):
        flange = {"connection": f"flange_code{code}", "dash": 16, "form": "flange_head"}
        ends = {"hose": {"standard": "SAE 100R12", "dash": 16}, "end_a": flange, "end_b": flange}
        tag = a_tag({**STRAIGHT, **ends})
        known = tag.content.tighten_a  # that of the trade's own screw
        for low, high in ((160.5, 175.5), (known.torque_min_nm, known.torque_max_nm)):
            for basis in ("finger_tight", "wrench_resistance", "not_stated"):
                values = Tightening(
                    torque_min_nm=low, torque_max_nm=high, flats_min=1.5, flats_max=2.25, flats_basis=basis
                )
                given = {"tighten_a": values, "tighten_b": values}
                page = lay_out(replace(tag, content=tag.content.model_copy(update=given)), label)
                said = " ".join(texts(page)).replace("\u00a0", " ")
                figure, _ = voices((language,))[0].pair(torque(low, high))
                for line in (figure, t(Message(f"printing-basis-{basis}"))):
                    assert said.count(line.replace("\u00a0", " ")) == 2, (code, basis, said)


@pytest.mark.parametrize(
    "name", ["hang_tag", "hang_tag_two", "roll_4x2", "roll_4x6", "flag_label", "traveller_a5"]
)
def test_each_end_is_one_block_of_its_own(name, make_tag):
    """Letter, connection, shape and tightening of an end stand together, and nothing of the other end among them."""
    torques = (
        Tightening(torque_min_nm=low, torque_max_nm=low + 2, flats_min=1, flats_max=1, flats_basis=basis)
        for low, basis in ((41, "finger_tight"), (61, "wrench_resistance"))
    )
    tag = make_tag(**dict(zip(("tighten_a", "tighten_b"), torques, strict=True)))
    items = [i for i in lay_out(tag, template.load(name)).drawing.items if isinstance(i, Text)]
    block_a = {"A", "O-ring face seal (ORFS)", "45° elbow", "41–43 N·m", "30–32 lbf·ft", "from finger-tight"}
    block_b = {"B", "37° flare (JIC)", "90° elbow", "61–63 N·m", "45–46 lbf·ft", "from wrench resistance"}
    bounds = []
    for block in (block_a, block_b):
        mine = [
            i
            for i in items
            for text in block
            if text in i.text and (len(text) > 1 or (i.text == text and i.size > 4))
        ]
        assert len(mine) == len(block) or name == "hang_tag_two", [i.text for i in mine]
        spans = [(*across(i), i.y) for i in mine]
        bounds.append(
            (
                min(s[0] for s in spans),
                max(s[1] for s in spans),
                min(s[2] for s in spans),
                max(s[2] for s in spans),
            )
        )
    (a_left, a_right, _, a_bottom), (b_left, b_right, b_top, _) = bounds
    assert a_bottom < b_top or (a_right <= b_left and a_left + a_right < b_left + b_right)


def test_wrap_label_repeats_the_symbol_round_the_hose(tag):
    """Three columns, a third of their pitch apart."""
    columns: dict[float, list[float]] = {}
    for placed in codes(lay_out(tag, template.load("wrap_label"))):
        columns.setdefault(placed.x, []).append(placed.y)
    assert [len(tops) for tops in columns.values()] == [8, 8, 8]
    pitch = (max(columns[min(columns)]) - min(columns[min(columns)])) / 7
    starts = [min(tops) for _, tops in sorted(columns.items())]
    assert [after - before for before, after in pairwise(starts)] == pytest.approx([pitch / 3] * 2, abs=0.2)


def test_hang_tag_says_what_it_must(tag, make_tag):
    shown = " ".join(texts(lay_out(tag, template.load("hang_tag"))))
    for part in (
        tag.shown_number, "Max. working pressure", "207 bar", "3000 psi", "SAE 100R2 -12 (3/4 in)",
        "-12 37° flare (JIC)", "90° elbow", "1250 mm", "49.21 in", "103–115 N·m", "76–85 lbf·ft",
        "1 to 1 1/4 flats", "from finger-tight", "2026-11-25", "mineral oil, max. 100 °C (212 °F)",
        "Release pressure before loosening",
    ):  # fmt: skip
        assert part in shown, part


def test_clocking_is_said_and_drawn_only_where_it_means_something(make_tag):
    label = template.load("hang_tag")
    with_angle = lay_out(make_tag(), label)
    assert texts(with_angle).count("135°") == 1
    assert {"A", "B"} <= {
        item.text for item in with_angle.drawing.items if isinstance(item, Text) and item.size < 3
    }
    without = lay_out(make_tag(STRAIGHT), label)
    assert not any("°" in text and text[:-1].isdigit() for text in texts(without))


@pytest.mark.parametrize("name", ["roll_2x1", "flag_label"])
@pytest.mark.parametrize("language", LANGUAGES)
def test_an_angle_in_words_says_which_way_it_is_counted_and_from_where(name, language, longest, make_tag):
    """135 degrees counted the other way is 225: the fitting would point elsewhere."""
    label, t = template.load(name).in_languages([language]), Translator(language)
    for tag in (make_tag(), *(each for each in longest if each.spec.clocking_deg)):
        said = "".join(texts(lay_out(tag, label))).replace(" ", "")
        forms = (
            t(Message(f"printing-clocking-{form}", angle=angle(tag.spec.clocking_deg)))
            for form in ("short", "shortest")
        )
        assert any(form.replace(" ", "") in said for form in forms), said


@pytest.mark.parametrize("name", ["flag_label", "wrap_label"])
@pytest.mark.parametrize("language", LANGUAGES)
def test_narrow_labels_say_what_the_length_is_measured_between(name, language, make_tag):
    """Of two elbows the centrelines or the faces: they lie a drop apart at each end."""
    label, t = template.load(name).in_languages([language]), Translator(language)
    for tag in (make_tag(STRAIGHT), make_tag()):
        said = "".join(texts(lay_out(tag, label))).replace(" ", "")
        told = (t(f"{form}-{tag.spec.length_basis}") for form in ("words-length_basis", "printing-between"))
        assert any(words.replace(" ", "") in said for words in told), said


def test_what_is_not_known_says_so(make_tag):
    unknown = make_tag(working_pressure_bar=None, tighten_a=None, tighten_b=None)
    shown = " ".join(texts(lay_out(unknown, template.load("hang_tag"))))
    assert shown.count("not known: use the fitting manufacturer's value") == 3
    assert shown.count("tightening not known") == 2
    assert " bar" not in shown
    assert "N·m" not in shown


def test_pressure_is_the_largest_text_of_the_spec(tag):
    page = lay_out(tag, template.load("hang_tag"))
    said = [item for item in page.drawing.items if isinstance(item, Text)]
    sizes = {item.text: item.size for item in said if item.text not in ("A", "B")}
    others = [size for text, size in sizes.items() if text not in ("207 bar", "3000 psi", tag.shown_number)]
    assert sizes["207 bar"] > max(others)
    assert sizes["207 bar"] * CAPITALS > 3.5


@pytest.mark.parametrize("name", template.names())
def test_text_stays_on_its_label(name, tag):
    page = lay_out(tag, template.load(name))
    for item in page.drawing.items:
        if isinstance(item, Text) and item.turn == 0:
            width = text_width(item.text, item.size, item.bold)
            left = item.x - {"start": 0, "middle": 0.5, "end": 1}[item.anchor] * width
            assert left >= -0.05
            assert left + width <= page.drawing.width + 0.05
            assert item.y <= page.drawing.height


def test_no_line_of_a_tag_turns_counter_clockwise_into_clockwise(longest, make_tag):
    """Its second line alone was "clockwise, viewed from end A": the elbow would point the other way."""
    for name in template.names():
        label = template.load(name).in_languages(["en"])
        for tag in (make_tag(), *(each for each in longest[::4] if each.spec.clocking_deg)):
            lines = texts(lay_out(tag, label))
            assert not [line for line in lines if re.match(r"clockwise", line)], (name, lines)
    for width in np.arange(20, 60, 0.5):
        said = (Translator("en")("printing-clocking-counted"),)
        found = fit(said, float(width), 60.0, 3.0, 2.2, False)
        assert not found or not any(line.startswith("clockwise") for line in found.lines), found


@pytest.mark.parametrize("language", LANGUAGES)
def test_what_an_end_of_no_family_is_described_by_does_not_run_into_what_it_is_called(language):
    """ "Tr 30x3 own nut other connection" stood there as one name."""
    other = {"connection": "other", "description": "Tr 30x3 own nut", "form": "female_swivel"}
    label = template.load("roll_4x6").in_languages([language])
    tag = a_tag(
        {**STRAIGHT, "end_a": other}, tighten_a=None, working_pressure_bar=None, unknown_parts=("end_a",)
    )
    said = " ".join(texts(lay_out(tag, label)))
    called = Translator(language)("words-connection-other")
    assert said.replace("\u00a0", " ").count(f"Tr 30x3 own nut ({called})") == 2  # the end, and its pressure


def test_grids_are_the_symbols_themselves(tag):
    page = lay_out(tag, template.load("hang_tag"))
    grids = [item for item in page.drawing.items if isinstance(item, Grid)]
    assert len(grids) == len(page.symbols) == 3
