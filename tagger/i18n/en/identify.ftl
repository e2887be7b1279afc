# Which connection an end can be by what was measured, why, and what to measure next.

identify-named = { $size } { $connection }

## In one sentence

identify-nothing = No connection in the tables matches these measurements.
identify-other-seat = The thread matches { $name }, but the seat does not. Different seats do not seal reliably. No connection in the tables has both: measure again.
identify-closest = No connection matches all measurements; { $name } is closest. Measure again.
identify-many = { $count } connections are still possible. Most likely: { LIST($names) }.
identify-some = It may be { LIST($names, style: "or") }.
identify-only = Only { $name } matches.
identify-tie-there = The measurements do not distinguish { LIST($names) }. { LIST($first, style: "or") } comes first only because it is more usual on machines from { $origin }.
identify-tie-elsewhere = The measurements do not distinguish { LIST($names) }. { LIST($first, style: "or") } comes first only because the others are usual only on machines from { $origin }.
identify-origin-europe = Europe
identify-origin-north_america = North America
identify-origin-asia = Asia
identify-lacks = Only connections in the tables are compared. Not in them, for example: { LIST($names) }. A connection that matches may still be one of these.
identify-lacking-french_millimetric = French millimetric 24° cone
identify-lacking-metric_taper = metric taper thread
identify-lacking-screw_couplers = screw-to-connect couplers (ISO 14541)
identify-lacking-one_manufacturer = connections of a single manufacturer

## What to measure next; each follows a heading such as "Measure next:"

identify-ask-seat = seat: its angle with a seat gauge, or whether it is an O-ring face, an O-ring boss, flat, or a taper thread without a seat
identify-ask-cone = cone: whether it stands out like a nose or lies inside like a funnel
identify-ask-thread = thread diameter with a caliper: outside on a male, inside on a female
identify-ask-tpi = pitch with a thread gauge: threads per inch, or millimetres
identify-ask-hex = nut, across its flats
identify-ask-flange_od = diameter of the flange head
identify-ask-bolt_spacing = bolt spacing, centre to centre, along the longer side
identify-ask-flank = angle of the thread flanks: try a 55° and a 60° thread gauge against the light
identify-ask-nose = diameter of the nose that goes into the mating part, at its front edge, of the socket that takes it, or of the hole of a banjo ring
identify-ask-series = series, heavy (S) or light (L): from the marking, the port drawing or the manufacturer of the fitting
identify-ask-series-why = Both series measure alike; their pressure and tightening do not. With the series unknown, the lower pressure applies and no torque is given.
identify-ask-why = It best distinguishes { LIST($names) }.

## Why a reading speaks for or against a connection

identify-reading-thread = Thread { $measured } measured, { $nominal } nominal: { $fits ->
    [yes] matches
   *[no] does not match
 }.
identify-reading-tpi = { $measured } threads per inch measured, { $nominal } nominal: { $fits ->
    [yes] matches
   *[no] does not match
 }.
identify-reading-pitch = Pitch { $measured } mm measured, { $nominal } mm nominal: { $fits ->
    [yes] matches
   *[no] does not match
 }.
identify-reading-hex = Hexagon { $measured } measured, { $nominal } nominal: { $fits ->
    [yes] matches
   *[no] does not match
 }.
identify-reading-tube_od = Tube { $measured } measured, { $nominal } nominal: { $fits ->
    [yes] matches
   *[no] does not match
 }.
identify-reading-nose = Nose or socket { $measured } measured, { $nominal } nominal: { $fits ->
    [yes] matches
   *[no] does not match
 }.
identify-reading-flange_od = Flange head { $measured } measured, { $nominal } nominal: { $fits ->
    [yes] matches
   *[no] does not match
 }.
identify-reading-bolt_spacing = Bolt spacing { $measured } measured, { $nominal } nominal: { $fits ->
    [yes] matches
   *[no] does not match
 }.
identify-no-value = { $feature ->
    [thread] Thread
    [tpi] Pitch
    [hex] Hexagon
    [tube_od] Tube
    [nose] Nose or socket
    [flank] Flank angle
    [flange_od] Flange head
    [bolt_spacing] Bolt spacing
    [side] Place of the thread
    [swivels] Threaded part
    [shape] Thread shape
    [seals] What seals
   *[cone] Cone
 }: no value in the tables.
