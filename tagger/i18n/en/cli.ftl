# The command line: commands, options, refusals and answers.

## Commands

cli-description = Tags for hydraulic hose assemblies: the whole spec on the hose.
cli-about-identify = Identify a connection from what you know of it.
cli-about-hose-by-layers = Exclude hose standards by layers, diameters and lay line; rates nothing.
cli-about-check = Show rating, limits, tolerances, tightening and warnings. Registers nothing.
cli-about-compare = Compare two hose assemblies: does B replace A? Each is a spec file, the link of a tag, a photo or a tag number.
cli-about-tables = Check the tables of the trade, or report how much they know.
cli-about-schema = Print the JSON Schema of a spec.
cli-about-register = Give hose assemblies their tag numbers.
cli-about-print = Print the tags of registered hose assemblies.
cli-about-run = Register and print a whole list, all or nothing.
cli-about-read = Show what a tag says, without any database.
cli-about-show = Show the record of a tag and its history.
cli-about-lay-line = Read the line printed along a hose: standard, size, pressure.
cli-about-void = Make a record void before its tag is scanned or its assembly installed, tested or handed over.
cli-about-correct = Correct customer, machine, position, cleanliness, lots or note of a record.
cli-about-proof = Record a proof test of one or more assemblies, or tell what it must be.
cli-about-allow = Record the manufacturers' written allowance for an assembly that is held.
cli-about-overrated = List assemblies registered above today's ratings.
cli-about-values = The shop's own values by manufacturers: list them, withdraw one.
cli-about-templates = List the label templates.
cli-about-preflight = Check whether a tag will scan.
cli-about-serve = Run the web application.
cli-about-demo = Load an invented shop's week and serve it on this machine, to try everything.
cli-about-backup = Write a consistent, verified copy of the records.
cli-about-restore = Restore a verified copy into an empty database.
cli-about-drill = Restore a backup into a scratch database and compare: would it serve today?
cli-about-audit = Check the chain over all records and their history: its first break, or its last link.
cli-about-move = Move all records to another, empty database and compare every row.

## Options

cli-option-json = answer as JSON
cli-option-lang = language: { LIST($languages, style: "or") } (TAGGER_LANGUAGE)
cli-option-choices = one of: { LIST($choices, style: "or") }
cli-option-cone = where the sealing cone is: { LIST($choices, style: "or") }
cli-option-thread-od = outside diameter of a male thread
cli-option-thread-id = inside diameter of a female thread
cli-option-pitch = thread pitch in mm
cli-option-hex = hexagon across flats
cli-option-tube-od = outside diameter of the tube
cli-option-side = where the thread is: { LIST($choices, style: "or") }
cli-option-swivels = whether the threaded part turns on the end: { LIST($choices, style: "or") }
cli-option-shape = whether the thread is parallel or a taper: { LIST($choices, style: "or") }
cli-option-seals = what seals: { LIST($choices, style: "or") }
cli-option-flank = angle of the thread flanks: { LIST($choices, style: "or") }
cli-option-nose = diameter of the nose, or of the socket that takes it
cli-option-series = series of a stud: { LIST($choices, style: "or") }
cli-option-origin = where the machine was made, breaks ties only: { LIST($choices, style: "or") }
cli-option-cannot = what cannot be measured, may be repeated: { LIST($choices, style: "or") }
cli-option-flange-od = diameter of the flange head
cli-option-bolt-spacing = longer distance between flange screws, centre to centre
cli-option-tpi = threads per inch
cli-option-length-example = { $what }: 27, "27 mm" or "1 1/16 in"
cli-option-spec = a spec file, or - for standard input
cli-option-lay-line = the text of the line, as printed
cli-option-length-bands = tolerance bands (default: TAGGER_LENGTH_BANDS, else those of the hose standard)
cli-option-keep = Keep the manufacturer's values in this spec as the shop's own, for every later assembly.
cli-option-all = Also list values that were replaced or withdrawn.
cli-option-withdraw = Withdraw the value of this number; give the reason with --reason.
cli-option-reason = Why the value is withdrawn.
cli-option-count = number of hose assemblies (default 1)
cli-option-keep-backups = Keep the latest N backups in the folder FILE and remove older ones.
cli-option-into = An empty database for the drill; without it, a temporary file.
cli-option-unsealed = Restore a backup of an older version, which carries no checksum.
cli-option-head = a last link noted earlier, from a backup or a certificate: it must still be in the chain
cli-option-audit-backup = a backup: its last link must still be in the chain
cli-option-move-to = address of the empty database, such as postgresql://name@host/data; a password is best kept in the password file of PostgreSQL
cli-option-built-on = date of assembly (default: today)
cli-option-record = goes into the record, never into the QR code
cli-option-replaces = the tag of the hose assembly that this one replaces
cli-option-why = why; it stays in the history
cli-option-correct = the correct value; an empty text removes it
cli-option-proof-result = the result; without it, nothing is recorded
cli-option-proof-pressure = the pressure applied: bar, or with a unit
cli-option-proof-hold = the hold time in seconds
cli-option-proof-medium = the test medium: { LIST($media) }
cli-option-proof-tester = who made the test
cli-option-proof-note = a note
cli-option-proof-lower = the customer or standard that asks for a lower test
cli-option-proof-rating = the manufacturer's working pressure of the parts that are not known or unverified
cli-option-proof-rating-source = the source of this working pressure
cli-option-proof-rating-confirmed = this working pressure is right although it is above the tables
cli-option-proof-confirmed = this pressure was applied although it holds the assembly
cli-option-allow-by = the manufacturers who allow it
cli-option-allow-on = the date of the document
cli-option-allow-document = the document
cli-option-length-confirmed = the length is right although it is over 100 m
cli-option-pressure-confirmed = the working pressure in the spec is right although it is above the tables
cli-option-order = the order request it is built for
cli-option-changes-considered = the change that the order asks for was considered; the spec stays as ordered
cli-option-lot-reason = why a reel lot is used that is known as another hose: { LIST($reasons) }
cli-option-key = the same key registers only once, however often it is sent
cli-option-printer = a network printer: ipp://HOST/ipp/print or ipps://
cli-option-list = a .csv or .xlsx file, one row per spec
cli-option-what = a photo, or a scanned text
cli-option-hose-od = outside diameter of the hose (default: that of the tables)
cli-option-host = address to listen on (default: TAGGER_HOST, else 127.0.0.1)
cli-option-port = port to listen on (default: TAGGER_PORT, else 8000)
cli-demo-other-week = The records in { $folder } are not the invented week of this version.
    .mend = Delete that folder, or name another: tagger demo FOLDER.
