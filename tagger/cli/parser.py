"""Every command with its options, and the function that is called for it."""

from __future__ import annotations

import argparse
from collections.abc import Callable, Sequence
from datetime import date
from pathlib import Path
from typing import Final

from tagger import __version__
from tagger.cli import (
    backups,
    cards,
    charts,
    commands,
    crimping,
    customers,
    fitted,
    people,
    printing,
    proving,
    scale_cards,
    sheets,
    signing_keys,
    values,
)
from tagger.cli.commands import Answer
from tagger.cli.language import OPTION
from tagger.i18n import LANGUAGES, Translator
from tagger.messages import Message
from tagger.record import RECORD_FIELDS
from tagger.spec import Form, Series

Call = Callable[[argparse.Namespace, Translator], Answer]
Fill = Callable[[argparse.ArgumentParser, Translator], None]


def make_parser(t: Translator | None = None, arguments: Sequence[str] = ()) -> argparse.ArgumentParser:
    """The parser of the whole command line, with its help in the language of ``t`` (default English).

    ``arguments.command`` of what it parses is the function to call. Where ``arguments`` begin with a
    command, only the options of that command are made: the start takes less time.
    """
    t = t or Translator()
    parser = argparse.ArgumentParser(prog="tagger", description=t("cli-description"))
    parser.add_argument("--version", action="version", version=f"tagger {__version__}")
    _add_language(parser, t)
    verbs = parser.add_subparsers(required=True, metavar="COMMAND")
    asked = _asked(arguments)
    for name in [asked] if asked else _COMMANDS:
        call, fill = _COMMANDS[name]
        about = t(Message(f"cli-about-{name}"))
        one = verbs.add_parser(name, help=about.replace("%", "%%"), description=about)
        one.add_argument("--json", action="store_true", help=t("cli-option-json"))
        _add_language(one, t)
        one.set_defaults(command=call)
        fill(one, t)
    return parser


def _asked(arguments: Sequence[str]) -> str | None:
    """The command, where nothing but the language stands before it."""
    left = list(arguments)
    if left[:1] == [OPTION]:
        left = left[2:]
    elif left and left[0].startswith(f"{OPTION}="):
        left = left[1:]
    return left[0] if left and left[0] in _COMMANDS else None


def _identify(one: argparse.ArgumentParser, t: Translator) -> None:
    from tagger.trade.identifying.readings import ASKED, CONES, FLANKS, ORIGINS, SAID, SEATS

    one.add_argument("--form", help=t("cli-option-choices", choices=tuple(map(str, Form))))
    for option in ("thread-od", "thread-id", "pitch", "hex", "nose", "tube-od", "flange-od", "bolt-spacing"):
        about = t("cli-option-length-example", what=Message(f"cli-option-{option}"))
        one.add_argument(f"--{option}", metavar="LENGTH", help=about)
    one.add_argument("--tpi", help=t("cli-option-tpi"))
    one.add_argument("--seat", help=t("cli-option-choices", choices=tuple(SEATS)))
    one.add_argument("--cone", help=t("cli-option-cone", choices=tuple(CONES)))
    one.add_argument("--flank", help=t("cli-option-flank", choices=FLANKS))
    one.add_argument("--series", help=t("cli-option-series", choices=tuple(map(str, Series))))
    one.add_argument("--origin", help=t("cli-option-origin", choices=ORIGINS))
    for name, words in SAID.items():
        one.add_argument(f"--{name}", help=t(f"cli-option-{name}", choices=words))
    one.add_argument("--found", default="", metavar="MARKS", help=t("cli-option-found"))
    one.add_argument("--scale", metavar="LENGTH", help=t("cli-option-scale"))
    one.add_argument("--cannot", action="append", metavar="WHAT", help=t("cli-option-cannot", choices=ASKED))


