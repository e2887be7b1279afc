# Names of parts, families and fluids, and an assembly in words. Every room may use these.

## How figures, ranges and days are written

words-as-is = { $text }
words-as-is-mended = { $text }
    .mend = { $mend }
words-decimal-sign = ,
words-date = { $day }/{ $month }/{ $year }
words-range = { $low } à { $high }
words-at-most = { $high } au plus

## Parts of an assembly. SAY($part, case: ...) asks for a case; without one it is the plain name

words-part-hose = { $case ->
   *[plain] le tuyau
    [start] Le tuyau
    [of] du tuyau
    [to] au tuyau
 }
words-part-end_a = { $case ->
   *[plain] l'extrémité A
    [start] L'extrémité A
    [of] de l'extrémité A
    [to] à l'extrémité A
    [bare] extrémité A
 }
words-part-end_b = { $case ->
   *[plain] l'extrémité B
    [start] L'extrémité B
    [of] de l'extrémité B
    [to] à l'extrémité B
    [bare] extrémité B
 }
words-part-override = { $case ->
   *[plain] la valeur donnée
    [start] La valeur donnée
    [of] de la valeur donnée
    [to] à la valeur donnée
 }

## Connections

words-connection-sae_37_flare = évasement 37° (JIC)
words-connection-sae_45_flare = évasement 45°
words-connection-orfs = face plane à joint torique (ORFS)
words-connection-sae_orb = filetage UN à joint torique (ORB)
words-connection-metric_orb = filetage métrique à joint torique (ISO 6149)
words-connection-npt = NPT conique
words-connection-nptf = NPTF à étanchéité sèche
words-connection-npsm = NPSM, siège 30°
words-connection-bspp = BSPP (BSP cylindrique)
words-connection-bspt = BSPT (BSP conique)
words-connection-din24_light = cône 24°, série légère (L)
words-connection-din24_heavy = cône 24°, série lourde (S)
words-connection-flange_code61 = bride code 61
words-connection-flange_code62 = bride code 62
words-connection-jis_30 = évasement JIS 30°, filetage métrique
words-connection-jis_60 = cône JIS 60°, filetage BSP
words-connection-metric_60_cone = cône 60° métrique
words-connection-french_gas = cône 24° français, tube gaz
words-connection-sae_inverted_flare = évasement inversé (SAE J512)
words-connection-metric_flat_stud = implantation métrique à joint plat
words-connection-banjo_metric = banjo, vis métrique
words-connection-banjo_bsp = banjo, vis BSP
words-connection-sae_flareless = cône 24° à bague (SAE J514)
words-connection-qd_iso7241_a = coupleur rapide ISO 7241 série A
words-connection-qd_iso7241_b = coupleur rapide ISO 7241 série B
words-connection-qd_iso16028 = coupleur à face plane ISO 16028
words-connection-staple = raccord à agrafe (DIN 20043)
words-connection-din_standpipe = embout tube lisse pour cône 24°
words-connection-din24_very_light = cône 24°, série très légère (LL)
words-connection-other = autre raccord

## Forms

words-form-male = mâle
words-form-female_swivel = femelle tournante
words-form-female_fixed = femelle fixe
words-form-flange_head = collerette
words-form-male_swivel = mâle tournant
words-form-eye = œillet
words-form-coupler_male = embout mâle
words-form-coupler_female = coupleur femelle
words-form-staple_male = embout mâle à gorge
words-form-staple_female = emboîture
words-form-standpipe = tube lisse

## Materials

words-material-carbon_steel = acier au carbone
words-material-stainless_steel = acier inoxydable
words-material-brass = laiton
words-material-aluminium = aluminium

## What a length reaches between

words-length_basis-sealing_face = entre faces d'étanchéité
words-length_basis-thread_end = entre bouts de filetage
words-length_basis-elbow_centreline = entre axes des coudes

## Fluids. German: SAY($fluid, case: "dat") after mit and nach

words-fluid-mineral_oil = huile minérale
words-fluid-water_oil_emulsion = émulsion eau-huile (HFA, HFB)
words-fluid-water_glycol = eau-glycol (HFC)
words-fluid-phosphate_ester = ester phosphorique (HFD-R)
words-fluid-synthetic_ester = ester synthétique (HEES, HFD-U)
words-fluid-vegetable_oil = huile végétale (HETG)
words-fluid-polyglycol = polyglycol (HEPG)
words-fluid-water = eau
words-fluid-diesel = gazole
words-fluid-petrol = essence
words-fluid-air = air
words-fluid-refrigerant = fluide frigorigène
words-fluid-engine_oil = huile moteur
words-fluid-transmission_fluid = huile de transmission (ATF)
words-fluid-biodiesel = biodiesel
words-fluid-lpg = GPL (gaz de pétrole liquéfié)
words-fluid-nitrogen = azote
words-fluid-oxygen = oxygène
words-fluid-steam = vapeur d'eau
words-fluid-brake_fluid = liquide de frein (éther de glycol)
words-fluid-not_entered = huile minérale uniquement

## Sleeves and guards

words-cover-abrasion_sleeve = gaine anti-abrasion
words-cover-spring_guard = ressort de protection
words-cover-spiral_guard = spirale de protection
words-cover-fire_sleeve = gaine pare-feu
words-cover-heat_sleeve = gaine thermique
words-cover-burst_sleeve = gaine anti-éclatement
words-cover-armour = armure métallique
words-cover-bend_restrictor = limiteur de courbure

## Where a count of flats or turns starts; each follows the count

words-basis-finger_tight = à partir du serrage aux doigts
words-basis-wrench_resistance = à partir du point de résistance à la clé
words-basis-not_stated = à partir d'un point que la source n'indique pas
words-basis-torque = par couple de serrage

