"""How good a photo is: ends of the tables, rendered with perspective, blur, noise and their height above the card."""

from __future__ import annotations

import io
import math
from dataclasses import replace

import numpy as np
import pytest
from PIL import Image

from tagger.errors import LinkError, SpecError
from tagger.measuring import profile, reading, rectify, view
from tagger.measuring.reading import Lines
from tagger.measuring.rectify import Camera
from tagger.trade.tables import tables
from tests.measuring import photos, rendered
from tests.measuring.rendered import Scene
from tests.volume import FULL, volume


def test_ends_of_the_tables_are_measured_within_their_band_and_identified() -> None:
    """The figures of ``tagger/measuring/README.md`` are those of the sixty."""
    known = tables()
    taken = [photos.take(*scene) for scene in photos.scenes(known, volume(2, 60))]
    wrong = np.array([abs(t.read.diameter_mm - t.scene.diameter) for t in taken])
    hand = np.array([abs(t.by_hand.diameter_mm - t.scene.diameter) for t in taken])
    pitch = np.array([abs(t.read.pitch_mm - t.scene.pitch) for t in taken])
    inside = [w <= t.read.diameter_band_mm for w, t in zip(wrong, taken, strict=True)]
    places = np.array([photos.ranked(t, t.read, known) for t in taken])
    assert np.median(wrong) <= 0.15 and np.median(hand) <= 0.2 and np.median(pitch) <= 0.02
    assert np.quantile(pitch, 0.95) <= 0.07
    assert (places <= 3).all() or FULL
    if FULL:
        assert np.mean(inside) >= 0.9
        assert np.mean(places == 1) >= 0.8 and np.mean(places <= 3) >= 0.98


def _under(radius: float, height: float, camera: Camera, y: float) -> tuple[float, float]:
    """Where the edges of a round part seem to lie on the table: the outermost rays that touch it, by trial."""
    angles = np.linspace(-math.pi, math.pi, 200_001)
    across, up = y + radius * np.cos(angles), height + radius * np.sin(angles)
    seen = camera.y + (across - camera.y) * camera.z / (camera.z - up)
    return float(seen.min()), float(seen.max())


@pytest.mark.parametrize("aside", [0.0, -60.0, 110.0])
@pytest.mark.parametrize("rest", [None, 34.0])
def test_the_height_of_the_axis_is_corrected(aside: float, rest: float | None) -> None:
    """A 27 mm thread on the table, 250 mm below the camera, looks 5.7 % too large (250 / (250 - 13.5)) and more."""
    camera = Camera(60.0, 110.0 + aside, 250.0, 0.0)
    edges = _under(13.5, (rest or 27.0) / 2, camera, 110.0)
    lines = Lines(*edges, 40.0, 60.0, 10, rest_mm=rest)
    if rest is None and not aside:
        assert 1.057 < (edges[1] - edges[0]) / 27 < 1.06
    read = reading.read(lines, camera, 0.0)
    assert read.diameter_mm == pytest.approx(27.0, abs=0.002)
    assert read.axis_mm == pytest.approx((rest or 27.0) / 2, abs=0.002)


def test_lines_that_no_end_has_are_refused_with_the_field() -> None:
    good = {"edge_1": 90.0, "edge_2": 117.0, "crest_1": 40.0, "crest_2": 60.0, "threads": 10}
    for field, changed in (
        ("edges", {"edge_2": 92.0}),
        ("edges", {"edge_2": 190.0}),
        ("crests", {"threads": 0}),
        ("crests", {"crest_2": 40.5}),
        ("crests", {"threads": 1}),
        ("rest", {"rest_mm": 2.0}),
    ):
        with pytest.raises(SpecError) as caught:
            Lines(**{**good, **changed})  # type: ignore[arg-type]
        assert caught.value.problems[0].field == field
    with pytest.raises(SpecError):
        reading.read(Lines(90, 117, 40, 60, 10, rest_mm=119.0), Camera(60, 100, 110.0, 1.0), 0.0)
    with pytest.raises(SpecError, match="at least the thread itself"):
        reading.read(Lines(90, 117, 40, 60, 10, rest_mm=20.0), Camera(60, 100, 250.0, 1.0), 0.0)
    strip = Image.new("L", (round(view.WIDTH * view.PX), round(view.HEIGHT * view.PX)), 200)
    for far in (
        {"edge_1": -900.0, "edge_2": -873.0},
        {"crest_1": 900.0, "crest_2": 920.0},
        {"tilt": 4000.0},
        {},
    ):
        with pytest.raises(LinkError):
            profile.find(strip, Lines(**{**good, **far}))  # type: ignore[arg-type]


def test_a_print_at_97_percent_is_corrected_and_an_uncertain_distance_widens_the_band() -> None:
    scene = Scene(print_scale=0.97, told=False, camera=(75, 95, 280), turn=-2)
    photo = Image.open(io.BytesIO(rendered.take(scene))).convert("L")
    sight = rectify.find(photo)
    strip, right = view.of(photo, sight), photos.seen(scene, sight)
    lines = profile.find(strip, photos.moved(right, np.random.default_rng(3), 0.7, 1.0))
    checked = reading.read(lines, sight.camera, sight.residual, 0.97, checked=True)
    taken_as_drawn = reading.read(lines, sight.camera, sight.residual)
    assert checked.diameter_mm == pytest.approx(scene.diameter, abs=checked.diameter_band_mm)
    assert taken_as_drawn.diameter_mm > scene.diameter * 1.02
    assert checked.pitch_mm == pytest.approx(scene.pitch, abs=0.04)
    sure = reading.read(lines, replace(sight.camera, z_sd=5.0), sight.residual, 0.97, checked=True)
    assert sure.diameter_band_mm < checked.diameter_band_mm
    nowhere = replace(right, edge_1=right.edge_1 + 30, edge_2=right.edge_2 + 22)
    with pytest.raises(LinkError, match="place all lines by hand"):
        profile.find(strip, nowhere)
