# What the trade says of an assembly: rating, temperature, lengths, tightening, and parts that do not go together.

## Working pressure: not known. In LIST($parts) the parts stand with their article, without a case

trade-pressure-not-known = La presión de trabajo no se conoce porque no se conoce la presión admisible para { LIST($parts) }. Use el valor del fabricante.
trade-pressure-at-most = La presión de trabajo no se conoce porque no se conoce la presión admisible para { LIST($parts) }. No puede superar { $pressure }, la presión admisible { SAY($part, case: "of") }. Use el valor del fabricante.
trade-pressure-unfit = La presión de trabajo no se conoce. { $why }
trade-pressure-unconfirmed = La presión de trabajo introducida, { $entered } (fuente: { $source }), no se usa. Supera todos los valores de las tablas para este tipo de pieza: { $part }, { $highest }. Compruebe la unidad (3000 psi son 207 bar). Si es correcta, confírmela.
trade-rating-not-known = La presión admisible { SAY($part, case: "of") } no se conoce. { $why }
trade-unfit-hot = Ninguna fuente da una presión para { $standard } por encima de { $limit } ({ $source }).
trade-unfit-fluid = Ninguna fuente da una presión para { $standard } con este fluido: { $fluid } ({ $source }).
trade-unfit-hot-fluid = Ninguna fuente da una presión para { $standard } por encima de { $limit } con este fluido: { $fluid } ({ $source }).
trade-why-standard = { $standard } no figura en las tablas.
trade-why-hose = No hay presión admisible publicada para { $standard } -{ $dash }.
trade-why-end = No hay presión admisible publicada para: { $end }, de { $material }.
trade-why-end-steel = No hay presión admisible publicada para: { $end }, de { $material }. Las presiones publicadas de los racores solo valen para acero de bajo carbono.
trade-why-end-ceiling = No hay presión admisible publicada para: { $end }, de { $material }. La mayor presión publicada de la familia es { $ceiling } ({ $source }).
trade-why-end-steel-ceiling = No hay presión admisible publicada para: { $end }, de { $material }. Las presiones publicadas de los racores solo valen para acero de bajo carbono. La mayor presión publicada de la familia es { $ceiling } ({ $source }).
trade-why-end-condition = La fuente de la presión para { $end }, material { $material }, solo vale hasta { $limit }. Indique la temperatura máxima o use el valor del fabricante.
trade-why-part-condition = La presión admisible de la manguera { $part } solo vale hasta { $limit }. Indique la temperatura máxima o use el valor del fabricante.

## Working pressure: known, with something to be said of it

trade-same-thread = { SAY($part, case: "start") }: ninguna galga distingue { LIST($families) }. Se aplica la menor de las dos presiones admisibles.
trade-rating-unverified = La presión admisible { SAY($part, case: "of") }, { $pressure }, está sin verificar (fuente: { $source }). Confírmela con los datos del fabricante.
trade-graded = { $source }; { $grade }
trade-grade-standard = norma consultada
trade-grade-document = documento de un fabricante u organismo público consultado
trade-grade-secondary = tabla de segunda mano
trade-grade-practice = práctica habitual
trade-grade-unverified = sin verificar: no hay fuente publicada a mano
trade-grade-shop = valor propio del taller
trade-grade-given = valor introducido con su fuente
trade-burst-not-known = { SAY($part, case: "start") }: los acoplamientos rápidos y las conexiones con grapa se ofrecen con presiones de rotura desde 3 veces la presión de trabajo. No se conoce la presión mínima de rotura del latiguillo: use el valor del fabricante.
trade-outside-standard = -{ $dash } no es un tamaño de { $standard }: la presión admisible es la de un solo fabricante. Confírmela con los datos del fabricante de la manguera.
trade-edition-not-entered = { $standard } -{ $dash } tiene presiones admisibles distintas según la edición ({ LIST($ratings) }), y no se ha indicado ninguna edición. Se aplica el valor menor, { $pressure }. La edición figura en el marcado impreso de la manguera.
trade-edition-rating = { $edition }: { $pressure }
trade-pressure-entered = La presión de trabajo es el valor introducido (fuente: { $source }).
trade-pressure-entered-for = La presión de trabajo es el valor introducido (fuente: { $source }). Sustituye a la presión admisible que falta para { LIST($parts) }.
trade-pressure-too-high = La presión introducida, { $entered } (fuente: { $source }), supera la presión admisible { SAY($part, case: "of") }, { $pressure }. Se aplica el valor menor.
trade-pressure-too-high-for = La presión introducida, { $entered } (fuente: { $source }), supera la presión admisible { SAY($part, case: "of") }, { $pressure }. Se aplica el valor menor. Sustituye a la presión admisible que falta para { LIST($parts) }.
trade-pressure-beyond-hose = La presión introducida, { $entered }, supera la presión admisible de la manguera dentro de sus límites, { $pressure } (fuente: { $source }). Se aplica el valor menor.

## A manufacturer's value of one part: entered, kept by the shop, or asked for

