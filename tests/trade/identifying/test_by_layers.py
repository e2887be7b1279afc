"""A hose by its layers: the right standard is never excluded, each exclusion says why, and nothing is a rating."""

from __future__ import annotations

import json
import re
from collections import defaultdict
from dataclasses import replace

import pytest

from tagger.errors import SpecError
from tagger.i18n import LANGUAGES, Translator
from tagger.messages import diameter
from tagger.spec import Hose
from tagger.trade import report
from tagger.trade.identifying import by_layers
from tagger.trade.identifying.by_layers import (
    BORE_MM,
    OUTSIDE_MM,
    OUTSIDE_SHARE,
    Exclusion,
    HoseSeen,
    dashes,
    exclude,
)
from tagger.trade.rating import hose_rating
from tagger.trade.rows import LAYERS, HosePressureRow, HoseSizeRow
from tagger.trade.tables import Tables, tables
from tests.trade.made_up import HOSE, body, hose, made_up


def of(**given: object) -> Exclusion:
    return exclude(HoseSeen.read(**given), tables())


def sizes(found: Exclusion) -> dict[str, list[int]]:
    return {one.standard: [size.dash for size in one.sizes] for one in found.remaining}


def _left(standard: str, seen: HoseSeen) -> list[int]:
    """The sizes of a standard that remain; none where it is excluded."""
    found = by_layers._of_standard(standard, seen, tables())
    return [size.dash for size in found.sizes] if isinstance(found, by_layers.Remaining) else []


def test_whoever_measures_what_any_source_prints_keeps_the_standard_and_its_size() -> None:
    """Every outside diameter and bore of the tables, with every kind and count of its layers, in part and together."""
    for standard, rows in tables().hose_sizes.items():
        for row in rows:
            layers = [
                (one.kind, count)
                for one in tables().hose_layers.get(standard, ())
                for count in {one.layers_min, one.layers_max}
            ]
            for kind, count in [(None, None), *layers]:
                seen = HoseSeen(row.outside_diameter_mm, row.bore_mm, kind, count)
                assert int(row.dash) in _left(standard, seen), (standard, row.dash, kind)


def test_another_sources_hose_of_the_same_standard_and_size_is_not_excluded_either() -> None:
    """Each source left out in turn: the tolerance is as wide as sources differ."""
    by_size: dict[tuple[str, str], list[float]] = defaultdict(list)
    for standard, rows in tables().hose_sizes.items():
        for row in rows:
            by_size[standard, row.dash].append(row.outside_diameter_mm)
    several = {key: values for key, values in by_size.items() if len(values) > 1}
    assert len(several) > 100
    for key, values in several.items():
        for n, left_out in enumerate(values):
            others = values[:n] + values[n + 1 :]
            off = max(min(others) - left_out, left_out - max(others))
            assert off <= max(OUTSIDE_MM, OUTSIDE_SHARE * left_out), (key, left_out)


def test_a_bore_off_by_less_than_half_a_size_keeps_its_size_in_every_standard() -> None:
    for standard in tables().standards:
        for dash in dashes(standard, tables()):
            if dash > 63:
                continue
            nominal = tables().nominal_bore_mm(Hose(standard=standard, dash=dash))
            for bore in (nominal, nominal - BORE_MM + 0.01, nominal + BORE_MM - 0.01):
                if bore >= 1:
                    assert dash in _left(standard, HoseSeen(bore_mm=bore)), (standard, dash)


def _made(*rows: HoseSizeRow, **more: list[HosePressureRow]) -> Tables:
    """Tables of the made-up hose in -12, whose nominal bore is 19.05 mm, with these rows of its size."""
    return made_up(hose_size=list(rows), hose_layers=[], **more)


def test_a_diameter_excludes_a_size_only_beyond_the_tolerance_of_every_source_and_says_by_which() -> None:
    """Sources say 27 and 30 mm: 6.5 % of what is measured either side of them."""
    tables_ = _made(body(19, 27), body(19, 30))
    for od, is_left in ((25.4, True), (25.3, False), (28.5, True), (32.0, True), (32.1, False)):
        found = exclude(HoseSeen(outside_mm=od), tables_)
        assert (found.names == (HOSE,)) is is_left, od
        if not is_left:
            why = found.excluded[0].why
            assert why.id == "identify-hose-other_od"
            assert why.values["measured"] == diameter(od)
            assert (why.values["nearest"], why.values["dash"]) == (diameter(27 if od < 28 else 30), 12)


