"""Printing: templates, layout, PDF, raster, preflight and network printers."""
