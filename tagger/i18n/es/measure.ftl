# Measuring a thread by a photo beside the scale card: the card, the page, the readings.

## What to do, on the card's sheet and on the page

measure-title = Medir una rosca por foto
measure-step-print = Imprima la tarjeta al 100 % (tamaño real) en papel mate y recórtela. No la plastifique: los reflejos tapan los códigos.
measure-step-check = Mida la línea de control con una regla de acero o un calibre (pie de rey) e introduzca el valor en la página.
measure-step-lay = Quite la presión antes de abrir una unión. Limpie la rosca. Ponga el extremo sobre una superficie plana, lisa y de otra claridad: papel blanco para acero sin pintar.
measure-step-beside = Ponga la tarjeta plana. Ponga la rosca a lo largo del borde inferior de la tarjeta, de 10 a 15 mm más abajo. No tape ningún código.
measure-step-photo = Sujete el teléfono bien horizontal, a unos 300 mm por encima. La tarjeta y el extremo llenan la foto. Sin flash ni zoom.
measure-limits = Lo que una foto no dice
measure-limit-flank = Si los flancos son de 55° o de 60°: las roscas de ambos siguen siendo posibles.
measure-limit-inside = Las roscas interiores: tuercas, giratorias, orificios.
measure-limit-worn = Cuánto está gastada la rosca: gastada o dañada mide menos; sucia o pintada, más.
measure-limit-seat = El asiento, y si la rosca es cónica.
measure-limit-pressure = Una presión de trabajo.
measure-defer = Nunca elija un latiguillo solo por una foto: los datos del fabricante del racor van primero.

## The card

measure-card-title = Tarjeta de escala
measure-card-check = Línea de control: { $length }
measure-card-lay = La rosca aquí, de 10 a 15 mm bajo este borde
measure-card-cut = Cortar aquí

## The page

measure-photo-title = Foto del extremo junto a la tarjeta de escala
measure-print-a4 = Imprimir la tarjeta (A4)
measure-print-letter = Imprimir la tarjeta (Letter)
measure-field-photo = Foto
measure-field-check = Línea de control, medida
measure-check-hint = Ejemplo: 98,5 mm. Está dibujada de { $length }. Sin este valor la lectura es menos segura.
measure-read-photo = Leer la foto
measure-reading = Leyendo la foto …
measure-another = Tomar otra foto
measure-by-hand = Introducir valores medidos

## The lines

measure-lines-title = Ponga las líneas sobre la rosca
measure-lines-how = Lleve las líneas 1 y 2 a las crestas de ambos lados de la rosca, y las líneas 3 y 4 a dos crestas. Cuente los pasos de la línea 3 a la línea 4.
measure-lines-marks = Hay una marca rosa en cada paso: todas deben caer sobre una cresta; si no, la cuenta está mal.
measure-lines-keys = Las flechas mueven una línea 0,1 mm; Re Pág y Av Pág, 1 mm.
measure-lines-picture = El extremo bajo la tarjeta, visto desde arriba. La cuadrícula es de 10 mm.
measure-magnifier = Lupa
measure-field-edge_1 = Línea 1: un lado de la rosca
measure-field-edge_2 = Línea 2: el otro lado
measure-field-crest_1 = Línea 3: primera cresta
measure-field-crest_2 = Línea 4: última cresta
measure-field-threads = Pasos de la línea 3 a la línea 4
measure-field-tilt = Girar todas las líneas (grados)
measure-field-rest = Ancho de la parte que toca la mesa, si no es la rosca
measure-rest-hint = Ejemplo: 32 mm entre caras del hexágono. Vacío: la propia rosca toca la mesa.
measure-field-distance = Distancia del teléfono a la mesa, si la sabe
measure-distance-hint = Ejemplo: 300 mm. Calculada con la foto: { $distance }.
measure-find = Buscar bordes y crestas
measure-finding = Buscando bordes y crestas …
measure-found = Encontrado por el programa. Compruebe cada línea con la lupa antes de usar los valores.
measure-field-confirmed = He comprobado todas las líneas en la imagen
measure-read-off = Leer valores
measure-save-nothing = La foto no se guarda.

## The readings

