"""What the trade knows: pure functions over data files."""

from tagger.trade.assessing import assess
from tagger.trade.assessment import Assessment

__all__ = ["Assessment", "assess"]
