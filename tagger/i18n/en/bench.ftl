# The bench: the signed-in pages of a shop.

## Every page

bench-skip = Skip to content
bench-navigation = Bench
bench-demo = This is a demonstration with invented data. Do not use it for real work. Sign in with the name { $name } and the password { $password }.
bench-nav-build = Build
bench-nav-prints = Print jobs
bench-nav-find = Find
bench-nav-orders = Orders
bench-nav-withdrawn = Withdrawn
bench-nav-lists = Import and export
bench-nav-figures = Statistics
bench-nav-shop = Settings
bench-nav-waiting = waiting
bench-tag = Tag
bench-go-hint = Tag, order, lot, customer ...
bench-top-title = “{ $text }”
bench-top-order = Order { $order }
bench-top-customer = Customer { $name }
bench-top-machine = Machine { $name } (customer: { $customer })
bench-top-lot = Lot { $lot }: { $count } { $count ->
    [one] hose assembly
   *[other] hose assemblies
 }
bench-top-mistyped = This is a mistyped tag number.
bench-top-nothing = No tag, order, customer, machine, stock number or lot is called this.
bench-sign-out = Sign out
bench-sign-out-name = Sign out { $name }
bench-language = Language
bench-note-saved = Saved.
bench-note-recorded = Recorded.
bench-note-withdrawn = Withdrawn. The tag pages now show a warning.
bench-note-lifted = Withdrawal lifted and recorded.
bench-note-sent = Order requests sent.
bench-key-ctrl = Ctrl
bench-key-enter = Enter
bench-key-escape = Esc

## Words used on several pages

bench-hose = Hose
bench-end_a = End A
bench-end_b = End B
bench-length = Length
bench-clocking = Clocking angle
bench-pressure = Pressure
bench-working-pressure = Working pressure
bench-built-on = Built on
bench-place = Customer, machine, position
bench-for = For
bench-position = Position
bench-by = By
bench-when = When (UTC)
bench-note = Note
bench-reason = Reason
bench-status = Status
bench-quantity = Quantity
bench-qty = Qty
bench-name = Name
bench-role = Role
bench-since = Since
bench-source = Source
bench-printer = Printer
bench-label = Label
bench-tags = Tags
bench-row = Row
bench-details = Details
bench-print = Print
bench-printed = Printed
bench-not-printed = not printed yet
bench-not-recorded = not recorded
bench-not-specified = not specified
bench-not-reported = not reported
bench-withdrawn = withdrawn
bench-replaced = replaced
bench-void = void
bench-replacement-built = replacement built
bench-danger = Danger
bench-caution = Caution
bench-record = Record
bench-add = Add
bench-save = Save
bench-delete = Delete
bench-fitting-lot = fitting lot { $lot }
bench-reel-lot = reel lot { $lot }
bench-assemblies = { $count } { $count ->
    [one] assembly
   *[other] assemblies
 }
bench-first-shown = The first { $shown } of { $all } are shown.
bench-first-shown-all-printed = The first { $shown } of { $all } are shown; all of them are printed.

## Roles, orders, events, print jobs, withdrawals: one name for each value

bench-role-device = device: scans and prints
bench-role-builder = builder
bench-role-counter = counter
bench-role-manager = manager
bench-order-received = received
bench-order-asked = question to customer
bench-order-accepted = accepted
bench-order-building = being built
bench-order-done = done
bench-order-declined = declined
bench-event-registered = registered
bench-event-crimped = crimp measured
bench-event-flushed = flushed
bench-event-proof_tested = proof test
bench-event-proof_allowed = high proof pressure allowed
bench-event-printed = tag printed
bench-event-fitted = installed
bench-event-inspected = inspected
bench-event-scanned = scanned
bench-event-ordered = ordered
bench-event-replaced = replaced
bench-event-corrected = corrected
bench-event-voided = made void
bench-event-replacement_built = replacement built
bench-event-removed = removed from the machine
bench-event-withdrawn = withdrawn
bench-event-withdrawal_lifted = withdrawal lifted
bench-medium-mineral-oil = mineral oil
bench-medium-water = water
bench-medium-water-with-inhibitor = water with inhibitor
bench-medium-air = air
bench-medium-nitrogen = nitrogen
bench-job-waiting = waiting
bench-job-sending = sending
bench-job-printing = printing
bench-job-done = printed
bench-job-failed = failed
bench-job-unknown = possibly printed
bench-job-dropped = cancelled
bench-scope-tag = tag
bench-scope-hose_lot = hose lot
bench-scope-fitting_lot = fitting lot
bench-withdrawn-what = { $scope ->
    [tag] Tag { $value }
    [hose_lot] Hose lot { $value }
   *[fitting_lot] Fitting lot { $value }
 }
bench-confidence-published = published
bench-confidence-memory = unverified
bench-confidence-shop = shop's own
bench-reprint-paper-jam = paper jam
bench-reprint-damaged = tag damaged
bench-reprint-lost = tag lost
bench-reprint-second = second tag needed

## Captions of fields, one for each