def _identify_hose(one: argparse.ArgumentParser, t: Translator) -> None:
    from tagger.trade.rows import LAYERS

    for option, field in (("od", "od"), ("bore", "bore")):
        about = t("cli-option-length-example", what=Message(f"identify-hose-field-{field}"))
        one.add_argument(f"--{option}", metavar="LENGTH", help=about)
    one.add_argument("--kind", help=t("cli-option-choices", choices=LAYERS))
    one.add_argument("--layers", metavar="N", help=t("identify-hose-field-layers"))
    one.add_argument("--lay-line", metavar="TEXT", help=t("identify-hose-field-lay_line"))


def _lay_line(one: argparse.ArgumentParser, t: Translator) -> None:
    one.add_argument("text", metavar="TEXT", help=t("cli-option-lay-line"))


def _check(one: argparse.ArgumentParser, t: Translator) -> None:
    _add_spec(one, t)
    one.add_argument("--length-bands", choices=("sae", "din"), help=t("cli-option-length-bands"))
    one.add_argument("--keep", action="store_true", help=t("cli-option-keep"))


def _values(one: argparse.ArgumentParser, t: Translator) -> None:
    one.add_argument("--all", action="store_true", help=t("cli-option-all"))
    one.add_argument("--withdraw", type=int, metavar="N", help=t("cli-option-withdraw"))
    one.add_argument("--reason", metavar="TEXT", help=t("cli-option-reason"))


def _compare(one: argparse.ArgumentParser, t: Translator) -> None:
    one.add_argument("a", metavar="A")
    one.add_argument("b", metavar="B")


def _tables(one: argparse.ArgumentParser, t: Translator) -> None:
    one.add_argument("what", nargs="?", choices=("check", "report"), default="check")


def _fittings(one: argparse.ArgumentParser, t: Translator) -> None:
    one.add_argument("text", nargs="?", metavar="TEXT", help=t("cli-option-fitting-text"))
    what = one.add_mutually_exclusive_group()
    what.add_argument(
        "--import", dest="file", type=Path, metavar="FILE", help=t("cli-option-fittings-import")
    )
    what.add_argument("--drop", metavar="NUMBER", help=t("cli-option-fitting-drop"))


def _hoses(one: argparse.ArgumentParser, t: Translator) -> None:
    what = one.add_mutually_exclusive_group()
    what.add_argument("--import", dest="file", type=Path, metavar="FILE", help=t("cli-option-hoses-import"))
    what.add_argument("--drop", metavar="PART", help=t("cli-option-hose-drop"))
    one.add_argument("--dash", type=int, help=t("cli-option-hose-dash"))
    one.add_argument("--reason", help=t("cli-option-hose-reason"))


def _nothing(one: argparse.ArgumentParser, t: Translator) -> None:
    """For a command without options of its own."""


def _register(one: argparse.ArgumentParser, t: Translator) -> None:
    _add_spec(one, t)
    one.add_argument("--count", type=int, default=1, metavar="N", help=t("cli-option-count"))
    _add_built_on(one, t)
    for name in RECORD_FIELDS:
        one.add_argument(f"--{name.replace('_', '-')}", metavar="TEXT", help=t("cli-option-record"))
    one.add_argument("--replaces", metavar="NUMBER", help=t("cli-option-replaces"))
    one.add_argument("--keep", action="store_true", help=t("cli-option-keep"))
    reasons = ("date_code", "other_manufacturer", "earlier_record_wrong")
    one.add_argument("--lot-reason", choices=reasons, help=t("cli-option-lot-reason", reasons=reasons))
    one.add_argument("--order", metavar="REFERENCE", help=t("cli-option-order"))
    one.add_argument("--changes-considered", action="store_true", help=t("cli-option-changes-considered"))
    one.add_argument("--key", help=t("cli-option-key"))


def _print(one: argparse.ArgumentParser, t: Translator) -> None:
    one.add_argument("numbers", nargs="+", metavar="NUMBER")
    where = one.add_mutually_exclusive_group(required=True)
    where.add_argument("--out", type=Path, metavar="FILE", help=t("cli-option-out"))
    where.add_argument("--printer", metavar="URI", help=t("cli-option-printer"))
    _add_printing(one, t, dpi=t("cli-option-dpi-printer"))


