"""Sixty photos of ends of the tables, each taken another way, and what is read in them.

``python -m tests.measuring.photos 60`` prints the table of ``tagger/measuring/README.md``.
"""

from __future__ import annotations

import io
import math
import sys
from collections.abc import Iterator
from dataclasses import dataclass, replace

import numpy as np
from PIL import Image

from tagger.errors import LinkError
from tagger.measuring import card, profile, reading, rectify, view
from tagger.measuring.reading import Lines, Reading
from tagger.spec import Form
from tagger.trade.identifying import likelihood, simulate
from tagger.trade.identifying.identify import identify
from tagger.trade.identifying.likelihood import Errors, Pool
from tagger.trade.identifying.readings import SEATS, Measurements
from tagger.trade.tables import Tables
from tests.measuring import rendered
from tests.measuring.rendered import Array, Scene

SEED = 16
_ROUND = np.linspace(-0.6, math.pi + 0.6, 1801)
HAND = 0.1  # mm, how far a hand is off that drags a line under the magnifier


@dataclass(frozen=True)
class Taken:
    """One photo and what was read in it; ``place``: of the end in the pool of identify. ``scale``: as typed."""

    scene: Scene
    place: int
    scale: float
    checked: bool
    found: bool
    read: Reading
    by_hand: Reading


def scenes(tables: Tables, count: int) -> Iterator[tuple[Scene, int, float, bool]]:
    """Ends of the tables with an outside thread, evenly over the tables, and how each is photographed."""
    pool, rng = likelihood.pool(tables), np.random.default_rng(SEED)
    males = [
        n for n in range(len(pool)) if pool.forms[n] is Form.MALE and not np.isnan(pool.low["thread"][n, 0])
    ]
    chosen = [males[int((n + rng.uniform()) * len(males) / count)] for n in range(count)]
    for n, place in enumerate(chosen):
        yield _scene(pool, place, rng, n)


def _scene(pool: Pool, place: int, rng: np.random.Generator, n: int) -> tuple[Scene, int, float, bool]:
    diameter = rng.uniform(pool.low["thread"][place, 0], pool.high["thread"][place, 0])
    pitch = 25.4 / pool.low["tpi"][place, 0]
    rest = diameter * rng.uniform(1.08, 1.25) + 1 if rng.random() < 0.5 else None
    gap = rng.uniform(6, 9 if diameter > 40 else 14)
    length = pitch * rng.uniform(7, 11)
    x = rng.uniform(20, 70)
    near = rng.uniform(220, 330)
    aim = (60 + rng.uniform(-8, 8), 82 + diameter / 3 + rng.uniform(-8, 8))
    tilt, way = math.radians(rng.uniform(0, 22)), rng.uniform(0, 2 * math.pi)
    camera = (
        aim[0] + near * math.sin(tilt) * math.cos(way),
        aim[1] + near * math.sin(tilt) * math.sin(way),
        near * math.cos(tilt),
    )
    film = rng.choice([24.0, 26.0, 28.0])
    checked = bool(rng.random() < 0.6)
    print_scale = rng.uniform(0.97, 1.03) if checked else rng.normal(1, 0.002)
    scene = Scene(
        diameter=diameter, pitch=pitch, flank=55.0 if pool.words["flank"][place, 1] > 0.5 else 60.0, length=length,
        rest=rest, x=x, gap=gap, turn=rng.uniform(-6, 6), camera=camera, aim=aim, roll=rng.uniform(0, 360), film=film,
        told=bool(rng.random() < 0.5), size=(2600, 1950) if diameter < 45 else (2200, 1650),
        table=rng.uniform(185, 235) if rng.random() < 0.8 else rng.uniform(25, 50), metal=rng.uniform(95, 160),
        light=rng.uniform(0, 0.5), blur=rng.uniform(0.7, 1.7), noise=rng.uniform(1.5, 5),
        barrel=rng.uniform(-0.01, 0.015), quality=int(rng.integers(72, 93)), print_scale=print_scale, seed=n,
    )  # fmt: skip
    typed = round(print_scale * card.CHECK_LINE + rng.normal(0, 0.1), 1) / card.CHECK_LINE if checked else 1.0
    return scene, place, typed, checked


def seen(scene: Scene, sight: rectify.Sight) -> Lines:
    """Where the end's edges and crests are in the strip, to a person who sees them exactly."""
    y0, height = rendered.axis(scene)
    radius, turn = scene.diameter / 2, math.radians(scene.turn)

    def shown(along: float, angles: Array) -> Array:
        """Points of the crest's circle so far along, as the strip shows them, turned upright."""
        across = radius * np.cos(angles)
        at = np.stack(
            (
                scene.x + along * math.cos(turn) - across * math.sin(turn),
                y0 + along * math.sin(turn) + across * math.cos(turn),
                height + radius * np.sin(angles),
            ),
            axis=1,
        )
        x, y = (sight.at(rendered.project(scene, at)[0]) - (60.0, 110.0)).T
        return np.stack(
            (60 + x * math.cos(turn) + y * math.sin(turn), 110 - x * math.sin(turn) + y * math.cos(turn)),
            axis=1,
        )

    circle = shown(scene.length / 2, _ROUND)
    edges = [int(circle[:, 1].argmin()), int(circle[:, 1].argmax())]
    threads = math.floor(scene.length / scene.pitch) - 2
    ends = [shown(scene.pitch * n, _ROUND[edges])[:, 0].mean() for n in (1, 1 + threads)]
    return Lines(
        float(circle[:, 1].min()), float(circle[:, 1].max()), float(ends[0]), float(ends[1]), threads,
        tilt=scene.turn, rest_mm=scene.rest,
    )  # fmt: skip


