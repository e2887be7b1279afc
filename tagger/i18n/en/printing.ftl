# Tags and printing: what stands on a tag, templates, preflight, printers.

## Lines of a tag. Ranges and signs are short; a tag has one decimal sign (label_templates/README.md)

printing-value = { $value }
printing-duty = { $fluid }, max. { $temperature }
printing-unverified = { SAY($parts, case: "short") } unverified
printing-at_most = { SAY($parts, case: "short") }: ≤ { $pressure }
printing-at_most-all = ≤ { $pressure }
printing-dangers = DANGER, beyond published limits: { LIST($dangers) }
printing-not-known-least = not known: ask the manufacturer
printing-dangers-least = DANGER: { $dangers }
printing-danger-fluid = fluid
printing-danger-heat = heat
printing-danger-cold = cold
printing-danger-pressure = pressure
printing-danger-vacuum = vacuum
printing-write = { SAY($parts, case: "short") }: __________ bar
printing-write-unverified = { SAY($parts, case: "short") }: __________ bar; { SAY($doubtful, case: "short") } unverified
printing-write-hose = Hose, { $what }: __________ bar (hose manufacturer)
printing-write-end_a = End A, { $what }: __________ bar (fitting manufacturer)
printing-write-end_b = End B, { $what }: __________ bar (fitting manufacturer)
printing-caption = { $caption }:
printing-size = -{ $dash } ({ $inches })
printing-serial = { $place } of { $of }
printing-clocking-short = clocking { $angle } counter-clockwise, viewed from end A
printing-clocking-shortest = { $angle } counter-clockwise, viewed from end A
printing-covers = { LIST($covers) }
printing-tolerance = −{ $minus } / +{ $plus }; { $source }
printing-bend-radius = ≥ { $radius }; { $source }
printing-limited-by = { $part } ({ $source })
printing-warning = ! { $warning }
printing-source = { $ends }: { $source }
printing-source-basis = { $ends }: { $basis }; { $source }
printing-source-unverified = { $source } (unverified)
printing-lots = { LIST($lots) }
printing-lot-end_a = A: { $lot }
printing-lot-hose = hose: { $lot }
printing-lot-end_b = B: { $lot }
printing-tighten = Tighten { $end }: { $torque }; or { $count }
printing-tighten-torque = Tighten { $end }: { $torque }
printing-tighten-count = Tighten { $end }: { $count }
printing-tighten-unknown = Tighten { $end }: { $unknown }
printing-end-title = { $size } { SAY($connection, case: "short") }
printing-end-described = { $description } (other connection)
printing-end-form = { $form }, { $shape }
printing-end-jump = jump size: -{ $dash } hose tail
printing-flats = { $many ->
    [one] { $count } flat
   *[other] { $count } flats
 }
printing-turns = { $many ->
    [one] { $count } turn
   *[other] { $count } turns
 }
printing-basis-finger_tight = from finger-tight
printing-basis-wrench_resistance = from wrench resistance
printing-basis-not_stated = from a point not stated
printing-basis-torque = by torque
printing-per-screw = per { $screw } screw
printing-per-any-screw = per screw; ask the manufacturer for screw size and grade
printing-per-any-screw-short = per screw; screw as per manufacturer
printing-stud = stud with washer or O-ring; too high for a nut
printing-stud-short = too high for a nut
printing-torque-stud = { $torque } (too high for a nut)
printing-tightening-not-known = tightening not known: use the fitting manufacturer's value
printing-clocking-counted = counter-clockwise, viewed from end A
printing-clocking-seen = seen from A
printing-between-sealing_face = between sealing faces
printing-between-thread_end = between thread ends
printing-between-elbow_centreline = between elbow centrelines
printing-made = { $shop }, { $day }
printing-caution = Wrong pressure, thread or torque can cause serious injury. Release all pressure before loosening. Follow the fitting manufacturer's instructions and local regulations.
printing-caution-short = Release pressure before loosening. Follow the fitting manufacturer's instructions.
printing-caution-least = Release pressure before loosening.

## Captions of the fields, before a colon

