# El taller: las páginas con sesión iniciada.

## Every page

bench-skip = Ir al contenido
bench-navigation = Taller
bench-demo = Esto es una demostración con datos inventados. No la use para trabajos reales. Inicie sesión con el nombre { $name } y la contraseña { $password }.
bench-nav-build = Fabricar
bench-nav-prints = Impresiones
bench-nav-find = Buscar
bench-nav-orders = Pedidos
bench-nav-withdrawn = Retiradas
bench-nav-lists = Importar y exportar
bench-nav-figures = Estadísticas
bench-nav-shop = Ajustes
bench-nav-waiting = pendientes
bench-tag = Etiqueta
bench-go-hint = Etiqueta, pedido, lote ...
bench-top-title = «{ $text }»
bench-top-order = Pedido { $order }
bench-top-customer = Cliente { $name }
bench-top-machine = Máquina { $name } (cliente: { $customer })
bench-top-lot = Lote { $lot }: { $count } { $count ->
    [one] latiguillo
   *[other] latiguillos
 }
bench-top-mistyped = Este número de etiqueta está mal tecleado.
bench-top-nothing = Ninguna etiqueta, pedido, cliente, máquina, referencia ni lote se llama así.
bench-sign-out = Cerrar sesión
bench-sign-out-name = Cerrar la sesión de { $name }
bench-language = Idioma
bench-note-saved = Guardado.
bench-note-recorded = Anotado en el historial.
bench-note-withdrawn = Retirada registrada. Las páginas de las etiquetas muestran ahora un aviso.
bench-note-lifted = Retirada anulada y anotada.
bench-note-sent = Pedidos enviados.
bench-key-ctrl = Ctrl
bench-key-enter = Intro
bench-key-escape = Esc

## Words used on several pages

bench-hose = Manguera
bench-end_a = Extremo A
bench-end_b = Extremo B
bench-length = Longitud
bench-clocking = Ángulo de orientación
bench-pressure = Presión
bench-working-pressure = Presión de trabajo
bench-built-on = Fabricado el
bench-place = Cliente, máquina, posición
bench-for = Para
bench-position = Posición
bench-by = Por
bench-when = Cuándo (UTC)
bench-note = Nota
bench-reason = Motivo
bench-status = Estado
bench-quantity = Cantidad
bench-qty = Cant.
bench-name = Nombre
bench-role = Función
bench-since = Desde
bench-source = Fuente
bench-printer = Impresora
bench-label = Rollo de etiquetas
bench-tags = Etiquetas
bench-row = Fila
bench-details = Detalles
bench-print = Imprimir
bench-printed = Impresa
bench-not-printed = aún sin imprimir
bench-not-recorded = sin registrar
bench-not-specified = sin especificar
bench-not-reported = no comunicado
bench-withdrawn = retirado del servicio
bench-replaced = sustituido
bench-void = anulado
bench-replacement-built = sustituto fabricado
bench-danger = Peligro
bench-caution = Atención
bench-record = Anotar
bench-add = Añadir
bench-save = Guardar
bench-delete = Eliminar
bench-fitting-lot = lote de racores { $lot }
bench-reel-lot = lote de bobina { $lot }
bench-assemblies = { $count } { $count ->
    [one] latiguillo
   *[other] latiguillos
 }
bench-first-shown = Se muestran las primeras { $shown } de { $all }.
bench-first-shown-all-printed = Se muestran las primeras { $shown } de { $all }; se imprimen todas.

## Roles, orders, events, print jobs, withdrawals: one name for each value

bench-role-device = dispositivo: lee e imprime
bench-role-builder = operario de taller
bench-role-counter = mostrador
bench-role-manager = encargado
bench-order-received = recibido
bench-order-asked = pregunta al cliente
bench-order-accepted = aceptado
bench-order-building = en fabricación
bench-order-done = terminado
bench-order-declined = rechazado
bench-event-registered = registro
bench-event-crimped = prensado medido
bench-event-flushed = limpieza interior
bench-event-proof_tested = prueba de presión
bench-event-proof_allowed = presión de prueba permitida
bench-event-printed = etiqueta impresa
bench-event-fitted = montaje
bench-event-inspected = inspección
bench-event-scanned = escaneo
bench-event-ordered = pedido
bench-event-replaced = sustitución
bench-event-corrected = corregido
bench-event-voided = anulado
bench-event-replacement_built = sustituto fabricado
bench-event-removed = desmontaje de la máquina
bench-event-withdrawn = retirada del servicio
bench-event-withdrawal_lifted = retirada anulada
bench-medium-mineral-oil = aceite mineral
bench-medium-water = agua
bench-medium-water-with-inhibitor = agua con inhibidor de corrosión
bench-medium-air = aire
bench-medium-nitrogen = nitrógeno
bench-job-waiting = en espera
bench-job-sending = enviando
bench-job-printing = imprimiendo
bench-job-done = impreso
bench-job-failed = fallido
bench-job-unknown = quizá impreso
bench-job-dropped = cancelado
bench-scope-tag = etiqueta
bench-scope-hose_lot = lote de manguera
bench-scope-fitting_lot = lote de racores
bench-withdrawn-what = { $scope ->
    [tag] Etiqueta { $value }
    [hose_lot] Lote de manguera { $value }
   *[fitting_lot] Lote de racores { $value }
 }
bench-confidence-published = publicado
bench-confidence-memory = sin verificar
bench-confidence-shop = propio del taller
bench-reprint-paper-jam = atasco de papel
bench-reprint-damaged = etiqueta dañada
bench-reprint-lost = etiqueta perdida
bench-reprint-second = segunda etiqueta necesaria

## Captions of fields, one for each