def _run(one: argparse.ArgumentParser, t: Translator) -> None:
    one.add_argument("list", type=Path, metavar="LIST", help=t("cli-option-list"))
    _add_built_on(one, t)
    one.add_argument("--out", type=Path, required=True, metavar="FILE", help=t("cli-option-out"))
    _add_printing(one, t, dpi=t("cli-option-dpi"))


def _read(one: argparse.ArgumentParser, t: Translator) -> None:
    one.add_argument("what", metavar="IMAGE-or-TEXT", help=t("cli-option-what"))


def _show(one: argparse.ArgumentParser, t: Translator) -> None:
    one.add_argument("number", metavar="NUMBER")


def _void(one: argparse.ArgumentParser, t: Translator) -> None:
    one.add_argument("number", metavar="NUMBER")
    one.add_argument("--reason", required=True, metavar="TEXT", help=t("cli-option-why"))


def _correct(one: argparse.ArgumentParser, t: Translator) -> None:
    one.add_argument("number", metavar="NUMBER")
    for name in (
        "customer",
        "machine",
        "position",
        "cleanliness",
        "hose-lot",
        "fitting-lot-a",
        "fitting-lot-b",
        "note",
    ):
        one.add_argument(f"--{name}", metavar="TEXT", help=t("cli-option-correct"))
    one.add_argument("--reason", required=True, metavar="TEXT", help=t("cli-option-why"))
    reasons = ("date_code", "other_manufacturer", "earlier_record_wrong")
    one.add_argument("--lot-reason", choices=reasons, help=t("cli-option-lot-reason", reasons=reasons))


def _proof(one: argparse.ArgumentParser, t: Translator) -> None:
    media = ("mineral oil", "water", "water with inhibitor", "air", "nitrogen")
    _add_numbers(one, t)
    one.add_argument("--result", choices=("passed", "failed"), help=t("cli-option-proof-result"))
    one.add_argument(
        "--pressure", dest="pressure_bar", metavar="PRESSURE", help=t("cli-option-proof-pressure")
    )
    one.add_argument("--hold", dest="hold_s", metavar="S", help=t("cli-option-proof-hold"))
    one.add_argument("--medium", choices=media, help=t("cli-option-proof-medium", media=media))
    one.add_argument("--tester", metavar="NAME", help=t("cli-option-proof-tester"))
    one.add_argument("--note", metavar="TEXT", help=t("cli-option-proof-note"))
    one.add_argument("--gauge", metavar="TEXT", help=t("cli-option-proof-gauge"))
    until = t("cli-option-proof-gauge-until")
    one.add_argument("--gauge-until", dest="gauge_valid_until", metavar="YYYY-MM-DD", help=until)
    one.add_argument("--method", metavar="TEXT", help=t("cli-option-proof-method"))
    one.add_argument("--lower-source", metavar="TEXT", help=t("cli-option-proof-lower"))
    one.add_argument("--rating", dest="rating_bar", metavar="PRESSURE", help=t("cli-option-proof-rating"))
    one.add_argument("--rating-source", metavar="TEXT", help=t("cli-option-proof-rating-source"))
    one.add_argument("--rating-confirmed", action="store_true", help=t("cli-option-proof-rating-confirmed"))
    one.add_argument("--confirmed", action="store_true", help=t("cli-option-proof-confirmed"))


def _allow(one: argparse.ArgumentParser, t: Translator) -> None:
    one.add_argument("number", metavar="NUMBER")
    one.add_argument("--by", dest="allowed_by", required=True, metavar="NAMES", help=t("cli-option-allow-by"))
    one.add_argument(
        "--on", dest="allowed_on", required=True, metavar="YYYY-MM-DD", help=t("cli-option-allow-on")
    )
    one.add_argument("--document", required=True, metavar="TEXT", help=t("cli-option-allow-document"))


