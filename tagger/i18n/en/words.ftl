# Names of parts, families and fluids, and an assembly in words. Every room may use these.

## How figures, ranges and days are written

words-as-is = { $text }
words-as-is-mended = { $text }
    .mend = { $mend }
words-decimal-sign = .
words-date = { $year }-{ $month }-{ $day }
words-range = { $low } to { $high }
words-at-most = at most { $high }

## Parts of an assembly. SAY($part, case: ...) asks for a case; without one it is the plain name

words-part-hose = { $case ->
   *[plain] the hose
    [start] The hose
 }
words-part-end_a = { $case ->
   *[plain] end A
    [start] End A
 }
words-part-end_b = { $case ->
   *[plain] end B
    [start] End B
 }
words-part-override = { $case ->
   *[plain] the value given
    [start] The value given
 }

## Connections

words-connection-sae_37_flare = 37° flare (JIC)
words-connection-sae_45_flare = 45° flare
words-connection-orfs = O-ring face seal (ORFS)
words-connection-sae_orb = SAE O-ring boss (ORB)
words-connection-metric_orb = Metric O-ring boss (ISO 6149)
words-connection-npt = NPT taper thread
words-connection-nptf = NPTF Dryseal taper thread
words-connection-npsm = NPSM straight thread, 30° seat
words-connection-bspp = BSPP (BSP parallel)
words-connection-bspt = BSPT (BSP taper)
words-connection-din24_light = 24° cone, light series (L)
words-connection-din24_heavy = 24° cone, heavy series (S)
words-connection-flange_code61 = Code 61 flange
words-connection-flange_code62 = Code 62 flange
words-connection-jis_30 = JIS 30° flare, metric thread
words-connection-jis_60 = JIS 60° cone, BSP thread
words-connection-metric_60_cone = Metric 60° cone
words-connection-french_gas = French 24° cone, gas tube
words-connection-sae_inverted_flare = Inverted flare (SAE J512)
words-connection-metric_flat_stud = Metric stud, flat seal
words-connection-banjo_metric = Banjo, metric bolt
words-connection-banjo_bsp = Banjo, BSP bolt
words-connection-sae_flareless = 24° flareless (SAE J514)
words-connection-qd_iso7241_a = Quick coupler, ISO 7241 series A
words-connection-qd_iso7241_b = Quick coupler, ISO 7241 series B
words-connection-qd_iso16028 = Flat-face coupler, ISO 16028
words-connection-staple = Staple connection (DIN 20043)
words-connection-din_standpipe = 24° standpipe
words-connection-din24_very_light = 24° cone, very light series (LL)
words-connection-other = other connection

## Forms

words-form-male = male
words-form-female_swivel = female swivel
words-form-female_fixed = fixed female
words-form-flange_head = flange head
words-form-male_swivel = male swivel
words-form-eye = eye
words-form-coupler_male = male half
words-form-coupler_female = female half
words-form-staple_male = male spigot
words-form-staple_female = socket
words-form-standpipe = plain tube

## Materials

words-material-carbon_steel = carbon steel
words-material-stainless_steel = stainless steel
words-material-brass = brass
words-material-aluminium = aluminium

## What a length reaches between

words-length_basis-sealing_face = between sealing faces
words-length_basis-thread_end = between thread ends
words-length_basis-elbow_centreline = between elbow centrelines

## Fluids. German: SAY($fluid, case: "dat") after mit and nach

words-fluid-mineral_oil = mineral oil
words-fluid-water_oil_emulsion = oil-water emulsion (HFA, HFB)
words-fluid-water_glycol = water glycol (HFC)
words-fluid-phosphate_ester = phosphate ester (HFD-R)
words-fluid-synthetic_ester = synthetic ester (HEES, HFD-U)
words-fluid-vegetable_oil = vegetable oil (HETG)
words-fluid-polyglycol = polyglycol (HEPG)
words-fluid-water = water
words-fluid-diesel = diesel fuel
words-fluid-petrol = petrol (gasoline)
words-fluid-air = air
words-fluid-refrigerant = refrigerant
words-fluid-engine_oil = engine oil
words-fluid-transmission_fluid = transmission fluid (ATF)
words-fluid-biodiesel = biodiesel
words-fluid-lpg = LPG (liquefied petroleum gas)
words-fluid-nitrogen = nitrogen
words-fluid-oxygen = oxygen
words-fluid-steam = steam
words-fluid-brake_fluid = brake fluid (glycol ether)
words-fluid-not_entered = mineral oil only

## Sleeves and guards

words-cover-abrasion_sleeve = abrasion sleeve
words-cover-spring_guard = spring guard
words-cover-spiral_guard = spiral guard
words-cover-fire_sleeve = fire sleeve
words-cover-heat_sleeve = heat sleeve
words-cover-burst_sleeve = burst-containment sleeve
words-cover-armour = armouring (wire braid or helix)
words-cover-bend_restrictor = bend restrictor

