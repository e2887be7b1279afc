"""Every shipped template of a hose that may be used tells the whole truth of the pressure, the fluid and the dangers, in every language."""

from __future__ import annotations

import re
from itertools import pairwise

import pytest

from tagger import phrases, rated
from tagger.drawing import Shape, Text
from tagger.i18n import LANGUAGES, Translator
from tagger.messages import Message
from tagger.printing import template
from tagger.printing.content import Tag
from tagger.printing.layout import lay_out
from tagger.spec import Basis, Danger, Tightening
from tests.printing.conftest import RATED, STRAIGHT, TWO_ELBOWS, a_tag

CARRIES_THE_SPEC = [name for name in template.names() if template.load(name).purpose != "do_not_use"]
EVERY = pytest.mark.parametrize("name", CARRIES_THE_SPEC)
IN_EACH = pytest.mark.parametrize("language", LANGUAGES)

MESSAGE_ID = re.compile(r"\b(printing|words)-\w+")  # what a message that is in no catalogue is shown as


def shown(tag: Tag, name: str, language: str = "en") -> str:
    items = lay_out(tag, template.load(name).in_languages([language])).drawing.items
    return " ".join(item.text for item in items if isinstance(item, Text))


@EVERY
@IN_EACH
def test_a_tag_with_an_unknown_end_says_what_the_others_allow_and_has_a_line_to_write_on(
    name: str, language: str
) -> None:
    said = shown(a_tag(STRAIGHT, **RATED["an end not known"]), name, language)
    assert "414 bar" in said and "6000 psi" in said
    assert "__________ bar" in said
    assert Translator(language)("words-not-known") not in said


@EVERY
def test_a_tag_to_be_written_on_is_white_there(name: str) -> None:
    for known, black in (("an end not known", False), ("known", True)):
        drawn = lay_out(a_tag(STRAIGHT, **RATED[known]), template.load(name)).drawing.items
        wide = [
            item
            for item in drawn
            if isinstance(item, Shape) and item.fill == "black" and len(item.points) == 4
        ]
        plates = [
            item for item in wide if max(x for x, _ in item.points) - min(x for x, _ in item.points) > 15
        ]
        assert not plates or black


@EVERY
@IN_EACH
def test_an_unverified_part_is_named_beside_the_figure(name: str, language: str) -> None:
    tag = a_tag(STRAIGHT, working_pressure_bar=190, unverified_parts=("end_b",))
    t, parts = Translator(language), rated.parts(("end_b",))
    marks = {t("words-unverified", parts=parts), t("printing-unverified", parts=parts)}
    said = shown(tag, name, language)
    assert "190 bar" in said and any(" ".join(mark.split()) in " ".join(said.split()) for mark in marks)
    verified = shown(a_tag(STRAIGHT, working_pressure_bar=190), name, language)
    assert not any(mark in verified for mark in marks)


@EVERY
@IN_EACH
def test_dangers_are_told(name: str, language: str) -> None:
    t = Translator(language)
    word = t("report-danger", text="").strip(" :\u00a0")
    safe, beyond = (RATED[which] for which in ("known", "a fluid and a heat beyond the limits"))
    assert word in shown(a_tag(STRAIGHT, **beyond), name, language)
    assert word not in shown(a_tag(STRAIGHT, **safe), name, language)


@EVERY
@IN_EACH
def test_all_dangers_at_once_and_one_alone_are_named_in_words(name: str, language: str) -> None:
    t = Translator(language)
    for dangers in (tuple(Danger), (Danger.VACUUM,)):
        tag = a_tag(TWO_ELBOWS, working_pressure_bar=None, unknown_parts=("hose",), dangers=dangers)
        said = shown(tag, name, language)
        assert not MESSAGE_ID.search(said), said
        for danger, told in zip(dangers, rated.dangers(tag.content), strict=True):
            short, full = t(f"printing-danger-{danger}"), t(told)
            assert any(" ".join(words.split()) in " ".join(said.split()) for words in (short, full)), danger


