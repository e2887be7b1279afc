"""Templates: what may stand in one, and that every error names file, key and mend."""

import re
from itertools import permutations
from pathlib import Path
from typing import get_args

import pytest

from tagger.drawing import Text
from tagger.errors import TemplateError
from tagger.i18n import LANGUAGES, Translator
from tagger.printing import fields, survival, template
from tagger.printing.boxes import tells_dangers
from tagger.printing.layout import lay_out
from tagger.spec import Danger
from tagger.trade.rows import UNVERIFIED
from tagger.trade.tables import tables

README = (Path(__file__).parents[2] / "label_templates" / "README.md").read_text(encoding="utf-8")
TWO_LANGUAGES = ("hang_tag_two", "roll_4x6", "traveller_a5", "traveller_half_letter")
GOOD = """
title = "A label"
size = [60, 40]

[[box]]
kind = "qr"
at = [1, 1]
size = [31, 31]

[[box]]
kind = "text"
fields = ["number"]
at = [33, 1]
size = [26, 5]
"""


def write(folder, text, name="mine.toml"):
    file = folder / name
    file.write_text(text, encoding="utf-8")
    return file


def test_no_label_leaves_out_a_danger(tmp_path, make_tag) -> None:
    """Neither a template that has no line for it, nor one that may leave its last lines out."""
    dangerous = make_tag(dangers=(Danger.HEAT,))
    own = template.load(str(write(tmp_path, GOOD)))
    assert lay_out(make_tag(), own)
    with pytest.raises(
        TemplateError, match=r"^mine.toml: This hose assembly has a danger.* kind = \"caution\""
    ):
        lay_out(dangerous, own)
    for name in template.names():
        assert tells_dangers(template.load(name)) or template.load(name).purpose == "do_not_use"
    lines = '["number", "dangers", "hose", "duty"]\nkeep = 1'
    low, high = (
        template.load(str(write(tmp_path, GOOD.replace('["number"]', lines).replace("[26, 5]", size))))
        for size in ("[26, 3]", "[26, 5]")
    )
    with pytest.raises(TemplateError, match="does not fit"):
        lay_out(dangerous, low)
    for tag, told in ((make_tag(), "SAE 100R2 -12 (3/4 in)"), (dangerous, "DANGER: heat")):
        said = [item.text for item in lay_out(tag, high).drawing.items if isinstance(item, Text)]
        assert said == [tag.shown_number, told]


def test_a_plate_with_the_pressure_tells_the_dangers_where_nothing_else_does(tmp_path, make_tag) -> None:
    plate = '[[box]]\nkind = "pressure"\nat = [33, 8]\nsize = [26, 30]\n'
    own = template.load(str(write(tmp_path, GOOD + plate)))
    for dangers, told in ((), False), ((Danger.HEAT,), True):
        tag = make_tag(working_pressure_bar=None, unknown_parts=("hose",), dangers=dangers)
        said = " ".join(item.text for item in lay_out(tag, own).drawing.items if isinstance(item, Text))
        assert ("DANGER" in said and "heat" in said) is told


