"""README.md of the web application names every page and every setting."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest

from api import bench, rest, scan
from api.settings import PREFIX, Settings

README = (Path(__file__).parents[2] / "api" / "README.md").read_text(encoding="utf-8")


def _paths(router: Any, prefix: str) -> Iterator[str]:
    for route in router.routes:
        inner = getattr(route, "original_router", None)
        if inner is not None:
            yield from _paths(inner, prefix)
        else:
            yield prefix + route.path_format


PAGES = sorted(
    {*_paths(scan.router, ""), *_paths(bench.router, "/bench"), *_paths(rest.router, "/api/v1")} - {""}
)


def test_there_are_pages_to_look_for() -> None:
    assert len(PAGES) > 60


@pytest.mark.parametrize("page", PAGES)
def test_every_page_is_named(page: str) -> None:
    assert f"`{page}`" in README


@pytest.mark.parametrize("name", Settings.model_fields)
def test_every_setting_is_named(name: str) -> None:
    assert f"`{PREFIX}{name.upper()}`" in README
