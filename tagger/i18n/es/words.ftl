# Names of parts, families and fluids, and an assembly in words. Every room may use these.

## How figures, ranges and days are written

words-as-is = { $text }
words-as-is-mended = { $text }
    .mend = { $mend }
words-decimal-sign = ,
words-date = { $day }/{ $month }/{ $year }
words-range = { $low } a { $high }
words-at-most = { $high } como máximo

## Parts of an assembly. SAY($part, case: ...) asks for a case; without one it is the plain name

words-part-hose = { $case ->
   *[plain] la manguera
    [start] La manguera
    [of] de la manguera
    [to] a la manguera
 }
words-part-end_a = { $case ->
   *[plain] el extremo A
    [start] El extremo A
    [of] del extremo A
    [to] al extremo A
    [bare] extremo A
 }
words-part-end_b = { $case ->
   *[plain] el extremo B
    [start] El extremo B
    [of] del extremo B
    [to] al extremo B
    [bare] extremo B
 }
words-part-override = { $case ->
   *[plain] el valor indicado
    [start] El valor indicado
    [of] del valor indicado
    [to] al valor indicado
 }

## Connections

words-connection-sae_37_flare = abocardado 37° (JIC)
words-connection-sae_45_flare = abocardado 45°
words-connection-orfs = cara plana con junta tórica (ORFS)
words-connection-sae_orb = rosca UN con junta tórica (ORB)
words-connection-metric_orb = rosca métrica con junta tórica (ISO 6149)
words-connection-npt = NPT cónica
words-connection-nptf = NPTF de sellado en seco
words-connection-npsm = NPSM, asiento 30°
words-connection-bspp = BSPP (BSP paralela)
words-connection-bspt = BSPT (BSP cónica)
words-connection-din24_light = cono 24°, serie ligera (L)
words-connection-din24_heavy = cono 24°, serie pesada (S)
words-connection-flange_code61 = brida código 61
words-connection-flange_code62 = brida código 62
words-connection-jis_30 = abocardado JIS 30°, rosca métrica
words-connection-jis_60 = cono JIS 60°, rosca BSP
words-connection-metric_60_cone = cono 60° métrico
words-connection-french_gas = cono 24° francés, tubo gas
words-connection-sae_inverted_flare = abocardado invertido (SAE J512)
words-connection-metric_flat_stud = rosca métrica con junta plana
words-connection-banjo_metric = banjo, tornillo métrico
words-connection-banjo_bsp = banjo, tornillo BSP
words-connection-sae_flareless = cono 24° con anillo (SAE J514)
words-connection-qd_iso7241_a = acoplamiento rápido ISO 7241 serie A
words-connection-qd_iso7241_b = acoplamiento rápido ISO 7241 serie B
words-connection-qd_iso16028 = acoplamiento de cara plana ISO 16028
words-connection-staple = conexión con grapa (DIN 20043)
words-connection-din_standpipe = espiga de tubo para cono 24°
words-connection-din24_very_light = cono 24°, serie muy ligera (LL)
words-connection-other = otra conexión

## Forms

words-form-male = macho
words-form-female_swivel = hembra con tuerca loca
words-form-female_fixed = hembra fija
words-form-flange_head = cabeza de brida
words-form-male_swivel = macho giratorio
words-form-eye = ojo
words-form-coupler_male = mitad macho
words-form-coupler_female = mitad hembra
words-form-staple_male = espiga macho
words-form-staple_female = casquillo hembra
words-form-standpipe = tubo liso

## Materials

words-material-carbon_steel = acero al carbono
words-material-stainless_steel = acero inoxidable
words-material-brass = latón
words-material-aluminium = aluminio

## What a length reaches between

words-length_basis-sealing_face = entre caras de sellado
words-length_basis-thread_end = entre extremos de rosca
words-length_basis-elbow_centreline = entre ejes de los codos

## Fluids. German: SAY($fluid, case: "dat") after mit and nach

words-fluid-mineral_oil = aceite mineral
words-fluid-water_oil_emulsion = emulsión de agua y aceite (HFA, HFB)
words-fluid-water_glycol = agua-glicol (HFC)
words-fluid-phosphate_ester = éster fosfórico (HFD-R)
words-fluid-synthetic_ester = éster sintético (HEES, HFD-U)
words-fluid-vegetable_oil = aceite vegetal (HETG)
words-fluid-polyglycol = poliglicol (HEPG)
words-fluid-water = agua
words-fluid-diesel = gasóleo
words-fluid-petrol = gasolina
words-fluid-air = aire
words-fluid-refrigerant = refrigerante
words-fluid-engine_oil = aceite de motor
words-fluid-transmission_fluid = aceite de transmisión (ATF)
words-fluid-biodiesel = biodiésel
words-fluid-lpg = GLP (gas licuado de petróleo)
words-fluid-nitrogen = nitrógeno
words-fluid-oxygen = oxígeno
words-fluid-steam = vapor de agua
words-fluid-brake_fluid = líquido de frenos (éter de glicol)
words-fluid-not_entered = solo aceite mineral

## Sleeves and guards

words-cover-abrasion_sleeve = funda antiabrasión
words-cover-spring_guard = muelle de protección
words-cover-spiral_guard = espiral de protección
words-cover-fire_sleeve = funda ignífuga
words-cover-heat_sleeve = funda térmica
words-cover-burst_sleeve = funda antirreventón
words-cover-armour = armadura metálica
words-cover-bend_restrictor = limitador de curvatura