cli-option-demo = the folder for its database and its tags (default: out)
cli-option-out = a .pdf or .png file; for a plate .svg or .dxf
cli-option-template = name of a template, or its .toml file (default: TAGGER_LABEL_TEMPLATE, else hang_tag)
cli-option-dpi = resolution in dpi (default: TAGGER_PRINTER_DPI, else 203)
cli-option-dpi-printer = resolution in dpi (default: that of the network printer, else TAGGER_PRINTER_DPI, else 203)
cli-option-start = first free label of a part-used sheet (default 1)
cli-option-languages = one or two languages of the tag: { LIST($languages, style: "or") } (default: those of the template, or TAGGER_LANGUAGE)
cli-option-force = print even if preflight refuses

## Wrong usage: what argparse says. The %(...)s are its own places

cli-usage-start = usage:
cli-usage-argument = argument %(argument_name)s: %(message)s
cli-usage-positional = positional arguments
cli-usage-options = options
cli-usage-help = show this help and exit
cli-usage-version = show the version and exit
cli-usage-unrecognized = unknown arguments: %s
cli-usage-not-allowed = cannot be combined with argument %s
cli-usage-ignored = unexpected value %r
cli-usage-required = missing arguments: %s
cli-usage-one-required = one of these arguments is required: %s
cli-usage-expects-one = expected one value
cli-usage-expects-some = expected at least one value
cli-usage-ambiguous = ambiguous option: %(option)s could be %(matches)s
cli-usage-invalid-value = invalid value: %(value)r
cli-usage-invalid-choice = invalid choice: %(value)r (possible: %(choices)s)
cli-usage-error = %(prog)s: error: %(message)s
cli-usage-date = { $value } is not a date. Enter the date as YYYY-MM-DD, for example 2027-03-31.
cli-usage-future = { $value } is in the future. Enter the date of assembly, or leave it out.
cli-usage-keep = At least one backup is kept.
    .mend = Enter 1 or more.
cli-usage-head = Not a link of the chain.
    .mend = Enter its number, a colon and at least 16 digits, such as 120:9f86d081884c7d65.
cli-usage-dpi = { $value } is not a printer resolution. Enter 100 to 1200 dpi.
cli-usage-diameter = { $value } is not a hose diameter. Enter 1 to 1000 mm.