identify-seat-fits = Seat { $seat }: matches.
identify-seat-differs = Seat { $seat } measured, but this connection has { LIST($own, style: "or") }: not a match. Different seats do not seal reliably.
identify-cone-fits = { $cone ->
    [outside] The cone stands out: matches.
   *[inside] The cone lies inside: matches.
 }
identify-cone-differs = { $cone ->
    [outside] The cone stands out, but that of this connection lies inside: not a match. They do not seal.
   *[inside] The cone lies inside, but that of this connection stands out: not a match. They do not seal.
 }
identify-flank-fits = Thread flanks { $flank }°: match.
identify-flank-differs = Thread flanks { $flank }° measured, but this connection has the other angle: not a match. The threads do not seal together.
identify-seat-none = Seat { $seat } measured, but this connection has none: not a match.
identify-seat-face = O-ring face
identify-seat-boss = O-ring boss
identify-seat-flat = flat
identify-seat-taper = taper thread

## Identifying by looking: a question, its answers, and what is said of them

identify-step-side = Where is the thread of this end?
identify-step-form = The end has no thread. What is it?
identify-step-swivels = Hold the hose still. Does the threaded part turn on the end?
identify-step-shape = Lay a straight edge along the thread. Is the thread parallel or a taper?
identify-step-seals = What seals this end?
identify-step-cone = Does the cone project like a nose, or is it recessed like a funnel?
identify-step-seat = What is the angle of the cone? Hold a seat gauge against it.
identify-answer-side-male = outside (male)
identify-answer-side-female = inside, in a nut or a body (female)
identify-answer-side-none = no thread: flange, coupler, staple connection, plain tube or banjo
identify-answer-form-flange_head = flange head, held by a clamp and screws
identify-answer-form-eye = ring that a banjo bolt goes through
identify-answer-form-coupler_male = plug of a quick coupler
identify-answer-form-coupler_female = socket of a quick coupler
identify-answer-form-staple_male = spigot that a staple holds
identify-answer-form-staple_female = socket with holes for a staple
identify-answer-form-standpipe = plain tube, with or without a loose nut on it
identify-answer-swivels-yes = it turns on the end
identify-answer-swivels-no = it is one piece with the end
identify-answer-shape-parallel = parallel: the same diameter all along
identify-answer-shape-taper = taper: the diameter changes along it
identify-answer-seals-cone = metal cone, with or without an O-ring on it
identify-answer-seals-face = O-ring in a flat end face, or the flat face it is pressed against
identify-answer-seals-boss = O-ring at the root of the thread, under the hexagon, or the chamfer that takes it
identify-answer-seals-flat = washer or bonded seal on a flat face
identify-answer-seals-thread = the thread itself, with sealant
identify-answer-cone-outside = nose: it projects
identify-answer-cone-inside = funnel: it is recessed
identify-answer-seat-37 = 37° to the axis (74° included)
identify-answer-seat-45 = 45° to the axis (90° included)
identify-answer-seat-60 = 60° included (30° to the axis)
identify-answer-seat-24 = 24° included (12° to the axis)
identify-answer-unknown = cannot tell
identify-told-side = Thread: { LIST($answers, style: "or") }
identify-told-form = End: { LIST($answers, style: "or") }
identify-told-swivels = Threaded part: { LIST($answers, style: "or") }
identify-told-shape = Thread shape: { LIST($answers, style: "or") }
identify-told-seals = Seals by: { LIST($answers, style: "or") }
identify-told-cone = Cone: { LIST($answers, style: "or") }
identify-told-seat = Cone angle: { LIST($answers, style: "or") }
identify-looking-kind = { $connection }, { $form }
identify-looking-title = Identify by looking
identify-looking-lead = Clean the end, then answer what you can see. Each answer narrows the list; go back at any time.
identify-looking-care = This names connections only. It never says what pressure an end or a hose may take.
identify-looking-open = Identify by looking, without gauges
identify-looking-answers = Your answers
identify-looking-change = Change
identify-looking-change_one = Change: { $answer }
identify-looking-again = Start again
identify-looking-unsure = Cannot tell
identify-looking-other = No picture matches? An earlier answer may be wrong: change it.
identify-looking-done = Looking cannot narrow the list further. Measure the end.
identify-looking-measure = Measure the end
identify-looking-remaining = Still possible
identify-looking-count = { $count ->
    [one] One kind of connection is still possible.
   *[other] { $count } kinds of connection are still possible.
}
identify-looking-none = No connection in the tables has all of this. Change an answer.
identify-looking-sizes = { $count ->
    [one] One size: { $first }
   *[other] { $count } sizes, { $first } to { $last }
}
identify-looking-ruled_out = Ruled out by one answer alone
identify-looking-if_wrong = If that answer is wrong, the end may be one of these.
identify-looking-known = From the questions
identify-looks-fits = Seen: { $answer }. Matches.
identify-looks-differs = Seen: { $answer }. Not a match for this connection.

