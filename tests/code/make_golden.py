"""Prints the golden vectors: ``python -m tests.code.make_golden > tests/golden/payload_v2.json``.

Vectors are only ever added. A changed one means that printed tags no longer read.
"""

from __future__ import annotations

import json

from tagger.code import payload
from tests.code.payload_examples import EXAMPLES


def main() -> None:
    vectors = []
    for name, content in EXAMPLES.items():
        digits = payload.encode(content)
        decoded = payload.decode(digits)
        vectors.append(
            {
                "name": name,
                "digits": digits,
                "spec": decoded.spec.as_dict(),
                "content": decoded.model_dump(mode="json", exclude={"spec"}, exclude_none=True),
            }
        )
    print(json.dumps(vectors, indent=1, ensure_ascii=False))


if __name__ == "__main__":
    main()
