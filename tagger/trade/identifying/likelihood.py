"""How measurements err: every candidate of the tables against what was measured.

A reading is the true figure plus a slip. True thread diameters lie in their tolerance zone:
a male's crest up to a grade 6 tolerance below nominal, a female's bore as much above (ISO 965-1
formulas), a taper male anywhere along its thread (ASME B1.20.1: 1 in 16). Slips are normal,
with the widths of ``Errors``; one reading in fifty may be far off.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from weakref import WeakKeyDictionary

import numpy as np
import numpy.typing as npt

from tagger.spec import Connection, Form
from tagger.trade import rows as row
from tagger.trade.identifying.readings import CONES, FLANKS, SAID, SEATS
from tagger.trade.tables import Tables

Array = npt.NDArray[np.float64]
Figures = dict[str, tuple[tuple[float, float], ...]]
"""By feature, each figure a sound part may have, as least and greatest."""
_NOT_KNOWN = ((math.nan, math.nan),)
Entry = tuple[Connection, str, Form, str, Figures]

SEAT_MISREAD = 0.05  # of readings name another seat; spread evenly
CONE_MISREAD = 0.02  # of readings take a cone for the other way round
FLANK_MISREAD = 0.05  # of readings take 55 degrees for 60, or the other way round
SAID_MISREAD = {"side": 0.02, "swivels": 0.03, "shape": 0.05, "seals": 0.05}  # of what the eye says is wrong
NOSE_GAP = 0.5  # mm by which a nose may be smaller than its socket
FAR_OFF = 0.02  # of readings are slips beyond any model
SLIP = 10.0  # and those lie within about so many times the usual error
WORDS = {"seat": SEATS, "cone": CONES, "flank": FLANKS, **SAID}
RANGE = {
    "thread": 90.0,
    "tpi": 20.0,
    "hex": 90.0,
    "tube_od": 60.0,
    "nose": 60.0,
    "flange_od": 130.0,
    "bolt_spacing": 150.0,
}
"""The width over which a reading that fits nothing is spread."""
CONTINUOUS = tuple(RANGE)
_KINDS = (("24", "30", "37", "45", "60"), ("face", "flat"), ("boss",), ("taper",))
"""Seats that are names of one thing."""
_55_DEGREES = ("g", "r")  # ISO 228-1 and ISO 7-1; the other thread forms of the tables have 60
OTHER_HEX = 0.3  # of nuts have a hex that no table lists: makers differ


@dataclass(frozen=True)
class Errors:
    """Standard deviations of a reading: mm, and threads per inch.

    ``said``: what was said of a feature's own reading; it counts where it is the wider.
    """

    diameter_mm: float = 0.15
    tpi: float = 0.5
    hex_mm: float = 0.3
    flange_mm: float = 0.5
    said: tuple[tuple[str, float], ...] = ()

    def of(self, feature: str) -> float:
        return max(self._usual(feature), dict(self.said).get(feature, 0.0))

    def _usual(self, feature: str) -> float:
        return {
            "thread": self.diameter_mm,
            "tube_od": self.diameter_mm,
            "nose": self.diameter_mm,
            "tpi": self.tpi,
            "hex": self.hex_mm,
        }.get(feature, self.flange_mm)


@dataclass(frozen=True, eq=False)
class Pool:
    """All candidates as columns. ``low`` and ``high`` bound a feature's true figure; a feature
    with several possible figures has several columns, and NaN where a figure is not known.

    ``words``: candidates x words of each of ``WORDS``, how much each word speaks for it;
    ``seats``: how often a part is read so. ``one``: the candidates that no gauge tells apart have one number.
    """

    families: tuple[Connection, ...]
    sizes: tuple[str, ...]
    forms: tuple[Form, ...]
    threads: tuple[str, ...]
    low: Mapping[str, Array]
    high: Mapping[str, Array]
    words: Mapping[str, Array]
    seats: Array
    one: npt.NDArray[np.int_]

    def __len__(self) -> int:
        return len(self.sizes)


_POOLS: WeakKeyDictionary[Tables, Pool] = WeakKeyDictionary()


def pool(tables: Tables) -> Pool:
    """The candidates of these tables, built once."""
    if tables not in _POOLS:
        _POOLS[tables] = _build(tables)
    return _POOLS[tables]


def zone(thread_form: str, od_mm: float, minor_mm: float, pitch_mm: float, form: Form) -> tuple[float, float]:
    """The least and greatest diameter a sound part measures, mm.

    Parallel threads by the grade 6 formulas of ISO 965-1; the unified and pipe classes are
    close to them. A taper male loses 1/16 over its effective length (0.8 D + 6.8 threads).
    """
    if form.is_male_thread:
        if thread_form == "npt":
            return od_mm - (0.8 * od_mm / 25.4 + 6.8) * pitch_mm / 16, od_mm
        if thread_form == "r":
            return od_mm - 0.6, od_mm + 0.2  # the reference table: small end 0.2 to 0.6 mm less
        return od_mm - (0.18 * pitch_mm ** (2 / 3) - 0.00315 / math.sqrt(pitch_mm)), od_mm
    if thread_form in ("npt", "r"):
        return minor_mm - 0.3, minor_mm + 0.3
    return minor_mm, minor_mm + 0.23 * pitch_mm**0.7


def _build(tables: Tables) -> Pool:
    rows: list[Entry] = []
    hexes: dict[tuple[Connection, str], list[float]] = {}
    for h in tables.hexes:
        hexes.setdefault((h.family, h.size), []).append(h.hex_mm)
    cones_24 = {r.family for r in tables.seats if r.seat == "24"}
    for (family, size), t in tables.threads.items():
        for name in tables.families[family].forms:
            form = Form(name)
            if form is Form.EYE:
                continue  # the thread is that of its bolt: not to be read on the end
            figures: Figures = {
                "thread": (zone(t.thread_form, t.thread_od_mm, t.female_minor_mm, t.pitch_mm, form),),
                "tpi": ((25.4 / t.pitch_mm, 25.4 / t.pitch_mm),),
            }
            if form is not Form.FEMALE_FIXED and (family, size) in hexes:
                figures["hex"] = tuple((h - 0.3, h) for h in sorted(set(hexes[family, size]))[:3])
            figures |= _tube(tables.families[family], size, form, family in cones_24)
            rows.append((family, size, form, t.thread, figures))
    rows += _plain_rows(tables) + _flange_rows(tables)
    low, high = _columns(rows)
    forms = [(r[0], r[2]) for r in rows]
    seats = _seat_shares(tables, forms)
    return Pool(
        families=tuple(r[0] for r in rows),
        sizes=tuple(r[1] for r in rows),
        forms=tuple(r[2] for r in rows),
        threads=tuple(r[3] for r in rows),
        low=low,
        high=high,
        words={
            "seat": _misread(_by_kind(seats)),
            "cone": _cone_shares(tables, forms),
            "flank": _flank_shares(tables, rows),
            **{name: _said_shares(tables, forms, name) for name in SAID},
        },
        seats=_misread(seats),
        one=_alike_to_a_gauge(tables, rows),
    )


def _columns(rows: list[Entry]) -> tuple[dict[str, Array], dict[str, Array]]:
    """The least and greatest figures, a matrix a feature."""
    low: dict[str, Array] = {}
    high: dict[str, Array] = {}
    for feature in CONTINUOUS:
        figures = [r[4].get(feature) or _NOT_KNOWN for r in rows]
        shape = len(rows), max(map(len, figures), default=len(_NOT_KNOWN))
        low[feature], high[feature] = np.full(shape, np.nan), np.full(shape, np.nan)
        for n, own in enumerate(figures):
            for column, (lowest, highest) in enumerate(own):
                low[feature][n, column], high[feature][n, column] = lowest, highest
    return low, high


def _flange_rows(tables: Tables) -> list[Entry]:
    figures: dict[tuple[Connection, str], dict[str, float]] = {}
    for f in tables.flanges:
        if f.what.endswith("_mm"):
            figures.setdefault((f.family, f.size), {})[f.what] = float(f.value)
    found = []
    for (family, size), known in figures.items():
        features: Figures = {}
        if "head_mm" in known:
            features["flange_od"] = ((known["head_mm"],) * 2,)
        bolts = [known[k] for k in ("bolt_long_mm", "bolt_short_mm") if k in known]
        features["bolt_spacing"] = tuple((b, b) for b in bolts)
        found.append((family, size, Form.FLANGE_HEAD, f"flange {size}/16 in", features))
    return found


def _tube(family: row.Family, size: str, form: Form, is_24: bool) -> Figures:
    """What the size says of the tube: its outside diameter, and with a 24 degree cone the socket that takes
    it, or the nose that goes into that socket."""
    if family.tube_od is None:
        return {}
    tube = float(size) if family.tube_od == "mm" else int(size) * 25.4 / 16
    if not is_24:
        return {"tube_od": ((tube, tube),)}
    least = tube if form.is_male_thread else tube - NOSE_GAP
    return {"tube_od": ((tube, tube),), "nose": ((least, tube),)}


def _plain_rows(tables: Tables) -> list[Entry]:
    """Ends without a thread of their own, by the diameter of nose, spigot, tube or ring, or of what takes it."""
    found: list[Entry] = []
    for (family, size), rows in tables.plain_ends.items():
        sound = {
            (r.diameter_min_mm, r.diameter_max_mm)
            for r in rows
            if r.diameter_min_mm is not None and r.diameter_max_mm is not None
        }
        for name in tables.families[family].forms:
            form = Form(name)
            gap = NOSE_GAP if form in (Form.COUPLER_FEMALE, Form.STAPLE_FEMALE) else 0.0
            nose = tuple((low, high + gap) for low, high in sorted(sound))
            found.append((family, size, form, "", {"nose": nose}))
    return found


def _seat_shares(tables: Tables, forms: list[tuple[Connection, Form]]) -> Array:
    shares = np.zeros((len(forms), len(SEATS)))
    index = {seat: n for n, seat in enumerate(SEATS)}
    known = [(r.family, r.form, index[r.seat], r.share) for r in tables.seats]
    for n, (family, form) in enumerate(forms):
        for of_family, of_form, seat, share in known:
            if of_family is family and of_form == form:
                shares[n, seat] += share
    return shares


def _by_kind(shares: Array) -> Array:
    """Shares within each kind of seat: that many BSPP ends seal on a flat face speaks against no cone."""
    found = np.zeros_like(shares)
    for kind in _KINDS:
        places = [SEATS.index(seat) for seat in kind]
        whole = shares[:, places].sum(axis=1, keepdims=True)
        found[:, places] = np.divide(shares[:, places], whole, where=whole > 0, out=found[:, places])
    return found


def _misread(shares: Array) -> Array:
    return shares * (1 - SEAT_MISREAD) + SEAT_MISREAD / len(SEATS)


def _cone_shares(tables: Tables, forms: list[tuple[Connection, Form]]) -> Array:
    shares = np.full((len(forms), len(CONES)), 0.5)  # no cone: either word is as likely
    known = {(r.family, r.form): CONES.index(r.cone) for r in tables.cones}
    for n, (family, form) in enumerate(forms):
        if (family, str(form)) in known:
            shares[n] = CONE_MISREAD
            shares[n, known[family, str(form)]] = 1 - CONE_MISREAD
    return shares


def _said_shares(tables: Tables, forms: list[tuple[Connection, Form]], name: str) -> Array:
    """How much each word that the eye says of an end speaks for it; all alike where an end has no such thing."""
    words = SAID[name]
    shares = np.full((len(forms), len(words)), 0.5)
    for n, (family, form) in enumerate(forms):
        own = _OWN[name](family, form, tables)
        if own:
            shares[n] = [word in own for word in words]
    wrong = SAID_MISREAD[name]
    return np.where(shares == 0.5, shares, shares * (1 - wrong) + wrong / len(words))


def _sides(family: Connection, form: Form, tables: Tables) -> set[str]:
    if form is Form.STANDPIPE:
        return {"none", "female"}  # a plain tube, with the nut on it or without
    return {"male" if form.is_male_thread else "female" if form.is_female_thread else "none"}


def _swivelling(family: Connection, form: Form, tables: Tables) -> set[str]:
    threaded = form.is_male_thread or form.is_female_thread
    return {"yes" if form.swivels else "no"} if threaded else set()


def _shapes(family: Connection, form: Form, tables: Tables) -> set[str]:
    threaded = form.is_male_thread or form.is_female_thread
    return {"taper" if family.is_taper else "parallel"} if threaded else set()


def _sealing(family: Connection, form: Form, tables: Tables) -> set[str]:
    seats = {row.seat for row in tables.seats if (row.family, row.form) == (family, form)}
    return {"cone" if seat.isdigit() else "thread" if seat == "taper" else seat for seat in seats}


_OWN: dict[str, Callable[[Connection, Form, Tables], set[str]]] = {
    "side": _sides,
    "swivels": _swivelling,
    "shape": _shapes,
    "seals": _sealing,
}
"""Of what the eye says, the words that are true of a form of a family."""


def _flank_shares(tables: Tables, rows: list[Entry]) -> Array:
    shares = np.full((len(rows), len(FLANKS)), 0.5)  # no thread: either word is as likely
    for n, (family, size, *_) in enumerate(rows):
        if (family, size) in tables.threads:
            own = "55" if tables.threads[family, size].thread_form in _55_DEGREES else "60"
            shares[n] = FLANK_MISREAD
            shares[n, FLANKS.index(own)] = 1 - FLANK_MISREAD
    return shares


def _alike_to_a_gauge(tables: Tables, rows: list[Entry]) -> npt.NDArray[np.int_]:
    """One number for the candidates that are one thread to a gauge (NPT and NPTF of a size and form)."""
    numbers: dict[tuple[frozenset[Connection], str, Form], int] = {}
    found = []
    for family, size, form, *_ in rows:
        same = frozenset({family, tables.families[family].same_thread or family})
        found.append(numbers.setdefault((same, size, form), len(numbers)))
    return np.array(found, dtype=int)


def density(pool: Pool, feature: str, readings: Array, errors: Errors, among: Array) -> Array:
    """Likelihood of each reading for each of the candidates ``among``: readings x candidates.

    Where a candidate's figure is not known, any reading is as likely as another: measuring
    it then speaks neither for nor against. A thread on a flange, or a bolt on a nut, is not.
    """
    if feature in pool.words:
        chance: Array = pool.words[feature][among][:, readings.astype(int)].T
        return chance
    low, high = pool.low[feature][among], pool.high[feature][among]
    flat = 1 / RANGE[feature]
    sigma = errors.of(feature)
    known = ~np.isnan(low)
    weight = known / np.maximum(known.sum(axis=1, keepdims=True), 1)
    x = readings[:, None, None]
    if feature == "hex":
        likely = _plateau(x, low, high, sigma) * (1 - OTHER_HEX) + flat * OTHER_HEX
    else:
        likely = _plateau(x, low, high, sigma) * (1 - FAR_OFF) + _slip(x, low, high, sigma) * FAR_OFF
    mixed = (np.where(known, likely, 0.0) * weight).sum(axis=2)
    unknown = ~known.any(axis=1)
    return np.where(unknown, _unknown_density(pool, feature, flat, among), mixed)


def likelihoods(pool: Pool, readings: Mapping[str, Array], errors: Errors, among: Array) -> Array:
    """How likely each candidate is by each set of readings: sets x candidates, rows add to 1."""
    count = len(next(iter(readings.values()), np.empty(1)))
    weights = np.ones((count, len(among)))
    for feature, values in readings.items():
        weights *= density(pool, feature, values, errors, among)
        weights /= weights.max(
            axis=1, keepdims=True
        )  # several readings far off everything would come to nothing
    found: Array = weights / weights.sum(axis=1, keepdims=True)
    return found


def _slip(x: Array, low: Array, high: Array, sigma: float) -> Array:
    """A reading that went wrong: the further off, the less likely, but never impossible."""
    off = np.maximum(np.maximum(low - x, x - high), 0.0)
    chance: Array = np.exp(-off / (SLIP * sigma)) / (2 * SLIP * sigma)
    return chance


def _unknown_density(pool: Pool, feature: str, flat: float, among: Array) -> Array:
    """Threads are found on threads only, and bolts on flanges only; other unknown figures say nothing."""
    is_flange = np.array([pool.families[n].is_flange for n in among])
    if feature in ("thread", "tpi", "tube_od"):
        impossible = np.isnan(pool.low["tpi"][among]).all(axis=1)
    else:
        impossible = is_flange if feature in ("hex", "nose") else ~is_flange
    return np.where(impossible, flat * 1e-4, flat)


def _plateau(x: Array, low: Array, high: Array, sigma: float) -> Array:
    """A true figure even between low and high, read with a normal slip."""
    width = high - low
    narrow = np.where(width < 1e-9, 1.0, width)
    spread = (_cdf((x - low) / sigma) - _cdf((x - high) / sigma)) / narrow
    point = np.exp(-0.5 * ((x - low) / sigma) ** 2) / (sigma * math.sqrt(2 * math.pi))
    return np.where(width < 1e-9, point, spread)


def _cdf(z: Array) -> Array:
    """The normal distribution, by the approximation 26.2.17 of Abramowitz and Stegun (1e-7)."""
    a = np.abs(np.nan_to_num(z))
    t = 1 / (1 + 0.2316419 * a)
    poly = t * (0.319381530 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))))
    upper = np.exp(-0.5 * a * a) / math.sqrt(2 * math.pi) * poly
    return np.where(np.nan_to_num(z) >= 0, 1 - upper, upper)


def information(pool: Pool, feature: str, among: Array, weights: Array, errors: Errors) -> float:
    """Expected information, in bits, of measuring ``feature`` given the candidates' weights.

    Candidates that no gauge tells apart count as one, so nothing is asked to separate them.
    A reading of a candidate whose figure is not known, or of an odd nut, is taken to tell nothing.
    """
    readings, chances = _possible_readings(pool, feature, among, weights)
    if readings.size == 0:
        return 0.0
    like = density(pool, feature, readings, errors, among) * weights[None]
    _, place = np.unique(pool.one[among], return_inverse=True)
    together = np.eye(int(place.max()) + 1)[place]
    posterior = like @ together / np.maximum(like.sum(axis=1, keepdims=True), 1e-300)
    after = -(posterior * np.log2(np.maximum(posterior, 1e-300))).sum(axis=1)
    before = _entropy(weights @ together)
    telling = float(chances.sum())
    return max(0.0, telling * before - float((after * chances).sum()))


def _possible_readings(pool: Pool, feature: str, among: Array, weights: Array) -> tuple[Array, Array]:
    """What might be read and how likely: each word, or each candidate's own figure."""
    if feature in pool.words:
        shares = pool.words[feature][among]
        return np.arange(shares.shape[1], dtype=float), (shares * weights[:, None]).sum(axis=0)
    low, high = pool.low[feature][among], pool.high[feature][among]
    known = ~np.isnan(low)
    several = known.sum(axis=1)
    chances = np.repeat(weights / np.maximum(several, 1), several)
    usual = 1 - OTHER_HEX if feature == "hex" else 1 - FAR_OFF
    return ((low + high) / 2)[known], chances * usual


def _entropy(weights: Array) -> float:
    return float(-(weights * np.log2(np.maximum(weights, 1e-300))).sum())