measure-result-title = Lecturas
measure-diameter = Diámetro exterior de la rosca: { $value }, ± { $band }
measure-pitch = Paso: { $value }, ± { $band } mm
measure-tpi = Son { $tpi } hilos por pulgada.
measure-corrected = Corregido por la altura: el eje de la rosca está a { $height } sobre la mesa, el teléfono estaba a { $distance }.
measure-distance-unsure = Sin la distancia focal en la foto, la distancia es incierta. Introduzca la distancia, o tome la foto desde más lejos.
measure-not-checked = No se midió la línea de control: la impresión puede ser mayor o menor que el dibujo.
measure-confirm-first = Compruebe primero las líneas en la imagen, y confírmelo más abajo.
measure-identify = Identificar con estos valores
measure-not-usable = Estas líneas no distinguen las roscas: el diámetro es incierto en { $band }.
    .mend = Introduzca la distancia del teléfono a la mesa, tome la foto en vertical, o use un calibre (pie de rey).

## What is wrong, and what to do

measure-field-lines = Líneas
measure-field-edges = Líneas 1 y 2
measure-field-crests = Líneas 3 y 4
measure-not-a-number = { $value } no es un número.
    .mend = Introduzca un número, por ejemplo 12,5.
measure-lines-missing = Falta colocar una línea.
    .mend = Coloque las cuatro líneas y lea los valores.
measure-threads-missing = Los pasos entre las líneas 3 y 4 no están contados.
    .mend = Cuéntelos en la imagen e introduzca el número.
measure-no-file = No se eligió ninguna foto.
    .mend = Elija una foto.
measure-check-line = La línea de control no puede medir { $value }: solo se corrige de { $least } a { $most }.
    .mend = Imprima la tarjeta al 100 % (tamaño real), sin ajustarla a la página, y mida de nuevo.
measure-no-card = No hay tarjeta de escala en la foto, o no se puede leer.
    .mend = Ponga la tarjeta impresa junto al extremo, con los cuatro códigos en la foto, con luz uniforme y sin reflejos. Elija la foto tal como la tomó el teléfono, no una copia reducida.
measure-other-code = El código de la foto no es de la tarjeta de escala.
    .mend = Ponga la tarjeta de escala impresa junto al extremo.
measure-few-symbols = Solo se leen { $found } de los 4 códigos de la tarjeta; hacen falta { $least }.
    .mend = Destape los códigos, evite reflejos y sombras, e imprima de nuevo una tarjeta dañada.
measure-two-cards = Hay más de una tarjeta de escala en la foto.
    .mend = Tome la foto con una sola tarjeta.
measure-mirrored = La foto está reflejada como en un espejo.
    .mend = Desactive el efecto espejo, o use la cámara trasera del teléfono.
measure-not-flat = La tarjeta no está plana, o la foto está borrosa.
    .mend = Aplane la tarjeta, sujete el teléfono sin moverlo y repita la foto.
measure-too-far = La foto es demasiado basta: { $found } píxeles por milímetro; hacen falta al menos { $least }.
    .mend = Tome la foto desde más cerca, de modo que la tarjeta y el extremo la llenen, y elíjala tal como la tomó el teléfono.
measure-slanted = La foto está tomada con una inclinación de { $degrees }°; se corrigen { $most }° como máximo.
    .mend = Sujete el teléfono horizontal, en la vertical de la tarjeta y del extremo.
measure-edges-wrong = Las líneas 1 y 2 están a menos de 3 mm o a más de 90 mm.
    .mend = Póngalas a ambos lados de la rosca.
measure-crests-wrong = Las líneas 3 y 4 con este número de pasos no dan el paso de una rosca.
    .mend = Ponga ambas líneas sobre crestas y cuente los pasos entre ellas.
measure-rest-wrong = La parte que toca la mesa no puede tener este ancho.
    .mend = Mida la parte sobre la que descansa el extremo: de 3 a 120 mm, y como mínimo la rosca.
measure-distance-wrong = Esta distancia no concuerda con la foto, tomada desde unos { $expected }.
    .mend = Mida del teléfono a la mesa, o deje el campo vacío.
measure-not-found = No se ven bordes cerca de las líneas 1 y 2.
    .mend = Acerque las líneas a los bordes de la rosca, o coloque todas las líneas a mano.
measure-no-crests = No se ven crestas regulares entre las líneas 3 y 4.
    .mend = Ponga las líneas 3 y 4 en los dos extremos de la rosca, o coloque todas las líneas a mano.
