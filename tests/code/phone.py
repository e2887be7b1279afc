"""The scripts of the public pages, as they are served, in a JavaScript engine without a browser."""

from __future__ import annotations

import json
import subprocess
from pathlib import Path
from typing import Any

from api.scan import scripts


class Phone:
    """``run`` gives a module's printed JSON; it finds the served scripts under ``./scripts/``, and what
    it is asked in ``./asked.json``."""

    def __init__(self, folder: Path) -> None:
        self.folder = folder
        (folder / "package.json").write_text('{"type": "module"}', encoding="utf-8")
        for name in scripts.names():
            file = folder / "scripts" / name
            file.parent.mkdir(parents=True, exist_ok=True)
            file.write_text(scripts.small(name), encoding="utf-8")

    def run(self, module: str, asked: object) -> Any:
        (self.folder / "asked.json").write_text(json.dumps(asked), encoding="utf-8")
        file = self.folder / "asking.js"
        start = (
            'import { readFileSync } from "node:fs";\nconst asked = JSON.parse(readFileSync("asked.json"));\n'
        )
        file.write_text(start + module, encoding="utf-8")
        done = subprocess.run(
            ["node", file.name], cwd=self.folder, capture_output=True, text=True, check=False, timeout=60
        )
        assert done.returncode == 0, done.stderr
        return json.loads(done.stdout)
