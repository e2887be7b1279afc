"""What is said of all assemblies of a kind is found once: of none is said what is another's."""

from __future__ import annotations

import random
from dataclasses import replace

import pytest

from tagger.errors import TradeError
from tagger.spec import AssemblySpec, Fluid
from tagger.trade import assess
from tagger.trade.tables import tables
from tests.speed.samples import tags
from tests.volume import volume


def of_its_kind(spec: AssemblySpec, chance: random.Random) -> AssemblySpec:
    """Another assembly of the same kind: every field in which two of a kind may differ differs."""
    end = {"lot": f"L{chance.randrange(99)}", "fitting": None}
    a, b = (
        one.model_copy(update=end | ({"drop_mm": float(chance.randrange(20, 90))} if one.is_elbow else {}))
        for one in (spec.end_a, spec.end_b)
    )
    return spec.model_copy(
        update={
            "length_mm": float(chance.randrange(250, 3000)),
            "clocking_deg": None if spec.clocking_deg is None else chance.randrange(360),
            "hose": spec.hose.model_copy(update={"lot": "H7"}),
            "end_a": a,
            "end_b": b,
            "note": "by hand",
            "covers": (),
        }
    )


def test_what_is_said_of_an_assembly_is_what_would_be_said_of_the_first_of_its_kind() -> None:
    chance = random.Random(4)
    said = set()
    for tag in tags(volume(8, 150), seed=21):
        run = [tag.spec, *(of_its_kind(tag.spec, chance) for _ in range(4))]
        hot = chance.choice(run).model_copy(update={"max_temperature_c": 130.0, "fluid": Fluid.WATER_GLYCOL})
        run += [hot, hot.model_copy(update={"end_a": hot.end_b, "end_b": hot.end_a}), tag.spec]
        for spec in run:
            found = assess(spec, tables(), made=True)
            alone = assess(spec, replace(tables()), made=True)
            assert found.model_dump_json() == alone.model_dump_json()
            said.add(found.model_dump_json())
    assert len(said) > 5 * volume(8, 150)


def test_assemblies_of_a_kind_have_what_is_said_of_it_as_one_object() -> None:
    spec = next(tags(1)).spec.model_copy(update={"length_mm": 5000.0})
    one, other = assess(spec), assess(spec.model_copy(update={"length_mm": 5500.0}))
    assert one.content_l != other.content_l
    assert one.warnings is other.warnings
    assert one.working_pressure is other.working_pressure
    assert one.end_a.spread is other.end_a.spread


def test_no_kind_is_taken_for_one_whose_figures_are_equal_and_written_otherwise() -> None:
    spec = next(tags(1)).spec
    kinds = [spec.model_copy(update={"max_temperature_c": figure}) for figure in (0.0, -0.0)]
    assert [str(assess(one).max_temperature_c) for one in kinds] == ["0.0", "-0.0"]
    unread = spec.model_copy(update={"hose": spec.hose.model_copy(update={"dash": float(spec.hose.dash)})})
    with pytest.raises(TradeError, match=r"^hose\.dash"):
        assess(unread)


def test_half_a_character_in_a_spec_is_for_the_store_to_refuse() -> None:
    """Such a kind is not remembered, for nothing can be written of it."""
    spec = next(tags(1)).spec
    half = spec.model_copy(update={"hose": spec.hose.model_copy(update={"part": "P\ud800"})})
    assert assess(half) == assess(half)
