"""The payload: what goes in comes out, within the size, and damage is noticed."""

from __future__ import annotations

import json
from datetime import date
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tagger.code import payload
from tagger.connection import code_points
from tagger.errors import PayloadError
from tagger.spec import (
    AssemblySpec,
    Connection,
    Cover,
    Danger,
    End,
    Fluid,
    Form,
    Material,
    Sizing,
    TagContent,
    Tightening,
)
from tagger.trade.tables import tables
from tests.code.payload_examples import BOTH, EXAMPLES

FOLDER = Path(__file__).parents[1] / "golden"
GOLDEN = {
    version: json.loads((FOLDER / f"payload_v{version}.json").read_text(encoding="utf-8"))
    for version in payload.VERSIONS
}
EVERY = [vector for vectors in GOLDEN.values() for vector in vectors]


@pytest.mark.parametrize("name", EXAMPLES)
def test_decoded_content_equals_carried(name: str) -> None:
    content = EXAMPLES[name]
    assert payload.decode(payload.encode(content)) == payload.carried(content)


@pytest.mark.parametrize("name", [name for name in EXAMPLES if name != "hose_named_in_full"])
def test_nothing_is_lost_but_a_source_in_own_words(name: str) -> None:
    assert payload.carried(EXAMPLES[name]) == EXAMPLES[name]


def test_a_hose_named_in_full_has_a_name_of_at_most_31_letters() -> None:
    content = EXAMPLES["hose_named_in_full"]

    def named(letters: int) -> TagContent:
        hose = content.spec.hose.model_copy(update={"standard": "W" * letters})
        return content.model_copy(update={"spec": content.spec.model_copy(update={"hose": hose})})

    assert payload.decode(payload.encode(named(31))).spec.hose.standard == "W" * 31
    with pytest.raises(PayloadError, match=r"hose.standard: .*at most 31"):
        payload.encode(named(32))


def test_hose_without_code_point_travels_by_name_and_unknown_source_points_to_the_record() -> None:
    decoded = payload.decode(payload.encode(EXAMPLES["hose_named_in_full"]))
    assert decoded.spec.hose.standard == "Shop's own 4-wire"
    assert decoded.spec.hose.edition == "2019"
    assert decoded.spec.working_pressure is not None
    assert decoded.spec.working_pressure.value_bar == 280
    assert decoded.spec.working_pressure.source == "given elsewhere: see the shop's record"


@pytest.mark.parametrize("vector", EVERY, ids=lambda vector: vector["name"])
def test_golden_vectors_decode_for_ever(vector: dict[str, object]) -> None:
    content = payload.decode(str(vector["digits"]))
    assert content.spec.as_dict() == vector["spec"]
    told = {"spec": vector["spec"], **vector["content"]}  # type: ignore[dict-item]
    assert content == TagContent.model_validate(told)


@pytest.mark.parametrize("vector", GOLDEN[payload.VERSION], ids=lambda vector: vector["name"])
def test_golden_vectors_still_encode_to_the_same_digits(vector: dict[str, object]) -> None:
    assert payload.encode(EXAMPLES[str(vector["name"])]) == vector["digits"]


def test_two_elbows_with_every_figure_take_at_most_40_bytes() -> None:
    assert payload.byte_length(payload.encode(EXAMPLES["two_elbows_every_figure"])) <= 40


@pytest.mark.parametrize("family", [c for c in Connection if c != "other"])
def test_ends_from_the_tables_with_every_figure_take_at_most_40_bytes(family: Connection) -> None:
    """Two elbows of the largest size, each with all that our tables give for any of the family's ends."""
    content = EXAMPLES["two_elbows_every_figure"]
    size = tables().sizes(family)[-1]
    named = {"dash": int(size)} if family.sized_by is Sizing.DASH else {"size": size}
    series = next(iter(tables().families[family].series), None)
    form = tables().families[family].forms[0]
    end = End.model_validate(
        {
            "connection": family,
            "form": form,
            "shape": 67,
            "drop_mm": 399.9,
            "hose_dash": 12,
            "series": series,
            **named,
        }
    )
    rows = [r for r in tables().tightening.get(family, ()) if r.series or series is None]
    names: set[str] = set()
    if any(r.torque_max_nm for r in rows):
        names |= {"torque_min_nm", "torque_max_nm", "lubrication"}
    if any(r.flats_max or r.turns_max for r in tables().tightening.get(family, ())):
        names |= {"flats_min", "flats_max", "flats_basis"}
    told = BOTH.model_copy(update=dict.fromkeys(set(Tightening.model_fields) - names))
    if family.is_flange:
        told = told.model_copy(update={"screw": "M20"})
    spec = content.spec.model_copy(update={"end_a": end, "end_b": end})
    every = content.model_copy(update={"spec": spec, "tighten_a": told, "tighten_b": told})
    assert payload.byte_length(payload.encode(every)) <= 40
    known = every.model_copy(
        update={"working_pressure_bar": None, "at_most_bar": 190.0, "unknown_parts": ("end_a", "end_b")}
    )
    assert payload.byte_length(payload.encode(known)) <= 40


