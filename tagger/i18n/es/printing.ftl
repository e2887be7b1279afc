# Tags and printing: what stands on a tag, templates, preflight, printers.

## Lines of a tag. Ranges and signs are short; a tag has one decimal sign (label_templates/README.md)

printing-value = { $value }
printing-duty = { $fluid }, máx. { $temperature }
printing-unverified = { SAY($parts, case: "short") }: sin verificar
printing-at_most = { SAY($parts, case: "short") }: ≤ { $pressure }
printing-at_most-all = ≤ { $pressure }
printing-dangers = PELIGRO, fuera de los límites publicados: { LIST($dangers) }
printing-not-known-least = no se conoce: consulte al fabricante
printing-dangers-least = PELIGRO: { $dangers }
printing-danger-fluid = fluido
printing-danger-heat = calor
printing-danger-cold = frío
printing-danger-pressure = presión
printing-danger-vacuum = vacío
printing-write = { SAY($parts, case: "short") }: __________ bar
printing-write-unverified = { SAY($parts, case: "short") }: __________ bar; { SAY($doubtful, case: "short") }: sin verificar
printing-write-hose = Manguera, { $what }: __________ bar (fabricante de la manguera)
printing-write-end_a = Extremo A, { $what }: __________ bar (fabricante del racor)
printing-write-end_b = Extremo B, { $what }: __________ bar (fabricante del racor)
printing-caption = { $caption }:
printing-size = -{ $dash } ({ $inches })
printing-serial = { $place } de { $of }
printing-clocking-short = orientación { $angle } en sentido antihorario, vista desde el extremo A
printing-clocking-shortest = { $angle } antihorario, vista desde el extremo A
printing-covers = { LIST($covers) }
printing-tolerance = −{ $minus } / +{ $plus }; { $source }
printing-bend-radius = ≥ { $radius }; { $source }
printing-limited-by = { $part } ({ $source })
printing-warning = ! { $warning }
printing-source = { $ends }: { $source }
printing-source-basis = { $ends }: { $basis }; { $source }
printing-source-unverified = { $source } (sin verificar)
printing-lots = { LIST($lots) }
printing-lot-end_a = A: { $lot }
printing-lot-hose = manguera: { $lot }
printing-lot-end_b = B: { $lot }
printing-tighten = Apriete { $end }: { $torque }; o { $count }
printing-tighten-torque = Apriete { $end }: { $torque }
printing-tighten-count = Apriete { $end }: { $count }
printing-tighten-unknown = Apriete { $end }: { $unknown }
printing-end-title = { $size } { SAY($connection, case: "short") }
printing-end-described = { $description } (otra conexión)
printing-end-form = { $form }, { $shape }
printing-end-jump = salto de tamaño: espiga para manguera -{ $dash }
printing-flats = { $many ->
    [one] { $count } cara
   *[other] { $count } caras
 }
printing-turns = { $many ->
    [one] { $count } vuelta
   *[other] { $count } vueltas
 }
printing-basis-finger_tight = desde el apriete con los dedos
printing-basis-wrench_resistance = desde la resistencia con la llave
printing-basis-not_stated = desde un punto no indicado
printing-basis-torque = por par de apriete
printing-per-screw = en cada tornillo { $screw }
printing-per-any-screw = en cada tornillo; el tornillo lo indica el fabricante
printing-per-any-screw-short = por tornillo; tornillo según el fabricante
printing-stud = extremo macho con arandela o junta tórica; excesivo para una tuerca
printing-stud-short = excesivo para una tuerca
printing-torque-stud = { $torque } (excesivo para una tuerca)
printing-tightening-not-known = apriete desconocido: use el valor del fabricante del racor
printing-clocking-counted = en sentido antihorario, visto desde el extremo A
printing-clocking-seen = desde A
printing-between-sealing_face = entre caras de sellado
printing-between-thread_end = entre extremos de rosca
printing-between-elbow_centreline = entre ejes de los codos
printing-made = { $shop }, { $day }
printing-caution = Una presión, una rosca o un apriete equivocados pueden causar lesiones graves. Descargue toda la presión antes de aflojar. Siga las instrucciones del fabricante del racor y la normativa local.
printing-caution-short = Descargue la presión antes de aflojar. Siga las instrucciones del fabricante del racor.
printing-caution-least = Descargue la presión antes de aflojar.