## Refusals

cli-row = row { $row }
cli-row-field = row { $row }, { $field }
cli-column = column { $column }
cli-cell = cell { $cell }
cli-row-cell = row { $row }, cell { $cell }
cli-file = file
cli-heading = header row
cli-number = tag number
cli-spec = spec
cli-link = link
cli-digits = tag code
cli-image = image
cli-template = template
cli-printer = printer
cli-tag = tag
cli-list = list
cli-problem = { $place }: { $said }
cli-problem-value = { $place }: { $said } (value: { $value })
cli-not-a-file = There is no such image file.
    .mend = Check the file name.
cli-out-not-pdf-or-png = The file name ends neither in .pdf nor in .png.
    .mend = Use a name that ends in .pdf or .png.
cli-out-not-engraved = SVG and DXF are for plates, and this label is for a printer.
    .mend = Use --template metal_plate, or a file that ends in .pdf or .png.
cli-out-one-plate = A file for an engraver holds one plate.
    .mend = Enter one tag number for each file.
cli-out-no-folder = This is not an existing folder.
    .mend = Create the folder, or check the path.
cli-out-not-writable = Files cannot be written to this folder.
    .mend = Choose another folder.
cli-too-many-batches = This list was run ten thousand times.
    .mend = Change the list.
cli-run-meanwhile = This list was being printed by another run at the same time, and that one registered it.
    .mend = Look at the file that it wrote; to print the list a second time, run it again.
cli-run-proof-first = This shop prints no tag before the proof test has passed.
    .mend = Use a job card, for example --template traveller_a5, and print the tags after the proof tests.
cli-run-do-not-use = “{ $template }” is for hoses that must not be used; this command registers new ones.
    .mend = Use “tagger print” with the tag number.

## Answers

cli-tables-ok = The tables are consistent. Values: { $count } (published: { $published }, common practice: { $practice }, unverified: { $memory }, from the shop: { $shop }).
cli-withdrawn = WITHDRAWN, do not use: { $reason }
cli-void = VOID, do not fit: { $reason }
cli-void-done = The record of tag { $number } is void.
cli-correct-done = The record of tag { $number } is corrected.
cli-proof-required = Proof test: { $pressure }, held { $low } to { $high } s, with liquid
cli-proof-unknown = Proof test: the pressure is not known; held { $low } to { $high } s, with liquid
cli-proof-ask-rating = Enter the manufacturer's working pressure: { LIST($parts) }
cli-allow-done = The allowance for tag { $number } is recorded.
cli-proof-no-result = Passed or failed is missing: nothing was recorded.
    .mend = Use --result passed or --result failed.
cli-no-pressure-to-confirm = The spec has no working pressure to confirm.
    .mend = Enter one in the spec, or omit the option.
cli-pressure = Maximum working pressure: { $pressure }
cli-hose = Hose: { $hose }
cli-end = End { $end }: { $fitting }
cli-length = Length: { $length }
cli-clocking = Clocking angle: { $clocking }
cli-tightening = Tighten end { $end }: { $how }
cli-fluid = Fluid: { $fluid }
cli-maximum-temperature = Maximum temperature: { $temperature }
cli-vacuum = Maximum vacuum: { $vacuum }
cli-built-on = Built on: { $day }
cli-recorded = { $caption }: { $value }
cli-replaces = Replaces: { $value }
cli-replaced_by = Replaced by: { $value }
cli-replacement_built = A replacement is built, not installed yet: { $value }
cli-serving = Serving { $base } on { $host }:{ $port }. The bench is at { $base }/bench.
cli-stopped = Stopped.
cli-backed-up = { $file }: written and verified. { $rows }. SHA-256 { $digest }. Last link of the chain: { $head }
cli-restored = { $file }: restored and compared. { $rows }. SHA-256 { $digest }
cli-backed-up-kept = { $file }: written and verified. { $rows }. Kept: { $kept }. Removed: { $removed }. SHA-256 { $digest }. Last link of the chain: { $head }
cli-drilled = Restored into a scratch database and compared: { $file } is sound. { $rows }. SHA-256 { $digest }
cli-audited = The chain holds. Links: { $links }. { $rows }. Last link of the chain: { $head }
cli-audit-broken = The chain is broken. { $why } Nothing recorded after this place is proved. Compare with the last sound backup. Last link of the chain: { $head }
cli-moved = Moved and compared: { $rows } in { $tables } tables. SHA-256 { $digest } Now set TAGGER_DATABASE_URL to { $target }. Nobody may use the old database from now on. Everybody signs in again.
cli-rows = Rows: { $count }
cli-base-url-not-set = Note: TAGGER_BASE_URL is not set. The QR code opens { $base }, which only this computer can reach.
cli-run-done = Hose assemblies registered and printed: { $count }. Files: { LIST($files) }.
cli-scans = Will scan: QR version { $version }, level { $level }, modules { $module } mm = { $dots } dots, symbols on the label: { $symbols }, grade { $grade }, payload { $bytes } bytes
cli-scans-badly = WILL NOT SCAN RELIABLY: QR version { $version }, level { $level }, modules { $module } mm = { $dots } dots, symbols on the label: { $symbols }, grade { $grade }, payload { $bytes } bytes
cli-finding-refuse = Refused: { $text } { $mend }
cli-finding-warn = Caution: { $text } { $mend }
cli-finding-note = Note: { $text } { $mend }
cli-maybe-printed = It may have been printed; this could not be determined.
cli-job = { $printer }: job { $job }, { $state }
cli-job-said = { $printer }: job { $job }, { $state } ({ $said })
cli-progress-unit = tag