trade-rating-too-high = El valor del fabricante introducido para { SAY($part) }, { $entered } (fuente: { $source }), supera el valor publicado, { $pressure }. Se aplica el valor más bajo.
trade-rating-not-lifted = { SAY($part, case: "start") }: el valor del fabricante introducido, { $entered } (fuente: { $source }), no se aplica. Más allá de un límite de fluido o de calor solo cuenta si su fuente nombra el fluido y la temperatura máxima de este latiguillo: introduzca ambos con él, y la temperatura máxima del latiguillo.
trade-rating-other-fluid = { SAY($part, case: "start") }: el valor del fabricante introducido, { $entered } (fuente: { $source }), no se aplica: su fuente nombra otro fluido que el de este latiguillo ({ $fluid }).
trade-rating-too-hot = { SAY($part, case: "start") }: el valor del fabricante introducido, { $entered } (fuente: { $source }), no se aplica: su fuente solo lo da hasta { $limit }. Introduzca la temperatura máxima del latiguillo, o un valor válido a esa temperatura.
trade-rating-unconfirmed = { SAY($part, case: "start") }: el valor del fabricante introducido, { $entered } (fuente: { $source }), no se usa. Supera todos los valores de las tablas para este tipo de pieza, { $highest }. Compruebe la unidad (3000 psi son 207 bar). Si es correcto, confírmelo.
trade-rating-unpublished = { SAY($part, case: "start") }: el valor del fabricante introducido, { $entered } (fuente: { $source }), no se usa. Supera todos los valores publicados para esta pieza, { $highest }. Compruebe la unidad (3000 psi son 207 bar). Si la fuente lo da para esta misma pieza, confírmelo.
trade-rating-impossible = Ninguna pieza de este tipo trabaja por encima de { $limit }.
    .mend = Compruebe la unidad: 3000 psi son 207 bar.
trade-rating-confirm = { $entered } supera todos los valores de las tablas para este tipo de pieza: { $part }, { $highest }.
    .mend = Compruebe la unidad: 3000 psi son 207 bar. Si el valor es correcto, confírmelo.
trade-rating-confirm-unpublished = { $entered } supera todos los valores publicados para esta pieza: { $part }, { $highest }.
    .mend = Compruebe la unidad: 3000 psi son 207 bar. Si la fuente da el valor para esta misma pieza, confírmelo.
trade-rating-by-shop = { SAY($part, case: "start") }: { $pressure } es el valor de su taller (fuente: { $source }).
trade-rating-by-given = { SAY($part, case: "start") }: { $pressure } es el valor del fabricante introducido (fuente: { $source }).
trade-rating-above-published = { SAY($part, case: "start") }: { $pressure } (fuente: { $source }) supera todos los valores publicados para esta pieza; el más alto es { $highest }. Asegúrese de que es la pieza a la que se refiere la fuente.
trade-ask-rating-hose = Introduzca la presión de trabajo del fabricante de la manguera con su fuente. Su taller puede conservarla para todos los latiguillos siguientes.
trade-ask-rating-end = { SAY($part, case: "start") }: introduzca la presión de trabajo del fabricante del racor con su fuente. Su taller puede conservarla para todos los latiguillos siguientes.
trade-ask-approval = Introduzca la autorización del fabricante de la manguera para este fluido ({ $fluid }), con su temperatura máxima y su fuente. Su taller puede conservarla para todos los latiguillos siguientes.
trade-keep-not-used = Este valor no determina aquí la pieza, por lo que no se guarda.
    .mend = Compruebe el valor, la unidad y lo que nombra su fuente; la advertencia de al lado indica el motivo.
trade-keep-series = No se indica la serie de este extremo: un valor de la serie pesada no debe valer para la ligera.
    .mend = Introduzca la serie, S o L, antes de guardar el valor.
trade-keep-part = Falta la referencia de la manguera de su fabricante: una autorización solo vale para esa manguera.
    .mend = Introduzca la referencia de la manguera.
trade-keep-nothing = No hay ningún valor de fabricante que guardar.
    .mend = Introduzca un valor con su fuente para la manguera o un extremo.

## Temperature and fluid