printing-field-number = Tag
printing-field-serial = Piece
printing-field-built_on = Built on
printing-field-made = Assembled by
printing-field-hose = Hose
printing-field-dash = Size
printing-field-end_a = End A
printing-field-end_b = End B
printing-field-length = Length
printing-field-length_basis = Measured
printing-field-clocking = Clocking angle
printing-field-working_pressure = Max. working pressure
printing-field-dangers = Danger
printing-field-duty = Fluid, temperature
printing-field-vacuum = Max. vacuum
printing-field-fluid = Fluid
printing-field-temperature = Max. temperature
printing-field-covers = Sleeves and guards
printing-field-tolerance = Length tolerance
printing-field-bend_radius = Min. bend radius
printing-field-test_pressure = Proof pressure
printing-field-limited_by = Limited by
printing-field-warnings = Warnings
printing-field-tightening_sources = Sources of the tightening values
printing-field-lots = Lots
printing-field-shop = Made by
printing-field-order = Order
printing-field-note = Note
printing-field-stop_why = Reason
printing-field-stop_on = Date
printing-field-stop_by = Recorded by

## Work steps on the job card, each before a box to sign

printing-done-cut = Hose cut, length checked
printing-done-crimped = Crimped, diameter measured
printing-done-proof-tested = Proof-tested, pressure and time
printing-done-taken = Job taken by, date
printing-done-handed-out = Hose assembly handed out to, date

## Titles of the templates that come with the program

printing-title-hang_tag = Hang tag, 100 x 60 mm, with a hole
printing-title-hang_tag_two = Hang tag for two languages, 120 x 90 mm, with a hole
printing-title-wrap_label = Wrap-around self-laminating label, 102 x 186 mm print, 64 mm clear tail
printing-title-flag_label = Flag label, 150 x 50 mm, wraps around the hose
printing-title-sleeve_tag = Sleeve tag, 190 x 34 mm, readable from both sides
printing-title-thin_wrap = Band with a small QR code repeated round a thin hose
printing-title-end_tag_a = End tag A, 70 x 56 mm, with tightening values
printing-title-end_tag_b = End tag B, 70 x 56 mm, with tightening values
printing-title-roll_2x1 = Roll label, 2 x 1 in
printing-title-roll_4x2 = Roll label, 4 x 2 in
printing-title-roll_4x6 = Roll label, 4 x 6 in, with sources
printing-title-roll_continuous = Continuous roll, 58 mm wide, cut every 132 mm
printing-title-sheet_a4 = Eight hang tags on an A4 sheet
printing-title-sheet_letter = Eight hang tags on a Letter sheet
printing-title-traveller_a5 = Job card (traveller), A5
printing-title-traveller_half_letter = Job card (traveller), half Letter
printing-title-traveller_stub = Job card (traveller), A5, with a tear-off stub, on A4
printing-title-metal_plate = Plate for an engraver, 4 x 2 in, SVG or DXF
printing-title-shrink_sleeve = Heat-shrink sleeve, 240 x 76 mm, printed flat, for hoses of 30 to 49 mm
printing-title-do_not_use = “Do not use” tag for a withdrawn or failed hose, 100 x 60 mm
## The tag on a hose that must not be used

printing-stop-words = DO NOT USE
printing-stop-act = Do not install this hose assembly. Do not remove this tag. Return both to the shop.
printing-stop-example = The reason, the date and the name are printed here.

## Template files: every problem names the file, the box and the key before the sentence

printing-template-unknown = { $name } is not a known template.
    .mend = Use one of: { LIST($names, style: "or") }, or enter the path of a .toml file.
printing-plate-not-engraved = SVG and DXF are for plates, and this label is for a printer.
    .mend = Choose the label for a metal plate, or use PDF or PNG.
printing-template-not-here = { $name } is not a known template.
    .mend = Use one of: { LIST($names, style: "or") }.
printing-template-folder = { $folder } is not a folder.
    .mend = Enter a folder that contains .toml files.
printing-template-unreadable = The template file { $file } cannot be read.
    .mend = Check the path of the template.
printing-template-not-toml = The file is not valid TOML ({ $told }).
    .mend = Correct that line.
printing-template-name = A template is named after its file: { $name }.
    .mend = Remove this line, or rename the file.
printing-template-own-base = A template cannot be its own base.
    .mend = Use another base template or define all keys here.
printing-template-circle = The base leads back to this template: { $way }.
    .mend = Use another base template or define all keys here.
printing-template-kind = { $kind } is not a kind of box.
    .mend = Set kind to one of: { LIST($kinds, style: "or") }.
printing-template-kind-missing = The box has no kind.
    .mend = Set kind to one of: { LIST($kinds, style: "or") }.
