"""What several rooms of the web need: files, lists, papers and look-ups. No routes."""