bench-field-of-end = { SAY($end, case: "start") }, { $field }
bench-field-hose = Manguera
bench-field-hose-standard = Norma de la manguera (marcado)
bench-field-hose-dash = Tamaño dash
bench-field-hose-edition = Edición (marcado)
bench-field-hose-part = Referencia del fabricante (manguera)
bench-field-hose-lot = Lote de bobina
bench-field-lot_reason = Motivo para usar este lote
bench-field-correct_reason = Motivo de la corrección
bench-field-void_reason = Motivo de la anulación
bench-field-changes_considered = Cambio o diferencia tenidos en cuenta
bench-field-end-connection = Conexión
bench-field-end-size = Tamaño
bench-field-end-series = Serie del espárrago (S pesada, L ligera)
bench-field-end-form = Tipo de extremo
bench-field-end-shape = Forma
bench-field-end-angle = Ángulo del codo (°)
bench-field-end-drop_mm = Altura del codo
bench-field-end-material = Material
bench-field-end-hose_dash = Salto de tamaño: espiga para dash
bench-field-end-lot = Lote de racores
bench-field-length_mm = Longitud total
bench-field-length_basis = Medida
bench-field-length_confirmed = La longitud es correcta aunque supera 100 m
bench-field-clocking_deg = Ángulo de orientación (°)
bench-field-max_temperature_c = Temperatura máxima
bench-field-vacuum_bar = Vacío máximo
bench-field-fluid = Fluido
bench-field-covers = Fundas y protecciones
bench-field-working_pressure = Presión de trabajo
bench-field-working_pressure-value_bar = Presión de trabajo de otra fuente
bench-field-working_pressure-source = Fuente de la presión de trabajo
bench-field-working_pressure-confirmed = Esta presión es correcta aunque supera las tablas
bench-field-hose-rating-value_bar = Presión de trabajo del fabricante de la manguera
bench-field-hose-rating-source = Fuente del valor de la manguera
bench-field-hose-rating-fluid = Fluido que nombra la fuente
bench-field-hose-rating-max_temperature_c = Temperatura máxima que nombra la fuente
bench-field-hose-approval-max_temperature_c = Temperatura máxima de la autorización
bench-field-hose-approval-source = Fuente de la autorización
bench-field-end-rating-value_bar = Presión de trabajo del fabricante del racor
bench-field-end-rating-source = Fuente del valor
bench-field-end-rating-fluid = Fluido que nombra la fuente
bench-field-end-rating-max_temperature_c = Temperatura máxima que nombra la fuente
bench-field-keep = Guardar como valor de su taller para todos los latiguillos siguientes
bench-build-asks = Valores del fabricante
bench-field-bend_radius_mm = Radio mínimo de curvatura
bench-field-note = Nota (pública: la ve cualquiera que escanee la etiqueta)
bench-field-count = Cantidad
bench-field-position = Posición en la máquina
bench-field-replaces = Sustituye a la etiqueta
bench-field-order_reference = Número de pedido
bench-field-built_on = Fabricado el
bench-field-template = Rollo de etiquetas
bench-field-recipe = Nombre de la especificación
bench-field-number = Número de etiqueta
bench-field-tag = Etiqueta
bench-field-lot = Lote de manguera o racores
bench-field-connection = Conexión en cualquiera de los extremos
bench-field-hose_standard = Norma de la manguera
bench-field-hose_dash = Tamaño dash de la manguera
bench-field-dash = Tamaño dash de la manguera
bench-field-pressure_min_bar = Presión mín.
bench-field-pressure_max_bar = Presión máx.
bench-field-built_from = Fabricado desde el
bench-field-built_to = Fabricado hasta el
bench-field-hoses = Latiguillos
bench-field-thread_od = Rosca macho, diámetro exterior
bench-field-thread_id = Rosca hembra, diámetro interior
bench-field-tpi = Hilos por pulgada
bench-field-pitch = O paso en mm
bench-field-hex = Hexágono, entre caras
bench-field-flank = Ángulo de los flancos de la rosca
bench-field-cannot = No se puede medir
bench-field-nose = Diámetro de la punta o del alojamiento
bench-field-series = Serie
bench-field-origin = Origen de la máquina
bench-field-tube_od = Diámetro exterior del tubo
bench-field-flange_od = Diámetro de la cabeza de brida
bench-field-bolt_spacing = Tornillos, lado largo, entre centros
bench-field-form = Tipo de extremo
bench-field-side = Lugar de la rosca
bench-field-swivels = Si gira la parte roscada
bench-field-shape = Forma de la rosca
bench-field-seals = Lo que sella
bench-field-od = Diámetro exterior
bench-field-bore = Diámetro interior
bench-field-layers = Número de capas
bench-field-lay_line = Marcado
bench-field-seat = Asiento
bench-field-cone = Cono
bench-field-crimp_a = Diámetro de prensado, extremo A (mm)
bench-field-crimp_b = Diámetro de prensado, extremo B (mm)
bench-field-rating_bar = Presión de trabajo del fabricante
bench-field-rating_source = Fuente de esta presión de trabajo
bench-field-rating_confirmed = Esta presión de trabajo es correcta aunque supera las tablas
bench-field-lower_source = Prueba a menor presión pedida por (cliente o norma)
bench-field-allowed_by = Permitido por (fabricantes)
bench-field-allowed_on = Fecha del documento
bench-field-document = Documento
bench-field-shell_a = Casquillo, extremo A
bench-field-shell_b = Casquillo, extremo B
bench-field-pressure_bar = Presión
bench-field-hold_s = Tiempo de mantenimiento (s)
bench-field-medium = Fluido de prueba
bench-field-tester = Probado por
bench-field-gauge = Manómetro (número)
bench-field-gauge_valid_until = Calibración válida hasta
bench-field-method = Método (instrucción de trabajo)
bench-field-numbers = Latiguillos seleccionados
bench-field-result = Resultado
bench-field-kind = Suceso
bench-field-name = Nombre
bench-field-password = Contraseña
bench-field-old = Contraseña actual
bench-field-code = Código de la consola
bench-field-phone_code = Código de su teléfono
bench-field-sign_in = Inicio de sesión
bench-field-role = Función
bench-field-uri = Dirección
bench-field-dpi = Resolución (ppp)
bench-field-shell = Casquillo
bench-field-diameter_mm = Diámetro (mm)
bench-field-minus_mm = Menos (mm)
bench-field-plus_mm = Más (mm)
bench-field-source = Fuente
bench-field-state = Estado
bench-field-quantity = Cantidad
bench-field-needed_by = Necesario para el
bench-field-contact = Contacto
bench-field-company = Empresa
bench-field-phone = Teléfono
bench-field-email = Correo electrónico
bench-field-reference = Ref. del cliente
bench-field-reason = Motivo
bench-field-scope = Qué se retira
bench-field-value = Número de etiqueta o de lote
bench-field-file = Archivo
bench-field-list = Lista
bench-field-as = Imprimir en
bench-field-do = Acción

## A caption before what is wrong with its field

bench-caption = { $field }:

## Problems and refusals

bench-not-found = No encontrado
bench-form-of-files = Las listas están disponibles en .csv o .xlsx.
bench-search-refused = No se puede buscar
bench-nothing-ordered = No se ha pedido nada
bench-not-withdrawn = No se ha retirado
bench-no-letters = Sin cartas
bench-no-certificate = Sin certificado
bench-event-refused = No se ha anotado
bench-go-to-bench = Ir al taller
bench-not-a-date = { $value } no es una fecha válida.
    .mend = Indique la fecha como AAAA-MM-DD, por ejemplo 2026-03-02.
bench-not-a-dash = { $value } no es un tamaño dash.
    .mend = Indique el tamaño dash, por ejemplo 12 (3/4 in).
bench-no-hoses = No hay ningún latiguillo seleccionado.
    .mend = Seleccione los latiguillos que quiere pedir.
bench-not-a-quantity = { $value } no es una cantidad válida.
    .mend = Indique de 1 a { $most }.
bench-future = { $day } está en el futuro.
    .mend = Indique la fecha de fabricación o deje el campo vacío.
bench-no-file = No se ha elegido ningún archivo.
    .mend = Elija un archivo .csv o .xlsx.
