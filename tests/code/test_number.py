"""Tag numbers: made, checked, forgiving of how they are typed."""

from __future__ import annotations

import pytest

from tagger.code import number
from tagger.errors import NumberError


def test_made_numbers_are_valid_and_differ() -> None:
    made = {number.make() for _ in range(500)}
    assert len(made) == 500
    assert all(number.is_valid(one) for one in made)


def test_every_character_comes_at_every_place() -> None:
    """That one is missing by chance has odds of 1 to 10^24."""
    made = [number.make() for _ in range(2_000)]
    for place in range(number.LENGTH):
        assert {one[place] for one in made} == set(number.ALPHABET)


@pytest.mark.parametrize("typed", ["7k3mq9xw2r1", "7K3MQ-9XW2R1", " 7k3mq 9xw2rI", "7K3MQ-9XW2Rl"])
def test_case_dashes_and_look_alikes_do_not_matter(typed: str) -> None:
    assert number.validate(typed) == "7K3MQ9XW2R1"


def test_every_single_wrong_character_is_noticed() -> None:
    good = "7K3MQ9XW2R1"
    for place in range(len(good)):
        for other in number.ALPHABET:
            if other != good[place]:
                assert not number.is_valid(good[:place] + other + good[place + 1 :])


def test_nearly_every_swap_of_neighbours_is_noticed() -> None:
    swaps = caught = 0
    for _ in range(200):
        good = number.make()
        for place in range(len(good) - 1):
            if good[place] != good[place + 1]:
                swaps += 1
                swapped = good[:place] + good[place + 1] + good[place] + good[place + 2 :]
                caught += not number.is_valid(swapped)
    assert caught / swaps > 0.95


def test_a_strange_character_is_named_with_its_place() -> None:
    with pytest.raises(NumberError, match='"U" at position 3'):
        number.validate("7KUMQ-9XW2R1")


def test_a_missing_character_is_counted() -> None:
    with pytest.raises(NumberError, match="10 of the 11 characters"):
        number.validate("7K3MQ-9XW2R")


def test_a_usual_slip_is_answered_with_what_was_meant() -> None:
    with pytest.raises(NumberError, match="7K3MQ-9XW2R1"):
        number.validate("7K3MQ-9WX2R1")


def test_a_look_alike_letter_is_answered_with_what_was_meant() -> None:
    """8 for B, and the like: the program that makes the pairs is not asked for them."""
    meant = 0
    for made in (number.make() for _ in range(200)):
        for one, other in ("8B", "B8", "5S", "S5", "MN", "0Q"):
            place = made.find(one)
            if place >= 0:
                slip = made[:place] + other + made[place + 1 :]
                assert made in number.near(slip)
                meant += 1
    assert meant > 50


def test_at_most_three_numbers_are_offered() -> None:
    slips = (made[:4] + "8" + made[5:] for made in (number.make() for _ in range(5000)))
    several = next(slip for slip in slips if len(number.near(slip)) > 3 and not number.is_valid(slip))
    with pytest.raises(NumberError) as refused:
        number.validate(several)
    assert len(refused.value.problems[0].message.values["numbers"]) == 3
