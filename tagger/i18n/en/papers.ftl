# Papers: the certificate of a proof test, letters about a withdrawal, the call list.

## Captions that several papers share

papers-tag-number = Tag number
papers-hose = Hose
papers-hose-assembly = Hose assembly
papers-machine-position = Machine, position
papers-built-on = Built on
papers-customer = Customer
papers-with-lot = { $part }, lot { $lot }

## The certificate

papers-no-proof-test = Tag { $number } has no proof test on record.
    .mend = Record a proof test first.
papers-issued-anew = Issued anew on { $day } after a correction of the record; it replaces the certificate issued before. { LIST($fields) }.
papers-corrected = { $field }: { $new } instead of { $old }
papers-field-hose-lot = Hose lot
papers-field-end_a-lot = Fitting lot, end A
papers-field-end_b-lot = Fitting lot, end B
papers-field-note = Note
papers-proof-title = Proof test certificate - hose assembly
papers-proof-file-title = Proof test of { $number }
papers-proof-result-line = { $result ->
        [passed] Tag { $number }: passed
        [tested] Tag { $number }: tested at { $pressure }
        [held] Tag { $number }: HELD - do not use
        [outdated] Tag { $number }: TESTED BEFORE IT WAS CRIMPED - test again
       *[failed] Tag { $number }: FAILED - do not use
     }
papers-proof-withdrawn-line = Tag { $number }: WITHDRAWN - do not use ({ LIST($reasons) })
papers-proof-crimp-line = Tag { $number }: CRIMP OUT OF TOLERANCE - do not use
papers-tested-title = Pressure test certificate - hose assembly
papers-end-a = End A
papers-end-b = End B
papers-length = Length
papers-clocking = Clocking angle
papers-working-pressure = Maximum working pressure
papers-working-pressure-source = Source of working pressure
papers-tighten-a = Tightening, end A
papers-tighten-b = Tightening, end B
papers-torque = { $torque }, { $basis } ({ $source })
papers-fluid = Fluid
papers-temperature = Maximum temperature
papers-danger = Caution
papers-test = The test
papers-result = Result
papers-result-said = { $result ->
        [passed] passed
        [tested] tested at { $pressure }
        [held] held
        [outdated] tested before it was crimped: the test does not count
       *[failed] failed
     }
papers-result-why = Meaning
papers-rating-given = Working pressure for the test
papers-rating-given-said = { $pressure }, source: { $source }
papers-allowed = Allowed in writing by
papers-allowed-said = { $who }, { $day }, { $document }
papers-flushing = Flushing
papers-flushed = { $method }; { $who }, { $day }
papers-pressure = Pressure
papers-pressure-required = Required
papers-not-recorded = not recorded
papers-hold-time = Hold time
papers-hold = { $held } s
papers-hold-least = { $held } s (required: at least { $least } s)
papers-hold-range = { $held } s (required: { $least } to { $most } s)
papers-hold-longer = { $held } s (required: { $least } to { $most } s; longer than required)
papers-medium = Test medium
papers-tested-by = Tested by
papers-recorded = Recorded
papers-recorded-at = { $day } { $time } UTC
papers-note = Note
papers-crimps = Crimp diameters
papers-crimp = { $holds ->
        [in] { $measured } mm, required { $low } to { $high } mm ({ $shell }; { $source }): within tolerance
       *[out] { $measured } mm, required { $low } to { $high } mm ({ $shell }; { $source }): OUT OF TOLERANCE
     }
papers-proof-limits = This certificate records one test of this assembly on the date shown. It does not describe its later condition: inspect the assembly before use. The hose and fitting manufacturers' data take precedence.
papers-own-statement = This is the own statement of { $shop } about its work and its tests. It is not an inspection certificate of an independent body.
papers-chain = Records up to link { $head } of the chain. "tagger audit --head" with it shows whether any were changed since.
## The fitter's card, in the bag with the hose assembly

papers-card-title = Installing this hose assembly
papers-card-file-title = Fitter's card { $number }
papers-card-scan = Scan the code before you install: the page says if the hose assembly has been withdrawn or a value has changed since this card was printed.
papers-card-end = { $end }: { $what }
papers-card-screen = { $n }. { $title }
papers-card-screen-end = { $n }. { $title }: end { $end }
papers-card-sources = Sources: { LIST($sources) }
papers-order = Order reference
papers-method = Method
papers-gauge = Gauge
papers-gauge-valid-until = Calibration of the gauge valid until
papers-no-batch = Tag { $number } was not proof-tested in a batch.
    .mend = Use the certificate of this hose assembly.
papers-batch-file-title = Proof test, batch { $batch }
papers-batch-title = Proof test certificate - batch of hose assemblies
papers-batch-tested-title = Pressure test record - batch of hose assemblies
papers-batch-number = Certificate { $batch }
papers-batch-result = Proof test passed: { $passed } of { $count }
papers-batch-not-all = Not every hose assembly passed the proof test: read the result of each one below.
papers-batch-members = Hose assemblies tested: { $count }
papers-batch-crimp = { $holds ->
        [in] { $measured } mm ({ $low } to { $high })
       *[out] { $measured } mm ({ $low } to { $high }): OUT OF TOLERANCE
     }
