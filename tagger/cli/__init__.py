"""The command line: parses, calls, prints. Exit 0 done, 1 refused with reasons, 2 wrong usage."""

from __future__ import annotations

import argparse
import json
import os
import sys
from collections.abc import Callable, Sequence

from tagger.cli.commands import Answer
from tagger.cli.parser import make_parser
from tagger.errors import Problem, TaggerError

__all__ = ["main"]


def main(argv: Sequence[str] | None = None) -> int:
    """Runs one command. Returns the exit code."""
    arguments = make_parser().parse_args(argv)
    command: Callable[[argparse.Namespace], Answer] = arguments.command
    try:
        answer, text = command(arguments)
        print(json.dumps(answer, indent=2, ensure_ascii=False) if arguments.json else text)
        sys.stdout.flush()
    except TaggerError as error:
        return _refused(error, arguments.json)
    except BrokenPipeError:  # "tagger ... | head" has read enough
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return 0
    except OSError as error:  # a full disk, a folder that may not be written to
        place = str(error.filename2 or error.filename or "file")
        why = f"cannot be used: {error.strerror or error}"
        return _refused(
            TaggerError(Problem(place, None, why, "Check the path and the disk.")), arguments.json
        )
    return 1 if answer.get("ok") is False else 0


def _refused(error: TaggerError, as_json: bool) -> int:
    if as_json:
        print(json.dumps({"refused": [problem.as_dict() for problem in error.problems]}, ensure_ascii=False))
    print(error, file=sys.stderr)
    return 1
