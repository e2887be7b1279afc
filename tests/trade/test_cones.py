"""Which cone is a nose and which a funnel, and the bore of a hose by its dash."""

from __future__ import annotations

import pytest

from tagger.spec import Connection, Form, Hose
from tagger.trade.cones import Cone, cone_of
from tagger.trade.tables import tables


@pytest.mark.parametrize(("form", "outside"), [("male", True), ("female_swivel", False)])
def test_the_flare_is_a_nose_on_the_male_and_a_funnel_in_the_swivel(form: str, outside: bool) -> None:
    assert cone_of(Connection.SAE_37_FLARE, Form(form), tables()) == Cone(outside, 37)


def test_a_nose_goes_into_a_funnel_in_every_family() -> None:
    """The male and the nut that it goes into; of an inverted flare both males go into the fixed female."""
    mates = [(Form.MALE, Form.FEMALE_SWIVEL), (Form.MALE_SWIVEL, Form.FEMALE_FIXED)]
    pairs = {
        family: [one.outside for one in found if one is not None]
        for family in tables().families
        for a, b in mates
        if all(found := [cone_of(family, form, tables()) for form in (a, b)])
    }
    assert len(pairs) > 10 and all(sorted(outside) == [False, True] for outside in pairs.values()), pairs
    angles = {
        family: {cone.half_angle for form in Form if (cone := cone_of(family, form, tables())) is not None}
        for family in pairs
    }
    assert all(len(of) == 1 for of in angles.values()), "and both at one angle"


def test_what_seals_without_a_cone_has_none() -> None:
    assert cone_of(Connection.ORFS, Form.MALE, tables()) is None


def test_a_dash_without_a_row_is_sixteenths_of_an_inch() -> None:
    assert tables().nominal_bore_mm(Hose(standard="SAE 100R2", dash=9)) == pytest.approx(9 * 25.4 / 16)