@pytest.mark.parametrize(
    ("change", "key", "why", "mend"),
    [
        (('kind = "qr"', 'kind = "qr"\ncolour = "red"'), "box 1 (qr), colour", "not a known field", "Remove it"),
        (('kind = "qr"', 'kind = "picture"'), "box 1 (picture)", "is not a kind of box", "Set kind to one of: text"),
        (("at = [33, 1]", "at = [43, 1]"), "box 2 (text)", "extends beyond the label", "Move it"),
        (("at = [33, 1]", "at = [30, 1]"), "box 2 (text)", "overlaps box 1 (qr)", "Move one of the two"),
        (('["number"]', '["numbr"]'), "box 2 (text), fields", "numbr is not a field of a tag", "Use one of: bend_radius"),
        (("size = [26, 5]", 'size = [26, "5 yards"]'), "box 2 (text), size.1", "Unknown unit: yards", "Enter a length"),
        (("size = [60, 40]", ""), "size", "value is missing", "Enter it"),
        (('title = "A label"', 'title = "A label'), "mine.toml", "is not valid TOML", "Correct that line"),
        (("size = [26, 5]", "size = [26, 5]\ntext = 1.2"), "box 2 (text), text", "below the minimum of 2.2", "Enter 2.2 or more"),
        (('title = "A label"', 'title = "A label"\nlanguages = ["nl"]'), "languages", "nl is not a language of the tags", "Use one of: en"),
        (('title = "A label"', 'title = "A label"\nbase = "mine"'), "base", "cannot be its own base", "Use another base template"),
        (('title = "A label"', 'title = "A label"\nbase = "hang_tga"'), "mine.toml: base", "hang_tga is not a known template", "hang_tag"),
        (('title = "A label"', 'title = "A label"\nbase = true'), "mine.toml: base", "true is not a known template", "hang_tag"),
        (('title = "A label"', 'title = "A label"\nlanguages = ["en", "fr", "de"]'), "languages", "one or two known languages", "en, de"),
        (("at = [33, 1]", "at = [33, 1, 2]"), "box 2 (text), at", "Two values are needed", "[100, 60]"),
        (('["number"]', '"number"'), "box 2 (text), fields", "Several values are needed", '["number"]'),
        (("size = [26, 5]", "size = [26, 5]\ntext = true"), "box 2 (text), text", "not a number (value: 'true')", "Enter a length"),
        (("size = [26, 5]", "size = [26, 5]\ntext = 3\ntext_min = 5"), "box 2 (text), text_min", "larger than the largest, which is 3 mm", "Enter a smaller text_min"),
        (("size = [60, 40]", "size = [80000, 40]"), "size.0", "above the maximum of 500", "Enter 500 or less"),
        (("size = [60, 40]", "size = [60, -40]"), "size.1", "below the minimum of 0.1", "Enter 0.1 or more"),
    ],
)  # fmt: skip
def test_an_error_names_file_key_and_mend(tmp_path, change, key, why, mend):
    file = write(tmp_path, GOOD.replace(*change, 1))
    with pytest.raises(TemplateError) as caught:
        template.load(file)
    (problem,) = caught.value.problems
    assert problem.field.startswith("mine.toml")
    assert key in problem.field
    assert why in str(problem)
    assert mend in str(problem)


@pytest.mark.parametrize("boxes", ["[box]\nkind = 'qr'", "box = 3", "box = [3]"])
def test_boxes_that_are_not_a_list_of_tables_are_told_how_they_begin(tmp_path, boxes):
    with pytest.raises(TemplateError, match=r"mine\.toml: box: Each box begins with \[\[box\]\]"):
        template.load(write(tmp_path, 'title = "A label"\nsize = [60, 40]\n' + boxes))


def test_a_symbol_too_small_is_named_with_the_size_it_needs(tmp_path, make_tag):
    label = template.load(write(tmp_path, GOOD.replace("size = [31, 31]", "size = [12, 12]")))
    with pytest.raises(
        TemplateError,
        match=r"mine\.toml: box 1 \(qr\), size: The box .* is too small.*Make it at least 1\d\.\d x",
    ):
        lay_out(make_tag(), label)


@pytest.mark.parametrize(
    "box",
    [
        'kind = "text"\nfields = ["end_b", "length"]',
        'kind = "text"\nframe = true\ninverse = true\nfields = ["end_b", "length"]',
        'kind = "text"\nkeep = 2\nfields = ["end_b", "length", "duty"]',
        'kind = "end"\nend = "b"',
        'kind = "between"',
        'kind = "pressure"\nduty = true',
        'kind = "caution"',
    ],
)
def test_text_that_cannot_fit_is_refused_with_the_size_at_which_it_does(tmp_path, make_tag, box):
    """Nothing is cut; the size that the message names is large enough, whatever stands in the box."""
    one = 'title = "A label"\nsize = [200, 200]\n[[box]]\n' + box + "\nat = [0, 0]\nsize = [{}, {}]\n"
    with pytest.raises(
        TemplateError, match=r"mine\.toml: box 1 .*, size: The text does not fit.*at least"
    ) as caught:
        lay_out(make_tag(), template.load(write(tmp_path, one.format(14, 6))))
    needs = caught.value.problems[0].message.values
    width, height = needs["need_width"], needs["need_height"]
    for _ in range(3):  # a wider box may hold the same in fewer lines: never more than two steps on
        try:
            lay_out(make_tag(), template.load(write(tmp_path, one.format(width, height))))
            break
        except TemplateError as error:
            needs = error.problems[0].message.values
            width, height = needs["need_width"], needs["need_height"]
    else:
        raise AssertionError(f"{width} x {height} is not enough")


