"""Whether the parts of a spec exist and go together; refused with the mend where they do not."""

from __future__ import annotations

from tagger.errors import Problem, TradeError
from tagger.messages import as_is
from tagger.spec import AssemblySpec, End, Form
from tagger.trade.results import Warning_
from tagger.trade.tables import Tables


def check_parts(spec: AssemblySpec, tables: Tables) -> list[Warning_]:
    """Warnings for jump sizes. Raises TradeError with every part that cannot be as described."""
    problems: list[Problem] = []
    warnings: list[Warning_] = []
    problems += _hose_problems(spec, tables)
    for name, end in (("end_a", spec.end_a), ("end_b", spec.end_b)):
        found = end_problems(name, end, tables)
        problems += found
        if not found:
            jump, note = _jump(name, end, spec.hose.dash, tables)
            problems += jump
            warnings += note
    if problems:
        raise TradeError(problems)
    return warnings


def end_problems(name: str, end: End, tables: Tables) -> list[Problem]:
    """What is wrong with one end alone: a form or a size its family does not have."""
    family = tables.families[end.connection]
    if end.form not in family.forms:
        mend = f"Forms are: {', '.join(family.forms)}."
        if end.form is Form.FEMALE_SWIVEL and family.swivel_family:
            mend = f"A swivel female that takes its male is {family.swivel_family}."
        return [Problem(f"{name}.form", str(end.form), f"is not a form of {end.connection}", mend)]
    sizes = tables.sizes(end.connection)
    if end.size_key in sizes:
        return []
    field = "dash" if end.dash is not None else "size"
    value = end.dash if end.dash is not None else end.size
    why = f"{value} is not a size of {end.connection}"
    return [Problem(f"{name}.{field}", value, why, f"Sizes are {', '.join(sizes)}.")]


def _hose_problems(spec: AssemblySpec, tables: Tables) -> list[Problem]:
    hose = spec.hose
    standard = tables.standard_of(hose.standard)
    if standard is None:
        if spec.working_pressure is not None:
            return []
        known = ", ".join(tables.standards)
        mend = f"Known are: {known}. For another hose give working_pressure with its source."
        return [Problem("hose.standard", hose.standard, "is not a hose standard known here", mend)]
    tables.edition_of(hose, standard.standard)
    dashes = {r.dash for r in tables.hose_pressures.get(standard.standard, ())}
    if str(hose.dash) in dashes or "all" in dashes or spec.working_pressure is not None:
        return []
    sizes = ", ".join(sorted(dashes, key=int))
    why = f"{hose.dash} is not a size of {standard.standard}"
    return [Problem("hose.dash", hose.dash, why, f"Sizes are {sizes}.")]


def _jump(name: str, end: End, hose_dash: int, tables: Tables) -> tuple[list[Problem], list[Warning_]]:
    natural = tables.natural_hose(end.connection, end.size_key)
    if end.hose_dash is not None and end.hose_dash != hose_dash:
        why = f"the fitting's tail is for -{end.hose_dash} hose, and the hose is -{hose_dash}"
        mend = f"Use a fitting with a -{hose_dash} tail, or -{end.hose_dash} hose."
        return [Problem(f"{name}.hose_dash", end.hose_dash, why, mend)], []
    if hose_dash in natural:
        return [], []
    said = " or ".join(f"-{dash}" for dash in natural)
    if end.hose_dash is None:
        why = f"{end.connection} {end.size_text} is made for {said} hose, and the hose is -{hose_dash}"
        mend = f"If it is a jump size, state hose_dash: {hose_dash} on this end; else correct a size."
        return [Problem(f"{name}.hose_dash", None, why, mend)], []
    text = (
        f"{'End A' if name == 'end_a' else 'End B'} is a jump size: {end.connection} {end.size_text} "
        f"on -{hose_dash} hose, where {said} is usual."
    )
    return [], [Warning_(code="jump_size", field=f"{name}.hose_dash", message=as_is(text), severity="note")]
