"""Tags to a PDF file: page operators written here, a file that is streamed."""

from tagger.printing.pdf.write import write

__all__ = ["write"]