trade-too-hot = { $given } supera la temperatura máxima de { $standard }, { $limit } ({ $source }). No hay reducción de presión publicada: use una manguera apta para esa temperatura.
trade-too-cold = { $given } está por debajo de la temperatura mínima de { $standard }, { $limit } ({ $source }). Use una manguera apta para esa temperatura.
trade-cold-limit-of-fluid = Con este fluido ({ $fluid }), { $standard } tiene una temperatura mínima de { $limit } ({ $source }). No la use por debajo.
trade-fluid-not-suited = { $standard } no es apta para este fluido: { $fluid } ({ $source }). Use una manguera hecha para este fluido.
trade-too-hot-for-fluid = Con este fluido ({ $fluid }), { $standard } tiene una temperatura máxima de { $limit } ({ $source }), pero la especificación indica { $given }.
trade-unfit-fluid-unnamed = Ninguna fuente dice que { $standard } sea apta para este fluido: { $fluid }.
trade-fluid-unnamed = Ninguna fuente dice que { $standard } sea apta para este fluido: { $fluid }. Por eso no vale ninguna presión. Pregunte al fabricante de la manguera e indique la presión admitida con el fluido y la temperatura máxima que nombra la fuente.
trade-fluid-approved = { $standard } puede llevar este fluido ({ $fluid }) hasta { $limit } según la autorización de su fabricante ({ $source }). Solo vale para la manguera de ese fabricante: asegúrese de que es esta.
trade-fluid-approved-beyond = { $standard } puede llevar este fluido ({ $fluid }) hasta { $limit } según la autorización de su fabricante ({ $source }), que va más allá de lo que permiten las fuentes publicadas. Solo vale para la manguera de ese fabricante: asegúrese de que es esta.
trade-fluid-as-oil = Ninguna fuente nombra este fluido para { $standard }: { $fluid }. Se trata como un aceite mineral: confírmelo con el fabricante de la manguera.
trade-pressure-not-lifted = La presión introducida, { $entered } (fuente: { $source }), no vale. Más allá de un límite de fluido o de temperatura solo cuenta si su fuente nombra el fluido y la temperatura máxima de este latiguillo: indique los dos con ella.
trade-overrated = Este latiguillo se registró para { $was }. Según los valores actuales admite { $now } como máximo. Use el valor más bajo.
trade-overrated-at_most = Este latiguillo se registró para { $was } como máximo. Según los valores actuales son { $now } como máximo. Use el valor más bajo.
trade-overrated-no-longer = Este latiguillo se registró para { $was }. Según los valores actuales no vale ninguna presión. { $why } No lo use hasta que el taller le indique su presión de trabajo.

## Lengths and bends

trade-vacuum-not-known = Ninguna fuente dice qué vacío soporta { $standard } -{ $dash }. Pregunte al fabricante de la manguera.
trade-vacuum-too-deep = { $standard } -{ $dash } soporta { $rated } ({ $source }), pero la especificación pide { $asked }: la manguera puede aplastarse. Use una manguera de aspiración prevista para ese vacío.
trade-vacuum-unverified = El vacío admisible de { $standard } -{ $dash }, { $rated }, no está verificado (fuente: { $source }). Confírmelo con los datos del fabricante de la manguera.
trade-length-tolerance-unverified = La tolerancia de longitud está sin verificar (fuente: { $source }). Confírmela con los datos del fabricante de la manguera.
trade-length-tolerance-not-known = La tolerancia de longitud no se conoce: no hay tolerancia publicada para esta longitud y este diámetro. Use el valor del fabricante de la manguera.
trade-bend-not-known = El radio mínimo de curvatura no se conoce. Use el valor del fabricante de la manguera.
trade-bend-unverified = El radio mínimo de curvatura, { $radius }, está sin verificar (fuente: { $source }). Confírmelo con los datos del fabricante de la manguera.
trade-too-short-to-bend = Una curva de 90° con el radio mínimo de curvatura necesita { $needed } de manguera, pero el latiguillo solo mide { $length }. Móntelo casi recto ({ $source }).
trade-length-under-ends = Los dos extremos prensados por sí solos son más largos: al menos { $ends } ({ $source }).
    .mend = Compruebe la longitud y su unidad.
trade-length-unconfirmed = { $length } supera { $most }.
    .mend = Compruebe la unidad. Si la longitud es correcta, confírmela.
trade-little-free-hose = Entre los extremos prensados quedan como máximo { $free } de manguera libre. La manguera recta en ambos extremos necesita { $needed } ({ $source }).
trade-median = Mediana de { $count } valores de fabricantes, de { $low } a { $high }
trade-length-too-short = El latiguillo no es más largo que sus dos extremos juntos, { $ends }.
    .mend = Compruebe la longitud y las medidas de los extremos.
trade-dimension-missing = Esta medida hace falta para convertir la longitud.
    .mend = Introdúzcala en mm, según el plano del fabricante del racor.

## Parts that do not exist or do not go together

trade-standard-read-as = { $given } se interpreta como { $standard }.
trade-standard-not-known = { $given } no figura en las tablas: solo se aplican los valores introducidos.
trade-not-a-standard = { $standard } no es una norma de manguera de las tablas.
    .mend = Use una de estas: { LIST($standards, style: "or") }. Para cualquier otra manguera, introduzca la presión de trabajo y su fuente.
