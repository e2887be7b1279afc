"""What the fields of a refused input are called on a page."""

from __future__ import annotations

from tagger.words import N_

_OF_AN_END = ("", ".dash", ".size", ".form", ".shape", ".drop_mm", ".hose_dash", ".connection")

LABELS = {
    "spec": N_("Hose"),
    "number": N_("Tag number"),
    "digits": N_("The digits in the link"),
    "link": N_("Link"),
    "address": N_("Address"),
    "image": N_("Photo"),
    "quantity": N_("How many"),
    "needed_by": N_("Needed by"),
    "reference": N_("Your reference"),
    "contact.phone": N_("Telephone"),
    "contact.email": N_("E-mail"),
    "contact.name": N_("Name"),
    "contact.company": N_("Company"),
    "changes": N_("What must be different"),
    "form": N_("What is it?"),
    "thread_od": N_("Thread diameter"),
    "thread_id": N_("Thread diameter"),
    "tpi": N_("Threads per inch"),
    "pitch": N_("or pitch in mm"),
    "seat": N_("Seat"),
    "cone": N_("Cone"),
    "tube_od": N_("Tube outside diameter"),
    "hex": N_("Nut across its flats"),
    "flange_od": N_("Flange head diameter"),
    "bolt_spacing": N_("Bolt spacing, centre to centre, longer side"),
    "measurements": N_("Measurements"),
    "end": N_("Ends"),
    "hose.standard": N_("Hose standard"),
    "hose.dash": N_("Hose dash size"),
    "length_mm": N_("Overall length"),
    "clocking_deg": N_("Clocking angle"),
    **{f"end_a{field}": N_("End A") for field in _OF_AN_END},
    **{f"end_b{field}": N_("End B") for field in _OF_AN_END},
}

# Sentences of the library that are put together from pieces, so that no module holds them whole.
SENTENCES = (
    N_("{0} and {1} ({2}) {3}."),
    N_("{0} at place {1}"),
    N_("Forms are: {0}."),
    N_("Sizes are {0}, ..."),
    N_("not known: use the fitting maker's"),
    N_('a length such as 1250, "1250 mm" or "49 1/4 in"'),
)
