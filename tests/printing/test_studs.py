"""A BSPP end without a nut: its torque is a stud's, too high for the nut of the same thread."""

import pytest

from tagger.drawing import Text
from tagger.i18n import LANGUAGES, Translator
from tagger.messages import Message
from tagger.printing import template
from tagger.printing.layout import lay_out
from tagger.printing.template import EndBox, TighteningBox
from tagger.spec import Tightening
from tests.printing.conftest import STRAIGHT, a_tag

MALE = {"connection": "bspp", "form": "male", "size": "3/4"}
SWIVEL = {"connection": "bspp", "form": "female_swivel", "size": "3/4"}
STUD = Tightening(torque_min_nm=115, torque_max_nm=175)  # made up
TELLING = [
    name
    for name in template.names()
    if any(isinstance(box, EndBox | TighteningBox) for box in template.load(name).box)
]


def said(name, language, end, tighten):
    """The words of a label of two such ends, without regard to how they are broken into lines."""
    tag = a_tag({**STRAIGHT, "end_a": end, "end_b": end}, tighten_a=tighten, tighten_b=tighten)
    label = template.load(name).model_copy(update={"languages": (language,)})
    return " ".join(item.text for item in lay_out(tag, label).drawing.items if isinstance(item, Text))


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("name", TELLING)
def test_a_studs_torque_never_stands_without_what_it_is_too_high_for(name, language):
    limit = Translator(language)(Message("printing-stud-short"))
    assert limit in said(name, language, MALE, STUD)
    assert limit not in said(name, language, SWIVEL, STUD)


@pytest.mark.parametrize("name", TELLING)
def test_the_torque_of_a_nut_that_an_older_tag_carries_on_a_stud_is_not_printed(name):
    nut = Tightening(torque_min_nm=117.7, torque_max_nm=117.7)  # of the tables' hose union nut, 3/4
    assert "117.7" not in said(name, "en", MALE, nut)
    assert "117.7" in said(name, "en", SWIVEL, nut)
