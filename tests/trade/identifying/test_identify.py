"""From measurements to candidates: ranked, honest about look-alikes, and what to measure next."""

from __future__ import annotations

import pytest

from tagger import phrases
from tagger.errors import SpecError
from tagger.i18n import LANGUAGES, Translator
from tagger.messages import Message
from tagger.spec import Form
from tagger.trade.identifying import likelihood
from tagger.trade.identifying.identify import Identification, Measurements, identify
from tests.trade.made_up import tables_with


def of(**given: object) -> Identification:
    return identify(Measurements.read(**given))  # type: ignore[arg-type]


def names(found: Identification) -> list[tuple[str, str]]:
    return [(c.connection, c.size) for c in found.candidates]


def test_a_male_of_1_1_16_with_12_tpi_and_37_degrees_is_a_12() -> None:
    found = of(form="male", thread_od="1 1/16 in", tpi="12", seat="37")
    assert names(found)[0] == ("sae_37_flare", "12")
    assert found.candidates[0].form is Form.MALE
    assert found.candidates[0].likelihood > 0.9


def test_its_female_measures_about_an_inch_inside() -> None:
    found = of(form="female_swivel", thread_id="1 in", tpi=12, seat="37")
    assert names(found)[0] == ("sae_37_flare", "12")


def test_a_shared_thread_leaves_both_flares_and_asks_for_the_seat() -> None:
    found = of(form="male", thread_od="3/4 in", tpi=16)
    shared = {("sae_37_flare", "8"), ("sae_45_flare", "8"), ("sae_orb", "8"), ("sae_flareless", "8")}
    assert set(names(found)[:4]) == shared
    assert found.remaining == 4
    assert found.measure_next is not None and found.measure_next.feature == "seat"
    assert found.summary.id == "identify-some"
    assert "fit-alike-flares" in {alike.id for c in found.candidates for alike in c.look_alikes}


def test_a_37_thread_with_a_45_seat_is_never_a_match() -> None:
    found = of(form="male", thread_od="26.99", tpi=12, seat="45")
    flare = next(c for c in found.candidates if c.connection == "sae_37_flare")
    assert flare.contradicts == ("seat",)
    assert "identify-seat-differs" in {reason.id for reason in flare.reasons}
    assert found.summary.id == "identify-other-seat"


def test_m22_has_four_look_alikes_and_the_seat_separates_them() -> None:
    found = of(form="male", thread_od="21.9", pitch="1.5")
    assert set(names(found)[:4]) == {
        ("din24_light", "15"), ("din24_heavy", "14"), ("metric_orb", "M22x1.5"), ("jis_30", "M22x1.5"),
    }  # fmt: skip
    assert found.measure_next is not None and found.measure_next.feature in ("nose", "seat")


def test_light_and_heavy_series_are_separated_by_the_socket_and_by_a_tube() -> None:
    found = of(form="male", thread_od="22", pitch="1.5", seat="24")
    assert found.remaining == 2
    assert found.measure_next is not None and found.measure_next.feature == "nose"
    assert names(of(form="male", thread_od="22", pitch="1.5", seat="24", tube_od="14"))[0] == (
        "din24_heavy",
        "14",
    )


def test_npt_and_bspp_of_1_2_in_are_named_as_look_alikes() -> None:
    found = of(form="male", thread_od="21", tpi=14)
    assert {"npt", "bspp"} <= {c.connection for c in found.candidates[: found.remaining]}
    assert found.remaining > 1


def test_flanges_are_told_by_head_and_bolts() -> None:
    assert names(of(flange_od="44.4"))[0] == ("flange_code61", "16")
    assert names(of(form="flange_head", bolt_spacing="57.2"))[0] == ("flange_code62", "16")


def test_likelihoods_are_shares_of_one_and_fall() -> None:
    shares = [c.likelihood for c in of(form="male", thread_od="19").candidates]
    assert shares == sorted(shares, reverse=True)
    assert sum(shares) <= 1 + 1e-9


def test_nothing_that_fits_is_said_and_not_a_match() -> None:
    found = of(form="male", thread_od="150")
    assert found.summary.id == "identify-closest"
    best = found.candidates[0]
    assert best.contradicts == ("thread",)
    assert [reason.values["fits"] for reason in best.reasons] == ["no"]


def test_every_reason_says_whether_the_reading_fits_and_those_that_do_not_contradict() -> None:
    """But a hexagon, which contradicts nothing: manufacturers differ."""
    read = {"form": "male", "thread_od": "26.99", "tpi": 10.4, "hex": 60}
    flare = next(c for c in of(**read).candidates if (c.connection, c.size) == ("sae_37_flare", "12"))
    said = {reason.id: reason.values.get("fits") for reason in flare.reasons}
    assert said == {
        "identify-reading-thread": "yes",
        "identify-reading-tpi": "no",
        "identify-reading-hex": "no",
    }
    assert flare.contradicts == ("tpi",)


