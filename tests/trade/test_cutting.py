"""The shop's fittings: the cut length with its arithmetic, and stock numbers that are another end."""

from __future__ import annotations

from typing import Any

import pytest

from tagger.errors import SpecError, TaggerError
from tagger.messages import Message, length
from tagger.spec import AssemblySpec, End
from tagger.trade import assess
from tagger.trade.cutting import Cut, cut, reaches_mm
from tagger.trade.fittings import CutOff, Fitting, filled, is_the, problems, read_fitting, stock_key

SOURCE = "an invented chart"
STRAIGHT: dict[str, Any] = {"connection": "sae_37_flare", "dash": 12, "form": "female_swivel"}
ELBOW = {**STRAIGHT, "shape": "elbow_90", "drop_mm": 56}


def fitting(number: str = "TW-1", end: dict[str, Any] = STRAIGHT, **more: Any) -> Fitting:
    return Fitting.model_validate({"stock_number": number, "end": end, "source": SOURCE, **more})


BUTT = fitting("TW-1", cut_off_mm=48.5, cut_off_kind="seat_to_hose_butt", insertion_depth_mm=30)
MOUTH = fitting("TW-2", ELBOW, cut_off_mm=85, cut_off_kind="seat_to_shell_mouth", insertion_depth_mm=24)


def _cut(a: Fitting | None, b: Fitting | None, **more: Any) -> Cut:
    ends = {
        name: {**STRAIGHT}
        if one is None
        else {**one.end.model_dump(exclude_none=True), "fitting": one.stock_number}
        for name, one in (("end_a", a), ("end_b", b))
    }
    if a and b and a.end.is_elbow and b.end.is_elbow:
        more["clocking_deg"] = 90
    spec = AssemblySpec.read(
        {"hose": {"standard": "SAE 100R2", "dash": 12}, **ends, "length_mm": 1250, **more}
    )
    return cut(spec, {stock_key(one.stock_number): one for one in (a, b) if one})


def test_the_cut_length_is_the_overall_length_less_both_cut_offs() -> None:
    assert _cut(BUTT, BUTT).length_mm == 1250 - 48.5 - 48.5


def test_insertion_is_only_a_mark_where_the_cut_off_reaches_to_where_the_hose_butts() -> None:
    deeper = BUTT.model_copy(update={"insertion_depth_mm": 45.0})
    assert _cut(deeper, BUTT).length_mm == _cut(BUTT, BUTT).length_mm


def test_insertion_is_added_where_the_dimension_ends_at_the_shells_mouth() -> None:
    found = _cut(MOUTH, BUTT)
    assert found.length_mm == 1250 - (85 - 24) - 48.5
    assert found.end_a.fitting is not None and found.end_a.fitting.cut_off_mm == 85, (
        "kept as its source has it"
    )


def test_the_arithmetic_is_shown_and_adds_up() -> None:
    said = str(_cut(MOUTH, BUTT).arithmetic)
    assert said == "1250 mm − (85 mm − 24 mm insertion) (A) − 48.5 mm (B) = 1140.5 mm"


def test_the_cut_length_comes_before_its_sum_and_the_marks_and_what_is_missing_stands_in_their_place() -> (
    None
):
    marks = ["stock-insertion-mark", "stock-insertion-mark"]
    found = _cut(MOUTH, BUTT)
    assert [line.id for line in found.lines()] == ["stock-cut-length", "stock-cut-arithmetic", *marks]
    assert found.lines()[0].values["length"] == length(1140.5) and found.lines()[1] == found.arithmetic
    assert [line.values["depth"] for line in found.lines()[2:]] == [length(24), length(30)]
    none = _cut(None, None).lines()
    assert [line.id for line in none] == ["stock-cut-unknown"] * 2
    assert [line.id for line in _cut(None, BUTT).lines()] == ["stock-cut-unknown", marks[0]]


@pytest.mark.parametrize(
    ("a", "why"),
    [
        (None, "stock-cut-no-fitting"),
        (fitting("TW-3", insertion_depth_mm=30), "stock-cut-no-cut-off"),
        (fitting("TW-3", cut_off_mm=85, cut_off_kind="seat_to_shell_mouth"), "stock-cut-no-insertion"),
    ],
)
def test_an_unknown_cut_off_is_named_and_never_assumed(a: Fitting | None, why: str) -> None:
    found = _cut(a, BUTT)
    assert (found.length_mm, found.arithmetic) == (None, None)
    assert [message.id for message in found.unknown] == [why]
    assert "end A" in str(found.unknown[0])


