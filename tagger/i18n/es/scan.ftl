# The public pages: a tag, finding it, ordering again, identifying a hose without a tag.

## Around every page

scan-skip = Ir al contenido
scan-choose = Idioma y unidades
scan-units-metric = bar y mm primero
scan-units-inch = psi y pulgadas primero
scan-call = Llamar
scan-call_shop = Llamar a { $shop }
scan-share-tag = Compartir o guardar
scan-more = Más
scan-find_another = Buscar otra etiqueta
scan-no_tag = Sin etiqueta: identificar el latiguillo
scan-disclaimer = Los valores vienen de las fuentes indicadas. No sustituyen a los datos del fabricante del racor, al manual de la máquina, a la normativa local ni a un montador cualificado.
scan-tag = Etiqueta
scan-tag-title = Etiqueta { $number }
scan-line = { $label }: { $text }
scan-source = Fuente: { $source }
scan-source-basis = Fuente: { $source } ({ $basis })
scan-source-label = Fuente
scan-app-name = Lector de etiquetas de latiguillos
scan-app-short_name = Etiquetas

## Finding a tag

scan-find-title = Buscar una etiqueta
scan-typed-hint = XXXXX-XXXXXX, impreso bajo el código QR; o un número de pedido, R-XXXXXXX
scan-typed-show = Mostrar la etiqueta
scan-camera-title = Escanear con la cámara
scan-camera-start = Encender la cámara
scan-camera-picture = Imagen de la cámara
scan-camera-not_a_tag = Este no es el código de una etiqueta de latiguillo.
scan-camera-missing = Cámara no disponible. Permita el acceso a la cámara o use una foto.
scan-photo-title = Usar una foto de la etiqueta
scan-photo-label = Foto del código QR o del código de barras
scan-photo-read = Leer la etiqueta
scan-photo-reading = Leyendo la foto ...
scan-photo-none_offline = No se ha encontrado ninguna etiqueta en la foto y no hay cobertura. Hágala más de cerca y de frente, o escriba el número.
scan-seen-title = Etiquetas vistas en este dispositivo
scan-sent-title = Pedidos enviados desde este dispositivo
scan-seen-forget = Borrar todo de este dispositivo
scan-meant = Quizá quería decir
scan-meant-number = { $number } ({ LIST($slips) })
scan-meant-slip = posición { $place }: { $right }, no { $wrong }

## Refusals

scan-refused-title = No se puede leer esta etiqueta
scan-refused-line = { $field }: { $why } { $mend }
scan-not_there-title = Página no encontrada
scan-not_there = No hay ninguna página en esta dirección.
    .mend = Escanee otra vez el código QR de la etiqueta, o escriba su número.
scan-unknown_tag = { $number } no está en los registros de este taller.
    .mend = Escanee el código QR de la etiqueta: contiene la especificación completa.
scan-photo-too_large = La foto es demasiado grande.
    .mend = Use una foto más pequeña.
scan-order-nothing = El pedido no indica ningún latiguillo.
    .mend = Escanee la etiqueta, o escriba su número.
scan-order-quantity = { $given } no es un número entero.
    .mend = Introduzca un número entero, por ejemplo 2.
scan-order-day = { $given } no es una fecha.
    .mend = Introduzca año, mes y día, por ejemplo 2027-03-31.
scan-order-unknown = No hay ningún pedido { $number }.
    .mend = Compruebe el número de pedido.
scan-picked-wrong = { $given } no es una opción válida.
    .mend = Mida otra vez el extremo.
scan-picked-missing = Falta un extremo.
    .mend = Mida primero los dos extremos.
scan-form-missing = Falta la forma.
    .mend = Elija macho o hembra.

## Captions of fields

