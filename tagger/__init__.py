"""Assembly tags: the spec of a hydraulic hose assembly, carried on the hose itself."""

__version__ = "1.0.0"
