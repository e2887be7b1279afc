"""Compares what the tables hold, and what the tool shows, with what a source prints.

An outcome is ``same``, ``more cautious`` (another source is lower, or larger for a bend, and
the tool shows that one), ``kept aside`` (kept, and named beside the one shown, or for another
part), or a sentence that says what is wrong.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterator
from fractions import Fraction

from tagger.spec import Connection, End, Hose, Sizing
from tagger.trade import geometry, rating, tightening
from tagger.trade.tables import tables
from tests.outside.trade.published import TO_NM, bar, rows

SAME, CAUTIOUS, ASIDE = "same", "more cautious", "kept aside"
FINE = {SAME, CAUTIOUS, ASIDE}
NO_SUCH_SCREW = {
    "flange_code61": {"screw M6", "screw M14", "screw M18", "screw M20"},
    "flange_code62": {"screw M6", "screw M18"},
}
"""Screws whose torque a source gives and that no flange of the tables has."""
MATERIALS = {
    "steel": "carbon_steel", "brass": "brass", "aluminium tube": "aluminium", "aluminium port": "aluminium_port",
}  # fmt: skip
Row = dict[str, str]
SHORT = {r.source.casefold(): r.short for r in tables().raw["sources"]}


def named(source: str) -> str:
    """A source by the short name that rows carry once they are loaded."""
    return SHORT.get(source.casefold(), source)


def an_end(family: str, size: str, form: str, shape: str = "straight", material: str = "carbon_steel") -> End:
    name = "dash" if Connection(family).sized_by is Sizing.DASH else "size"
    return End.model_validate({"connection": family, name: int(size) if name == "dash" else size, "form": form,
                               "shape": shape, "material": material})  # fmt: skip


def near(a: float | None, printed: str, factor: float = 1.0) -> bool:
    """Equal to a printed figure, within the rounding of tables to 0.1 and sources to three digits."""
    if a is None or not printed:
        return a is None and not printed
    return abs(a - float(printed) * factor) <= max(0.06, 0.008 * float(printed) * factor)


def end_pressure(row: Row) -> str:
    """A pressure of an end: kept, and shown unless a lower one is."""
    printed = bar(row["printed"])
    kept = [r for r in tables().end_pressures.get((Connection(row["family"]), row["size"]), ())
            if r.source == named(row["source"]) and r.applies_to == row["applies_to"]]  # fmt: skip
    # 414 bar beside 6000 psi in one source is kept as 6000 psi, 413.7 bar.
    if not any(abs(r.max_working_bar - printed) <= max(0.06, 0.001 * printed) for r in kept):
        return f"{printed:.1f} bar is not kept"
    if kept[0].use != "rating":
        return ASIDE
    end = an_end(row["family"], row["size"], kept[0].forms[0], "elbow_90" if kept[0].shapes == ("elbow",) else "straight",
                 kept[0].material)  # fmt: skip
    cool = 20.0  # °C: within the condition of every source that states one
    return _shown(rating.end_rating("end_a", end, tables(), cool).value_bar, printed)


def _shown(shown: float | None, printed: float) -> str:
    if shown is None:
        return "is not shown"
    if shown > printed * 1.004:
        return f"shown as {shown} bar, above the source's {printed:.1f}"
    return SAME if shown >= printed * 0.994 else CAUTIOUS


def hose(row: Row) -> Iterator[tuple[str, str]]:
    """A hose's pressure, bend radius and outside diameter, each an outcome of its own."""
    edition = "2003" if row["edition"] == "older rating" else None
    made = Hose(standard=row["standard"], dash=int(row["dash"]), edition=edition)
    if row["working_pressure"]:
        shown = rating.hose_rating(made, tables())[0].value_bar
        yield "pressure", _shown(shown, bar(row["working_pressure"]))
    if row["bend_radius_mm"]:
        shown, printed = geometry.bend_radius(made, tables())[0].mm, float(row["bend_radius_mm"])
        if shown is None or shown < printed * 0.994:
            yield "bend", f"shown as {shown} mm, tighter than the source's {printed}"
        else:
            yield "bend", SAME if shown <= printed * 1.006 else CAUTIOUS
    if row["outside_diameter_mm"]:
        kept = [r.outside_diameter_mm for r in tables().hose_sizes[row["standard"]] if r.dash == row["dash"]
                and r.source == named(row["source"])]  # fmt: skip
        yield "diameter", SAME if float(row["outside_diameter_mm"]) in kept else "is not kept"


