"""How an end is told to be tightened: what must not be told of it."""

from __future__ import annotations

from tagger.spec import End, Tightening
from tagger.trade import tightened
from tagger.trade.tables import tables


def test_a_count_whose_start_no_source_states_is_not_told() -> None:
    end = End.model_validate({"connection": "sae_37_flare", "dash": 12, "form": "female_swivel"})
    torque = {"torque_min_nm": 103, "torque_max_nm": 115, "flats_min": 1, "flats_max": 1.25}
    stated = Tightening.model_validate({**torque, "flats_basis": "finger_tight"})
    unstated = Tightening.model_validate({**torque, "flats_basis": "not_stated"})
    assert len(tightened.lines(stated, end, tables())) == 2
    assert len(tightened.lines(unstated, end, tables())) == 1


def test_the_torque_of_a_nut_on_an_end_without_one_is_told_as_the_nuts() -> None:
    stud = End.model_validate({"connection": "bspp", "size": "1/4", "form": "male"})
    [line] = tightened.lines(Tightening(torque_min_nm=24.5, torque_max_nm=24.5), stud, tables())
    assert line.id == "words-torque-of-nut"