## What happened to a tag

cli-event-registered = registered
cli-event-crimped = crimp measured
cli-event-flushed = flushed
cli-event-proof_tested = proof-tested
cli-event-proof_allowed = high proof pressure allowed by the manufacturers
cli-proof-line = proof test { $result ->
        [passed] passed
        [tested] not passed: tested
        [held] HELD, do not use
        [outdated] not valid: tested before it was crimped
       *[failed] FAILED
     }: { $pressure }, { $hold } s
cli-event-printed = tag printed
cli-event-fitted = installed
cli-event-inspected = inspected
cli-event-scanned = scanned
cli-event-ordered = ordered again
cli-event-replaced = replaced
cli-event-corrected = corrected
cli-event-voided = made void
cli-event-replacement_built = replacement built
cli-event-removed = removed for good
cli-event-withdrawn = withdrawn
cli-event-withdrawal_lifted = withdrawal lifted

## How far a printer is with a job

cli-state-pending = waiting
cli-state-held = held
cli-state-processing = printing
cli-state-stopped = stopped
cli-state-canceled = cancelled
cli-state-aborted = aborted
cli-state-completed = printed

## Assemblies rated above today's tables

cli-overrated = { $number }: { $message }
cli-overrated-none = No assembly is rated above today's tables.
cli-about-fittings = List the shop's fittings, import a list of them, or delete one
cli-option-fitting-text = part of the stock number, series or end
cli-option-fittings-import = a .csv or .xlsx file; all rows or none
cli-option-fitting-drop = delete this stock number from the list
cli-fitting = { $number }: { $end }
cli-fittings-none = No fittings found.
cli-values-none = The shop keeps no values of its own.
cli-kept = Kept for every later assembly: { $value }
cli-value ={ $id }  { $value }, { $by ->
        [none] kept on { $day }
       *[other] kept on { $day } by { $by }
    }
cli-value-withdrawn ={ $id }  { $value }, { $by ->
        [none] kept on { $day }
       *[other] kept on { $day } by { $by }
    }, withdrawn on { $ended }: { $why }
cli-value-replaced ={ $id }  { $value }, { $by ->
        [none] kept on { $day }
       *[other] kept on { $day } by { $by }
    }, replaced on { $ended } by { $other }

## How much the tables know

