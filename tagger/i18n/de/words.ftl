# Names of parts, families and fluids, and an assembly in words. Every room may use these.

## How figures, ranges and days are written

words-as-is = { $text }
words-as-is-mended = { $text }
    .mend = { $mend }
words-decimal-sign = ,
words-date = { $day }.{ $month }.{ $year }
words-range = { $low } bis { $high }
words-at-most = höchstens { $high }

## Parts of an assembly. SAY($part, case: ...) asks for a case; without one it is the plain name

words-part-hose = { $case ->
   *[plain] der Schlauch
    [start] Der Schlauch
    [acc] den Schlauch
    [gen] des Schlauchs
    [dat] dem Schlauch
 }
words-part-end_a = { $case ->
   *[plain] Ende A
    [gen] von Ende A
 }
words-part-end_b = { $case ->
   *[plain] Ende B
    [gen] von Ende B
 }
words-part-override = { $case ->
   *[plain] der angegebene Wert
    [start] Der angegebene Wert
    [acc] den angegebenen Wert
    [gen] des angegebenen Werts
    [dat] dem angegebenen Wert
 }

## Connections

words-connection-sae_37_flare = 37°-Bördel (JIC)
words-connection-sae_45_flare = 45°-Bördel
words-connection-orfs = { $case ->
   *[plain] O-Ring-Stirnflächendichtung (ORFS)
    [short] ORFS, O-Ring-Stirnfläche
 }
words-connection-sae_orb = { $case ->
   *[plain] O-Ring-Einschraubanschluss, Zollgewinde (ORB)
    [short] ORB, Zollgewinde
 }
words-connection-metric_orb = { $case ->
   *[plain] O-Ring-Einschraubanschluss, metrisches Gewinde (ISO 6149)
    [short] O-Ring-Stutzen ISO 6149
 }
words-connection-npt = NPT kegelig
words-connection-nptf = NPTF trockendichtend
words-connection-npsm = NPSM, 30°-Sitz
words-connection-bspp = BSPP (BSP zylindrisch)
words-connection-bspt = BSPT (BSP kegelig)
words-connection-din24_light = 24°-Konus, leichte Baureihe (L)
words-connection-din24_heavy = 24°-Konus, schwere Baureihe (S)
words-connection-flange_code61 = Flansch Code 61
words-connection-flange_code62 = Flansch Code 62
words-connection-jis_30 = JIS-30°-Bördel, metrisches Gewinde
words-connection-jis_60 = JIS-60°-Konus, BSP-Gewinde
words-connection-metric_60_cone = 60°-Konus, metrisches Gewinde
words-connection-french_gas = 24°-Konus, französische Gasrohrreihe
words-connection-sae_inverted_flare = Innenbördel (SAE J512)
words-connection-metric_flat_stud = { $case ->
   *[plain] Einschraubanschluss, metrisch, flachdichtend
    [short] metrisch, flachdichtend
 }
words-connection-banjo_metric = { $case ->
   *[plain] Hohlschraubenanschluss, metrisch
    [short] Hohlschraube, metrisch
 }
words-connection-banjo_bsp = { $case ->
   *[plain] Hohlschraubenanschluss, BSP
    [short] Hohlschraube, BSP
 }
words-connection-sae_flareless = 24°-Schneidringanschluss (SAE J514)
words-connection-qd_iso7241_a = Schnellkupplung ISO 7241, Reihe A
words-connection-qd_iso7241_b = Schnellkupplung ISO 7241, Reihe B
words-connection-qd_iso16028 = Flat-Face-Kupplung ISO 16028
words-connection-staple = Steckanschluss mit Klammer (DIN 20043)
words-connection-din_standpipe = Rohrstutzen für 24°-Konus
words-connection-din24_very_light = 24°-Konus, sehr leichte Baureihe (LL)
words-connection-other = sonstiger Anschluss

## Forms

words-form-male = Außengewinde
words-form-female_swivel = Überwurfmutter
words-form-female_fixed = festes Innengewinde
words-form-flange_head = Flanschbund
words-form-male_swivel = drehbares Außengewinde
words-form-eye = Ringöse
words-form-coupler_male = Stecker
words-form-coupler_female = Muffe
words-form-staple_male = Stecknippel
words-form-staple_female = Steckmuffe
words-form-standpipe = glattes Rohr