## Captions of the fields, before a colon

printing-field-number = Etiqueta
printing-field-serial = Pieza
printing-field-built_on = Fabricado el
printing-field-made = Montado por
printing-field-hose = Manguera
printing-field-dash = Tamaño
printing-field-end_a = Extremo A
printing-field-end_b = Extremo B
printing-field-length = Longitud
printing-field-length_basis = Medida
printing-field-clocking = Ángulo de orientación
printing-field-working_pressure = Presión de trabajo máx.
printing-field-dangers = Peligro
printing-field-duty = Fluido, temperatura
printing-field-vacuum = Vacío máx.
printing-field-fluid = Fluido
printing-field-temperature = Temperatura máx.
printing-field-covers = Protecciones
printing-field-tolerance = Tolerancia de longitud
printing-field-bend_radius = Radio de curvatura mín.
printing-field-test_pressure = Presión de prueba
printing-field-limited_by = Limitada por
printing-field-warnings = Avisos
printing-field-tightening_sources = Fuentes de los valores de apriete
printing-field-lots = Lotes
printing-field-shop = Fabricado por
printing-field-order = Pedido
printing-field-note = Nota
printing-field-stop_why = Motivo
printing-field-stop_on = Fecha
printing-field-stop_by = Registrado por

## Work steps on the job card, each before a box to sign

printing-done-cut = Manguera cortada, longitud comprobada
printing-done-crimped = Prensado, diámetro medido
printing-done-proof-tested = Probado, presión y tiempo
printing-done-taken = Trabajo asumido por, fecha
printing-done-handed-out = Latiguillo entregado a, fecha

## Titles of the templates that come with the program

printing-title-hang_tag = Etiqueta colgante, 100 x 60 mm, con agujero
printing-title-hang_tag_two = Etiqueta colgante en dos idiomas, 120 x 90 mm, con agujero
printing-title-wrap_label = Etiqueta envolvente autolaminada, impresión 102 x 186 mm, cola transparente 64 mm
printing-title-flag_label = Etiqueta bandera, 150 x 50 mm, plegada alrededor de la manguera
printing-title-sleeve_tag = Etiqueta para funda, 190 x 34 mm, legible por ambos lados
printing-title-thin_wrap = Banda con un código QR pequeño repetido alrededor de una manguera delgada
printing-title-end_tag_a = Etiqueta del extremo A, 70 x 56 mm, con valores de apriete
printing-title-end_tag_b = Etiqueta del extremo B, 70 x 56 mm, con valores de apriete
printing-title-roll_2x1 = Etiqueta en rollo, 2 x 1 in
printing-title-roll_4x2 = Etiqueta en rollo, 4 x 2 in
printing-title-roll_4x6 = Etiqueta en rollo, 4 x 6 in, con fuentes
printing-title-roll_continuous = Rollo continuo, 58 mm de ancho, corte cada 132 mm
printing-title-sheet_a4 = Ocho etiquetas colgantes en una hoja A4
printing-title-sheet_letter = Ocho etiquetas colgantes en una hoja Carta
printing-title-traveller_a5 = Hoja de ruta, A5
printing-title-traveller_half_letter = Hoja de ruta, media Carta
printing-title-traveller_stub = Hoja de ruta A5 con talón recortable, en A4
printing-title-metal_plate = Placa para grabar, 4 x 2 in, SVG o DXF
printing-title-shrink_sleeve = Funda termorretráctil, 240 x 76 mm, impresa en plano, para mangueras de 30 a 49 mm
printing-title-do_not_use = Etiqueta «No utilizar» para un latiguillo retirado o rechazado, 100 x 60 mm
## The tag on a hose that must not be used

