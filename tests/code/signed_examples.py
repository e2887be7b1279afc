"""Signed tags: ``python -m tests.code.signed_examples > tests/golden/signed_1.json`` prints them.

Vectors are only ever added. Their keys are those of RFC 8032's tests, which everybody knows.
"""

from __future__ import annotations

import json
from typing import Any

from tagger.code import payload, signature
from tagger.signing import Keys
from tests.code.payload_examples import EXAMPLES
from tests.outside.published import rows

NUMBER, ANOTHER = "7K3MQ9XW2R1", "00000000001"
SECRETS = [bytes.fromhex(row["secret"]) for row in rows("ed25519_rfc8032.csv")]
PUBLIC = [signature.public_of(secret).hex() for secret in SECRETS]
KEYS = Keys.model_validate(
    {
        "keys": [
            {"id": 1, "public": PUBLIC[0], "from": "2020-01-01", "until": "2026-11-25"},
            {
                "id": 2,
                "public": PUBLIC[1],
                "from": "2026-11-25",
                "until": "2026-11-26",
                "withdrawn": "2026-11-26",
            },
            {"id": 3, "public": PUBLIC[2], "from": "2026-11-26"},
        ],
        "private": SECRETS[2].hex(),
    }
)


def signed(name: str, key_id: int = 3, number: str = NUMBER, secret: int | None = None) -> str:
    """The digits of an example, signed for ``number`` under ``key_id`` with the key of that place."""
    own = SECRETS[key_id - 1 if secret is None else secret]
    return signature.sealed(number, payload.encode(EXAMPLES[name]), key_id, own)


def vectors() -> list[dict[str, Any]]:
    """Digits, and how they stand to KEYS as the tag of NUMBER."""
    plain, built_later = payload.encode(EXAMPLES["contract_example"]), "two_elbows_every_figure"
    found = [(name, name, signed(name)) for name in EXAMPLES]
    found += [
        ("an_older_key", "contract_example", signed("contract_example", 1)),
        ("built_after_its_key_ended", built_later, signed(built_later, 1)),
        ("no_day_and_an_older_key", "nothing_optional", signed("nothing_optional", 1)),
        ("a_withdrawn_key", "contract_example", signed("contract_example", 2)),
        ("an_unknown_key", "contract_example", signed("contract_example", 4)),
        ("key_zero", "contract_example", signed("contract_example", 0, secret=2)),
        ("another_key_than_it_names", "contract_example", signed("contract_example", 3, secret=0)),
        ("signed_for_another_number", "contract_example", signed("contract_example", number=ANOTHER)),
        ("not_signed", "contract_example", plain),
    ]
    return [
        {
            "name": name,
            "number": NUMBER,
            "digits": digits,
            "payload": payload.unsealed(digits)[0],
            "built_on": EXAMPLES[of].built_on and EXAMPLES[of].built_on.isoformat(),
            "state": state.as_dict()
            if (state := KEYS.state(NUMBER, digits, EXAMPLES[of].built_on))
            else None,
        }
        for name, of, digits in found
    ]


if __name__ == "__main__":
    print(json.dumps({"keys": KEYS.as_published(), "vectors": vectors()}, indent=1))