def _flush(one: argparse.ArgumentParser, t: Translator) -> None:
    _add_numbers(one, t)
    one.add_argument("--method", required=True, metavar="TEXT", help=t("cli-option-flush-method"))
    one.add_argument("--by", dest="flushed_by", required=True, metavar="NAME", help=t("cli-option-flush-by"))


def _certificate(one: argparse.ArgumentParser, t: Translator) -> None:
    _add_numbers(one, t)
    one.add_argument("--out", type=Path, required=True, metavar="FILE", help=t("cli-option-pdf"))
    one.add_argument("--batch", action="store_true", help=t("cli-option-certificate-batch"))


def _card(one: argparse.ArgumentParser, t: Translator) -> None:
    one.add_argument("number", metavar="NUMBER")
    one.add_argument("--out", type=Path, required=True, metavar="FILE", help=t("cli-option-pdf"))


def _crimp(one: argparse.ArgumentParser, t: Translator) -> None:
    one.add_argument("number", nargs="?", metavar="NUMBER")
    for end in ("a", "b"):
        one.add_argument(f"--{end}", metavar="MM", help=t("cli-option-crimp", end=end.upper()))
        one.add_argument(f"--shell-{end}", metavar="SERIES", help=t("cli-option-crimp-shell"))
    about = t("cli-option-crimp-import", columns=crimping.COLUMNS)
    one.add_argument("--import", dest="file", type=Path, metavar="FILE", help=about)


def _crimp_cards(one: argparse.ArgumentParser, t: Translator) -> None:
    what = one.add_mutually_exclusive_group()
    about = t("cli-option-crimp-cards-import")
    what.add_argument("--import", dest="file", type=Path, metavar="FILE", help=about)
    what.add_argument("--drop", type=int, metavar="N", help=t("cli-option-crimp-card-drop"))


def _customer(one: argparse.ArgumentParser, t: Translator) -> None:
    one.add_argument("name", metavar="NAME", help=t("cli-option-customer-name"))
    one.add_argument("--out", type=Path, metavar="FILE", help=t("cli-option-customer-out"))


def _erase_contact(one: argparse.ArgumentParser, t: Translator) -> None:
    one.add_argument("reference", metavar="REFERENCE", help=t("cli-option-erase-reference"))


def _fitted(one: argparse.ArgumentParser, t: Translator) -> None:
    states = ("waiting", "agreed", "refused")
    one.add_argument("--state", choices=states, help=t("cli-option-fitted-state", states=states))
    one.add_argument("--number", metavar="NUMBER", help=t("cli-option-fitted-number"))
    act = one.add_mutually_exclusive_group()
    act.add_argument("--agree", type=int, metavar="N", help=t("cli-option-fitted-agree"))
    act.add_argument("--refuse", type=int, metavar="N", help=t("cli-option-fitted-refuse"))
    act.add_argument("--erase", type=int, metavar="N", help=t("cli-option-fitted-erase"))
    one.add_argument("--reason", metavar="TEXT", help=t("cli-option-why"))


def _people(one: argparse.ArgumentParser, t: Translator) -> None:
    one.add_argument("--codes-off", metavar="NAME", help=t("cli-option-codes-off"))


def _erase_old(one: argparse.ArgumentParser, t: Translator) -> None:
    one.add_argument("--dry-run", action="store_true", help=t("cli-option-dry-run"))


def _preflight(one: argparse.ArgumentParser, t: Translator) -> None:
    one.add_argument("number", metavar="NUMBER")
    _add_template(one, t, dpi=t("cli-option-dpi"))
    one.add_argument("--hose-od", type=_diameter(t), metavar="MM", help=t("cli-option-hose-od"))


def _chart(one: argparse.ArgumentParser, t: Translator) -> None:
    one.add_argument("--out", type=Path, required=True, metavar="FILE", help=t("cli-option-pdf"))
    one.add_argument(
        "--paper", type=str.capitalize, choices=("A3", "A2"), default="A3", help=t("cli-option-chart-paper")
    )
    one.add_argument("--stock", action="store_true", help=t("cli-option-chart-stock"))
    one.add_argument("--stock-numbers", action="store_true", help=t("cli-option-chart-numbers"))