scan-field-spec = Latiguillo
scan-field-number = Número de etiqueta
scan-field-digits = Código de la etiqueta
scan-field-link = Enlace
scan-field-database = Servidor
scan-field-address = Dirección
scan-field-image = Foto
scan-field-quantity = Cantidad
scan-field-needed_by = Se necesita para el
scan-field-order = Número de pedido
scan-field-reference = Su referencia
scan-field-contact_phone = Teléfono
scan-field-contact_email = Correo electrónico
scan-field-contact_name = Nombre
scan-field-contact_company = Empresa
scan-field-changes = Cambios que desea
scan-field-fitted_on = Fecha de instalación
scan-field-machine = Máquina
scan-field-machine_hours = Horas de máquina
scan-field-fitted_by = Montado por
scan-field-pin = PIN
scan-field-photo_fitted = Foto
scan-field-photo_hose = Foto del latiguillo averiado
scan-field-photo_routing = Foto del recorrido
scan-field-form = Forma
scan-field-thread_od = Diámetro de la rosca
scan-field-thread_id = Diámetro de la rosca
scan-field-tpi = Hilos por pulgada
scan-field-pitch = O paso en mm
scan-field-side = Lugar de la rosca
scan-field-swivels = Si gira la parte roscada
scan-field-shape = Forma de la rosca
scan-field-seals = Lo que sella
scan-field-od = Diámetro exterior
scan-field-bore = Diámetro interior
scan-field-kind = Tipo de refuerzo
scan-field-layers = Número de capas
scan-field-lay_line = Marcado
scan-field-seat = Asiento
scan-field-cone = Cono
scan-field-tube_od = Diámetro exterior del tubo
scan-field-flank = Ángulo de los flancos de la rosca
scan-field-cannot = No se puede medir
scan-field-nose = Diámetro de la punta o del alojamiento
scan-field-series = Serie
scan-field-origin = Origen de la máquina
scan-field-hex = Hexágono, entre caras
scan-field-flange_od = Diámetro de la cabeza de brida
scan-field-bolt_spacing = Distancia entre centros de tornillos, lado largo
scan-field-measurements = Medidas
scan-field-end = Extremos
scan-field-hose_standard = Norma de la manguera
scan-field-hose_dash = Tamaño dash de la manguera
scan-field-length_mm = Longitud total
scan-field-clocking_deg = Ángulo de orientación
scan-field-end_a = Extremo A
scan-field-end_b = Extremo B
scan-field-covers = Fundas y protecciones

## A tag: what stands first

scan-withdrawn-title = Retirado: no usar
scan-withdrawn-act = No use este latiguillo. Si está montado, pare la máquina, descargue la presión y desmóntelo. Después, póngase en contacto con el taller.
scan-withdrawn-order = Esta es la etiqueta de un latiguillo retirado. El pedido es de un latiguillo nuevo hecho según su especificación; los lotes del retirado no se copian.
scan-withdrawn-since = Retirado el { $day }
scan-withdrawn-no_guide = Este latiguillo está retirado. No lo monte.
scan-notice-tag_only-title = Solo datos de la etiqueta
scan-notice-tag_only = Este taller no tiene registro de este número. Los datos mostrados vienen solo de la etiqueta. Pregunte al taller que fabricó el latiguillo si ha sido retirado.
scan-notice-damaged-title = Código de la etiqueta dañado
scan-notice-damaged = Los datos de este código no se pueden leer. En su lugar se muestra el registro del taller: compárelo con el texto impreso en la etiqueta.
scan-notice-differ-title = La etiqueta y el registro difieren
scan-notice-differ = Se muestra el registro del taller. No monte el latiguillo hasta que el taller confirme cuál es el correcto.
scan-differ-record = Registro:
scan-differ-tag = Etiqueta:
scan-differ-nothing = nada
scan-notice-overrated-title = Presión inferior a la registrada
scan-claims-title = La etiqueta indica más presión de la que admiten las tablas
scan-claims-more = La etiqueta indica { $was }. Las tablas admiten { $now }: no use más y pregunte al taller.
scan-claims-none = La etiqueta indica { $was }. Las tablas no admiten ninguna presión para este latiguillo tal como se describe: no lo monte antes de que el taller confirme una presión.
scan-notice-replaced-title = Latiguillo sustituido
scan-notice-replaced = Un latiguillo más nuevo lo ha sustituido.
scan-void-title = ANULADO: no montar
scan-void-act = El registro de esta etiqueta se introdujo por error. No monte este latiguillo. Pregunte al taller.
scan-void-no-guide = El registro está anulado: no hay guía de montaje.
scan-held-title = Retenido por el taller: no montar
scan-held-act = El taller no ha liberado este latiguillo. No lo monte. Si está montado, pare la máquina, descargue la presión y desmóntelo. Después, póngase en contacto con el taller.
scan-held-no-guide = El taller no ha liberado este latiguillo: no hay guía de montaje.
scan-notice-replacement-title = Hay un sustituto fabricado
scan-notice-replacement = Hay un latiguillo nuevo fabricado para sustituir a este. Su montaje no está registrado.
scan-notice-to-be-fitted = Este latiguillo está fabricado para sustituir a otro. Su montaje no está registrado.
scan-notice-old-title = Vida útil o almacenamiento superados
scan-notice-life = Fabricado el { $day }, hace más de { $years } { $years ->
    [one] año
   *[other] años
 }. Vida útil máxima: { $years } { $years ->
    [one] año
   *[other] años
 }, incluido el almacenamiento ({ $source }). Haga que lo sustituyan, o que lo revise una persona competente, antes de volver a usarlo.
