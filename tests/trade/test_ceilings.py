"""What a phone holds a tag's digits against: never below what the tables rate, never a figure of its own."""

from __future__ import annotations

from functools import cache

import pytest

from tagger.errors import TradeError
from tagger.spec import Connection, Form, Hose, TagContent
from tagger.trade import assess, ceilings, rating
from tagger.trade.present import overrated
from tagger.trade.tables import tables
from tests.trade.made_up import assembly, made_up
from tests.trade.specs import an_end, both


@cache
def hoses() -> dict[str, float]:
    return ceilings.of_hoses(tables())


@cache
def ends() -> dict[str, float]:
    return ceilings.of_ends(tables())


def test_every_rated_hose_has_its_own_rating_and_no_other_has_one() -> None:
    sizes = {
        f"{name}|{dash}": Hose(standard=name, dash=dash)
        for name in tables().standards
        for dash in range(1, 64)
    }
    rated = {key: rating.hose_rating(hose, tables())[0].value_bar for key, hose in sizes.items()}
    plain = {key: bar for key, bar in hoses().items() if key.count("|") == 1}
    assert len(plain) > 400 and plain == {key: bar for key, bar in rated.items() if bar is not None}


def test_an_edition_that_is_rated_otherwise_has_its_own_rating() -> None:
    seen = 0
    for name, editions in tables().editions.items():
        for dash in range(1, 64):
            for edition in (item.edition for item in editions):
                own = rating.hose_rating(Hose(standard=name, dash=dash, edition=edition), tables())[
                    0
                ].value_bar
                plain = hoses().get(f"{name}|{dash}")
                wanted = None if plain is None or own == plain else own
                assert hoses().get(f"{name}|{dash}|{edition}") == wanted, (name, dash, edition)
                seen += wanted is not None
    assert seen > 10


def test_no_end_is_rated_above_its_ceiling() -> None:
    seen, off = 0, []
    for family, known in tables().families.items():
        for size in tables().sizes(family):
            for form in known.forms:
                bar = rating.end_rating("end", an_end(family, size, form), tables()).value_bar
                seen += bar is not None
                if bar is not None and bar > ends()[f"{family}|{size}|{form}"]:
                    off.append((family, size, form))
    assert seen > 150 and off == []


@pytest.mark.parametrize(("size", "bar"), [(12, 206.8), (8, 275.8)])
def test_a_swivel_has_the_pressure_of_a_swivel_not_of_a_tube_end(size: int, bar: float) -> None:
    """SAE J514 style table of 37 degree flares: -12 at 3000 psi, -8 at 4000 psi for the female swivel."""
    assert ends()[f"{Connection.SAE_37_FLARE}|{size}|{Form.FEMALE_SWIVEL}"] == bar


def test_parts_that_do_not_go_together_claim_no_more_than_each_bears() -> None:
    """A -12 end on a -4 hose with no jump size: no assembly, so a forged tag must not go unheld."""
    spec = both("SAE 100R2", 12, {"connection": "sae_37_flare", "dash": 12, "form": "female_swivel"})
    small = spec.model_copy(update={"hose": Hose(standard="SAE 100R2", dash=4)})
    found = overrated(TagContent(spec=small, working_pressure_bar=900), tables())
    assert found is not None and found.now_bar == 206.8


def test_a_tag_is_overrated_by_more_than_what_its_figure_may_be_rounded_by() -> None:
    spec = assembly()
    for bar, now in ((100.5, None), (100.6, 100), (105, 100)):
        found = overrated(TagContent(spec=spec, working_pressure_bar=bar), made_up())
        assert (found and found.now_bar) == now, bar


def test_a_length_that_nobody_would_build_takes_nothing_from_a_tag_that_is_there() -> None:
    spec = both("SAE 100R2", 12, {"connection": "sae_37_flare", "dash": 12, "form": "female_swivel"})
    short = spec.model_copy(update={"length_mm": 10.0})
    with pytest.raises(TradeError):
        assess(short)
    assert assess(short, made=True).bend_radius_mm == assess(spec).bend_radius_mm
    found = overrated(TagContent(spec=short, working_pressure_bar=900), tables())
    assert found is not None and found.now_bar == assess(spec).working_pressure.value_bar