bench-list-damaged = La lista se dañó durante la transferencia.
    .mend = Vuelva a subir el archivo.
bench-not-an-action = { $value } no es una acción de esta página.
    .mend = Vuelva a cargar la página.
bench-not-a-role = { $value } no es una función.
    .mend = Elija una de estas: { LIST($roles, style: "or") }.
bench-old-password-wrong = La contraseña actual no es correcta.
    .mend = Inténtelo otra vez.
bench-sign-in-wrong = El nombre y la contraseña no coinciden.
    .mend = Inténtelo otra vez.
bench-too-many-tries = Ha habido demasiados intentos fallidos.
    .mend = Inténtelo otra vez dentro de { $seconds } s.
bench-too-many-tries-min = Ha habido demasiados intentos fallidos.
    .mend = Inténtelo otra vez dentro de { $minutes } min.
bench-not-a-resolution = { $value } no es una resolución válida.
    .mend = Indique de 100 a 1200 ppp o deje el campo vacío.
bench-file-one-tag = Un archivo { $form } muestra una sola etiqueta.
    .mend = Use PDF para varias etiquetas.
bench-not-a-printer = { $value } no es una impresora de este taller.
    .mend = Vuelva a cargar la página.
bench-no-result = Falta el resultado de la prueba.
    .mend = Elija Superada o No superada.
bench-no-crimp = No se ha indicado ningún diámetro.
    .mend = Indique al menos un diámetro medido.
bench-not-by-hand = { $value } no se puede anotar a mano. Elija un suceso de la lista.
bench-not-a-scope = { $value } no se puede retirar. Elija: { LIST($scopes, style: "or") }.
bench-nothing-affected = Esta retirada no afecta a ningún latiguillo registrado.

## Sign-in and first start

bench-sign-in = Iniciar sesión
bench-sign-in-first = Primer arranque: crear la cuenta de encargado con el código de la consola
bench-sign-in-not-needed = Las páginas de las etiquetas no requieren iniciar sesión.
bench-find-tag = Buscar una etiqueta
bench-first = Primer arranque
bench-first-hint = Aún no hay usuarios. La consola en la que se arrancó el servidor muestra un código de un solo uso.
bench-first-name = Su nombre
bench-first-password = Contraseña (al menos 12 caracteres)
bench-first-create = Crear la cuenta de encargado

## Build

bench-build = Fabricar
bench-build-for-order = Fabricar para el pedido { $order }
bench-build-changes = Cambios: { $changes }
bench-build-no-changes = Igual que antes, sin cambios.
bench-build-customer = Cliente: { $customer }.
bench-build-reference = Ref. del cliente: { $reference }.
bench-build-wanted = Cantidad: { $count }.
bench-build-needed = Necesario para el { $day }.
bench-build-show-order = Ver el pedido
bench-build-nearest-tag = (junto a la etiqueta)
bench-build-standard-hint = R2, 2SN ...
bench-build-edition-hint = S o año
bench-build-as-hose = manguera
bench-build-drop-hint = mm o 2 1/4 in
bench-build-length-hint = 1250; 49 1/4 in
bench-build-clocking-hint = de 0 a 359
bench-build-temperature-hint = 100; 212 F
bench-build-pressure-hint = 172 o 2500 psi
bench-build-source-hint = ficha técnica, plano ...
bench-build-identify = Identificar midiendo
bench-build-straight = recto
bench-build-elbow = codo de { $angle }
bench-build-other-angle = otro ángulo
bench-build-same = Igual que el extremo A
bench-build-connection = { SAY($connection, case: "short") }
bench-build-choose = Elegir
bench-build-missing = No registrado. Todavía falta:
bench-build-lot-no-reason = Elegir un motivo
bench-build-length-and-clocking = Longitud y ángulo de orientación
bench-build-dial = Ángulo de orientación del extremo B
bench-build-dial-unset = sin ajustar
bench-build-clockwise = Su taller cuenta el ángulo en sentido horario desde las 12. La etiqueta y el registro muestran el ángulo normalizado (360° menos el suyo).
bench-build-counter-clockwise = Sujete el latiguillo con el extremo A más cerca de usted y el codo A apuntando hacia abajo. Mire a lo largo del latiguillo hasta el extremo B y mida en sentido antihorario.
bench-build-turn-drawing = Arrastre el dibujo o use las teclas de flecha.
bench-build-customer-and-quantity = Cliente y cantidad
bench-build-more = Más: fundas y protecciones, fluido, temperatura, material, salto de tamaño, nota
bench-build-register = Registrar e imprimir
bench-build-clear = Vaciar el formulario
bench-build-recipes = Especificaciones guardadas: guardar esta o partir de otra
bench-build-save-recipe = Guardar
bench-build-recipe-replace = Sustituir la especificación guardada
bench-build-updating = Actualizando ...
bench-build-out-of-date = No está al día.
bench-build-unanswered = El servidor no responde: los valores de abajo corresponden a los datos anteriores. Se reintenta cada pocos segundos.
bench-close = Cerrar

## What the build page shows of a spec

bench-view-ends = El latiguillo visto de lado, extremo A a la izquierda
bench-view-tag-picture = La etiqueta como se imprimirá; su número se asigna al registrarla
bench-view-rating = Valores admisibles
bench-view-limited = Limitada por { SAY($part) }.
bench-view-sources = De dónde procede
bench-view-tolerance = Tolerancia: +{ $plus } / -{ $minus } mm
bench-view-no-tolerance = Tolerancia desconocida
bench-view-bend = Radio mínimo de curvatura
bench-view-ask-hose-manufacturer = no se conoce: use el valor del fabricante de la manguera
bench-view-cold = Temperatura mínima
bench-view-proof = Presión de prueba
bench-view-clocking-tolerance = Tolerancia: ± { $angle }
bench-view-ordered = Comparación con el pedido
bench-view-instead = Comparación con la etiqueta que sustituye
bench-view-notes = { $count } { $count ->
    [one] nota
   *[other] notas
 }
bench-view-tag = La etiqueta
bench-view-sample = Número de muestra. El número real se asigna al registrar.
bench-view-needed = Falta por completar
bench-build-jump = { $size } { $connection } está hecho para manguera { LIST($usual, style: "or") }, pero la manguera es -{ $hose }.
    .mend = Si es un salto de tamaño, introduzca { $hose } en «{ bench-field-end-hose_dash }». Si no, corrija el tamaño.
bench-build-jump-use = Es un salto de tamaño: usar { $dash }

## Identify

bench-identify = Identificar un extremo
bench-look-keys = Teclas: de 1 a 9 se elige una imagen, 0 es «no lo sé».
bench-identify-button = Identificar
bench-identify-not-sure = No lo sé
bench-identify-seat = { $seat ->
    [face] cara plana con junta tórica
    [boss] junta tórica bajo el hexágono
    [flat] asiento plano
    [taper] sin asiento, rosca cónica
   *[degrees] { $seat }°
 }
