# The fit guide: its steps, what is taken for what, and where the practice comes from.

## Titles of the screens

fit-screen-safe = Make the machine safe
fit-screen-injection = Protect yourself
fit-screen-old = Remove the old hose assembly
fit-screen-new = Check the new hose assembly
fit-screen-match = Check the joint
fit-screen-route = Route the hose
fit-screen-clocking = Set the elbows
fit-screen-order = Which end first
fit-screen-join = Connect
fit-screen-tighten = Tighten
fit-screen-leaks = Test for leaks
fit-screen-after = Check once more

## Before you start

fit-defer = Follow the machine manufacturer's manual, the fitting manufacturer's data and local regulations. They take precedence over this guide. Only trained people may do this work, licensed where the law requires it.
fit-stop_lock = Stop the machine, remove the ignition key and lock the machine out. Lower or support every load that could fall or move.
fit-depressurise = Release all pressure as the machine manual describes: engine off, move every control, discharge the accumulators. Never loosen a joint under pressure.
fit-zero = Prove that the pressure is zero: read a gauge at a test point of this line before you loosen a joint. Without a gauge, treat the line as under pressure.
fit-cool = Let the oil cool. Wear eye protection and oil-resistant gloves. Put a drip tray under the joint.
fit-injection = Never feel for a leak with your hand. Oil under pressure penetrates gloves and skin. If oil is injected under the skin, get emergency surgical treatment at once, even if the wound looks small.
fit-photo = Photograph the old hose assembly before you loosen it: its route, its clamps and how each end points.
fit-cap = Remove the old hose assembly. Cap every open port and line at once: dirt damages pumps and valves.
fit-why = Find out why the old one failed: chafed, kinked, too short, twisted, overheated, cover blistered? Remove the cause before you install the same again.

## Check the parts

fit-pressure = Maximum working pressure: { $pressure }. Check that the machine's relief valve is set no higher.
fit-at_most = The pressure is known only in part: the known parts allow at most { $at_most }. Check that the relief valve is set no higher, and that the manufacturer of the other part allows the pressure too.
fit-no_pressure = The working pressure of this hose assembly is not known. Do not install it until the hose and fitting manufacturers' data have confirmed it.
fit-compare = Compare the new hose assembly with the old one: ends, seats, length and elbow angles must match. If anything differs, do not install it.
fit-damage_flare = Clean and inspect both seats and both threads. Reject a part with a crack, a nick across the seat or a damaged thread.
fit-damage = Clean and inspect the threads and sealing faces. Reject a part with a crack, a scratch across the face or a damaged thread.
fit-seat_37_45 = Check the seat with a seat gauge. 37° and 45° flares have the same thread in this size. They screw together but do not seal reliably.
fit-cone_bspp_jis = Check the cone. In this size BSPP and JIS 60° ends have the same thread but opposite cones. They screw together but do not seal.
fit-cone_metric = Check the cone with a gauge: in this size metric 60° cones, 24° cones and 30° flares share threads. They screw together but do not seal.
fit-flare_inverted = Check the seat: an inverted flare has its cone inside the female port. In this size its thread is that of the 37° and 45° flares, but it does not seal on them.
fit-npt_bspt = Check the thread with a thread gauge. In this size NPT and BSP both have 14 threads per inch and will start to engage, but 60° and 55° threads do not seal together.
fit-flange_code61 = This is a Code 61 flange: port, flange halves and screws must be Code 61 too. A Code 62 head is thicker and wider, and its bolt spacing is larger.
fit-flange_code62 = This is a Code 62 flange: port, flange halves and screws must be Code 62 too. A Code 61 head is thinner and narrower, and its bolt spacing is smaller.
fit-screw_length = Check the screw length: a screw that is too short strips the thread, one that is too long bottoms before it clamps. Use the length that the flange manufacturer gives.
fit-oring = Use a new O-ring that suits the fluid, and lubricate it with clean system oil. It must sit in its groove and must not be cut, flattened or hard.
fit-oring_cone = If the cone has an O-ring, inspect it: it must not be cut, flattened or hard. Replace it if in doubt, and oil it with clean system oil.
fit-clean_inside = Keep the protective caps on until you connect the hose. The inside must be clean and dry.

