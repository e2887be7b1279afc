# Plantillas de medida: las tablas a escala real, en papel.

gauges-name-threads = Plantilla de medida: diámetros de rosca
gauges-name-pitches = Plantilla de medida: pasos de rosca
gauges-name-seats = Plantilla de medida: ángulos de asiento
gauges-name-flanges = Plantilla de medida: cabezas de brida
gauges-name-hexes = Plantilla de medida: hexágonos
gauges-name-hoses = Plantilla de medida: diámetros exteriores de manguera

## What was asked for and is not there

gauges-paper = Las plantillas se hacen en { LIST($known) }.
    .mend = Elija uno de estos formatos.
gauges-not-a-sheet = No hay ninguna plantilla de medida con ese nombre.
    .mend = Elija una de { LIST($known) }.
gauges-not-a-family = Ninguna plantilla muestra esta familia: no tiene rosca que medir o no está en las tablas.
    .mend = Elija una de { LIST($known) }.

## At the head: what it is, and how to hold it to the part

gauges-title-threads = Diámetros de rosca: { $family }
gauges-title-pitches = Pasos de rosca
gauges-title-seats = Ángulos de asiento
gauges-title-flanges = Cabezas de brida: { $code }
gauges-title-hexes = Hexágonos, entre caras
gauges-title-hoses = Diámetros exteriores de manguera
gauges-use-males = Roscas macho. Ponga la rosca sobre una barra, borde izquierdo con borde izquierdo, y mire en vertical con un solo ojo. El borde derecho de la rosca debe caer en la franja oscura: ahí termina una rosca sana, de su medida menor a la mayor (fórmulas de ISO 965-1, grado 6). Una rosca gastada puede medir menos. Mejor: recorte la barra y pase la muesca sobre la rosca. Si dos barras son casi iguales, pruebe las dos marcas por turno. Si no termina en ninguna franja, mida con un calibre.
gauges-use-males-taper = Machos cónicos (1 en 16). Ponga la rosca sobre una barra con el extremo pequeño arriba y mire en vertical con un solo ojo: los dos bordes de la rosca siguen los de la barra. En la línea transversal la rosca tiene su diámetro nominal: en el BSPT, en el plano de calibre; en el NPT y el NPTF, al final de la rosca útil. Una rosca cónica puede caer en cualquier punto de su barra: si dos barras son casi iguales, pruebe las dos marcas por turno y mire el paso.
gauges-use-females = Roscas hembra. Imprima en cartulina, recorte la cuña y métala recta en el agujero hasta que tope con las crestas de la rosca. El borde del agujero debe quedar en una banda oscura: así mide un agujero sano, de la medida menor a la mayor (fórmulas de ISO 965-1, grado 6; en un agujero cónico, 0,3 mm a cada lado del nominal). Un agujero gastado puede ser más ancho. La talla está en la banda; su marca, encima o al lado.
gauges-use-pitches = Ponga un peine a lo largo de la rosca, a contraluz, con un diente en el primer hueco, y sígalo por todos los hilos que haya: un peine equivocado casa en tres hilos y al décimo se desvía medio hilo. Cada décimo hueco está numerado. El papel no distingue flancos de 55° y de 60°: 14 por pulgada es tanto BSP como americana. La duda sigue hasta probar el ángulo con una galga de roscas.
gauges-use-seats = Recorte una muesca y póngala sobre un cono que sobresale; recorte una punta y póngala dentro de un cono interior. Mire a contraluz: no debe verse luz por ningún lado. 37° y 45° son ángulos medios; 24° y 60°, ángulos totales. Lo que el papel no puede decir: una nariz tan pequeña como la talla -4, un embudo demasiado hondo para verlo, 30° (medio) y 60° (total), que son el mismo cono, y un asiento mecanizado de 42° frente a uno de 45°. La duda sigue.
gauges-use-flanges = Apoye la cabeza de brida sobre un disco: debe cubrirlo justo, por todo el contorno. Después ponga la hoja sobre la toma: los centros de los cuatro agujeros deben quedar bajo las cuatro cruces. Los códigos 61 y 62 tienen cabezas que difieren en uno o dos milímetros: los distingue la distancia entre tornillos. Una cabeza sin disco no está en las tablas.
gauges-use-hexes = Ponga una tuerca o un cuerpo sobre una barra, con una cara en el borde izquierdo: la cara opuesta debe caer en la franja oscura, de 0,3 mm. Mejor: recorte la barra y pase la muesca sobre el hexágono. Los fabricantes usan otros hexágonos además de estos: un hexágono nunca decide solo, y el que no está aquí no excluye nada.
gauges-use-hoses = Recorte una tira, pegue sus trozos y enróllela tensa en una parte limpia de la manguera: la línea del principio señala el diámetro exterior de la manguera en mm. Las bandas oscuras muestran lo que nuestras fuentes imprimen para cada dash; la zona clara junto a una banda es tan ancha como difieren las fuentes, al menos 1 mm. Una manguera fuera de toda zona clara no es ninguna de estas tallas de esa norma, según estas fuentes. Una manguera sobre una banda puede ser otra: muchas normas distan menos de 1 mm entre sí. La tira solo excluye. Nunca da una presión.