bench-identify-cone-outside = sobresale como una punta
bench-identify-cone-inside = queda dentro como un embudo
bench-identify-flank = { $angle }°
bench-identify-series = { $series ->
    [S] pesada (S)
   *[L] ligera (L)
 }
bench-identify-cannot = No puedo medirlo
bench-identify-hint = { $example } o 1 1/16 in
bench-identify-advice = Incline el calibre respecto a la rosca. Los asientos de 37° y 45° tienen la misma rosca en varios tamaños, pero no sellan entre sí: use una galga de asientos.
bench-identify-measure-next = Medir a continuación:
bench-identify-possible = Conexiones posibles, la más probable primero
bench-identify-likelihood = Probabilidad
bench-identify-percent = { $percent } %
bench-identify-why = Por qué
bench-identify-use-for = Usar para
bench-identify-differs = No coincide:
bench-identify-look-alike = Se confunde con:

## Printing

bench-run-registered = { $count ->
    [one] { $count } etiqueta registrada
   *[other] { $count } etiquetas registradas
 }
bench-run-blocked = No imprima esta etiqueta.
bench-run-untested = Sin prueba de presión superada: { $count }. Solo se puede imprimir la hoja de ruta; imprima las etiquetas cuando hayan superado la prueba.
bench-batch-title = Prensado y prueba
bench-batch-heading = Prensado y prueba de { $count } { $count ->
        [one] latiguillo
       *[other] latiguillos
     }
bench-batch-test = Probar
bench-batch-crimp-save = Guardar prensados
bench-batch-pass = Selección: superada
bench-batch-fail = Selección: no superada
bench-batch-required = Presión de prueba requerida: { $pressure }, mantenida de { $low } a { $high } s ({ $count } de la serie).
bench-batch-unknown = Presión de prueba requerida desconocida para { $count } de la serie: regístrelos por separado o introduzca la presión de trabajo del fabricante y su fuente.
bench-batch-certificate = Certificado del lote { $batch }
bench-batch-each = Un certificado cada uno
bench-batch-hint = La prueba se registra para todos los latiguillos seleccionados o para ninguno. Desmarque el que tuvo fugas y regístrelo como no superado.
bench-batch-untested = sin probar
bench-batch-same-hose = La serie tiene varias mangueras: registre los prensados en la ficha de cada latiguillo.
bench-batch-not-of-run = La etiqueta { $number } no es de esta serie.
    .mend = Registre su prueba en su propia ficha.
bench-customer-none = Ningún latiguillo ni pedido nombra al cliente «{ $name }».
    .mend = Compruebe la escritura o use la búsqueda.
bench-customer-contacts = Contactos
bench-customer-no-contacts = No hay ningún contacto registrado. Los contactos llegan con los pedidos.
bench-customer-machines = Máquinas
bench-customer-export = Exportar los datos
bench-customer-erase = Borrar contacto
bench-customer-erase-ask = ¿Borrar este contacto de todos los pedidos? Los pedidos, los latiguillos y las etiquetas se conservan. No se puede deshacer.
bench-run-job = Trabajo de impresión { $job } en { $printer }: { $state }.
bench-run-check-job = Compruébelo antes de reimprimir estas etiquetas.
bench-run-show-job = Ver el trabajo
bench-run-sent-before =
    { $count ->
        [one] Esta etiqueta ya se ha impreso o enviado a una impresora. ¿Imprimirla otra vez?
       *[other] { $count } de estas etiquetas ya se han impreso o enviado a una impresora. ¿Imprimirlas otra vez?
    }
bench-run-reason = Motivo de la reimpresión
bench-run-only-new = Solo etiquetas sin imprimir ({ $count })
bench-run-print-on = Imprimir en { $printer }
bench-run-reprint-on = Reimprimir en { $printer }
bench-run-print-pdf = Imprimir (PDF)
bench-run-reprint-pdf = Reimprimir (PDF)
bench-run-png = Guardar como PNG
bench-run-svg = Placa en SVG
bench-run-dxf = Placa en DXF
bench-run-next = Nueva fabricación
bench-run-counted = Las impresiones y reimpresiones se anotan en el historial de cada etiqueta.
bench-run-last-first = La impresora usada por última vez aparece primero.
bench-run-loaded = Etiquetas en { $printer }: { $label }.
bench-run-assemblies = Latiguillos registrados
bench-prints-job = Trabajo
bench-prints-job-number = Trabajo { $job }
bench-prints-no-printer = No hay impresoras configuradas. Las etiquetas se imprimen como PDF o PNG. Un encargado puede añadir impresoras de red en los ajustes.
bench-prints-active = Trabajos activos y trabajos que requieren atención
bench-prints-none = No hay trabajos de impresión activos.
bench-prints-finished = Terminados
bench-prints-title = Trabajo de impresión { $job }
bench-prints-heading = Trabajo de impresión { $job } en { $printer }: { $count } { $count ->
    [one] etiqueta
   *[other] etiquetas
 }
bench-prints-state = Estado del trabajo de impresión
bench-prints-back = Volver a las etiquetas
bench-prints-refresh = Actualizar
bench-prints-label = Etiqueta: { $label }.
bench-prints-reason = Motivo de la reimpresión: { $reason }.
bench-prints-requested = Solicitado el { $moment } UTC.
bench-prints-requested-by = Solicitado el { $moment } UTC por { $name }.
bench-prints-counts = Una etiqueta cuenta como impresa cuando la impresora la acepta, aunque no se conozca el resultado.
bench-prints-tags = Etiquetas de este trabajo
bench-state-waiting = En espera de { $printer }.
bench-state-sending = Enviando a { $printer }.
bench-state-printing = Aceptado por { $printer } como trabajo { $job }.
bench-state-done = { $printer } ha impreso este trabajo.
bench-state-done-by = { $printer } ha impreso este trabajo (confirmado por { $name }).
bench-state-failed = { $printer } no ha impreso este trabajo.
bench-state-failed-partly = { $printer } no ha impreso todas las etiquetas.
bench-state-unknown = Quizá se haya impreso. Compruebe { $printer } y después vuelva a enviarlo o márquelo como impreso.
bench-state-dropped = Cancelado.
bench-state-dropped-by = Cancelado por { $name }.
bench-state-attempts = Enviado { $count } veces.
bench-state-send-again = Enviar otra vez
bench-state-mark-printed = Marcar como impreso
bench-state-cancel = Cancelar trabajo
bench-state-cancel-ask = ¿Cancelar este trabajo de impresión? Puede imprimir las etiquetas más tarde.

## A tag's record