trade-layline-pressures = Hay varias presiones de trabajo impresas en la manguera: se aplica la más baja.
trade-layline-sizes = Los tamaños impresos en la manguera no concuerdan: { LIST($sizes) }. Introduzca el tamaño.
trade-layline-pressure-above = La presión impresa, { $pressure }, supera todos los valores publicados para esta manguera en este tamaño ({ LIST($standards) }); el más alto es { $highest }. Compruebe el tamaño y la unidad impresos en la manguera (3000 psi son 207 bar).
trade-layline-pressure-impossible = La presión impresa, { $pressure }, no se usa: ninguna manguera de este tipo trabaja por encima de { $limit }. Compruebe la unidad impresa en la manguera (3000 psi son 207 bar).
trade-carries-air_brake = aire comprimido para frenos
trade-carries-fuel = gasolina, gasóleo y biodiésel
trade-carries-marine_fuel = combustible de embarcaciones pequeñas
trade-carries-lpg = GLP
trade-carries-military = lo que indica su especificación
trade-carries-power_steering = fluido de dirección asistida
trade-carries-refrigerant = refrigerante; el latiguillo se certifica en conjunto
trade-carries-steam = vapor saturado
trade-other-hose = { $standard } no es una manguera hidráulica. Transporta: { $carries }.
    .mend = Introduzca la presión de trabajo del fabricante de la manguera con su fuente, y el fluido.
trade-other-hose-fluid = { $standard } no es para este fluido. Transporta: { $carries }.
    .mend = Introduzca el fluido que circula o use otra manguera.
trade-jetting-hose = { $standard } es una manguera de chorro de agua: su presión deja menos margen hasta la rotura y no vale para hidráulica.
    .mend = Use una manguera hidráulica.
trade-not-a-standard-nearest = { $standard } no es una norma de manguera de las tablas.
    .mend = Compruebe la grafía: ¿{ LIST($nearest, style: "or") }? Para cualquier otra manguera, introduzca la presión de trabajo y su fuente.
trade-not-a-hose-size = { $dash } no es un tamaño de { $standard }.
    .mend = Use uno de estos: { LIST($sizes, style: "or") }.
trade-not-a-size = { $size } no es un tamaño de esta conexión: { $connection }.
    .mend = Use uno de estos: { LIST($sizes, style: "or") }.
trade-not-a-form = Esta conexión no existe en esta forma ({ $form }): { $connection }.
    .mend = Use una de estas: { LIST($forms, style: "or") }.
trade-not-a-form-instead = Esta conexión no existe en esta forma ({ $form }): { $connection }.
    .mend = Para una hembra con tuerca loca que reciba su macho, elija { $instead }.
trade-not-a-series = Esta conexión no tiene serie: { $connection }.
    .mend = Borre la serie.
trade-not-this-series = Esta serie no existe para la conexión { $connection }.
    .mend = Use una de: { LIST($series, style: "or") }.
trade-dash-names-tube = El tamaño dash de { $standard } designa el tubo, no el diámetro interior: -{ $dash } tiene un diámetro interior de { $bore }. Use los racores hechos para esta manguera; una espiga para otra manguera -{ $dash } no sirve.
trade-tail-for-another-hose = La espiga del racor es para manguera -{ $tail }, pero la manguera es -{ $hose }.
    .mend = Use un racor con espiga -{ $hose }, o manguera -{ $tail }.
trade-end-for-another-hose = { $size } { $connection } está hecho para manguera { LIST($usual, style: "or") }, pero la manguera es -{ $hose }.
    .mend = Si es un salto de tamaño, ponga la espiga de este extremo (hose_dash) en { $hose }. Si no, corrija el tamaño.
trade-jump-size = { SAY($part, case: "start") } es un salto de tamaño: { $size } { $connection } en manguera -{ $hose } (habitual: { LIST($usual, style: "or") }).
trade-edition-too-new = { $year } es posterior a { $newest }, la última edición de las tablas.
    .mend = Bórrela para que se aplique el valor menor, o introduzca la edición impresa en la manguera.
trade-edition-not-known = { $edition } no es una edición de { $standard } en las tablas.
    .mend = Use una de estas: { LIST($editions, style: "or") }.
trade-edition-none = { $edition } no es una edición de { $standard } en las tablas.
    .mend = Bórrela: esta norma solo tiene un juego de valores.

## Tightening. $joint is what the source calls the joint; lubrication follows it in lower case

