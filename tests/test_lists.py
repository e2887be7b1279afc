"""Lists of specs: CSV and XLSX, refused with row and column."""

from __future__ import annotations

import datetime as dt
import zipfile
from pathlib import Path
from random import Random

import openpyxl
import pytest

from tagger import list_columns, lists
from tagger.errors import SpecError
from tagger.spec import AssemblySpec, Cover
from tests.volume import volume

HEADING = (
    "hose.standard,hose.dash,end_a.connection,end_a.dash,end_a.form,"
    "end_b.connection,end_b.size,end_b.form,length_mm,covers,quantity,machine"
)
GOOD = "SAE 100R2,12,sae_37_flare,12,female_swivel,npt,3/4,male,49 1/4 in,spring_guard;fire_sleeve,3,Loader 4"


def _csv(tmp_path: Path, *lines: str, encoding: str = "utf-8") -> Path:
    path = tmp_path / "list.csv"
    path.write_bytes("\n".join(lines).encode(encoding))
    return path


def test_a_row_is_a_spec_with_its_quantity_and_record(tmp_path: Path) -> None:
    (row,) = lists.read_list(_csv(tmp_path, HEADING, GOOD, ",,,,,,,,,,,"))
    assert (row.row, row.quantity, row.machine, row.customer) == (2, 3, "Loader 4", None)
    assert row.spec.length_mm == 1251.0
    assert row.spec.covers == (Cover.SPRING_GUARD, Cover.FIRE_SLEEVE)
    assert row.spec.end_b.size == "3/4"


@pytest.mark.parametrize("encoding", ["utf-8-sig", "cp1252", "utf-16"])
def test_spreadsheet_exports_of_either_kind_are_read(tmp_path: Path, encoding: str) -> None:
    (row,) = lists.read_list(_csv(tmp_path, HEADING, GOOD.replace("Loader 4", "Müller 4"), encoding=encoding))
    assert row.machine == "Müller 4"


def test_a_long_list_is_read_row_by_row_up_to_where_it_is_damaged(tmp_path: Path) -> None:
    path = _csv(tmp_path, HEADING, GOOD, GOOD.replace("SAE 100R2", "SAE 100R1"), '"' + "x" * 200_000)
    rows = lists.each_row(list_columns.each_in_ours(lists.each_of_table(path)))
    assert [next(rows).spec.hose.standard for _ in range(2)] == ["SAE 100R2", "SAE 100R1"]
    with pytest.raises(SpecError) as refused:
        next(rows)
    assert [(problem.field, problem.value) for problem in refused.value.problems] == [("file", "list.csv")]


def test_a_dash_size_may_stand_with_its_dash_as_text_or_as_a_number(tmp_path: Path) -> None:
    table: list[list[object]] = [[*HEADING.split(",")], [*GOOD.split(",")]]
    for hose, end in (("-12", "-12"), (-12, -12.0)):
        table[1][1], table[1][3] = hose, end
        (row,) = lists.read_rows(table)
        assert (row.spec.hose.dash, row.spec.end_a.dash) == (12, 12)


@pytest.mark.parametrize("data", [b"\x00\x01\x02\r\x00,\x03", b"a,b\rc,d\x00", b'"' + b"x" * 200_000])
def test_a_file_that_is_no_text_is_refused_in_words(tmp_path: Path, data: bytes) -> None:
    (tmp_path / "binary.csv").write_bytes(data)
    with pytest.raises(SpecError) as caught:
        lists.read_list(tmp_path / "binary.csv")
    assert all(problem.mend for problem in caught.value.problems)


def test_a_formula_without_a_value_is_refused_by_its_cell(tmp_path: Path) -> None:
    book = openpyxl.Workbook()
    sheet = book.active
    assert sheet is not None
    sheet.append(HEADING.split(","))
    sheet.append([*GOOD.split(",")])
    sheet["I2"] = "=1000+250"  # no program has computed it yet
    book.save(tmp_path / "list.xlsx")
    with pytest.raises(
        SpecError, match=r"^cell I2: This cell contains a formula with no saved value.*save it and try again"
    ):
        lists.read_list(tmp_path / "list.xlsx")


def test_cells_beyond_the_heading_are_refused_by_cell(tmp_path: Path) -> None:
    with pytest.raises(
        SpecError, match=r"row 3\.cell N3: This cell is outside the header row \(value: 'lost'\)"
    ):
        lists.read_list(_csv(tmp_path, HEADING, f"{GOOD},,", f"{GOOD},,lost"))