bench-field-of-end = { SAY($end, case: "start") }, { $field }
bench-field-hose = Hose
bench-field-hose-standard = Hose standard (from lay line)
bench-field-hose-dash = Dash size
bench-field-hose-edition = Edition (from lay line)
bench-field-hose-part = Manufacturer's part number (hose)
bench-field-hose-lot = Reel lot
bench-field-lot_reason = Reason for using this lot
bench-field-correct_reason = Reason for the correction
bench-field-void_reason = Reason for making it void
bench-field-changes_considered = Change or difference considered
bench-field-end-connection = Connection
bench-field-end-size = Size
bench-field-end-series = Series of the stud (S heavy, L light)
bench-field-end-form = End type
bench-field-end-shape = Shape
bench-field-end-angle = Elbow angle (°)
bench-field-end-drop_mm = Drop length
bench-field-end-material = Material
bench-field-end-hose_dash = Jump size: tail for hose dash
bench-field-end-lot = Fitting lot
bench-field-length_mm = Overall length
bench-field-length_basis = Measured
bench-field-length_confirmed = The length is right although it is over 100 m
bench-field-clocking_deg = Clocking angle (°)
bench-field-max_temperature_c = Maximum temperature
bench-field-vacuum_bar = Maximum vacuum
bench-field-fluid = Fluid
bench-field-covers = Sleeves and guards
bench-field-working_pressure = Working pressure
bench-field-working_pressure-value_bar = Working pressure from another source
bench-field-working_pressure-source = Source of working pressure
bench-field-working_pressure-confirmed = This pressure is right although it is above the tables
bench-field-hose-rating-value_bar = Hose manufacturer's working pressure
bench-field-hose-rating-source = Source of the hose's value
bench-field-hose-rating-fluid = Fluid named by the source
bench-field-hose-rating-max_temperature_c = Maximum temperature named by the source
bench-field-hose-approval-max_temperature_c = Maximum temperature of the approval
bench-field-hose-approval-source = Source of the approval
bench-field-end-rating-value_bar = Fitting manufacturer's working pressure
bench-field-end-rating-source = Source of the value
bench-field-end-rating-fluid = Fluid named by the source
bench-field-end-rating-max_temperature_c = Maximum temperature named by the source
bench-field-keep = Keep as your shop's value for every later hose
bench-build-asks = Manufacturer's values
bench-field-bend_radius_mm = Minimum bend radius
bench-field-note = Note (public: shown to anyone who scans the tag)
bench-field-count = Quantity
bench-field-position = Position on machine
bench-field-replaces = Replaces tag
bench-field-order_reference = Order number
bench-field-built_on = Built on
bench-field-template = Label
bench-field-recipe = Name of the saved spec
bench-field-number = Tag number
bench-field-tag = Tag
bench-field-lot = Hose or fitting lot
bench-field-connection = Connection at either end
bench-field-hose_standard = Hose standard
bench-field-hose_dash = Hose dash size
bench-field-dash = Hose dash size
bench-field-pressure_min_bar = Min. pressure
bench-field-pressure_max_bar = Max. pressure
bench-field-built_from = Built from
bench-field-built_to = Built to
bench-field-hoses = Hoses
bench-field-thread_od = Male thread, outside diameter
bench-field-thread_id = Female thread, inside diameter
bench-field-tpi = Threads per inch
bench-field-pitch = Or pitch in mm
bench-field-hex = Hexagon across flats (A/F)
bench-field-flank = Thread flank angle
bench-field-cannot = Cannot be measured
bench-field-nose = Nose or socket diameter
bench-field-series = Series
bench-field-origin = Origin of the machine
bench-field-tube_od = Tube outside diameter
bench-field-flange_od = Flange head diameter
bench-field-bolt_spacing = Bolt spacing, long side, centre to centre
bench-field-form = End type
bench-field-side = Place of the thread
bench-field-swivels = Whether it turns
bench-field-shape = Thread shape
bench-field-seals = What seals
bench-field-od = Outside diameter
bench-field-bore = Bore
bench-field-layers = Number of layers
bench-field-lay_line = Lay line
bench-field-seat = Seat
bench-field-cone = Cone
bench-field-crimp_a = Crimp diameter, end A (mm)
bench-field-crimp_b = Crimp diameter, end B (mm)
bench-field-rating_bar = Manufacturer's working pressure
bench-field-rating_source = Source of this working pressure
bench-field-rating_confirmed = This working pressure is right although it is above the tables
bench-field-lower_source = Lower test asked for by (customer or standard)
bench-field-allowed_by = Allowed by (manufacturers)
bench-field-allowed_on = Date of the document
bench-field-document = Document
bench-field-shell_a = Ferrule (shell), end A
bench-field-shell_b = Ferrule (shell), end B
bench-field-pressure_bar = Pressure
bench-field-hold_s = Hold time (s)
bench-field-medium = Test medium
bench-field-tester = Tested by
bench-field-gauge = Gauge (number)
bench-field-gauge_valid_until = Calibration valid until
bench-field-method = Method (work instruction)
bench-field-numbers = Selected assemblies
bench-field-result = Result
bench-field-kind = Event
bench-field-name = Name
bench-field-password = Password
bench-field-old = Current password
bench-field-code = Code from the console
bench-field-phone_code = Code from your phone
bench-field-sign_in = Sign-in
bench-field-role = Role
bench-field-uri = Address
bench-field-dpi = Resolution (dpi)
bench-field-shell = Ferrule (shell)
bench-field-diameter_mm = Diameter (mm)
bench-field-minus_mm = Minus (mm)
bench-field-plus_mm = Plus (mm)
bench-field-source = Source
bench-field-state = Status
bench-field-quantity = Quantity
bench-field-needed_by = Needed by
bench-field-contact = Contact
bench-field-company = Company
bench-field-phone = Phone
bench-field-email = Email
bench-field-reference = Customer ref.
bench-field-reason = Reason
bench-field-scope = Withdraw
bench-field-value = Tag or lot number
bench-field-file = File
bench-field-list = List
bench-field-as = Print on
bench-field-do = Action

## A caption before what is wrong with its field

bench-caption = { $field }:

## Problems and refusals

bench-not-found = Not found
bench-form-of-files = Lists are available as .csv or .xlsx.
bench-search-refused = Search not possible
bench-nothing-ordered = Nothing ordered
bench-not-withdrawn = Not withdrawn
bench-no-letters = No letters
bench-no-certificate = No certificate
bench-event-refused = Not recorded
bench-go-to-bench = Go to bench
bench-not-a-date = { $value } is not a valid date.
    .mend = Enter the date as YYYY-MM-DD, for example 2026-03-02.
bench-not-a-dash = { $value } is not a dash size.
    .mend = Enter the dash size, for example 12 (3/4 in).
