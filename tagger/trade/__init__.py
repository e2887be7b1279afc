"""What the trade knows: pure functions over data files."""

from tagger.trade.assess import assess
from tagger.trade.results import Assessment

__all__ = ["Assessment", "assess"]