@IN_EACH
def test_the_smallest_label_takes_two_elbows_two_dangers_and_an_unknown_hose_with_any_fluid(
    language: str,
) -> None:
    """Lines set closer than usual: many of these were refused. None touches the one below it."""
    t, label = Translator(language), template.load("roll_2x1").in_languages([language])
    for fluid in ("mineral_oil", "water_oil_emulsion", "water_glycol", "phosphate_ester", "synthetic_ester",
                  "vegetable_oil", "polyglycol", "transmission_fluid", "lpg", "brake_fluid"):  # fmt: skip
        spec = {**TWO_ELBOWS, "fluid": fluid, "max_temperature_c": 121}
        tag = a_tag(
            spec, **RATED["a fluid and a heat beyond the limits"], unverified_parts=("end_a", "end_b")
        )
        lines = [i for i in lay_out(tag, label).drawing.items if isinstance(i, Text)]
        said = " ".join(line.text for line in lines)
        assert " ".join(t(f"words-fluid-{fluid}").split()) in said and "121 °C" in said
        for above, below in pairwise(lines[1:]):  # the number above them has no descender
            assert below.y - above.y >= above.size * 0.236 + below.size * 0.76 - 0.01, (
                above.text,
                below.text,
            )


@pytest.mark.parametrize("name", [name for name in CARRIES_THE_SPEC if name != "roll_2x1"])
@IN_EACH
def test_a_known_pressure_of_unverified_parts_with_three_dangers_is_printed_whatever_the_fluid(
    name: str, language: str
) -> None:
    """Bar and psi go on one line rather than that the label is refused, as the wrap label was with such fluids."""
    for fluid in ("phosphate_ester", "synthetic_ester", "brake_fluid"):
        tag = a_tag(
            {**TWO_ELBOWS, "fluid": fluid, "max_temperature_c": 121},
            unverified_parts=("hose", "end_a", "end_b"),
            dangers=(Danger.FLUID, Danger.HEAT, Danger.VACUUM),
        )
        said = shown(tag, name, language)
        assert "207 bar" in said and "3000 psi" in said and "121 °C" in said


@IN_EACH
def test_a_danger_is_told_in_full_before_what_is_said_of_an_unknown_pressure(language: str) -> None:
    rated_of = RATED["only an unverified hose known"]
    tag = a_tag(STRAIGHT, **{**rated_of, "dangers": (Danger.FLUID, Danger.HEAT)})
    named = tuple(Message(f"printing-danger-{danger}") for danger in tag.content.dangers)
    t, said = Translator(language), " ".join(shown(tag, "hang_tag", language).split())
    least = " ".join(t(Message("printing-dangers-least", dangers=named)).split())
    assert least not in said
    told = (t(Message("printing-dangers", dangers=named)), *map(t, rated.dangers(tag.content)))
    assert any(" ".join(danger.split()) in said for danger in told)


@EVERY
@IN_EACH
def test_fluid_and_temperature_stand_on_the_tag(name: str, language: str) -> None:
    t, bare = Translator(language), {key: value for key, value in STRAIGHT.items() if key != "fluid"}
    said = shown(a_tag(bare, **RATED["known"]), name, language)
    assert t("words-fluid-not_entered") in said
    assert "100 °C" in said and "212 °F" in said


@pytest.mark.parametrize("name", ["traveller_a5", "roll_4x6", "hang_tag"])
def test_the_lubrication_stands_under_the_torque_where_there_is_room(name: str) -> None:
    """As the tables have it in brief; the page tells it in full."""
    oiled = Tightening(torque_min_nm=95, torque_max_nm=95, lubrication="threads_fluid_or_grease")
    tag = a_tag(STRAIGHT, **RATED["known"], tighten_a=oiled, tighten_b=oiled)
    assert shown(tag, name).count("95 N·m 70 lbf·ft threads lubricated") == 2


@pytest.mark.parametrize(
    "name", ["end_tag_a", "end_tag_b", "flag_label", "wrap_label", "roll_4x2", "sleeve_tag", "hang_tag"]
)
@IN_EACH
def test_a_torque_for_lubricated_threads_says_so_before_the_shape_is_told(name: str, language: str) -> None:
    """The picture shows the shape; the same torque on dry threads is another tightening."""
    oiled = Tightening(
        torque_min_nm=170.5, torque_max_nm=182.5, flats_min=1, flats_max=1.25, flats_basis=Basis.FINGER_TIGHT,
        lubrication="threads_fluid_or_grease",
    )  # fmt: skip
    flare = {
        "connection": "sae_37_flare",
        "dash": 20,
        "form": "female_swivel",
        "shape": "elbow_90",
        "drop_mm": 79,
    }
    spec = {**TWO_ELBOWS, "hose": {"standard": "SAE 100R12", "dash": 20}, "end_a": flare, "end_b": flare}
    said = shown(a_tag(spec, tighten_a=oiled, tighten_b=oiled), name, language)
    lubrication = Translator(language)(phrases.lubrication(oiled) or "")
    assert said.count(lubrication) == said.count(" N·m") > 0