bench-record-title = Etiqueta { $number }
bench-record-withdrawn = Retirado del servicio: no usar.
bench-record-signature = Firma de la etiqueta leída: { $said }
bench-record-blocked = Bloqueado: no imprima esta etiqueta.
bench-record-replaced-by = Sustituido por
bench-record-replacement-built = Hay un sustituto fabricado. Su montaje no está registrado:
bench-record-to-be-fitted = Este sustituto está fabricado. Registre «montaje» cuando esté en la máquina. Hasta entonces sigue en uso este:
bench-record-assembly = Latiguillo
bench-record-replaces = Sustituye a
bench-record-order = Pedido
bench-record-reprint = { $count ->
    [one] Reimprimir ({ $count } impresión)
   *[other] Reimprimir ({ $count } impresiones)
 }
bench-record-build-replacement = Fabricar sustituto
bench-record-build-copy = Fabricar una copia
bench-record-phone-page = Ver página del teléfono
bench-record-do-not-use = Imprimir la etiqueta «No utilizar»
bench-record-history = Historial
bench-record-event = Suceso
bench-record-proof-line = { $pressure }, { $hold } s, { $medium }, { $tester }
bench-record-crimp-in = Extremo { $end }: { $measured } mm, dentro de { $low } a { $high } mm
bench-record-crimp-out = Extremo { $end }: { $measured } mm, fuera de { $low } a { $high } mm
bench-record-printed-on = Etiqueta: { $label }. Impresora: { $printer }.
bench-record-printed-as = Etiqueta: { $label }. Archivo: { $form }.
bench-record-printed-label = Etiqueta: { $label }.
bench-record-crimp = Diámetro de prensado
bench-record-crimp-end = Extremo { $end } (mm)
bench-record-crimp-shell = Casquillo, extremo { $end }
bench-record-crimp-choice = { $shell }: { $diameter } +{ $plus } -{ $minus } mm ({ $source })
bench-record-crimp-save = Anotar el diámetro
bench-record-crimp-none = No hay diámetro de prensado para { $hose }. Un encargado puede añadirlo en los ajustes, según la tabla del fabricante del racor.
bench-record-proof = Prueba de presión
bench-record-proof-danger = La presión acumulada puede matar o herir.
bench-record-proof-care = Purgue todo el aire antes de la prueba, permanezca detrás de la protección y siga las instrucciones del fabricante del banco de pruebas y la normativa local.
bench-record-proof-required = Presión de prueba requerida: { $pressure }, tiempo de mantenimiento de { $low } a { $high } s.
bench-record-proof-unknown = No se conoce la presión de prueba requerida: primero hace falta la presión de trabajo del fabricante. Tiempo de mantenimiento de { $low } a { $high } s.
bench-record-proof-ask-rating = No conocido o sin verificar: { LIST($parts) }. Introduzca con la prueba la presión de trabajo del fabricante y su fuente.
bench-record-proof-result = { $result ->
        [passed] Prueba de presión superada
        [tested] Ensayado, prueba incompleta
        [held] Retenido: no utilizar
        [outdated] Probado antes del engaste: repetir
       *[failed] No superada
     }
bench-record-proof-slip = Por encima de la presión mínima de rotura de { $burst }: compruebe el valor y su unidad.
bench-record-proof-over = Por encima de { $most }: el latiguillo quedará retenido hasta que los fabricantes lo permitan por escrito.
bench-record-proof-no-rating = Hace falta la presión de trabajo del fabricante para poder superar una prueba.
bench-record-proof-low = Menos que los { $called } exigidos: prueba incompleta.
bench-record-proof-enough = Suficiente para la prueba de presión.
bench-record-lower-hint = Ejemplo: plano del cliente 4711
bench-record-allow = Permiso escrito de los fabricantes
bench-record-allow-save = Registrar el permiso
bench-record-allow-who = Un encargado puede registrar el permiso escrito de los fabricantes.
bench-record-allowed-line = { $who }, { $day }, { $document }
bench-record-source = Fuente: { $source }
bench-record-pressure-hint = bar o psi
bench-record-pass = Superada
bench-record-fail = No superada
bench-record-fail-ask = ¿Anotar la prueba como no superada? La etiqueta quedará bloqueada.
bench-record-certificate = Certificado (PDF)
bench-record-card = Ficha de montaje (PDF)
bench-record-no-card = Sin ficha de montaje para este latiguillo
bench-record-lot-reason = El lote de bobina consta como otra manguera. Motivo: { $reason }
bench-record-void = ANULADO, no montar.
bench-record-slips = Corregir o anular el registro
bench-record-correct = Corregir el registro
bench-record-correct-save = Guardar corrección
bench-record-corrected = { $field }: { $old } → { $new }.
bench-record-void-title = Anular el registro
bench-record-void-hint = Solo mientras la etiqueta no se haya escaneado y el latiguillo no se haya montado, probado ni entregado. Después, retírelo.
bench-record-void-ask = ¿Anular este registro? El latiguillo no debe montarse.
bench-record-void-save = Anular registro
bench-record-change-made = Cambio pedido: «{ $changes }». Cambiado:
bench-record-change-considered = Cambio pedido: «{ $changes }». Tenido en cuenta, sin introducir nada.
bench-record-add-event = Añadir al historial
bench-record-withdraw = Retirar del servicio ...

## Find, machines

bench-find = Buscar
bench-find-number-hint = o una parte
bench-find-pressure-hint = bar o psi
bench-find-any = cualquiera
bench-find-printed-yes = impresa
bench-find-printed-no = sin imprimir
bench-find-withdrawn-yes = retirada
bench-find-withdrawn-no = no retirada
bench-find-clear = Borrar
bench-find-older = Anteriores
bench-machine-title = Máquina { $machine }
bench-machine-none = Sin máquina
bench-machine-installed = Latiguillos montados: { $count }, por posición
bench-machine-order = Pedir
bench-machine-order-one = Pedir { $number }
bench-machine-order-selected = Pedir los latiguillos seleccionados
bench-machine-order-button = Pedir la selección
bench-machine-empty = No hay latiguillos registrados para esta máquina.

## Orders

bench-orders-title = Pedidos
bench-orders-open-only = Solo abiertos
bench-orders-all = Mostrar todos
bench-orders-order = Pedido
bench-orders-received = Recibido
bench-orders-needed = Necesario para el
bench-orders-from = De
bench-orders-action = Acción
bench-orders-reference = Ref. del cliente: { $reference }
bench-orders-no-name = sin nombre
bench-orders-what = { $hose }, { $length }
bench-orders-build = Fabricar
bench-orders-none = No hay pedidos abiertos. Los clientes los envían desde las páginas de las etiquetas.
bench-order-title = Pedido { $order }
bench-order-heading = Pedido
bench-order-details = Detalles del pedido
bench-order-withdrawn = Etiqueta de un latiguillo retirado ({ LIST($reasons) }): constrúyalo de nuevo según su especificación. Sus lotes no se copian. Compruebe antes si se pueden usar otra vez las mismas piezas.
bench-order-from-tag = De la etiqueta
bench-order-foreign-tag = { $number } (no consta en nuestros registros; especificación leída de la etiqueta)
bench-order-no-tag = ninguna
bench-order-reference = Ref. del cliente
bench-order-contact = Contacto
bench-order-built = Fabricado para este pedido:
bench-order-answer = Responder
bench-order-message = Mensaje al cliente (obligatorio para una pregunta)
bench-order-verb-accepted = Aceptar pedido
bench-order-verb-asked = Preguntar al cliente
bench-order-verb-declined = Rechazar pedido
bench-order-verb-done = Marcar como terminado
bench-order-hint = El cliente ve el estado y este mensaje en la página del pedido.