@pytest.mark.parametrize("dpi", [203, 300, 600])
def test_bars_too_narrow_are_refused_with_the_width_they_need_in_whole_dots(tmp_path, make_tag, dpi):
    one = 'title = "A label"\nsize = [90, 40]\n[[box]]\nkind = "code128"\nat = [0, 0]\nsize = [{}, 8]\n'
    with pytest.raises(TemplateError, match="too narrow for the bars") as caught:
        lay_out(make_tag(), template.load(write(tmp_path, one.format(30))), dpi)
    lay_out(
        make_tag(),
        template.load(write(tmp_path, one.format(caught.value.problems[0].message.values["need"]))),
        dpi,
    )


def test_a_letter_the_font_lacks_is_refused(tmp_path, make_tag):
    label = template.load(write(tmp_path, GOOD.replace('["number"]', '["shop"]')))
    with pytest.raises(TemplateError, match="the tag font cannot print"):
        lay_out(make_tag(shop="软管"), label)


def test_own_folder_comes_before_ours(tmp_path):
    write(tmp_path, GOOD, "hang_tag.toml")
    write(tmp_path, GOOD, "cellar.toml")
    assert template.load("hang_tag", [tmp_path]).title == "A label"
    assert str(template.load("hang_tag").named).startswith("Hang tag")
    assert {"cellar", "hang_tag", "wrap_label"} <= set(template.names([tmp_path]))


def test_a_base_gives_all_but_what_is_said(tmp_path):
    mine = template.load(write(tmp_path, 'base = "hang_tag"\ntitle = "Ours, in French"\nlanguages = ["fr"]'))
    assert mine.title == "Ours, in French"
    assert mine.languages == ("fr",)
    assert mine.box == template.load("hang_tag").box


def test_each_template_is_listed_under_its_own_name():
    assert [row["name"] for row in template.catalogue()] == template.names()


def test_inches_are_read(tmp_path):
    label = template.load(write(tmp_path, GOOD.replace("size = [60, 40]", 'size = ["3 in", "1 5/8 in"]')))
    assert label.size == pytest.approx((76.2, 41.275))


def test_an_unknown_name_lists_those_there_are():
    with pytest.raises(TemplateError, match=r"Use one of: .*hang_tag"):
        template.load("hang-tag")


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("name", template.names())
def test_shipped_templates_hold_the_longest_texts(name, language, longest):
    label = template.load(name).in_languages([language])
    for tag in longest:
        lay_out(tag, label)


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("name", template.names())
def test_shipped_templates_hold_real_assessments(name, language, assessed):
    label = template.load(name).in_languages([language])
    for tag in assessed:
        lay_out(tag, label)


@pytest.mark.parametrize("name", ["roll_4x6", "traveller_a5"])
def test_sources_stand_beside_the_figures(name, assessed):
    for tag in assessed:
        shown = " ".join(
            item.text for item in lay_out(tag, template.load(name)).drawing.items if isinstance(item, Text)
        )
        for advice in (tag.assessment.end_a, tag.assessment.end_b):
            for figure in (advice.torque, advice.flats):
                assert figure is None or cited(figure.source) in shown
        assert "memory" not in shown
        if name == "traveller_a5":
            for warning in tag.assessment.warnings:  # papers write a range with a dash
                assert re.sub(r"(?<=\d) to (?=\d)", "–", warning.text) in shown


def cited(source):
    """A source as a tag names it: in at most forty characters, and unverified where nobody saw it published."""
    known = tables().sources[source]
    return f"{known.short} (unverified)" if known.grade in UNVERIFIED else known.short


@pytest.mark.parametrize("languages", [*permutations(LANGUAGES, 2)], ids="-".join)
@pytest.mark.parametrize("name", TWO_LANGUAGES)
def test_large_templates_hold_any_two_languages(name, languages, longest, assessed):
    label = template.load(name).in_languages(languages)
    for tag in (*longest, *assessed):
        lay_out(tag, label)


