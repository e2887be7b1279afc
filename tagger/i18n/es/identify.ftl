# Which connection an end can be by what was measured, why, and what to measure next.

identify-named = { $size } { $connection }

## In one sentence

identify-nothing = Ninguna conexión de las tablas coincide con estas medidas.
identify-other-seat = La rosca coincide con { $name }, pero el asiento no. Asientos distintos no sellan con seguridad. Ninguna conexión de las tablas tiene ambos: mida de nuevo.
identify-closest = Ninguna conexión coincide con todas las medidas; la más cercana es { $name }. Mida de nuevo.
identify-many = Aún son posibles { $count } conexiones. Las más probables: { LIST($names) }.
identify-some = Puede ser { LIST($names, style: "or") }.
identify-only = Solo coincide { $name }.
identify-tie-there = Las medidas no distinguen { LIST($names) }. El orden solo se debe a que { LIST($first, style: "or") } es más habitual en máquinas de { $origin }.
identify-tie-elsewhere = Las medidas no distinguen { LIST($names) }. El orden solo se debe a que, salvo en máquinas de { $origin }, lo habitual es { LIST($first, style: "or") }.
identify-origin-europe = Europa
identify-origin-north_america = América del Norte
identify-origin-asia = Asia
identify-lacks = Solo se comparan conexiones de las tablas. No figuran en ellas, por ejemplo: { LIST($names) }. Una conexión que coincide puede ser, aun así, una de estas.
identify-lacking-french_millimetric = cono de 24° milimétrico francés
identify-lacking-metric_taper = rosca métrica cónica
identify-lacking-screw_couplers = acoplamientos roscados (ISO 14541)
identify-lacking-one_manufacturer = conexiones propias de un solo fabricante

## What to measure next; each follows a heading such as "Measure next:"

identify-ask-seat = asiento: su ángulo con una galga de asientos, o si es una cara con junta tórica, una boca con junta tórica, un asiento plano o una rosca cónica sin asiento
identify-ask-cone = cono: si sobresale como una nariz o queda por dentro como un embudo
identify-ask-thread = diámetro de la rosca con un calibre: por fuera en un macho, por dentro en una hembra
identify-ask-tpi = paso con una galga de roscas: hilos por pulgada, o milímetros
identify-ask-hex = medida entre caras de la tuerca
identify-ask-flange_od = diámetro de la cabeza de brida
identify-ask-bolt_spacing = distancia entre tornillos, de centro a centro, por el lado más largo
identify-ask-flank = ángulo de los flancos de la rosca: pruebe una galga de 55° y otra de 60° a contraluz
identify-ask-nose = diámetro de la punta que entra en la otra pieza, en su extremo, del alojamiento que la recibe, o del agujero de un banjo
identify-ask-series = serie, pesada (S) o ligera (L): según el marcado, el plano del orificio o el fabricante del racor
identify-ask-series-why = Ambas series miden lo mismo; la presión y el apriete no son iguales. Sin la serie se aplica la presión más baja y no se da ningún par.
identify-ask-why = Es lo que mejor distingue { LIST($names) }.

## Why a reading speaks for or against a connection

identify-reading-thread = Rosca: { $measured } medido, { $nominal } nominal, { $fits ->
    [yes] coincide
   *[no] no coincide
 }.
identify-reading-tpi = Paso: { $measured } hilos por pulgada medidos, { $nominal } nominal, { $fits ->
    [yes] coincide
   *[no] no coincide
 }.
identify-reading-pitch = Paso: { $measured } mm medido, { $nominal } mm nominal, { $fits ->
    [yes] coincide
   *[no] no coincide
 }.
identify-reading-hex = Hexágono: { $measured } medido, { $nominal } nominal, { $fits ->
    [yes] coincide
   *[no] no coincide
 }.
identify-reading-tube_od = Tubo: { $measured } medido, { $nominal } nominal, { $fits ->
    [yes] coincide
   *[no] no coincide
 }.