papers-batch-withdrawn = WITHDRAWN - do not use
papers-batch-void = VOID - do not use
papers-batch-tested-again = tested again on { $day }: see its own certificate
papers-batch-limits = This certificate records one test of these assemblies on the date shown. It does not describe their later condition: inspect each assembly before use. The hose and fitting manufacturers' data take precedence.

## Letters about a withdrawal

papers-letter-title = Withdrawal { $withdrawal }
papers-letter-owner = To the owner of these hoses
papers-letter-heading = Do not use the hose assemblies listed here
papers-letter-made-from = They were made from hose lot { $lot }.
papers-letter-fittings = They have fittings from lot { $lot }.
papers-letter-reason = They are withdrawn. Reason: { $reason }
papers-letter-steps = Stop the machine and lock it out. Release all stored pressure as described in the machine manual. Check the tag number on each hose, take the hoses listed here out of service and call us: we will replace them.
papers-letter-injury = Oil under pressure that enters the skin is an emergency, however small the wound: go to hospital at once.

## The call list

papers-call-customer = Customer
papers-call-number = Tag number
papers-call-machine = Machine
papers-call-position = Position
papers-call-hose = Hose
papers-call-lots = Lots
papers-call-built_on = Built on
papers-call-replaced_by = Replaced by
papers-call-contact = Contact
papers-call-phone = Phone
papers-call-email = Email

## A customer's list read in

papers-list-too-large = The file { $name } is larger than the { $most } MB limit.
    .mend = Split it into several lists.
papers-list-no-rows = The file { $name } has no data rows.
    .mend = Add one row for each spec.
papers-list-column-not-read = No field is known for the heading “{ $heading }”, and the column is filled.
    .mend = Match the column to a field, leave it out, or delete it from the list.
papers-list-word-not-known = “{ $word }” is not a known word.
    .mend = Choose what it means. The nearest: { LIST($nearest) }.
papers-list-cell-outside = This cell stands to the right of the heading row. A decimal comma may have split a value in two.
    .mend = Check the row: write 49.25, or put "49,25" in quotation marks, and delete what is left over.
papers-list-too-many-rows = The file { $name } has more than { $most } rows.
    .mend = Split it into several lists.
papers-list-matched-twice = The field { $column } is matched twice.
    .mend = Match each field once.
papers-list-damaged = The list was damaged in transfer.
    .mend = Upload the file again.

## A tag or a lot that was scanned at the bench

papers-scanned-tag = Spec copied from tag { $number }.
papers-scanned-tag-withdrawn = Spec copied from tag { $number }. WITHDRAWN, do not use: { $reasons }
papers-scanned-tag-unknown = Tag { $number } is not in our records: the spec comes from the tag alone. Check it against the hose before you build.
papers-scanned-tag-differ = Tag { $number }: the tag and our record differ. The spec comes from the record. Find out which is correct before you build.
papers-scanned-tag-differ-withdrawn = Tag { $number }: the tag and our record differ. The spec comes from the record. Find out which is correct before you build. WITHDRAWN, do not use: { $reasons }
papers-scanned-tag-damaged = Tag { $number }: the code on the tag is damaged. The spec comes from our record. Check it against the hose.
papers-scanned-tag-damaged-withdrawn = Tag { $number }: the code on the tag is damaged. The spec comes from our record. Check it against the hose. WITHDRAWN, do not use: { $reasons }
papers-scanned-signature = { $said } Signature: { $signature }.
papers-scanned-signature-broken = { $said } Signature: { $signature }. { $why }
papers-scanned-hose-lot = Hose lot { $lot }: { LIST($hoses) }.
papers-scanned-hose-lot-withdrawn = Hose lot { $lot }: { LIST($hoses) }. WITHDRAWN, do not use: { $reasons }
papers-scanned-fitting-lot = Fitting lot { $lot }.
papers-scanned-fitting-lot-withdrawn = Fitting lot { $lot }. WITHDRAWN, do not use: { $reasons }
papers-scanned-unknown = { $text }: first use of this lot.
papers-scanned-unknown-withdrawn = { $text }: first use of this lot. WITHDRAWN, do not use: { $reasons }
papers-scanned-nothing = Nothing was scanned. Scan the code again.
papers-scanned-hose = Part number { $part }: { LIST($hoses) }.
papers-scanned-fitting = Stock number { $number }: { $end }.

papers-export-everything = Everything kept in the tag system, as open formats (UTF-8).
papers-export-assemblies = one assembly a line: number, spec, what the tables said then, what the tag says
papers-export-table = the same as a table; its spec columns can be read in again as a list
papers-export-events = the history, oldest first
papers-export-orders = order requests with their steps
papers-export-withdrawals = withdrawals, those that hold and those that were lifted
papers-export-recipes = specs kept under a name
papers-export-crimps = crimp cards that hold now, each with its band and source; a crimp measured stands in events.jsonl with the band it was held against
papers-export-values = what manufacturers said of parts, as the shop keeps it; replaced and withdrawn values too
papers-export-fittings = the shop's fittings by stock number
papers-export-fitted = reports that an assembly was fitted, with what the shop decided
papers-export-photos = photos of orders and reports; each is the file photos/<id>.jpg
papers-export-left-out = Left out: people, devices, passwords and sessions, and messages not yet sent.
papers-export-digits = A tag's digits can be read without this system: its README tells the layout bit by bit.