## Texts of the record

words-record-customer = Client
words-record-machine = Machine
words-record-position = Emplacement
words-record-reason = Raison malgré un danger
words-record-cleanliness = Propreté demandée (ISO 4406)

## An assembly in words

words-not-known = valeur inconnue (utilisez celle du fabricant d'embouts)
words-nothing-to-tighten = emboîter jusqu'au verrouillage, rien à serrer
words-parts = { $which ->
    [hose] { $case ->
           *[plain] tuyau
            [start] Tuyau
            [short] Tuyau
        }
    [end_a] { $case ->
           *[plain] extrémité A
            [start] Extrémité A
            [short] A
        }
    [end_b] { $case ->
           *[plain] extrémité B
            [start] Extrémité B
            [short] B
        }
    [hose-end_a] { $case ->
           *[plain] tuyau et extrémité A
            [start] Tuyau et extrémité A
            [short] Tuyau, A
        }
    [hose-end_b] { $case ->
           *[plain] tuyau et extrémité B
            [start] Tuyau et extrémité B
            [short] Tuyau, B
        }
    [end_a-end_b] { $case ->
           *[plain] les deux extrémités
            [start] Les deux extrémités
            [short] A, B
        }
   *[all] { $case ->
           *[plain] tuyau et les deux extrémités
            [start] Tuyau et les deux extrémités
            [short] Tuyau, A, B
        }
 }
words-rated = { $pressure }
words-rated-unverified = { $pressure }, valeur non vérifiée ({ $parts }) : aucune source publiée disponible
words-rated-at_most = { SAY($parts, case: "start") } : { $pressure } au maximum
words-rated-ask-hose = Tuyau, { $what } : utilisez la valeur du fabricant du tuyau
words-rated-ask-end_a = Extrémité A, { $what } : utilisez la valeur du fabricant d'embouts
words-rated-ask-end_b = Extrémité B, { $what } : utilisez la valeur du fabricant d'embouts
words-unverified = { SAY($parts, case: "start") } : valeur non vérifiée, aucune source publiée disponible
words-adapter = La pression admissible est celle du flexible : un adaptateur monté sur la machine peut être l'élément le plus faible.
words-two-sentences = { $first }. { $second }.
words-three-sentences = { $first }. { $second }. { $third }.
words-four-sentences = { $first }. { $second }. { $third }. { $fourth }.
words-danger-fluid = DANGER : { $fluid } uniquement avec l'accord du fabricant du tuyau
words-danger-heat = DANGER : température supérieure à celle admise pour le tuyau
words-danger-cold = DANGER : température inférieure à celle admise pour le tuyau
words-danger-pressure = DANGER : pression demandée supérieure à la pression admissible
words-danger-vacuum = DANGER : dépression demandée supérieure à celle qu'une source admet pour ce tuyau
words-end-title = { $size } { $connection }
words-end-described = (autre raccord)
words-torque-lubricated = { $torque }, { $lubrication }
words-shape-straight = droit
words-shape-elbow = coude { $angle }
words-shape-elbow-drop = coude { $angle }, déport { $drop }
words-hose = { $standard } -{ $dash } ({ $inches })
words-hose-tube = { $standard } -{ $dash } (pour tube { $inches })
words-hose-edition = { $standard } édition { $edition } -{ $dash } ({ $inches })
words-end = { $size } { $connection }, { $form }, { $shape }
words-end-material = { $size } { $connection }, { $form }, { $shape }, { $material }
words-end-jump = { $size } { $connection }, { $form }, { $shape }, embout réduit ou augmenté : tétine pour tuyau -{ $dash }
words-end-material-jump = { $size } { $connection }, { $form }, { $shape }, { $material }, embout réduit ou augmenté : tétine pour tuyau -{ $dash }
words-end-family = { $size } { $connection }, { $form }
words-length = { $length }, { $basis }
words-vacuum = { $mbar } mbar sous la pression atmosphérique
words-clocking = { $angle } dans le sens antihoraire, extrémité A côté observateur, coude A vers le bas
words-flats = { $many ->
    [one] { $count } pan
    [below_two] { $count } pan
   *[other] { $count } pans
 }
words-turns = { $many ->
    [one] { $count } tour
    [below_two] { $count } tour
   *[other] { $count } tours
 }
words-counted = { $count } { $basis }
words-counted-or = ou { $count } { $basis }
words-torque-screw = { $torque } par vis { $screw }
words-torque-any-screw = { $torque } par vis (type de vis : voir le fabricant)
words-torque-stud = { $torque } (élément mâle étanché par une rondelle ou un joint torique ; trop élevé pour un écrou sur cône à 60°)
words-torque-of-nut = { $torque } est le couple d'un écrou sur cône à 60°, pas de cet élément mâle : utilisez la valeur du fabricant du raccord

## Signature of a tag

words-sealed-signed = Signée par cet atelier
words-sealed-unsigned = Non signée
words-sealed-broken = La signature ne correspond pas : ne vous fiez pas aux valeurs
words-sealed-unchecked = Signée, mais non vérifiée : sa clé n'est pas connue ici
words-sealed-why-altered = Le numéro de l'étiquette ou les valeurs ne sont pas ceux qui ont été signés.
words-sealed-why-unknown_key = La clé de la signature n'est pas une clé de cet atelier.
words-sealed-why-withdrawn_key = L'atelier a retiré la clé de cette signature : quelqu'un d'autre a pu s'en servir.
words-sealed-why-ended_key = La clé de cette signature n'était plus valable quand le flexible a été assemblé.
