"""The command line: parses, calls, prints. Exit 0 done, 1 refused with reasons, 2 wrong usage."""

from __future__ import annotations

import argparse
import json
import os
import sys
from collections.abc import Callable, Sequence

from tagger.cli.commands import Answer
from tagger.cli.language import language_of, translate_argparse
from tagger.cli.parser import make_parser
from tagger.cli.refusal import refusal_text
from tagger.errors import Problem, TaggerError
from tagger.i18n import Translator
from tagger.intake import unusable

__all__ = ["main"]


def main(argv: Sequence[str] | None = None) -> int:
    """Runs one command in the language it is asked for. Returns the exit code."""
    argv = sys.argv[1:] if argv is None else argv
    t = Translator(language_of(argv))
    translate_argparse(t)
    arguments = make_parser(t, argv).parse_args(argv)
    command: Callable[[argparse.Namespace, Translator], Answer] = arguments.command
    try:
        answer, text = command(arguments, t)
        print(json.dumps(answer, indent=2, ensure_ascii=False) if arguments.json else text)
        sys.stdout.flush()
    except TaggerError as error:
        return _refused(error, arguments.json, t)
    except BrokenPipeError:  # "tagger ... | head" has read enough
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return 0
    except OSError as error:  # a full disk, a folder that may not be written to
        place = str(error.filename2 or error.filename or "file")
        return _refused(TaggerError(Problem(place, None, unusable(error))), arguments.json, t)
    except Exception as error:
        if (trouble := _trouble(error)) is None:
            raise
        return _refused(trouble, arguments.json, t)
    return 1 if answer.get("ok") is False else 0


def _trouble(error: Exception) -> TaggerError | None:
    """What is wrong with the database, if it is at fault; most commands never load what talks to it."""
    if "tagger.store" not in sys.modules:
        return None
    from tagger.store.trouble import trouble_of

    found = trouble_of(error)
    return TaggerError(found.problem) if found else None


def _refused(error: TaggerError, as_json: bool, t: Translator) -> int:
    if as_json:
        print(json.dumps({"refused": [problem.as_dict(t) for problem in error.problems]}, ensure_ascii=False))
    print(refusal_text(error, t), file=sys.stderr)
    return 1
