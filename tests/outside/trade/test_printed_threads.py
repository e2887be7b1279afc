"""What the wall chart and the booklet print of threads, against published figures."""

from __future__ import annotations

from functools import cache

import pypdfium2
import pytest

from tagger.papers import booklet, wall_chart
from tagger.settings import ShopSettings
from tagger.spec import Connection, Form
from tagger.trade.identifying import likelihood
from tagger.trade.tables import tables
from tests.outside.trade.test_standards import inches, of


@cache
def booklet_lines() -> tuple[str, ...]:
    body = booklet.of_shop(ShopSettings(), tables(), "en", page_by_page=True)
    pages = pypdfium2.PdfDocument(body)
    return tuple(line for page in pages for line in page.get_textpage().get_text_range().split("\r\n"))


@cache
def chart_lines() -> tuple[str, ...]:
    [page] = pypdfium2.PdfDocument(wall_chart.of_shop(ShopSettings(), tables(), "en"))
    return tuple(page.get_textpage().get_text_range().split("\r\n"))


def figures(thread: str, lines: tuple[str, ...]) -> list[float]:
    """The figures behind a thread's name in the one line that begins with it."""
    [line] = {line for line in lines if line.startswith(f"{thread} ") and "[" in line}
    return [float(cell) for cell in line.split(thread, 1)[1].split("[")[0].replace(",", " ").split()]


@pytest.mark.parametrize("row", of("iso_228_1_threads.csv"), ids=lambda row: row["size"])
def test_bsp_threads_are_printed_as_in_iso_228_1(row: dict[str, str]) -> None:
    thread = tables().threads[Connection.BSPP, row["size"]].thread
    major, _, minor, _, _, tpi, _ = figures(
        thread, tuple(line for line in booklet_lines() if "JIS" not in line)
    )
    assert tpi == float(row["tpi"])
    if row["minor_mm"]:
        assert minor == pytest.approx(float(row["minor_mm"]), abs=0.006)
    if row["major_mm"]:
        assert major == pytest.approx(float(row["major_mm"]), abs=0.011)


@pytest.mark.parametrize("row", of("asme_b1_20_1_pipe_threads.csv"), ids=lambda row: row["size"])
@pytest.mark.parametrize("family", [Connection.NPT, Connection.NPTF, Connection.NPSM])
def test_pipe_threads_are_printed_as_in_asme_b1_20_1(family: Connection, row: dict[str, str]) -> None:
    thread = tables().threads[family, row["size"]].thread
    for lines in (booklet_lines(), chart_lines()):
        millimetres, inch, *rest = figures(thread, lines)
        assert millimetres == pytest.approx(float(row["outside_diameter_in"]) * 25.4, abs=0.006)
        assert inch == float(row["outside_diameter_in"])
        assert not rest or rest[3] == float(row["tpi"])


@pytest.mark.parametrize("row", of("asme_b1_20_1_pipe_threads.csv"), ids=lambda row: row["size"])
def test_a_male_taper_thread_measures_less_by_a_sixteenth_of_its_effective_length(
    row: dict[str, str],
) -> None:
    """ASME B1.20.1: the effective length is (0.80 D + 6.8) / n, and the diameter falls by 1 in 16 along it."""
    t, diameter_in, tpi = (
        tables().threads[Connection.NPT, row["size"]],
        row["outside_diameter_in"],
        row["tpi"],
    )
    small_in = float(diameter_in) - (0.80 * float(diameter_in) + 6.8) / float(tpi) / 16
    low, high = likelihood.zone(t.thread_form, t.thread_od_mm, t.female_minor_mm, t.pitch_mm, Form.MALE)
    assert (low, high) == (
        pytest.approx(small_in * 25.4, abs=0.01), pytest.approx(float(diameter_in) * 25.4, abs=0.006),
    )  # fmt: skip


@pytest.mark.parametrize("row", of("sae_j514_37_degree_flare_threads.csv"), ids=lambda row: row["dash"])
def test_a_37_degree_flare_is_printed_with_its_thread_of_sae_j514(row: dict[str, str]) -> None:
    start = next(n for n, line in enumerate(booklet_lines()) if line == "1 37° flare (JIC)")
    mine = booklet_lines()[start : start + 30]
    [line] = [line for line in mine if line.startswith(f"-{row['dash']} ")]
    name, pitch = row["thread"].split("-")
    assert line.startswith(f"-{row['dash']} {row['thread']} UN")
    millimetres = float(line.split(" UNF ")[-1].split(" UN ")[-1].split()[0])
    assert millimetres == pytest.approx(inches(name), abs=0.006)
    assert f" {pitch} -{row['dash']} [" in line
