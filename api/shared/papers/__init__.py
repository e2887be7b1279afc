"""Papers of running text: the certificate of a proof test, and letters about a withdrawal."""