trade-tightening-not-known = { SAY($part, case: "start") }: no se conoce cuánto apretar. Use el valor del fabricante del racor.
trade-torque-by-ring = { SAY($part, case: "start") }: el apriete depende de la arandela de cierre y del tornillo o extremo macho, que varían: { LIST($torques) }. Use el valor del fabricante del racor para su arandela.
trade-two-rigid-ends = Ningún extremo tiene tuerca loca: los dos hacen girar toda la manguera al enroscarlos. Se puede montar con una unión o un adaptador giratorio en un extremo.
trade-no-nut-at-either-end = Ningún extremo tiene tuerca propia. Al menos una de las piezas opuestas debe tenerla; si no, use una unión o un adaptador giratorio.
trade-mating-nut-needed = { SAY($part, case: "start") } no tiene tuerca propia y el otro extremo no gira. La pieza opuesta debe tener tuerca; si no, use una unión o un adaptador giratorio.
trade-torque-series = { SAY($part, case: "start") }: no se indica ningún par ni número de caras porque falta la serie. Un extremo macho de la serie pesada (S) necesita más par que uno de la ligera (L): con el par de la ligera se afloja. Indique la serie o use el valor del fabricante del racor.
trade-stud-not-nut = { SAY($part, case: "start") }: el par es el de un extremo macho que sella en una boca con arandela o junta tórica. Una tuerca sobre cono de 60° admite menos: para una tuerca, use el valor del fabricante del racor.
trade-tightening-soft-flange = { SAY($part, case: "start") }: no se conoce cuánto apretar. Los tornillos de una brida siguen siendo de acero, no hay fuerza de apriete publicada para cabezas de brida de { $material }, y con la mitad del par del acero podría haber fugas. Use el valor del fabricante del racor.
trade-torque-unverified = { SAY($part, case: "start") }: el par de apriete está sin verificar (fuente: { $source }). Confírmelo con los datos del fabricante del racor.
trade-soft-material = { SAY($part, case: "start") }: { $material }, par de apriete menor que para el acero; no hay un número de caras publicado para este material.
trade-torque-basis = { $joint }, { $lubrication }
trade-torque-basis-screw = { $joint }, { $lubrication }, cada tornillo { $screw }, { $grade ->
    [none] clase de resistencia no indicada
   *[other] clase { $grade }
 }
trade-screw-class-not-stated = { SAY($part, case: "start") }: la fuente de este par ({ $source }) no indica la clase de resistencia de los tornillos { $screw }. Lea la clase en las cabezas y pida su par al fabricante de la brida.
trade-screw-class-tables = { SAY($part, case: "start") }: la fuente de este par ({ $source }) no indica la clase de resistencia de los tornillos { $screw }. Las tablas generales de tornillería, que no son tablas de bridas, dan por clase { LIST($torques) }. Lea la clase en las cabezas y pida su par al fabricante de la brida.
trade-torque-of-class = { $grade }: { $torque }
trade-screw-class-needed = { SAY($part, case: "start") }: los tornillos deben ser de clase { LIST($classes, style: "or") } (sin verificar, fuente: { $source }). No use nunca otros de menor resistencia.
trade-other-screws = { SAY($part, case: "start") }: el par indicado vale para tornillos { $screw }. La misma brida se fabrica también con tornillos de otro tamaño u otra clase: { LIST($torques) }. Mire cuáles lleva.
trade-torque-of-screw = { $screw } ({ $grade ->
    [none] clase no indicada
   *[other] clase { $grade }
 }): { $torque } ({ $source })
trade-torque-basis-reduced = { $joint }, { $lubrication }, { $percent } % del valor del acero para { $material } ({ $source })
trade-torque-basis-shared = { $basis }, margen común a { $count } fuentes
trade-torque-basis-others = { $basis }, otras fuentes { $others }
trade-torque-of-source = { $torque } ({ $joint }: { $source })
trade-torque-sources-disagree = { SAY($part, case: "start") }: las fuentes del par de apriete no coinciden: { LIST($torques) }. Use el valor del fabricante del racor.
trade-flats-of-source = { $flats } ({ $source })
trade-flats-sources-disagree = { SAY($part, case: "start") }: las fuentes del número de caras no coinciden: { LIST($flats) }. Use el valor del fabricante del racor.
trade-flats-two-bases = { SAY($part, case: "start") }: cuente las caras { $basis } (fuente: { $source }); otra fuente ({ $contrary }) da el mismo número { $other }.
trade-spread = { LIST($values) } ({ $joint }{ $screw ->
    [none] { "" }
   *[other] , tornillo { $screw }
 }{ $sizes ->
    [all] , todos los tamaños
   *[one] { "" }
 }): { $source }
trade-spread-material = { LIST($values) } ({ $joint }{ $screw ->
    [none] { "" }
   *[other] , tornillo { $screw }
 }, { $material }{ $sizes ->
    [all] , todos los tamaños
   *[one] { "" }
 }): { $source }
trade-aluminium-port = en boca de aluminio
trade-lubrication-not_stated = lubricación no indicada
trade-lubrication-lightly_oiled = ligeramente aceitado
trade-lubrication-lubricated = lubricado
trade-lubrication-run_on_dry = par para unión lubricada, tuerca roscada en seco hasta el contacto
trade-lubrication-dry = en seco
trade-lubrication-threads = roscas lubricadas
trade-lubrication-threads_fluid_or_grease = roscas lubricadas (fluido hidráulico, pasta antigripante o vaselina)
trade-lubrication-threads_engine_oil = roscas aceitadas con aceite de motor
trade-lubrication-sealant_two_threads_bare = sellador de roscas, los dos primeros hilos libres
trade-lubrication-sealed = rosca con sellador
trade-lubrication-lubricated_or_sealed = lubricado o con sellador
trade-lubrication-o_ring_oiled = junta tórica aceitada
trade-lubrication-o_ring_system_oil = lubricado (aceite del sistema en la junta tórica)
trade-lubrication-o_ring_hydraulic_fluid = lubricado (fluido hidráulico limpio en la junta tórica)
trade-lubrication-o_ring_and_threads = junta tórica y roscas lubricadas

