"""How wide a symbol may be on a hose: the geometry, and a real reader on a simulated hose."""

import pytest

from tagger.printing.curvature import edge_foreshortening, thinnest_hose_mm, widest_mm


def test_a_thicker_hose_takes_a_wider_symbol():
    widths = [widest_mm(8, "H", float(od)) for od in (14, 18, 22, 28, 36, 48, 66)]
    assert widths == sorted(widths)
    assert all(
        0.5 < width / od < 0.75 for width, od in zip(widths, (14, 18, 22, 28, 36, 48, 66), strict=True)
    )


def test_more_error_correction_takes_a_wider_symbol():
    assert widest_mm(8, "H", 28.0) > widest_mm(8, "M", 28.0) > widest_mm(8, "L", 28.0)


def test_symbols_that_name_their_version_may_be_wider():
    """From version 7 on a symbol carries its version; below, a reader guesses it from the finders."""
    assert widest_mm(7, "Q", 28.0) > 1.2 * widest_mm(6, "Q", 28.0)


def test_the_thinnest_hose_is_the_other_way_round():
    od = thinnest_hose_mm(8, "H", 18.4)
    assert widest_mm(8, "H", od) == pytest.approx(18.4, rel=0.01)
    assert widest_mm(8, "H", od - 1) < 18.4


def test_edges_foreshorten_with_the_cosine():
    assert edge_foreshortening(0, 28) == 1
    assert edge_foreshortening(28, 28) == pytest.approx(0.5403, abs=1e-4)  # one radian to each side
    assert edge_foreshortening(50, 28) == 0


@pytest.mark.parametrize("od", [15.0, 29.0, 47.0])
def test_a_reader_agrees_on_a_simulated_hose(od):
    """Four fifths of the widest reads, twice does not; make survive finds the limit between."""
    import numpy as np

    from tagger.code.symbol import qr
    from tagger.printing.curvature import distance_mm
    from tagger.printing.readers import qr_readers
    from tests.speed.damage import wrapped

    link = "HTTPS://TAGS.EXAMPLE-HOSE-SHOP.COM/T/7K3MQ9XW2R1/" + "271828" * 15
    symbol = qr(link, "H")
    widest = widest_mm(symbol.version, "H", od)
    for share, reads in ((0.8, True), (1.6, False)):
        side = share * widest
        seen = wrapped(symbol.modules, side, od, distance_mm(side), np.random.default_rng(1))
        found = sum(link in read(seen) for read in qr_readers(1).values())
        assert (found >= 2) is reads
