"""The spec: the contract's JSON, its units, and its refusals."""

from __future__ import annotations

import copy
import json
from datetime import date
from typing import Any

import pytest

from tagger.errors import Problem, SpecError, UnitError
from tagger.spec import AssemblySpec, Cover
from tagger.units import read_length_mm, read_pressure_bar, read_temperature_c, read_torque_nm

EXAMPLE: dict[str, Any] = {
    "hose": {"standard": "SAE 100R2", "dash": 12, "lot": "H-2291"},
    "end_a": {
        "connection": "sae_37_flare", "dash": 12, "form": "female_swivel", "shape": "straight",
        "material": "carbon_steel", "lot": "F-118",
    },
    "end_b": {
        "connection": "sae_37_flare", "dash": 12, "form": "female_swivel", "shape": "elbow_90",
        "drop_mm": 56, "material": "carbon_steel",
    },
    "length_mm": 1250, "length_basis": "sealing_face",
    "clocking_deg": None,
    "max_temperature_c": 100, "fluid": "mineral_oil",
    "covers": ["abrasion_sleeve"],
    "note": "boom cylinder, rod side",
}  # fmt: skip


def _changed(path: str, value: object) -> dict[str, Any]:
    data = copy.deepcopy(EXAMPLE)
    *parents, last = path.split(".")
    inner = data
    for parent in parents:
        inner = inner[parent]
    inner[last] = value
    return data


def test_the_contract_example_reads_and_writes_back_field_by_field() -> None:
    assert AssemblySpec.read(json.dumps(EXAMPLE)).as_dict() == EXAMPLE


def test_carried_part_has_no_lots_and_no_note() -> None:
    carried = AssemblySpec.read(EXAMPLE).carried().as_dict()
    assert "note" not in carried
    assert "lot" not in carried["hose"]
    assert "lot" not in carried["end_a"]


@pytest.mark.parametrize(
    ("path", "given", "kept"),
    [
        ("length_mm", "49 1/4 in", 1251.0),
        ("length_mm", "1.25 m", 1250.0),
        ("end_b.drop_mm", "2 1/4 in", 57.1),
        ("max_temperature_c", "212 F", 100.0),
        ("working_pressure", {"value_bar": "2500 psi", "source": "maker's data sheet"}, {"value_bar": 172.4, "source": "maker's data sheet"}),
        ("end_b.shape", 90, "elbow_90"),
        ("covers", ["spring_guard", "abrasion_sleeve", "spring_guard"], ["abrasion_sleeve", "spring_guard"]),
    ],
)  # fmt: skip
def test_figures_with_units_are_kept_in_si(path: str, given: object, kept: object) -> None:
    value: Any = AssemblySpec.read(_changed(path, given)).as_dict()
    for part in path.split("."):
        value = value[part]
    assert value == kept


@pytest.mark.parametrize(
    ("path", "value", "words"),
    [
        ("colour", "red", r"^colour: This is not a known field"),
        ("end_a.thread", "UNF", r"^end_a\.thread: This is not a known field"),
        ("length_mm", "1,250 mm", r"^length_mm: This has an ambiguous comma"),
        ("length_mm", "12 furlongs", r"^length_mm: Unknown unit: furlongs"),
        ("length_mm", -5, r"^length_mm: "),
        ("length_mm", float("nan"), r"^length_mm: This is not a finite number"),
        ("end_a.connection", "jic", r"^end_a\.connection: This is not a known value"),
        ("end_a.form", "flange_head", r"^end_a\.form: This form does not exist for the connection 37° flare"),
        ("end_a.dash", None, r"^end_a\.dash: This value is missing"),
        ("end_a", {"connection": "npt", "form": "male"}, r"^end_a\.size: This value is missing"),
        ("end_a.size", "3/4", r"^end_a\.dash: Only one of dash size and size"),
        ("end_a.drop_mm", 40, r"^end_a\.drop_mm: Drop does not apply to a straight end"),
        ("clocking_deg", 90, r"^clocking_deg: A clocking angle only applies when both ends are elbows"),
        ("hose", {"dash": 12}, r"^hose\.standard: This value is missing"),
        ("working_pressure", {"value_bar": 200}, r"^working_pressure\.source: This value is missing"),
    ],
)
def test_bad_input_names_the_field(path: str, value: object, words: str) -> None:
    with pytest.raises(SpecError, match=words):
        AssemblySpec.read(_changed(path, value))


