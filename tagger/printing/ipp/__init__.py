"""Network printers by IPP. Only `tagger.printing.printer` imports this room: others ask there for a printer."""
