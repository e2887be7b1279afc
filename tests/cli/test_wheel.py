"""The wheel, made from the source archive, holds all that the program needs: in a venv of its own, from an empty folder."""

from __future__ import annotations

import json
import os
import re
import subprocess
import sys
import sysconfig
import zipfile
from dataclasses import dataclass
from importlib.metadata import version
from pathlib import Path

import httpx
import pytest

from tagger.i18n import LANGUAGES
from tests.test_spec import EXAMPLE

ROOT = Path(__file__).parents[2]


@dataclass(frozen=True)
class Installed:
    """The command of an installation, and the empty folder in which it runs."""

    command: Path
    folder: Path
    env: dict[str, str]

    def __call__(self, *arguments: object) -> str:
        return _run(self.command, *arguments, cwd=self.folder, env=self.env)


@pytest.fixture(scope="module")
def archive(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The source archive (sdist), of the files that the repository holds, so that nothing lying about gets into it."""
    if int(version("setuptools").split(".")[0]) < 75:
        pytest.fail("setuptools is older than 75: run `make test`, which installs what the tests need")
    source, out = tmp_path_factory.mktemp("source"), tmp_path_factory.mktemp("made")
    kept = subprocess.run(["git", "ls-files", "-z"], cwd=ROOT, capture_output=True, check=True).stdout
    for name in kept.decode().split("\0"):
        if name and (ROOT / name).is_file():
            (source / name).parent.mkdir(parents=True, exist_ok=True)
            (source / name).write_bytes((ROOT / name).read_bytes())
    make = "import sys; from setuptools import build_meta; build_meta.build_sdist(sys.argv[1])"
    _run(sys.executable, "-c", make, out, cwd=source)
    [made] = out.glob("*.tar.gz")
    return made


@pytest.fixture(scope="module")
def wheel(archive: Path) -> Path:
    """Built from the source archive alone: what either lacks shows."""
    out = archive.parent
    _run(sys.executable, "-m", "pip", "wheel", "-q", "--no-deps", "--no-build-isolation", "-w", out, archive)
    [made] = out.glob("*.whl")
    return made


@pytest.fixture(scope="module")
def tagger(wheel: Path, tmp_path_factory: pytest.TempPathFactory) -> Installed:
    """``tagger`` of a venv that holds the wheel, and borrows only what the wheel depends on."""
    venv, empty = tmp_path_factory.mktemp("venv"), tmp_path_factory.mktemp("empty")
    _run(sys.executable, "-m", "venv", "--without-pip", venv)
    python = venv / "bin" / "python"
    _run(sys.executable, "-m", "pip", "--python", python, "install", "-q", "--no-deps", "--no-index", wheel)
    [site] = venv.glob("lib/python*/site-packages")
    borrowed = [path for path in sys.path if path.endswith("site-packages")] or [
        sysconfig.get_path("purelib")
    ]
    (site / "borrowed.pth").write_text("\n".join(borrowed))
    env = {name: value for name, value in os.environ.items() if not name.startswith(("TAGGER_", "PYTHON"))}
    env |= {"HOME": str(empty), "XDG_DATA_HOME": str(empty / "data")}
    (empty / "spec.json").write_text(json.dumps(EXAMPLE), encoding="utf-8")

    where = _run(python, "-c", "import tagger; print(tagger.__file__)", cwd=empty, env=env)
    assert Path(where.strip()).is_relative_to(venv)
    return Installed(venv / "bin" / "tagger", empty, env)


def test_catalogues_glossaries_and_licences_are_in_the_wheel(wheel: Path) -> None:
    names = set(zipfile.ZipFile(wheel).namelist())
    kept = {path.relative_to(ROOT).as_posix() for room in ("tagger", "api", "label_templates", "examples")
            for path in (ROOT / room).rglob("*")
            if (path.is_file() and path.suffix in {".ftl", ".csv", ".json", ".toml", ".mustache", ".html", ".js",
                                                   ".service", ".timer", ".conf", ".env", ".jpg"})
            or path.name == "LICENSE.txt"}  # fmt: skip
    assert len([name for name in kept if name.endswith(".ftl")]) >= 2 * len(LANGUAGES)
    assert sorted(kept - names) == []
    licences = {name for name in names if name.endswith(("LICENSE", "LICENSE.txt"))}
    fonts = {name.rpartition("/")[0] for name in names if name.endswith(".ttf")}
    assert fonts and fonts <= {name.rpartition("/")[0] for name in licences}, "a font without its licence"
    assert any(".dist-info/" in name for name in licences)


def test_both_are_named_after_the_version_that_the_changes_begin_with(
    tagger: Installed, archive: Path, wheel: Path
) -> None:
    released = re.findall(r"^## (\d+\.\d+\.\d+)$", (ROOT / "CHANGELOG.md").read_text(encoding="utf-8"), re.M)[
        0
    ]
    assert archive.name == f"tagger-{released}.tar.gz" and wheel.name.startswith(f"tagger-{released}-")
    assert tagger("--version").split() == ["tagger", released]


def test_a_tag_is_checked_registered_printed_and_read_in_german_from_an_empty_folder(
    tagger: Installed,
) -> None:
    assert "Betriebsdruck" in tagger("check", "spec.json", "--lang", "de")
    [number] = json.loads(tagger("register", "spec.json", "--json"))["numbers"]
    tagger("print", number, "--template", "hang_tag", "--out", "tag.png", "--lang", "de")
    read = json.loads(tagger("read", "tag.png", "--json"))
    assert read["number"] == number and read["spec"]["length_mm"] == EXAMPLE["length_mm"]
    assert number in tagger("read", "tag.png", "--lang", "de")


def test_an_installation_shows_the_invented_week(tagger: Installed) -> None:
    command = (str(tagger.command), "demo", "--folder", "week")
    with subprocess.Popen(
        command, cwd=tagger.folder, env=tagger.env, stdout=subprocess.PIPE, text=True
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
            assert (tagger.folder / "week/boom_rod_side.png").stat().st_size > 5_000
        finally:
            served.terminate()


def _run(*command: object, **more: object) -> str:
    done = subprocess.run([*map(str, command)], capture_output=True, text=True, timeout=300, **more)  # type: ignore[call-overload]
    assert done.returncode == 0, f"{command}: {done.stdout}{done.stderr}"
    return str(done.stdout)