## Where a count of flats or turns starts; each follows the count

words-basis-finger_tight = desde el apriete con los dedos
words-basis-wrench_resistance = desde el punto de resistencia con la llave
words-basis-not_stated = desde un punto que la fuente no indica
words-basis-torque = por par de apriete

## Texts of the record

words-record-customer = Cliente
words-record-machine = Máquina
words-record-position = Posición
words-record-reason = Motivo pese a un peligro
words-record-cleanliness = Limpieza exigida (ISO 4406)

## An assembly in words

words-not-known = no se conoce: use el valor del fabricante del racor
words-nothing-to-tighten = empujar hasta que enclave; no hay nada que apretar
words-parts = { $which ->
    [hose] { $case ->
           *[plain] manguera
            [start] Manguera
            [short] Manguera
        }
    [end_a] { $case ->
           *[plain] extremo A
            [start] Extremo A
            [short] A
        }
    [end_b] { $case ->
           *[plain] extremo B
            [start] Extremo B
            [short] B
        }
    [hose-end_a] { $case ->
           *[plain] manguera y extremo A
            [start] Manguera y extremo A
            [short] Manguera, A
        }
    [hose-end_b] { $case ->
           *[plain] manguera y extremo B
            [start] Manguera y extremo B
            [short] Manguera, B
        }
    [end_a-end_b] { $case ->
           *[plain] los dos extremos
            [start] Los dos extremos
            [short] A, B
        }
   *[all] { $case ->
           *[plain] manguera y los dos extremos
            [start] Manguera y los dos extremos
            [short] Manguera, A, B
        }
 }
words-rated = { $pressure }
words-rated-unverified = { $pressure }, sin verificar ({ $parts }): no hay fuente publicada a mano
words-rated-at_most = { SAY($parts, case: "start") }: { $pressure } como máximo
words-rated-ask-hose = Manguera, { $what }: use el valor del fabricante de la manguera
words-rated-ask-end_a = Extremo A, { $what }: use el valor del fabricante del racor
words-rated-ask-end_b = Extremo B, { $what }: use el valor del fabricante del racor
words-unverified = { SAY($parts, case: "start") }: sin verificar, no hay fuente publicada a mano
words-adapter = La presión admisible es la del latiguillo: un adaptador en la máquina puede ser la parte más débil.
words-two-sentences = { $first }. { $second }.
words-three-sentences = { $first }. { $second }. { $third }.
words-four-sentences = { $first }. { $second }. { $third }. { $fourth }.
words-danger-fluid = PELIGRO: { $fluid } solo con la aprobación del fabricante de la manguera
words-danger-heat = PELIGRO: más caliente de lo que admite la manguera
words-danger-cold = PELIGRO: más frío de lo que admite la manguera
words-danger-pressure = PELIGRO: se pidió más presión de la admisible
words-danger-vacuum = PELIGRO: se pidió más vacío del que una fuente admite para esta manguera
words-end-title = { $size } { $connection }
words-end-described = (otra conexión)
words-torque-lubricated = { $torque }, { $lubrication }
words-shape-straight = recto
words-shape-elbow = codo { $angle }
words-shape-elbow-drop = codo { $angle }, altura { $drop }
words-hose = { $standard } -{ $dash } ({ $inches })
words-hose-tube = { $standard } -{ $dash } (para tubo de { $inches })
words-hose-edition = { $standard } edición { $edition } -{ $dash } ({ $inches })
words-end = { $size } { $connection }, { $form }, { $shape }
words-end-material = { $size } { $connection }, { $form }, { $shape }, { $material }
words-end-jump = { $size } { $connection }, { $form }, { $shape }, salto de tamaño: espiga para manguera -{ $dash }
words-end-material-jump = { $size } { $connection }, { $form }, { $shape }, { $material }, salto de tamaño: espiga para manguera -{ $dash }
words-end-family = { $size } { $connection }, { $form }
words-length = { $length }, { $basis }
words-vacuum = { $mbar } mbar por debajo de la presión atmosférica
words-clocking = { $angle } en sentido antihorario, visto desde el extremo A, con el codo A hacia abajo
words-flats = { $many ->
    [one] { $count } cara
   *[other] { $count } caras
 }
words-turns = { $many ->
    [one] { $count } vuelta
   *[other] { $count } vueltas
 }
words-counted = { $count } { $basis }
words-counted-or = o { $count } { $basis }
words-torque-screw = { $torque } en cada tornillo { $screw }
words-torque-any-screw = { $torque } en cada tornillo; el tornillo lo indica el fabricante
words-torque-stud = { $torque } (extremo macho que sella con arandela o junta tórica; excesivo para una tuerca sobre cono de 60°)
words-torque-of-nut = { $torque } es el par de una tuerca sobre cono de 60°, no de este extremo macho: use el valor del fabricante del racor

## Signature of a tag

words-sealed-signed = Firmada por este taller
words-sealed-unsigned = Sin firma
words-sealed-broken = La firma no es válida: no se fíe de los valores
words-sealed-unchecked = Firmada, pero sin comprobar: aquí no se conoce su clave
words-sealed-why-altered = El número de la etiqueta o los valores no son los que se firmaron.
words-sealed-why-unknown_key = La clave de la firma no es de este taller.
words-sealed-why-withdrawn_key = El taller retiró la clave de esta firma: otra persona puede haberla usado.
words-sealed-why-ended_key = La clave de esta firma ya no era válida cuando se montó el latiguillo.