## Route the hose

fit-lay_line = Route the hose without twist: the lay line must run straight, and the hose must bend in one plane only.
fit-bend = Keep every bend radius at { $bend_radius } or more, measured to the inside of the bend. Keep the hose straight for at least 1.5 times its outside diameter between each fitting and the first bend.
fit-no_bend = The minimum bend radius is not known: use the hose manufacturer's value.
fit-slack = Leave slack: under pressure the hose may lengthen by 2 % or shorten by 4 %.
fit-rub = Keep the hose clear of hot parts, sharp edges and moving parts over the machine's full travel.
fit-elbow = Align the elbow before you tighten it, and hold it in position.
fit-clocking = Clocking angle { $clocking }: hold end A nearest you with elbow A pointing down. Seen along the hose, elbow B points { $clocking } counter-clockwise from elbow A.
fit-clocking_clockwise = Clocking angle { $clocking }, clockwise: hold end A nearest you with elbow A pointing up. Seen along the hose, elbow B points { $clocking } clockwise from elbow A.
fit-clocking_nut = Set this angle before the nut of the end that is connected last is tight. Hold the elbow there with a wrench and turn only the nut. Never twist the hose.
fit-clocking_screws = Set this angle while the screws, or the bolt, of the end that is connected last are only finger-tight. Then tighten only those. Never twist the hose.
fit-clocking_locknut = Set this angle before the locknut of the end that is connected last is tight. Hold the elbow there and turn only the locknut. Never twist the hose.
fit-rigid_first = Connect this end first, while the other end is still free. Turn the fitting by its own hexagon, hold the adapter that it goes into with a second wrench, and let the whole hose turn with it.
fit-rigid_second = This end has no swivel. Do not screw it in while the other end is connected: the hose would twist. With the hose free, fit a union or a swivel adapter to this end, then connect that by its nut only.
fit-rigid_pair = Neither end swivels. Before you connect this end, fit a union or a swivel adapter to the other end: it cannot be screwed in afterwards without twisting the hose.
fit-mating_first = Connect this end first. If the mating part has no nut of its own, turn the fitting by its hexagon while the other end is still free.
fit-mating_second = This end has no nut: turn only the nut of the mating part. If it has none, do not turn the fitting while the other end is connected: the hose would twist. Use a union or a swivel adapter.
fit-swivel_last = Connect this end last, after the other end is connected. Use two wrenches: one on the nut, one on the hexagon of the fitting. Only the nut turns, so the hose stays free of twist.
fit-free_last = Connect this end last, after the other end is tight. It can be set at any angle, so the hose stays free of twist.
fit-anti_galling = Stainless threads can seize (gall). Before you start the thread, coat the male thread with an anti-seize paste suited to the fluid. Keep it off the sealing faces.

## Tighten