scan-notice-shelf = Fabricado el { $day }, hace más de { $years } { $years ->
    [one] año
   *[other] años
 }. Tiempo máximo de almacenamiento de un latiguillo: { $years } { $years ->
    [one] año
   *[other] años
 } ({ $source }). Si no ha estado en uso desde entonces, haga que lo revisen antes de montarlo.

## A tag: figures and parts by themselves

scan-one_line = { $hose }, { $length }
scan-short_end = { $title }, { $shape }
scan-temperature = { $temperature }
scan-length-figure = { $length }
scan-cover_list = { LIST($covers) }
scan-day = { $day }

## A tag: the hose

scan-pressure = Presión de trabajo máx.
scan-pressure-not_known = No se conoce la presión de trabajo de este latiguillo. No lo monte hasta que los datos del fabricante de la manguera y del fabricante del racor la hayan confirmado.
scan-pressure-given = Valor fijado por el taller. Fuente: { $source }
scan-pressure-as_tagged = Según lo puso el taller en la etiqueta
scan-pressure-least = La menor presión admisible de la manguera y los dos extremos; la limita { SAY($part) }. Fuente: { $source }
scan-origin = De dónde procede
scan-origin-graded = Calidad de la fuente: { $grade }. { $source }
scan-hose = Manguera
scan-the_hose = El latiguillo
scan-end_a = Extremo A
scan-end_b = Extremo B
scan-length = Longitud
scan-length-tolerance = Tolerancia: { $minus } menos, { $plus } más
scan-clocking = Ángulo de orientación
scan-clocking-tolerance = Tolerancia: ±{ $angle }
scan-clocking-shop = En sentido horario desde el codo A: { $angle }. Sujete el extremo A más cerca de usted con el codo A hacia arriba (convención de este taller).
scan-clocking-convention = Convención: MIL-DTL-83796-5 figura 3 (que cita SAE J517); lado de observación: práctica común.
scan-max_temperature = Temperatura máxima
scan-min_temperature = Temperatura mínima de la manguera
scan-vacuum = Vacío máximo
scan-fluid = Fluido
scan-covers = Fundas y protecciones
scan-bend_radius = Radio mínimo de curvatura
scan-built_on = Fabricado el
scan-note = Nota
scan-state = Estado
scan-tightening = Apriete
scan-tighten-a = Apriete del extremo A
scan-tighten-b = Apriete del extremo B
scan-sources = Fuentes
scan-thread = Rosca { $thread }, diámetro exterior del macho { $diameter }
scan-thread-flange = Diámetro de la cabeza de brida { $diameter }
scan-thread-plain = Diámetro exterior de la espiga o del tubo { $diameter }
scan-thread-not_known = Rosca que no está en las tablas: use los datos del fabricante del racor.
scan-scale = El diámetro de conexión está a escala, el resto es esquemático. Fuente: { $source }
scan-scale-none = El dibujo no está a escala.
scan-link = Enlace