## A hose by its layers and diameters

identify-hose-title = Hose by its layers
identify-hose-open = Hose without a readable lay line
identify-hose-lead = Measure the outside diameter where the cover is not worn, the bore at a clean cut, and count the layers of reinforcement there. Leave empty what you cannot measure.
identify-hose-never_rates = This only excludes standards. It never rates a hose: hoses of the same layers and diameters have different ratings. Take the pressure from the lay line or from the hose manufacturer.
identify-hose-field-od = Outside diameter
identify-hose-field-bore = Bore
identify-hose-field-kind = Kind of reinforcement
identify-hose-field-layers = Number of these layers
identify-hose-field-lay_line = Lay line, as far as it can be read
identify-hose-kind-unknown = cannot tell
identify-hose-kind-wire_braid = wire braid: the wires cross
identify-hose-kind-wire_spiral = wire spiral: the wires lie side by side and do not cross
identify-hose-kind-wire_helix = one coil of wire in rubber (suction hose)
identify-hose-kind-fibre = textile or fibre, no wire
identify-hose-go = Exclude standards
identify-hose-remaining = Not excluded
identify-hose-count = { $count ->
    [0] Every standard in the tables is excluded. Measure again.
    [one] One standard is not excluded.
   *[other] { $count } standards are not excluded.
}
identify-hose-excluded = Excluded
identify-hose-sizes = Sizes: { LIST($sizes) }
identify-hose-size = -{ $dash }
identify-hose-size_od = -{ $dash } (outside diameter { $least } to { $most })
identify-hose-unverified = { $source } (unverified)
identify-hose-sources = Source: { LIST($sources) }
identify-hose-unchecked-layers = Layers not checked: no value in the tables.
identify-hose-unchecked-od = Outside diameter not checked in some sizes: no value in the tables.
identify-hose-layers-wire_braid = { $count ->
    [one] one wire braid
   *[other] { $count } wire braids
}
identify-hose-layers_range-wire_braid = { $least } to { $most } wire braids
identify-hose-layers-wire_spiral = { $count ->
    [one] one wire spiral
   *[other] { $count } wire spirals
}
identify-hose-layers_range-wire_spiral = { $least } to { $most } wire spirals
identify-hose-layers-wire_helix = { $count ->
    [one] one coil of wire
   *[other] { $count } coils of wire
}
identify-hose-layers_range-wire_helix = { $least } to { $most } coils of wire
identify-hose-layers-fibre = { $count ->
    [one] one layer of fibre
   *[other] { $count } layers of fibre
}
identify-hose-layers_range-fibre = { $least } to { $most } layers of fibre
identify-hose-other_layers = Reinforcement in the tables: { LIST($own, style: "or") }. Source: { LIST($sources) }.
identify-hose-other_bore = Bore { $measured } measured. The nearest size, -{ $dash }, has { $nearest }. Source: { LIST($sources) }.
identify-hose-other_od = Outside diameter { $measured } measured. The nearest size, -{ $dash }, has { $nearest }. Source: { LIST($sources) }.
identify-hose-line_names = The lay line names { LIST($standards) }.
identify-hose-line_unread = The lay line names no standard in the tables.
identify-hose-line_excluded = The lay line names { $standard }, but the measurements exclude it. Do not use the hose until this is explained: measure again or take it to the shop.
identify-hose-line_size = The lay line names size -{ $dash }, but the measurements exclude that size. Measure again.
identify-hose-none = At least one value is required.
    .mend = Enter at least one, for example the outside diameter.