def test_semicolons_and_tabs_separate_too(tmp_path: Path) -> None:
    for sign in (";", "\t"):
        text = GOOD.replace("spring_guard;fire_sleeve", "spring_guard")
        path = _csv(tmp_path, HEADING.replace(",", sign), text.replace(",", sign))
        assert lists.read_list(path)[0].quantity == 3


def test_xlsx_gives_the_same_spec_as_csv(tmp_path: Path) -> None:
    book = openpyxl.Workbook()
    sheet = book.active
    assert sheet is not None
    sheet.append(HEADING.split(","))
    cells: list[object] = [*GOOD.split(",")]
    cells[1] = cells[3] = 12.0
    cells[10] = 3
    sheet.append(cells)
    path = tmp_path / "list.xlsx"
    book.save(path)
    assert lists.read_list(path) == lists.read_list(_csv(tmp_path, HEADING, GOOD))


def test_all_problems_are_told_with_row_and_column(tmp_path: Path) -> None:
    bad_size = GOOD.replace("npt,3/4", "npt,")
    bad_count = GOOD.replace(",3,Loader", ",many,Loader")
    with pytest.raises(SpecError) as caught:
        lists.read_list(_csv(tmp_path, HEADING, GOOD, bad_size, bad_count))
    assert [problem.field for problem in caught.value.problems] == ["row 3.end_b.size", "row 4.quantity"]


def test_an_unknown_column_is_named_before_anything_is_read(tmp_path: Path) -> None:
    with pytest.raises(SpecError, match=r"column 13: This is not a known column \(value: 'colour'\)"):
        lists.read_list(_csv(tmp_path, HEADING + ",colour", GOOD + ",red"))


def test_a_size_that_became_a_date_is_explained() -> None:
    cells: list[object] = [*GOOD.split(",")]
    cells[6] = dt.datetime(2026, 3, 4)
    with pytest.raises(SpecError, match=r"row 2\.end_b\.size: The spreadsheet turned this into a date"):
        lists.read_rows([[*HEADING.split(",")], cells])


@pytest.mark.parametrize("lines", [(), (HEADING,)])
def test_a_list_without_rows_is_refused(tmp_path: Path, lines: tuple[str, ...]) -> None:
    with pytest.raises(SpecError, match="file"):
        lists.read_list(_csv(tmp_path, *lines))


def test_a_file_that_is_no_spreadsheet_is_refused(tmp_path: Path) -> None:
    path = tmp_path / "list.xlsx"
    path.write_bytes(b"not a zip")
    with pytest.raises(SpecError, match="not a spreadsheet"):
        lists.read_list(path)


def test_every_field_of_the_spec_has_a_column() -> None:
    known = lists.columns()
    for name in AssemblySpec.model_fields:
        assert any(column == name or column.startswith(f"{name}.") for column in known)


FOREIGN = {
    "en": ("Hose type", "Hose size", "End A", "Size A", "Form A", "End B", "Form B", "Length (in)", "Qty"),
    "fr": ("Type de tuyau", "Taille du tuyau", "Embout A", "Taille A", "Forme A", "Embout B", "Forme B",
           "Longueur totale (pouces)", "Quantité"),
    "es": ("Tipo de manguera", "Tamaño de la manguera", "Racor A", "Tamaño A", "Forma A", "Racor B", "Forma B",
           "Longitud total en pulgadas", "Cantidad"),
    "de": ("Schlauchtyp", "Schlauchgröße", "Armatur A", "Größe A", "Form A", "Armatur B", "Form B",
           "Länge in Zoll", "Stück"),
}  # fmt: skip


@pytest.mark.parametrize("language", FOREIGN)
def test_headings_of_every_language_are_matched_and_their_unit_is_read(language: str) -> None:
    heading = [*FOREIGN[language], "end_b.size"]
    cells = ["SAE 100R2", -12, "sae_37_flare", 12, "female_swivel", "npt", "male", "49,25", 3, "3/4"]
    (row,) = lists.read_rows(list_columns.in_ours([heading, cells]))
    assert (row.spec.length_mm, row.quantity) == (1251.0, 3)  # 49.25 in x 25.4 mm, to 0.1 mm
    assert (row.spec.hose.dash, row.spec.end_a.dash, row.spec.end_b.size) == (12, 12, "3/4")