printing-stop-words = NO UTILIZAR
printing-stop-act = No monte este latiguillo. No quite esta etiqueta. Devuelva ambos al taller.
printing-stop-example = Aquí se imprimen el motivo, la fecha y el nombre.

## Template files: every problem names the file, the box and the key before the sentence

printing-template-unknown = La plantilla { $name } no existe.
    .mend = Use una de estas: { LIST($names, style: "or") }, o indique la ruta de un archivo .toml.
printing-plate-not-engraved = Los formatos SVG y DXF son para placas, y esta etiqueta es para una impresora.
    .mend = Elija la etiqueta para placa metálica, o use PDF o PNG.
printing-template-not-here = La plantilla { $name } no existe.
    .mend = Use una de estas: { LIST($names, style: "or") }.
printing-template-folder = { $folder } no es una carpeta.
    .mend = Indique una carpeta que contenga archivos .toml.
printing-template-unreadable = No se puede leer el archivo de plantilla { $file }.
    .mend = Compruebe la ruta de la plantilla.
printing-template-not-toml = El archivo no es TOML válido ({ $told }).
    .mend = Corrija esa línea.
printing-template-name = Una plantilla se llama como su archivo: { $name }.
    .mend = Quite esta línea o cambie el nombre del archivo.
printing-template-own-base = Una plantilla no puede ser su propia base.
    .mend = Use otra plantilla base o defina aquí todas las claves.
printing-template-circle = La base remite a esta misma plantilla: { $way }.
    .mend = Use otra plantilla base o defina aquí todas las claves.
printing-template-kind = { $kind } no es un tipo de recuadro.
    .mend = Ponga en kind uno de estos valores: { LIST($kinds, style: "or") }.
printing-template-kind-missing = El recuadro no tiene tipo.
    .mend = Ponga en kind uno de estos valores: { LIST($kinds, style: "or") }.
printing-template-field = { $field } no es un dato de la etiqueta.
    .mend = Use uno de estos: { LIST($fields, style: "or") }.
printing-template-language = { $language } no es un idioma disponible.
    .mend = Use uno de estos: { LIST($languages, style: "or") }.
printing-template-languages = Una etiqueta necesita uno o dos idiomas disponibles.
    .mend = Indique uno o dos de estos: { LIST($languages, style: "or") }.
printing-template-boxes = Cada cuadro empieza por { "[[" }box]], entre dobles corchetes.
    .mend = Escriba { "[[" }box]] antes de sus claves.
printing-template-list = Aquí hacen falta varios valores, entre corchetes.
    .mend = Introdúzcalos como lista, por ejemplo ["number"].
printing-template-pair = Aquí hacen falta dos valores, entre corchetes.
    .mend = Introdúzcalos así: [100, 60].
printing-template-text-min = El texto más pequeño es mayor que el más grande, que es de { $text } mm.
    .mend = Introduzca un { "text_min" } menor o un { "text" } mayor.
printing-template-off-label = El recuadro sobresale de la etiqueta, que mide { $width } x { $height } mm.
    .mend = Muévalo o redúzcalo.
printing-template-flag = La parte de una etiqueta bandera que rodea la manguera tiene un ala a cada lado.
    .mend = Indique dónde empieza y dónde termina, entre 0 y { $width } mm, primero el valor menor.
printing-template-sleeve-sizes = Contraída, una funda termorretráctil es menor que los { $supplied } mm con que se suministra.
    .mend = Introduzca el diámetro interior tras la contracción total, según los datos de la funda.
printing-template-sleeve-flat = Una funda de { $supplied } mm mide { $flat } mm de ancho en plano, y la etiqueta es más ancha.
    .mend = Reduzca este lado de la etiqueta a { $flat } mm o menos.