## Materials

words-material-carbon_steel = Kohlenstoffstahl
words-material-stainless_steel = Edelstahl
words-material-brass = Messing
words-material-aluminium = Aluminium

## What a length reaches between

words-length_basis-sealing_face = zwischen den Dichtflächen
words-length_basis-thread_end = zwischen den Gewindeenden
words-length_basis-elbow_centreline = zwischen den Mittellinien der Bögen

## Fluids. German: SAY($fluid, case: "dat") after mit and nach

words-fluid-mineral_oil = Mineralöl
words-fluid-water_oil_emulsion = Wasser-Öl-Emulsion (HFA, HFB)
words-fluid-water_glycol = Wasser-Glykol (HFC)
words-fluid-phosphate_ester = Phosphorsäureester (HFD-R)
words-fluid-synthetic_ester = { $case ->
   *[plain] synthetischer Ester (HEES, HFD-U)
    [dat] synthetischem Ester (HEES, HFD-U)
    [acc] synthetischen Ester (HEES, HFD-U)
 }
words-fluid-vegetable_oil = Pflanzenöl (HETG)
words-fluid-polyglycol = Polyglykol (HEPG)
words-fluid-water = Wasser
words-fluid-diesel = Dieselkraftstoff
words-fluid-petrol = Benzin
words-fluid-air = Luft
words-fluid-refrigerant = Kältemittel
words-fluid-engine_oil = Motoröl
words-fluid-transmission_fluid = Getriebeöl (ATF)
words-fluid-biodiesel = Biodiesel
words-fluid-lpg = Flüssiggas (LPG)
words-fluid-nitrogen = Stickstoff
words-fluid-oxygen = Sauerstoff
words-fluid-steam = Wasserdampf
words-fluid-brake_fluid = Bremsflüssigkeit (Glykolether)
words-fluid-not_entered = nur Mineralöl

## Sleeves and guards

words-cover-abrasion_sleeve = Scheuerschutz
words-cover-spring_guard = Drahtschutzwendel
words-cover-spiral_guard = Spiralschutz
words-cover-fire_sleeve = Feuerschutzschlauch
words-cover-heat_sleeve = Hitzeschutzschlauch
words-cover-burst_sleeve = Berstschutzschlauch
words-cover-armour = Panzerung
words-cover-bend_restrictor = Knickschutz

## Where a count of flats or turns starts; each follows the count

words-basis-finger_tight = ab handfest
words-basis-wrench_resistance = ab spürbarem Kraftanstieg
words-basis-not_stated = ab einem Punkt, den die Quelle nicht nennt
words-basis-torque = nach Anziehdrehmoment

## Texts of the record

words-record-customer = Kunde
words-record-machine = Maschine
words-record-position = Einbauort
words-record-reason = Grund trotz Gefahr
words-record-cleanliness = Geforderte Reinheit (ISO 4406)

## An assembly in words

words-not-known = nicht bekannt: Wert des Armaturenherstellers verwenden
words-nothing-to-tighten = zusammenstecken, bis es einrastet; nichts anzuziehen
words-parts = { $which ->
    [hose] Schlauch
    [end_a] { $case ->
           *[plain] Ende A
            [short] A
        }
    [end_b] { $case ->
           *[plain] Ende B
            [short] B
        }
    [hose-end_a] { $case ->
           *[plain] Schlauch und Ende A
            [short] Schlauch, A
        }
    [hose-end_b] { $case ->
           *[plain] Schlauch und Ende B
            [short] Schlauch, B
        }
    [end_a-end_b] { $case ->
           *[plain] beide Enden
            [start] Beide Enden
            [short] A, B
        }
   *[all] { $case ->
           *[plain] Schlauch und beide Enden
            [short] Schlauch, A, B
        }
 }