@pytest.mark.parametrize(
    "heading", ["Cut length mm", "Longueur de coupe", "Longitud de corte", "Zuschnittlänge"]
)
def test_a_cut_length_is_never_taken_for_the_overall_length(heading: str) -> None:
    cells: list[list[object]] = [[*HEADING.split(",")], [*GOOD.split(",")]]
    cells[0][8] = heading
    with pytest.raises(
        SpecError, match=f"column 9: The column “{heading}” holds the length the hose is cut to"
    ):
        list_columns.in_ours(cells)


def test_two_headings_of_one_column_and_a_unit_that_is_none_are_told_not_guessed() -> None:
    for other in ("Overall length (mm)", "Length (yd)"):
        cells: list[list[object]] = [[*HEADING.split(","), other], [*GOOD.split(","), 1000]]
        with pytest.raises(SpecError, match=r"column 13: This is not a known column"):
            lists.read_rows(list_columns.in_ours(cells))


def test_a_damaged_spreadsheet_is_refused_in_words_however_it_is_damaged(tmp_path: Path) -> None:
    book = openpyxl.Workbook()
    assert book.active is not None
    book.active.append(HEADING.split(","))
    book.active.append(GOOD.split(","))
    book.save(tmp_path / "good.xlsx")
    good, path = (tmp_path / "good.xlsx").read_bytes(), tmp_path / "list.xlsx"
    chance, refused = Random(20), 0
    for _ in range(volume(150, 20_000)):
        damaged = bytearray(good)
        for _ in range(chance.choice((1, 1, 2, 8))):
            damaged[chance.randrange(len(damaged))] ^= 1 << chance.randrange(8)
        path.write_bytes(damaged[: chance.choice((len(good), len(good), chance.randrange(len(good))))])
        try:
            assert lists.read_table(path) == lists.read_table(tmp_path / "good.xlsx")
        except SpecError as error:
            refused += 1
            assert all(problem.mend for problem in error.problems)
    assert refused


def test_a_sheet_that_says_its_size_wrong_is_read_whole(tmp_path: Path) -> None:
    book = openpyxl.Workbook()
    assert book.active is not None
    for row in (HEADING.split(","), GOOD.split(","), GOOD.split(",")):
        book.active.append(row)
    book.save(tmp_path / "right.xlsx")
    with (
        zipfile.ZipFile(tmp_path / "right.xlsx") as parts,
        zipfile.ZipFile(tmp_path / "wrong.xlsx", "w") as out,
    ):
        for name in parts.namelist():
            out.writestr(name, parts.read(name).replace(b'<dimension ref="A1:L3"', b'<dimension ref="A1:B2"'))
    assert lists.read_list(tmp_path / "wrong.xlsx") == lists.read_list(tmp_path / "right.xlsx")
    assert len(lists.read_list(tmp_path / "wrong.xlsx")) == 2


def test_headings_of_a_hundred_thousand_brackets_are_nobodys() -> None:
    """Without a bound on what is searched this test takes minutes."""
    long = "[" * 100_000
    assert list_columns.guess([long, "Length (in)"]) == ["", "length_mm"]
    assert list_columns.unit_of(long, "length_mm") == ""


def test_a_spreadsheet_reads_no_other_file_and_no_entity_swells_it(tmp_path: Path) -> None:
    """An entity of XML may name a file of the server, or itself be made of a billion others."""
    secret = tmp_path / "secret"
    secret.write_text("the key of the shop")
    nested = "".join(f'<!ENTITY e{n + 1} "{f"&e{n};" * 10}">' for n in range(9))
    for name, entities in (
        ("file", f'<!ENTITY e9 SYSTEM "{secret.as_uri()}">'),
        ("swelling", f'<!ENTITY e0 "{"x" * 10}">{nested}'),
    ):
        whole, changed = tmp_path / "whole.xlsx", tmp_path / f"{name}.xlsx"
        book = openpyxl.Workbook()
        book.active.append(["length_mm", "note"])  # type: ignore[union-attr]
        book.save(whole)
        sheet = (
            f'<?xml version="1.0"?><!DOCTYPE worksheet [{entities}]>'
            '<worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetData>'
            '<row r="1"><c r="A1" t="inlineStr"><is><t>length&e9;</t></is></c></row></sheetData></worksheet>'
        )
        with zipfile.ZipFile(whole) as old, zipfile.ZipFile(changed, "w") as new:
            for part in old.namelist():
                new.writestr(part, sheet if part.endswith("sheet1.xml") else old.read(part))
        try:
            read = repr(list(lists.read_table(changed)))
        except SpecError as error:
            read = str(error)
        assert "the key of the shop" not in read and len(read) < 10_000, name