bench-no-hoses = No hoses are selected.
    .mend = Select the hoses to order.
bench-not-a-quantity = { $value } is not a valid quantity.
    .mend = Enter 1 to { $most }.
bench-future = { $day } is in the future.
    .mend = Enter the build date or clear the field.
bench-no-file = No file is chosen.
    .mend = Choose a .csv or .xlsx file.
bench-list-damaged = The list was damaged in transfer.
    .mend = Upload the file again.
bench-not-an-action = { $value } is not an action of this page.
    .mend = Load the page again.
bench-not-a-role = { $value } is not a role.
    .mend = Use one of: { LIST($roles, style: "or") }.
bench-old-password-wrong = The current password is not correct.
    .mend = Try again.
bench-sign-in-wrong = Name and password do not match.
    .mend = Try again.
bench-too-many-tries = There were too many failed attempts.
    .mend = Try again in { $seconds } s.
bench-too-many-tries-min = There were too many failed attempts.
    .mend = Try again in { $minutes } min.
bench-not-a-resolution = { $value } is not a valid resolution.
    .mend = Enter 100 to 1200 dpi or leave blank.
bench-file-one-tag = A { $form } file shows one tag only.
    .mend = Use PDF for several tags.
bench-not-a-printer = { $value } is not a printer of this shop.
    .mend = Load the page again.
bench-no-result = The result of the test is missing.
    .mend = Choose Passed or Failed.
bench-no-crimp = No diameter is entered.
    .mend = Enter at least one measured diameter.
bench-not-by-hand = { $value } cannot be recorded manually. Choose an event from the list.
bench-not-a-scope = { $value } cannot be withdrawn. Use one of: { LIST($scopes, style: "or") }.
bench-nothing-affected = No registered assembly is affected by this withdrawal.

## Sign-in and first start

bench-sign-in = Sign in
bench-sign-in-first = First start: create the manager account with the code from the console
bench-sign-in-not-needed = Tag pages need no sign-in.
bench-find-tag = Find a tag
bench-first = First start
bench-first-hint = No users yet. The console where the server was started shows a one-time code.
bench-first-name = Your name
bench-first-password = Password (at least 12 characters)
bench-first-create = Create the manager account

## Build

bench-build = Build
bench-build-for-order = Build for order { $order }
bench-build-changes = Changes: { $changes }
bench-build-no-changes = Same as before, no changes.
bench-build-customer = Customer: { $customer }.
bench-build-reference = Customer ref.: { $reference }.
bench-build-wanted = Quantity: { $count }.
bench-build-needed = Needed by: { $day }.
bench-build-show-order = Show order
bench-build-nearest-tag = (nearest the tag)
bench-build-standard-hint = R2, 2SN ...
bench-build-edition-hint = S or year
bench-build-as-hose = as hose
bench-build-drop-hint = mm or 2 1/4 in
bench-build-length-hint = 1250 or 49 1/4 in
bench-build-clocking-hint = 0 to 359
bench-build-temperature-hint = 100 or 212 F
bench-build-pressure-hint = 172 or 2500 psi
bench-build-source-hint = data sheet, drawing ...
bench-build-identify = Identify by measuring
bench-build-straight = straight
bench-build-elbow = { $angle } elbow
bench-build-other-angle = other angle
bench-build-same = Same as end A
bench-build-connection = { SAY($connection, case: "short") }
bench-build-choose = Choose
bench-build-missing = Not registered. Still missing:
bench-build-lot-no-reason = Choose a reason
bench-build-length-and-clocking = Length and clocking angle
bench-build-dial = Clocking angle of end B
bench-build-dial-unset = not set
bench-build-clockwise = Your shop uses the angle clockwise from 12 o'clock. Tag and record show the standard angle (360° minus yours).
bench-build-counter-clockwise = Hold the hose with end A nearest you, elbow A pointing down. Look along the hose to end B and measure counter-clockwise.
bench-build-turn-drawing = Drag the drawing or use the arrow keys.
bench-build-customer-and-quantity = Customer and quantity
bench-build-more = More: sleeves and guards, fluid, temperature, material, jump size, note
bench-build-register = Register and print
bench-build-clear = Clear form
bench-build-recipes = Saved specs: save this spec or start from one
bench-build-save-recipe = Save spec
bench-build-recipe-replace = Replace the saved spec
bench-build-updating = Updating ...
bench-build-out-of-date = Out of date.
bench-build-unanswered = No answer from the server: the values below are for the previous entries. Retrying every few seconds.
bench-close = Close

## What the build page shows of a spec

bench-view-ends = The assembly from the side, end A left
bench-view-tag-picture = The tag as it will print; its number is assigned when it is registered
bench-view-rating = Rating
bench-view-limited = Limited by { SAY($part) }.
bench-view-sources = Where is this from
bench-view-tolerance = Tolerance: +{ $plus } / -{ $minus } mm
bench-view-no-tolerance = Tolerance unknown
bench-view-bend = Minimum bend radius
bench-view-ask-hose-manufacturer = not known: use the hose manufacturer's value
bench-view-cold = Minimum temperature
bench-view-proof = Proof pressure
bench-view-clocking-tolerance = Tolerance: ± { $angle }
bench-view-ordered = Compared with what was ordered
bench-view-instead = Compared with the tag it replaces
bench-view-notes = { $count } { $count ->
    [one] note
   *[other] notes
 }
bench-view-tag = The tag
bench-view-sample = Sample number. The real number is assigned when you register.
bench-view-needed = Still needed
bench-build-jump = { $size } { $connection } is made for { LIST($usual, style: "or") } hose, but the hose is -{ $hose }.
    .mend = If it is a jump size, enter { $hose } under “{ bench-field-end-hose_dash }”. Otherwise correct the size.
bench-build-jump-use = It is a jump size: use { $dash }

## Identify

