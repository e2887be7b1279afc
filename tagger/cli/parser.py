"""Every command with its options, and the function that is called for it."""

from __future__ import annotations

import argparse
from collections.abc import Callable
from datetime import date
from pathlib import Path

from tagger import __version__
from tagger.cli import commands, printing
from tagger.cli.commands import Answer
from tagger.spec import Form
from tagger.trade.identifying.readings import CONES, SEATS

Call = Callable[[argparse.Namespace], Answer]
Verb = Callable[[str, Call, str], argparse.ArgumentParser]


def make_parser() -> argparse.ArgumentParser:
    """The parser of the whole command line. ``arguments.command`` of what it parses is the function to call."""
    parser = argparse.ArgumentParser(
        prog="tagger", description="Tags for hydraulic hose assemblies: the whole spec on the hose."
    )
    parser.add_argument("--version", action="version", version=f"tagger {__version__}")
    verbs = parser.add_subparsers(required=True, metavar="COMMAND")

    def verb(name: str, call: Call, about: str) -> argparse.ArgumentParser:
        one = verbs.add_parser(name, help=about, description=about)
        one.add_argument("--json", action="store_true", help="answer as JSON")
        one.set_defaults(command=call)
        return one

    for group in (_identify, _trade, _register, _print, _read, _serve, _copies):
        group(verb)
    return parser


def _identify(verb: Verb) -> None:
    one = verb("identify", commands.identify, "Which connection is this? Give what you know.")
    one.add_argument("--form", help=f"one of: {', '.join(Form)}")
    for option, about in (
        ("--thread-od", "outside diameter of a male thread"),
        ("--thread-id", "inside diameter of a female thread"),
        ("--pitch", "thread pitch in mm"),
        ("--hex", "across the flats of the hexagon"),
        ("--tube-od", "outside diameter of the tube"),
        ("--flange-od", "diameter of the flange head"),
        ("--bolt-spacing", "longer distance between flange bolts, centre to centre"),
    ):
        one.add_argument(option, metavar="LENGTH", help=f'{about}: 27, "27 mm" or "1 1/16 in"')
    one.add_argument("--tpi", help="threads per inch")
    one.add_argument("--seat", help=f"one of: {', '.join(SEATS)}")
    one.add_argument("--cone", help=f"where the sealing cone is: {' or '.join(CONES)}")


def _trade(verb: Verb) -> None:
    one = verb(
        "check", commands.check, "Rating, limits, tolerances, tightening, warnings; registers nothing."
    )
    one.add_argument("spec", type=Path, metavar="SPEC.json", help="a spec, or - for standard input")
    one.add_argument(
        "--length-bands",
        choices=("sae", "din"),
        help="tolerance bands (TAGGER_LENGTH_BANDS, the hose standard's)",
    )
    about = "Does B replace A? Each is a spec's file, a tag's link, a photo or a number."
    one = verb("compare", commands.compare, about)
    one.add_argument("a", metavar="A")
    one.add_argument("b", metavar="B")
    one = verb("tables", commands.tables, "Checks the trade's tables.")
    one.add_argument("what", nargs="?", choices=("check",), default="check")
    verb("schema", commands.schema, "The JSON Schema of a spec.")


def _register(verb: Verb) -> None:
    one = verb("register", commands.register, "Gives assemblies their tag numbers.")
    one.add_argument("spec", type=Path, metavar="SPEC.json", help="a spec, or - for standard input")
    one.add_argument("--count", type=int, default=1, metavar="N", help="how many (1)")
    _add_built_on(one)
    for option in ("customer", "machine", "position"):
        one.add_argument(f"--{option}", metavar="TEXT", help="goes to the record, never on the tag's symbol")
    one.add_argument("--replaces", metavar="NUMBER", help="the tag whose hose this one replaces")
    one.add_argument("--key", help="the same key registers only once, however often it is sent")