printing-template-sleeve-alone = Una plantilla para funda termorretráctil no puede tener esta clave.
    .mend = Quítela, o quite { "sleeve" }.
printing-template-sleeve-picture = Este recuadro lleva un dibujo. Comprimido por la funda, mostraría ángulos y formas falsos.
    .mend = Use recuadros de texto: campos como end_a, length y clocking, y el tipo tightening.
printing-template-sleeve-bars = La funda comprimiría las barras.
    .mend = Gire el recuadro 90 grados, para que el código de barras siga el largo de la manguera.
printing-template-overlap = El recuadro se solapa con el recuadro { $box } ({ $kind }).
    .mend = Mueva uno de los dos.
printing-template-off-page = Las etiquetas llegan a { $last } mm en una página de { $page } mm.
    .mend = Ponga menos, o reduzca pitch o first.
printing-template-pitch = El paso de { $pitch } mm es menor que los { $size } mm de la etiqueta: las etiquetas se solaparían.
    .mend = Indique al menos { $size } mm.

## What does not fit on a label

printing-box-letters = El texto contiene caracteres que la fuente de la etiqueta no puede imprimir: { $letters }
    .mend = Use letras latinas, griegas o cirílicas.
printing-box-text = El texto no cabe en { $width } x { $height } mm con el tamaño de texto mínimo de { $text } mm.
    .mend = Hágalo de { $need_width } x { $need_height } mm como mínimo, o reduzca { "text_min" } (mínimo { $least } mm).
printing-box-qr = El recuadro de { $side } mm es demasiado pequeño para el código QR: a { $dpi } dpi los módulos medirían menos de { $dots } puntos o de { $module } mm.
    .mend = Ponga al menos { $need } x { $need } mm o acorte la dirección web.
printing-box-bars = El recuadro de { $width } mm es demasiado estrecho para las barras de Code 128 a { $dpi } dpi.
    .mend = Ponga al menos { $need } mm de ancho.
printing-start = { $start } no es un lugar de la hoja.
    .mend = Indique un lugar del 1 al { $places }.
printing-start-one = { $start } no es un lugar de la hoja: esta plantilla imprime una etiqueta por página.
    .mend = No indique ningún lugar.
printing-no-tags = No hay etiquetas para imprimir.
    .mend = Indique al menos una.
printing-grade-none = No se puede leer ningún código QR de la imagen: grado F.
    .mend = Imprímalo más grande o más limpio, o tome la foto de frente y enfocada.

## Preflight: will it scan?

printing-dangers-untold = Este latiguillo tiene un peligro por el fluido, el calor, el frío, la presión o el vacío, y ningún recuadro de la plantilla lo dice.
    .mend = Añada un recuadro con kind = "caution".
printing-flight-no-code = La etiqueta no tiene código QR, así que no se puede escanear.
    .mend = Añada un recuadro con kind = "qr".
printing-flight-dots = Un módulo mide { $dots } puntos de impresora de ancho. Por debajo de { $least } puntos, la tinta o el calor que se extiende cierra los huecos.
    .mend = Dé al código QR un recuadro mayor o imprima con más resolución (dpi).
printing-flight-module = Un módulo mide { $module } mm de ancho. DIN SPEC 91406 exige al menos { $least } mm.
    .mend = Dé al código QR un recuadro mayor.
printing-flight-grid = { $kind ->
    [code128] El código de barras no está alineado con puntos enteros de la impresora.
   *[qr] El código QR no está alineado con puntos enteros de la impresora.
 }
    .mend = Error del programa: comuníquelo.
printing-flight-level = La corrección de errores es de nivel { $level }. DIN SPEC 91406 prefiere Q, y H tolera más suciedad.
    .mend = Dé al código QR un recuadro mayor.
printing-flight-quiet-zone = La zona de silencio de { $modules } módulos alrededor del código QR no está libre.
    .mend = Despeje esta zona o aleje el código QR del borde de la etiqueta.
