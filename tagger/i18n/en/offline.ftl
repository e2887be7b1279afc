# What a phone says by itself, without a signal.

## Refusals

offline-no-signal = No signal
offline-scan-a-tag = Scan the QR code on a tag. It works without a signal.
offline-number-alone = A tag number alone does not contain the specification, and there is no signal.
    .mend = Scan the QR code instead: it works without a signal.
offline-newer-tag = This tag is newer than the data on this phone.
    .mend = Open any tag page once with a signal to update this phone.
offline-newer-part = This tag lists a part that is not yet on this phone.
    .mend = Open any tag page once with a signal to update this phone.

## Above a tag that was read without a signal

offline-tag-only = No signal: shown from the tag only
offline-withdrawn-unknown = The data shown come from the tag only. To see whether the hose assembly has been withdrawn, check again with a signal or ask the shop.
