# The public pages: a tag, finding it, ordering again, identifying a hose without a tag.

## Around every page

scan-skip = Skip to content
scan-choose = Language and units
scan-units-metric = bar, mm first
scan-units-inch = psi, in first
scan-call = Call
scan-call_shop = Call { $shop }
scan-share-tag = Share or save this tag
scan-more = More
scan-find_another = Find another tag
scan-no_tag = No tag? Identify the hose
scan-disclaimer = The values come from the sources shown. They do not replace the fitting manufacturer's data, the machine manual, local regulations or a qualified fitter.
scan-tag = Tag
scan-tag-title = Tag { $number }
scan-line = { $label }: { $text }
scan-source = Source: { $source }
scan-source-basis = Source: { $source } ({ $basis })
scan-source-label = Source
scan-app-name = Hose tag reader
scan-app-short_name = Hose tags

## Finding a tag

scan-find-title = Find a tag
scan-typed-hint = XXXXX-XXXXXX, printed under the QR code; or an order number, R-XXXXXXX
scan-typed-show = Show tag
scan-camera-title = Scan with the camera
scan-camera-start = Start camera
scan-camera-picture = Camera picture
scan-camera-not_a_tag = This is not a hose tag code.
scan-camera-missing = Camera not available. Allow camera access or use a photo.
scan-photo-title = Use a photo of the tag
scan-photo-label = Photo of the QR code or barcode
scan-photo-read = Read tag
scan-photo-reading = Reading the photo ...
scan-photo-none_offline = No tag was found in the photo, and there is no signal. Take it closer and straight, or type the number.
scan-seen-title = Tags seen on this device
scan-sent-title = Orders sent from this device
scan-seen-forget = Forget all on this device
scan-meant = Did you mean
scan-meant-number = { $number } ({ LIST($slips) })
scan-meant-slip = position { $place }: { $right }, not { $wrong }

## Refusals

scan-refused-title = This tag cannot be read
scan-refused-line = { $field }: { $why } { $mend }
scan-not_there-title = Page not found
scan-not_there = There is no page at this address.
    .mend = Scan the QR code on the tag again, or type its number.
scan-unknown_tag = { $number } is not in this shop's records.
    .mend = Scan the QR code on the tag: it contains the full specification.
scan-photo-too_large = The photo is too large.
    .mend = Use a smaller photo.
scan-order-nothing = The order names no hose.
    .mend = Scan the tag, or type its number.
scan-order-quantity = { $given } is not a whole number.
    .mend = Enter a whole number, for example 2.
scan-order-day = { $given } is not a date.
    .mend = Enter year, month and day, for example 2027-03-31.
scan-order-unknown = There is no order { $number }.
    .mend = Check the order number.
scan-picked-wrong = { $given } is not a valid choice.
    .mend = Measure the end again.
scan-picked-missing = An end is missing.
    .mend = Measure both ends first.
scan-form-missing = The form is missing.
    .mend = Choose male or female.

## Captions of fields

