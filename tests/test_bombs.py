"""Small files that unpack to more than the memory holds are refused before they do, in a process that cannot have more."""

from __future__ import annotations

import io
import json
import subprocess
import sys
import zipfile
from pathlib import Path

import openpyxl
from PIL import Image, ImageDraw

from tagger.code import link, symbol
from tagger.code import photo as tag_photo

MOST_MEMORY = 200_000_000  # bytes beside what the program itself takes
ROW = '<row r="{0}"><c r="{1}{0}"><v>1</v></c></row>'
HEAD = '<worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main">'

CHILD = """
import json, os, resource, sys, time
from pathlib import Path
from PIL import Image
from api.shared import list_import, photos, pictures, scale_photo
from tagger.errors import TaggerError
Image.init()
reads = {
    "list": lambda path: list_import.read(path.name, path.read_bytes()),
    "photo": lambda path: photos.read_photo(path.read_bytes()),
    "scale": lambda path: scale_photo.take(path.read_bytes()),
    "picture": lambda path: pictures.written_anew(path.read_bytes(), "photo_hose"),
}
for name in sys.argv[2:]:
    if os.fork():  # each file has the memory for itself
        _, status = os.wait()
        assert status == 0, name
        continue
    taken = int(Path("/proc/self/statm").read_text().split()[0]) * resource.getpagesize()
    resource.setrlimit(resource.RLIMIT_AS, (taken + int(sys.argv[1]),) * 2)
    kind, _, file = name.partition(":")
    begun = time.process_time()
    try:
        reads[kind](Path(file))
        said = "read"
    except TaggerError as error:
        said = error.problems[0].message.id
    print(json.dumps([kind, Path(file).name, said, round(time.process_time() - begun, 2)]), flush=True)
    os._exit(0)
"""
STRINGS = "application/vnd.openxmlformats-officedocument.spreadsheetml.sharedStrings+xml"


def _workbook(path: Path, sheet: str = "", strings: bytes = b"") -> str:
    """A spreadsheet whose sheet, or whose table of texts, is this."""
    book = openpyxl.Workbook()
    assert book.active is not None
    book.active.append(["length_mm", "machine"])
    whole = io.BytesIO()
    book.save(whole)
    with zipfile.ZipFile(whole) as parts, zipfile.ZipFile(path, "w", zipfile.ZIP_DEFLATED) as out:
        for name in parts.namelist():
            data = parts.read(name)
            if sheet and name == "xl/worksheets/sheet1.xml":
                data = f"{HEAD}{sheet}</worksheet>".encode()
            if strings and name == "[Content_Types].xml":
                part = f'<Override PartName="/xl/sharedStrings.xml" ContentType="{STRINGS}"/></Types>'
                data = data.replace(b"</Types>", part.encode())
            out.writestr(name, data)
        if strings:
            out.writestr(
                "xl/sharedStrings.xml",
                f"{HEAD.replace('worksheet', 'sst', 1)}".encode() + strings + b"</sst>",
            )
    return f"list:{path}"


def _files(folder: Path) -> dict[str, str]:
    """Each small file, and what is said of it."""
    wide = "".join(ROW.format(row, "XFD") for row in range(1, 300))
    far = '<dimension ref="A1:XFD1048576"/><sheetData>{}</sheetData>'.format(ROW.format(1_048_576, "XFD"))
    lines = folder / "lines.csv"
    lines.write_bytes(b"a\n" * 2_400_000)
    found = {
        _workbook(folder / "far.xlsx", far): "lists-too-large",
        _workbook(folder / "wide.xlsx", f"<sheetData>{wide}</sheetData>"): "lists-too-large",
        _workbook(
            folder / "long.xlsx", strings=b"<si><t>" + b"a" * 200_000_000 + b"</t></si>"
        ): "lists-too-large",
        _workbook(folder / "many.xlsx", strings=b"<si/>" * 5_000_000): "lists-too-large",
        f"list:{lines}": "lists-too-large",
    }
    for name, side, said in (("png", 7000, "too-large"), ("png", 4400, "none"), ("tiff", 7000, "too-large")):
        path = folder / f"{side}.{name}"
        Image.new("RGBA", (side, side)).save(path, compression="tiff_deflate" if name == "tiff" else None)
        found[f"photo:{path}"] = f"code-photo-{said}"
        found[f"picture:{path}"] = (
            "guard-picture-unreadable" if said == "too-large" or name == "tiff" else "read"
        )
    for name, side, progressive in (("small", 4400, True), ("large", 7000, True), ("camera", 7000, False)):
        path = folder / f"{name}.jpg"
        Image.new("RGB", (side, side), "white").save(path, progressive=progressive)
        found[f"photo:{path}"] = "code-photo-too-large" if name == "large" else "code-photo-none"
        if name == "camera":  # what is unpacked of it is the most that there can be
            found[f"scale:{path}"] = "measure-no-card"
        found[f"picture:{path}"] = "guard-picture-unreadable" if name == "large" else "read"
    return found


def test_no_small_file_takes_more_than_200_mb(tmp_path: Path) -> None:
    wanted = _files(tmp_path)
    assert all(Path(name.partition(":")[2]).stat().st_size < 5_000_000 for name in wanted)
    child = subprocess.run(
        [sys.executable, "-c", CHILD, str(MOST_MEMORY), *wanted], capture_output=True, text=True, timeout=120
    )
    assert child.returncode == 0, child.stderr[-2000:]
    told = [json.loads(line) for line in child.stdout.splitlines()]
    said = {(kind, file): what for kind, file, what, _ in told}
    assert said == {
        (kind, Path(file).name): what
        for name, what in wanted.items()
        for kind, _, file in [name.partition(":")]
    }
    slow = [line for line in told if line[-1] > 5]  # seconds of the processor
    assert not slow


def test_a_tag_in_a_large_photo_is_read_however_it_is_turned(tmp_path: Path) -> None:
    whole = link.build("https://tags.example.com", "7K3MQ9XW2R1", "123")
    modules = symbol.qr(whole).modules
    photo = Image.new("RGB", (6000, 4500), "grey")
    draw = ImageDraw.Draw(photo)
    draw.rectangle((1900, 1900, 2100 + 12 * len(modules), 2100 + 12 * len(modules)), fill="white")
    for y, row in enumerate(modules):
        for x, dark in enumerate(row):
            if dark:
                draw.rectangle((2000 + 12 * x, 2000 + 12 * y, 2011 + 12 * x, 2011 + 12 * y), fill="black")
    for turn in (0, 1, 2, 3):
        path = tmp_path / f"{turn}.jpg"
        photo.rotate(90 * turn, expand=True).save(path)
        assert tag_photo.read(path).digits == "123"