@pytest.mark.parametrize(("side", "fits"), [("male", True), ("female", False)])
def test_what_the_eye_says_fits_or_contradicts(side: str, fits: bool) -> None:
    male = next(
        c for c in of(thread_od="1 1/16 in", tpi=12, side=side).candidates if c.connection == "sae_37_flare"
    )
    assert male.reasons[-1].id == ("identify-looks-fits" if fits else "identify-looks-differs")
    assert male.reasons[-1].values["answer"] == Message(f"identify-answer-side-{side}")
    assert male.contradicts == (() if fits else ("side",))


def test_tables_without_any_end_of_a_form_name_nothing() -> None:
    found = identify(Measurements.read(form="eye", hex=32), tables_with(plain_ends=[], flanges=[]))
    assert (found.candidates, found.remaining, found.measure_next) == ((), 0, None)
    assert found.summary.id == "identify-nothing"


@pytest.mark.parametrize("word", ["don't know", "?", "", None])
def test_not_knowing_the_pitch_is_an_answer(word: object) -> None:
    found = of(form="male", thread_od="1 1/16 in", tpi=word, seat="37")
    assert names(found)[0] == ("sae_37_flare", "12")


@pytest.mark.parametrize(
    ("name", "least", "most", "beyond"),
    [("tpi", 4, 80, (3.9, 80.1)), ("pitch", 0.3, 6, (0.29, 6.1)), ("hex", 0.1, 999.9, (0, 1000, 1000.5))],
)
def test_readings_that_no_fitting_has_are_refused(
    name: str, least: float, most: float, beyond: tuple[float, ...]
) -> None:
    for sound in (least, most):
        assert Measurements.read(**{name: sound}).readings()  # type: ignore[arg-type]
    for wrong in beyond:
        with pytest.raises(SpecError) as refused:
            Measurements.read(**{name: wrong})  # type: ignore[arg-type]
        assert refused.value.problems[0].field == name


@pytest.mark.parametrize("pitch_mm", [1.0, 1.5, 2.0, 3.0])
def test_a_sound_parallel_thread_measures_within_grade_6(pitch_mm: float) -> None:
    """ISO 965-1 in micrometres: 180 P^(2/3) - 3.15 / P^(1/2) below the crest, 230 P^0.7 above the bore."""
    crest_um, bore_um = 180 * pitch_mm ** (2 / 3) - 3.15 / pitch_mm**0.5, 230 * pitch_mm**0.7
    low, high = likelihood.zone("metric", 30, 28, pitch_mm, Form.MALE)
    assert (high, (high - low) * 1000) == (30, pytest.approx(crest_um, abs=1))
    low, high = likelihood.zone("metric", 30, 28, pitch_mm, Form.FEMALE_SWIVEL)
    assert (low, (high - low) * 1000) == (28, pytest.approx(bore_um, abs=1))


@pytest.mark.parametrize(
    ("given", "field"),
    [
        ({"form": "male", "thread_id": "1 in"}, "thread_id"),
        ({"form": "female_swivel", "thread_od": "1 in"}, "thread_od"),
        ({"thread_od": "big"}, "thread_od"),
        ({"thread_od": 12, "tpi": 900}, "tpi"),
        ({"thread_od": 12, "tpi": 12, "pitch": 2}, "pitch"),
        ({"thread_od": 12, "seat": "38"}, "seat"),
        ({"form": "mael"}, "form"),
        ({}, "measurements"),
    ],
)
def test_what_cannot_be_read_is_refused_by_name(given: dict[str, object], field: str) -> None:
    with pytest.raises(SpecError) as refused:
        Measurements.read(**given)  # type: ignore[arg-type]
    assert refused.value.problems[0].field == field


def test_all_lookalikes_are_named_in_words() -> None:
    (alike,) = [
        t
        for t in of(form="male", thread_od="26.99", tpi=12, seat="37").candidates[0].look_alikes
        if t.values["other"] == phrases.connection("sae_orb")
    ]
    assert alike.values["sizes"] == ("-12",)


@pytest.mark.parametrize("given", [{"seat": "37"}, {"form": "male"}, {"tpi": 12}, {"hex": 32}])
def test_a_single_reading_leaves_many_and_says_so_and_what_to_measure_next(given: dict[str, object]) -> None:
    found = of(**given)
    assert found.remaining > 4
    values = found.summary.values
    assert isinstance(values["count"], int) and 4 < values["count"] <= found.remaining
    assert isinstance(values["names"], tuple) and len(set(values["names"])) == 4
    assert found.measure_next is not None and found.measure_next.feature not in given


@pytest.mark.parametrize("form", ["male", "female_fixed", "flange_head", None])
def test_a_hexagon_alone_is_read_for_families_without_one_too(form: str | None) -> None:
    found = of(form=form, hex=32)
    assert found.candidates
    assert not any("nan" in str(reason) for c in found.candidates for reason in c.reasons)


@pytest.mark.parametrize("language", LANGUAGES)
def test_a_reason_is_told_in_the_readers_language_with_its_decimal_sign(language: str) -> None:
    (thread, *_) = of(form="male", thread_od="26.89", tpi=12, seat="37").candidates[0].reasons
    said = Translator(language)(thread)
    assert ("26.89 mm" if language == "en" else "26,89 mm") in said
