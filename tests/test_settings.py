"""What a shop has set holds on the command line as on the web; what it prints is one and the same tag."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from datetime import date
from pathlib import Path

import pypdfium2
import pytest

from api.settings import Settings
from tagger.code import link, number
from tagger.drawing import Circle, Text
from tagger.errors import NumberError, TemplateError
from tagger.printing import layout, raster, template
from tagger.printing.content import Tag
from tagger.record_tag import preview, tags_of
from tagger.settings import SettingsError, ShopSettings
from tagger.spec import AssemblySpec
from tagger.store import Assembly, Registration, Store
from tagger.trade import assess
from tagger.trade.likeforlike import compare
from tests.cli.test_cli import Shell
from tests.cli.test_cli import tagger as tagger  # the fixture
from tests.databases import registered_in
from tests.test_spec import EXAMPLE

SPEC = AssemblySpec.read(EXAMPLE)
BASE = "https://tags.example.com"


def _registered(store: Store, count: int = 1) -> list[Assembly]:
    return store.register(
        SPEC, assess(SPEC), count=count, built_on=date(2026, 11, 25), customer="Brindlemere Quarry",
        machine="Loader 7", position="rod side",
    )  # fmt: skip


def _shown(tag: Tag, name: str) -> list[str]:
    page = layout.lay_out(tag, template.load(name))
    return [item.text for item in page.drawing.items if isinstance(item, Text)]


@pytest.fixture
def store(tmp_path: Path) -> Iterator[Store]:
    with Store.open(f"sqlite:///{tmp_path}/tags.sqlite3") as opened:
        yield opened


def test_the_traveller_prints_the_records_lots_and_the_symbol_has_none(store: Store) -> None:
    [tag] = tags_of(store, _registered(store), ShopSettings())
    assert "Lots: A: F-118 and hose: H-2291" in " ".join(_shown(tag, "traveller_a5"))
    assert tag.spec.hose.lot is None and tag.spec.end_a.lot is None
    assert not any("H-2291" in line for line in _shown(tag, "hang_tag"))


def test_a_tag_carries_what_the_record_and_the_shop_say(store: Store) -> None:
    shop = ShopSettings(base_url=BASE, shop_name="Ridge Hose", shop_phone="555-0142", gs1_prefix="0614141")
    made = _registered(store, 3)
    second = tags_of(store, made[1:2], shop)[0]
    assert str(second.serial) == "2 of 3"  # of its run, whichever of it are printed
    assert second.shop == "Ridge Hose, 555-0142"
    assert link.parse(second.link).kind == "gs1"
    assert second.extra == {
        "customer": "Brindlemere Quarry", "machine": "Loader 7", "position": "rod side",
        "note": "boom cylinder, rod side",
    }  # fmt: skip


def test_the_preview_is_the_tag_but_for_its_number(store: Store) -> None:
    shop = ShopSettings(base_url=BASE, shop_name="Ridge Hose")
    row = Registration(
        SPEC,
        assess(SPEC),
        3,
        date(2026, 11, 25),
        customer="Brindlemere Quarry",
        machine="Loader 7",
        position="rod side",
    )
    first, shown = tags_of(store, _registered(store, 3), shop)[0], preview(row, shop)
    for name in ("content", "assessment", "serial", "shop", "extra", "lots"):
        assert getattr(shown, name) == getattr(first, name), name


@pytest.mark.parametrize("gs1", ["", "0614141"])
def test_a_preview_carries_specimen_across_it_and_no_number_that_a_reader_takes(gs1: str) -> None:
    shown = preview(
        Registration(SPEC, assess(SPEC), 1, date(2026, 11, 25)), ShopSettings(base_url=BASE, gs1_prefix=gs1)
    )
    assert not number.is_valid(shown.number) and number.near(shown.number) == []
    for scanned in (shown.link, link.number_only(shown.link), shown.number):
        with pytest.raises(NumberError):
            link.parse(scanned)
    words = {"en": "SPECIMEN", "fr": "SPÉCIMEN", "es": "MUESTRA", "de": "MUSTER"}
    for name in template.names():
        for language in ("en", "fr", "es", "de"):
            label = ShopSettings(language=language).template(name)
            word = words[label.languages[0]]
            page = layout.lay_out(shown, label)
            across = [item for item in page.drawing.items if isinstance(item, Text)][-len(word) :]
            assert "".join(item.text for item in across) == word, name
            assert across[-1].x - across[0].x > 0.7 * label.size[0], "from side to side"
            for item in across:
                assert 0 < item.x < label.size[0] and 0 < item.y < label.size[1], name


def test_no_letter_of_specimen_hides_a_digit_of_the_pressure() -> None:
    label = template.load("hang_tag")
    page = layout.lay_out(
        preview(Registration(SPEC, assess(SPEC), 1, date(2026, 11, 25)), ShopSettings(base_url=BASE)), label
    )
    [box] = [box for box in label.box if box.kind == "pressure"]
    (left, top), (width, height) = box.at, box.size
    for item in page.drawing.items:
        if isinstance(item, Circle) and item.fill == "white" and item.radius > 2:
            assert not (
                left < item.x + item.radius
                and item.x - item.radius < left + width
                and top < item.y + item.radius
                and item.y - item.radius < top + height
            )


def test_a_name_that_nobody_gave_stands_on_no_tag() -> None:
    assert ShopSettings().shop_line == ""
    assert ShopSettings(shop_name="Ridge Hose").shop_line == "Ridge Hose"


@pytest.mark.parametrize("name", template.names())
def test_the_widest_number_fits_every_template(name: str) -> None:
    row = Registration(SPEC, assess(SPEC), 1, date(2026, 11, 25))
    widest = replace(preview(row, ShopSettings(base_url=BASE)), number="WWWWWWWWWWY")
    for dpi in (203, 300):
        layout.lay_out(widest, template.load(name), dpi)


def test_the_shops_length_bands_hold_wherever_a_spec_is_assessed_or_compared() -> None:
    din = ShopSettings(length_bands="din").tables()
    found = assess(SPEC, din).length_tolerance
    assert found is not None and (found.minus, found.plus) == (4, 12)  # DIN 20066's, else SAE's 12.5
    longer = SPEC.model_copy(update={"length_mm": SPEC.length_mm + 10})
    reasons = [{f.field: f.verdict for f in compare(longer, SPEC, t).fields} for t in (None, din)]
    assert reasons[0]["length_mm"] != reasons[1]["length_mm"]


def test_web_and_command_line_read_the_same_settings() -> None:
    environ = {"TAGGER_LENGTH_BANDS": "din", "TAGGER_LABEL_TEMPLATE": "roll_4x6", "TAGGER_PRINTER_DPI": "300"}
    web, line = Settings.from_env(environ), ShopSettings.from_env(environ)
    assert {name: getattr(web, name) for name in ShopSettings.model_fields} == line.model_dump()


def test_a_setting_of_the_web_alone_does_not_stop_the_command_line() -> None:
    environ = {"TAGGER_SMTP_URL": "smtp://mail.example.com", "TAGGER_LANGUAGE": "xx"}
    with pytest.raises(SettingsError) as refused:
        ShopSettings.from_env(environ)
    assert [problem.field for problem in refused.value.problems] == ["TAGGER_LANGUAGE"]


def test_the_shops_language_holds_unless_the_template_has_it() -> None:
    assert ShopSettings().template("hang_tag").languages == ("en",)
    assert ShopSettings(language="de").template("hang_tag").languages == ("de",)
    assert ShopSettings(language="de").template("hang_tag", ("fr",)).languages == ("fr",)


def test_the_command_line_checks_by_the_shops_length_bands(tagger: Shell) -> None:
    tagger.env["TAGGER_LENGTH_BANDS"] = "din"
    assert tagger.json("check", "spec.json")["length_tolerance_mm"]["minus"] == 4
    assert tagger.json("check", "spec.json", "--length-bands", "sae")["length_tolerance_mm"]["minus"] == 12.5


def test_the_command_line_prints_by_the_shops_template_resolution_and_language(
    tagger: Shell, tmp_path: Path
) -> None:
    (made,) = tagger.json("register", "spec.json")["numbers"]
    tagger.env |= {
        "TAGGER_LABEL_TEMPLATE": "roll_2x1", "TAGGER_PRINTER_DPI": "300", "TAGGER_LANGUAGE": "de",
    }  # fmt: skip
    tagger("print", made, "--out", "tag.pdf")
    [page] = pypdfium2.PdfDocument(tmp_path / "tag.pdf")
    assert [round(side / 72, 1) for side in page.get_size()] == [2.0, 1.0]
    assert "Schlauch" in page.get_textpage().get_text_bounded() or "Betriebsdruck" in (
        page.get_textpage().get_text_bounded()
    )
    assert tagger.json("preflight", made)["module_mm"] == pytest.approx(5 * 25.4 / 300, abs=0.001)
    tagger("print", made, "--out", "tag2.pdf", "--template", "hang_tag")
    assert pypdfium2.PdfDocument(tmp_path / "tag2.pdf")[0].get_size() != page.get_size()


@pytest.mark.parametrize(
    ("option", "value", "more"),
    [
        ("--template", "roll_4x6", {"TAGGER_SHOP_NAME": "漢 Hose"}),  # the face has no such letter
        ("--out", "run.jpg", {}),
        ("--out", "nowhere/run.pdf", {}),
        ("--start", "2", {}),
    ],
)
def test_a_run_that_cannot_be_printed_registers_nothing(
    tagger: Shell, tmp_path: Path, option: str, value: str, more: dict[str, str]
) -> None:
    week = Path(__file__).parents[1] / "examples/week/service_run.csv"
    given = {"--template": "hang_tag", "--out": "run.pdf", option: value}
    tagger("run", week, *(word for pair in given.items() for word in pair), code=1, **more)
    assert registered_in(tmp_path) == 0
    assert not (tmp_path / "run.pdf").exists()


def test_a_row_whose_machine_cannot_be_printed_stops_the_whole_run(tagger: Shell, tmp_path: Path) -> None:
    week = Path(__file__).parents[1] / "examples/week/service_run.csv"
    lines = week.read_text(encoding="utf-8").splitlines()
    machine = lines[0].split(",").index("machine")
    cells = lines[1].split(",")
    cells[machine] = "漢"  # the same content as the row before it, but for what only paper says
    (tmp_path / "list.csv").write_text("\n".join([*lines[:2], ",".join(cells)]), encoding="utf-8")
    done = tagger("run", "list.csv", "--template", "traveller_a5", "--out", "run.pdf", code=1)
    assert done.stderr.startswith("row 3, traveller_a5.toml: box ") and "漢" in done.stderr
    assert registered_in(tmp_path) == 0


def test_a_name_whose_accents_are_characters_of_their_own_is_printed(tagger: Shell) -> None:
    """As file names and some keyboards have them: e and an acute, where the face has an é."""
    spec = Path(__file__).parents[1] / "examples/week/boom_rod_side.json"
    said = {}
    for name in ("Me\u0301tal Nun\u0303ez", "M\u00e9tal Nu\u00f1ez"):
        [number] = tagger.json("register", spec, "--customer", name)["numbers"]
        tagger("print", number, "--template", "traveller_a5", "--out", "job.pdf", TAGGER_SHOP_NAME=name)
        page = pypdfium2.PdfDocument(tagger.folder / "job.pdf")[0].get_textpage().get_text_range()
        said[name] = [line for line in page.splitlines() if "tal " in line]
    parted, composed = said.values()
    assert parted == composed and len(composed) == 2, "customer and shop"


def test_of_many_tags_the_one_that_does_not_fit_is_named(tagger: Shell, tmp_path: Path) -> None:
    week = Path(__file__).parents[1] / "examples/week"
    fine, strange = (
        tagger.json("register", week / "boom_rod_side.json", "--customer", name)["numbers"][0]
        for name in ("Quarry", "漢")
    )
    given = ("--template", "traveller_a5", "--out", "job.png")
    refused = tagger.json("print", fine, strange, *given, code=1)["refused"]
    assert [one["field"] for one in refused] == [f"{strange}.traveller_a5.toml: box 2 (text)"]
    assert not [*tmp_path.glob("job*")]


def test_pages_as_png_are_all_there_or_none(store: Store, tmp_path: Path) -> None:
    tags = tags_of(store, _registered(store, 3), ShopSettings())
    (tmp_path / "x.png").write_bytes(b"printed yesterday")
    with pytest.raises(TemplateError):
        raster.write([*tags[:2], replace(tags[2], shop="漢")], template.load("roll_4x6"), tmp_path / "x.png")
    assert (tmp_path / "x.png").read_bytes() == b"printed yesterday"
    assert not list(tmp_path.glob("x-*")) and not list(tmp_path.glob("*.part"))
    files = raster.write(tags, template.load("roll_4x6"), tmp_path / "x.png")
    assert [file.name for file in files] == ["x.png", "x-2.png", "x-3.png"]
    assert all(file.is_file() for file in files)


def test_templates_that_are_each_others_base_are_refused_by_name(tmp_path: Path) -> None:
    (tmp_path / "one.toml").write_text('base = "two"\n')
    (tmp_path / "two.toml").write_text('base = "one"\n')
    with pytest.raises(TemplateError, match=r"two\.toml: base: .*one\.toml -> two\.toml -> one"):
        template.load("one", [tmp_path])


@pytest.mark.parametrize("port", ["abc", "70000"])
def test_a_wrong_port_is_refused_by_the_settings_name(tagger: Shell, port: str) -> None:
    done = tagger("serve", code=1, TAGGER_PORT=port)
    assert done.stderr.startswith("TAGGER_PORT: ")
    assert "Traceback" not in done.stderr