printing-proof-quiet = { $kind ->
    [code128] La zona de silencio del código de barras no está libre, o la etiqueta termina antes.
   *[qr] La zona de silencio de un código QR no está libre, o la etiqueta termina antes.
 }
    .mend = Despeje esta zona o aleje el código del borde de la etiqueta.
printing-proof-drawn = { $kind ->
    [code128] El código de barras no se imprime tal como se creó.
   *[qr] Un código QR no se imprime tal como se creó.
 }
    .mend = Aleje del código las demás áreas de la plantilla. Si ninguna lo tapa, es un error del programa: comuníquelo.
printing-proof-text = { $kind ->
    [code128] El código de barras no dice lo que dice la etiqueta.
   *[qr] Un código QR no dice lo que dice la etiqueta.
 }
    .mend = Error del programa: comuníquelo.
printing-flight-link = La dirección web del código QR tiene { $length } caracteres. Los enlaces de identificación tienen como máximo { $most }.
    .mend = Use una dirección web más corta.
printing-flight-reach = El código QR se lee hasta a unos { $cm } cm (diez veces su lado; práctica común, sin fuente).
printing-flight-reach-short = El código QR se lee hasta a unos { $cm } cm (diez veces su lado; práctica común, sin fuente).
    .mend = Use un código QR mayor o acerque mucho el teléfono.
printing-flight-text = El texto más pequeño mide { $size } mm de alto. Por debajo de { $least } mm cuesta leerlo.
    .mend = Agrande su recuadro.
printing-flight-readers = De { $count } decodificadores de prueba, estos no leen el código QR a partir de los puntos impresos: { LIST($failed) }.
    .mend = Dé al código QR un recuadro mayor.
printing-flight-codes = Códigos QR legibles en la etiqueta: { $read } de { $count }.
    .mend = Separe más los códigos QR o agrándelos.
printing-flight-grade = Los puntos impresos tienen el grado { $grade } según los parámetros de ISO/IEC 15415.
    .mend = Use módulos mayores.
printing-flight-contrast = El contraste depende del material: imprima en negro sobre blanco o amarillo. Un material oscuro o transparente necesita fondo blanco.
printing-flight-wrap-unknown = Sobre una manguera, esta etiqueta se curva con ella, pero no se conoce el diámetro exterior de la manguera.
    .mend = Mídalo e indíquelo ({ "--hose-od" }), o use una etiqueta colgante.
printing-flight-wrap = Alrededor de una manguera de { $od } mm, el código QR de { $side } mm muestra sus módulos exteriores al { $share } % de su ancho. Hasta { $widest } mm se lee.
printing-flight-wrap-near = Alrededor de una manguera de { $od } mm, el código QR de { $side } mm muestra sus módulos exteriores al { $share } % de su ancho. Hasta { $widest } mm se lee.
    .mend = Está cerca del límite: una etiqueta bandera o colgante es más fiable.
printing-flight-wrap-thin = Alrededor de una manguera de { $od } mm, el código QR de { $side } mm muestra sus módulos exteriores al { $share } % de su ancho. Hasta { $widest } mm se lee.
    .mend = Use una etiqueta bandera o colgante. Esta etiqueta es para mangueras desde { $thinnest } mm.
printing-flight-facing = Alrededor de una manguera de { $od } mm, un código QR se lee desde cualquier lado.
printing-flight-facing-end = Alrededor de una manguera de { $od } mm, un código QR se lee desde el { $share } % de los lados. Ninguno se lee en los { $gap } del extremo de la etiqueta.
    .mend = Ponga al lado otra etiqueta con su extremo en el lado opuesto, o la bandera de una etiqueta bandera a un cuarto de vuelta de este extremo. O use una etiqueta colgante.
printing-flight-facing-away = Alrededor de una manguera de { $od } mm, un código QR se lee solo desde el { $share } % de los lados. El mayor ángulo ciego es de { $gap }.
    .mend = { $label ->
            [thin_wrap] Use una etiqueta bandera o una colgante.
           *[other] Use una plantilla para este diámetro (thin_wrap repite un código QR pequeño), una etiqueta bandera o una colgante.
        }