## A tag: installing it

scan-fit = Montarlo
scan-fit-first = Siga primero el manual de la máquina; después, los datos del fabricante del racor y la normativa local. No empiece si no tiene formación para trabajar en sistemas hidráulicos.
scan-fit-doubt-title = No monte todavía este latiguillo
scan-fit-doubt-differ = La etiqueta indica algo distinto del registro del taller. Pregunte al taller cuál es el correcto.
scan-fit-doubt-damaged = El código de la etiqueta no se puede leer, por lo que no se puede comparar con el registro del taller. Compare la manguera, los dos extremos y la longitud con esta página. Si algo difiere, pregunte al taller.
scan-fit-doubt-claims = La etiqueta indica más presión de la que admiten las tablas, y sus demás valores también pueden ser erróneos. Pregunte primero al taller.
scan-fit-anyway = Mostrar la guía de todos modos
scan-tightening-anyway = Mostrar los valores de apriete de todos modos
scan-fit-start = Empezar
scan-fit-step = Paso { $n } de { $total }
scan-fit-back = Atrás
scan-fit-next = Siguiente
scan-fit-done = Listo
scan-fit-resume = Continuar donde lo dejó
scan-fit-read = Leer este paso en voz alta
scan-tabs = ¿Qué quiere hacer?
scan-tab-hose = Latiguillo
scan-tab-order = Pedir
scan-tab-fit = Montar

## Ordering

scan-order-again = Pedir otra vez
scan-order-by_phone = Pedir por teléfono o correo
scan-order-lines = Datos del pedido para cualquier taller de latiguillos:
scan-order-please = Por favor, fabriquen otro latiguillo como este:
scan-order-subject = Nuevo pedido: etiqueta { $number }
scan-order-copy = Copiar
scan-order-share = Compartir
scan-order-reference-hint = Su número de pedido o de trabajo, o la máquina
scan-order-contact = Sus datos de contacto
scan-order-contact-hint = Introduzca un número de teléfono o una dirección de correo electrónico.
scan-order-changes = Pedir con cambios
scan-order-changes-hint = Deje vacío lo que no cambia.
scan-order-new_length = Longitud nueva (etiqueta: { $length })
scan-order-new_end_a = Extremo A nuevo (etiqueta: { $end })
scan-order-new_end_b = Extremo B nuevo (etiqueta: { $end })
scan-order-other = Otros cambios
scan-order-send = Enviar el pedido
scan-order-photos = Fotos (opcional)
scan-order-photos-hint = Solo las ve el taller. Se reducen antes de enviarlas.
scan-order-remember = Recordar mis datos de contacto en este dispositivo
scan-order-sending = Enviando su solicitud ...
scan-order-not_kept = No enviada: no hay conexión y este teléfono no puede guardar la solicitud. Inténtelo de nuevo o llame al taller.
scan-order-already = Ya ha pedido este latiguillo desde este teléfono. Número de pedido:
scan-order-once_more = Pedir una vez más
scan-order-corrected = Todavía no se ha enviado nada. Lo que ha introducido sigue en el formulario de abajo.
scan-order-checked = El taller revisa cada pedido y se pone en contacto con usted antes de fabricar.
scan-order-waiting = Sin cobertura. Su pedido está guardado en este teléfono y se enviará automáticamente. No lo envíe otra vez.
scan-order-not_sent = El pedido no se ha enviado
scan-order-not_found = No se encuentra el pedido
scan-outbox-sent = Su pedido se ha enviado. Número de pedido:
scan-outbox-waiting = Su pedido está guardado en este teléfono. Se enviará cuando haya cobertura y esta página esté abierta.
scan-outbox-refused = Esta solicitud no se ha aceptado. Corríjala y envíela de nuevo.
scan-outbox-correct = Corregir
scan-outbox-delete = Eliminar
scan-ordered-title = Pedido { $reference }
scan-ordered-received = Hemos recibido su solicitud de pedido
scan-ordered-number = Número de pedido
scan-ordered-keep = Anote este número o guarde esta página. Indíquelo cuando llame.
scan-ordered-what = Lo que ha pedido
scan-ordered-answer = { $days ->
    [one] El taller responde en un día laborable.
   *[other] El taller responde en { $days } días laborables.
 }