## Withdrawals

bench-withdrawn-title = Retirado del servicio: no usar
bench-withdrawn-state = Retirado
bench-withdrawn-lifted = Anuladas
bench-withdrawn-lifted-because = Motivo de la anulación: { $reason }
bench-withdrawn-lifted-on = Anulada el { $day }.
bench-withdrawn-lifted-on-by = Anulada el { $day } por { $name }.
bench-withdrawn-affected = Latiguillos y clientes afectados
bench-withdrawn-lift-this = Anular esta retirada ...
bench-withdrawn-lift-reason = Motivo de la anulación
bench-withdrawn-lift = Anular la retirada
bench-withdrawn-none = No hay nada retirado.
bench-withdrawn-new = Retirar del servicio
bench-withdrawn-show = Ver latiguillos afectados
bench-withdrawn-count = { $count ->
    [one] { $count } latiguillo registrado está afectado.
   *[other] { $count } latiguillos registrados están afectados.
 }
bench-withdrawn-customers = Clientes: { $count }.
bench-withdrawn-reason = Motivo (se muestra primero en cada escaneo)
bench-withdrawn-seconds = Las páginas abiertas en teléfonos lo muestran en { $count } segundos como máximo.
bench-withdrawn-lot-closed = No se pueden registrar más latiguillos de este lote.
bench-withdrawn-call-list = Lista de clientes (CSV)
bench-withdrawn-call = A quién llamar
bench-withdrawn-letters = Cartas (PDF)

## Import and export

bench-lists-import = Importar una lista
bench-lists-how = CSV o XLSX, una fila por especificación. Asigne las columnas, revise los problemas encontrados en cada celda y registre después toda la lista. Si falla una fila, no se registra nada.
bench-lists-file = Archivo, 5 MB como máximo
bench-lists-read = Importar
bench-lists-template = Plantilla ({ $form })
bench-lists-columns = Columnas admitidas
bench-lists-export = Exportar
bench-lists-all = Todos los latiguillos ({ $form })
bench-lists-everything = Todo (ZIP)
bench-lists-epcis = Historial EPCIS 2.0
bench-lists-formats = El archivo ZIP contiene JSON Lines y CSV. EPCIS es una norma abierta de GS1 que usan los clientes grandes.
bench-lists-unprinted = Registradas, aún sin imprimir
bench-lists-tags = { $count } { $count ->
    [one] etiqueta
   *[other] etiquetas
 }
bench-match-title = Asignar columnas
bench-match-rows = { $name }: { $count } { $count ->
    [one] fila
   *[other] filas
 }
bench-match-problems = { $count } { $count ->
    [one] problema
   *[other] problemas
 }
bench-match-nothing = No se ha registrado nada. Corrija la lista y vuelva a importarla, o asigne las columnas de otra manera.
bench-match-by-cell = Problemas por celda
bench-match-also = { $count ->
    [one] También en { $first }.
   *[other] También en otras { $count } celdas, de { $first } a { $last }.
 }
bench-match-cell = Celda
bench-match-column = Columna
bench-match-value = Valor
bench-match-problem = Problema
bench-match-fix = Corrección
bench-match-first-problems = Se muestran los primeros { $count }.
bench-match-good = La comprobación no ha encontrado ningún problema.
bench-match-found = Filas: { $rows }. Latiguillos: { $count }. Aún no se ha registrado nada.
bench-match-register = Registrar { $count } e imprimir
bench-match-preview = Vista previa
bench-match-cautions = { $count } { $count ->
    [one] advertencia
   *[other] advertencias
 }
bench-match-matched = Columnas asignadas
bench-match-theirs = Columna del archivo
bench-match-sample = Filas de muestra
bench-match-ours = Campo
bench-match-unit = Unidad del encabezado: { $unit }
bench-match-words = Términos de la lista
bench-match-words-hint = Cómo se lee cada término. Cámbielo si significa otra cosa y compruebe de nuevo la lista.
bench-match-word-for = Significado de «{ $word }»
bench-match-word-none = Elegir un significado
bench-match-word-means = Se lee como
bench-match-no-heading = (sin título)
bench-match-field-for = Campo para { $column }
bench-match-field-for-number = Campo para la columna { $number }
bench-match-leave-out = no importar
bench-match-left-out-columns = Sin leer: { LIST($columns) }. Nada de estas columnas se registra.
bench-match-check = Comprobar
bench-match-another = Otro archivo

## Statistics

bench-figures = Estadísticas
bench-figures-title = Estadísticas de los últimos { $days } días
bench-figures-period = Periodo
bench-figures-days = { $days } días
bench-figures-year = 1 año
bench-figures-registered = Latiguillos registrados
bench-figures-printed = Etiquetas impresas
bench-figures-reprints = { $count } { $count ->
    [one] reimpresión
   *[other] reimpresiones
 }
bench-figures-scanned = Escaneos
bench-figures-orders = Pedidos
bench-figures-ordered = Pedidos tras escanear
bench-figures-from-tags = { $count } desde una etiqueta escaneada
bench-figures-plot = { $title }: { $count } del { $from } al { $to }, máximo { $top } { $span ->
    [week] por semana
   *[day] por día
 }
bench-figures-bar = { $day }: { $count }
bench-figures-oldest = Latiguillos más antiguos aún en uso (según los registros)
bench-figures-guidance = Orientación.
bench-figures-next = Próxima fecha recomendada
bench-figures-next-date = { $day }: { $rule }
bench-figures-past = todas las fechas han pasado
bench-figures-sources = Fuentes de las fechas
bench-figures-rule = { $rule } Fuente: { $source } ({ $confidence })

## Settings