printing-flight-hidden = Alrededor de una manguera de { $od } mm, el extremo de la etiqueta cubre texto que no figura en otro sitio: caja { LIST($boxes) }.
    .mend = Use esta plantilla en mangueras desde { $thinnest } mm, o una etiqueta bandera o colgante.
printing-flight-flag = La bandera queda libre hasta un diámetro exterior de manguera de { $thickest } mm.
printing-flight-flag-thick = Alrededor de una manguera de { $od } mm, la parte central de esta etiqueta bandera no alcanza: un código QR de la bandera queda sobre la manguera.
    .mend = Úsela en mangueras de hasta { $thickest } mm, o use una etiqueta colgante.
printing-flight-lying = Pegado a lo largo de una manguera de { $od } mm, el código QR se lee de frente.
printing-flight-sleeve-thin = En una funda sobre una manguera de { $od } mm, el código QR de { $side } mm se curva demasiado para leerse. Hasta { $widest } mm se lee.
    .mend = Use una etiqueta colgante o una etiqueta bandera. Esta plantilla es para mangueras desde { $thinnest } mm.
printing-flight-stuck-thin = Pegado sobre una manguera de { $od } mm, el código QR de { $side } mm no se lee. Hasta { $widest } mm se lee.
    .mend = Cuélguela con una brida o péguela sobre una superficie plana. En mangueras desde { $thinnest } mm se lee.
printing-flight-shrink-unknown = La funda se contrae con lo impreso, de { $supplied } mm hasta { $recovered } mm como mínimo, y no se conoce el diámetro exterior de la manguera.
    .mend = Mídalo e indíquelo ({ "--hose-od" }), o use una etiqueta colgante.
printing-flight-shrink-fit = La funda es para mangueras de entre { $recovered } y { $supplied } mm. { $fit ->
    [loose] En una manguera de { $od } mm queda suelta.
   *[tight] No pasa por una manguera de { $od } mm.
 }
    .mend = Use una funda de otro tamaño con su propia plantilla, o una etiqueta colgante.
printing-flight-shrink = En una manguera de { $od } mm, lo impreso se reduce al { $share } % alrededor de la manguera. Funda: { $supplied } mm suministrada, { $recovered } mm tras la contracción total; fuente: { $source }.
    .mend = Compare los dos diámetros con los datos de su funda. Pásela antes de prensar el terminal.
printing-flight-shrink-module = En una manguera de { $od } mm, lo impreso se reduce al { $share } % y un módulo a { $module } mm. La DIN SPEC 91406 exige al menos { $least } mm.
    .mend = Use una funda de menor diámetro suministrado, o una etiqueta colgante.
printing-flight-shrink-near = En una manguera de { $od } mm, un código QR está cerca del ancho máximo legible.
    .mend = Use un código QR más pequeño en una plantilla propia, o una etiqueta colgante.
printing-flight-shrink-unread = Contraído y curvado alrededor de una manguera de { $od } mm, un código QR mide { $side } mm de ancho, y por geometría se lee hasta { $widest } mm. { $unread ->
    [0] Los decodificadores de prueba lo leen.
   *[other] Decodificadores de prueba que no lo leen ahí: { LIST($failed) }.
 }
    .mend = Use un código QR más pequeño en una plantilla propia, o una etiqueta colgante.
printing-sleeve-assumed = supuesto por esta plantilla, no es un dato de una funda

## Network printers

printing-printer-address = { $address } no es la dirección de una impresora.
    .mend = Indique por ejemplo ipp://192.0.2.7/ipp/print o ipps://labels.example.com/ipp/print.
printing-printer-dpi = La impresora { $address } no imprime a { $dpi } dpi.
    .mend = Use { LIST($dots, style: "or") } dpi.