def _booklet(one: argparse.ArgumentParser, t: Translator) -> None:
    one.add_argument("--out", type=Path, required=True, metavar="FILE", help=t("cli-option-pdf"))
    one.add_argument(
        "--paper",
        type=str.capitalize,
        choices=("A4", "Letter"),
        default="A4",
        help=t("cli-option-booklet-paper"),
    )
    one.add_argument("--pages", action="store_true", help=t("cli-option-booklet-pages"))


def _serve(one: argparse.ArgumentParser, t: Translator) -> None:
    one.add_argument("--host", help=t("cli-option-host"))
    one.add_argument("--port", type=int, help=t("cli-option-port"))


def _demo(one: argparse.ArgumentParser, t: Translator) -> None:
    one.add_argument("--folder", type=Path, default=Path("out"), metavar="DIR", help=t("cli-option-demo"))


def _backup(one: argparse.ArgumentParser, t: Translator) -> None:
    one.add_argument("file", type=Path, metavar="FILE")
    one.add_argument("--keep", type=int, metavar="N", help=t("cli-option-keep-backups"))


def _restore(one: argparse.ArgumentParser, t: Translator) -> None:
    one.add_argument("file", type=Path, metavar="FILE")
    one.add_argument("--unsealed", action="store_true", help=t("cli-option-unsealed"))


def _drill(one: argparse.ArgumentParser, t: Translator) -> None:
    one.add_argument("file", type=Path, metavar="FILE")
    one.add_argument("--into", metavar="URL", help=t("cli-option-into"))


def _signing_key(one: argparse.ArgumentParser, t: Translator) -> None:
    what = ("new", "list", "withdraw", "page")
    one.add_argument("what", nargs="?", choices=what, default="list", help=t("cli-option-signing-what"))
    one.add_argument("--key", type=int, metavar="N", help=t("cli-option-signing-number"))
    one.add_argument("--published", type=Path, metavar="FILE", help=t("cli-option-signing-published"))
    one.add_argument("--out", type=Path, metavar="FILE", help=t("cli-option-pdf"))


def _audit(one: argparse.ArgumentParser, t: Translator) -> None:
    noted = one.add_mutually_exclusive_group()
    noted.add_argument("--head", metavar="N:HEX", help=t("cli-option-head"))
    noted.add_argument("--backup", type=Path, metavar="FILE", help=t("cli-option-audit-backup"))


def _move(one: argparse.ArgumentParser, t: Translator) -> None:
    one.add_argument("to", metavar="URL", help=t("cli-option-move-to"))


_COMMANDS: Final[dict[str, tuple[Call, Fill]]] = {
    "identify": (commands.identify, _identify),
    "hose-by-layers": (commands.identify_hose, _identify_hose),
    "lay-line": (commands.lay_line, _lay_line),
    "check": (commands.check, _check),
    "compare": (commands.compare, _compare),
    "tables": (commands.tables, _tables),
    "fittings": (commands.fittings, _fittings),
    "hoses": (commands.hoses, _hoses),
    "schema": (commands.schema, _nothing),
    "register": (commands.register, _register),
    "print": (printing.print_tags, _print),
    "run": (printing.run, _run),
    "read": (commands.read, _read),
    "show": (commands.show, _show),
    "void": (commands.void, _void),
    "correct": (commands.correct, _correct),
    "proof": (proving.proof, _proof),
    "allow": (proving.allow, _allow),
    "crimp": (crimping.crimp, _crimp),
    "crimp-cards": (crimping.cards, _crimp_cards),
    "flush": (proving.flush, _flush),
    "certificate": (proving.certificate, _certificate),
    "card": (cards.card, _card),
    "chart": (charts.chart, _chart),
    "booklet": (charts.booklet, _booklet),
    "scale-card": (scale_cards.scale_card, scale_cards.options),
    "sheet": (sheets.sheet, sheets.options),
    "customer": (customers.customer, _customer),
    "erase-contact": (customers.erase_contact, _erase_contact),
    "fitted": (fitted.fitted, _fitted),
    "erase-old": (fitted.erase_old, _erase_old),
    "people": (people.people, _people),
    "overrated": (commands.overrated, _nothing),
    "values": (values.values, _values),
    "templates": (commands.templates, _nothing),
    "preflight": (printing.preflight, _preflight),
    "serve": (commands.serve, _serve),
    "demo": (commands.demo, _demo),
    "backup": (backups.backup, _backup),
    "restore": (backups.restore, _restore),
    "drill": (backups.drill, _drill),
    "signing-key": (signing_keys.signing_key, _signing_key),
    "audit": (backups.audit, _audit),
    "move": (backups.move, _move),
}