bench-identify = Identify an end
bench-look-keys = Keys: 1 to 9 choose a picture, 0 is 'cannot tell'.
bench-identify-button = Identify
bench-identify-not-sure = Not sure
bench-identify-seat = { $seat ->
    [face] flat face with O-ring
    [boss] O-ring under the hexagon
    [flat] flat seat
    [taper] no seat, taper thread
   *[degrees] { $seat }°
 }
bench-identify-cone-outside = sticks out like a nose
bench-identify-cone-inside = lies inside like a funnel
bench-identify-flank = { $angle }°
bench-identify-series = { $series ->
    [S] heavy (S)
   *[L] light (L)
 }
bench-identify-cannot = I cannot measure that
bench-identify-hint = { $example } or 1 1/16 in
bench-identify-advice = Hold the caliper at an angle to the thread. 37° and 45° seats have the same thread in several sizes but do not seal together: use a seat gauge.
bench-identify-measure-next = Measure next:
bench-identify-possible = Possible connections, most likely first
bench-identify-likelihood = Likelihood
bench-identify-percent = { $percent } %
bench-identify-why = Why
bench-identify-use-for = Use for
bench-identify-differs = Differs in:
bench-identify-look-alike = Look-alike:

## Printing

bench-run-registered = { $count } { $count ->
    [one] tag
   *[other] tags
 } registered
bench-run-blocked = Do not print this tag.
bench-run-untested = Not yet proof-tested: { $count }. Only the job card can be printed for them; print the tags once the proof tests have passed.
bench-batch-title = Crimps and proof test
bench-batch-heading = Crimps and proof test of { $count } hose { $count ->
        [one] assembly
       *[other] assemblies
     }
bench-batch-test = Test
bench-batch-crimp-save = Save crimps
bench-batch-pass = Selected: passed
bench-batch-fail = Selected: failed
bench-batch-required = Required proof pressure: { $pressure }, hold time { $low } to { $high } s ({ $count } of the run).
bench-batch-unknown = Required proof pressure not known for { $count } of the run: record them separately, or enter the manufacturer's working pressure and its source.
bench-batch-certificate = Batch certificate { $batch }
bench-batch-each = A certificate for each
bench-batch-hint = The test is recorded for every selected assembly, or for none. Clear the tick of an assembly that leaked and record it as failed.
bench-batch-untested = not tested
bench-batch-same-hose = The run has several hoses: record the crimps on the record of each assembly.
bench-batch-not-of-run = Tag { $number } is not of this run.
    .mend = Record its test on its own record.
bench-customer-none = No hose assembly or order names the customer “{ $name }”.
    .mend = Check the spelling, or use Find.
bench-customer-contacts = Contacts
bench-customer-no-contacts = No contact is recorded. Contacts come with order requests.
bench-customer-machines = Machines
bench-customer-export = Export customer data
bench-customer-erase = Erase contact
bench-customer-erase-ask = Erase this contact from every order request? Orders, hose assemblies and tags stay. This cannot be undone.
bench-run-job = Print job { $job } on { $printer }: { $state }.
bench-run-check-job = Check it before you reprint these tags.
bench-run-show-job = Show print job
bench-run-sent-before =
    { $count ->
        [one] This tag has already been printed or sent to a printer. Print it again?
       *[other] { $count } of these tags have already been printed or sent to a printer. Print them again?
    }
bench-run-reason = Reason for reprint
bench-run-only-new = Unprinted tags only ({ $count })
bench-run-print-on = Print on { $printer }
bench-run-reprint-on = Reprint on { $printer }
bench-run-print-pdf = Print (PDF)
bench-run-reprint-pdf = Reprint (PDF)
bench-run-png = Save as PNG
bench-run-svg = Plate as SVG
bench-run-dxf = Plate as DXF
bench-run-next = New build
bench-run-counted = Prints and reprints are recorded in each tag's history.
bench-run-last-first = The printer used last is listed first.
bench-run-loaded = Label in { $printer }: { $label }.
bench-run-assemblies = Registered assemblies
bench-prints-job = Job
bench-prints-job-number = Job { $job }
bench-prints-no-printer = No printers set up. Tags are printed as PDF or PNG. A manager can add network printers under Settings.
bench-prints-active = Active jobs and jobs that need attention
bench-prints-none = No active print jobs.
bench-prints-finished = Finished
bench-prints-title = Print job { $job }
bench-prints-heading = Print job { $job } on { $printer }: { $count } { $count ->
    [one] tag
   *[other] tags
 }
bench-prints-state = Status of the print job
bench-prints-back = Back to tags
bench-prints-refresh = Refresh
bench-prints-label = Label: { $label }.
bench-prints-reason = Reason for reprint: { $reason }.
bench-prints-requested = Requested { $moment } UTC.
bench-prints-requested-by = Requested { $moment } UTC by { $name }.
bench-prints-counts = A tag counts as printed when the printer accepts it, even if the result is unknown.
bench-prints-tags = Tags in this job
bench-state-waiting = Waiting for { $printer }.
bench-state-sending = Sending to { $printer }.
bench-state-printing = Accepted by { $printer } as job { $job }.
bench-state-done = { $printer } printed it.
bench-state-done-by = { $printer } printed it (confirmed by { $name }).
bench-state-failed = { $printer } did not print this job.
bench-state-failed-partly = { $printer } did not print all tags.
bench-state-unknown = It may have been printed. Check { $printer }, then send it again or mark it as printed.
bench-state-dropped = Cancelled.
bench-state-dropped-by = Cancelled by { $name }.
bench-state-attempts = Sent { $count } times.
bench-state-send-again = Send again
bench-state-mark-printed = Mark as printed
bench-state-cancel = Cancel job
bench-state-cancel-ask = Cancel this print job? You can print the tags later.

## A tag's record

