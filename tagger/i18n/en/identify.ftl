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
