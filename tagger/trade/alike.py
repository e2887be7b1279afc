"""Ends that are taken for each other: the same thread, or nearly, and another way of sealing.

A pair of families in look_alikes.csv has its own sentence; any other pair that shares a thread
has a general one, so that a family added to the tables is covered at once.
"""

from __future__ import annotations

from tagger import phrases
from tagger.messages import Message
from tagger.spec import Connection, End, Form, Sizing
from tagger.trade.rows import ThreadRow
from tagger.trade.tables import Tables
from tagger.trade.verdict import Field, FieldVerdict, both, values

CALIPER_MM = 0.6  # nominal diameters closer than this are taken for each other
GAUGE_TPI = 0.75  # and pitches closer than this, in threads per inch


def difference(family: Connection, other: Connection, sizes: tuple[str, ...], tables: Tables) -> Message:
    """How two families that share a thread differ; ``sizes`` are those of ``other``."""
    known = next((r.message for r in tables.look_alikes if {r.family, r.other} == {family, other}), None)
    return Message(
        known or "fit-alike-thread",
        family=phrases.connection(family),
        other=phrases.connection(other),
        sizes=sizes,
    )


def same_thread(one: End, other: End, tables: Tables) -> bool:
    """Whether one end may be screwed, or bolted, where the other belongs."""
    if one.connection.is_flange or other.connection.is_flange:
        return one.connection.is_flange and other.connection.is_flange and one.size_key == other.size_key
    threads_alike = one.form.is_male_thread and other.form.is_male_thread
    if not threads_alike and not (one.form.is_female_thread and other.form.is_female_thread):
        return False  # the eye of a banjo and a coupler show no thread of their own
    a = tables.threads.get((one.connection, one.size_key))
    b = tables.threads.get((other.connection, other.size_key))
    return a is not None and b is not None and _nearly(a, b)


def _nearly(a: ThreadRow, b: ThreadRow) -> bool:
    pitch = abs(25.4 / a.pitch_mm - 25.4 / b.pitch_mm)
    return abs(a.thread_od_mm - b.thread_od_mm) < CALIPER_MM and pitch < GAUGE_TPI


def sharing(family: Connection, size: str, tables: Tables) -> tuple[tuple[Connection, str], ...]:
    """The families, each with its size, whose end may be screwed or bolted where this family's belongs."""
    if family.is_flange:
        return tuple(
            (other, size)
            for other in tables.families
            if other.is_flange and other is not family and size in tables.sizes(other)
        )
    mine = tables.threads.get((family, size))
    if mine is None or not _shows_a_thread(family, tables):
        return ()
    return tuple(
        key
        for key, row in tables.threads.items()
        if key[0] is not family and _shows_a_thread(key[0], tables) and _nearly(mine, row)
    )


def _shows_a_thread(family: Connection, tables: Tables) -> bool:
    forms = map(Form, tables.families[family].forms)
    return any(form.is_male_thread or form.is_female_thread for form in forms)


def compared(name: str, old: End, new: End, tables: Tables) -> list[Field]:
    """The fields of one end: what it screws to, its shape, and its metal where that differs."""
    was, to_come = phrases.end_family(old), phrases.end_family(new)
    if old.connection.sized_by is new.connection.sized_by is Sizing.WORDS:
        verdict: FieldVerdict = "differs" if old.form is new.form else "dangerous"
        fields = [Field(name, verdict, Message("trade-compare-described", old=was, new=to_come))]
    elif (old.connection, old.size_key, old.form) == (new.connection, new.size_key, new.form):
        fields = [_series(name, old, new)]
    elif old.connection is not new.connection and same_thread(old, new, tables):
        how = difference(old.connection, new.connection, (new.size_text,), tables)
        fields = [Field(name, "dangerous", Message("trade-compare-alike", old=was, new=to_come, how=how))]
    else:
        fields = [Field(name, "dangerous", values(was, to_come))]
    fields.append(_shape(name, old, new))
    if old.material is not new.material:
        metals = Message(
            "trade-compare-material", old=phrases.material(old.material), new=phrases.material(new.material)
        )
        fields.append(Field(f"{name}.material", "differs", metals))
    return fields


def _series(name: str, old: End, new: End) -> Field:
    """The same connection: a stud of the other series is another stud, one of unknown series may be."""
    was, to_come = phrases.end_family(old), phrases.end_family(new)
    if old.series is new.series:
        return Field(name, "same", both(to_come))
    unlike = old.series is not None and new.series is not None
    series = Message("trade-compare-series", old=was, new=to_come)
    return Field(name, "dangerous" if unlike else "differs", series)


def _shape(name: str, old: End, new: End) -> Field:
    field = f"{name}.shape"
    was, to_come = phrases.shape(old), phrases.shape(new)
    if old.angle_deg != new.angle_deg:
        return Field(field, "differs", Message("trade-compare-shape", old=was, new=to_come))
    if old.drop_mm != new.drop_mm:
        return Field(field, "differs", values(was, to_come))
    return Field(field, "same", both(to_come))