bench-record-title = Tag { $number }
bench-record-withdrawn = Withdrawn: do not use.
bench-record-signature = Signature of the scanned tag: { $said }
bench-record-blocked = Blocked: do not print this tag.
bench-record-replaced-by = Replaced by
bench-record-replacement-built = A replacement is built. It has not been recorded as installed:
bench-record-to-be-fitted = This replacement is built. Record “installed” when it is on the machine. Until then this one stays in use:
bench-record-assembly = Assembly
bench-record-replaces = Replaces
bench-record-order = Order
bench-record-reprint = { $count ->
    [one] Print again ({ $count } print so far)
   *[other] Print again ({ $count } prints so far)
 }
bench-record-build-replacement = Build replacement
bench-record-build-copy = Build a copy
bench-record-phone-page = Show phone page
bench-record-do-not-use = Print “do not use” tag
bench-record-history = History
bench-record-event = Event
bench-record-proof-line = { $pressure }, { $hold } s, { $medium }, { $tester }
bench-record-crimp-in = End { $end }: { $measured } mm, within { $low } to { $high } mm
bench-record-crimp-out = End { $end }: { $measured } mm, outside { $low } to { $high } mm
bench-record-printed-on = Label: { $label }. Printer: { $printer }.
bench-record-printed-as = Label: { $label }. File: { $form }.
bench-record-printed-label = Label: { $label }.
bench-record-crimp = Crimp diameter
bench-record-crimp-end = End { $end } (mm)
bench-record-crimp-shell = Ferrule (shell), end { $end }
bench-record-crimp-choice = { $shell }: { $diameter } +{ $plus } -{ $minus } mm ({ $source })
bench-record-crimp-save = Record crimp diameter
bench-record-crimp-none = No crimp diameter set for { $hose }. A manager can add one under Settings, from the fitting manufacturer's chart.
bench-record-proof = Proof test
bench-record-proof-danger = Stored pressure can kill or injure.
bench-record-proof-care = Bleed all air before the test, stay behind the guard, and follow the test bench manufacturer's instructions and local regulations.
bench-record-proof-required = Required proof pressure: { $pressure }, hold time { $low } to { $high } s.
bench-record-proof-unknown = Required proof pressure not known: the manufacturer's working pressure is needed first. Hold time { $low } to { $high } s.
bench-record-proof-ask-rating = Not known or unverified: { LIST($parts) }. Enter the manufacturer's working pressure and its source with the test.
bench-record-proof-result = { $result ->
        [passed] Proof test passed
        [tested] Tested, not a proof test
        [held] Held: do not use
        [outdated] Tested before it was crimped: test again
       *[failed] Failed
     }
bench-record-proof-slip = Above the minimum burst pressure of { $burst }: check the value and its unit.
bench-record-proof-over = Above { $most }: the assembly will be held until the manufacturers allow it in writing.
bench-record-proof-no-rating = The manufacturer's working pressure is needed before a test can pass.
bench-record-proof-low = Less than the required { $called }: no proof test.
bench-record-proof-enough = Enough for the proof test.
bench-record-lower-hint = Example: customer's drawing 4711
bench-record-allow = Manufacturers' written allowance
bench-record-allow-save = Record allowance
bench-record-allow-who = A manager can record the manufacturers' written allowance.
bench-record-allowed-line = { $who }, { $day }, { $document }
bench-record-source = Source: { $source }
bench-record-pressure-hint = bar or psi
bench-record-pass = Passed
bench-record-fail = Failed
bench-record-fail-ask = Record the test as failed? The tag will be blocked.
bench-record-certificate = Certificate (PDF)
bench-record-card = Fitter's card (PDF)
bench-record-no-card = No fitter's card for this hose assembly
bench-record-lot-reason = The reel lot is known as another hose. Reason: { $reason }
bench-record-void = VOID, do not fit.
bench-record-slips = Correct the record or make it void
bench-record-correct = Correct the record
bench-record-correct-save = Save correction
bench-record-corrected = { $field }: { $old } → { $new }.
bench-record-void-title = Make the record void
bench-record-void-hint = Only while the tag was never scanned and the assembly was never installed, proof-tested or handed over. Later, withdraw it.
bench-record-void-ask = Make this record void? The hose assembly must not be fitted.
bench-record-void-save = Make void
bench-record-change-made = Change asked for: “{ $changes }”. Changed:
bench-record-change-considered = Change asked for: “{ $changes }”. Considered, nothing entered.
bench-record-add-event = Add to history
bench-record-withdraw = Withdraw ...

## Find, machines

bench-find = Find
bench-find-number-hint = or a part
bench-find-pressure-hint = bar or psi
bench-find-any = any
bench-find-printed-yes = printed
bench-find-printed-no = not printed
bench-find-withdrawn-yes = withdrawn
bench-find-withdrawn-no = not withdrawn
bench-find-clear = Clear
bench-find-older = Older
bench-machine-title = Machine { $machine }
bench-machine-none = No machine
bench-machine-installed = Installed hoses: { $count }, by position
bench-machine-order = Order
bench-machine-order-one = Order { $number }
bench-machine-order-selected = Order selected hoses
bench-machine-order-button = Order selected
bench-machine-empty = No hoses recorded for this machine.

## Orders

bench-orders-title = Order requests
bench-orders-open-only = Open only
bench-orders-all = Show all
bench-orders-order = Order
bench-orders-received = Received
bench-orders-needed = Needed by
bench-orders-from = From
bench-orders-action = Action
bench-orders-reference = Customer ref.: { $reference }
bench-orders-no-name = no name
bench-orders-what = { $hose }, { $length }
bench-orders-build = Build
bench-orders-none = No open order requests. Customers send them from the tag pages.
bench-order-title = Order { $order }
bench-order-heading = Order
bench-order-details = Order details
bench-order-withdrawn = The tag of a withdrawn hose ({ LIST($reasons) }): build it anew to its specification. Its lots are not copied. Find out first whether the same parts may be used again.
bench-order-from-tag = From tag
bench-order-foreign-tag = { $number } (not in our records; spec read from the tag)
bench-order-no-tag = none
bench-order-reference = Customer ref.
bench-order-contact = Contact
bench-order-built = Built for this order:
bench-order-answer = Answer
bench-order-message = Message to customer (required for a question)
bench-order-verb-accepted = Accept order
bench-order-verb-asked = Ask customer
bench-order-verb-declined = Decline order
bench-order-verb-done = Mark as done
bench-order-hint = The customer sees the status and this message on the order page.