def test_every_wrong_field_is_named_at_once() -> None:
    data = _changed("colour", "red")
    data["length_mm"] = "long"
    with pytest.raises(SpecError) as caught:
        AssemblySpec.read(data)
    assert {problem.field for problem in caught.value.problems} == {"colour", "length_mm"}


def test_elbow_pair_needs_clocking() -> None:
    with pytest.raises(
        SpecError, match=r"^clocking_deg: Both ends are elbows, and the clocking angle is missing"
    ):
        AssemblySpec.read(_changed("end_a.shape", "elbow_45"))


@pytest.mark.parametrize(
    ("connection", "given", "size"),
    [
        ("npt", {"size": "3/4 in"}, "3/4"),
        ("npt", {"dash": 12}, "3/4"),
        ("bspp", {"size": "G1-1/4"}, "1 1/4"),
        ("din24_heavy", {"size": "16S"}, "16"),
        ("metric_orb", {"size": "m22 x 1,5"}, "M22x1.5"),
    ],
)
def test_sizes_are_kept_in_the_family_terms(connection: str, given: dict[str, Any], size: str) -> None:
    end = {"connection": connection, "form": "male", **given}
    assert AssemblySpec.read(_changed("end_a", end)).end_a.size == size


def test_tube_sized_family_refuses_a_dash() -> None:
    with pytest.raises(
        SpecError, match=r"^end_a\.dash: This connection has no dash sizes: 24° cone, light series"
    ):
        AssemblySpec.read(_changed("end_a", {"connection": "din24_light", "dash": 8, "form": "male"}))


@pytest.mark.parametrize(
    ("connection", "size"), [("din24_light", "12S"), ("din24_heavy", "12 L"), ("din24_very_light", "8L")]
)
def test_a_tube_size_of_another_series_is_refused(connection: str, size: str) -> None:
    """12S in the light family was read as 12L: another thread, and less than half the pressure."""
    with pytest.raises(SpecError) as refused:
        AssemblySpec.read(_changed("end_a", {"connection": connection, "size": size, "form": "male"}))
    assert [p.field for p in refused.value.problems] == ["end_a.size"]


def test_the_series_written_behind_a_plain_tube_is_its_series() -> None:
    tube = {"connection": "din_standpipe", "size": "12L", "form": "standpipe"}
    end = AssemblySpec.read(_changed("end_a", tube)).end_a
    assert (end.size, end.series) == ("12", "L")
    with pytest.raises(SpecError, match="series S"):
        AssemblySpec.read(_changed("end_a", {**tube, "series": "S"}))


@pytest.mark.parametrize(
    ("connection", "form"),
    [("qd_iso16028", "female_swivel"), ("staple", "male"), ("npt", "coupler_male"), ("orfs", "flange_head")],
)
def test_a_form_of_another_kind_of_joint_is_refused(connection: str, form: str) -> None:
    wrong = {"connection": connection, "dash": 8, "form": form}
    with pytest.raises(SpecError) as refused:
        AssemblySpec.read(_changed("end_a", wrong))
    assert [p.field for p in refused.value.problems] == ["end_a.form"]


def test_text_that_is_not_json_is_refused_with_words() -> None:
    with pytest.raises(SpecError, match="not valid JSON at line 1, column 2"):
        AssemblySpec.read("{hose: 1}")


@pytest.mark.parametrize(
    ("path", "value", "said"),
    [
        ("hose.dash", 64, "This is above the maximum of 63 (value: 64). Enter 63 or less."),
        ("hose.dash", "twelve", "This is not a whole number (value: 'twelve'). Enter a whole number, for example 12."),
        ("hose.standard", "", "This is empty (value: ''). Enter a value."),
        ("hose.lot", 7, "This is not text (value: 7). Put it in quotes."),
        ("hose", "SAE 100R2", "This is not a JSON object (value: 'SAE 100R2'). Use a JSON object"),
        ("covers", "armour", "This is not a list (value: 'armour'). Use a JSON list"),
        ("length_mm", 5, "below the minimum of 10 mm (0.39 in) (value: 5). Enter 10 mm (0.39 in) or more."),
        ("length_mm", "200 m", "above the maximum of 104857 mm (4128.23 in) (value: '200 m'). Enter 104857 mm (4128.23 in) or less."),
        ("end_b.drop_mm", 5000, "above the maximum of 400 mm"),
        ("max_temperature_c", 999, "above the maximum of 400 °C"),
        ("working_pressure", {"value_bar": 200, "source": "s" * 81}, "is longer than 80 characters"),
        ("note", "n" * 201, f"is longer than 200 characters (value: '{'n' * 40}...'). Shorten it to 200 characters."),
    ],
)  # fmt: skip
def test_limits_are_told_in_a_builders_words_with_the_mend(path: str, value: object, said: str) -> None:
    with pytest.raises(SpecError) as caught:
        AssemblySpec.read(_changed(path, value))
    assert said in str(caught.value)
    assert all(problem.mend for problem in caught.value.problems)
    assert "input should" not in str(caught.value)