def _print(verb: Verb) -> None:
    one = verb("print", printing.print_tags, "The tags of registered assemblies.")
    one.add_argument("numbers", nargs="+", metavar="NUMBER")
    where = one.add_mutually_exclusive_group(required=True)
    _add_out(where)
    where.add_argument("--printer", metavar="URI", help="a network printer: ipp://HOST/ipp/print, or ipps://")
    _add_printing(one, own_dots=", or a network printer's own")
    one = verb("run", printing.run, "Registers and prints a whole list, all or nothing.")
    one.add_argument("list", type=Path, metavar="LIST", help="a .csv or .xlsx file, one row a spec")
    _add_built_on(one)
    _add_out(one, required=True)
    _add_printing(one)


def _read(verb: Verb) -> None:
    one = verb("read", commands.read, "What a tag says, without any database.")
    one.add_argument("what", metavar="IMAGE-or-TEXT", help="a photo, or a scanned string")
    one = verb("show", commands.show, "The record of a tag and its history.")
    one.add_argument("number", metavar="NUMBER")
    verb("templates", commands.templates, "The label templates there are.")
    one = verb("preflight", printing.preflight, "Will this tag scan?")
    one.add_argument("number", metavar="NUMBER")
    _add_template(one)
    one.add_argument(
        "--hose-od", type=_diameter, metavar="MM", help="outside diameter of the hose; by default the table's"
    )


def _serve(verb: Verb) -> None:
    one = verb("serve", commands.serve, "The web application.")
    one.add_argument("--host", help="address to listen on (TAGGER_HOST, 127.0.0.1)")
    one.add_argument("--port", type=int, help="port to listen on (TAGGER_PORT, 8000)")


def _copies(verb: Verb) -> None:
    one = verb("backup", commands.backup, "A consistent copy of the records, verified.")
    one.add_argument("file", type=Path, metavar="FILE")
    one = verb("restore", commands.restore, "Brings a copy back into an empty database, verified.")
    one.add_argument("file", type=Path, metavar="FILE")


def _add_built_on(one: argparse.ArgumentParser) -> None:
    one.add_argument("--built-on", type=_built, default=date.today(), metavar="YYYY-MM-DD", help="(today)")


def _built(text: str) -> date:
    """A day on which something can have been built."""
    try:
        day = date.fromisoformat(text)
    except ValueError:
        why = f"{text} is not a date: give year, month and day, such as 2027-03-31"
        raise argparse.ArgumentTypeError(why) from None
    if day > date.today():
        raise argparse.ArgumentTypeError(
            f"{text} is in the future: give the day it was built, or leave it out"
        )
    return day


def _dpi(text: str) -> int:
    """The dots per inch of a printer, within the bounds that TAGGER_PRINTER_DPI has."""
    if not text.isdecimal() or not 100 <= int(text) <= 1200:
        raise argparse.ArgumentTypeError(f"{text} is not a printer's: give 100 to 1200 dots per inch")
    return int(text)


def _diameter(text: str) -> float:
    """The outside diameter of a hose in mm."""
    try:
        value = float(text)
    except ValueError:
        value = 0.0
    if not 1 <= value <= 1000:  # false for "nan" too
        raise argparse.ArgumentTypeError(f"{text} is not a hose's diameter: give 1 to 1000 mm")
    return value


def _add_out(one: argparse._ActionsContainer, *, required: bool = False) -> None:
    one.add_argument("--out", type=Path, required=required, metavar="FILE", help="a .pdf or a .png file")


def _add_template(one: argparse.ArgumentParser, own_dots: str = "") -> None:
    one.add_argument(
        "--template", metavar="NAME",
        help="a template's name, or its .toml file (TAGGER_LABEL_TEMPLATE, hang_tag)",
    )  # fmt: skip
    about = f"the printer's dots per inch (TAGGER_PRINTER_DPI, 203{own_dots})"
    one.add_argument("--dpi", type=_dpi, metavar="N", help=about)


def _add_printing(one: argparse.ArgumentParser, own_dots: str = "") -> None:
    _add_template(one, own_dots)
    one.add_argument(
        "--start", type=int, default=1, metavar="N", help="first free label of a part-used sheet (1)"
    )
    one.add_argument(
        "--languages",
        metavar="L,L",
        help="one or two of en, fr, es, de; by default the template's, or TAGGER_LANGUAGE",
    )
    one.add_argument("--force", action="store_true", help="print even where preflight refuses")