def _add_language(one: argparse.ArgumentParser, t: Translator) -> None:
    one.add_argument(
        OPTION,
        choices=tuple(LANGUAGES),
        default=argparse.SUPPRESS,
        metavar="L",
        help=t("cli-option-lang", languages=tuple(LANGUAGES)),
    )


def _add_spec(one: argparse.ArgumentParser, t: Translator) -> None:
    one.add_argument("spec", type=Path, metavar="SPEC.json", help=t("cli-option-spec"))
    one.add_argument("--length-confirmed", action="store_true", help=t("cli-option-length-confirmed"))
    one.add_argument("--pressure-confirmed", action="store_true", help=t("cli-option-pressure-confirmed"))


def _add_numbers(one: argparse.ArgumentParser, t: Translator) -> None:
    one.add_argument("numbers", nargs="+", metavar="NUMBER")
    one.add_argument("--run", action="store_true", help=t("cli-option-whole-run"))


def _add_built_on(one: argparse.ArgumentParser, t: Translator) -> None:
    about = t("cli-option-built-on")
    one.add_argument("--built-on", type=_built(t), default=date.today(), metavar="YYYY-MM-DD", help=about)


def _add_template(one: argparse.ArgumentParser, t: Translator, *, dpi: str) -> None:
    one.add_argument("--template", metavar="NAME", help=t("cli-option-template"))
    one.add_argument("--dpi", type=_dpi(t), metavar="N", help=dpi)


def _add_printing(one: argparse.ArgumentParser, t: Translator, *, dpi: str) -> None:
    _add_template(one, t, dpi=dpi)
    one.add_argument("--start", type=int, default=1, metavar="N", help=t("cli-option-start"))
    about = t("cli-option-languages", languages=tuple(LANGUAGES))
    one.add_argument("--languages", metavar="L,L", help=about)
    one.add_argument("--force", action="store_true", help=t("cli-option-force"))


def _built(t: Translator) -> Callable[[str], date]:
    """Reads a day on which something can have been built."""

    def read(text: str) -> date:
        try:
            day = date.fromisoformat(text)
        except ValueError:
            raise argparse.ArgumentTypeError(t("cli-usage-date", value=text)) from None
        if day > date.today():
            raise argparse.ArgumentTypeError(t("cli-usage-future", value=text))
        return day

    return read


def _dpi(t: Translator) -> Callable[[str], int]:
    """Reads the dots per inch of a printer, within the bounds that TAGGER_PRINTER_DPI has."""

    def read(text: str) -> int:
        if not text.isdecimal() or not 100 <= int(text) <= 1200:
            raise argparse.ArgumentTypeError(t("cli-usage-dpi", value=text))
        return int(text)

    return read


def _diameter(t: Translator) -> Callable[[str], float]:
    """Reads the outside diameter of a hose in mm."""

    def read(text: str) -> float:
        try:
            value = float(text)
        except ValueError:
            value = 0.0
        if not 1 <= value <= 1000:  # false for "nan" too
            raise argparse.ArgumentTypeError(t("cli-usage-diameter", value=text))
        return value

    return read
