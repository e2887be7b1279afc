"""What is asked next, and how often the right connection comes first once it is answered."""

from __future__ import annotations

import numpy as np
import pytest

from tagger.errors import SpecError
from tagger.spec import Series
from tagger.trade.identifying import likelihood, measuring, simulate
from tagger.trade.identifying.identify import Identification, Measurements, identify
from tagger.trade.identifying.likelihood import Errors
from tagger.trade.identifying.readings import ASKED
from tagger.trade.tables import tables

TAPER = {"form": "male", "thread_od": "21", "tpi": 14, "seat": "taper"}
CONE_24 = {"pitch": "1.5", "seat": "24"}


def of(**given: object) -> Identification:
    return identify(Measurements.read(**given))  # type: ignore[arg-type]


def wanted(found: Identification) -> str | None:
    return found.measure_next.feature if found.measure_next else None


def matches(found: Identification) -> list[tuple[str, str]]:
    return [(c.connection, c.size) for c in found.candidates if not c.contradicts]


def test_a_rough_reading_rules_out_less_and_is_asked_for_again() -> None:
    """A photo's 27.6 mm ± 0.8 mm had ruled a 1 1/16-12 thread (26.99 mm) out, as a caliper's 27.6 mm does."""
    exact, rough = (of(form="male", thread_od=read, tpi=12) for read in ("27.6 mm", "27.6 mm ± 0.8 mm"))
    assert ("sae_37_flare", "12") not in matches(exact) and ("sae_37_flare", "12") in matches(rough)
    assert rough.remaining >= 3, "the other threads of about that size stand beside it"
    seen = {"form": "male", "pitch": "1.5", "seat": "24"}
    for cannot, again in (("nose,hex", True), ("nose,hex,thread", False)):
        found = of(**seen, thread_od="19.1 mm ± 2 mm", cannot=cannot)
        assert (wanted(found) == "thread") is again, "measured better, it tells most of what is left"
    finer = of(form="male", thread_od="26.9 mm ± 0.01 mm", tpi=12)
    assert finer == of(form="male", thread_od="26.9 mm", tpi=12), "never finer than a caliper: threads wear"


@pytest.mark.parametrize(
    "read", ["26.9 ±", "26.9 ± 0", "26.9 mm ± 14 mm", "26.9 ± x", "± 3", "26.9 ± -1", "1 ± 1 ± 1"]
)
def test_a_band_that_is_none_is_refused_with_its_field(read: str) -> None:
    with pytest.raises(SpecError) as caught:
        of(form="male", thread_od=read)
    [problem] = caught.value.problems
    assert (problem.field, problem.value, problem.message.id) == ("thread_od", read, "identify-not-a-band")


def test_a_band_of_a_pitch_is_one_of_threads_per_inch() -> None:
    """25.4 / 1.764 = 14.40 and 25.4 / 1.864 = 13.63: half of their difference is two standard deviations."""
    slips = dict(Measurements.read(form="male", pitch="1.814 ± 0.05").slips)
    assert slips == {"tpi": pytest.approx((25.4 / 1.764 - 25.4 / 1.864) / 4, rel=0.01)}


def test_what_is_less_than_twice_as_likely_is_a_tie_that_the_origin_breaks() -> None:
    given = {"form": "male", "thread_od": "8.5 mm"}
    first, second, *_ = of(**given, origin="europe").candidates
    assert first.connection == "bspt" and first.likelihood < second.likelihood < 2 * first.likelihood
    assert of(**given).candidates[0].likelihood == second.likelihood


def test_what_the_eye_says_of_a_thing_that_an_end_has_not_speaks_neither_for_nor_against_it() -> None:
    flange = of(side="none", seals="face", shape="taper", flange_od="50.8 mm").candidates[0]
    assert flange.connection == "flange_code61" and flange.contradicts == ()
    assert "identify-no-value" in [reason.id for reason in flange.reasons]


def test_flanges_of_one_size_and_two_codes_are_look_alikes() -> None:
    """Code 61 -12 and code 62 -12: their bolts are 47.6 and 50.8 mm apart (ISO 6162-1 and -2)."""
    [found] = [c for c in of(form="flange_head", bolt_spacing="47.6 mm").candidates
               if (c.connection, c.size) == ("flange_code61", "12")]  # fmt: skip
    assert [(str(one.values["other"]), one.values["sizes"]) for one in found.look_alikes] == [
        ("Code 62 flange", ("-12",))
    ]