def test_a_pressure_given_is_carried_only_where_it_counts_and_not_above_the_assemblys() -> None:
    content = EXAMPLES["two_elbows_every_figure"]
    lower = payload.carried(content.model_copy(update={"working_pressure_bar": 100.0}))
    assert lower.spec.working_pressure is not None and lower.spec.working_pressure.value_bar == 100
    none = payload.carried(content.model_copy(update={"working_pressure_bar": None}))
    assert none.spec.working_pressure is None


@pytest.mark.parametrize(
    ("asked", "fluid", "told"),
    [
        (None, "phosphate_ester", 60),
        (50, "phosphate_ester", 50),
        (60, "phosphate_ester", 60),
        (70, "phosphate_ester", None),
        (50, "water", None),
        (None, None, None),
    ],
)
def test_a_pressure_given_for_a_fluid_and_heat_is_carried_with_them_where_it_holds(
    asked: int | None, fluid: str | None, told: int | None
) -> None:
    """A letter's 90 bar for phosphate ester up to 60 °C, of an assembly that is asked for this fluid and heat."""
    letter = {
        "value_bar": 90,
        "source": "maker's data sheet",
        "fluid": "phosphate_ester",
        "max_temperature_c": 60,
    }
    data = EXAMPLES["contract_example"].spec.as_dict() | {"working_pressure": letter}
    spec = AssemblySpec.read(data | {"fluid": fluid, "max_temperature_c": asked})
    content = TagContent(spec=spec, working_pressure_bar=90)
    for found in (payload.carried(content), payload.decode(payload.encode(content))):
        given = found.spec.working_pressure
        assert given is not None and given.value_bar == 90
        assert (given.fluid, given.max_temperature_c) == (("phosphate_ester", told) if told else (None, None))
        assert (found.spec.fluid, found.spec.max_temperature_c) == (fluid, asked)


def test_each_end_carries_what_its_own_joint_is_tightened_by() -> None:
    """A flange has screws and a nut has flats, whichever end it is."""
    screws = Tightening(torque_min_nm=62, torque_max_nm=77.5, lubrication="not_stated", screw="1/2 in")
    mixed = {"flange": screws.model_copy(update={"flats_min": 1, "flats_max": 2, "flats_basis": "finger_tight"}),
             "nut": BOTH.model_copy(update={"screw": "M20"})}  # fmt: skip
    flange, nut = EXAMPLES["flanges_and_ceiling_torque"].spec.end_b, EXAMPLES["contract_example"].spec.end_a
    spec = EXAMPLES["contract_example"].spec
    for a, b in ((("flange", flange), ("nut", nut)), (("nut", nut), ("flange", flange))):
        ends = spec.model_copy(update={"end_a": a[1], "end_b": b[1]})
        content = TagContent(spec=ends, tighten_a=mixed[a[0]], tighten_b=mixed[b[0]])
        found = payload.carried(content)
        assert {a[0]: found.tighten_a, b[0]: found.tighten_b} == {"flange": screws, "nut": BOTH}


def test_a_torque_wider_than_its_bits_is_carried_by_its_maximum_alone() -> None:
    content = EXAMPLES["contract_example"]
    for high, low in ((202.2, 100.0), (202.3, None)):
        wide = Tightening(torque_min_nm=100, torque_max_nm=high)
        read = payload.decode(payload.encode(content.model_copy(update={"tighten_b": wide}))).tighten_b
        assert read is not None and (read.torque_min_nm, read.torque_max_nm) == (low, high)


def test_lubrication_is_carried_with_a_torque_alone() -> None:
    without = BOTH.model_copy(update={"torque_min_nm": None, "torque_max_nm": None})
    found = payload.carried(EXAMPLES["contract_example"].model_copy(update={"tighten_b": without})).tighten_b
    assert found is not None and (found.lubrication, found.flats_max) == (None, 1.25)