printing-template-field = { $field } is not a field of a tag.
    .mend = Use one of: { LIST($fields, style: "or") }.
printing-template-language = { $language } is not a language of the tags.
    .mend = Use one of: { LIST($languages, style: "or") }.
printing-template-languages = A tag needs one or two known languages.
    .mend = Enter one or two of: { LIST($languages, style: "or") }.
printing-template-boxes = Each box begins with { "[[" }box]], in two brackets.
    .mend = Write { "[[" }box]] before its keys.
printing-template-list = Several values are needed here, in brackets.
    .mend = Enter them as a list, for example ["number"].
printing-template-pair = Two values are needed here, in brackets.
    .mend = Enter them so: [100, 60].
printing-template-text-min = The smallest text is larger than the largest, which is { $text } mm.
    .mend = Enter a smaller { "text_min" }, or a larger { "text" }.
printing-template-off-label = The box extends beyond the label, which is { $width } x { $height } mm.
    .mend = Move it or make it smaller.
printing-template-flag = The part of a flag label that goes round the hose has a wing on either side.
    .mend = Enter where it begins and where it ends, both between 0 and { $width } mm, the smaller first.
printing-template-sleeve-sizes = A heat-shrink sleeve is smaller recovered than the { $supplied } mm it has as supplied.
    .mend = Enter the inside diameter when fully recovered, by the data of the sleeve.
printing-template-sleeve-flat = A sleeve of { $supplied } mm lies { $flat } mm wide when flat, and the label is wider.
    .mend = Make this side of the label { $flat } mm or less.
printing-template-sleeve-alone = A template for a heat-shrink sleeve cannot have this key.
    .mend = Remove it, or remove { "sleeve" }.
printing-template-sleeve-picture = This box has a picture. Squeezed by the sleeve, its angles and shapes would be wrong.
    .mend = Use boxes with text: fields such as end_a, length and clocking, and the kind tightening.
printing-template-sleeve-bars = The bars would be squeezed by the sleeve.
    .mend = Turn the box by 90 degrees, so that the bar code runs along the hose.
printing-template-overlap = The box overlaps box { $box } ({ $kind }).
    .mend = Move one of the two.
printing-template-off-page = The labels reach to { $last } mm on a page of { $page } mm.
    .mend = Use fewer, or a smaller pitch or first.
printing-template-pitch = The pitch of { $pitch } mm is less than the label's { $size } mm: the labels would overlap.
    .mend = Enter at least { $size } mm.

## What does not fit on a label

printing-box-letters = The text contains characters that the tag font cannot print: { $letters }
    .mend = Use Latin, Greek or Cyrillic letters.
printing-box-text = The text does not fit in { $width } x { $height } mm at the minimum text size of { $text } mm.
    .mend = Make it at least { $need_width } x { $need_height } mm, or reduce { "text_min" } (minimum { $least } mm).
printing-box-qr = The box of { $side } mm is too small for the QR code: at { $dpi } dpi the modules would be smaller than { $dots } dots or { $module } mm.
    .mend = Make it at least { $need } x { $need } mm, or shorten the web address.
printing-box-bars = The box of { $width } mm is too narrow for the bars of Code 128 at { $dpi } dpi.
    .mend = Make it at least { $need } mm wide.
printing-start = { $start } is not a place on the sheet.
    .mend = Enter a place from 1 to { $places }.
printing-start-one = { $start } is not a place on the sheet: this template prints one label per page.
    .mend = Leave the place out.
printing-no-tags = There are no tags to print.
    .mend = Enter at least one.
printing-grade-none = No QR code in the image can be read: grade F.
    .mend = Print it larger or cleaner, or take the photo straight and in focus.

## Preflight: will it scan?

printing-dangers-untold = This hose assembly has a danger of fluid, heat, cold, pressure or vacuum, and no box of the template says so.
    .mend = Add a box with kind = "caution".
printing-flight-no-code = The label has no QR code, so it cannot be scanned.
    .mend = Add a box with kind = "qr".
printing-flight-dots = A module is { $dots } printer dots wide. Below { $least } dots, ink or heat spread closes the gaps.
    .mend = Give the QR code a larger box, or print at a higher resolution (dpi).
printing-flight-module = A module is { $module } mm wide. DIN SPEC 91406 requires at least { $least } mm.
    .mend = Give the QR code a larger box.
printing-flight-grid = { $kind ->
    [code128] The bar code is not aligned to whole printer dots.
   *[qr] The QR code is not aligned to whole printer dots.
 }
    .mend = Program error: please report it.
