# What a phone says by itself, without a signal.

## Refusals

offline-no-signal = No signal
offline-scan-a-tag = Scan the QR code on a tag. It works without a signal.
offline-order = What became of an order cannot be seen without a signal.
    .mend = Try again with a signal, or call the shop.
offline-identify = Which connection an end has cannot be worked out without a signal.
    .mend = For each end write down: form, thread diameter, pitch and seat. Enter them here with a signal, or call the shop.
offline-identified = Ordering the hose between the ends needs a signal.
    .mend = Write down both ends, or keep this page, and continue with a signal. Or call the shop.
offline-number-alone = A tag number alone does not contain the specification, and there is no signal.
    .mend = Scan the QR code instead: it works without a signal.
offline-number-withdrawn = This shop has withdrawn this hose. Do not use it.
    .mend = Do not install it. If it is installed, stop the machine, release the pressure and remove it. Ask the shop.
offline-number-void = VOID: this hose assembly must not be fitted. Its record was entered by mistake.
    .mend = Do not install it. Ask the shop.
offline-number-held = The shop has not released this hose assembly. Do not install it.
    .mend = Ask the shop. If it is installed, stop the machine, release the pressure and remove it.
offline-newer-tag = This tag is newer than the data on this phone.
    .mend = Open any tag page once with a signal to update this phone.
offline-newer-part = This tag lists a part that is not yet on this phone.
    .mend = Open any tag page once with a signal to update this phone.

## Above a tag that was read without a signal

offline-tag-only = No signal: shown from the tag only
offline-withdrawn-unknown = The data shown come from the tag only. To see whether the hose assembly has been withdrawn, check again with a signal or ask the shop.
offline-withdrawn-as-of = The data shown come from the tag only. The shop's list of { $day }, { $time }, does not name this hose as withdrawn; what came later is not known. Check again with a signal or ask the shop.
offline-barred = The data shown come from the tag only. Do not install this hose assembly, for the reason above. Ask the shop.
offline-withdrawn-reason = The shop has withdrawn it. Ask the shop for the reason.
offline-withdrawn-listed = In the shop's list of { $day }, { $time }