def torque(row: Row) -> str:
    """A tightening figure: kept as printed, and shown or named in the spread of its size."""
    if row["size"] in NO_SUCH_SCREW.get(row["family"], set()):
        return ASIDE
    family = Connection(row["family"])
    screw = row["size"].removeprefix("screw ") if row["size"].startswith("screw") else None
    kept = [
        r for r in tables().tightening[family]
        if r.source == named(row["source"]) and r.end_type == row["end_type"]
        and r.material == MATERIALS[row["material"]]
        and (r.screw == screw if screw else r.size == row["size"])
    ]  # fmt: skip
    factor = TO_NM.get(row["unit"], 1.0)
    agree = [
        r for r in kept
        if near(r.torque_min_nm, row["torque_min"], factor) and near(r.torque_max_nm, row["torque_max"], factor)
        and near(r.flats_min, row["flats_min"]) and near(r.flats_max, row["flats_max"])
        and near(r.turns_min, row["turns_min"]) and near(r.turns_max, row["turns_max"])
        and r.basis == row["basis"].replace(" ", "_")  # a count from another start is another count
    ]  # fmt: skip
    if not agree:
        return "is not kept"
    size = agree[0].size if agree[0].size != "all" else tables().sizes(family)[2]
    found = tightening.advice("end_a", _typical(family, size), tables())[0]
    if named(row["source"]).casefold() in " ".join(map(str, found.spread)).casefold():
        return ASIDE
    shown = {f.source for f in (found.torque, found.flats, found.turns) if f is not None}
    return SAME if agree[0].source in shown else "is neither shown nor named in the spread"


def _typical(family: Connection, size: str) -> End:
    forms = tables().families[family].forms
    return an_end(family, size, "female_swivel" if "female_swivel" in forms else forms[0])


def dimension(row: Row) -> str:
    """A thread, hexagon or bolt spacing."""
    family, what, printed = Connection(row["family"]), row["what"], row["printed"]
    key = (family, row["size"])
    if what.startswith("bolt_pattern"):
        name = what.replace("bolt_pattern", "bolt")
        kept = [float(f.value) for f in tables().flanges if (f.family, f.size) == key and f.what == name]
        return SAME if kept == [float(printed)] else f"kept as {kept}"
    if what.startswith("hex"):
        mm = float(sum(Fraction(p) for p in printed.split())) * 25.4 if what == "hex_in" else float(printed)
        kept = [h.hex_mm for h in tables().hexes if (h.family, h.size) == key]
        return SAME if any(abs(h - mm) < 0.06 for h in kept) else f"kept as {kept}"
    if what.startswith(("plain", "tube")):
        return _plain(key, what, float(printed))
    if what == "hose_dash":
        return SAME if int(printed) in tables().natural_hose(*key) else "is not its hose"
    thread = tables().threads[key]
    checks: dict[str, Callable[[], bool]] = {
        "thread": lambda: printed in thread.thread,
        "thread_od_mm": lambda: abs(thread.thread_od_mm - float(printed)) < 0.011,
        # Charts in inches to two decimals, and bores read with a caliper.
        "male_od_chart_in": lambda: abs(thread.thread_od_mm - float(printed) * 25.4) < 0.6,
        "female_id_chart_in": lambda: abs(thread.female_minor_mm - float(printed) * 25.4) < 0.8,
        "female_id_chart_mm": lambda: abs(thread.female_minor_mm - float(printed)) < 0.25,
    }
    return (
        SAME
        if checks[what]()
        else f"kept as {thread.thread}, {thread.thread_od_mm} mm, {thread.female_minor_mm} mm"
    )


def _plain(key: tuple[Connection, str], what: str, printed: float) -> str:
    """What a caliper reads on a coupler's nose or a banjo's hole, or the tube of a series ("tube L")."""
    kept = tables().plain_ends[key]
    if what.startswith("tube"):
        kept = tuple(r for r in kept if r.series == what.split()[1])
    figures = {r.diameter_max_mm if what == "plain_max_mm" else r.diameter_min_mm for r in kept}
    return SAME if figures == {printed} else f"kept as {figures}"


def outcomes() -> Iterator[tuple[str, str]]:
    """Every check against the files of this folder: where, and its outcome."""
    for row in rows("end_pressure"):
        yield row["where"], end_pressure(row)
    for row in rows("hose"):
        for what, outcome in hose(row):
            yield f"{row['where']}:{what}", outcome
    for row in rows("tightening"):
        yield row["where"], torque(row)
    for row in rows("dimensions"):
        yield row["where"], dimension(row)


def counts() -> str:
    """How many checks there are, and how they came out."""
    counted = Counter(outcome if outcome in FINE else "mismatch" for _, outcome in outcomes())
    return f"{sum(counted.values())} checks: " + ", ".join(f"{n} {name}" for name, n in counted.most_common())


def main() -> None:
    """Prints the counts, and every mismatch."""
    print(counts())
    for where, outcome in outcomes():
        if outcome not in FINE:
            print(f"mismatch: {where}: {outcome}")


if __name__ == "__main__":
    main()
