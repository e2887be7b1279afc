"""Check that the parts of a spec exist and fit together; refuse with the fix where they do not."""

from __future__ import annotations

from tagger import phrases
from tagger.errors import Problem, TradeError
from tagger.messages import Message, Value, length
from tagger.spec import AssemblySpec, End, Fluid, Form, Hose, Sizing
from tagger.trade import geometry, layline
from tagger.trade import rows as row
from tagger.trade.results import Warning_
from tagger.trade.tables import Tables


def check_parts(spec: AssemblySpec, tables: Tables) -> list[Warning_]:
    """Warnings for jump sizes. Raises TradeError with every part that cannot be as described."""
    problems: list[Problem] = []
    warnings = _tube_named(spec.hose, tables)
    problems += _hose_problems(spec, tables)
    for name, end in (("end_a", spec.end_a), ("end_b", spec.end_b)):
        found = end_problems(name, end, tables)
        problems += found
        if not found:
            jump, note = _jump(name, end, spec.hose, tables)
            problems += jump
            warnings += note
    if problems:
        raise TradeError(problems)
    return warnings


def end_problems(name: str, end: End, tables: Tables) -> list[Problem]:
    """What is wrong with one end alone: a form or a size its family does not have."""
    family = tables.families[end.connection]
    if end.form not in family.forms:
        return [Problem(f"{name}.form", str(end.form), _not_a_form(end, family))]
    if end.series is not None and end.series not in family.series:
        why = Message("trade-not-a-series", connection=phrases.connection(end.connection))
        if family.series:
            series = tuple(family.series)
            why = Message(
                "trade-not-this-series", connection=phrases.connection(end.connection), series=series
            )
        return [Problem(f"{name}.series", str(end.series), why)]
    sizes = tables.sizes(end.connection)
    if end.size_key in sizes or end.connection.sized_by is Sizing.WORDS:
        return []
    field = "dash" if end.dash is not None else "size"
    value = end.dash if end.dash is not None else end.size
    connection = phrases.connection(end.connection)
    why = Message("trade-not-a-size", size=str(value), connection=connection, sizes=tuple(sizes))
    return [Problem(f"{name}.{field}", value, why)]


def _not_a_form(end: End, family: row.Family) -> Message:
    form, connection = phrases.form(end.form), phrases.connection(end.connection)
    if end.form is Form.FEMALE_SWIVEL and family.swivel_family:
        other = phrases.connection(family.swivel_family)
        return Message("trade-not-a-form-instead", form=form, connection=connection, instead=other)
    forms = tuple(phrases.form(f) for f in family.forms)
    return Message("trade-not-a-form", form=form, connection=connection, forms=forms)


def _no_hydraulic_hose(spec: AssemblySpec, other: row.OtherHose) -> list[Problem]:
    """Why a hose for something else than hydraulics cannot be used so; none where its manufacturer rates it
    and what flows is what it carries. A water-jetting hose is never rated: it keeps less to burst."""
    said: dict[str, Value] = {"standard": other.names, "carries": Message(f"trade-carries-{other.carries}")}
    if other.carries == "jetting":
        return [
            Problem("hose.standard", spec.hose.standard, Message("trade-jetting-hose", standard=other.names))
        ]
    if spec.hose.rating is None and spec.working_pressure is None:
        return [Problem("hose.standard", spec.hose.standard, Message("trade-other-hose", **said))]
    if other.fluids and (spec.fluid or Fluid.MINERAL_OIL) not in other.fluids:
        return [Problem("fluid", spec.fluid, Message("trade-other-hose-fluid", **said))]
    return []


def _hose_problems(spec: AssemblySpec, tables: Tables) -> list[Problem]:
    hose = spec.hose
    standard = tables.standard_of(hose.standard)
    if standard is None:
        if other := layline.others(hose.standard, tables):
            return _no_hydraulic_hose(spec, other[0])
        if spec.working_pressure is not None or hose.rating is not None or tables.pressures_of(hose):
            return []
        standards = tuple(tables.standards)
        alike = layline.without_class(hose.standard, tables) or layline.nearest(hose.standard, tables)
        unknown = Message("trade-not-a-standard", standard=hose.standard, standards=standards)
        if alike:
            unknown = Message("trade-not-a-standard-nearest", standard=hose.standard, nearest=alike)
        return [Problem("hose.standard", hose.standard, unknown)]
    tables.edition_of(hose, standard.standard)
    dashes = {r.dash for r in tables.hose_pressures.get(standard.standard, ())}
    given = spec.working_pressure is not None or hose.rating is not None
    if str(hose.dash) in dashes or "all" in dashes or given:
        return []
    sizes = tuple(sorted(dashes, key=int))
    why = Message("trade-not-a-hose-size", dash=hose.dash, standard=standard.standard, sizes=sizes)
    return [Problem("hose.dash", hose.dash, why)]


def _tube_named(hose: Hose, tables: Tables) -> list[Warning_]:
    """Said of a hose whose dash names the tube: its fittings are its own."""
    if not tables.names_tube(hose):
        return []
    bore = length(geometry.bore_mm(hose, tables))
    message = Message("trade-dash-names-tube", standard=hose.standard, dash=hose.dash, bore=bore)
    return [Warning_(code="dash_names_tube", field="hose.dash", message=message)]


def _jump(name: str, end: End, hose: Hose, tables: Tables) -> tuple[list[Problem], list[Warning_]]:
    hose_dash = hose.dash
    if end.hose_dash is not None and end.hose_dash != hose_dash:
        why = Message("trade-tail-for-another-hose", tail=end.hose_dash, hose=hose_dash)
        return [Problem(f"{name}.hose_dash", end.hose_dash, why)], []
    if tables.is_natural(end.connection, end.size_key, hose):
        return [], []
    values: dict[str, Value] = {
        "size": end.size_text,
        "connection": phrases.connection(end.connection),
        "hose": hose_dash,
        "usual": tuple(f"-{dash}" for dash in tables.natural_hose(end.connection, end.size_key)),
    }
    if end.hose_dash is None:
        return [Problem(f"{name}.hose_dash", None, Message("trade-end-for-another-hose", **values))], []
    message = Message("trade-jump-size", part=phrases.part(name), **values)
    return [], [Warning_(code="jump_size", field=f"{name}.hose_dash", message=message, severity="note")]
