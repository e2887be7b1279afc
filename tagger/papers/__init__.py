"""Papers of running text: the certificates of proof tests on A4, the fitter's card on A6."""