## Files of the tables

trade-not-a-folder = { $folder } no es una carpeta.
    .mend = Introduzca la carpeta que contiene los archivos CSV.
trade-not-a-table = { $file } no es una de las tablas.
    .mend = Use una de estas: { LIST($tables, style: "or") }.
trade-wrong-columns = { $file } no tiene las columnas correctas: { LIST($columns) }.
    .mend = Corrija la línea de encabezado.
trade-cell-not-read = Esta celda no se puede leer.
    .mend = Corrija la celda.
trade-row-not-above-zero = El valor debe ser mayor que 0.
    .mend = Corrija la celda.
trade-row-negative = El valor no puede ser negativo.
    .mend = Corrija la celda.
trade-row-range = El mínimo, { $low }, es mayor que el máximo, { $high }.
    .mend = Corrija uno de los dos.
trade-row-above-possible = El valor es mayor que { $limit }, lo máximo posible aquí.
    .mend = Compruebe la unidad de la columna: 3000 psi son 207 bar.
trade-row-no-source = La fila no indica la fuente.
    .mend = Introduzca de dónde procede el valor. Ejemplo: ficha técnica 7 del fabricante.
trade-row-no-maximum = Un par mínimo exige su máximo.
    .mend = Introduzca el par máximo.
trade-row-taper-flats = Las roscas cónicas no se aprietan por caras.
    .mend = Introduzca vueltas completas en su lugar.
trade-row-unknown-word = Esta palabra no se conoce aquí.
    .mend = Use una de estas: { LIST($words, style: "or") }.
trade-row-printed-not-read = El valor impreso no se puede leer.
    .mend = Introdúzcalo con su unidad tal como lo imprime la fuente, o deje la celda vacía. Ejemplo: 3000 psi.
trade-row-printed = La fila se contradice: { $column } es { $given }, pero { $printed } equivale a { $found }.
    .mend = Corrija el valor o el valor impreso.


## Whether one assembly may take the place of another: "old" is the one to be replaced, "new" the one to replace it

trade-verdict-replaces = El latiguillo nuevo sustituye al antiguo.
trade-verdict-with-care = El latiguillo nuevo puede sustituir al antiguo, con diferencias.
trade-verdict-does-not-replace = El latiguillo nuevo no sustituye al antiguo.
trade-compare-values = Antiguo: { $old }, nuevo: { $new }.
trade-compare-both = Ambos: { $both }.
trade-compare-not-specified = no indicado
trade-compare-none = ninguno
trade-compare-pressure-same-parts = Las mismas piezas; presión de trabajo no conocida.
trade-compare-pressure-by-part = No se conoce la presión de trabajo del latiguillo antiguo, pero ninguna pieza del nuevo es más débil.
trade-compare-alike = Antiguo: { $old }, nuevo: { $new }. { $how }
trade-compare-turned = Monte el latiguillo nuevo al revés: su extremo A ocupa el lugar del extremo B. El ángulo de orientación no cambia.
trade-compare-pressure-not-known = { $which ->
    [old] No se conoce la presión de trabajo del latiguillo antiguo. Introdúzcala en la especificación con su fuente.
    [new] No se conoce la presión de trabajo del latiguillo nuevo. Introdúzcala en la especificación con su fuente.
   *[both] No se conoce la presión de trabajo de ninguno de los dos latiguillos. Introdúzcala en sus especificaciones con su fuente.
 }