def test_with_pitch_and_seat_and_what_is_asked_next_95_of_100_come_first_and_all_are_among_three() -> None:
    pool = likelihood.pool(tables())
    places = measuring.measurable(pool)
    assert set(range(len(pool))) - set(places) == {
        n for n in range(len(pool)) if (pool.families[n], pool.sizes[n]) == ("staple", "24")
    }, "the spigot of one staple is not known"
    found = measuring.rate_when_asked(tables(), places, 1)
    assert found.first >= 0.95
    assert found.among_three == 1.0
    assert found.questions < 1


def test_two_tapers_are_told_apart_by_the_flank_angle_and_npt_and_nptf_are_never_asked_apart() -> None:
    found = of(**TAPER)
    assert {name for name, _ in matches(found)} >= {"npt", "nptf", "bspt"}
    assert wanted(found) == "flank"
    whitworth = of(**TAPER, flank="55")
    assert matches(whitworth)[0] == ("bspt", "1/2")
    assert "npt" not in {name for name, _ in matches(whitworth)}
    american = of(**TAPER, flank=60)
    assert matches(american)[:2] == [("npt", "1/2"), ("nptf", "1/2")]
    assert wanted(american) is None


@pytest.mark.parametrize(
    ("end", "nose"),
    [
        ({"form": "male", "thread_od": "22"}, {"15": "din24_light", "14": "din24_heavy"}),
        ({"form": "female_swivel", "thread_id": "20.5"}, {"14.8": "din24_light", "13.8": "din24_heavy"}),
    ],
)
def test_a_hose_end_is_asked_for_its_nose_or_socket_and_never_for_a_tube(
    end: dict[str, str], nose: dict[str, str]
) -> None:
    assert "tube_od" not in ASKED
    assert wanted(of(**end, **CONE_24)) == "nose"
    for reading, family in nose.items():
        best = of(**end, **CONE_24, nose=reading).candidates[0]
        assert (best.connection, best.contradicts) == (family, ())
        assert "identify-reading-nose" in {reason.id for reason in best.reasons}


def test_what_a_reading_tells_is_less_by_the_share_of_readings_that_tell_nothing() -> None:
    """Two ends that differ in everything, as likely: a bit to tell, but for readings far off and nuts of no table."""
    pool = likelihood.pool(tables())
    ends = [(pool.families[n], pool.sizes[n], pool.forms[n]) for n in range(len(pool))]
    two = np.array([ends.index(("sae_37_flare", size, "female_swivel")) for size in ("4", "20")])  # type: ignore[arg-type]
    for feature, told in (("thread", 1 - likelihood.FAR_OFF), ("hex", 1 - likelihood.OTHER_HEX)):
        bits = likelihood.information(pool, feature, two, np.array([0.5, 0.5]), Errors())
        assert bits == pytest.approx(told, abs=0.03), feature
    assert likelihood.information(pool, "seat", two, np.array([0.5, 0.5]), Errors()) == 0, (
        "both have 37 degrees"
    )


def test_what_is_simulated_errs_about_the_true_figure() -> None:
    """As far below it as above, by the usual error: the share that is right rests on it."""
    pool, rng, errors = likelihood.pool(tables()), np.random.default_rng(3), Errors()
    place = next(n for n in range(len(pool)) if (pool.families[n], pool.sizes[n]) == ("din24_light", "15"))
    for feature in ("thread", "tpi", "nose"):
        true = (pool.low[feature][place, 0] + pool.high[feature][place, 0]) / 2
        one_by_one = [simulate._read(pool, place, rng, errors, feature) for _ in range(400)]
        together = simulate.readings(pool, place, 400, rng, errors, nose=True)[feature]
        for drawn in (one_by_one, together):
            assert np.mean(drawn) == pytest.approx(true, abs=0.2 * errors.of(feature)), feature
            assert 0.8 < np.std(drawn) / errors.of(feature) < 1.5, feature
    pitch = pool.low["tpi"][place, 0]
    cut = simulate.readings(pool, place, 400, rng, errors, slips=1.0)["tpi"]
    assert (cut.min(), cut.max()) == (pytest.approx(pitch - errors.tpi), pytest.approx(pitch + errors.tpi))


def test_what_cannot_be_measured_leads_to_the_next_best_and_then_to_nothing() -> None:
    cannot: list[str] = []
    given = {"form": "male", "thread_od": "3/4 in", "tpi": 16}
    while (feature := wanted(of(**given, cannot=cannot))) is not None:
        assert feature not in cannot
        cannot.append(feature)
    assert cannot[0] == "seat" and len(cannot) > 1
    assert of(**given, cannot=cannot).remaining == 4  # with flareless