## Withdrawals

bench-withdrawn-title = Withdrawn: do not use
bench-withdrawn-state = Withdrawn
bench-withdrawn-lifted = Lifted
bench-withdrawn-lifted-because = Reason for lifting: { $reason }
bench-withdrawn-lifted-on = Lifted { $day }.
bench-withdrawn-lifted-on-by = Lifted { $day } by { $name }.
bench-withdrawn-affected = Affected hoses and customers
bench-withdrawn-lift-this = Lift this withdrawal ...
bench-withdrawn-lift-reason = Reason for lifting
bench-withdrawn-lift = Lift withdrawal
bench-withdrawn-none = Nothing is withdrawn.
bench-withdrawn-new = Withdraw
bench-withdrawn-show = Show affected hoses
bench-withdrawn-count = { $count ->
    [one] { $count } registered assembly is affected.
   *[other] { $count } registered assemblies are affected.
 }
bench-withdrawn-customers = Customers: { $count }.
bench-withdrawn-reason = Reason (shown first at every scan)
bench-withdrawn-seconds = Pages open on phones show it within { $count } seconds.
bench-withdrawn-lot-closed = No more hoses can be registered from this lot.
bench-withdrawn-call-list = Customer list (CSV)
bench-withdrawn-call = Whom to call
bench-withdrawn-letters = Letters (PDF)

## Import and export

bench-lists-import = Import a list
bench-lists-how = CSV or XLSX, one row per spec. Match the columns, check the problems found in each cell, then register the whole list. If one row fails, nothing is registered.
bench-lists-file = File, at most 5 MB
bench-lists-read = Import
bench-lists-template = Template ({ $form })
bench-lists-columns = Allowed columns
bench-lists-export = Export
bench-lists-all = All assemblies ({ $form })
bench-lists-everything = Everything (ZIP)
bench-lists-epcis = History as EPCIS 2.0
bench-lists-formats = The ZIP file contains JSON Lines and CSV. EPCIS is an open GS1 standard used by large customers.
bench-lists-unprinted = Registered, not printed yet
bench-lists-tags = { $count } { $count ->
    [one] tag
   *[other] tags
 }
bench-match-title = Match columns
bench-match-rows = { $name }: { $count } { $count ->
    [one] row
   *[other] rows
 }
bench-match-problems = { $count } { $count ->
    [one] problem
   *[other] problems
 }
bench-match-nothing = Nothing was registered. Correct the list and import it again, or match the columns differently.
bench-match-by-cell = Problems by cell
bench-match-also = { $count ->
    [one] Also in { $first }.
   *[other] Also in { $count } other cells, { $first } to { $last }.
 }
bench-match-cell = Cell
bench-match-column = Column
bench-match-value = Value
bench-match-problem = Problem
bench-match-fix = How to fix
bench-match-first-problems = The first { $count } are shown.
bench-match-good = The check found no problem.
bench-match-found = Rows: { $rows }. Assemblies: { $count }. Nothing registered yet.
bench-match-register = Register { $count } and print
bench-match-preview = Preview
bench-match-cautions = { $count } { $count ->
    [one] caution
   *[other] cautions
 }
bench-match-matched = Columns matched
bench-match-theirs = Column in file
bench-match-sample = Sample rows
bench-match-ours = Field
bench-match-unit = Unit from the heading: { $unit }
bench-match-words = Words in the list
bench-match-words-hint = What each word is read as. Change it if it means something else, then check the list again.
bench-match-word-for = Meaning of “{ $word }”
bench-match-word-none = Choose a meaning
bench-match-word-means = Read as
bench-match-no-heading = (no heading)
bench-match-field-for = Field for { $column }
bench-match-field-for-number = Field for column { $number }
bench-match-leave-out = do not import
bench-match-left-out-columns = Not read: { LIST($columns) }. Nothing from these columns is registered.
bench-match-check = Check
bench-match-another = Another file

## Statistics

bench-figures = Statistics
bench-figures-title = Statistics for the last { $days } days
bench-figures-period = Period
bench-figures-days = { $days } days
bench-figures-year = 1 year
bench-figures-registered = Assemblies registered
bench-figures-printed = Tags printed
bench-figures-reprints = { $count } { $count ->
    [one] reprint
   *[other] reprints
 }
bench-figures-scanned = Scans
bench-figures-orders = Order requests
bench-figures-ordered = Orders from scans
bench-figures-from-tags = { $count } from a scanned tag
bench-figures-plot = { $title }: { $count } from { $from } to { $to }, maximum { $top } { $span ->
    [week] per week
   *[day] per day
 }
bench-figures-bar = { $day }: { $count }
bench-figures-oldest = Oldest hoses still in use (according to the records)
bench-figures-guidance = Guidance.
bench-figures-next = Next recommended date
bench-figures-next-date = { $day }: { $rule }
bench-figures-past = all dates passed
bench-figures-sources = Sources of the dates
bench-figures-rule = { $rule } Source: { $source } ({ $confidence })

## Settings