trade-compare-pressure-lower = El latiguillo nuevo tiene una presión de trabajo menor. Antiguo: { $old }, nuevo: { $new }.
trade-compare-bore = El tamaño dash de una de las mangueras designa el tubo: los diámetros interiores son { $old } y { $new }.
trade-compare-dash-smaller = La manguera nueva es -{ $new }, menor que -{ $old }: menos caudal, más calor.
trade-compare-dash-larger = La manguera nueva es -{ $new }, mayor que -{ $old }. Compruebe el espacio disponible.
trade-compare-suction = Antiguo: { $old }, una manguera de aspiración; nuevo: { $new }. Una manguera de presión puede colapsar con la aspiración.
trade-compare-described = { $old } y { $new } están descritos con palabras. Compare las piezas mismas.
trade-compare-series = { $old } y { $new }: las series pesada (S) y ligera (L) difieren en el par y en la presión admisible. Averigüe de cuál se trata.
trade-compare-material = Antiguo: { $old }, nuevo: { $new }. Compruebe la resistencia a la corrosión y la presión admisible del fabricante.
trade-compare-shape = Antiguo: { $old }, nuevo: { $new }. Cambia el trazado de la manguera.
trade-compare-length-basis = Antiguo: medido { $old }; nuevo: medido { $new }. Las longitudes no se pueden comparar. Mida ambos entre los mismos puntos.
trade-compare-length-no-tolerance = Antiguo: { $old }, nuevo: { $new }. No se conoce ninguna tolerancia para el antiguo.
trade-compare-length-within = Antiguo: { $old }, nuevo: { $new }. Dentro de la tolerancia, +{ $plus } / -{ $minus }.
trade-compare-length-short = Antiguo: { $old }, nuevo: { $new }. Demasiado corto: la manguera quedaría tirante.
trade-compare-length-long = Antiguo: { $old }, nuevo: { $new }. Demasiado largo: la manguera puede rozar o acodarse.
trade-compare-clocking-none = Sin ángulo de orientación: ninguno tiene dos codos.
trade-compare-clocking-within = Antiguo: { $old }, nuevo: { $new }. Dentro de la tolerancia, ±{ $allowed }.
trade-compare-clocking-off = Antiguo: { $old }, nuevo: { $new }. Difieren { $off }: la manguera quedaría retorcida.
trade-compare-bend-not-known = El radio mínimo de curvatura no se conoce para ambos.
trade-compare-bend-same-hose = No se conoce el radio mínimo de curvatura, pero la manguera es la misma.
trade-compare-bend-larger = Antiguo: { $old }, nuevo: { $new }. No curve el nuevo tanto como el antiguo.
trade-compare-temperature-none = El antiguo no tiene temperatura indicada y no se conoce el límite de su manguera.
trade-compare-temperature-same-hose = No se conoce el límite de temperatura, pero la manguera es la misma.
trade-compare-temperature-limits = El antiguo no tiene temperatura indicada: su manguera es apta hasta { $old }, la nueva hasta { $new }.
trade-compare-temperature-not-known = El antiguo se usa hasta { $old }; no se conoce el límite del nuevo.
trade-compare-temperature = El antiguo se usa hasta { $old }; la manguera nueva es apta hasta { $new }.
trade-compare-vacuum = El antiguo se usa a { $old }; el nuevo está previsto para { $new }.
trade-compare-fluid-none = No se ha indicado fluido para ninguno.
trade-compare-fluid-no-source = Ambos para este fluido: { $fluid }. Ninguna fuente dice que { $standard } sea apta para él. Consulte al fabricante de la manguera.
trade-compare-fluid-ask = Antiguo: { $old }, nuevo: { $new }. Consulte al fabricante de la manguera.
trade-compare-fluid-unknown = Antiguo: { $old }, nuevo: { $new }. Ninguna fuente dice que la manguera nueva sea apta para el fluido del antiguo.
trade-compare-covers-missing = Al nuevo le falta: { LIST($covers) }.
trade-compare-covers-added = El nuevo tiene además: { LIST($covers) }.
trade-compare-covers-same = Las mismas fundas y protecciones.


## What the check of the tables finds; $row names the table and the row

trade-check-duplicate = { $row }: { $count } filas tienen la misma clave.
trade-check-no-source = { $row }: la fila no tiene fuente.
trade-check-unknown-word = { $row }: { $given } no se conoce en la columna { $column }.
trade-check-memory-source = { $row }: una fila citada de memoria o por criterio propio debe decirlo al comienzo de su fuente.
trade-check-diameter = { $row }: { $thread } tiene un diámetro de { $found } mm, la fila indica { $given } mm.
trade-check-pitch = { $row }: { $thread } tiene un paso de { $found } mm, la fila indica { $given } mm.
trade-check-tpi = { $row }: { $tpi } hilos por pulgada y un paso de { $given } mm no concuerdan.
trade-check-minor = { $row }: el diámetro menor de la hembra, { $given } mm, no es D - { $height } P.
trade-check-minor-size = { $row }: el diámetro menor de la hembra, { $given } mm, no está entre 0 y { $od } mm.
trade-check-pressure = { $row }: { $printed } son { $found } bar, la fila indica { $given } bar.
trade-check-not-larger = { $row }: no es mayor que { $smaller }.
trade-check-wrong-way = { $row }: en el tamaño { $size } los valores van en sentido contrario, de { $before } a { $after }.
trade-check-bend = { $row }: el radio mínimo de curvatura es { $radius } mm, pero { $before } mm para el menor, -{ $small }.
trade-check-range = { $row }: { $low } es mayor que { $high }.
trade-check-taper-flats = { $row }: las roscas cónicas no se aprietan por caras.
trade-check-flats = { $row }: { $flats } no es un número de caras para apretar.
trade-check-not-a-size = { $row }: { $size } no es un tamaño de la familia.
trade-check-not-a-standard = { $row }: la norma no figura en hose_standards.
trade-check-no-pressure = { $row }: la norma no tiene presión.
trade-check-no-family = { $row }: falta la familia.
trade-check-tighten-by = { $row }: hay que indicar qué se gira, salvo en una rosca cónica.
trade-check-shares = { $row }: las partes de los asientos suman { $sum }, no 1.

## Storage and service dates