def test_what_cannot_be_measured_is_named_as_the_readings_are() -> None:
    assert Measurements.read(form="male", cannot="thread-od, pitch").cannot == {"thread", "tpi"}
    with pytest.raises(SpecError) as refused:
        Measurements.read(form="male", cannot="colour")
    assert refused.value.problems[0].field == "cannot"


def test_a_pitch_in_millimetres_is_answered_in_millimetres() -> None:
    (reason,) = [
        r
        for r in of(form="male", thread_od="22", pitch="1.5", seat="24").candidates[0].reasons
        if r.id in ("identify-reading-pitch", "identify-reading-tpi")
    ]
    assert (reason.id, reason.values["measured"], reason.values["nominal"]) == (
        "identify-reading-pitch",
        1.5,
        1.5,
    )


def test_a_metric_stud_is_asked_for_its_series_and_carries_it() -> None:
    stud = {"form": "male", "thread_od": "22", "pitch": "1.5", "seat": "boss"}
    found = of(**stud)
    assert found.candidates[0].series is None and wanted(found) == "series"
    told = of(**stud, series="s")
    assert told.candidates[0].series is Series.HEAVY and wanted(told) is None
    assert told.candidates[0].size_text == "M22x1.5 S"
    assert wanted(of(**stud, cannot="series")) is None
    assert of(form="male", thread_od="22", **CONE_24, series="S").candidates[0].series is None


def test_a_reading_that_cannot_tell_bspp_from_jis_60_is_a_tie_and_asks_nose_or_funnel() -> None:
    given = {"form": "male", "thread_od": "20.9", "tpi": 14, "seat": "60"}
    found = of(**given)
    assert found.candidates[0].likelihood == pytest.approx(found.candidates[1].likelihood)
    assert [c.connection for c in found.candidates[:2]] == ["bspp", "jis_60"]
    assert wanted(found) == "cone"
    assert found.tie is not None and found.tie.id == "identify-tie-elsewhere"
    for cone, family in (("inside", "bspp"), ("outside", "jis_60")):
        told = of(**given, cone=cone)
        assert told.candidates[0].connection == family and told.tie is None
        assert len({"bspp", "jis_60"} & {c.connection for c in told.candidates[: told.remaining]}) == 1


@pytest.mark.parametrize(("origin", "family"), [("asia", "jis_60"), ("europe", "bspp")])
def test_the_origin_of_the_machine_breaks_a_tie_and_says_so(origin: str, family: str) -> None:
    given = {"form": "male", "thread_od": "20.9", "tpi": 14, "seat": "60"}
    found, without = of(**given, origin=origin), of(**given)
    assert found.candidates[0].connection == family
    assert found.tie is not None and found.tie.id == "identify-tie-there"
    assert wanted(found) == "cone", "the question stays"
    shares = {(c.connection, c.size): c.likelihood for c in without.candidates}
    assert {(c.connection, c.size): c.likelihood for c in found.candidates} == shares, (
        "origin makes nothing likelier"
    )


@pytest.mark.parametrize("origin", [None, "europe", "north_america", "asia"])
@pytest.mark.parametrize("cannot", ["", "seat"])
def test_no_origin_decides_between_37_and_45_degrees(origin: str | None, cannot: str) -> None:
    found = of(form="male", thread_od="3/4 in", tpi=16, origin=origin, cannot=cannot)
    flares = {str(c.connection): c.likelihood for c in found.candidates if "flare" in c.connection}
    assert flares["sae_37_flare"] == pytest.approx(flares["sae_45_flare"])
    assert found.tie is None or not {"sae_37_flare", "sae_45_flare"} & {
        str(name.values["connection"])  # type: ignore[union-attr]
        for name in found.tie.values["first"]  # type: ignore[union-attr]
    }
    assert found.remaining >= 2


def test_every_answer_says_what_the_tables_do_not_hold() -> None:
    for found in (of(**TAPER), of(form="male", thread_od="150"), of(form="flange_head", bolt_spacing="57.2")):
        assert found.lacks.id == "identify-lacks"
        assert len(found.lacks.values["names"]) >= 4  # type: ignore[arg-type]


def test_a_candidate_that_does_not_match_is_not_among_those_that_remain() -> None:
    found = of(**TAPER, flank="55")
    remaining = found.candidates[: found.remaining]
    assert [c.contradicts for c in remaining] == [()] * len(remaining)
    assert found.summary.id == "identify-only"
