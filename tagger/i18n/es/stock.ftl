# Fittings, crimp cards and hoses of the shop; the cut length


## Fittings of the shop

stock-not-of-a-row = Este dato corresponde a un latiguillo, no a la lista de racores.
    .mend = Elimínelo aquí.
stock-cut-off-incomplete = El descuento del racor necesita la longitud y dónde termina.
    .mend = Indique ambos. Termina en: { LIST($kinds, style: "or") }.
stock-source-missing = Falta la fuente de estas medidas.
    .mend = Indique el documento del fabricante.
stock-rating-incomplete = La presión nominal necesita el valor y la fuente.
    .mend = Indique ambos.
stock-cut-off-inside = Un descuento medido hasta la boca del casquillo es mayor que la profundidad de inserción, { $insertion }.
    .mend = Compruebe las dos medidas y dónde termina el descuento.
stock-reach-too-small = La referencia { $number } mide { $reach } desde el asiento hasta la boca del casquillo; un extremo prensado de esta manguera ocupa al menos { $least } ({ $source }).
    .mend = Compruebe su descuento y su profundidad de inserción en la lista de racores, y su unidad: se leen en mm.
stock-cut-off-too-small = La referencia { $number } tiene { $cut_off } desde el asiento hasta el tope de la manguera; ningún extremo tiene menos de { $least } ({ $source }).
    .mend = Compruebe su descuento en la lista de racores, y su unidad: se lee en mm.
stock-not-kept = La referencia { $number } no está en la lista de racores.
    .mend = Compruebe la referencia o añada el racor a la lista.
stock-not-kept-nearest = La referencia { $number } no está en la lista de racores.
    .mend = Use una de las más parecidas: { LIST($nearest, style: "or") }. O añada el racor a la lista.
stock-another-end = La referencia { $number } es otro racor: { $kept }. La especificación indica: { $given }.
    .mend = Compruebe el racor que tiene en la mano y corrija la referencia o el extremo.
stock-twice = La referencia { $number } aparece dos veces.
    .mend = Elimine una de las filas.

## Cut length

stock-cut-arithmetic = { $overall } mm − { $a } − { $b } = { $cut } mm
stock-cut-term-butt = { $cutoff } mm ({ $end })
stock-cut-term-mouth = ({ $cutoff } mm − { $insertion } mm de inserción) ({ $end })
stock-cut-no-fitting = No se conoce el descuento { SAY($end, case: "of") }: indique la referencia del racor.
stock-cut-no-cut-off = No se conoce el descuento { SAY($end, case: "of") }: { $number } no lo tiene en la lista de racores. Indique allí el valor del fabricante.
stock-cut-no-insertion = El descuento { SAY($end, case: "of") } termina en la boca del casquillo y no se conoce la profundidad de inserción de { $number }. Indique el valor del fabricante en la lista de racores.
stock-cut-thread-end = La longitud total llega hasta el final de la rosca { SAY($end, case: "of") }, pero el descuento de { $number } parte del asiento. Indique la longitud hasta la cara de sellado.
stock-cut-length = Longitud de corte: { $length }
stock-cut-unknown = Longitud de corte: no se conoce. { $why }
stock-insertion-mark = Marca de inserción { SAY($end, case: "of") }: { $depth } desde el extremo de la manguera
stock-cut-title = Longitud de corte
stock-cut-hint = Indique las referencias de los dos racores.
## Crimp card

stock-card-length = Una longitud de la ficha de prensado va de 0 a { $most } mm.
    .mend = Compruebe el valor y la unidad.
stock-card-not-approved = { SAY($end, case: "start") }: la manguera { $hose } y la serie de racor { $series } no tienen ficha de prensado propia. No están homologadas juntas. Use componentes con ficha o añada la del fabricante para esta pareja.
stock-card-no-fitting = { SAY($end, case: "start") }: indique la referencia del racor para ver su ficha de prensado.
stock-card-no-series = { SAY($end, case: "start") }: { $number } no tiene serie en la lista, así que no se conoce su ficha de prensado. Indique allí la serie.
stock-card-no-part = { SAY($end, case: "start") }: indique la referencia de la manguera para ver su ficha de prensado.
stock-insertion-differs = { SAY($end, case: "start") }: la profundidad de inserción de { $number } es { $fitting } en la lista de racores, pero { $card } en la ficha de prensado. Compruebe ambas con los datos del fabricante antes de cortar.
stock-card-crimp = { SAY($end, case: "start") }: diámetro de prensado { $diameter } mm +{ $plus } −{ $minus } mm ({ $series }; fuente: { $source })
stock-card-die = Mordaza: { $die }
stock-card-skive-outside = Pelado exterior: { $length } mm
stock-card-skive-inside = Pelado interior: { $length } mm
stock-card-insertion = Profundidad de inserción: { $length } mm
stock-card-setting = Ajuste de la prensa: { $setting }
stock-card-title = Ficha de prensado
stock-rating-below = El racor { $number } admite { $rating } (fuente: { $source }), menos que la presión de trabajo de este latiguillo, { $pressure }.
    .mend = Indique la presión admisible del racor en ese extremo, para que se aplique el valor más bajo.
## Traveller: the sheet that goes with the parts through the workshop

stock-traveller-title = Hoja de ruta
stock-traveller-count = Cantidad: { $count }
stock-traveller-order = Pedido
stock-traveller-due = Fecha de entrega
stock-traveller-hose = Manguera
stock-traveller-part = Referencia de la manguera, lote de bobina
stock-traveller-end = Extremo { $end }
stock-traveller-overall = Longitud total
stock-traveller-arithmetic = Cálculo
stock-traveller-marks = Marcas de inserción
stock-traveller-clocking = Ángulo de orientación
stock-traveller-proof = Prueba de presión
stock-traveller-proof-value = { $pressure }, mantener al menos { $hold } s, con líquido
stock-traveller-proof-unknown = no se conoce: use el valor del fabricante de la manguera
stock-traveller-clean = Limpie el interior después de cortar y después de prensar. Tape los dos extremos hasta el montaje.
stock-traveller-tag = Etiqueta
stock-traveller-cut = Cortada
stock-traveller-crimped = Prensado { $end } (mm)
stock-traveller-proved = Prueba superada
stock-traveller-cleaned = Limpia, tapada
stock-card-standard-unknown = { $name } no es una norma de manguera conocida.
    .mend = Indique una que esté en las tablas, por ejemplo SAE 100R2.
stock-card-not-a-dash = { $value } no es un tamaño dash.
    .mend = Indique el tamaño dash, por ejemplo 12 (3/4 in).
stock-card-no-dash = Falta el tamaño dash.
    .mend = Indique el tamaño dash, por ejemplo 12 (3/4 in).
