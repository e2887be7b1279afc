"""A hose that was registered with more pressure than the tables of today allow shows the lower one."""

from __future__ import annotations

import pytest
from fastapi.testclient import TestClient

from tagger.i18n import LANGUAGES, Translator
from tagger.spec import AssemblySpec
from tagger.store import Assembly, Store
from tagger.trade import assess
from tagger.trade.present import lowered, overrated
from tagger.trade.tables import tables
from tests.scan.conftest import OTHER_SHOP, SPEC, path, text


def registered(store: Store, bar: float, **changed: object) -> Assembly:
    """A record as an older program left it: rated at ``bar`` whatever today's tables say."""
    spec = AssemblySpec.read(SPEC | changed)
    then = assess(AssemblySpec.read(SPEC))
    rated = then.working_pressure.model_copy(update={"value_bar": bar})
    return store.register(spec, then.model_copy(update={"working_pressure": rated}))[0]


@pytest.mark.parametrize("digits_only", [False, True])
def test_a_fluid_without_a_source_has_no_pressure_any_more(
    client: TestClient, store: Store, digits_only: bool
) -> None:
    made = registered(store, 241.3, fluid="phosphate_ester")
    shown = text(client.get(f"/T/{OTHER_SHOP}/{made.digits}" if digits_only else path(made)).text)
    assert ("Lower pressure than registered" in shown) != digits_only
    assert ("The tag claims more pressure than the tables allow" in shown) == digits_only
    assert "No source says that SAE 100R2 may carry phosphate ester (HFD-R)." in shown
    assert shown.count("241 bar") == 1  # in the notice of what it was registered for
    until = (
        "do not install it before the shop has confirmed"
        if digits_only
        else "Do not use it until the shop has told"
    )
    assert until in shown


def test_a_higher_figure_is_shown_lowered(client: TestClient, store: Store) -> None:
    made = registered(store, 420.0)
    shown = text(client.get(path(made)).text)
    assert "registered for 420 bar" in shown
    now = assess(AssemblySpec.read(SPEC)).working_pressure.value_bar
    assert now is not None and f"may work at {round(now)} bar" in shown


@pytest.mark.parametrize("digits_only", [False, True])
def test_what_the_known_parts_allow_is_lowered_and_never_made_a_pressure(
    client: TestClient, store: Store, digits_only: bool
) -> None:
    end_b = {"connection": "jis_60", "size": "3/4", "form": "female_swivel"}
    spec = AssemblySpec.read(SPEC | {"end_b": end_b, "clocking_deg": None})
    then = assess(spec)
    now = then.working_pressure.at_most_bar
    assert now is not None
    rated = then.working_pressure.model_copy(update={"at_most_bar": 950.0})
    made = store.register(spec, then.model_copy(update={"working_pressure": rated}))[0]
    shown = text(client.get(f"/T/{OTHER_SHOP}/{made.digits}" if digits_only else path(made)).text)
    assert ("claims 950 bar" if digits_only else "registered for 950 bar") in shown and shown.count(
        "950 bar"
    ) == 1
    assert f"{round(now)} bar" in shown
    found = overrated(made.content, tables())
    assert found is not None and lowered(made.content, found).working_pressure_bar is None


def test_a_figure_that_still_holds_is_left_alone(client: TestClient, store: Store) -> None:
    spec = AssemblySpec.read(SPEC)
    made = store.register(spec, assess(spec))[0]
    assert overrated(made.content, tables()) is None
    assert "Lower pressure than registered" not in text(client.get(path(made)).text)


def test_it_is_said_in_every_language(store: Store) -> None:
    found = overrated(registered(store, 420.0).content, tables())
    assert found is not None
    assert len({Translator(language)(found.message) for language in LANGUAGES}) == len(LANGUAGES)


LETTER = {"value_bar": 120, "source": "the manufacturer's letter"}


def test_a_pressure_entered_for_that_fluid_and_heat_is_left_alone_on_the_tag_too(
    client: TestClient, store: Store
) -> None:
    named = LETTER | {"fluid": "phosphate_ester", "max_temperature_c": 60}
    spec = AssemblySpec.read(
        SPEC | {"fluid": "phosphate_ester", "max_temperature_c": 60, "working_pressure": named}
    )
    made = store.register(spec, assess(spec))[0]
    for address in (path(made), f"/T/{OTHER_SHOP}/{made.digits}"):
        shown = text(client.get(address).text)
        assert "Lower pressure than registered" not in shown and "claims" not in shown


def test_a_pressure_entered_for_no_fluid_is_taken_away_on_the_tag_too(
    client: TestClient, store: Store
) -> None:
    made = registered(store, 120.0, fluid="phosphate_ester", working_pressure=LETTER)
    for address, said in (
        (path(made), "By the values of today no pressure applies."),
        (f"/T/{OTHER_SHOP}/{made.digits}", "The tables allow no pressure for this hose assembly"),
    ):
        assert said in text(client.get(address).text)


def test_a_figure_of_the_fitting_manufacturer_holds_on_the_page_of_its_record(
    client: TestClient, store: Store
) -> None:
    rating = {"value_bar": 120, "source": "fitting catalogue, page 7"}
    end = {
        "connection": "jis_30",
        "size": "M22x1.5",
        "form": "female_swivel",
        "hose_dash": 12,
        "rating": rating,
    }
    spec = AssemblySpec.read(SPEC | {"end_a": end, "end_b": end, "clocking_deg": None})
    found = assess(spec)
    assert found.working_pressure.value_bar == 120
    made = store.register(spec, found)[0]
    shown = text(client.get(path(made)).text)
    assert "Lower pressure than registered" not in shown and "120 bar" in shown