scan-field-spec = Hose
scan-field-number = Tag number
scan-field-digits = Tag code
scan-field-link = Link
scan-field-database = Server
scan-field-address = Address
scan-field-image = Photo
scan-field-quantity = Quantity
scan-field-needed_by = Needed by
scan-field-order = Order number
scan-field-reference = Your reference
scan-field-contact_phone = Phone
scan-field-contact_email = Email
scan-field-contact_name = Name
scan-field-contact_company = Company
scan-field-changes = Changes you want
scan-field-fitted_on = Installation date
scan-field-machine = Machine
scan-field-machine_hours = Machine hours
scan-field-fitted_by = Installed by
scan-field-pin = PIN
scan-field-photo_fitted = Photo
scan-field-photo_hose = Photo of the failed hose assembly
scan-field-photo_routing = Photo of the routing
scan-field-form = Form
scan-field-thread_od = Thread diameter
scan-field-thread_id = Thread diameter
scan-field-tpi = Threads per inch
scan-field-pitch = Or pitch in mm
scan-field-side = Place of the thread
scan-field-swivels = Whether it turns
scan-field-shape = Thread shape
scan-field-seals = What seals
scan-field-od = Outside diameter
scan-field-bore = Bore
scan-field-kind = Kind of reinforcement
scan-field-layers = Number of layers
scan-field-lay_line = Lay line
scan-field-seat = Seat
scan-field-cone = Cone
scan-field-tube_od = Tube outside diameter
scan-field-flank = Thread flank angle
scan-field-cannot = Cannot be measured
scan-field-nose = Nose or socket diameter
scan-field-series = Series
scan-field-origin = Origin of the machine
scan-field-hex = Hexagon across flats (A/F)
scan-field-flange_od = Flange head diameter
scan-field-bolt_spacing = Bolt spacing, long side, centre to centre
scan-field-measurements = Measurements
scan-field-end = Ends
scan-field-hose_standard = Hose standard
scan-field-hose_dash = Hose dash size
scan-field-length_mm = Overall length
scan-field-clocking_deg = Clocking angle
scan-field-end_a = End A
scan-field-end_b = End B
scan-field-covers = Sleeves and guards

## A tag: what stands first

scan-withdrawn-title = Withdrawn: do not use
scan-withdrawn-act = Do not use this hose. If it is installed, stop the machine, release the pressure and remove it. Then contact the shop.
scan-withdrawn-order = This is the tag of a withdrawn hose. The order is for a new hose built to its specification; the lots of the withdrawn hose are not copied.
scan-withdrawn-since = Withdrawn on { $day }
scan-withdrawn-no_guide = This hose is withdrawn. Do not install it.
scan-notice-tag_only-title = Shown from the tag only
scan-notice-tag_only = This shop has no record of this number. The data shown come from the tag only. Ask the shop that built the hose whether it has been withdrawn.
scan-notice-damaged-title = Tag code damaged
scan-notice-damaged = The data in this code cannot be read. The shop's record is shown instead: compare it with the text printed on the tag.
scan-notice-differ-title = Tag and record differ
scan-notice-differ = The shop's record is shown. Do not install the hose until the shop confirms which is correct.
scan-differ-record = Record:
scan-differ-tag = Tag:
scan-differ-nothing = nothing
scan-notice-overrated-title = Lower pressure than registered
scan-claims-title = The tag claims more pressure than the tables allow
scan-claims-more = The tag claims { $was }. The tables allow { $now }: use no more, and ask the shop.
scan-claims-none = The tag claims { $was }. The tables allow no pressure for this hose assembly as it is described: do not install it before the shop has confirmed a pressure.
scan-notice-replaced-title = Hose replaced
scan-notice-replaced = A newer hose has replaced it.
scan-void-title = VOID: do not fit
scan-void-act = The record of this tag was entered by mistake. Do not fit this hose assembly. Ask the shop.
scan-void-no-guide = The record is void: there is no fitting guide.
scan-held-title = Held by the shop: do not install
scan-held-act = The shop has not released this hose assembly. Do not install it. If it is installed, stop the machine, release the pressure and remove it. Then contact the shop.
scan-held-no-guide = The shop has not released this hose assembly: there is no fitting guide.
scan-notice-replacement-title = A replacement is built
scan-notice-replacement = A new hose assembly is built to replace this one. It has not been recorded as installed.
scan-notice-to-be-fitted = This hose assembly is built to replace another. It has not been recorded as installed.
scan-notice-old-title = Past its storage or service life
scan-notice-life = Built on { $day }, more than { $years } { $years ->
    [one] year
   *[other] years
 } ago. Maximum service life: { $years } { $years ->
    [one] year
   *[other] years
 } including storage ({ $source }). Have it replaced, or inspected by a competent person, before further use.