bench-shop-token = Token para { $device }.
bench-shop-token-once = Cópielo ahora en el dispositivo. No se vuelve a mostrar.
bench-shop-proxy = Llegan peticiones por { $address } en nombre de otras direcciones, y TAGGER_TRUSTED_PROXIES no la nombra.
bench-shop-proxy-mend = Si es su proxy, ponga TAGGER_TRUSTED_PROXIES={ $address }: hasta entonces todos los visitantes cuentan como uno solo y uno de ellos puede agotar los límites de todos. Si no tiene proxy, alguien envía una dirección falsa; no se le da crédito.
bench-shop-undelivered = Mensajes no entregados
bench-shop-undelivered-hint = Avisos de pedidos. El envío se reintenta a intervalos de hasta seis horas. Corrija la causa indicada.
bench-shop-to = A
bench-shop-tries = Intentos
bench-shop-people = Personas
bench-shop-sign-in = Inicio de sesión
bench-shop-blocked = acceso desactivado
bench-shop-role-of = Función de { $name }
bench-shop-set-role = Asignar
bench-shop-everywhere = Cerrar en todas partes
bench-shop-disable = Desactivar el acceso
bench-shop-disable-ask = ¿Desactivar el acceso de { $name }?
bench-shop-enable = Activar el acceso
bench-shop-new-password = Nueva contraseña ...
bench-shop-new-password-for = Nueva contraseña de { $name }
bench-shop-set-password = Cambiar la contraseña
bench-shop-add-person = Añadir una persona
bench-shop-initial-password = Contraseña inicial
bench-shop-roles = Operario de taller: fabrica, prueba e imprime. Mostrador: además responde pedidos, retira del servicio e importa listas. Encargado: además anula retiradas, ve las estadísticas y cambia los ajustes.
bench-shop-devices = Dispositivos y programas
bench-shop-device = Dispositivo
bench-shop-device-role = Función del dispositivo
bench-shop-token-head = Token
bench-shop-revoked = revocado
bench-shop-revoke = Revocar
bench-shop-create-token = Crear token
bench-shop-api = API JSON para dispositivos y programas
bench-shop-values = Valores de fabricantes
bench-shop-values-hint = Guardados al montar, para todos los latiguillos siguientes. Un valor retirado ya no se usa y permanece en esta lista.
bench-shop-value-withdraw = Retirar
bench-overrated = Por encima de los valores actuales
bench-overrated-hint = La presión de estas etiquetas supera lo que permiten las tablas actuales. Se aplica el valor más bajo: avise a quien use el latiguillo.
bench-overrated-none = Ningún latiguillo registrado supera los valores actuales.
bench-shop-crimp-diameter = Diámetro
bench-shop-crimp-band = { $diameter } +{ $plus } -{ $minus } mm
bench-shop-recipes = Especificaciones guardadas
bench-shop-recipe-delete-ask = ¿Eliminar la especificación { $name }?
bench-shop-keep = Datos de personas
bench-shop-keep-hint = Los contactos de pedidos terminados, las fotos y los nombres de comunicaciones de montaje resueltas se borran tras estos días; a quién llamar por una retirada se conserva. Los registros y el historial de los latiguillos se conservan. Los días son ajustes del servidor. Las copias anteriores aún contienen lo borrado.
bench-shop-keep-contacts = Contactos
bench-shop-keep-photos = Fotos
bench-shop-keep-reports = Nombres en comunicaciones de montaje
bench-shop-keep-days = { $days ->
        [0] se conservan siempre
       *[other] { $days } días; por borrar ahora: { $due }
     }
bench-shop-keep-erase = Borrar ahora
bench-shop-keep-ask = ¿Borrar lo que ya se ha conservado bastante? No se puede deshacer.
bench-shop-no-recipes = No hay especificaciones guardadas. Guarde una en la página de fabricación.
bench-shop-me = Mi contraseña y mis sesiones
bench-shop-printers = Impresoras
bench-shop-no-printers = No hay impresoras. Las etiquetas se imprimen como PDF o PNG.
bench-shop-label-loaded = Etiquetas cargadas
bench-shop-label-varies = varía
bench-shop-add-printer = Añadir una impresora de red
bench-shop-printer-default = la de la impresora
bench-shop-check-printer = Comprobar y añadir
bench-shop-printer-hint = Cualquier impresora compatible con IPP y con PDF o PWG Raster. El servidor se conecta a esta dirección; por eso solo un encargado puede añadir impresoras.
bench-printer-title = Impresora { $name }
bench-printer-status = Estado actual de la impresora
bench-printer-model = Modelo
bench-printer-state-idle = en reposo
bench-printer-state-processing = ocupada
bench-printer-state-stopped = detenida
bench-printer-refuses = No acepta trabajos.
bench-printer-formats = Formatos
bench-printer-no-format = ni PDF ni PWG Raster
bench-printer-media = Material cargado
bench-printer-settings = Ajustes de la impresora
bench-printer-added = Añadida
bench-printer-check = Comprobar otra vez
bench-printer-back = Volver a los ajustes
bench-printer-remove = Quitar
bench-printer-remove-ask = ¿Quitar { $name }? Los trabajos en espera no se imprimirán.
bench-printer-change = Para cambiar la dirección, la resolución o las etiquetas, quite la impresora y añádala otra vez con el mismo nombre.
bench-me-new-password = Nueva contraseña
bench-me-new-password-long = Nueva contraseña (al menos 12 caracteres)
bench-me-change = Cambiar la contraseña y cerrar todas las sesiones
bench-me-sign-out-this = Cerrar sesión en este dispositivo

## JSON API

bench-api-title = API JSON
bench-api-openapi = Descripción legible por máquina (OpenAPI)
bench-api-token = Envíe un token de dispositivo (creado en los ajustes) en la cabecera:
bench-api-errors = Los errores llegan como application/problem+json (RFC 9457), con el problema de cada campo. Un POST con la cabecera Idempotency-Key se puede repetir sin riesgo.
bench-api-verb = Verbo
bench-api-address = Dirección
bench-api-purpose = Finalidad
bench-api-parameters = Parámetros
## The shop's fittings

bench-field-end-fitting = Referencia
bench-build-fitting-hint = escanear ...
bench-field-stock_number = Referencia
bench-field-fitting_series = Serie del racor (casquillo)
bench-field-swivel = Giratorio tras el prensado
bench-field-cut_off_mm = Descuento del racor
bench-field-cut_off_kind = El descuento termina en
bench-field-insertion_depth_mm = Profundidad de inserción
bench-stock-title = Racores
bench-stock-hint = Las medidas son las del fabricante del racor. El programa no incluye ninguna.
bench-stock-find = Buscar racores
bench-stock-none = No se encontró ningún racor.
bench-stock-keep = Añadir o modificar un racor
bench-stock-edit = Modificar
bench-stock-delete-ask = ¿Eliminar { $number } de la lista? Las etiquetas que lo indican lo conservan.
bench-stock-import = Importar una lista
bench-stock-import-hint = Se importan todas las filas o ninguna. Una referencia que ya está en la lista se sustituye.
bench-stock-kind-seat_to_hose_butt = del asiento al tope de la manguera (donde termina)
bench-stock-kind-seat_to_shell_mouth = del asiento a la boca del casquillo
bench-stock-yes = sí
bench-stock-no = no
bench-field-hose_part = Referencia de la manguera
bench-field-die = Mordaza
bench-field-skive_outside_mm = Pelado exterior (longitud)
bench-field-skive_inside_mm = Pelado interior (longitud)
bench-field-machine_setting = Ajuste de la prensa

## Hoses of the shop