bench-shop-token = Token for { $device }.
bench-shop-token-once = Copy it to the device now. It is not shown again.
bench-shop-proxy = Requests come through { $address } on behalf of other addresses, and TAGGER_TRUSTED_PROXIES does not name it.
bench-shop-proxy-mend = If it is your proxy, set TAGGER_TRUSTED_PROXIES={ $address }: until then all visitors count as one, and one of them can use up the limits of all. If you have no proxy, somebody sends a false address; it is not believed.
bench-shop-undelivered = Undelivered messages
bench-shop-undelivered-hint = Order notifications. Sending is retried at intervals of up to six hours. Correct the cause shown.
bench-shop-to = To
bench-shop-tries = Tries
bench-shop-people = People
bench-shop-sign-in = Sign-in
bench-shop-blocked = sign-in disabled
bench-shop-role-of = Role of { $name }
bench-shop-set-role = Set role
bench-shop-everywhere = Sign out everywhere
bench-shop-disable = Disable sign-in
bench-shop-disable-ask = Disable sign-in for { $name }?
bench-shop-enable = Enable sign-in
bench-shop-new-password = New password ...
bench-shop-new-password-for = New password for { $name }
bench-shop-set-password = Set password
bench-shop-add-person = Add a person
bench-shop-initial-password = Initial password
bench-shop-roles = Builder: builds, tests and prints. Counter: also answers orders, withdraws and imports lists. Manager: also lifts withdrawals, sees statistics and changes settings.
bench-shop-devices = Devices and programs
bench-shop-device = Device
bench-shop-device-role = Role of the device
bench-shop-token-head = Token
bench-shop-revoked = revoked
bench-shop-revoke = Revoke
bench-shop-create-token = Create token
bench-shop-api = JSON API for devices and programs
bench-shop-values = Manufacturers' values
bench-shop-values-hint = Kept while building, for every later hose. A withdrawn value is not used any more and stays in this list.
bench-shop-value-withdraw = Withdraw
bench-overrated = Rated above today's values
bench-overrated-hint = The pressure on these tags is higher than today's tables allow. The lower value applies: tell whoever uses the hose.
bench-overrated-none = No registered hose assembly is rated above today's values.
bench-shop-crimp-diameter = Diameter
bench-shop-crimp-band = { $diameter } +{ $plus } -{ $minus } mm
bench-shop-recipes = Saved specs
bench-shop-recipe-delete-ask = Delete saved spec { $name }?
bench-shop-keep = Data of people
bench-shop-keep-hint = Contacts of finished orders, photos, and names in decided reports of installation are erased after these days; whom to call about a withdrawal stays. Records and history of hose assemblies stay. The days are settings of the server. Copies written before still hold what is erased.
bench-shop-keep-contacts = Contacts
bench-shop-keep-photos = Photos
bench-shop-keep-reports = Names in reports of installation
bench-shop-keep-days = { $days ->
        [0] kept for ever
       *[other] { $days } days; to erase now: { $due }
     }
bench-shop-keep-erase = Erase now
bench-shop-keep-ask = Erase what has been kept long enough? This cannot be undone.
bench-shop-no-recipes = No saved specs. Save one on the build page.
bench-shop-me = My password and sessions
bench-shop-printers = Printers
bench-shop-no-printers = No printers. Tags are printed as PDF or PNG.
bench-shop-label-loaded = Label loaded
bench-shop-label-varies = varies
bench-shop-add-printer = Add a network printer
bench-shop-printer-default = printer default
bench-shop-check-printer = Check and add printer
bench-shop-printer-hint = Any printer that supports IPP with PDF or PWG Raster. The server connects to this address, so only a manager can add printers.
bench-printer-title = Printer { $name }
bench-printer-status = Current printer status
bench-printer-model = Model
bench-printer-state-idle = idle
bench-printer-state-processing = busy
bench-printer-state-stopped = stopped
bench-printer-refuses = Not accepting jobs.
bench-printer-formats = Formats
bench-printer-no-format = neither PDF nor PWG Raster
bench-printer-media = Media loaded
bench-printer-settings = Printer settings
bench-printer-added = Added
bench-printer-check = Check again
bench-printer-back = Back to settings
bench-printer-remove = Remove
bench-printer-remove-ask = Remove { $name }? Waiting jobs will not be printed.
bench-printer-change = To change the address, resolution or label, remove the printer and add it again with the same name.
bench-me-new-password = New password
bench-me-new-password-long = New password (at least 12 characters)
bench-me-change = Change password and sign out everywhere
bench-me-sign-out-this = Sign out on this device

## JSON API

bench-api-title = JSON API
bench-api-openapi = Machine-readable description (OpenAPI)
bench-api-token = Send a device token (created under Settings) in the header:
bench-api-errors = Errors come as application/problem+json (RFC 9457) with every field's problem. A POST with the header Idempotency-Key can be repeated safely.
bench-api-verb = Verb
bench-api-address = Address
bench-api-purpose = Purpose
bench-api-parameters = Parameters
## The shop's fittings

bench-field-end-fitting = Stock number
bench-build-fitting-hint = scan ...
bench-field-stock_number = Stock number
bench-field-fitting_series = Fitting series (ferrule, shell)
bench-field-swivel = Swivels after crimping
bench-field-cut_off_mm = Cut-off
bench-field-cut_off_kind = Cut-off ends at
bench-field-insertion_depth_mm = Insertion depth
bench-stock-title = Fittings
bench-stock-hint = Dimensions are the fitting manufacturer's. None are supplied with this program.
bench-stock-find = Find fittings
bench-stock-none = No fittings found.
bench-stock-keep = Add or change a fitting
bench-stock-edit = Edit
bench-stock-delete-ask = Delete { $number } from the list? Tags that name it keep it.
bench-stock-import = Import a list
bench-stock-import-hint = All rows are imported, or none. A stock number that is already in the list is replaced.
bench-stock-kind-seat_to_hose_butt = seat to hose butt (where the hose ends)
bench-stock-kind-seat_to_shell_mouth = seat to the shell's mouth
bench-stock-yes = yes
bench-stock-no = no
bench-field-hose_part = Part number of the hose
bench-field-die = Die
bench-field-skive_outside_mm = Skive outside (length)
bench-field-skive_inside_mm = Skive inside (length)
bench-field-machine_setting = Machine setting

