"""An end that no family of the tables describes: said in words, rated by the manufacturer's figure only."""

from __future__ import annotations

from typing import Any

import pytest

from tagger import phrases
from tagger.errors import SpecError
from tagger.i18n import Translator
from tagger.spec import AssemblySpec, Connection
from tagger.trade import assess, likeforlike
from tagger.trade.identifying.identify import Measurements, identify
from tagger.trade.tables import tables
from tests.trade.specs import end

DESCRIBED = {"connection": "other", "description": "Valve block M20x1.5", "form": "male"}


def spec(described: dict[str, Any] = DESCRIBED, **more: Any) -> AssemblySpec:
    return AssemblySpec.read(
        {
            "hose": {"standard": "SAE 100R2", "dash": 8},
            "end_a": described,
            "end_b": end("sae_37_flare", 8),
            "length_mm": 900,
        }
        | more
    )


def test_it_is_known_by_its_description() -> None:
    assert spec().end_a.size_text == "Valve block M20x1.5"


@pytest.mark.parametrize(
    ("language", "other"),
    [
        ("en", "other connection"),
        ("fr", "autre raccord"),
        ("es", "otra conexión"),
        ("de", "sonstiger Anschluss"),
    ],
)
def test_its_description_and_that_it_is_of_no_family_never_read_as_one_name(
    language: str, other: str
) -> None:
    """ "Valve block M20x1.5 other connection" stood on the page."""
    t, described = Translator(language), spec().end_a
    for said in (phrases.end_title(described), phrases.end_family(described), phrases.end(described)):
        assert t(said).startswith(f"Valve block M20x1.5 ({other})")


def test_only_a_pressure_given_rates_it_and_never_above_the_other_parts() -> None:
    alone = assess(spec()).working_pressure
    assert alone.value_bar is None and alone.at_most_bar is not None
    low = assess(spec(working_pressure={"value_bar": 90, "source": "maker's data sheet"})).working_pressure
    assert low.value_bar == 90
    given = {"value_bar": 900, "source": "maker's data sheet", "confirmed": True}
    high = assess(spec(working_pressure=given)).working_pressure
    assert high.value_bar == alone.at_most_bar


@pytest.mark.parametrize(
    ("wrong", "field"),
    [
        ({"connection": "other", "form": "male"}, "end_a.description"),
        ({**DESCRIBED, "size": "M20x1.5"}, "end_a.size"),
        ({**DESCRIBED, "description": "longer than the twenty-four"}, "end_a.description"),
        ({**DESCRIBED, "description": "vis à tête"}, "end_a.description"),
        ({**DESCRIBED, "form": "flange_head"}, "end_a.form"),
        (end("sae_37_flare", 8) | {"description": "M20x1.5"}, "end_a.description"),
    ],
)
def test_what_does_not_describe_an_end_is_refused(wrong: dict[str, Any], field: str) -> None:
    with pytest.raises(SpecError) as refused:
        spec(wrong)
    assert [p.field for p in refused.value.problems] == [field]


def test_it_is_never_identified_and_never_replaces_by_itself() -> None:
    found = identify(Measurements.read(form="male", thread_od="20 mm", pitch="1.5 mm"))
    assert all(c.connection != "other" for c in found.candidates)
    verdict = next(f.verdict for f in likeforlike.compare(spec(), spec()).fields if f.field == "end_a")
    assert verdict == "differs"
    assert tables().sizes(Connection("other")) == []