def test_of_a_thin_hose_a_millimetre_and_a_half_either_side_is_within_the_tolerance() -> None:
    tables_ = _made(body(6, 12, dash=4), hose_pressure=[hose(100, dash=4)])
    for od, is_left in ((10.5, True), (10.4, False), (13.5, True), (13.6, False)):
        assert (exclude(HoseSeen(outside_mm=od), tables_).names == (HOSE,)) is is_left, od


def test_every_bore_that_a_source_prints_counts_and_not_that_of_the_dash_alone() -> None:
    tables_ = _made(body(17, 27), body(None, 27))
    for bore, is_left in ((16.0, True), (15.9, False), (17, True), (20.0, True), (20.1, False)):
        found = exclude(HoseSeen(bore_mm=bore), tables_)
        assert (found.names == (HOSE,)) is is_left, bore
    why = exclude(HoseSeen(bore_mm=15.9), tables_).excluded[0].why
    assert (why.id, why.values["nearest"]) == ("identify-hose-other_bore", diameter(17))


def test_where_no_outside_diameter_is_known_only_one_below_the_bore_excludes() -> None:
    tables_ = _made()
    assert exclude(HoseSeen(outside_mm=60), tables_).remaining[0].unchecked == ("od",)
    assert exclude(HoseSeen(outside_mm=15), tables_).names == ()
    assert exclude(HoseSeen(bore_mm=19), tables_).remaining[0].unchecked == (), (
        "not measured, so not to be checked"
    )
    assert exclude(HoseSeen(outside_mm=30), _made(body(19, 30))).remaining[0].unchecked == ()


def test_a_part_number_of_the_shops_does_not_widen_what_its_standard_can_be() -> None:
    own = replace(body(25, 40), part="TW 2W 12")
    of_own = exclude(HoseSeen(outside_mm=40), _made(body(19, 30), own))
    assert of_own.names == ()
    left = exclude(HoseSeen(outside_mm=30), _made(body(19, 30), own)).remaining[0]
    assert [size.outside_mm for size in left.sizes] == [(30, 30)]


def test_a_diameter_is_between_one_and_two_hundred_and_fifty_millimetres() -> None:
    assert [HoseSeen.read(bore=text).bore_mm for text in ("1", "1.5", "250")] == [1, 1.5, 250]
    for text in ("0.99", "250.1"):
        with pytest.raises(SpecError) as refused:
            HoseSeen.read(bore=text)
        assert [problem.field for problem in refused.value.problems] == ["bore"]


def test_a_text_that_is_no_count_is_shown_as_far_as_forty_letters() -> None:
    for given, shown in (("9" * 40, "9" * 40), ("9" * 41, "9" * 40)):
        with pytest.raises(SpecError) as refused:
            of(kind="fibre", layers=given)
        assert refused.value.problems[0].message.values["value"] == shown


def test_layers_exclude_what_has_others_and_say_which_with_their_source() -> None:
    found = of(kind="wire_spiral", layers=4)
    assert {"EN 856 4SP", "EN 856 4SH", "SAE 100R12", "SAE 100R13", "SAE 100R15"} <= set(found.names)
    assert not {"SAE 100R1", "EN 853 1SN", "EN 853 2SN", "EN 857 1SC", "SAE 100R7"} & set(found.names)
    why = {one.standard: str(one.why) for one in found.excluded}
    assert (
        why["EN 853 1SN"]
        == "Reinforcement in the tables: one wire braid. Source: Common practice, no source."
    )
    assert (
        why["SAE 100R11"]
        == "Reinforcement in the tables: 6 wire spirals. Source: SAE J517 before 2005 (unverified)."
    )
    assert "2 to 3 wire spirals" in str(of(kind="wire_braid", layers=1).excluded[0].why)


def test_iso_18752_which_says_nothing_of_layers_is_never_excluded_by_them() -> None:
    for kind in LAYERS:
        assert {name for name in tables().standards if name.startswith("ISO 18752")} <= set(
            of(kind=kind).names
        )
    unchecked = {one.standard: one.unchecked for one in of(kind="fibre", layers=2, od=20).remaining}
    assert unchecked["ISO 18752 280"] == ("layers", "od")


def test_half_inch_1sn_2sc_and_r7_stay_together_as_they_are_within_a_millimetre() -> None:
    remaining = sizes(of(od=20.4))
    assert all(8 in remaining[name] for name in ("EN 853 1SN", "EN 857 2SC", "SAE 100R7"))