scan-ordered-said = Mensaje del taller
scan-ordered-back = Volver a la etiqueta
scan-order_state-received = recibido
scan-order_state-asked = pregunta del taller
scan-order_state-accepted = aceptado
scan-order_state-building = en fabricación
scan-order_state-done = terminado
scan-order_state-declined = rechazado

## Identifying a hose without a tag

scan-identify-careful = Pare la máquina y descargue la presión antes de tocar una unión. Nunca busque una fuga con la mano.
scan-identify-next_hose = Seguir con la manguera
scan-identify-same = Extremo B igual que el A
scan-identify-possible_a = Conexiones posibles, extremo A
scan-identify-possible_b = Conexiones posibles, extremo B
scan-identify-measure_next = Lo siguiente que medir
scan-identify-enter_below = Introdúzcalo más abajo
scan-identify-no_match = Sin coincidencias. Mida otra vez o lleve el latiguillo al taller.
scan-identify-likelihood = probabilidad { $percent }
scan-identify-contradicts = No corresponde. Difiere en: { LIST($features) }.
scan-identify-use_a = Usar para el extremo A
scan-identify-use_b = Usar para el extremo B
scan-identify-measure_a = Medir el extremo A
scan-identify-measure_b = Medir el extremo B
scan-identify-diameter-hint = Macho: diámetro exterior. Hembra: diámetro interior. Ejemplo: 1 1/16 in o 26,9 mm
scan-identify-more = Más medidas
scan-identify-go = Identificar
scan-identify-ends = Medir los extremos
scan-identify-cannot = No puedo medirlo
scan-identify-kept = Sin cobertura: determinado en este teléfono, con las mismas tablas que con cobertura.
scan-flank-not_sure = no lo sé
scan-flank-60 = 60°
scan-flank-55 = 55°
scan-series-not_sure = no lo sé
scan-series-S = pesada (S)
scan-series-L = ligera (L)
scan-origin-not_sure = no lo sé
scan-origin-europe = Europa
scan-origin-north_america = América del Norte
scan-origin-asia = Asia
scan-seat-not_sure = no lo sé
scan-seat-37 = abocardado 37°
scan-seat-45 = abocardado 45°
scan-seat-30 = abocardado o cono 30°
scan-seat-60 = cono 60°
scan-seat-24 = cono 24°
scan-seat-face = junta tórica en la cara plana (ORFS)
scan-seat-boss = junta tórica bajo el hexágono
scan-seat-flat = cara plana, para una arandela o una brida
scan-seat-taper = sin asiento: rosca cónica
scan-cone-not_sure = no lo sé
scan-cone-outside = cono exterior (sobresale como una nariz)
scan-cone-inside = cono interior (hundido como un embudo)
scan-feature-thread = diámetro de la rosca
scan-feature-tpi = paso
scan-feature-seat = asiento
scan-feature-cone = cono
scan-feature-side = lugar de la rosca
scan-feature-swivels = si gira la parte roscada
scan-feature-shape = forma de la rosca
scan-feature-seals = lo que sella
scan-feature-flank = ángulo de los flancos
scan-feature-nose = diámetro de la punta o del alojamiento
scan-feature-hex = hexágono
scan-feature-tube_od = diámetro del tubo
scan-feature-flange_od = diámetro de la cabeza de brida
scan-feature-bolt_spacing = distancia entre tornillos
scan-ask-thread = Mida el diámetro de la rosca con un calibre (pie de rey): por fuera en un macho, por dentro en una hembra. Incline el calibre respecto a la rosca.
scan-ask-tpi = Mida el paso con una galga de roscas: hilos por pulgada o milímetros.
scan-ask-seat = Compruebe el asiento: mida su ángulo con una galga de asientos, o vea si es cara plana con junta tórica, junta tórica bajo el hexágono, cara plana o rosca cónica sin asiento.
scan-ask-cone = Compruebe el cono: ¿sobresale como una nariz o está hundido como un embudo?
scan-ask-flank = Compruebe el ángulo de los flancos de la rosca: pruebe una galga de 55° y otra de 60° a contraluz.
scan-ask-nose = Mida el diámetro de la punta que entra en la otra pieza, en su extremo, del alojamiento que la recibe, o del agujero de un banjo.
scan-ask-series = Averigüe la serie, pesada (S) o ligera (L): según el marcado, el plano del orificio o el fabricante del racor.
scan-ask-hex = Mida el hexágono entre caras.
scan-ask-flange_od = Mida el diámetro de la cabeza de brida.
scan-ask-bolt_spacing = Mida entre tornillos, de centro a centro, por el lado largo.
scan-hose-title = La manguera entre los extremos
scan-hose-order = Pedir este latiguillo
scan-hose-checked = Estas son sus medidas. El taller las comprueba con usted antes de fabricar.
scan-hose-correct = Corregir las medidas
scan-hose-lay_line = La línea de marcado impresa a lo largo de la manguera da su norma y su tamaño.
scan-hose-dash-hint = Diámetro interior nominal en 1/16 in: 12 = 3/4 in
scan-hose-shape = Forma
scan-hose-drop = Altura del codo (drop)
scan-hose-jump = Salto de tamaño: racor de un tamaño mayor o menor que la manguera
scan-hose-clocking = Ángulo de orientación (solo con dos codos)
scan-hose-clocking-hint = Extremo A más cerca de usted y codo A hacia abajo: grados en sentido antihorario hasta el codo B
scan-hose-length-hint = Ejemplo: 1250 mm o 49 1/4 in.
scan-hose-read = Leído como { $length }
scan-hose-bare = { $unit ->
    [in] Un número sin unidad son pulgadas.
   *[mm] Un número sin unidad son mm.
 }