printing-printer-formats = La impresora no admite PDF ni PWG Raster, solo { LIST($formats) }.
    .mend = Use el PDF e imprímalo desde un ordenador que tenga instalada esta impresora.
printing-printer-no-formats = La impresora no indica ningún formato de archivo admitido.
    .mend = Use el PDF e imprímalo desde un ordenador que tenga instalada esta impresora.
printing-printer-not-ipp = La impresora no devolvió una respuesta IPP válida.
    .mend = Compruebe la ruta de su dirección, a menudo /ipp/print.
printing-printer-untrusted = El certificado de la impresora no es de confianza ({ $told }).
    .mend = Añada el certificado a SSL_CERT_FILE o use ipp:// en la red del taller.
printing-printer-silent = La impresora no respondió en { $seconds } s.
    .mend = { $sent ->
        [perhaps] Compruebe si las etiquetas se imprimieron antes de volver a enviarlas.
       *[no] Compruebe que la impresora esté encendida y conectada a la red y que la dirección sea correcta, o use el PDF.
     }
printing-printer-too-long = La respuesta de la impresora supera { $octets } bytes.
    .mend = { $sent ->
        [perhaps] Compruebe si las etiquetas se imprimieron antes de volver a enviarlas.
       *[no] Compruebe que la impresora esté encendida y conectada a la red y que la dirección sea correcta, o use el PDF.
     }
printing-printer-http = La impresora respondió HTTP { $status }.
    .mend = { $sent ->
        [perhaps] Compruebe si las etiquetas se imprimieron antes de volver a enviarlas.
       *[no] Compruebe que la impresora esté encendida y conectada a la red y que la dirección sea correcta, o use el PDF.
     }
printing-printer-lost = Se perdió la conexión con la impresora ({ $told }).
    .mend = Compruebe si las etiquetas se imprimieron antes de volver a enviarlas.
printing-printer-unreachable = No se puede acceder a la impresora ({ $told }).
    .mend = Compruebe que la impresora esté encendida y conectada a la red y que la dirección sea correcta, o use el PDF.
printing-printer-elsewhere = La dirección de la impresora lleva a { $address }, que no es una dirección de la red local.
    .mend = Dé a la impresora una dirección de la red del taller.
printing-refused-forbidden = La impresora rechazó la solicitud: este programa no tiene permiso para imprimir.
    .mend = Compruebe la impresora y su dirección, o use el PDF.
printing-refused-sign-in = La impresora exige un inicio de sesión que este programa no admite.
    .mend = Compruebe la impresora y su dirección, o use el PDF.
printing-refused-not-found = No se encontró la impresora ni el trabajo en esta dirección.
    .mend = Compruebe la impresora y su dirección, o use el PDF.
printing-refused-too-large = La impresora indica que el archivo es demasiado grande.
    .mend = Compruebe la impresora y su dirección, o use el PDF.
printing-refused-format = La impresora no admite este formato de archivo.
    .mend = Compruebe la impresora y su dirección, o use el PDF.
printing-refused-job = La impresora no admite este tipo de trabajo.
    .mend = Compruebe la impresora y su dirección, o use el PDF.
printing-refused-not-accepting = La impresora no acepta trabajos.
    .mend = Compruebe la impresora y su dirección, o use el PDF.
printing-refused-busy = La impresora está ocupada.
    .mend = Compruebe la impresora y su dirección, o use el PDF.
printing-refused-status = La impresora rechazó la solicitud (estado IPP { $status }).
    .mend = Compruebe la impresora y su dirección, o use el PDF.
printing-refused-told = { $why } La impresora indica: «{ $told }».
    .mend = Compruebe la impresora y su dirección, o use el PDF.
printing-job-cancelled = La impresora aceptó el trabajo { $job } y luego lo canceló. Puede que algunas etiquetas se hayan impreso.
    .mend = Compruebe la impresora y vuelva a imprimir o use el PDF.
