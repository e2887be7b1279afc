"""The wheel alone does the whole job, from an empty folder: nothing is read from a checkout.

The archive of sources and the wheel are built from what the repository holds; the wheel is installed into an
environment of its own, which takes the libraries, and nothing else, from the tests' environment.
"""

from __future__ import annotations

import json
import os
import re
import subprocess
import sys
import sysconfig
import tarfile
import zipfile
from pathlib import Path

import httpx
import pytest

from tests.processes import ROOT

_BUILD = """
import sys
from setuptools import build_meta
out = sys.argv[1]
print(build_meta.build_sdist(out), build_meta.build_wheel(out))
"""
_PACKED = ("tagger", "api", "label_templates", "examples")


@pytest.fixture(scope="module")
def archives(tmp_path_factory: pytest.TempPathFactory) -> tuple[Path, Path, list[str]]:
    """The archive of sources, the wheel, and the files of the packages that the repository holds."""
    tree, out = tmp_path_factory.mktemp("tree"), tmp_path_factory.mktemp("dist")
    held = _run("git", "ls-files", "-z", *_PACKED, cwd=ROOT).split("\0")[:-1]
    for name in (*held, "pyproject.toml", "README.md", "LICENSE"):
        (tree / name).parent.mkdir(parents=True, exist_ok=True)
        (tree / name).write_bytes((ROOT / name).read_bytes())
    names = _run(sys.executable, "-c", _BUILD, str(out), cwd=tree).split()[-2:]
    return out / names[0], out / names[1], held


@pytest.fixture(scope="module")
def shop(archives: tuple[Path, Path, list[str]], tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The command of an installation, beside an empty folder."""
    place = tmp_path_factory.mktemp("shop")
    _run(sys.executable, "-m", "venv", "--without-pip", str(place / "env"))
    python = place / "env/bin/python"
    own = _run(str(python), "-c", "import sysconfig; print(sysconfig.get_path('purelib'))").strip()
    libraries = dict.fromkeys(path for path in sys.path if path.endswith(("site-packages", "dist-packages")))
    libraries |= dict.fromkeys((sysconfig.get_path("purelib"), sysconfig.get_path("platlib")))
    Path(own, "libraries.pth").write_text(
        "\n".join(libraries), encoding="utf-8"
    )  # the lines of theirs are not read
    with zipfile.ZipFile(archives[1]) as wheel:
        wheel.extractall(own)
        [points] = [name for name in wheel.namelist() if name.endswith(".dist-info/entry_points.txt")]
        assert "tagger = tagger.cli:main" in wheel.read(points).decode()
    (place / "work").mkdir()
    return place


def _run(*command: str, cwd: Path | None = None, **more: str) -> str:
    environment = {
        name: value for name, value in os.environ.items() if not name.startswith(("TAGGER_", "PYTHON"))
    }
    done = subprocess.run(
        command, cwd=cwd, env={**environment, **more}, capture_output=True, text=True, timeout=120
    )
    assert done.returncode == 0, done.stdout + done.stderr
    return done.stdout


def test_both_archives_hold_every_file_of_the_packages(archives: tuple[Path, Path, list[str]]) -> None:
    sources, wheel, held = archives
    with tarfile.open(sources) as packed:
        assert set(held) <= {name.partition("/")[2] for name in packed.getnames()}
    with zipfile.ZipFile(wheel) as installed:
        assert set(held) <= set(installed.namelist())
        licences = [
            name for name in installed.namelist() if re.search(r"licen[cs]e|OFL", name, re.IGNORECASE)
        ]
    fonts = {Path(name).parent for name in held if name.endswith(".ttf")}
    assert fonts and all(any(Path(name).parent == place for name in licences) for place in fonts)
    assert any(name.endswith(".dist-info/licenses/LICENSE") for name in licences), "the program's own"


def test_an_installation_does_the_whole_job_from_an_empty_folder(shop: Path) -> None:
    work, python = shop / "work", str(shop / "env/bin/python")
    database = f"sqlite:///{work / 'tags.sqlite3'}"

    def tagger(*arguments: str) -> str:
        return _run(python, "-m", "tagger.cli", *arguments, cwd=work, TAGGER_DATABASE_URL=database)

    place = _run(
        python,
        "-c",
        "import tagger, api, examples; print(tagger.__file__, api.__file__, examples.__file__)",
        cwd=work,
    )
    assert all(Path(file).is_relative_to(shop) for file in place.split()), "not the checkout's"
    week = Path(place.split()[-1]).parent / "week"
    number = tagger("register", str(week / "boom_rod_side.json")).split()[0]
    tagger("print", number, "--template", "hang_tag", "--out", "tag.png")
    said = json.loads(tagger("--lang", "de", "read", "tag.png", "--json"))
    assert said["number"] == number
    tagger("run", str(week / "service_run.csv"), "--out", "run.pdf")
    assert (work / "run.pdf").read_bytes().startswith(b"%PDF")


def test_an_installation_shows_the_invented_week(shop: Path) -> None:
    command = (str(shop / "env/bin/python"), "-m", "tagger.cli", "demo", "--folder", "week")
    environment = {
        name: value for name, value in os.environ.items() if not name.startswith(("TAGGER_", "PYTHON"))
    }
    with subprocess.Popen(
        command, cwd=shop / "work", env=environment, stdout=subprocess.PIPE, text=True
    ) as served:
        try:
            assert served.stdout is not None
            said = ""
            while "delete that folder" not in said:
                line = served.stdout.readline()
                assert line, said
                said += line
            address = re.search(r"as a phone opens it +(\S+)", said)
            assert address
            with httpx.Client(transport=httpx.HTTPTransport(retries=8), follow_redirects=True) as phone:
                page = phone.get(address[1])
            assert page.status_code == 200 and "37°" in page.text
            assert (shop / "work/week/boom_rod_side.png").stat().st_size > 5_000
        finally:
            served.terminate()
