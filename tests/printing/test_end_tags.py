"""Tags carry the worst that can stand on them: a part without a rating, one unverified, a danger, a long shop name."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

import pytest

from tagger.drawing import Text
from tagger.errors import TemplateError
from tagger.i18n import LANGUAGES
from tagger.printing import template
from tagger.printing.layout import lay_out
from tagger.printing.proof import prove
from tagger.record_tag import preview
from tagger.settings import ShopSettings
from tagger.spec import AssemblySpec
from tagger.store import Registration
from tagger.trade import assess

WORST = {
    "hose": {"standard": "EN 853 1SN", "dash": 10},
    "end_a": {"connection": "banjo_metric", "form": "eye", "size": "M18x1.5", "hose_dash": 10},
    "end_b": {"connection": "bspp", "form": "male", "size": "1/2", "hose_dash": 10},
    "length_mm": 700,
    "max_temperature_c": -45,
}
SHOP = "The Long Example Hose and Fitting Shop, tel. 555 0100"
SAID = {
    "en": ("DANGER", "Release pressure"),
    "de": ("GEFAHR", "Druck ablassen"),
    "fr": ("DANGER", "Relâchez la pression"),
    "es": ("PELIGRO", "Descargue la presión"),
}


@pytest.mark.parametrize("name", ["end_tag_a", "end_tag_b"])
def test_danger_unknown_part_and_a_long_name_stand_on_an_end_tag_in_every_language(make_tag, name):
    spec = AssemblySpec.read(WORST)
    found = assess(spec)
    tag = replace(
        make_tag(WORST, assessment=found, shop=SHOP), content=found.content_of(spec, date(2026, 11, 16))
    )
    for language in LANGUAGES:
        page = lay_out(tag, template.load(name).in_languages([language]), 203)
        said = " ".join(item.text for item in page.drawing.items if isinstance(item, Text))
        for word in (*SAID[language], "130 bar", "-45", "555 0100"):
            assert word in said.replace("\u00a0", " "), (language, word, said)


def test_an_end_not_known_one_unverified_and_a_danger_are_printed_on_every_template_in_every_language(
    make_tag,
):
    """With a banjo, whose eye stood beside its box, in the quiet zone of an end tag's code; plates have frames."""
    spec = AssemblySpec.read(WORST)
    found = assess(spec)
    content = found.content_of(spec, date(2026, 11, 16))
    assert content.unknown_parts and content.unverified_parts and content.dangers and content.at_most_bar
    tag = replace(make_tag(WORST, assessment=found, shop="Example Hose Shop, 555-0142"), content=content)
    for name in template.names():
        for language, dpi in zip(LANGUAGES, (203, 300, 600, 300), strict=True):
            prove(tag, lay_out(tag, template.load(name).in_languages([language]), dpi))


def test_a_long_shop_name_stays_with_the_day_and_leaves_its_telephone_to_the_page_without_room() -> None:
    """Name, telephone and day of 75 letters kept the hang tag and others from being printed at all."""
    name, phone = "Hydraulikservice Müller & Söhne GmbH & Co. KG", "+49 7123 456 789"
    spec = AssemblySpec.read(WORST)
    row = Registration(spec, assess(spec), built_on=date(2026, 11, 16))
    tag = preview(row, ShopSettings(shop_name=name, shop_phone=phone))
    said = {}
    for label in (template.load(each) for each in template.names()):
        if label.purpose != "do_not_use":
            items = lay_out(tag, label).drawing.items
            said[label.name] = " ".join(item.text for item in items if isinstance(item, Text))
    assert {one for one in said if f"{name}, " not in said[one]} == {"roll_2x1"}
    assert all("2026-11-16" in said[one] for one in said if name in said[one])
    assert phone in said["roll_4x6"] and phone in said["end_tag_a"]
    assert phone not in said["hang_tag"]


@pytest.mark.parametrize(
    ("name", "begins"),
    [
        ("Größmüller & Söhne Hydraulikschläuche Überlingen", "Größmüller"),
        ("Hydraulikschlauchleitungskonfektionierung Müller", "Hydraulikschlau"),
    ],
)
def test_no_label_is_refused_for_a_shop_name_that_has_no_room(name: str, begins: str) -> None:
    """48 letters kept the hang tag and eight others from being printed: where nothing else fits, the name begins."""
    spec = AssemblySpec.read(WORST)
    tag = preview(
        Registration(spec, assess(spec)), ShopSettings(shop_name=name, shop_phone="+49 7551 555 0100")
    )
    for label in (template.load(each) for each in template.names()):
        if label.purpose != "do_not_use":
            items = lay_out(tag, label).drawing.items
            said = " ".join(item.text for item in items if isinstance(item, Text))
            assert begins in said or name in said or label.name == "roll_2x1", label.name


def test_letters_that_no_face_has_are_left_to_a_shorter_form_or_refused_and_never_printed_as_boxes(make_tag):
    """A shop's name of such letters was printed as empty boxes wherever a shorter form would have been taken next."""
    only_phone = make_tag(WORST, shop="Example Hose Shop, 漢 555 0100", shop_name="Example Hose Shop")
    name = make_tag(WORST, shop="漢 Hose Shop, 555 0100", shop_name="漢 Hose Shop")
    for label in (template.load(each) for each in ("hang_tag", "roll_4x6", "end_tag_a", "flag_label")):
        items = lay_out(only_phone, label).drawing.items
        said = " ".join(item.text for item in items if isinstance(item, Text))
        assert "Example Hose Shop" in said and "漢" not in said
    with pytest.raises(TemplateError, match="漢"):
        lay_out(name, template.load("hang_tag"))
