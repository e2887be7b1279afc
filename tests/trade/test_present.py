"""An assembly that was rated earlier works at the lower of then and now."""

from __future__ import annotations

from typing import Any

import pytest

from tagger.errors import TradeError
from tagger.messages import pressure
from tagger.spec import AssemblySpec, Danger, TagContent
from tagger.trade import assess
from tagger.trade.present import lowered, overrated, says_no_more
from tests.trade.made_up import assembly, ending, hose, made_up

UNKNOWN_ENDS = {"connection_pressure": [ending(120, size="10")]}


def content(bar: float = 100, **more: Any) -> TagContent:
    """A tag of the made-up assembly, made when its hose was rated ``bar`` and its ends not less."""
    then = made_up(hose_pressure=[hose(bar)], connection_pressure=[ending(bar + 20)])
    return assess(assembly(**more), then).content_of(assembly(**more))


def at_most(bar: float = 100, **more: Any) -> TagContent:
    """The same, where its ends were not known."""
    then = made_up(hose_pressure=[hose(bar)], **UNKNOWN_ENDS)
    found = assess(assembly(), then).content_of(assembly())
    return found.model_copy(update={"spec": assembly(**more)})


@pytest.mark.parametrize(("was", "now"), [(100, None), (100.5, None), (99, None), (100.6, 100), (150, 100)])
def test_a_pressure_above_todays_is_lowered_and_one_that_rounding_explains_is_not(
    was: float, now: float | None
) -> None:
    printed = content(was)
    found = overrated(printed, made_up())
    assert (found and found.now_bar) == now
    shown = lowered(printed, found)
    assert shown.working_pressure_bar == (now or was)
    if found is None:
        assert shown == printed
    else:
        assert (found.message.id, found.message.values["now"]) == ("trade-overrated", pressure(100))


def test_a_pressure_that_no_longer_applies_is_withdrawn_with_its_reason() -> None:
    printed = content().model_copy(update={"spec": assembly(max_temperature_c=150)})
    found = overrated(printed, made_up())
    assert found is not None and (found.was_bar, found.now_bar) == (100, None)
    assert found.message.id == "trade-overrated-no-longer"
    assert found.message.values["why"] == found.now.working_pressure.why
    shown = lowered(printed, found)
    assert (shown.working_pressure_bar, shown.at_most_bar) == (None, None)
    assert Danger.HEAT in shown.dangers


def test_an_assembly_of_a_length_that_nobody_would_build_today_is_judged_with_its_heat() -> None:
    short = content().model_copy(update={"spec": assembly(length_mm=20, max_temperature_c=150)})
    with pytest.raises(TradeError):
        assess(short.spec, made_up())
    found = overrated(short, made_up())
    assert found is not None and found.now_bar is None


@pytest.mark.parametrize("ends", [UNKNOWN_ENDS, {}], ids=["ends still unknown", "ends known today"])
def test_an_at_most_is_lowered_and_never_becomes_a_working_pressure(ends: dict[str, Any]) -> None:
    printed = at_most()
    found = overrated(printed, made_up(hose_pressure=[hose(80)], **ends))
    assert found is not None and (found.was_bar, found.now_bar, found.at_most) == (100, 80, True)
    assert found.message.id == "trade-overrated-at_most"
    shown = lowered(printed, found)
    assert (shown.working_pressure_bar, shown.at_most_bar) == (None, 80)
    assert shown.unknown_parts == printed.unknown_parts


def test_an_at_most_of_what_is_asked_beyond_a_limit_is_withdrawn() -> None:
    found = overrated(at_most(max_temperature_c=150), made_up(**UNKNOWN_ENDS))
    assert found is not None and (found.now_bar, found.message.id) == (None, "trade-overrated-no-longer")


def test_an_at_most_stays_where_nothing_is_known_today() -> None:
    assert overrated(at_most(), made_up(hose_pressure=[hose(90, dash=16)], **UNKNOWN_ENDS)) is None


def test_a_tag_that_says_no_pressure_says_none_too_high() -> None:
    silent = content().model_copy(update={"working_pressure_bar": None})
    assert overrated(silent, made_up(hose_pressure=[hose(10)])) is None


def _of_no_edition_today(bar: float) -> TagContent:
    data = assembly().as_dict()
    data["hose"] = {**data["hose"], "edition": "XZ"}
    return content(bar).model_copy(update={"spec": AssemblySpec.read(data)})


def test_what_is_no_assembly_of_todays_tables_bears_no_more_than_each_part_that_is_known() -> None:
    found = overrated(_of_no_edition_today(150), made_up())
    assert found is not None and (found.was_bar, found.now_bar) == (150, 120)
    assert found.now.working_pressure.limited_by == "end_a"
    assert overrated(_of_no_edition_today(110), made_up()) is None
    assert overrated(_of_no_edition_today(150), made_up(**UNKNOWN_ENDS)) is None


@pytest.mark.parametrize(
    ("printed", "registered", "no_more"),
    [
        (content(100), content(100), True),
        (content(80), content(100), True),
        (content(120), content(100), False),
        (content(80, length_mm=900), content(100), False),
        (content(100, length_mm=900), content(100), False),
        (at_most(80), at_most(100), True),
        (at_most(120), at_most(100), False),
        (at_most(100), content(100), True),
        (content(100), at_most(100), False),
    ],
)
def test_a_tag_says_no_more_than_was_registered_where_it_says_the_same_or_less_pressure(
    printed: TagContent, registered: TagContent, no_more: bool
) -> None:
    assert says_no_more(printed, registered) is no_more