printing-flight-level = Error correction is level { $level }. DIN SPEC 91406 prefers Q, and H tolerates more dirt.
    .mend = Give the QR code a larger box.
printing-flight-quiet-zone = The quiet zone of { $modules } modules around the QR code is not clear.
    .mend = Clear this area, or move the QR code away from the label edge.
printing-proof-quiet = { $kind ->
    [code128] Something stands in the quiet zone of the bar code, or the label ends there.
   *[qr] Something stands in the quiet zone of a QR code, or the label ends there.
 }
    .mend = Clear this area, or move the code away from the label edge.
printing-proof-drawn = { $kind ->
    [code128] The bar code is not printed as it was made.
   *[qr] A QR code is not printed as it was made.
 }
    .mend = Move the other boxes of the template away from the code. If none is in its place: program error, please report it.
printing-proof-text = { $kind ->
    [code128] The bar code does not say what the tag says.
   *[qr] A QR code does not say what the tag says.
 }
    .mend = Program error: please report it.
printing-flight-link = The web address in the QR code has { $length } characters. Identification links have at most { $most }.
    .mend = Use a shorter web address.
printing-flight-reach = The QR code scans from up to about { $cm } cm (ten times its side; common practice, no source).
printing-flight-reach-short = The QR code scans from up to about { $cm } cm (ten times its side; common practice, no source).
    .mend = Use a larger QR code, or hold the phone very close.
printing-flight-text = The smallest text is { $size } mm high. Below { $least } mm it is hard to read.
    .mend = Make its box larger.
printing-flight-readers = Of { $count } test decoders, these cannot read the QR code from the printed dots: { LIST($failed) }.
    .mend = Give the QR code a larger box.
printing-flight-codes = QR codes on the label that can be read: { $read } of { $count }.
    .mend = Move the QR codes further apart or make them larger.
printing-flight-grade = The printed dots have grade { $grade } by the parameters of ISO/IEC 15415.
    .mend = Use larger modules.
printing-flight-contrast = Contrast depends on the label material: print black on white or yellow. Dark or clear material needs a white ground.
printing-flight-wrap-unknown = On a hose this label bends with it, but the hose outside diameter is not known.
    .mend = Measure it and enter it ({ "--hose-od" }), or use a hang tag.
printing-flight-wrap = Around a hose of { $od } mm, the QR code of { $side } mm shows its outer modules at { $share } % of their width. Up to { $widest } mm scans.
printing-flight-wrap-near = Around a hose of { $od } mm, the QR code of { $side } mm shows its outer modules at { $share } % of their width. Up to { $widest } mm scans.
    .mend = This is near the limit: a flag label or a hang tag is more reliable.
printing-flight-wrap-thin = Around a hose of { $od } mm, the QR code of { $side } mm shows its outer modules at { $share } % of their width. Up to { $widest } mm scans.
    .mend = Use a flag label or a hang tag. This label is for hoses from { $thinnest } mm.
printing-flight-facing = Around a hose of { $od } mm, a QR code scans from every side.
printing-flight-facing-end = Around a hose of { $od } mm, a QR code scans from { $share } % of all sides. None scans from the { $gap } at the end of the label.
    .mend = Put a second label beside it, its end on the opposite side, or the flag of a flag label a quarter turn from this end. Or use a hang tag.
printing-flight-facing-away = Around a hose of { $od } mm, a QR code scans from only { $share } % of all sides. The widest gap is { $gap }.
    .mend = { $label ->
            [thin_wrap] Use a flag label or a hang tag.
           *[other] Use a template for this diameter (thin_wrap repeats a small QR code), a flag label or a hang tag.
        }
printing-flight-hidden = Around a hose of { $od } mm, the end of the label covers text that is printed nowhere else: box { LIST($boxes) }.
    .mend = Use this template on hoses from { $thinnest } mm, or a flag label or a hang tag.
printing-flight-flag = The flag stays clear of hoses up to { $thickest } mm outside diameter.
printing-flight-flag-thick = Around a hose of { $od } mm, the middle of this flag label does not reach: a QR code of the flag lies on the hose.
    .mend = Use it on hoses up to { $thickest } mm, or use a hang tag.