bench-hoses-title = Mangueras del taller
bench-hoses-hint = Los valores son los del fabricante de la manguera, con su fuente. Solo valen para una manguera con esa referencia.
bench-hoses-none = No hay mangueras guardadas.
bench-hoses-keep = Añadir o cambiar una manguera
bench-field-part = Referencia del fabricante
bench-field-manufacturer = Fabricante
bench-field-standard = Norma de la manguera
bench-field-edition = Edición
bench-field-max_working_bar = Presión máxima de trabajo
bench-field-outside_diameter_mm = Diámetro exterior
bench-field-fluids = Fluidos que admite el fabricante

bench-crimps-title = Fichas de prensado
bench-crimps-hint = Según la tabla del fabricante del racor para esta manguera y esta serie de racores. El programa no incluye ninguna.
bench-crimps-none = No hay fichas de prensado guardadas.
bench-crimps-keep = Añadir o cambiar una ficha de prensado
bench-crimps-keep-hint = Una ficha vale para una manguera y una serie de racores; con las mismas, sustituye a la que haya. Sin referencia de la manguera vale solo para la norma y no aprueba nada en conjunto.
bench-crimps-any-part = cualquier manguera de esta norma: no aprueba nada en conjunto
bench-crimps-delete-ask = ¿Eliminar la ficha de prensado para { $series }? Los prensados medidos conservan sus valores.
bench-crimps-import-hint = Se importan todas las filas o ninguna. Una ficha para la misma manguera y serie de racores se sustituye.
bench-hoses-import-hint = Se importan todas las filas o ninguna. Una manguera con la misma referencia y tamaño se sustituye.
bench-flush-title = Limpieza interior
bench-flush-hint = Cómo y con qué se limpió el interior, y quién lo hizo. El historial y el certificado lo indican. No es una medición de la limpieza exigida.
bench-flush-last = Última limpieza interior
bench-field-flushed_by = Limpiado por

## Codes of a phone beside the password

bench-code = Código de su teléfono
bench-code-give = Seis dígitos que la aplicación de su teléfono muestra ahora
bench-code-recovery = ¿Ha perdido el teléfono? Introduzca en su lugar uno de sus códigos de recuperación; cada uno sirve una sola vez.
bench-code-other = Iniciar sesión con otro nombre
bench-code-wrong = El código no es válido.
    .mend = Espere al código siguiente y compruebe la hora del teléfono.
bench-account-sessions = Dónde tiene la sesión iniciada
bench-account-this = Este navegador
bench-account-phone = Teléfono
bench-account-computer = Ordenador
bench-account-since = desde { $since }, último uso { $seen }
bench-account-end = Cerrar
bench-account-end-of = Cerrar la sesión del { $since }
bench-account-end-others = Cerrar todas las demás sesiones
bench-account-happened = Cambios en su cuenta
bench-account-password = Se cambió la contraseña.
bench-account-role = Se cambió la función.
bench-account-codes-on = Se configuraron los códigos de un teléfono.
bench-account-codes-off = Ya no se piden códigos de un teléfono.
bench-account-recovery-code = Se usó un código de recuperación.
bench-account-repeated-code = Un código de su teléfono se introdujo por segunda vez y se rechazó.
bench-account-new-browser = Inicio de sesión con un navegador nuevo.
bench-account-by = Por: { $name }.
bench-account-from = Desde: { $address }.
bench-account-not-you = Si no fue usted: cambie su contraseña, cierre todas las demás sesiones y avise al encargado.
bench-account-seen = Lo he visto
bench-account-untold = Se ha cambiado algo en su forma de iniciar sesión.
bench-account-look = Ver qué ha cambiado
bench-codes = Códigos de su teléfono
bench-codes-why = Con códigos, una contraseña que alguien haya averiguado no basta para iniciar sesión. Recomendado para los encargados.
bench-codes-set-up = Configurar códigos
bench-codes-are-asked = Al iniciar sesión se le pide un código de su teléfono.
bench-codes-off = Dejar de pedir códigos
bench-codes-another = Configurar otro teléfono
bench-codes-hint = Escanee el símbolo con una aplicación de códigos de un solo uso e introduzca el código que muestra.
bench-codes-picture = Símbolo para escanear con el teléfono
bench-codes-type = O escriba este secreto en la aplicación:
bench-codes-first = Código que muestra la aplicación
bench-codes-ask = Pedir códigos a partir de ahora
bench-codes-on = A partir de ahora se le pedirá un código al iniciar sesión.
bench-codes-recovery = Códigos de recuperación
bench-codes-recovery-hint = Anótelos y guárdelos lejos del teléfono: cada uno sustituye un código una sola vez. Solo se muestran ahora.
bench-shop-codes-off = No pedir códigos
bench-shop-codes-ask = ¿Dejar de pedir códigos a { $name }? Entonces bastará la contraseña.

## Label templates at true size

bench-templates-title = Etiquetas a tamaño real
bench-templates-hint = Muestras con valores inventados, a { $dpi } ppp. Imprima esta página al 100 %, o ajuste el zoom hasta que la línea de abajo mida 100 mm: así cada etiqueta tiene su tamaño real.
bench-templates-language = Idioma de las etiquetas
bench-templates-ruler = Esta línea mide 100 mm (3,94 in).
bench-templates-size = { $width } de ancho, { $height } de alto
bench-templates-holds = Contiene
bench-templates-codes = Códigos QR
bench-templates-survives = Resiste
bench-templates-list = { LIST($items) }
bench-templates-symbol = { $count ->
    [one] 1 código, nivel { $level }, módulos de { $module } mm
   *[other] { $count } códigos, nivel { $level }, módulos de { $module } mm
}
bench-templates-tightening = apriete y su referencia
bench-templates-caution = la advertencia
bench-templates-code-all = código QR con toda la especificación
bench-templates-code-number = código QR solo con el enlace del número de etiqueta
bench-templates-bars = número de etiqueta en código de barras
bench-templates-sign = una señal: no utilizar
bench-templates-stays = Papel para el taller: no se mide la resistencia a daños.
bench-templates-measured = La especificación se leyó todavía en el { $all } % de las etiquetas dañadas (medido el { $day }, { $trials } ensayos por tipo de daño, 203 ppp):
bench-templates-not-measured = Sin medir con esta disposición.
bench-templates-wound-torn_corner = esquina arrancada: { $share } %
bench-templates-wound-torn_edge = borde arrancado, 8 mm: { $share } %
bench-templates-wound-rubbed_band = franja borrada por roce, 8 mm: { $share } %
bench-templates-wound-scratches = 14 arañazos: { $share } %
bench-templates-wound-faded = descolorida: { $share } %
bench-templates-wound-oil = aceite usado: { $share } %
bench-templates-wound-burnt_half = una mitad quemada: { $share } %
bench-templates-show = Ver todas las etiquetas a tamaño real

## What was found on a gauge sheet

bench-field-found = Marcas halladas en la hoja
bench-field-scale = Medida de la línea de control