fit-by_hand = Start the nut by hand. It must turn freely. If it binds, stop: the thread is crossed or does not match.
fit-by_hand_fixed = Start the thread by hand. It must turn freely. If it binds, stop: the thread is crossed or does not match.
fit-two_wrenches = Use two wrenches: hold the hose fitting with one and turn only the nut with the other. Do not let the hose turn.
fit-two_wrenches_fixed = Where the mating part has a nut, use two wrenches: hold the hose fitting with one and turn only that nut with the other. Do not let the hose turn.
fit-mark_finger = Before you count flats: turn the nut by hand until it bottoms (finger-tight). Counting starts there: draw a line across the nut and the fitting body.
fit-mark_wrench = Before you count flats: turn the nut until you feel firm resistance with the wrench (about 3.4 N·m, 30 lbf·in). Counting starts there: draw a line across the nut and the fitting body.
fit-mark_fixed_finger = Before you count flats: turn the fitting by hand until it bottoms (finger-tight). Counting starts there: draw a line across its hexagon and the mating part.
fit-mark_fixed_wrench = Before you count flats: turn the fitting to firm resistance with the wrench (about 3.4 N·m, 30 lbf·in). Counting starts there: draw a line across its hexagon and the mating part.
fit-flats = Tighten the nut by { $flats }, counted { $flats_basis }. 1 flat = 1/6 turn (60°): count flats, not turns.
fit-flats_fixed = Turn the fitting by its own hexagon by { $flats }, counted { $flats_basis }. 1 flat = 1/6 turn (60°): count flats, not turns.
fit-flats_instead = By flats in place of the torque, never on top of it: tighten the nut by { $flats }, counted { $flats_basis }. 1 flat = 1/6 turn (60°): count flats, not turns.
fit-flats_fixed_instead = By flats in place of the torque, never on top of it: turn the fitting by its own hexagon by { $flats }, counted { $flats_basis }. 1 flat = 1/6 turn (60°): count flats, not turns.
fit-torque_nut = Tighten the nut to { $torque }.
fit-lubrication = This torque is for: { $lubrication }.
fit-lubrication_unknown = The source of this torque does not say whether the joint is dry or lubricated. If in doubt, use the fitting manufacturer's value.
fit-lubrication_not_carried = Whether the joint is dry or lubricated at this torque is not recorded on this tag. Ask the shop.
fit-torque_fixed = Turn the fitting by its own hexagon and tighten it to { $torque }. Hold the mating part with a second wrench.
fit-torque_bspp_stud = A stud sealed by a bonded washer or an O-ring on a flat face: tighten it, or its locknut, to { $torque }. This torque is too high for a nut on a 60° cone: for one, use the fitting manufacturer's value.
fit-torque_bspp_of_nut = The torque on this tag, { $torque }, is that of a nut on a 60° cone. Do not use it for a stud in a port, which takes more and would come loose: for one, use the fitting manufacturer's value.
fit-over_flare = Do not overtighten to stop a leak: the flare may crack. Take the joint apart and inspect both seats.
fit-choose_method = Two methods are given: flats or torque. Use one only. If in doubt, count flats: with high friction the torque is reached while the joint is still loose.
fit-torque_counts = Where torque and flats are both given, use the torque only.
fit-stud_in = Screw the stud in by hand until it bottoms. Do not damage the O-ring on the thread.
fit-stud_into = Screw the mating stud in by hand until it bottoms. Do not damage the O-ring on the thread.
fit-stud_mark = Before you tighten, draw a line across the part that you turn and the port: it shows how far it has turned.
fit-locknut_back = Back the locknut off fully and push the washer against it. Screw the stud in by hand until the washer touches the port face.
fit-locknut_align = To align the elbow, back the stud out by no more than one turn. Hold the elbow with one wrench and tighten only the locknut with the other.
fit-flat_stud_in = Put a new sealing ring under the shoulder of the stud, of the kind the stud is made for. Screw the stud in by hand until the ring touches the face.
fit-torque_stud = Tighten the stud, nut or locknut to { $torque }. An aluminium port takes less: ask the machine manufacturer for the value.
fit-flats_stud = Tighten the stud, nut or locknut by { $flats }, counted { $flats_basis }. 1 flat = 1/6 turn (60°): count flats, not turns.
fit-flats_stud_instead = By flats in place of the torque, never on top of it: tighten the stud, nut or locknut by { $flats }, counted { $flats_basis }. 1 flat = 1/6 turn (60°): count flats, not turns.
fit-sealant = Apply thread sealant suited to the fluid to the male thread. Leave the first two threads bare.
fit-sealant_stainless = Stainless taper threads can seize (gall). Use a thread sealant that also prevents galling.
fit-turns = Screw in finger-tight, then tighten by { $turns } more with a wrench. Never count flats on a taper thread.
fit-turns_disputed = Sources differ: { LIST($turn_choices, style: "or") }. If in doubt, ask the fitting manufacturer first.
fit-turns_of_source = { $turns } ({ $source })
fit-never_back = Never back off a taper thread to align it: it will leak. Take it out, clean it and reseal it.
fit-screw_class = Read the property class on the screw heads; all four must be the same. A torque is for one class only: a class 10.9 screw takes more than a class 8.8 screw of the same size.
fit-screw_class_62 = Read the property class on the screw heads; all four must be the same. Code 62 needs class 10.9 in metric sizes or grade 8 in inch sizes. A torque is for one class only.
fit-flange_seat = Seat the flange head squarely on the port face with the O-ring in its groove. Start all four screws by hand. The gap must be equal at both clamp halves.
fit-flange_loose = Leave the screws finger-tight until the other end is connected, or started by hand, and the hose lies without twist at the right angle.
fit-banjo_rings = Use a new sealing ring on each side of the eye: one under the bolt head, one between the eye and the port. Both must be of the kind the bolt is made for.
fit-banjo_loose = Start the bolt by hand and leave it loose until the other end is connected, or started by hand, and the hose lies without twist at the right angle.
fit-banjo_hold = Hold the eye at its angle while you tighten the bolt. Neither the eye nor the hose may turn with it.
fit-torque_bolt = Tighten the banjo bolt to { $torque }. This torque is for one kind of bolt and sealing ring: check that yours is that kind.
fit-standpipe_in = Push the nut and the cutting ring onto the tube, then push the tube into the body up to its stop. Hold it there and start the nut by hand.
fit-standpipe_nut = New cutting ring: tighten the nut 1 1/2 turns from finger-tight. The tube must not turn. Ring already set on the tube: tighten to a clearly felt resistance, then as far as its manufacturer says.
fit-latch_clean = Connect only without pressure in either line. Wipe both halves clean and inspect the seals.
fit-coupler_lock = Push the halves together until they lock, then pull to check. If the sleeve has a safety lock, engage it.
fit-staple_in = Fit a new O-ring and backup ring on the spigot, and push the spigot in fully. Push the staple through by hand as far as it goes. Use only an undamaged staple rated for the pressure. Pull on the hose to check.
fit-flange_cross = Tighten the screws evenly in a cross pattern, in two or three rounds: one, its diagonal, then the other two. Do not use an impact wrench.
fit-torque_screw = { $screw ->
    [none] In the last round tighten each screw to { $torque }. This torque is for one screw size and grade only: ask the manufacturer which, before you tighten.
   *[other] In the last round tighten each { $screw } screw to { $torque }. Another screw size or property class needs a different torque. If no class is named here, ask the manufacturer.
 }