words-rated = { $pressure }
words-rated-unverified = { $pressure }, { $parts } ungeprüft: keine veröffentlichte Quelle zur Hand
words-rated-at_most = { SAY($parts, case: "start") }: höchstens { $pressure }
words-rated-ask-hose = Schlauch, { $what }: Wert des Schlauchherstellers verwenden
words-rated-ask-end_a = Ende A, { $what }: Wert des Armaturenherstellers verwenden
words-rated-ask-end_b = Ende B, { $what }: Wert des Armaturenherstellers verwenden
words-unverified = { SAY($parts, case: "start") } ungeprüft: keine veröffentlichte Quelle zur Hand
words-adapter = Der zulässige Druck gilt für die Schlauchleitung: Ein Adapter an der Maschine kann das schwächste Teil sein.
words-two-sentences = { $first }. { $second }.
words-three-sentences = { $first }. { $second }. { $third }.
words-four-sentences = { $first }. { $second }. { $third }. { $fourth }.
words-danger-fluid = GEFAHR: { $fluid } nur mit Freigabe des Schlauchherstellers
words-danger-heat = GEFAHR: heißer, als der Schlauch verträgt
words-danger-cold = GEFAHR: kälter, als der Schlauch verträgt
words-danger-pressure = GEFAHR: Es wurde mehr Druck verlangt als zulässig
words-danger-vacuum = GEFAHR: Es wurde mehr Unterdruck verlangt, als eine Quelle für diesen Schlauch zulässt
words-end-title = { $size } { $connection }
words-end-described = (sonstiger Anschluss)
words-torque-lubricated = { $torque }, { $lubrication }
words-shape-straight = gerade
words-shape-elbow = { $angle }-Bogen
words-shape-elbow-drop = { $angle }-Bogen, Bogenhöhe { $drop }
words-hose = { $standard } -{ $dash } ({ $inches })
words-hose-tube = { $standard } -{ $dash } (für Rohr { $inches })
words-hose-edition = { $standard } Ausgabe { $edition } -{ $dash } ({ $inches })
words-end = { $size } { $connection }, { $form }, { $shape }
words-end-material = { $size } { $connection }, { $form }, { $shape }, { $material }
words-end-jump = { $size } { $connection }, { $form }, { $shape }, Sprunggröße: Nippel für Schlauch -{ $dash }
words-end-material-jump = { $size } { $connection }, { $form }, { $shape }, { $material }, Sprunggröße: Nippel für Schlauch -{ $dash }
words-end-family = { $size } { $connection }, { $form }
words-length = { $length }, { $basis }
words-vacuum = { $mbar } mbar unter Luftdruck
words-clocking = { $angle } gegen den Uhrzeigersinn, von Ende A aus gesehen, Bogen A nach unten
words-flats = { $many ->
    [one] { $count } Schlüsselfläche
   *[other] { $count } Schlüsselflächen
 }
words-turns = { $many ->
    [one] { $count } Umdrehung
   *[other] { $count } Umdrehungen
 }
words-counted = { $count } { $basis }
words-counted-or = oder { $count } { $basis }
words-torque-screw = { $torque } je Schraube { $screw }
words-torque-any-screw = { $torque } je Schraube; Schraubengröße und Festigkeitsklasse nennt der Hersteller
words-torque-stud = { $torque } (Einschraubzapfen, der mit Dichtscheibe oder O-Ring dichtet; zu hoch für eine Mutter auf 60°-Konus)
words-torque-of-nut = { $torque } ist das Drehmoment einer Mutter auf 60°-Konus, nicht das dieses Einschraubzapfens: den Wert des Armaturenherstellers verwenden

## Signature of a tag

words-sealed-signed = Von dieser Werkstatt signiert
words-sealed-unsigned = Nicht signiert
words-sealed-broken = Die Signatur passt nicht: Verlassen Sie sich nicht auf die Werte
words-sealed-unchecked = Signiert, aber nicht geprüft: Ihr Schlüssel ist hier nicht bekannt
words-sealed-why-altered = Schildnummer oder Werte sind nicht die, die signiert wurden.
words-sealed-why-unknown_key = Der Schlüssel der Signatur ist keiner dieser Werkstatt.
words-sealed-why-withdrawn_key = Die Werkstatt hat den Schlüssel dieser Signatur zurückgezogen: Jemand anderes kann ihn benutzt haben.
words-sealed-why-ended_key = Der Schlüssel dieser Signatur galt nicht mehr, als die Schlauchleitung gebaut wurde.
