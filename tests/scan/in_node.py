"""The phone's own modules run in Node, outside a browser: those that touch no page need none."""

from __future__ import annotations

import base64
import json
import re
import subprocess
from pathlib import Path
from typing import Any

_READER = Path(__file__).parents[2] / "api" / "static" / "reader"


def in_node(modules: dict[str, str], code: str, given: Any) -> Any:
    """What ``code`` passes to ``answer``; it finds ``given``, and of each module the names that it is to import."""
    imports = ""
    for name, takes in modules.items():
        imports += f'const {{ {takes} }} = await import("{_packed(name)}");\n'
    reads = 'import { readFileSync } from "node:fs"; const given = JSON.parse(readFileSync(0, "utf8"));\n'
    answers = "const answer = (found) => console.log(JSON.stringify(found));\n"
    command = ["node", "--input-type=module", "-e", reads + imports + answers + code]
    done = subprocess.run(command, input=json.dumps(given), capture_output=True, text=True, timeout=300)
    assert not done.returncode, done.stderr
    return json.loads(done.stdout)


def _packed(name: str) -> str:
    """A module as an address that holds it, with what it imports of ours in it."""
    text = (_READER / name).read_text(encoding="utf-8")
    text = re.sub(r'from "\./([\w.-]+)"', lambda found: f'from "{_packed(found[1])}"', text)
    return "data:text/javascript;base64," + base64.b64encode(text.encode()).decode()