cli-known-material = { $material }: every size of hose with two of its natural ends. Hoses: { $hoses }
cli-known-all_families = all families
cli-known-first_sixteen_families = the sixteen families of version 0.1.0
cli-known-now = Assemblies, { $families }
cli-known-usual_form = Once one value is kept for each family and size without one, usual form only, { $families }
cli-known-every_form = The same for every form, { $families }
cli-known-shares = { $what }: verified { $verified } %, unverified { $unverified } %, unknown { $unknown } % (of { $count })
cli-known-by-family = Ends by family, each on all of its hoses:
cli-known-by-grade = Sources of the ends that are rated:
cli-known-grade = { $grade }: { $share } %
cli-known-identify = How often identify is right (simulated measurements, all connections):
cli-known-measured = { $measured }: first { $first } %, among the first three { $three } %, questions { $questions }
cli-grade-standard = standard seen
cli-grade-document = manufacturer's or government's document seen
cli-grade-secondary = secondary table
cli-grade-memory = memory (unverified)
cli-grade-judgement = judgement (unverified)
cli-grade-practice = common practice
cli-grade-shop = shop's own value
cli-measured-diameter = diameter
cli-measured-diameter-pitch = diameter and pitch
cli-measured-diameter-seat = diameter and seat
cli-measured-diameter-pitch-seat = diameter, pitch and seat
cli-measured-diameter-pitch-seat-cone = diameter, pitch, seat and cone
cli-measured-diameter-pitch-seat-cone-nose = diameter, pitch, seat, cone and nose
cli-measured-asked = diameter, pitch, seat and whatever is asked next
cli-about-hoses = List the shop's own hoses, import a list of them, or withdraw one
cli-option-hoses-import = a .csv or .xlsx file with the columns that the JSON output of this command names; all rows or none
cli-option-hose-drop = withdraw the hose of this part number; needs --dash and --reason
cli-option-hose-dash = dash size of the hose to withdraw
cli-option-hose-reason = why it is withdrawn
cli-hoses-none = The shop keeps no hoses of its own.
cli-own-hose = { $part }: { $standard } -{ $dash }, { $rating }

## Papers, crimps and customers

cli-about-crimp = Record measured crimp diameters, each held against the crimp card.
cli-about-crimp-cards = List the crimp cards of the shop, import a list of them, or delete one.
cli-about-flush = Record that hose assemblies were flushed, how and by whom.
cli-about-certificate = Write the certificate of the last proof test, of each assembly or of a whole batch.
cli-about-card = Write the fitter's card that goes into the bag with a hose assembly: the guide for both ends, on A6.
cli-about-scale-card = Write the scale card that lies beside an end in a photo, to measure its thread: a sheet to print at 100 %.
cli-about-customer = Export all that is kept of one customer.
cli-about-people = List the people who sign in; take the codes of a phone away from one.
cli-option-codes-off = stop asking this person for codes from a phone, and end their sessions
cli-person = { $name }: { $role ->
        [manager] manager
        [counter] counter
       *[builder] builder
    }{ $active ->
        [no] {""}, may not sign in
       *[yes] {""}
    }{ $codes ->
        [yes] {""}, gives a code from a phone
       *[no] {""}
    }
cli-person-codes-off = { $name } is no longer asked for codes; all sessions of this person have ended.
cli-people-none = Nobody can sign in yet.
cli-person-not-found = Nobody here has the name { $name }.
    .mend = List the names with: tagger people
cli-person-no-codes = { $name } is not asked for codes from a phone.
    .mend = Check the name with: tagger people
cli-about-erase-contact = Erase the contact of an order request wherever it stands; orders and tags stay.
cli-about-fitted = Reports that a hose assembly was installed: list, confirm, reject.
cli-about-erase-old = Erase contacts, photos and names that have been kept as long as the settings say.
cli-option-fitted-state = only those that are { LIST($states, style: "or") }
cli-option-fitted-number = only those of this tag
cli-option-fitted-agree = confirm this report; the history of the tag then says so
cli-option-fitted-refuse = reject this report; needs --reason
cli-option-fitted-erase = erase who made this report, and its photo; date, machine and hours stay
cli-option-dry-run = only tell how much would be erased
cli-fitted-line = { $id }: tag { $number }, installed on { $day }, { $machine }, { $state ->
        [agreed] confirmed
        [refused] rejected
       *[waiting] to confirm
     }
cli-fitted-machine = machine { $machine }
cli-fitted-no-machine = no machine named
cli-fitted-erased = { $erased ->
        [yes] Name and photo of report { $id } are erased. Copies written before still hold them.
       *[no] Report { $id } held neither a name nor a photo.
     }
cli-fitted-none = No installation has been reported.
cli-erase-old-unset = Nothing is set: everything is kept for ever.
    .mend = Set one of { LIST($names, style: "or") } to a number of days.
