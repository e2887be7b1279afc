"""How much memory a backup takes at most: ``python -m tests.store.backup_memory ROWS FOLDER`` prints the bytes.

A program of its own: in a process that other tests used, what they left behind is counted too.
"""

from __future__ import annotations

import gc
import sys
import tracemalloc
from pathlib import Path

from tagger.store import Store
from tests.store.samples import assessment, spec


def peak(rows: int, folder: Path) -> int:
    """Bytes at most that a backup of ``rows`` assemblies holds at once."""
    with Store.open(f"sqlite:///{folder}/{rows}.sqlite3") as store:
        store.register(spec(), assessment(), count=rows)
        gc.collect()
        tracemalloc.start()
        try:
            store.backup(folder / f"{rows}.copy")
            return tracemalloc.get_traced_memory()[1]
        finally:
            tracemalloc.stop()


if __name__ == "__main__":
    print(peak(int(sys.argv[1]), Path(sys.argv[2])))