def test_a_hose_whose_dash_names_the_tube_goes_by_its_own_bore() -> None:
    assert sizes(of(bore="13 mm"))["SAE 100R5"] == [10], "-10 of 100R5 has the bore of -8"


def test_a_standard_without_a_size_of_its_own_has_all_bores_and_no_tube() -> None:
    assert 14 in dashes("ISO 18752 35", tables()) and 18 not in dashes("ISO 18752 35", tables())


def test_the_lay_line_is_held_against_what_was_measured() -> None:
    agrees = of(lay_line="EN 853 2SN DN 12 WP 275 BAR", kind="wire_braid", layers=2, od="22 mm")
    assert [note.id for note in agrees.notes] == ["identify-hose-line_names"]
    other = of(lay_line="SAE 100R12 -8", kind="wire_braid", layers=1)
    assert [note.id for note in other.notes][:2] == [
        "identify-hose-line_names",
        "identify-hose-line_excluded",
    ]
    assert "Do not use the hose" in str(other.notes[1])
    small = of(lay_line="EN 853 2SN -12", bore="12.7 mm")
    assert "identify-hose-line_size" in [note.id for note in small.notes]
    unread = of(lay_line="worn off")
    assert [note.id for note in unread.notes] == ["identify-hose-line_unread"]
    assert set(unread.names) == set(tables().standards), "what is not read excludes nothing"


@pytest.mark.parametrize(
    ("given", "field"),
    [
        ({}, "od"),
        ({"layers": 2}, "kind"),
        ({"od": "20", "bore": "20"}, "bore"),
        ({"od": "1 1/16"}, "od"),
        ({"od": "300"}, "od"),
        ({"bore": "0"}, "bore"),
        ({"kind": "steel"}, "kind"),
        ({"kind": "fibre", "layers": "two"}, "layers"),
        ({"kind": "fibre", "layers": "9"}, "layers"),
        ({"kind": "fibre", "layers": "0"}, "layers"),
        ({"kind": "fibre", "layers": "²"}, "layers"),
    ],
)
def test_what_cannot_be_is_refused_by_field_with_a_mend(given: dict[str, object], field: str) -> None:
    with pytest.raises(SpecError) as refused:
        of(**given)
    assert refused.value.problems[0].field == field
    for lang in LANGUAGES:
        assert Translator(lang).mend(refused.value.problems[0].message)


def test_no_answer_holds_a_rating_in_any_language() -> None:
    """Nowhere a pressure, and everywhere that it never rates."""
    found = of(od="22 mm", kind="wire_braid", layers=2)
    for lang in LANGUAGES:
        answer = report.hose_exclusion(found, tables(), Translator(lang))
        assert answer["never_rates"]["text"] == Translator(lang)("identify-hose-never_rates")
        assert not re.search(
            r"\d\s*(bar|psi|MPa)\b|_bar|rating\"|working", json.dumps(answer, ensure_ascii=False)
        )
    rated = {
        name: hose_rating(Hose(standard=name, dash=8), tables())[0].value_bar
        for name in ("EN 853 2SN", "EN 857 2SC")
    }
    assert set(rated) <= set(found.names), (
        "hoses of different constructions stay together: no rating could be named"
    )


def test_every_standard_has_its_layers_but_iso_18752_and_every_row_a_source() -> None:
    without = set(tables().standards) - set(tables().hose_layers)
    assert without == {name for name in tables().standards if name.startswith("ISO 18752")}
    assert all(row.source for rows in tables().hose_layers.values() for row in rows)


def test_the_layers_agree_with_the_construction_that_the_tables_name() -> None:
    counts = {"one": 1, "two": 2, "four": 4, "six": 6}
    kinds = {"wire braid": "wire_braid", "spiral wire": "wire_spiral", "fibre braid": "fibre"}
    checked = 0
    for name, standard in tables().standards.items():
        words = re.search(
            r"(one|two|four|six)( (?:or (?:two|six) )?(?:light |heavy )?)(wire braid|fibre braid|spiral wire)",
            standard.construction,
        )
        if words is None:
            continue
        own = next(r for r in tables().hose_layers[name] if r.kind == kinds[words[3]])
        most = counts[words[2].split()[1]] if "or" in words[2] else counts[words[1]]
        assert own.layers_min <= counts[words[1]] and own.layers_max >= most, name
        checked += 1
    assert checked >= 20