def test_a_length_to_the_thread_end_is_not_cut_by_a_cut_off_from_the_seat() -> None:
    found = _cut(BUTT, MOUTH, length_basis="thread_end")
    assert found.length_mm is None
    assert [m.id for m in found.unknown] == ["stock-cut-thread-end"], "an elbow is measured to its centreline"


def test_an_assembly_no_longer_than_its_cut_offs_is_refused() -> None:
    with pytest.raises(TaggerError, match="not longer than its two ends"):
        _cut(BUTT, BUTT, length_mm=97)
    with pytest.raises(TaggerError, match="not longer than its two ends"):
        _cut(BUTT, None, length_mm=48)


def test_a_length_is_held_against_the_mouths_of_the_shells_end_by_end() -> None:
    no_insertion = fitting("TW-3", cut_off_mm=85, cut_off_kind="seat_to_shell_mouth")
    for a, b, reach in (
        (BUTT, BUTT, 2 * (48.5 + 30)),
        (MOUTH, BUTT, 85 + 48.5 + 30),
        (no_insertion, BUTT, 85 + 48.5 + 30),
        (no_insertion, None, 85 + 1.5 * 19),  # the other end: a crimped end of that bore at the least
    ):
        with pytest.raises(TaggerError, match="not longer than its two ends"):
            _cut(a, b, length_mm=reach)
        assert _cut(a, b, length_mm=reach + 2).overall_mm == reach + 2


def test_a_stock_number_fills_in_what_an_end_leaves_out() -> None:
    data = {"hose": {"standard": "SAE 100R2", "dash": 12}, "end_a": {"fitting": "tw-2", "lot": "F-9"},
            "end_b": {"fitting": "TW-1"}, "length_mm": 900}  # fmt: skip
    kept = {"TW-1": BUTT, "TW-2": MOUTH}
    spec = AssemblySpec.read(filled(data, kept))
    assert (spec.end_a.drop_mm, spec.end_a.fitting, spec.end_a.lot) == (56, "TW-2", "F-9")
    assert problems(spec, kept) == []


@pytest.mark.parametrize(
    "other",
    [
        {"connection": "orfs"},
        {"dash": 10},
        {"form": "male"},
        {"shape": "elbow_45"},
        {"material": "brass"},
        {"drop_mm": 75},
    ],
)
def test_a_stock_number_of_another_end_is_refused(other: dict[str, Any]) -> None:
    data = {"hose": {"standard": "SAE 100R2", "dash": 12}, "end_a": {**ELBOW, **other, "fitting": "TW-2"},
            "end_b": STRAIGHT, "length_mm": 900}  # fmt: skip
    kept = {"TW-2": MOUTH}
    [found] = problems(AssemblySpec.read(filled(data, kept)), kept)
    assert (found.field, found.message.id) == ("end_a.fitting", "stock-another-end")


def test_what_is_not_said_of_an_end_on_either_side_makes_it_no_other_one() -> None:
    """A series or a drop that one of the two leaves out; where both say it, it has to be the same."""
    stud = {"connection": "metric_orb", "size": "M27x2", "form": "male", "shape": "elbow_90"}
    for said, other in (({"series": "S"}, {"series": "L"}), ({"drop_mm": 40.0}, {"drop_mm": 56.0})):
        for kept, given, same in (
            ({}, said, True),
            (said, {}, True),
            (said, said, True),
            (said, other, False),
        ):
            one = fitting("TW-5", {**stud, **kept})
            assert is_the(one, End.model_validate({**stud, **given})) is same, (kept, given)


def test_a_stock_number_that_is_not_kept_is_refused_by_name() -> None:
    spec = AssemblySpec.read({"hose": {"standard": "SAE 100R2", "dash": 12}, "end_a": {**STRAIGHT, "fitting": "TW-9"},
                              "end_b": STRAIGHT, "length_mm": 900})  # fmt: skip
    [found] = problems(spec, {})
    assert found.message == Message("stock-not-kept", number="TW-9")


@pytest.mark.parametrize(
    ("more", "field"),
    [
        ({"cut_off_mm": 48}, "cut_off_kind"),
        ({"cut_off_kind": "seat_to_hose_butt"}, "cut_off_mm"),
        ({"insertion_depth_mm": 30, "source": None}, "source"),
        ({"rating_bar": 350}, "rating_source"),
        ({"cut_off_mm": 24, "cut_off_kind": "seat_to_shell_mouth", "insertion_depth_mm": 24}, "cut_off_mm"),
        ({"cut_off_mm": "no length"}, "cut_off_mm"),
        ({"rating_bar": 5000, "rating_source": SOURCE}, "rating_bar"),
        ({"end": {**STRAIGHT, "lot": "F-1"}}, "end.lot"),
    ],
)
def test_a_row_that_cannot_be_is_refused_by_field(more: dict[str, Any], field: str) -> None:
    given = {"stock_number": "TW-1", "end": STRAIGHT, "source": SOURCE, **more}
    with pytest.raises(SpecError) as refused:
        read_fitting(given)
    assert [problem.field for problem in refused.value.problems] == [field]