def moved(lines: Lines, rng: np.random.Generator, far: float, turned: float) -> Lines:
    """The lines as a hand puts them, so far off at most."""
    off = rng.uniform(-far, far, 4)
    return replace(
        lines,
        edge_1=lines.edge_1 + off[0],
        edge_2=lines.edge_2 + off[1],
        crest_1=lines.crest_1 + off[2],
        crest_2=lines.crest_2 + off[3],
        tilt=lines.tilt + rng.uniform(-turned, turned),
    )


def take(scene: Scene, place: int, scale: float, checked: bool) -> Taken:
    """The photo is taken, the lines are put down roughly, and what the program makes of them is read off."""
    rng = np.random.default_rng(1000 + scene.seed)
    photo = Image.open(io.BytesIO(rendered.take(scene))).convert("L")
    sight = rectify.find(photo)
    right = seen(scene, sight)
    hand = moved(right, rng, HAND * math.sqrt(3), 0.3)
    try:
        lines, found = profile.find(view.of(photo, sight), moved(right, rng, 0.7, 1.0)), True
    except LinkError:
        lines, found = hand, False

    def read(of: Lines) -> Reading:
        return reading.read(of, sight.camera, sight.residual, scale, checked=checked)

    return Taken(scene, place, scale, checked, found, read(lines), read(hand))


def ranked(taken: Taken, read: Reading, tables: Tables) -> int:
    """At which place identify names the end, from the reading and the seat as people see it."""
    pool, rng = likelihood.pool(tables), np.random.default_rng(2000 + taken.scene.seed)
    seat = int(simulate.readings(pool, taken.place, 1, rng, Errors())["seat"][0])
    known = Measurements.read(
        form="male",
        thread_od=f"{read.diameter_mm:.2f} mm ± {read.diameter_band_mm:.2f} mm",
        pitch=f"{read.pitch_mm:.3f} ± {read.pitch_band_mm:.3f}",
        seat=SEATS[seat],
    )
    one = {
        (pool.families[n], pool.sizes[n]): pool.one[n] for n in range(len(pool)) if pool.forms[n] is Form.MALE
    }
    places = list(dict.fromkeys(one[c.connection, c.size] for c in identify(known, tables).candidates))
    wanted = pool.one[taken.place]
    return places.index(wanted) + 1 if wanted in places else len(places) + 1


def table(taken: list[Taken], tables: Tables) -> str:
    """Errors at the middle and the 95th of a hundred, how many lie within the band, and identify's places."""
    lines = [
        "| lines | photos | diameter p50 | p95 | pitch p50 | p95 | within the band | first | first three |"
    ]
    lines.append("|---|---|---|---|---|---|---|---|---|")
    rows: list[tuple[str, list[tuple[Taken, Reading]]]] = [
        ("found by the program", [(t, t.read) for t in taken if t.found]),
        ("dragged by hand", [(t, t.by_hand) for t in taken]),
        ("found, else by hand", [(t, t.read) for t in taken]),
        ("the same, where the band is narrow enough", [(t, t.read) for t in taken if t.read.usable]),
    ]
    for name, chosen in rows:
        wrong = np.array([abs(read.diameter_mm - t.scene.diameter) for t, read in chosen])
        pitch = np.array([abs(read.pitch_mm - t.scene.pitch) for t, read in chosen])
        inside = np.mean([w <= read.diameter_band_mm for w, (_, read) in zip(wrong, chosen, strict=True)])
        places = np.array([ranked(t, read, tables) for t, read in chosen])
        figures = [*np.quantile(wrong, (0.5, 0.95)), *np.quantile(pitch, (0.5, 0.95))]
        shares = [inside, np.mean(places == 1), np.mean(places <= 3)]
        cells = [f"{f:.3f} mm" for f in figures] + [f"{s:.1%}" for s in shares]
        lines.append(f"| {name} | {len(chosen)} | {' | '.join(cells)} |")
    return "\n".join(lines)


if __name__ == "__main__":
    known = Tables.load()
    shots = []
    for scene, place, scale, checked in scenes(known, int(sys.argv[1])):
        try:
            shots.append(take(scene, place, scale, checked))
        except LinkError as error:
            print(scene, error)
            continue
        t = shots[-1]
        print(
            f"{scene.seed:3} {scene.diameter:6.2f} {t.read.diameter_mm - scene.diameter:6.3f} band {t.read.diameter_band_mm:.2f}"
            f" hand {t.by_hand.diameter_mm - scene.diameter:6.3f} pitch {scene.pitch:.3f} {t.read.pitch_mm - scene.pitch:6.3f}"
            f" {t.found} rest {scene.rest and round(scene.rest, 1)} told {scene.told} table {scene.table:.0f} place {ranked(t, t.read, known)}",
            flush=True,
        )
    print(table(shots, known))