scan-hose-measured = Medida
scan-hose-show = Mostrar el latiguillo

## On a phone without a signal

scan-shell-title = Etiqueta de latiguillo
scan-shell-no_script = Sin cobertura. Active JavaScript para leer la etiqueta sin conexión.

## Signature of the tag

scan-sealed = Firma
scan-sealed-note = Lo que indica esta etiqueta se firmó con la clave { $key } del taller.
scan-unsealed-note = Este código no lleva firma: es el código pequeño de una etiqueta o una etiqueta más antigua. Solo el taller puede confirmar que los valores son suyos.
scan-sealed-act = No monte el latiguillo hasta que el taller haya confirmado sus valores.
scan-unchecked-note = Abra con cobertura una página de etiqueta del taller, lo que actualiza las claves de este teléfono, o pregunte al taller.
scan-pressure-anyway = Mostrar de todos modos la presión de la etiqueta

## What was found on a gauge sheet

scan-identify-from_sheet = Hallado en una plantilla de medida
scan-identify-from_sheet-hint = Solo para marcas halladas en una plantilla impresa.
scan-identify-scale-hint = Ejemplo: 99 mm, o 3,96 in para la línea de 4 in. Si una tarjeta bancaria cubre justo su marco en ambos sentidos: 100.
scan-field-found = Marcas halladas en la hoja
scan-field-scale = Medida de la línea de control
