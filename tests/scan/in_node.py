"""The phone's own modules run in Node, outside a browser: those that import nothing need none."""

from __future__ import annotations

import base64
import json
import subprocess
from pathlib import Path
from typing import Any

_READER = Path(__file__).parents[2] / "api" / "static" / "reader"


def in_node(modules: dict[str, str], code: str, given: Any) -> Any:
    """What ``code`` passes to ``answer``; it finds ``given``, and of each module the names that it is to import."""
    imports = ""
    for name, takes in modules.items():
        packed = base64.b64encode((_READER / name).read_bytes()).decode()
        imports += f'const {{ {takes} }} = await import("data:text/javascript;base64,{packed}");\n'
    reads = 'import { readFileSync } from "node:fs"; const given = JSON.parse(readFileSync(0, "utf8"));\n'
    answers = "const answer = (found) => console.log(JSON.stringify(found));\n"
    command = ["node", "--input-type=module", "-e", reads + imports + answers + code]
    done = subprocess.run(command, input=json.dumps(given), capture_output=True, text=True, timeout=300)
    assert not done.returncode, done.stderr
    return json.loads(done.stdout)