## Hoses of the shop

bench-hoses-title = The shop's hoses
bench-hoses-hint = Values are the hose manufacturer's, with their source. They apply only to a hose with that part number.
bench-hoses-none = No hoses are kept.
bench-hoses-keep = Add or change a hose
bench-field-part = Manufacturer's part number
bench-field-manufacturer = Manufacturer
bench-field-standard = Hose standard
bench-field-edition = Edition
bench-field-max_working_bar = Maximum working pressure
bench-field-outside_diameter_mm = Outside diameter
bench-field-fluids = Fluids the manufacturer allows

bench-crimps-title = Crimp cards
bench-crimps-hint = From the fitting manufacturer's chart for this hose and fitting series. None are supplied with this program.
bench-crimps-none = No crimp cards are kept.
bench-crimps-keep = Add or change a crimp card
bench-crimps-keep-hint = A card is for one hose and one fitting series; with the same ones it replaces the card that is there. Without a part number it is for the standard alone, and approves nothing together.
bench-crimps-any-part = any hose of this standard: approves nothing together
bench-crimps-delete-ask = Delete the crimp card for { $series }? Crimps that were measured keep their values.
bench-crimps-import-hint = All rows are imported, or none. A card for the same hose and fitting series is replaced.
bench-hoses-import-hint = All rows are imported, or none. A hose with the same part number and size is replaced.
bench-flush-title = Flushing
bench-flush-hint = How and with what they were cleaned inside, and by whom. The history and the certificate say so. It is no measurement of the cleanliness that is asked for.
bench-flush-last = Last flushed
bench-field-flushed_by = Flushed by

## Codes of a phone beside the password

bench-code = Code from your phone
bench-code-give = Six digits that the app on your phone shows now
bench-code-recovery = Phone lost? Enter one of your recovery codes instead; each works once.
bench-code-other = Sign in as someone else
bench-code-wrong = The code is not valid.
    .mend = Wait for the next code and check the clock of the phone.
bench-account-sessions = Where you are signed in
bench-account-this = This browser
bench-account-phone = Phone
bench-account-computer = Computer
bench-account-since = since { $since }, last used { $seen }
bench-account-end = End
bench-account-end-of = End the session of { $since }
bench-account-end-others = End all other sessions
bench-account-happened = Changes to your account
bench-account-password = The password was changed.
bench-account-role = The role was changed.
bench-account-codes-on = Codes from a phone were set up.
bench-account-codes-off = Codes from a phone are no longer asked for.
bench-account-recovery-code = A recovery code was used.
bench-account-repeated-code = A code from your phone was entered a second time and refused.
bench-account-new-browser = Signed in with a new browser.
bench-account-by = By: { $name }.
bench-account-from = From: { $address }.
bench-account-not-you = If that was not you: change your password, end all other sessions and tell the manager.
bench-account-seen = I have seen this
bench-account-untold = Something was changed in how you sign in.
bench-account-look = See what was changed
bench-codes = Codes from your phone
bench-codes-why = With codes, a password that somebody has learned is not enough to sign in. Recommended for managers.
bench-codes-set-up = Set up codes
bench-codes-are-asked = A code from your phone is asked for when you sign in.
bench-codes-off = Stop asking for codes
bench-codes-another = Set up another phone
bench-codes-hint = Scan the symbol with an app for one-time codes, then enter the code that it shows.
bench-codes-picture = Symbol to scan with the phone
bench-codes-type = Or type this secret into the app:
bench-codes-first = Code that the app shows
bench-codes-ask = Ask for codes from now on
bench-codes-on = From now on a code is asked for when you sign in.
bench-codes-recovery = Recovery codes
bench-codes-recovery-hint = Write them down and keep them away from the phone: each replaces a code once. They are shown only now.
bench-shop-codes-off = Ask for no codes
bench-shop-codes-ask = Stop asking { $name } for codes? The password alone will then do.

## Label templates at true size

bench-templates-title = Labels at true size
bench-templates-hint = Specimens with invented values at { $dpi } dpi. Print this page at 100 %, or set the zoom until the line below measures 100 mm: then every label has its true size.
bench-templates-language = Language of the labels
bench-templates-ruler = This line is 100 mm (3.94 in) long.
bench-templates-size = { $width } wide, { $height } high
bench-templates-holds = Shows
bench-templates-codes = QR codes
bench-templates-survives = Survives
bench-templates-list = { LIST($items) }
bench-templates-symbol = { $count ->
    [one] 1 code, level { $level }, modules of { $module } mm
   *[other] { $count } codes, level { $level }, modules of { $module } mm
}
bench-templates-tightening = tightening with its basis
bench-templates-caution = the caution
bench-templates-code-all = QR code with the whole specification
bench-templates-code-number = QR code with the link of the tag number alone
bench-templates-bars = tag number as a bar code
bench-templates-sign = a sign: do not use
bench-templates-stays = Paper for the shop: damage is not measured.
bench-templates-measured = The specification was still read from { $all } % of damaged labels (measured { $day }, { $trials } trials for each kind of damage, 203 dpi):
bench-templates-not-measured = Not measured on this layout.
bench-templates-wound-torn_corner = corner torn off: { $share } %
bench-templates-wound-torn_edge = edge torn off, 8 mm: { $share } %
bench-templates-wound-rubbed_band = band rubbed bare, 8 mm: { $share } %
bench-templates-wound-scratches = 14 scratches: { $share } %
bench-templates-wound-faded = faded: { $share } %
bench-templates-wound-oil = old oil: { $share } %
bench-templates-wound-burnt_half = one half burnt: { $share } %
bench-templates-show = Show all labels at true size

## What was found on a gauge sheet

bench-field-found = Marks found on the sheet
bench-field-scale = Check line measures
