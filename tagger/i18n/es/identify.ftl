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
    [side] Lugar de la rosca
    [swivels] Parte roscada
    [shape] Forma de la rosca
    [seals] Sellado
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

## Identifying by looking: a question, its answers, and what is said of them

identify-step-side = ¿Dónde está la rosca de este extremo?
identify-step-form = El extremo no tiene rosca. ¿Qué es?
identify-step-swivels = Sujete la manguera. ¿Gira la parte roscada sobre el racor?
identify-step-shape = Apoye una regla a lo largo de la rosca. ¿Es paralela o cónica?
identify-step-seals = ¿Qué sella este extremo?
identify-step-cone = ¿Sobresale el cono como una nariz o queda hundido como un embudo?
identify-step-seat = ¿Qué ángulo tiene el cono? Aplique una galga de asientos.
identify-answer-side-male = por fuera (macho)
identify-answer-side-female = por dentro de una tuerca o de un cuerpo (hembra)
identify-answer-side-none = sin rosca: brida, acoplamiento rápido, conexión con grapa, tubo liso o banjo
identify-answer-form-flange_head = cabeza de brida, sujeta con brida y tornillos
identify-answer-form-eye = anillo que atraviesa un tornillo banjo
identify-answer-form-coupler_male = mitad macho de un acoplamiento rápido
identify-answer-form-coupler_female = mitad hembra de un acoplamiento rápido
identify-answer-form-staple_male = espiga que sujeta una grapa
identify-answer-form-staple_female = alojamiento con orificios para una grapa
identify-answer-form-standpipe = tubo liso, con o sin tuerca suelta
identify-answer-swivels-yes = gira sobre el racor
identify-answer-swivels-no = es una sola pieza con el racor
identify-answer-shape-parallel = paralela: el mismo diámetro en toda su longitud
identify-answer-shape-taper = cónica: el diámetro cambia a lo largo
identify-answer-seals-cone = cono metálico, con o sin junta tórica
identify-answer-seals-face = junta tórica en una cara plana, o la cara plana contra la que aprieta
identify-answer-seals-boss = junta tórica al pie de la rosca, bajo el hexágono, o el chaflán que la recibe
identify-answer-seals-flat = arandela o junta metal-goma sobre una cara plana
identify-answer-seals-thread = la propia rosca, con sellador
identify-answer-cone-outside = nariz: sobresale
identify-answer-cone-inside = embudo: queda hundido
identify-answer-seat-37 = 37° respecto al eje (74° en total)
identify-answer-seat-45 = 45° respecto al eje (90° en total)
identify-answer-seat-60 = 60° en total (30° respecto al eje)
identify-answer-seat-24 = 24° en total (12° respecto al eje)
identify-answer-unknown = no se sabe
identify-told-side = Rosca: { LIST($answers, style: "or") }
identify-told-form = Extremo: { LIST($answers, style: "or") }
identify-told-swivels = Parte roscada: { LIST($answers, style: "or") }
identify-told-shape = Forma de la rosca: { LIST($answers, style: "or") }
identify-told-seals = Sella con: { LIST($answers, style: "or") }
identify-told-cone = Cono: { LIST($answers, style: "or") }
identify-told-seat = Ángulo del cono: { LIST($answers, style: "or") }
identify-looking-kind = { $connection }, { $form }
identify-looking-title = Identificar a simple vista
identify-looking-lead = Limpie el extremo y responda a lo que vea. Cada respuesta reduce la lista; puede volver atrás en cualquier momento.
identify-looking-care = Esta página solo nombra conexiones. Nunca indica qué presión admite un extremo o una manguera.
identify-looking-open = Identificar a simple vista, sin galgas
identify-looking-answers = Sus respuestas
identify-looking-change = Cambiar
identify-looking-change_one = Cambiar: { $answer }
identify-looking-again = Empezar de nuevo
identify-looking-unsure = No lo sé
identify-looking-other = ¿No coincide ninguna imagen? Puede que una respuesta anterior sea errónea: cámbiela.
identify-looking-done = A simple vista no se puede reducir más la lista. Mida el extremo.
identify-looking-measure = Medir el extremo
identify-looking-remaining = Aún posibles
identify-looking-count = { $count ->
    [one] Aún es posible un tipo de conexión.
   *[other] Aún son posibles { $count } tipos de conexión.
}
identify-looking-none = Ninguna conexión de las tablas reúne todo esto. Cambie una respuesta.
identify-looking-sizes = { $count ->
    [one] Un tamaño: { $first }
   *[other] { $count } tamaños, de { $first } a { $last }
}
identify-looking-ruled_out = Descartadas por una sola respuesta
identify-looking-if_wrong = Si esa respuesta es errónea, el extremo puede ser una de estas.
identify-looking-known = Según las preguntas
identify-looks-fits = Visto: { $answer }. Coincide.
identify-looks-differs = Visto: { $answer }. Esta conexión no coincide.

## A hose by its layers and diameters