printing-job-cancelled-because = La impresora aceptó el trabajo { $job } y luego lo canceló ({ LIST($remarks) }). Puede que algunas etiquetas se hayan impreso.
    .mend = Compruebe la impresora y vuelva a imprimir o use el PDF.

## What a printer reports of itself or of a job (ipp/reasons.csv): status phrases, shown in a list after a colon

printing-reason-media-needed = esperando etiquetas o papel
printing-reason-media-empty = sin etiquetas o papel
printing-reason-media-low = quedan pocas etiquetas o poco papel
printing-reason-media-jam = atasco de etiquetas o papel
printing-reason-pausing = poniéndose en pausa
printing-reason-paused = en pausa
printing-reason-off = apagada o apagándose
printing-reason-connecting = la cola de impresión se está conectando a la impresora
printing-reason-timed-out = la cola de impresión no accede a la impresora
printing-reason-stopping = deteniéndose
printing-reason-stopped-partly = parcialmente detenida
printing-reason-toner-low = queda poco tóner
printing-reason-toner-empty = sin tóner
printing-reason-memory-full = memoria de la impresora llena
printing-reason-cover-open = tapa abierta
printing-reason-interlock-open = enclavamiento de seguridad abierto
printing-reason-door-open = puerta abierta
printing-reason-input-tray-missing = falta la bandeja de entrada
printing-reason-output-tray-missing = falta la bandeja de salida
printing-reason-output-almost-full = bandeja de salida casi llena
printing-reason-output-full = bandeja de salida llena
printing-reason-ribbon-low = queda poca cinta o tinta
printing-reason-ribbon-empty = sin cinta o tinta
printing-reason-waste-almost-full = depósito de residuos casi lleno
printing-reason-waste-full = depósito de residuos lleno
printing-reason-too-hot = demasiado caliente
printing-reason-too-cold = todavía fría
printing-reason-drum-worn-soon = tambor casi gastado
printing-reason-drum-worn = tambor gastado
printing-reason-developer-low = queda poco revelador
printing-reason-developer-empty = sin revelador
printing-reason-resource = falta un recurso de la impresora para este archivo
printing-reason-other = sin motivo indicado
printing-reason-job-incoming = todavía recibiendo el trabajo
printing-reason-job-queued = trabajo en la cola de impresión
printing-reason-job-printing = imprimiendo el trabajo
printing-reason-job-reading = leyendo el trabajo
printing-reason-job-preparing = preparando el trabajo
printing-reason-job-outgoing = transmitiendo el trabajo
printing-reason-job-held = trabajo retenido
printing-reason-job-resources = material o consumible necesario no cargado
printing-reason-printer-stopped = impresora detenida
printing-reason-printer-stopped-partly = impresora parcialmente detenida
printing-reason-job-stopping = deteniendo el trabajo
printing-reason-job-aborted = trabajo detenido por la impresora
printing-reason-compression = no se pudo descomprimir el archivo
printing-reason-unreadable = no se pudo leer el archivo
printing-reason-format = formato de archivo no admitido
printing-reason-cancelled-user = trabajo cancelado por un usuario
printing-reason-cancelled-operator = trabajo cancelado por el operador de la impresora
printing-reason-cancelled-device = trabajo cancelado en la impresora
printing-reason-completed = trabajo impreso
printing-reason-completed-warnings = trabajo impreso con un aviso de la impresora
printing-reason-completed-errors = trabajo terminado con errores
printing-reason-queued-device = trabajo en la cola interna de la impresora
printing-reason-queue-off = cola de impresión desactivada
printing-reason-incomplete = trabajo recibido incompleto

## Across the picture of a tag that is not registered yet, in large letters

printing-specimen = MUESTRA

## Signature

printing-flight-unsigned = Esta etiqueta no tiene sitio para la firma: sus códigos QR llevan la especificación sin ella.
    .mend = Use una plantilla con más sitio si la etiqueta debe ir firmada.
printing-flight-signed = El código QR grande va firmado.