fit-no_figures = How far to tighten this joint is not known: use the fitting manufacturer's value.

## Test for leaks

fit-nobody_near = Keep people clear. Run the machine without load until the air is bled and the oil level is correct.
fit-leak_look = Raise the pressure slowly. Check for leaks with a piece of cardboard, never with your hand.
fit-leak_stop = If a joint leaks, stop the machine, release the pressure and take the joint apart. Never tighten a joint under pressure.
fit-full_travel = Move the machine through its full travel. The hose must not pull tight, kink, twist or rub.
fit-look_again = Inspect the joints again after the first few hours of operation.

## Families that are taken for each other; the sizes are those of the second

fit-alike-flares = { $family } and { $other } ({ LIST($sizes) }) have the same thread in sizes -2, -3, -4, -5, -8 and -10. They screw together, but 37° and 45° seats do not seal reliably.
fit-alike-cone_oring-each = { $family } and { $other } ({ LIST($sizes) }) have the same thread in each size. One seals on a cone, the other on an O-ring under a shoulder.
fit-alike-cone_oring = { $family } and { $other } ({ LIST($sizes) }) have the same threads. One seals on a cone, the other on an O-ring under a shoulder.
fit-alike-face_cone = { $family } and { $other } ({ LIST($sizes) }) have the same thread in different dash sizes. One seals on an O-ring in a flat face, the other on a cone.
fit-alike-face_boss = { $family } and { $other } ({ LIST($sizes) }) have the same thread in different dash sizes. Only the position of the O-ring tells them apart.
fit-alike-tapers = { $family } and { $other } ({ LIST($sizes) }) will start to engage. Both are tapered, but 60° and 55° threads do not seal together. Sizes 1/2 and 3/4 have 14 threads per inch in both.
fit-alike-taper_parallel-14 = { $family } and { $other } ({ LIST($sizes) }) will start to engage in sizes 1/2 and 3/4, both with 14 threads per inch. One is tapered, the other parallel, and the thread angles differ.
fit-alike-npt_nptf = { $family } and { $other } ({ LIST($sizes) }) have the same size and pitch. NPTF seals dry on its thread crests, NPT needs sealant. Measuring cannot tell them apart.
fit-alike-taper_parallel = { $family } and { $other } ({ LIST($sizes) }) have the same pitch and nearly the same diameter. One is tapered, the other parallel.
fit-alike-npsm_bspp = { $family } and { $other } ({ LIST($sizes) }) have nearly the same thread in sizes 1/2 and 3/4, and seats of 60° included angle. The thread angles differ.
fit-alike-bspp_jis = { $family } and { $other } ({ LIST($sizes) }) have the same thread but opposite cones. They screw together but do not seal.
fit-alike-taper_cone = { $family } and { $other } ({ LIST($sizes) }) have the same pitch and nearly the same diameter. One is tapered, the other seals on a cone.
fit-alike-tube_sizes = { $family } and { $other } ({ LIST($sizes) }) have the same thread for different tube sizes. Measure the tube outside diameter to tell them apart.
fit-alike-metric_cone_flare = { $family } and { $other } ({ LIST($sizes) }) have the same metric threads. One seals on a 24° cone, the other on a 30° flare.
fit-alike-metric_cone_oring = { $family } and { $other } ({ LIST($sizes) }) have the same metric threads. One seals on a cone, the other on an O-ring under a shoulder.
fit-alike-flanges = { $family } and { $other } ({ LIST($sizes) }) look alike. The Code 62 head is thicker and wider, and its bolt spacing is larger.
fit-alike-thread = { $family } and { $other } ({ LIST($sizes) }) have the same or nearly the same thread. They may screw together, but they do not seal on each other: check the seat.
fit-alike-reversed_cone = { $family } and { $other } ({ LIST($sizes) }) have the same metric thread but opposite cones. They screw together but do not seal.
fit-alike-cones_60_24 = { $family } and { $other } ({ LIST($sizes) }) have the same metric threads. One has a 60° cone, the other a 24° cone: they do not seal on each other.
fit-alike-tube_bore = { $family } and { $other } ({ LIST($sizes) }) have the same thread and the same cone. Only the tube differs: measure its outside diameter.
fit-alike-flareless = { $family } and { $other } ({ LIST($sizes) }) have the same threads. One seals with a sleeve in a 24° cone, the other on a flare.
fit-alike-inverted = { $family } and { $other } ({ LIST($sizes) }) share threads. An inverted flare has its cone inside the female port: they do not seal on each other.
fit-alike-flat_oring = { $family } and { $other } ({ LIST($sizes) }) have the same metric threads. One seals with a ring on a flat face, the other with an O-ring in a chamfer of the port.
fit-alike-flat_cone = { $family } and { $other } ({ LIST($sizes) }) have the same metric threads. One seals with a ring on a flat face, the other on a cone.