@pytest.mark.parametrize("dpi", [203, 300, 600])
@pytest.mark.parametrize("name", template.names())
def test_shipped_templates_take_the_longest_link_at_every_resolution(name, dpi, longest):
    for tag in longest:
        lay_out(tag, template.load(name), dpi)


@pytest.mark.parametrize("name", ["sleeve_tag", "roll_2x1"])
def test_small_tags_of_two_elbows_carry_the_clocking_figure(name, longest):
    for tag in longest:
        drawn = lay_out(tag, template.load(name)).drawing.items
        said = [item.text for item in drawn if isinstance(item, Text)]
        told = (re.fullmatch(r"(?:clocking )?(\d+°)(?: counter-.*)?", text) for text in said)
        angle = tag.spec.clocking_deg
        assert [found[1] for found in told if found] == ([] if angle is None else [f"{angle}°"])
    assert any(tag.spec.clocking_deg is not None for tag in longest)


def test_the_readme_says_what_whole_labels_were_measured_to_survive():
    """Its tables are survival.csv; all but the smallest label reach 95 %."""
    for row in survival.rows():
        table = "signed" if row["signed"] == "yes" else "whole"
        block = README.split(f"<!-- survival {table} -->")[1].split("<!-- /survival")[0]
        (said,) = re.findall(rf"^\|[^|\n]*\b{row['template']}\b[^|\n]*\| (.*) \|$", block, re.MULTILINE)
        assert said.split(" | ") == [row[name] for name in ("measured_on", "trials", *survival.WOUNDS)]
        assert float(row["all"]) >= 95 or row["template"] == "roll_2x1"


def test_readme_tells_every_template_kind_and_field():
    for name in template.names():
        assert f"`{name}`" in README
    for name in fields.FIELDS:
        assert f"`{name}`" in README
    for name in template.kinds():
        assert f"`{name}`" in README
    for kind in get_args(get_args(template.Box)[0]):
        for key in kind.model_fields:
            assert f"`{key}`" in README or f"{key} = " in README, key
    for key in (*template.Template.model_fields, *template.Sheet.model_fields):
        assert key in ("name", "box", "sheet") or f"{key} = " in README


@pytest.mark.parametrize("language", LANGUAGES)
def test_shipped_titles_are_in_the_readers_language_and_a_shops_own_as_it_wrote_them(language, tmp_path):
    write(tmp_path, GOOD, "cellar.toml")
    t = Translator(language)
    titles = {row["name"]: row["title"] for row in template.catalogue([tmp_path], language)}
    assert titles.pop("cellar") == "A label"
    for name, title in titles.items():
        assert t.has(template.load(name).title), name
        assert title == t(template.load(name).named)


@pytest.mark.parametrize(
    ("change", "key", "id"),
    [
        (('kind = "text"', 'kind = "words"\nsay = { nl = "Goed" }'), "box 2 (words), say", "printing-template-language"),
        (('kind = "qr"\n', ""), "box 1 (?)", "printing-template-kind-missing"),
        (("[[box]]", "[sheet]\ncolumns = 4\nrows = 1\nfirst = [0, 0]\npitch = [50, 40]\n[[box]]"), "sheet, pitch",
         "printing-template-pitch"),
    ],
)  # fmt: skip
def test_a_problem_is_a_message_with_its_values(tmp_path, change, key, id):
    text = GOOD.replace('fields = ["number"]\n', "") if "say" in change[1] else GOOD
    with pytest.raises(TemplateError) as caught:
        template.load(write(tmp_path, text.replace(*change, 1)))
    found = {problem.field: problem.message for problem in caught.value.problems}
    assert found[f"mine.toml: {key}"].id == id
    assert found[f"mine.toml: {key}"].values


def test_a_template_is_named_after_its_file_and_refuses_another_name(tmp_path: Path) -> None:
    """A queue loads a template anew by its name: one that calls itself hang_tag would print that."""
    own = tmp_path / "own.toml"
    own.write_text('base = "hang_tag"\nname = "hang_tag"\n')
    with pytest.raises(TemplateError, match=r"own.toml: name.*named after its file: own.*rename the file"):
        template.load("own", [tmp_path])
    own.write_text('base = "hang_tag"\n')
    assert template.load("own", [tmp_path]).name == "own"
    assert sorted(one["name"] for one in template.catalogue([tmp_path])) == template.names([tmp_path])