## Beside a gauge

gauges-male = Exterior { $low } a { $high }
gauges-pitch-inch = { $tpi } hilos por pulgada, { $pitch } mm
gauges-pitch-metric = { $pitch } mm
gauges-seat-angles = { $half } medio, { $whole } total
gauges-flange = Cabeza { $head }; tornillos { $long } por { $short }
gauges-flange-no-head = Cabeza no incluida en las tablas; tornillos { $long } por { $short }
gauges-strip = { $standard }, trozo { $piece }

## At the foot of every page

gauges-check-mm = 100 mm
gauges-check-in = 4 in
gauges-check = Imprima al 100 % (tamaño real). Mida una de estas líneas e introduzca lo que mide junto con la marca: de 97 a 103 mm, o de 3,88 a 4,12 in, se corrige. Si no, imprima de nuevo.
gauges-card = ¿Sin regla? Una tarjeta bancaria (ISO/IEC 7810 ID-1, 85,60 x 53,98 mm) debe cubrir justo este marco, a lo largo y a lo ancho. Si lo cubre, introduzca 100 mm. Si solo en un sentido, no use la hoja.
gauges-scan = Escanee para identificar la conexión: elija la marca hallada aquí, por ejemplo D26.99, e introduzca lo que mide la línea de control.
gauges-cautions = ATENCIÓN: Descargue toda la presión antes de medir o aflojar nada. Limpie la rosca; no mida una dañada. Nunca elija una conexión por una sola medida: diámetro, paso y asiento deben coincidir todos. Que las roscas enrosquen no significa que los asientos sellen. La hoja no dice nada de la presión. Lo que indica el fabricante del racor o de la manguera va antes que esta hoja.

## The page that lists the sheets

gauges-page-title = Plantillas de medida
gauges-page-about = Las tablas a escala real en papel, para quien no tiene a mano calibre ni galga de roscas. Compare la pieza con la hoja e introduzca la marca que coincide.
gauges-page-family = Familia
gauges-page-paper = Papel
gauges-page-kind = Plantilla
gauges-page-others = Otras plantillas
gauges-page-open = Abrir PDF
gauges-paper-a4 = A4
gauges-paper-letter = Carta (US Letter)

## The page for an outside diameter of a hose

gauges-scan-hoses = Escanee para ver qué normas excluye un diámetro exterior: introduzca lo que dice la tira y lo que mide la línea de control.
gauges-hose-title = Manguera por su diámetro exterior
gauges-hose-only = Un diámetro exterior solo excluye. Muchas normas distan menos de 1 mm entre sí, y no da ninguna presión: lea el marcado o pregunte al fabricante de la manguera.
gauges-hose-left = De las mangueras cuyo diámetro exterior imprimen nuestras fuentes, { $od } deja estas; las demás quedan excluidas:
gauges-hose-none = Ninguna de las mangueras cuyo diámetro exterior imprimen nuestras fuentes mide { $od }.
gauges-hose-go = Ver lo que queda
gauges-hose-unknown = No excluidas, porque ninguna fuente de aquí imprime su diámetro exterior: { LIST($names) }.