def test_dimensions_are_read_in_both_unit_systems() -> None:
    row = fitting(cut_off_mm="1 7/8 in", cut_off_kind=CutOff.HOSE_BUTT)
    assert row.seat_to_butt_mm == 47.6


def test_a_tag_and_a_stranger_see_no_stock_number() -> None:
    spec = AssemblySpec.read({"hose": {"standard": "SAE 100R2", "dash": 12, "part": "TW 2W 12"},
                              "end_a": {**STRAIGHT, "fitting": "TW-1"}, "end_b": STRAIGHT, "length_mm": 900})  # fmt: skip
    assert "TW" not in str(spec.carried().as_dict()) and "TW" not in str(spec.without_lots().as_dict())
    again = spec.to_build_again()
    assert (again.hose.part, again.end_a.fitting) == ("TW 2W 12", "TW-1"), "the next hose begins from them"


def test_too_little_free_hose_is_reckoned_with_the_shops_own_cut_offs_where_they_are_known() -> None:
    """The least crimped ends leave enough of 300 mm; these fittings reach 125 and 110 mm in from their seats."""
    long = fitting("TW-3", cut_off_mm=125, cut_off_kind="seat_to_shell_mouth", insertion_depth_mm=40)
    deep = fitting("TW-4", cut_off_mm=80, cut_off_kind="seat_to_hose_butt", insertion_depth_mm=30)
    ends = {
        name: {**STRAIGHT, "fitting": one.stock_number} for name, one in (("end_a", long), ("end_b", deep))
    }
    hose = {"standard": "SAE 100R2", "dash": 12}
    spec = AssemblySpec.read({"hose": hose, **ends, "length_mm": 300})
    kept = {stock_key(one.stock_number): one for one in (long, deep)}
    assert reaches_mm(spec, kept) == (125, 110) and reaches_mm(spec, {}) == (None, None)
    assert "little_free_hose" not in {w.code for w in assess(spec).warnings}
    found = assess(spec, reaches_mm=reaches_mm(spec, kept))
    [said] = [w for w in found.warnings if w.code == "little_free_hose"]
    assert "At most 65 mm" in str(said.message)


def test_dimensions_of_a_fitting_that_are_inches_kept_as_mm_are_refused_where_it_is_used() -> None:
    """1.9 in and 1.2 in, kept as 1.9 mm and 1.2 mm, left the hose 45 mm too long at each end."""
    inches = fitting("TW-3", cut_off_mm=1.9, cut_off_kind="seat_to_hose_butt", insertion_depth_mm=1.2)
    with pytest.raises(TaggerError) as error:
        _cut(inches, BUTT)
    assert [problem.field for problem in error.value.problems] == ["end_a.fitting"]
    assert error.value.problems[0].message.id == "stock-cut-off-too-small"
    short = fitting("TW-3", cut_off_mm=12, cut_off_kind="seat_to_hose_butt", insertion_depth_mm=1.2)
    with pytest.raises(TaggerError) as error:
        _cut(short, BUTT)
    assert error.value.problems[0].message.id == "stock-reach-too-small"


@pytest.mark.parametrize(
    "mixed",
    [
        {"cut_off_mm": 1.9, "cut_off_kind": "seat_to_hose_butt", "insertion_depth_mm": 30},
        {"cut_off_mm": 1.9, "cut_off_kind": "seat_to_hose_butt"},
        {"cut_off_mm": 32.9, "cut_off_kind": "seat_to_shell_mouth", "insertion_depth_mm": 30},
    ],
)
def test_a_cut_off_in_inches_beside_an_insertion_depth_in_mm_is_refused_where_it_is_used(
    mixed: dict[str, Any],
) -> None:
    """1.9 in, kept as 1.9 mm, left the hose 46 mm too long; together with 30 mm they had looked like an end."""
    with pytest.raises(TaggerError) as error:
        _cut(fitting("TW-3", **mixed), BUTT)
    [problem] = error.value.problems
    assert (problem.field, problem.message.id) == ("end_a.fitting", "stock-cut-off-too-small")