identify-hose-kind-missing = A number of layers needs their kind.
    .mend = Choose the kind of reinforcement.
identify-hose-bore-too-large = The bore must be smaller than the outside diameter.
    .mend = Check both.
identify-hose-not-a-diameter = { $value } is not a diameter of a hydraulic hose.
    .mend = Enter a value from 1 to 250 mm; check the unit.
identify-hose-not-a-count = { $value } is not a number of layers.
    .mend = Enter a whole number from 1 to { $most }.

## Measurements that cannot be read

identify-two-diameters = An inside diameter cannot be combined with an outside diameter.
    .mend = Enter only the one you measured.
identify-male-inside = A male thread needs an outside diameter.
    .mend = Enter the outside diameter (thread_od).
identify-female-outside = A female thread needs an inside diameter.
    .mend = Enter the inside diameter (thread_id).
identify-none-entered = At least one measurement is required.
    .mend = Enter at least one, for example the outside diameter of the thread (thread_od).
identify-not-a-fitting-size = { $value } is not a size of a fitting.
    .mend = Check the unit.
identify-not-a-band = { $value } does not say how far off the reading may be.
    .mend = Enter it after ±, less than half of the reading, for example 26.9 mm ± 0.4 mm.
identify-two-pitches = A pitch cannot be combined with threads per inch.
    .mend = Enter only one of them.
identify-not-a-pitch = { $value } is not a pitch of a fitting.
    .mend = Enter mm, for example 1.5.
identify-not-tpi = { $value } is not a number of threads per inch.
    .mend = Enter a number, for example 12 or 11 1/2.
identify-not-a-form = { $value } is not a form of a connection.
    .mend = Use one of: { LIST($known, style: "or") }.
identify-not-a-seat = { $value } is not a seat.
    .mend = Use one of: { LIST($known, style: "or") }.
identify-not-a-cone = { $value } is not a cone.
    .mend = Use one of: { LIST($known, style: "or") }.
identify-not-a-flank = { $value } is not an angle of thread flanks.
    .mend = Use one of: { LIST($known, style: "or") }.
identify-not-a-series = { $value } is not a series.
    .mend = Use one of: { LIST($known, style: "or") }.
identify-not-a-origin = { $value } is not an origin of machines.
    .mend = Use one of: { LIST($known, style: "or") }.
identify-not-asked = { $value } is not something that is asked for.
    .mend = Use one of: { LIST($known, style: "or") }.
identify-not-an-answer = { $value } is not an answer to this question.
    .mend = Use one of: { LIST($known, style: "or") }.

## What was found on a gauge sheet

identify-mark-unreadable = { $given } is not a mark of a gauge sheet.
    .mend = Enter the mark as it is printed beside the gauge, for example D26.99 or P1.814.
identify-mark-twice = { $mark } measures what has been entered already.
    .mend = Enter one value for each measurement.
identify-marks-many = More than { $most } marks were entered.
    .mend = Enter one mark for each measurement.
identify-scale-missing = The size at which the gauge sheet was printed is not known.
    .mend = Enter what the 100 mm check line measures, or the 4 in line in inches. If a bank card just covers its outline both ways, enter 100 mm.
identify-scale-alone = The check line corrects only the marks of a gauge sheet. A value measured with a caliper needs no correction.
    .mend = Enter the mark, or leave the check line empty.
identify-scale-beyond = A check line of { $given } is more than 3 % off.
    .mend = Print the sheet again at 100 % (actual size).
identify-scale-other-line = 101.6 mm is the length of the 4 in line. The 100 mm line is expected here.
    .mend = Enter what the 100 mm line measures, or the length of the 4 in line in inches.
identify-mark-other-end = { $thread ->
    [thread_od] A mark with D is that of a male thread, and this end is not one.
   *[thread_id] A mark with F is that of a female thread, and this end is not one.
 }
    .mend = Choose what the end is, or enter the mark of such an end.
