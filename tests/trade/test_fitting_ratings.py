"""What a fitting's own rating does to a spec, and what has none says nothing."""

from __future__ import annotations

from tagger.spec import AssemblySpec, GivenRating
from tagger.trade.fittings import Fitting, rating_problems, stock_key, with_ratings
from tests.trade.specs import end, example

FLARE = end("sae_37_flare", 12)


def _spec(entered_bar: float | None = None) -> AssemblySpec:
    rating = {} if entered_bar is None else {"rating": {"value_bar": entered_bar, "source": "sheet 9"}}
    return example(end_a={**FLARE, "fitting": "F-12", **rating}, clocking_deg=None)


def _rated_by(spec: AssemblySpec, **fitting: object) -> GivenRating | None:
    row = Fitting.model_validate({"stock_number": "F-12", "end": FLARE, **fitting})
    return with_ratings(spec, {stock_key("F-12"): row}).end_a.rating


def test_the_lower_of_a_fittings_rating_and_an_entered_one_holds() -> None:
    rated = {"rating_bar": 180, "rating_source": "list 3"}
    for entered, holds, source in ((None, 180, "list 3"), (200, 180, "list 3"), (160, 160, "sheet 9")):
        found = _rated_by(_spec(entered), **rated)
        assert found is not None and (found.value_bar, found.source) == (holds, source)


def test_a_rating_is_confirmed_where_whoever_kept_the_fitting_confirmed_it_and_else_not() -> None:
    for kept in (True, None):
        found = _rated_by(_spec(), rating_bar=700, rating_source="list 3", rating_confirmed=kept)
        assert found is not None and bool(found.confirmed) is bool(kept)


def test_a_fitting_without_a_rating_changes_none() -> None:
    assert _rated_by(_spec()) is None
    entered = _rated_by(_spec(200))
    assert entered is not None and entered.value_bar == 200
    assert with_ratings(_spec(200), {}) == _spec(200)


def test_an_assembly_above_its_fittings_rating_is_a_problem_of_that_end() -> None:
    row = Fitting.model_validate(
        {"stock_number": "F-12", "end": FLARE, "rating_bar": 180, "rating_source": "list 3"}
    )
    for working, wrong in ((180.0, 0), (180.04, 0), (180.1, 1), (None, 0)):
        assert len(rating_problems(_spec(), working, {stock_key("F-12"): row})) == wrong