## Where a count of flats or turns starts; each follows the count

words-basis-finger_tight = from finger-tight
words-basis-wrench_resistance = from wrench resistance
words-basis-not_stated = from a starting point the source does not state
words-basis-torque = by torque

## Texts of the record

words-record-customer = Customer
words-record-machine = Machine
words-record-position = Position
words-record-reason = Reason despite a danger
words-record-cleanliness = Cleanliness asked for (ISO 4406)

## An assembly in words

words-not-known = not known: use the fitting manufacturer's value
words-nothing-to-tighten = pushed together until it locks: nothing to tighten
words-parts = { $which ->
    [hose] { $case ->
           *[plain] hose
            [start] Hose
            [short] Hose
        }
    [end_a] { $case ->
           *[plain] end A
            [start] End A
            [short] A
        }
    [end_b] { $case ->
           *[plain] end B
            [start] End B
            [short] B
        }
    [hose-end_a] { $case ->
           *[plain] hose and end A
            [start] Hose and end A
            [short] Hose, A
        }
    [hose-end_b] { $case ->
           *[plain] hose and end B
            [start] Hose and end B
            [short] Hose, B
        }
    [end_a-end_b] { $case ->
           *[plain] both ends
            [start] Both ends
            [short] A, B
        }
   *[all] { $case ->
           *[plain] hose and both ends
            [start] Hose and both ends
            [short] Hose, A, B
        }
 }
words-rated = { $pressure }
words-rated-unverified = { $pressure }, { $parts } unverified: no published source at hand
words-rated-at_most = { SAY($parts, case: "start") }: { $pressure } at most
words-rated-ask-hose = Hose, { $what }: use the hose manufacturer's value
words-rated-ask-end_a = End A, { $what }: use the fitting manufacturer's value
words-rated-ask-end_b = End B, { $what }: use the fitting manufacturer's value
words-unverified = { SAY($parts, case: "start") } unverified: no published source at hand
words-adapter = The rating is that of the hose assembly: an adapter on the machine may be the weakest part.
words-two-sentences = { $first }. { $second }.
words-three-sentences = { $first }. { $second }. { $third }.
words-four-sentences = { $first }. { $second }. { $third }. { $fourth }.
words-danger-fluid = DANGER: { $fluid } only with the hose manufacturer's approval
words-danger-heat = DANGER: hotter than the hose allows
words-danger-cold = DANGER: colder than the hose allows
words-danger-pressure = DANGER: more pressure was asked for than is allowed
words-danger-vacuum = DANGER: more vacuum was asked for than a source allows this hose
words-end-title = { $size } { $connection }
words-end-described = (other connection)
words-torque-lubricated = { $torque }, { $lubrication }
words-shape-straight = straight
words-shape-elbow = { $angle } elbow
words-shape-elbow-drop = { $angle } elbow, drop { $drop }
words-hose = { $standard } -{ $dash } ({ $inches })
words-hose-tube = { $standard } -{ $dash } (for { $inches } tube)
words-hose-edition = { $standard } edition { $edition } -{ $dash } ({ $inches })
words-end = { $size } { $connection }, { $form }, { $shape }
words-end-material = { $size } { $connection }, { $form }, { $shape }, { $material }
words-end-jump = { $size } { $connection }, { $form }, { $shape }, jump size: -{ $dash } hose tail
words-end-material-jump = { $size } { $connection }, { $form }, { $shape }, { $material }, jump size: -{ $dash } hose tail
words-end-family = { $size } { $connection }, { $form }
words-length = { $length }, { $basis }
words-vacuum = { $mbar } mbar below atmospheric pressure
words-clocking = { $angle } counter-clockwise, viewed from end A, elbow A pointing down
words-flats = { $many ->
    [one] { $count } flat
   *[other] { $count } flats
 }
words-turns = { $many ->
    [one] { $count } turn
   *[other] { $count } turns
 }
words-counted = { $count } { $basis }
words-counted-or = or { $count } { $basis }
words-torque-screw = { $torque } per { $screw } screw
words-torque-any-screw = { $torque } per screw; ask the manufacturer for screw size and grade
words-torque-stud = { $torque } (stud sealed by a washer or an O-ring; too high for a nut on a 60° cone)
words-torque-of-nut = { $torque } is the torque of a nut on a 60° cone, not of this stud: use the fitting manufacturer's value

## Signature of a tag

words-sealed-signed = Signed by this shop
words-sealed-unsigned = Not signed
words-sealed-broken = The signature does not fit: do not trust the values
words-sealed-unchecked = Signed, but not checked: its key is not known here
words-sealed-why-altered = The tag number or the values are not those that were signed.
words-sealed-why-unknown_key = The key of the signature is not a key of this shop.
words-sealed-why-withdrawn_key = The shop withdrew the key of this signature: somebody else may have used it.
words-sealed-why-ended_key = The key of this signature had ended before the hose assembly was built.
