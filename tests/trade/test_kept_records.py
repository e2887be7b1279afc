"""Assessments that were stored before messages had ids are read, and said in the reader's language."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

import pytest

from tagger.i18n import LANGUAGES, Translator
from tagger.trade.results import KEPT_CODES, Assessment

RECORDS: list[dict[str, Any]] = json.loads(
    (Path(__file__).parent / "kept_assessments.json").read_text(encoding="utf-8")
)
"""As an earlier version of this package stored them: every code of a warning, and texts for sources."""


def test_the_records_hold_every_code_that_was_ever_stored_as_text() -> None:
    assert {w["code"] for record in RECORDS for w in record["warnings"]} == KEPT_CODES


@pytest.mark.parametrize("record", RECORDS, ids=lambda record: record["warnings"][0]["code"])
def test_an_old_record_is_read_with_every_figure_it_had(record: dict[str, Any]) -> None:
    found = Assessment.model_validate(record).model_dump(mode="json")
    told = {"warnings", "end_a", "end_b"}
    for key in record.keys() - told - {"working_pressure", "length_tolerance"}:
        assert found[key] == record[key], key
    assert (record["length_tolerance"] or {}).items() <= (found["length_tolerance"] or {}).items()
    for key in ("value_bar", "limited_by", "source", "at_most_bar", "margin_bar"):
        assert found["working_pressure"][key] == record["working_pressure"][key]
    assert [(w["code"], w["field"], w["severity"]) for w in found["warnings"]] == [
        (w["code"], w["field"], w["severity"]) for w in record["warnings"]
    ]


@pytest.mark.parametrize("language", LANGUAGES)
def test_its_warnings_are_said_anew_from_their_codes(language: str) -> None:
    t = Translator(language)
    for record in RECORDS:
        for warning, stored in zip(
            Assessment.model_validate(record).warnings, record["warnings"], strict=True
        ):
            assert warning.message.id == f"trade-kept-{stored['code']}"
            said = t(warning.message)
            assert said.endswith(".") and "{" not in said and stored["text"] != said


def test_texts_of_its_sources_and_spread_are_read_as_they_are() -> None:
    for record in RECORDS:
        found = Assessment.model_validate(record)
        for name in ("end_a", "end_b"):
            assert [str(line) for line in getattr(found, name).spread] == record[name]["spread"]
            if record[name]["torque"]:
                assert str(getattr(found, name).torque.basis) == record[name]["torque"]["basis"]
        for part, stored in zip(
            found.working_pressure.parts, record["working_pressure"]["parts"], strict=True
        ):
            assert (part.source, part.note) == (stored["source"], stored["note"])


def test_a_warning_with_a_code_nobody_knows_keeps_its_text() -> None:
    record = {**RECORDS[0], "warnings": [{"code": "of_yore", "field": "hose", "text": "Look twice."}]}
    (warning,) = Assessment.model_validate(record).warnings
    assert warning.text == "Look twice."


@pytest.mark.parametrize("record", RECORDS, ids=lambda record: record["warnings"][0]["code"])
def test_what_is_read_is_stored_anew_without_any_text_of_a_warning(record: dict[str, Any]) -> None:
    found = Assessment.model_validate(record)
    stored = json.loads(json.dumps(found.kept()))
    assert all(set(w) == {"code", "field", "severity", "message"} for w in stored["warnings"])
    assert Assessment.model_validate(stored) == found
