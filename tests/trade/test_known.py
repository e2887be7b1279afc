"""How much is known over every assembly a shop could build; the goals for carbon steel."""

from __future__ import annotations

from collections import Counter
from functools import cache
from pathlib import Path

import pytest

import tagger.trade
from tagger.spec import Material
from tagger.trade import known
from tagger.trade.rating import rate
from tagger.trade.tables import Tables, tables
from tests.trade.made_up import HOSE, ending, hose, standard, tables_with
from tests.trade.specs import both, end

STEEL = Material.CARBON_STEEL
README = (Path(tagger.trade.__file__).parent / "README.md").read_text(encoding="utf-8")


@cache
def steel(kept: str = "") -> known.Grid:
    own = known.kept_once(tables(), STEEL, every_form=kept == "every form") if kept else tables()
    return known.grid(own, STEEL)


def unknown(grid: known.Grid, *, every_family: bool = False) -> float:
    families = known.described(tables()) if every_family else known.first_sixteen()
    return known.share(grid.assemblies(families), "unknown")


def test_at_most_a_quarter_of_the_assemblies_in_carbon_steel_is_unknown() -> None:
    assert 0 < unknown(steel()) <= 0.25


def test_at_most_a_tenth_is_unknown_once_a_figure_is_kept_for_each_family_and_size() -> None:
    assert unknown(steel("every form")) <= 0.1
    assert unknown(steel("every form"), every_family=True) <= 0.1
    assert unknown(steel("every form")) < unknown(steel("usual form")) < unknown(steel())


def test_the_readme_states_the_shares() -> None:
    for every_family, name in ((False, "the sixteen of 0.1.0"), (True, "all")):
        families = known.described(tables()) if every_family else known.first_sixteen()
        counted = steel().assemblies(families)
        shares = [known.share(counted, standing) for standing in known.STANDINGS]
        shares += [unknown(steel(kept), every_family=every_family) for kept in ("usual form", "every form")]
        assert f"| {name} | {' | '.join(f'{s:.1%}'.replace('%', ' %') for s in shares)} |" in README


def test_the_shares_are_those_of_the_assemblies_rated_one_by_one() -> None:
    """A hose with two verified ends, one unverified and one unknown: sixteen assemblies."""
    unsure = {"confidence": "memory", "source": "memory: somebody"}
    few = tables_with(
        hose_standards=[standard()],
        hose_pressure=[hose(100)],
        hose_editions=[],
        connections=[r for r in tables().raw["connections"] if (r.family, r.size) == ("sae_37_flare", "12")],
        plain_ends=[],
        flanges=[],
        connection_pressure=[
            ending(120, forms=("female_swivel",)),
            ending(120, forms=("male",), shapes=("straight",), **unsure),
        ],
    )
    counted = known.grid(few, STEEL).assemblies(known.described(few))
    assert counted == one_by_one(few)
    assert counted.total() == 36


def one_by_one(few: Tables) -> Counter[str]:
    ends = [
        end("sae_37_flare", 12, form, shape=shape)
        for form in ("male", "female_swivel", "female_fixed")
        for shape in known.SHAPES
    ]
    found: Counter[str] = Counter()
    for a in ends:
        for b in ends:
            elbows = {"clocking_deg": 0} if a["shape"] != "straight" != b["shape"] else {}
            data = both(HOSE, 12, ends[0]).as_dict() | {"end_a": a, "end_b": b, **elbows}
            answer, _ = rate(type(both(HOSE, 12, ends[0])).read(data), few)
            standings = {part.standing for part in answer.parts}
            assert ("unknown" in standings) == (answer.value_bar is None)
            worst = next(s for s in ("unknown", "unverified", "verified") if s in standings)
            found[worst] += 1
    return found


def test_every_rated_end_has_a_grade() -> None:
    grades = steel().grades
    assert set(grades) <= set(known.GRADES) and grades.total() > 0


@pytest.mark.parametrize("family", known.first_sixteen())
def test_every_family_of_the_first_version_is_met_on_some_hose(family: str) -> None:
    assert steel().ends_of(family).total() > 0  # type: ignore[arg-type]
