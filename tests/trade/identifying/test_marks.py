"""What is found on a gauge sheet is corrected by its check line, and nothing that a caliper read is."""

from __future__ import annotations

import numpy as np
import pytest

from tagger.errors import SpecError
from tagger.i18n import LANGUAGES, Translator
from tagger.spec import Form
from tagger.trade.identifying import likelihood, marks
from tagger.trade.identifying.identify import Measurements, identify
from tagger.trade.identifying.likelihood import Errors
from tagger.trade.tables import tables


def found(text: str, check_line: object, **given: object) -> Measurements:
    return Measurements.read(**marks.read(text, check_line, given).values)


@pytest.mark.parametrize("check_line", ["97", "97 mm", "9.7 cm", "3.88 in", "3,88", 97, '3.88"'])
def test_a_sheet_printed_at_97_percent_is_corrected_whichever_line_was_measured(check_line: object) -> None:
    read = found("D26.99 P2.117 H31.75", check_line)
    assert read.thread_od_mm == pytest.approx(26.99 * 0.97)
    assert read.pitch_mm == pytest.approx(2.117 * 0.97, abs=1e-4)
    assert read.hex_mm == pytest.approx(31.75 * 0.97)


def test_an_angle_is_as_it_is_at_every_size_and_needs_no_check_line() -> None:
    assert found("A37", None).seat == found("A37", 103).seat == "37"
    assert marks.read("A37", None, {}).errors is None, "a caliper's diameter beside it is a caliper's still"


def test_what_a_caliper_read_is_not_corrected() -> None:
    read = found("P2.117", 97, thread_od="27", hex="1 1/4 in")
    assert read.thread_od_mm == 27
    assert read.hex_mm == 31.75
    assert read.pitch_mm == pytest.approx(2.117 * 0.97, abs=1e-4)


@pytest.mark.parametrize(
    "check_line", ["96.9", "103.1", "3.87 in", "4.13 in", "50", "1 m", "0", "10 in", "254"]
)
def test_more_than_3_percent_off_is_refused_with_how_to_print(check_line: str) -> None:
    with pytest.raises(SpecError) as refused:
        found("D26.99", check_line)
    assert refused.value.problems[0].field == "scale"
    assert "100 %" in Translator().mend(refused.value.problems[0].message)


@pytest.mark.parametrize(
    ("text", "check_line", "given", "field", "id"),
    [
        ("D26.99", "", {}, "scale", "identify-scale-missing"),
        ("D26.99", "101.6", {}, "scale", "identify-scale-other-line"),
        ("", "100", {"thread_od": "27"}, "scale", "identify-scale-alone"),
        ("D26.99 D27.00", "100", {}, "found", "identify-mark-twice"),
        ("D26.99", "100", {"thread_od": "27"}, "found", "identify-mark-twice"),
        ("D26.99 F24.70", "100", {}, "found", "identify-mark-twice"),
        ("F24.70", "100", {"thread_od": "27"}, "found", "identify-mark-twice"),
        ("D26.99 X3", "100", {}, "found", "identify-mark-unreadable"),
        ("26.99", "100", {}, "found", "identify-mark-unreadable"),
        ("D26.99.1", "100", {}, "found", "identify-mark-unreadable"),
        ("D" + "9" * 5000, "100", {}, "found", "identify-marks-many"),
        ("D26.99", "wide", {}, "scale", "spec-unit-unreadable"),
        ("D26.99", "nan", {}, "scale", "spec-unit-unreadable"),
    ],
)
def test_what_cannot_be_read_is_refused_by_field_with_its_mend_in_every_language(
    text: str, check_line: str, given: dict[str, object], field: str, id: str
) -> None:
    with pytest.raises(SpecError) as refused:
        found(text, check_line, **given)
    problem = refused.value.problems[0]
    assert (problem.field, problem.message.id) == (field, id)
    assert all(Translator(language).mend(problem.message) for language in LANGUAGES)


def test_what_cannot_be_read_is_told_by_its_first_twenty_letters() -> None:
    with pytest.raises(SpecError) as refused:
        found("D26.99 abcdefghijklmnopqrstuvwxyz", "100")
    assert [p.message.values["given"] for p in refused.value.problems] == ["ABCDEFGHIJKLMNOPQRST"]


def test_a_decimal_comma_small_letters_and_any_separator_are_read() -> None:
    assert found("d26,99; p2.117+a37", 100) == found("D26.99 P2.117 A37", "4 in")


@pytest.mark.parametrize("printed", [0.97, 1.0, 1.03])
def test_every_thread_found_on_a_sheet_of_97_to_103_percent_stays_among_the_first_answers(
    printed: float,
) -> None:
    """Somebody holds a sound part to the sheet and takes the bar and the comb that look most like it, if any does."""
    known = tables().threads
    bars = np.array(sorted({row.thread_od_mm for row in known.values()}))
    combs = np.array(sorted({row.pitch_mm for row in known.values()}))
    pool = likelihood.pool(tables())
    first, held, wrong = 0, 0, []
    rng = np.random.default_rng(11)
    asked = [
        n for n in range(len(pool)) if pool.forms[n] is Form.MALE and not np.isnan(pool.low["tpi"][n, 0])
    ]
    for n in asked:
        part = rng.uniform(pool.low["thread"][n, 0], pool.high["thread"][n, 0])
        pitch = 25.4 / pool.low["tpi"][n, 0]
        bar = bars[np.argmin(abs(bars * printed - part))]
        if abs(bar * printed - part) > 0.6:
            continue  # whoever looks sees that no bar is as wide
        held += 1
        comb = combs[np.argmin(abs(combs * printed - pitch))]
        words = f"{marks.mark('D', bar)} {marks.mark('P', comb)}"
        read = marks.read(words, printed * 100, {"form": "male"})
        answer = identify(Measurements.read(**read.values), tables(), read.errors)
        threads = [candidate.thread for candidate in answer.candidates]
        own = (pool.families[n], pool.sizes[n])
        named = [(candidate.connection, candidate.size) for candidate in answer.candidates]
        first += pool.threads[n] == threads[0] or own == named[0]
        if own not in named and pool.threads[n] not in threads:
            wrong.append((own, words, threads[:3]))
    assert not wrong
    assert held > 0.7 * len(asked)
    assert first > 0.5 * held


def test_without_the_correction_a_sheet_of_97_percent_would_name_another_thread() -> None:
    """G 3/4 held to a sheet of 97 %: the bar of M27 is as wide. The mark alone says M27, the correction does not."""
    uncorrected = identify(Measurements.read(form="male", thread_od=27.0), tables(), Errors())
    assert not any(candidate.thread.startswith("G3/4") for candidate in uncorrected.candidates[:3])
    corrected = identify(found("D27.00 P1.814", 97, form="male"), tables(), marks.PAPER)
    assert corrected.candidates[0].thread.startswith(("G3/4", "R3/4"))


def test_paper_is_taken_to_be_read_more_roughly_than_a_caliper() -> None:
    usual = Errors()
    for name in ("thread", "hex", "flange_od"):
        assert usual.of(name) < marks.PAPER.of(name) <= 2 * usual.of(name), "twice as roughly at most"
