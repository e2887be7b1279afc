"""What the pictures of the pages must not get wrong: which end it is, and where the wrenches go."""

from __future__ import annotations

import re
from typing import Any

import pytest

from api.scan import fit, picture
from api.scan.visitor import Reader
from tagger.spec import AssemblySpec
from tagger.trade.tables import tables

MOUTH = 1.1  # where a male ends, in its own thread's diameter
Box = tuple[float, float, float, float]


def _end(connection: str, form: str, **size: Any) -> str:
    end = {"connection": connection, "form": form, **size}
    spec = AssemblySpec.read(
        {"hose": {"standard": "SAE 100R2", "dash": 12}, "end_a": end, "end_b": end, "length_mm": 900}
    )
    return picture.end(spec, "end_a", Reader("en", tables()))


def test_a_bspp_male_has_a_cone_inside_and_a_37_degree_male_a_nose_that_stands_out() -> None:
    """ISO 8434-6 and ISO 8434-2. Drawn alike, one would be taken for the other."""
    bspp, flare = _end("bspp", "male", size="3/4"), _end("sae_37_flare", "male", dash=12)
    (funnel,) = re.findall(r'class="lines" d="M([\d.]+) -([\d.]+)L([\d.]+) -([\d.]+)V', bspp)
    mouth, wide, ground, narrow = map(float, funnel)
    assert mouth == MOUTH and ground < MOUTH and narrow < wide
    (nose,) = re.findall(r'class="metal" d="M([\d.]+) -([\d.]+)L([\d.]+) -([\d.]+)V[\d.]+L', flare)
    foot, thick, tip, thin = map(float, nose)
    assert foot == MOUTH and tip > MOUTH and thin < thick
    assert not re.findall(r'class="metal" d="M1.1 ', bspp) and not re.findall(
        r'class="lines" d="M1.1 ', flare
    )


def test_a_female_swivel_shows_the_bore_of_its_own_nut() -> None:
    for connection, size in (
        ("sae_37_flare", {"dash": 12}),
        ("bspp", {"size": "3/4"}),
        ("orfs", {"dash": 12}),
    ):
        nut, male = _end(connection, "female_swivel", **size), _end(connection, "male", **size)
        assert 'class="hole" d="M1-.5H.2V.5H1"' in nut
        assert 'class="hole" d="M1-.5' not in male


@pytest.mark.parametrize("drawn", ["two_wrenches", "hold_adapter"])
def test_the_wrenches_grip_a_nut_and_a_hexagon_and_never_the_crimped_shell(drawn: str) -> None:
    svg = fit.drawn(drawn)
    rubber, tools = _boxes(svg, "rubber"), _boxes(svg, "tool")
    (hose,) = rubber
    metal = _boxes(svg, "metal")
    (shell,) = [box for box in metal if box[0] == hose[2]]
    under = [[box for box in metal if box[0] <= left and right <= box[2]] for left, _, right, _ in tools]
    assert len(tools) == 2 and all(under)
    gripped = [boxes[-1] for boxes in under]  # what is drawn last lies on top
    assert gripped[0] != gripped[1], "one holds while the other turns"
    assert shell not in gripped
    flats = re.findall(r"M([\d.]+) [\d.]+h([\d.]+)", " ".join(re.findall(r'class="lines" d="([^"]+)"', svg)))
    hexagons = {(float(left), float(left) + float(wide)) for left, wide in flats}
    assert all((box[0], box[2]) in hexagons for box in gripped), "what is gripped has flats"


def _boxes(svg: str, kind: str) -> list[Box]:
    """Left, top, right, bottom of each rectangle of a kind."""
    paths = " ".join(re.findall(rf'class="{kind}" d="([^"]+)"', svg))
    found = re.findall(r"M([\d.]+) ([\d.]+)h([\d.]+)v([\d.]+)[hH]", paths)
    sides = [tuple(map(float, each)) for each in found]
    return [(left, top, left + wide, top + high) for left, top, wide, high in sides]