scan-notice-shelf = Built on { $day }, more than { $years } { $years ->
    [one] year
   *[other] years
 } ago. Maximum storage time of a hose assembly: { $years } { $years ->
    [one] year
   *[other] years
 } ({ $source }). If it has not been in use since, have it inspected before you install it.

## A tag: figures and parts by themselves

scan-one_line = { $hose }, { $length }
scan-short_end = { $title }, { $shape }
scan-temperature = { $temperature }
scan-length-figure = { $length }
scan-cover_list = { LIST($covers) }
scan-day = { $day }

## A tag: the hose

scan-pressure = Max. working pressure
scan-pressure-not_known = The working pressure of this assembly is not known. Do not install it until the hose and fitting manufacturers' data have confirmed it.
scan-pressure-given = Value set by the shop. Source: { $source }
scan-pressure-as_tagged = As recorded on the tag by the shop
scan-pressure-least = Lowest rating of hose and both ends; limited by { SAY($part) }. Source: { $source }
scan-origin = Where is this from
scan-origin-graded = Grade: { $grade }. { $source }
scan-hose = Hose
scan-the_hose = The hose
scan-end_a = End A
scan-end_b = End B
scan-length = Length
scan-length-tolerance = Tolerance: { $minus } shorter, { $plus } longer
scan-clocking = Clocking angle
scan-clocking-tolerance = Tolerance: ±{ $angle }
scan-clocking-shop = Clockwise from elbow A: { $angle }. Hold end A nearest you with elbow A pointing up (this shop's convention).
scan-clocking-convention = Convention: MIL-DTL-83796-5 figure 3 (citing SAE J517); viewing side: common practice.
scan-max_temperature = Maximum temperature
scan-min_temperature = Minimum hose temperature
scan-vacuum = Maximum vacuum
scan-fluid = Fluid
scan-covers = Sleeves and guards
scan-bend_radius = Minimum bend radius
scan-built_on = Built on
scan-note = Note
scan-state = Status
scan-tightening = Tightening
scan-tighten-a = Tightening, end A
scan-tighten-b = Tightening, end B
scan-sources = Sources
scan-thread = Thread { $thread }, male OD { $diameter }
scan-thread-flange = Flange head diameter { $diameter }
scan-thread-plain = Outside diameter of the plug or tube { $diameter }
scan-thread-not_known = Thread not in the tables: use the fitting manufacturer's data.
scan-scale = Mating diameter to scale; the rest is schematic. Source: { $source }
scan-scale-none = Not drawn to scale.
scan-link = Link

## A tag: installing it

scan-fit = Install
scan-fit-first = Follow the machine manual first, then the fitting manufacturer's data and local regulations. Do not start unless you are trained to work on hydraulic systems.
scan-fit-doubt-title = Do not install this hose assembly yet
scan-fit-doubt-differ = The tag says something else than the shop's record. Ask the shop which is correct.
scan-fit-doubt-damaged = The tag code cannot be read, so the tag cannot be compared with the shop's record. Compare the hose, both ends and the length with this page. If anything differs, ask the shop.
scan-fit-doubt-claims = The tag claims more pressure than the tables allow, and its other values may be wrong too. Ask the shop first.
scan-fit-anyway = Show the guide all the same
scan-tightening-anyway = Show the tightening values all the same
scan-fit-start = Start
scan-fit-step = Step { $n } of { $total }
scan-fit-back = Back
scan-fit-next = Next
scan-fit-done = Done
scan-fit-resume = Continue where you stopped
scan-fit-read = Read this step aloud
scan-tabs = What do you want to do?
scan-tab-hose = The hose
scan-tab-order = Order again
scan-tab-fit = Install

## Ordering

scan-order-again = Order again
scan-order-by_phone = Order by phone or email
scan-order-lines = Order details for any hose shop:
scan-order-please = Please make another hose like this:
scan-order-subject = Order again: tag { $number }
scan-order-copy = Copy
scan-order-share = Share
scan-order-reference-hint = Your order number, job number or machine
scan-order-contact = Your contact details
scan-order-contact-hint = Enter a phone number or an email address.
scan-order-changes = Order with changes
scan-order-changes-hint = Leave blank if unchanged.
scan-order-new_length = New length (tag: { $length })
scan-order-new_end_a = New end A (tag: { $end })
scan-order-new_end_b = New end B (tag: { $end })
scan-order-other = Other changes
scan-order-send = Send order
scan-order-photos = Photos (optional)
scan-order-photos-hint = Only the shop sees them. They are made smaller before they are sent.
scan-order-remember = Remember my contact details on this device
scan-order-sending = Sending your order request ...
scan-order-not_kept = Not sent: no connection, and this phone cannot save the order request. Try again, or call the shop.
scan-order-already = You have already ordered this hose assembly from this phone. Order number:
scan-order-once_more = Order once more
scan-order-corrected = Nothing has been sent yet. What you entered is still in the form below.
scan-order-checked = The shop checks every order and contacts you before building.
scan-order-waiting = No signal. Your order is saved on this phone and will be sent automatically. Do not send it again.
scan-order-not_sent = Order not sent
scan-order-not_found = Order not found
scan-outbox-sent = Your order was sent. Order number:
scan-outbox-waiting = Your order is saved on this phone. It will be sent when there is a signal and this page is open.
scan-outbox-refused = This order request was not accepted. Correct it and send it again.
scan-outbox-correct = Correct
scan-outbox-delete = Delete
scan-ordered-title = Order { $reference }
scan-ordered-received = We have received your order request
scan-ordered-number = Order number
scan-ordered-keep = Note this number or keep this page. Quote it when you call.
scan-ordered-what = What you ordered
scan-ordered-answer = { $days ->
    [one] The shop answers within one working day.
   *[other] The shop answers within { $days } working days.
 }
scan-ordered-said = Message from the shop
scan-ordered-back = Back to the tag
scan-order_state-received = received
scan-order_state-asked = question from the shop
scan-order_state-accepted = accepted
scan-order_state-building = being built
scan-order_state-done = done
scan-order_state-declined = declined

## Identifying a hose without a tag

scan-identify-careful = Stop the machine and release the pressure before you touch a joint. Never feel for a leak with your hand.
scan-identify-next_hose = Next: identify the hose
scan-identify-same = End B is the same as end A
scan-identify-possible_a = Possible connections, end A
scan-identify-possible_b = Possible connections, end B
scan-identify-measure_next = Measure next
scan-identify-enter_below = Enter it below
scan-identify-no_match = No match found. Measure again or take the hose to the shop.
scan-identify-likelihood = likelihood { $percent }
scan-identify-contradicts = Not a match. Differs in: { LIST($features) }.
scan-identify-use_a = Use for end A
scan-identify-use_b = Use for end B
scan-identify-measure_a = Measure end A
scan-identify-measure_b = Measure end B
scan-identify-diameter-hint = Male: outside diameter. Female: inside diameter. Example: 1 1/16 in or 26.9 mm
scan-identify-more = More measurements
scan-identify-go = Identify
scan-identify-ends = Measure the ends
scan-identify-cannot = I cannot measure that
scan-identify-kept = No signal: worked out on this phone, from the same tables as with a signal.
scan-flank-not_sure = not sure
scan-flank-60 = 60°
scan-flank-55 = 55°
scan-series-not_sure = not sure
scan-series-S = heavy (S)
scan-series-L = light (L)
scan-origin-not_sure = not sure
scan-origin-europe = Europe
scan-origin-north_america = North America
scan-origin-asia = Asia
scan-seat-not_sure = not sure
scan-seat-37 = 37° flare
scan-seat-45 = 45° flare
scan-seat-30 = 30° flare or cone
scan-seat-60 = 60° cone
scan-seat-24 = 24° cone
scan-seat-face = O-ring in the flat face
scan-seat-boss = O-ring boss (O-ring under the hexagon)
scan-seat-flat = flat face, for a washer or a flange
scan-seat-taper = no seat: taper thread
scan-cone-not_sure = not sure
scan-cone-outside = outside cone (projects like a nose)
scan-cone-inside = inside cone (recessed like a funnel)
scan-feature-thread = thread diameter
scan-feature-tpi = pitch
scan-feature-seat = seat
scan-feature-cone = cone
scan-feature-side = place of the thread
scan-feature-swivels = whether it turns
scan-feature-shape = thread shape
scan-feature-seals = what seals
scan-feature-flank = flank angle
scan-feature-nose = nose or socket diameter
scan-feature-hex = hexagon
scan-feature-tube_od = tube diameter
scan-feature-flange_od = flange head diameter
scan-feature-bolt_spacing = bolt spacing
scan-ask-thread = Measure the thread diameter with a caliper: outside on a male, inside on a female. Hold the caliper at an angle to the thread.
scan-ask-tpi = Measure the pitch with a thread gauge: threads per inch or millimetres.
scan-ask-seat = Check the seat: measure its angle with a seat gauge, or see whether it is an O-ring face, an O-ring boss, flat, or a taper thread with no seat.
scan-ask-cone = Check the cone: does it project like a nose or is it recessed like a funnel?
scan-ask-flank = Check the angle of the thread flanks: try a 55° and a 60° thread gauge against the light.
scan-ask-nose = Measure the diameter of the nose that goes into the mating part, at its front edge, of the socket that takes it, or of the hole of a banjo ring.
scan-ask-series = Find the series, heavy (S) or light (L): from the marking, the port drawing or the manufacturer of the fitting.
scan-ask-hex = Measure the hexagon across flats.
scan-ask-flange_od = Measure the diameter of the flange head.
scan-ask-bolt_spacing = Measure between the bolts, centre to centre, along the longer side.
scan-hose-title = Hose between the ends
scan-hose-order = Order this hose
scan-hose-checked = These are your measurements. The shop checks them with you before it builds.
scan-hose-correct = Correct the measurements
scan-hose-lay_line = The lay line printed along the hose shows its standard and size.
scan-hose-dash-hint = Nominal bore in 1/16 in: 12 = 3/4 in
scan-hose-shape = Shape
scan-hose-drop = Elbow drop length
scan-hose-jump = Jump size: fitting one size above or below the hose
scan-hose-clocking = Clocking angle (two elbows only)
scan-hose-clocking-hint = End A nearest you, elbow A pointing down: degrees counter-clockwise to elbow B
scan-hose-length-hint = Example: 1250 mm or 49 1/4 in.
scan-hose-read = Read as { $length }
scan-hose-bare = { $unit ->
    [in] A number without a unit is inches.
   *[mm] A number without a unit is mm.
 }
scan-hose-measured = Measured
scan-hose-show = Show hose

## On a phone without a signal

scan-shell-title = Hose tag
scan-shell-no_script = No signal. Turn on JavaScript to read the tag offline.

## Signature of the tag

scan-sealed = Signature
scan-sealed-note = What this tag says was signed with key { $key } of the shop.
scan-unsealed-note = This code carries no signature: the small code of a tag, or an older tag. Only the shop can confirm that the values are its own.
scan-sealed-act = Do not install the hose assembly until the shop has confirmed its values.
scan-unchecked-note = Open a tag page of the shop with a signal, which updates the keys on this phone, or ask the shop.
scan-pressure-anyway = Show the pressure on the tag all the same

## What was found on a gauge sheet

scan-identify-from_sheet = Found on a gauge sheet
scan-identify-from_sheet-hint = Only for marks found on a printed gauge sheet.
scan-identify-scale-hint = Example: 99 mm, or 3.96 in for the line of 4 in. If a bank card just covers its outline both ways: 100.
scan-field-found = Marks found on the sheet
scan-field-scale = Check line measures