identify-reading-nose = Punta o alojamiento: { $measured } medido, { $nominal } nominal, { $fits ->
    [yes] coincide
   *[no] no coincide
 }.
identify-reading-flange_od = Cabeza de brida: { $measured } medido, { $nominal } nominal, { $fits ->
    [yes] coincide
   *[no] no coincide
 }.
identify-reading-bolt_spacing = Distancia entre tornillos: { $measured } medido, { $nominal } nominal, { $fits ->
    [yes] coincide
   *[no] no coincide
 }.
identify-no-value = { $feature ->
    [thread] Rosca
    [tpi] Paso
    [hex] Hexágono
    [tube_od] Tubo
    [nose] Punta o alojamiento
    [flank] Ángulo de los flancos
    [flange_od] Cabeza de brida
    [bolt_spacing] Distancia entre tornillos
   *[cone] Cono
 }: sin valor en las tablas.
identify-seat-fits = Asiento { $seat }: coincide.
identify-seat-differs = Asiento { $seat } medido, pero esta conexión tiene { LIST($own, style: "or") }: no coincide. Asientos distintos no sellan con seguridad.
identify-cone-fits = { $cone ->
    [outside] El cono sobresale: coincide.
   *[inside] El cono queda por dentro: coincide.
 }
identify-cone-differs = { $cone ->
    [outside] El cono sobresale, pero el de esta conexión queda por dentro: no coincide. No sellan.
   *[inside] El cono queda por dentro, pero el de esta conexión sobresale: no coincide. No sellan.
 }
identify-flank-fits = Flancos de la rosca de { $flank }°: coinciden.
identify-flank-differs = Flancos de la rosca de { $flank }° medidos, pero esta conexión tiene el otro ángulo: no coincide. Las roscas no sellan entre sí.
identify-seat-none = Asiento { $seat } medido, pero esta conexión no tiene: no coincide.
identify-seat-face = cara con junta tórica
identify-seat-boss = boca con junta tórica
identify-seat-flat = plano
identify-seat-taper = rosca cónica

## Measurements that cannot be read

identify-two-diameters = Un diámetro interior no puede combinarse con un diámetro exterior.
    .mend = Introduzca solo el que ha medido.
identify-male-inside = Una rosca macho necesita un diámetro exterior.
    .mend = Introduzca el diámetro exterior (thread_od).
identify-female-outside = Una rosca hembra necesita un diámetro interior.
    .mend = Introduzca el diámetro interior (thread_id).
identify-none-entered = Hace falta al menos una medida.
    .mend = Introduzca al menos una, por ejemplo el diámetro exterior de la rosca (thread_od).
identify-not-a-fitting-size = { $value } no es un tamaño de racor.
    .mend = Compruebe la unidad.
identify-two-pitches = Un paso no puede combinarse con hilos por pulgada.
    .mend = Introduzca solo uno de los dos.
identify-not-a-pitch = { $value } no es un paso de racor.
    .mend = Introdúzcalo en mm, por ejemplo 1,5.
identify-not-tpi = { $value } no es un número de hilos por pulgada.
    .mend = Introduzca un número, por ejemplo 12 o 11 1/2.
identify-not-a-form = { $value } no es una forma de conexión.
    .mend = Use una de estas: { LIST($known, style: "or") }.
identify-not-a-seat = { $value } no es un asiento.
    .mend = Use uno de estos: { LIST($known, style: "or") }.
identify-not-a-cone = { $value } no es un cono.
    .mend = Use uno de estos: { LIST($known, style: "or") }.
identify-not-a-flank = { $value } no es un ángulo de flancos de rosca.
    .mend = Use uno de estos: { LIST($known, style: "or") }.
identify-not-a-series = { $value } no es una serie.
    .mend = Use una de estas: { LIST($known, style: "or") }.
identify-not-a-origin = { $value } no es un origen de máquinas.
    .mend = Use uno de estos: { LIST($known, style: "or") }.
identify-not-asked = { $value } no es una medida que se pida.
    .mend = Use una de estas: { LIST($known, style: "or") }.