def test_a_value_that_would_be_read_as_another_or_as_none_is_refused_by_its_field() -> None:
    """Days are counted from 2010 in 14 bits, of which the last value says that no day is known."""
    content = EXAMPLES["contract_example"]
    for day in ("2009-12-31", "2054-11-09", "2054-11-10"):
        with pytest.raises(PayloadError) as refused:
            payload.encode(content.model_copy(update={"built_on": date.fromisoformat(day)}))
        assert [problem.field for problem in refused.value.problems] == ["built_on"], day
    for name in ("end_a", "end_b"):
        tail = getattr(content.spec, name).model_copy(update={"hose_dash": 16})
        other = content.model_copy(update={"spec": content.spec.model_copy(update={name: tail})})
        with pytest.raises(PayloadError) as refused:
            payload.encode(other)
        assert [problem.field for problem in refused.value.problems] == [f"{name}.hose_dash"]


def test_a_joint_in_a_shops_own_words_and_flats_of_a_flange_stay_in_the_record() -> None:
    own = BOTH.model_copy(update={"lubrication": "our own paste"})
    told = payload.carried(EXAMPLES["contract_example"].model_copy(update={"tighten_a": own}))
    assert told.tighten_a == BOTH.model_copy(update={"lubrication": None})
    flange = payload.carried(EXAMPLES["flanges_and_ceiling_torque"].model_copy(update={"tighten_a": BOTH}))
    assert flange.tighten_a is not None and flange.tighten_a.flats_basis is None


def test_every_name_of_the_spec_has_a_code_point() -> None:
    for table, names in (
        ("connection", Connection),
        ("form", Form),
        ("material", Material),
        ("fluid", Fluid),
        ("cover", Cover),
        ("danger", Danger),
    ):
        assert {name.value for name in names} == set(payload.points(table))


def test_no_code_point_or_name_is_used_twice() -> None:
    rows = [(row["table"], row["point"]) for row in code_points()]
    named = [(row["table"], row["name"]) for row in code_points()]
    assert len(set(rows)) == len(rows)
    assert len(set(named)) == len(named)


@pytest.mark.parametrize("text", ["", "12", "not digits", "٣٤٥٦٧٨٩٠١٢٣", "9" * 301])
def test_what_is_no_payload_is_refused(text: str) -> None:
    with pytest.raises(PayloadError, match="digits"):
        payload.decode(text)


def test_every_single_wrong_digit_is_noticed() -> None:
    digits = payload.encode(EXAMPLES["contract_example"])
    for place in range(len(digits)):
        wrong = digits[:place] + str((int(digits[place]) + 1) % 10) + digits[place + 1 :]
        with pytest.raises(PayloadError):
            payload.decode(wrong)


def test_a_later_version_is_named() -> None:
    body = 0b1_1111_0000_0000_0000_0000_0000
    digits = str(body << 16 | payload._crc(body, body.bit_length()))
    with pytest.raises(PayloadError, match="version 15"):
        payload.decode(digits)


def test_trailing_bits_are_refused() -> None:
    value = int(payload.encode(EXAMPLES["contract_example"])) >> 16 << 3
    with pytest.raises(PayloadError, match="too long by 3 bits"):
        payload.decode(str(value << 16 | payload._crc(value, value.bit_length())))


_ENDS = st.sampled_from(
    [
        {"connection": "sae_37_flare", "dash": 12, "form": "female_swivel"},
        {"connection": "orfs", "dash": 8, "form": "male"},
        {"connection": "nptf", "size": "1 1/4", "form": "male"},
        {"connection": "din24_heavy", "size": "20", "form": "female_swivel"},
        {"connection": "flange_code61", "dash": 24, "form": "flange_head"},
    ]
)
_SHAPES = st.one_of(st.just("straight"), st.integers(1, 180))


@settings(deadline=None)
@given(
    end_a=_ENDS,
    end_b=_ENDS,
    shapes=st.tuples(_SHAPES, _SHAPES),
    drop=st.none() | st.integers(10, 4000),
    length=st.integers(100, 1_000_000),
    clocking=st.integers(0, 359),
    pressure=st.none() | st.integers(1, 30_000),
)
def test_any_spec_round_trips(end_a, end_b, shapes, drop, length, clocking, pressure):  # type: ignore[no-untyped-def]
    elbows = all(shape != "straight" for shape in shapes)
    spec = AssemblySpec.read(
        {
            "hose": {"standard": "SAE 100R13", "dash": 12},
            "end_a": {**end_a, "shape": shapes[0]},
            "end_b": {
                **end_b,
                "shape": shapes[1],
                "drop_mm": drop / 10 if drop and shapes[1] != "straight" else None,
            },
            "length_mm": length / 10,
            "clocking_deg": clocking if elbows else None,
        }
    )
    content = TagContent(spec=spec, working_pressure_bar=pressure / 10 if pressure else None)
    assert payload.decode(payload.encode(content)) == content