## Where a step's practice comes from

fit-source-tag = as recorded on the tag by the shop
fit-source-turns = { LIST($turn_sources) }
fit-source-practice = common practice (no published source)
fit-source-iso4413_j1273 = ISO 4413 and SAE J1273 (unverified)
fit-source-j1273 = SAE J1273 (unverified)
fit-source-previews = SAE J517 and J516 previews: an assembly is rated at its lowest part
fit-source-flare_pages = two public pages: the 45° flare shares its thread with the 37° flare in -2 -3 -4 -5 -8 -10
fit-source-hose_page = public technical page of a hose manufacturer, Japanese connections
fit-source-thread_page = public thread reference page
fit-source-oring_manuals = OEM operator manuals (O-ring oiled)
fit-source-no_twist = SAE J1273 and OEM manuals: two wrenches, no twist
fit-source-bend = EN 853:2015 preview; public hydraulic reference text (unreviewed)
fit-source-two_wrenches = several OEM manuals call for two wrenches
fit-source-finger = OEM operator manuals, flats from finger-tight
fit-source-wrench = US Army TM 9-2320-364-20-4; OEM compact-tractor manual
fit-source-cutting_ring = two public pages on assembling 24° tube fittings
fit-source-farm_manual = OEM agricultural-machine operator manual
fit-source-manuals = several OEM manuals
fit-source-torque_page = public torque calculator page for hydraulic fittings
fit-source-pipe_pages = two public pipe-fitting pages
fit-source-telehandler = OEM telehandler service manual (1994)
fit-source-bolt_tables = general bolt tables in OEM manuals (SAE J1701 values and others)
fit-source-iso6162 = ISO 6162-2 and common practice (unverified)
