"""The shop's list of fittings, on each of the two databases."""

from __future__ import annotations

import pytest

from tagger.errors import SpecError, StoreError, TaggerError
from tagger.spec import AssemblySpec
from tagger.store import Store
from tagger.trade import assess
from tagger.trade.fittings import Fitting, read_fitting
from tests.store.samples import assessment, spec

SWIVEL = {"connection": "sae_37_flare", "dash": 12, "form": "female_swivel"}
ROW = read_fitting({"stock_number": "TW-1204", "fitting_series": "TW two-wire", "end": SWIVEL, "cut_off_mm": 48.5,
                    "cut_off_kind": "seat_to_hose_butt", "source": "an invented chart"})  # fmt: skip
ELBOW = read_fitting({"stock_number": "TW-1290", "end": {**SWIVEL, "shape": "elbow_90", "drop_mm": 56}})


def _with(number: str, **end: object) -> AssemblySpec:
    return spec(end_a={**SWIVEL, "fitting": number, **end})


def test_the_newest_row_of_a_stock_number_holds(store: Store) -> None:
    store.keep_fittings([ROW, ELBOW], by="Mara")
    newer = ROW.model_copy(update={"cut_off_mm": 49.0})
    store.keep_fitting(newer)
    assert store.fitting(" tw-1204 ") == newer, "in any case and spacing"
    assert store.fittings() == [newer, ELBOW]
    assert store.fittings(limit=1) == [newer] and store.fittings(limit=1, after="TW-1204") == [ELBOW]


@pytest.mark.parametrize(
    ("text", "found"),
    [
        ("1204", ["TW-1204"]),
        ("jic 90", ["TW-1290"]),
        ("two-wire", ["TW-1204"]),
        ("orfs", []),
        ("%", []),
        ("", ["TW-1204", "TW-1290"]),
    ],
)
def test_a_few_letters_find_a_fitting(store: Store, text: str, found: list[str]) -> None:
    store.keep_fittings([ROW, ELBOW])
    assert [fitting.stock_number for fitting in store.fittings(text)] == found


def test_a_list_with_a_stock_number_twice_keeps_nothing(store: Store) -> None:
    twice = Fitting.model_validate({**ROW.as_dict(), "stock_number": "tw-1204"})
    with pytest.raises(StoreError, match="appears twice"):
        store.keep_fittings([ELBOW, ROW, twice])
    assert store.fittings() == []


def test_a_fitting_taken_out_is_no_longer_found_and_records_keep_its_number(store: Store) -> None:
    store.keep_fitting(ROW)
    [made] = store.register(_with("TW-1204"), assessment())
    assert store.drop_fitting("tw-1204") == ROW
    assert store.fittings() == [] and store.assembly(made.number).spec.end_a.fitting == "TW-1204"
    with pytest.raises(StoreError, match="not in the list"):
        store.drop_fitting("TW-1204")
    store.keep_fitting(ROW)
    assert store.fittings() == [ROW]


def test_a_spec_is_filled_in_from_its_stock_numbers(store: Store) -> None:
    store.keep_fittings([ROW, ELBOW])
    read = store.read_spec({"hose": {"standard": "SAE 100R2", "dash": 12}, "end_a": {"fitting": "TW-1204"},
                            "end_b": {"fitting": "tw-1290"}, "length_mm": 900})  # fmt: skip
    assert (read.end_a.form, read.end_b.drop_mm, read.end_b.fitting) == ("female_swivel", 56, "TW-1290")
    assert set(store.fittings_of(read)) == {"TW-1204", "TW-1290"}


@pytest.mark.parametrize(
    ("asked", "why"),
    [
        (_with("TW-1290"), "is another fitting"),
        (_with("TW-1204", dash=10), "is another fitting"),
        (_with("TW-9"), "not in the list"),
    ],
)
def test_nothing_is_registered_with_a_stock_number_of_another_end(
    store: Store, asked: AssemblySpec, why: str
) -> None:
    store.keep_fittings([ROW, ELBOW])
    with pytest.raises(SpecError, match=rf"end_a\.fitting: .*{why}"):
        store.register(asked, assessment())
    assert store.count() == 0


def test_a_backup_holds_the_fittings(
    store: Store, new_url: str, tmp_path_factory: pytest.TempPathFactory
) -> None:
    store.keep_fitting(ROW)
    file = tmp_path_factory.mktemp("copy") / "copy.sqlite3"
    store.backup(file)
    with Store.open(new_url) as again:
        again.restore(file)
        assert again.fittings() == [ROW]


def test_nothing_is_registered_that_is_no_longer_than_its_cut_offs(store: Store) -> None:
    store.keep_fitting(ROW)
    short = _with("TW-1204").model_copy(update={"length_mm": 48.0})
    with pytest.raises(TaggerError, match="not longer than its two ends"):
        store.register(short, assessment())


RATED = ROW.model_copy(update={"rating_bar": 100.0, "rating_source": "an invented sheet"})


def test_a_fittings_own_lower_rating_limits_the_assembly(store: Store) -> None:
    store.keep_fitting(RATED)
    read = store.read_spec({**spec().as_dict(), "end_a": {"fitting": "TW-1204"}})
    found = assess(read).working_pressure
    assert (found.value_bar, found.limited_by, found.source) == (100, "end_a", "an invented sheet")


def test_a_higher_figure_entered_for_the_end_does_not_lift_the_fittings_own(store: Store) -> None:
    store.keep_fitting(RATED)
    entered = {"value_bar": 400, "source": "typed in a hurry"}
    read = store.read_spec({**spec().as_dict(), "end_a": {"fitting": "TW-1204", "rating": entered}})
    assert read.end_a.rating is not None and read.end_a.rating.value_bar == 100


def test_nothing_is_registered_above_the_rating_of_its_fitting(store: Store) -> None:
    store.keep_fitting(RATED)
    asked = _with("TW-1204")
    with pytest.raises(SpecError, match=r"end_a\.fitting: .*rated 100 bar .*below the working pressure"):
        store.register(asked, assess(asked))
    read = store.read_spec(asked.as_dict())
    [made] = store.register(read, assess(read))
    assert made.content.working_pressure_bar == 100


def test_a_rating_entered_for_the_end_makes_it_no_other_fitting(store: Store) -> None:
    store.keep_fitting(ROW)
    read = store.read_spec(
        {
            **spec().as_dict(),
            "end_a": {**SWIVEL, "fitting": "TW-1204", "rating": {"value_bar": 90, "source": "a sheet"}},
        }
    )
    assert read.end_a.rating is not None and read.end_a.rating.value_bar == 90


def test_an_unknown_stock_number_is_told_with_the_nearest_three(store: Store) -> None:
    numbers = ("TW-1204", "TW-1205", "TW-1206", "TW-1207", "QX 9")
    store.keep_fittings([ROW.model_copy(update={"stock_number": number}) for number in numbers])
    store.drop_fitting("TW-1207")
    with pytest.raises(SpecError) as caught:
        store.read_spec({**spec().as_dict(), "end_a": {"fitting": "tw-12O4"}})
    [problem] = caught.value.problems
    assert (problem.field, problem.value) == ("end_a.fitting", "tw-12O4")
    assert all(number in problem.mend for number in numbers[:3]), problem.mend
    assert "TW-1207" not in problem.mend and "QX" not in problem.mend