identify-hose-title = Manguera por sus capas
identify-hose-open = Manguera sin marcado legible
identify-hose-lead = Mida el diámetro exterior donde la cubierta no esté gastada, el diámetro interior en un corte limpio, y cuente allí las capas de refuerzo. Deje vacío lo que no pueda medir.
identify-hose-never_rates = Esta página solo excluye normas. Nunca indica la presión de una manguera: mangueras con las mismas capas y diámetros tienen presiones distintas. Tome la presión del marcado o del fabricante de la manguera.
identify-hose-field-od = Diámetro exterior
identify-hose-field-bore = Diámetro interior
identify-hose-field-kind = Tipo de refuerzo
identify-hose-field-layers = Número de esas capas
identify-hose-field-lay_line = Marcado, hasta donde se lea
identify-hose-kind-unknown = no se sabe
identify-hose-kind-wire_braid = trenza de alambre: los alambres se cruzan
identify-hose-kind-wire_spiral = espiral de alambre: los alambres van juntos y no se cruzan
identify-hose-kind-wire_helix = una hélice de alambre en la goma (manguera de aspiración)
identify-hose-kind-fibre = textil o fibra, sin alambre
identify-hose-go = Excluir normas
identify-hose-remaining = No excluidas
identify-hose-count = { $count ->
    [0] Todas las normas de las tablas quedan excluidas. Mida de nuevo.
    [one] Una norma no queda excluida.
   *[other] { $count } normas no quedan excluidas.
}
identify-hose-excluded = Excluidas
identify-hose-sizes = Tamaños: { LIST($sizes) }
identify-hose-size = -{ $dash }
identify-hose-size_od = -{ $dash } (diámetro exterior de { $least } a { $most })
identify-hose-unverified = { $source } (sin verificar)
identify-hose-sources = Fuente: { LIST($sources) }
identify-hose-unchecked-layers = Capas no comprobadas: sin valor en las tablas.
identify-hose-unchecked-od = Diámetro exterior no comprobado en algunos tamaños: sin valor en las tablas.
identify-hose-layers-wire_braid = { $count ->
    [one] una trenza de alambre
   *[other] { $count } trenzas de alambre
}
identify-hose-layers_range-wire_braid = de { $least } a { $most } trenzas de alambre
identify-hose-layers-wire_spiral = { $count ->
    [one] una espiral de alambre
   *[other] { $count } espirales de alambre
}
identify-hose-layers_range-wire_spiral = de { $least } a { $most } espirales de alambre
identify-hose-layers-wire_helix = { $count ->
    [one] una hélice de alambre
   *[other] { $count } hélices de alambre
}
identify-hose-layers_range-wire_helix = de { $least } a { $most } hélices de alambre
identify-hose-layers-fibre = { $count ->
    [one] una capa de fibra
   *[other] { $count } capas de fibra
}
identify-hose-layers_range-fibre = de { $least } a { $most } capas de fibra
identify-hose-other_layers = Refuerzo según las tablas: { LIST($own, style: "or") }. Fuente: { LIST($sources) }.
identify-hose-other_bore = Diámetro interior medido: { $measured }. El tamaño más cercano, -{ $dash }, tiene { $nearest }. Fuente: { LIST($sources) }.
identify-hose-other_od = Diámetro exterior medido: { $measured }. El tamaño más cercano, -{ $dash }, tiene { $nearest }. Fuente: { LIST($sources) }.
identify-hose-line_names = El marcado indica { LIST($standards) }.
identify-hose-line_unread = El marcado no indica ninguna norma de las tablas.
identify-hose-line_excluded = El marcado indica { $standard }, pero las medidas la excluyen. No use la manguera hasta que se aclare: mida de nuevo o llévela al taller.
identify-hose-line_size = El marcado indica el tamaño -{ $dash }, pero las medidas lo excluyen. Mida de nuevo.
identify-hose-none = Hace falta al menos un valor.
    .mend = Indique al menos uno, por ejemplo el diámetro exterior.
identify-hose-kind-missing = Un número de capas necesita su tipo.
    .mend = Elija el tipo de refuerzo.
identify-hose-bore-too-large = El diámetro interior debe ser menor que el exterior.
    .mend = Compruebe ambos.
identify-hose-not-a-diameter = { $value } no es un diámetro de manguera hidráulica.
    .mend = Indique un valor de 1 a 250 mm; compruebe la unidad.
identify-hose-not-a-count = { $value } no es un número de capas.
    .mend = Indique un número entero de 1 a { $most }.

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
identify-not-a-band = { $value } no dice cuánto puede desviarse la lectura.
    .mend = Introdúzcalo después de ±, menos de la mitad de la lectura, por ejemplo 26,9 mm ± 0,4 mm.
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
identify-not-an-answer = { $value } no es una respuesta a esta pregunta.
    .mend = Use una de estas: { LIST($known, style: "or") }.

## What was found on a gauge sheet

identify-mark-unreadable = { $given } no es una marca de una plantilla de medida.
    .mend = Introduzca la marca tal como está impresa junto a la galga, por ejemplo D26.99 o P1.814.
identify-mark-twice = { $mark } mide lo que ya se ha introducido.
    .mend = Introduzca un solo valor por medida.
identify-marks-many = Se han introducido más de { $most } marcas.
    .mend = Introduzca una sola marca por medida.
identify-scale-missing = No se sabe a qué tamaño se imprimió la plantilla de medida.
    .mend = Introduzca lo que mide la línea de control de 100 mm, o la de 4 in en pulgadas. Si una tarjeta bancaria cubre justo su marco en ambos sentidos, introduzca 100 mm.
identify-scale-alone = La línea de control solo corrige las marcas de una plantilla de medida. Un valor medido con calibre no necesita corrección.
    .mend = Introduzca la marca o deje vacía la línea de control.
identify-scale-beyond = Una línea de control de { $given } se desvía más del 3 %.
    .mend = Imprima de nuevo la plantilla al 100 % (tamaño real).
identify-scale-other-line = 101,6 mm es la longitud de la línea de 4 in. Aquí se espera la línea de 100 mm.
    .mend = Introduzca lo que mide la línea de 100 mm, o la longitud de la línea de 4 in en pulgadas.
identify-mark-other-end = { $thread ->
    [thread_od] Una marca con D es de una rosca macho, y este extremo no lo es.
   *[thread_id] Una marca con F es de una rosca hembra, y este extremo no lo es.
 }
    .mend = Elija qué es el extremo o introduzca la marca de un extremo así.