printing-flight-lying = Flat on a hose of { $od } mm, the QR code scans from straight above.
printing-flight-sleeve-thin = In a sleeve on a hose of { $od } mm, the QR code of { $side } mm bends too far to scan. Up to { $widest } mm scans.
    .mend = Use a hang tag or a flag label. This template is for hoses from { $thinnest } mm.
printing-flight-stuck-thin = Stuck on a hose of { $od } mm, the QR code of { $side } mm does not scan. Up to { $widest } mm scans.
    .mend = Hang it by a tie or stick it on something flat. On hoses from { $thinnest } mm it scans.
printing-flight-shrink-unknown = The sleeve shrinks with what is printed on it, from { $supplied } mm down to as little as { $recovered } mm, and the hose outside diameter is not known.
    .mend = Measure it and enter it ({ "--hose-od" }), or use a hang tag.
printing-flight-shrink-fit = The sleeve is for hoses between { $recovered } and { $supplied } mm. { $fit ->
    [loose] On a hose of { $od } mm it stays loose.
   *[tight] It does not go over a hose of { $od } mm.
 }
    .mend = Use a sleeve of another size with a template of its own, or a hang tag.
printing-flight-shrink = On a hose of { $od } mm the print shrinks to { $share } % around the hose. Sleeve: { $supplied } mm as supplied, { $recovered } mm fully recovered; source: { $source }.
    .mend = Compare both diameters with the data of your sleeve. Slide it on before the fitting is crimped.
printing-flight-shrink-module = On a hose of { $od } mm the print shrinks to { $share } %, and a module to { $module } mm. DIN SPEC 91406 requires at least { $least } mm.
    .mend = Use a sleeve with a smaller diameter as supplied, or a hang tag.
printing-flight-shrink-near = On a hose of { $od } mm, a QR code is near the widest that scans.
    .mend = Use a smaller QR code in a template of your own, or a hang tag.
printing-flight-shrink-unread = Shrunk and bent round a hose of { $od } mm, a QR code is { $side } mm wide, and up to { $widest } mm scans by geometry. { $unread ->
    [0] The test decoders read it.
   *[other] Test decoders that do not read it there: { LIST($failed) }.
 }
    .mend = Use a smaller QR code in a template of your own, or a hang tag.
printing-sleeve-assumed = assumed by this template, not data of a sleeve

## Network printers

printing-printer-address = { $address } is not the address of a printer.
    .mend = Enter one such as ipp://192.0.2.7/ipp/print or ipps://labels.example.com/ipp/print.
printing-printer-dpi = The printer at { $address } does not print at { $dpi } dpi.
    .mend = Use { LIST($dots, style: "or") } dpi.
printing-printer-formats = The printer supports neither PDF nor PWG Raster, only { LIST($formats) }.
    .mend = Use PDF and print it from a computer that has this printer installed.
printing-printer-no-formats = The printer reports no file format that it supports.
    .mend = Use PDF and print it from a computer that has this printer installed.
printing-printer-not-ipp = The printer did not return a valid IPP response.
    .mend = Check the path of its address, often /ipp/print.
printing-printer-untrusted = The printer's certificate is not trusted ({ $told }).
    .mend = Add the certificate to SSL_CERT_FILE, or use ipp:// on the shop network.
printing-printer-silent = The printer did not answer within { $seconds } s.
    .mend = { $sent ->
        [perhaps] Check whether the tags were printed before you send them again.
       *[no] Check that the printer is on, connected to the network and that the address is right, or use the PDF.
     }
printing-printer-too-long = The printer's answer is longer than { $octets } bytes.
    .mend = { $sent ->
        [perhaps] Check whether the tags were printed before you send them again.
       *[no] Check that the printer is on, connected to the network and that the address is right, or use the PDF.
     }
printing-printer-http = The printer answered with HTTP { $status }.
    .mend = { $sent ->
        [perhaps] Check whether the tags were printed before you send them again.
       *[no] Check that the printer is on, connected to the network and that the address is right, or use the PDF.
     }
printing-printer-lost = The connection to the printer was lost ({ $told }).
    .mend = Check whether the tags were printed before you send them again.
printing-printer-unreachable = The printer cannot be reached ({ $told }).
    .mend = Check that the printer is on, connected to the network and that the address is right, or use the PDF.
printing-printer-elsewhere = The printer address leads to { $address }, which is not a local network address.
    .mend = Give the printer an address on the shop network.
printing-refused-forbidden = The printer refused the request: this program has no permission to print.
    .mend = Check the printer and its address, or use the PDF.