def test_a_whole_spec_that_is_no_object_is_refused_without_code_words() -> None:
    for text in ('"hello"', "[]", "null"):
        with pytest.raises(SpecError, match=r"^spec: This is not a JSON object"):
            AssemblySpec.read(text)


def test_a_day_in_a_refusal_is_written_as_people_write_it() -> None:
    problem = Problem("built_on", date(2099, 1, 1), "is too late")
    assert str(problem) == "built_on: is too late (value: '2099-01-01')."
    assert problem.as_dict()["value"] == "2099-01-01"


@pytest.mark.parametrize("written", ["-12", "12", " -12", "−12", "–12", 12])
def test_a_dash_size_may_be_written_with_its_dash(written: object) -> None:
    assert AssemblySpec.read(_changed("hose.dash", written)).hose.dash == 12
    end = {"connection": "npt", "form": "male", "dash": written, "hose_dash": written}
    read = AssemblySpec.read(_changed("end_a", end)).end_a
    assert (read.size, read.hose_dash) == ("3/4", 12)


def test_what_is_nested_too_deeply_is_refused() -> None:
    for text in (
        "[" * 100_000,
        '{"a":' * 100_000,
        json.dumps(EXAMPLE)[:-1] + ', "x": ' + "[" * 400 + "]" * 400 + "}",
    ):
        with pytest.raises(SpecError):
            AssemblySpec.read(text)


def test_a_number_of_thousands_of_digits_is_refused_in_words() -> None:
    with pytest.raises(SpecError, match=r"^spec: This contains a number with too many digits"):
        AssemblySpec.read('{"length_mm": 1' + "0" * 5000 + "}")


def test_a_key_that_appears_twice_is_refused_by_its_path() -> None:
    text = json.dumps(EXAMPLE).replace('"drop_mm": 56', '"drop_mm": 56, "drop_mm": 65')
    text = text.replace('"length_mm": 1250', '"length_mm": 1250, "length_mm": 125')
    with pytest.raises(SpecError, match=r"This appears twice\. Delete one") as caught:
        AssemblySpec.read(text)
    assert {problem.field for problem in caught.value.problems} == {"length_mm", "end_b.drop_mm"}


@pytest.mark.parametrize("encoding", ["utf-8", "utf-8-sig", "utf-16", "utf-32"])
def test_a_spec_is_read_in_any_encoding_that_names_itself(encoding: str) -> None:
    data = {**EXAMPLE, "note": "Kübel rechts"}
    assert AssemblySpec.read(json.dumps(data, ensure_ascii=False).encode(encoding)).as_dict() == data


def test_other_encodings_are_refused_with_the_mend() -> None:
    data = json.dumps({**EXAMPLE, "note": "Kübel"}, ensure_ascii=False)
    with pytest.raises(SpecError, match=r"not UTF-8 text.*Latin-1.*Save the file as UTF-8"):
        AssemblySpec.read(data.encode("latin-1"))
    with pytest.raises(SpecError, match=r"UTF-16 text but is corrupted"):
        AssemblySpec.read(data.encode("utf-16")[:-1])


def test_schema_names_every_cover() -> None:
    schema = json.dumps(AssemblySpec.model_json_schema())
    assert all(cover.value in schema for cover in Cover)


@pytest.mark.parametrize(
    "typed", ["9" * 400, "9" * 5000, "9" * 5000 + "/2", "9" * 400 + "/1 in", "1/" + "9" * 5000]
)
def test_more_digits_than_any_value_has_are_refused_and_no_infinite_pressure(typed: str) -> None:
    for read in (read_pressure_bar, read_length_mm, read_torque_nm, read_temperature_c):
        with pytest.raises(UnitError) as caught:
            read(typed)
        [problem] = caught.value.problems
        assert problem.message.id == "spec-unit-unreadable"


def test_a_whole_number_that_no_float_holds_is_refused() -> None:
    for read in (read_pressure_bar, read_length_mm, read_torque_nm, read_temperature_c):
        for number in (10**400, -(10**400)):
            with pytest.raises(UnitError) as caught:
                read(number)
            assert [problem.message.id for problem in caught.value.problems] == ["spec-unit-not-finite"]
