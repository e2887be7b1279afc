"""Papers of running text: the traveller, and letters about a withdrawal."""
