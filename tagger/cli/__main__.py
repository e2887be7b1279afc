"""``python -m tagger.cli`` is the same as the command ``tagger``."""

import sys

from tagger.cli import main

if __name__ == "__main__":
    sys.exit(main())