cli-erased-old = Erased: { $contacts } contacts, { $photos } photos, names in { $reports } reports of installation. Copies written before still hold them: remove those (tagger backup --keep).
cli-old = To erase: { $contacts } contacts, { $photos } photos, names in { $reports } reports of installation.
cli-option-whole-run = every assembly registered together with these as well
cli-option-proof-gauge = the gauge, by its number or name
cli-option-proof-gauge-until = the last day on which the calibration of the gauge holds
cli-option-proof-method = the procedure that was followed
cli-option-flush-method = how and with what they were cleaned inside
cli-option-flush-by = who flushed them
cli-option-pdf = a .pdf file
cli-option-card-paper = paper size (default a4)
cli-option-certificate-batch = one certificate for the whole batch in which the assembly was last tested
cli-option-crimp = crimp diameter measured on end { $end }: mm, or with a unit
cli-option-crimp-shell = the fitting series (default: that of the end's stock number)
cli-option-crimp-import = a .csv or .xlsx file with the columns { LIST($columns) }; all rows or none
cli-option-crimp-cards-import = a .csv or .xlsx file with the columns that the JSON output of this command names; all rows or none
cli-option-crimp-card-drop = delete the crimp card with this number
cli-option-customer-name = the whole name, in any case
cli-option-customer-out = also write it into this JSON file
cli-option-erase-reference = the reference of the order request
cli-of-tag = { $number }: { $what }
cli-proof-batch = Batch { $batch }: { $count ->
        [one] { $count } hose assembly
       *[other] { $count } hose assemblies
     }
cli-flush-done = { $count ->
        [one] The flushing of { $count } hose assembly is recorded.
       *[other] The flushing of { $count } hose assemblies is recorded.
     }
cli-crimp-of-end = end { $end }, { $crimp }
cli-crimp-nothing = No measured crimp is given: nothing was recorded.
    .mend = Give a tag number with --a or --b, or a list with --import.
cli-crimp-end = This is not an end.
    .mend = Enter a or b.
cli-crimp-no-shell = The fitting series of end { $end } is not known.
    .mend = Enter it under { $field }.
cli-crimp-card = { $id }: { $hose }, { $series }: { $diameter } mm +{ $plus } −{ $minus } mm (source: { $source })
cli-crimp-cards-none = The shop keeps no crimp cards.
cli-out-not-pdf = This is not a .pdf file.
    .mend = Use a name that ends in .pdf.
cli-customer = { $name }: { $assemblies ->
        [one] { $assemblies } hose assembly
       *[other] { $assemblies } hose assemblies
     }, { $orders ->
        [one] { $orders } order request
       *[other] { $orders } order requests
     }
cli-customer-none = Nothing is kept of customer { $name }.
    .mend = Check the spelling; the name must be whole.
cli-contact-erased = { $count ->
        [0] This contact was erased before.
        [one] The contact is erased in { $count } order request.
       *[other] The contact is erased in { $count } order requests.
     }

## Signing keys

cli-about-signing-key = Make, list, withdraw and print the keys that sign the shop's tags.
cli-option-signing-what = new: a key that signs from today; the one before stays valid for its tags. withdraw: nothing signed with --key counts any longer. page: public keys as PDF.
cli-option-signing-number = Number of the key to withdraw.
cli-option-signing-published = For new, where the key file is lost: the saved list of the public keys. Tags signed with them stay valid.
cli-signing-now = Key { $key } signs the tags from today.
cli-signing-keep = Keep a copy of { $file } where nobody else can read it, print the key page, and give every server and bench the same file.
cli-signing-line = { $key }  { $public }  { $valid }
cli-signing-page = Key page written: { $file }
cli-signing-needs = --{ $option } is missing.
    .mend = Use --{ $option }.
cli-read-signature = Signature: { $said }
cli-compare-signature = Signature of { $which }: { $said }

## The wall chart and the booklet

cli-about-chart = Write the wall chart: every connection cut open, with threads, how it seals and its look-alikes, on one page.
cli-about-booklet = Write the pocket booklet: thread tables, flats, how to measure, on sheets to be folded.
cli-option-chart-paper = paper (default A3); A2 is read at 1 m
cli-option-chart-stock = only the connections of the shop's fittings
cli-option-chart-numbers = only these, with their stock numbers
cli-option-booklet-paper = paper that is cut and folded (default A4)
cli-option-booklet-pages = page by page, to read on a screen

## Gauge sheets

cli-about-sheet = Write a gauge sheet: the tables at true scale on paper, to hold a part against.
cli-option-sheet-kind = what the sheet is for: thread diameters, pitches, seat angles, hexagons, flange heads or outside diameters of hose
cli-option-sheet-paper = the paper that it is printed on
cli-option-sheet-family = thread diameters of this family alone
cli-option-found = marks found on a gauge sheet, for example "D26.99 P2.117"
cli-option-scale = what the sheet's check line measures: the 100 mm line, or the 4 in line in inches