trade-guidance-only = Solo orientativo. Sustituya una manguera de inmediato si tiene fugas, ampollas o grietas, o si ha quedado acodada.
trade-rule-bulk_hose_years_iso = Manguera en bobina antes del montaje (ISO 8331)
trade-rule-assembly_storage_years_iso = Almacenamiento de un latiguillo antes del uso (ISO 8331)
trade-rule-bulk_hose_years_din = Manguera en bobina antes del montaje (DIN 20066)
trade-rule-assembly_storage_years_din = Almacenamiento de un latiguillo antes del uso (DIN 20066)
trade-rule-assembly_life_years_din = Vida total de un latiguillo, almacenamiento incluido (DIN 20066)
trade-rule-bulk_hose_years_tr17165 = Manguera en bobina, almacenada según ISO 2230 (ISO/TR 17165-2)
trade-rule-bulk_hose_years_j1273 = Manguera de caucho y latiguillo, 40 trimestres (SAE J1273)


## Warnings of records from before messages: the code and the part are kept, the values are in the record

trade-kept-edition_not_given = Esta manguera tiene presiones admisibles distintas según la edición, y no se indicó ninguna edición. Se aplica el valor menor. La edición figura en el marcado impreso de la manguera.
trade-kept-outside_standard = Este tamaño no existe en la norma de la manguera: la presión admisible es la de un solo fabricante. Confírmela con los datos del fabricante de la manguera.
trade-kept-pressure_not_known = La presión de trabajo no se conoce. Use el valor del fabricante.
trade-kept-pressure_given = La presión de trabajo es el valor introducido.
trade-kept-pressure_given_too_high = La presión introducida supera una presión admisible de este latiguillo. Se aplica el valor menor.
trade-kept-rating_not_known = La presión admisible { SAY($part, case: "of") } no se conoce. Use el valor del fabricante.
trade-kept-rating_from_memory = La presión admisible { SAY($part, case: "of") } está sin verificar. Confírmela con los datos del fabricante.
trade-kept-jump_size = { SAY($part, case: "start") } es un salto de tamaño.
trade-kept-bend_not_known = El radio mínimo de curvatura no se conoce. Use el valor del fabricante de la manguera.
trade-kept-bend_from_memory = El radio mínimo de curvatura está sin verificar. Confírmelo con los datos del fabricante de la manguera.
trade-kept-too_short_to_bend = El latiguillo es demasiado corto para una curva de 90° con el radio mínimo de curvatura. Móntelo casi recto.
trade-kept-too_hot = La temperatura supera el máximo de la norma de la manguera. Use una manguera apta para esa temperatura.
trade-kept-too_cold = La temperatura está por debajo del mínimo de la norma de la manguera. Use una manguera apta para esa temperatura.
trade-kept-cold_limit_of_fluid = Con este fluido la manguera tiene una temperatura mínima más alta. No la use por debajo.
trade-kept-fluid_not_known = Ninguna fuente dice si la manguera es apta para este fluido. Consulte al fabricante de la manguera.
trade-kept-fluid_not_suited = La manguera no es apta para este fluido. Use una manguera hecha para este fluido.
trade-kept-too_hot_for_fluid = Con este fluido la temperatura supera el máximo de la manguera. Use una manguera apta para ambos.
trade-kept-tightening_not_known = { SAY($part, case: "start") }: no se conoce cuánto apretar. Use el valor del fabricante del racor.
trade-kept-torque_from_memory = { SAY($part, case: "start") }: el par de apriete está sin verificar. Confírmelo con los datos del fabricante del racor.
trade-kept-soft_material = { SAY($part, case: "start") }: este material admite menos par de apriete que el acero, y no hay un número de caras publicado para él.
trade-kept-length_tolerance_from_memory = La tolerancia de longitud está sin verificar. Confírmela con los datos del fabricante de la manguera.
trade-kept-length_tolerance_not_known = La tolerancia de longitud no se conoce. Use el valor del fabricante de la manguera.
trade-kept-standard_spelling = La norma de la manguera se introdujo con otra grafía.
trade-kept-standard_not_known = La norma de la manguera no figura en las tablas: solo se aplican los valores introducidos.

## Hoses of the shop's own

trade-own-hose-fluid-heat = El fabricante admite un fluido solo hasta una temperatura, y no se ha indicado.
    .mend = Indique la temperatura máxima.
trade-own-hose-part = La referencia no tiene letras ni dígitos.
    .mend = Indique la referencia impresa en la manguera.
trade-own-hose-outside = Un diámetro exterior de { $outside } no supera el diámetro interior de la manguera, { $bore }. No puede ser correcto.
    .mend = Compruebe el valor y su unidad: se lee en mm.
trade-own-hose-bend = Un radio de curvatura de { $bend } es menor que el ancho de la manguera, { $across }. No puede ser correcto.
    .mend = Compruebe el valor y su unidad: se lee en mm.
trade-own-hose-rating = hasta { $pressure } (fuente: { $source })
trade-own-hose-above = hasta { $pressure } (fuente: { $source }), por encima de todos los valores publicados, el mayor de los cuales es { $highest }
trade-own-hose-twice = La referencia { $part } en dash { $dash } está dos veces en la lista.
    .mend = Borre una de las dos filas.