printing-refused-sign-in = The printer requires a sign-in that this program does not support.
    .mend = Check the printer and its address, or use the PDF.
printing-refused-not-found = The printer or the job was not found at this address.
    .mend = Check the printer and its address, or use the PDF.
printing-refused-too-large = The printer reports that the file is too large.
    .mend = Check the printer and its address, or use the PDF.
printing-refused-format = The printer does not support files of this format.
    .mend = Check the printer and its address, or use the PDF.
printing-refused-job = The printer does not support this type of job.
    .mend = Check the printer and its address, or use the PDF.
printing-refused-not-accepting = The printer is not accepting jobs.
    .mend = Check the printer and its address, or use the PDF.
printing-refused-busy = The printer is busy.
    .mend = Check the printer and its address, or use the PDF.
printing-refused-status = The printer refused the request (IPP status { $status }).
    .mend = Check the printer and its address, or use the PDF.
printing-refused-told = { $why } The printer reports: “{ $told }”.
    .mend = Check the printer and its address, or use the PDF.
printing-job-cancelled = The printer accepted job { $job }, then cancelled it. Some of its tags may have been printed.
    .mend = Check the printer, then print again or use the PDF.
printing-job-cancelled-because = The printer accepted job { $job }, then cancelled it ({ LIST($remarks) }). Some of its tags may have been printed.
    .mend = Check the printer, then print again or use the PDF.

## What a printer reports of itself or of a job (ipp/reasons.csv): status phrases, shown in a list after a colon

printing-reason-media-needed = waiting for labels or paper
printing-reason-media-empty = out of labels or paper
printing-reason-media-low = labels or paper low
printing-reason-media-jam = labels or paper jammed
printing-reason-pausing = being paused
printing-reason-paused = paused
printing-reason-off = switched off or shutting down
printing-reason-connecting = print queue is connecting to the printer
printing-reason-timed-out = print queue cannot reach the printer
printing-reason-stopping = stopping
printing-reason-stopped-partly = partly stopped
printing-reason-toner-low = toner low
printing-reason-toner-empty = out of toner
printing-reason-memory-full = printer memory full
printing-reason-cover-open = cover open
printing-reason-interlock-open = safety interlock open
printing-reason-door-open = door open
printing-reason-input-tray-missing = input tray missing
printing-reason-output-tray-missing = output tray missing
printing-reason-output-almost-full = output tray almost full
printing-reason-output-full = output tray full
printing-reason-ribbon-low = ribbon or ink low
printing-reason-ribbon-empty = out of ribbon or ink
printing-reason-waste-almost-full = waste container almost full
printing-reason-waste-full = waste container full
printing-reason-too-hot = too hot
printing-reason-too-cold = still cold
printing-reason-drum-worn-soon = drum nearly worn out
printing-reason-drum-worn = drum worn out
printing-reason-developer-low = developer low
printing-reason-developer-empty = out of developer
printing-reason-resource = printer resource missing for this file
printing-reason-other = no reason reported
printing-reason-job-incoming = still receiving the job
printing-reason-job-queued = job in the print queue
printing-reason-job-printing = printing the job
printing-reason-job-reading = reading the job
printing-reason-job-preparing = preparing the job
printing-reason-job-outgoing = passing the job on
printing-reason-job-held = job held
printing-reason-job-resources = required media or supply not loaded
printing-reason-printer-stopped = printer stopped
printing-reason-printer-stopped-partly = printer partly stopped
printing-reason-job-stopping = job being stopped
printing-reason-job-aborted = job stopped by the printer
printing-reason-compression = could not decompress the file
printing-reason-unreadable = could not read the file
printing-reason-format = file format not supported
printing-reason-cancelled-user = job cancelled by a user
printing-reason-cancelled-operator = job cancelled by the printer operator
printing-reason-cancelled-device = job cancelled at the printer
printing-reason-completed = job printed
printing-reason-completed-warnings = job printed with a printer warning
printing-reason-completed-errors = job ended with errors
printing-reason-queued-device = job in the printer's own queue
printing-reason-queue-off = print queue switched off
printing-reason-incomplete = job received incomplete

## Across the picture of a tag that is not registered yet, in large letters

printing-specimen = SPECIMEN

## Signature

printing-flight-unsigned = This label has no room for the signature: its QR codes carry the spec without it.
    .mend = Use a template with more room if the tag has to be signed.
printing-flight-signed = The large QR code is signed.
