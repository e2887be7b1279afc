# The command line: commands, options, refusals and answers.

## Commands

cli-description = Etiquetas para latiguillos hidráulicos: toda la especificación en el latiguillo.
cli-about-identify = Identifica una conexión a partir de lo que usted sabe de ella.
cli-about-hose-by-layers = Excluye normas de manguera por capas, diámetros y marcado; no da ninguna presión.
cli-about-check = Muestra la presión admisible, los límites, las tolerancias, el apriete y los avisos. No registra nada.
cli-about-compare = Compara dos latiguillos: ¿sustituye B a A? Cada uno es un archivo de especificación, el enlace de una etiqueta, una foto o un número de etiqueta.
cli-about-tables = Comprobar las tablas del oficio o informar de lo que contienen.
cli-about-schema = Muestra el esquema JSON de una especificación.
cli-about-register = Da a los latiguillos sus números de etiqueta.
cli-about-print = Imprime las etiquetas de latiguillos registrados.
cli-about-run = Registra e imprime una lista entera, todo o nada.
cli-about-read = Muestra lo que dice una etiqueta, sin base de datos.
cli-about-show = Muestra el registro de una etiqueta y su historial.
cli-about-lay-line = Leer la línea impresa en una manguera: norma, tamaño, presión.
cli-about-void = Anular un registro antes de que se escanee la etiqueta o se monte, pruebe o entregue el latiguillo.
cli-about-correct = Corregir el cliente, la máquina, la posición, la limpieza, los lotes o la nota de una ficha.
cli-about-proof = Registrar la prueba de presión de uno o varios latiguillos, o decir cómo debe ser.
cli-about-allow = Registrar la autorización escrita de los fabricantes para un latiguillo retenido.
cli-about-overrated = Listar los latiguillos registrados por encima de los valores actuales.
cli-about-values = Los valores de fabricantes propios del taller: mostrarlos, retirar uno.
cli-about-templates = Muestra las plantillas de etiqueta.
cli-about-preflight = Comprueba si una etiqueta se podrá escanear.
cli-about-serve = Inicia la aplicación web.
cli-about-demo = Cargar la semana de un taller inventado y mostrarla en este equipo, para probarlo todo.
cli-about-backup = Escribe una copia coherente y verificada de los registros.
cli-about-restore = Restaura una copia verificada en una base de datos vacía.
cli-about-drill = Restaura una copia en una base de datos de prueba y compara: ¿serviría hoy?
cli-about-audit = Comprueba la cadena de los registros y su historial: la primera rotura o el último eslabón.
cli-about-move = Traslada todos los registros a otra base de datos vacía y compara cada fila.

## Options

cli-option-json = responder en JSON
cli-option-lang = idioma: { LIST($languages, style: "or") } (TAGGER_LANGUAGE)
cli-option-choices = una de estas: { LIST($choices, style: "or") }
cli-option-cone = dónde está el cono de sellado: { LIST($choices, style: "or") }
cli-option-thread-od = diámetro exterior de una rosca macho
cli-option-thread-id = diámetro interior de una rosca hembra
cli-option-pitch = paso de la rosca en mm
cli-option-hex = hexágono entre caras
cli-option-tube-od = diámetro exterior del tubo
cli-option-side = dónde está la rosca: { LIST($choices, style: "or") }
cli-option-swivels = si la parte roscada gira sobre el racor: { LIST($choices, style: "or") }
cli-option-shape = si la rosca es paralela o cónica: { LIST($choices, style: "or") }
cli-option-seals = lo que sella: { LIST($choices, style: "or") }
cli-option-flank = ángulo de los flancos de la rosca: { LIST($choices, style: "or") }
cli-option-nose = diámetro de la punta, o del alojamiento que la recibe
cli-option-series = serie de un racor de espiga roscada: { LIST($choices, style: "or") }
cli-option-origin = origen de la máquina, solo para desempatar: { LIST($choices, style: "or") }
cli-option-cannot = lo que no se puede medir, puede repetirse: { LIST($choices, style: "or") }
cli-option-flange-od = diámetro de la cabeza de brida
cli-option-bolt-spacing = mayor distancia entre centros de los tornillos de la brida
cli-option-tpi = hilos por pulgada
cli-option-length-example = { $what }: 27, "27 mm" o "1 1/16 in"
cli-option-spec = un archivo de especificación, o - para la entrada estándar
cli-option-lay-line = el texto de la línea, tal como está impreso
cli-option-length-bands = escalones de tolerancia (por defecto: TAGGER_LENGTH_BANDS; si no, los de la norma de la manguera)
cli-option-keep = Guarda los valores del fabricante de esta especificación como propios del taller, para todos los latiguillos siguientes.
cli-option-all = Muestra también los valores sustituidos o retirados.
cli-option-withdraw = Retira el valor de este número; indique el motivo con --reason.
cli-option-reason = El motivo de la retirada.
cli-option-count = número de latiguillos (por defecto, 1)
cli-option-keep-backups = Conserva las últimas N copias de la carpeta FILE y borra las anteriores.
cli-option-into = Una base de datos vacía para la prueba; si no, un archivo temporal.
cli-option-unsealed = Restaura la copia de una versión anterior, sin suma de comprobación.
cli-option-head = un último eslabón anotado antes, de una copia de seguridad o un certificado: debe seguir en la cadena
cli-option-audit-backup = una copia de seguridad: su último eslabón debe seguir en la cadena
cli-option-move-to = dirección de la base de datos vacía, como postgresql://name@host/data; es mejor guardar la contraseña en el archivo de contraseñas de PostgreSQL
cli-option-built-on = fecha de fabricación (por defecto: hoy)
cli-option-record = va al registro, nunca al código QR
cli-option-replaces = la etiqueta del latiguillo al que este sustituye
cli-option-why = el motivo; queda en el historial
cli-option-correct = el valor correcto; un texto vacío lo elimina
cli-option-proof-result = el resultado; sin él no se registra nada
cli-option-proof-pressure = la presión de prueba: en bar, o con unidad
cli-option-proof-hold = el tiempo de mantenimiento en segundos
cli-option-proof-medium = el medio de prueba: { LIST($media) }
cli-option-proof-tester = quién hizo la prueba
cli-option-proof-note = una nota
cli-option-proof-lower = el cliente o la norma que pide una prueba a menor presión
cli-option-proof-rating = la presión de trabajo del fabricante para las piezas desconocidas o sin verificar
cli-option-proof-rating-source = la fuente de esta presión de trabajo
cli-option-proof-rating-confirmed = esta presión de trabajo es correcta aunque supera las tablas
cli-option-proof-confirmed = esta presión de prueba se aplicó aunque retiene el latiguillo
cli-option-allow-by = los fabricantes que lo permiten
cli-option-allow-on = la fecha del documento
cli-option-allow-document = el documento
cli-option-length-confirmed = la longitud es correcta aunque supera 100 m
cli-option-pressure-confirmed = la presión de trabajo del archivo es correcta aunque supera las tablas
cli-option-order = el pedido para el que se fabrica
cli-option-changes-considered = el cambio que pide el pedido se ha tenido en cuenta; la especificación queda como se pidió
cli-option-lot-reason = motivo para usar un lote de bobina que consta como otra manguera: { LIST($reasons) }
cli-option-key = la misma clave registra una sola vez, aunque se envíe varias veces
cli-option-printer = una impresora de red: ipp://HOST/ipp/print o ipps://
cli-option-list = un archivo .csv o .xlsx, una fila por especificación
cli-option-what = una foto o un texto escaneado
cli-option-hose-od = diámetro exterior de la manguera (por defecto: el de las tablas)
cli-option-host = dirección de escucha (por defecto: TAGGER_HOST; si no, 127.0.0.1)
cli-option-port = puerto de escucha (por defecto: TAGGER_PORT; si no, 8000)
cli-demo-other-week = Los registros de { $folder } no son la semana inventada de esta versión.
    .mend = Borre esa carpeta o indique otra: tagger demo CARPETA.
cli-option-demo = la carpeta para su base de datos y sus etiquetas (por defecto: out)
cli-option-out = un archivo .pdf o .png; para una placa, .svg o .dxf
cli-option-template = nombre de una plantilla o su archivo .toml (por defecto: TAGGER_LABEL_TEMPLATE; si no, hang_tag)
cli-option-dpi = resolución en dpi (por defecto: TAGGER_PRINTER_DPI; si no, 203)
cli-option-dpi-printer = resolución en dpi (por defecto: la de la impresora de red; si no, TAGGER_PRINTER_DPI; si no, 203)
cli-option-start = primera etiqueta libre de una hoja empezada (por defecto, 1)
cli-option-languages = uno o dos idiomas de la etiqueta: { LIST($languages, style: "or") } (por defecto: los de la plantilla, o TAGGER_LANGUAGE)
cli-option-force = imprimir aunque la comprobación lo rechace

## Wrong usage: what argparse says. The %(...)s are its own places

cli-usage-start = uso:
cli-usage-argument = argumento %(argument_name)s: %(message)s
cli-usage-positional = argumentos posicionales
cli-usage-options = opciones
cli-usage-help = mostrar esta ayuda y salir
cli-usage-version = mostrar la versión y salir
cli-usage-unrecognized = argumentos desconocidos: %s
cli-usage-not-allowed = no se puede combinar con el argumento %s
cli-usage-ignored = valor inesperado %r
cli-usage-required = faltan los argumentos: %s
cli-usage-one-required = se necesita uno de estos argumentos: %s
cli-usage-expects-one = se espera un valor
cli-usage-expects-some = se espera al menos un valor
cli-usage-ambiguous = opción ambigua: %(option)s puede ser %(matches)s
cli-usage-invalid-value = valor no válido: %(value)r
cli-usage-invalid-choice = opción no válida: %(value)r (posibles: %(choices)s)
cli-usage-error = %(prog)s: error: %(message)s
cli-usage-date = { $value } no es una fecha. Introduzca la fecha como AAAA-MM-DD, por ejemplo 2027-03-31.
cli-usage-future = { $value } está en el futuro. Introduzca la fecha de fabricación u omítala.
cli-usage-keep = Se conserva al menos una copia.
    .mend = Introduzca 1 o más.
cli-usage-head = No es un eslabón de la cadena.
    .mend = Introduzca su número, dos puntos y al menos 16 dígitos, por ejemplo 120:9f86d081884c7d65.
cli-usage-dpi = { $value } no es una resolución de impresora. Introduzca de 100 a 1200 dpi.
cli-usage-diameter = { $value } no es un diámetro de manguera. Introduzca de 1 a 1000 mm.

## Refusals

cli-row = fila { $row }
cli-row-field = fila { $row }, { $field }
cli-column = columna { $column }
cli-cell = celda { $cell }
cli-row-cell = fila { $row }, celda { $cell }
cli-file = archivo
cli-heading = fila de encabezado
cli-number = número de etiqueta
cli-spec = especificación
cli-link = enlace
cli-digits = código de la etiqueta
cli-image = imagen
cli-template = plantilla
cli-printer = impresora
cli-tag = etiqueta
cli-list = lista
cli-problem = { $place }: { $said }
cli-problem-value = { $place }: { $said } (valor: { $value })
cli-not-a-file = Ese archivo de imagen no existe.
    .mend = Revise el nombre del archivo.
cli-out-not-pdf-or-png = El nombre del archivo no acaba en .pdf ni en .png.
    .mend = Use un nombre que acabe en .pdf o en .png.
cli-out-not-engraved = Los formatos SVG y DXF son para placas, y esta etiqueta es para una impresora.
    .mend = Use --template metal_plate, o un archivo terminado en .pdf o .png.
cli-out-one-plate = Un archivo para el grabador contiene una sola placa.
    .mend = Indique un solo número de etiqueta por archivo.
cli-out-no-folder = Esa carpeta no existe.
    .mend = Cree la carpeta o revise la ruta.
cli-out-not-writable = No se puede escribir en esa carpeta.
    .mend = Elija otra carpeta.
cli-too-many-batches = Esta lista se ha procesado diez mil veces.
    .mend = Cambie la lista.
cli-run-meanwhile = Otra orden estaba imprimiendo esta lista al mismo tiempo, y fue ella la que la registró.
    .mend = Mire el archivo que escribió; para imprimir la lista por segunda vez, ejecútela de nuevo.
cli-run-proof-first = Este taller no imprime etiquetas antes de superar la prueba de presión.
    .mend = Use una hoja de ruta, por ejemplo --template traveller_a5, e imprima las etiquetas después de las pruebas.
cli-run-do-not-use = «{ $template }» es para latiguillos que no deben utilizarse; esta orden registra otros nuevos.
    .mend = Use «tagger print» con el número de etiqueta.

## Answers

cli-tables-ok = Las tablas son coherentes. Valores: { $count } (publicados: { $published }, práctica habitual: { $practice }, sin verificar: { $memory }, del taller: { $shop }).
cli-withdrawn = RETIRADO, no usar: { $reason }
cli-void = ANULADO, no montar: { $reason }
cli-void-done = El registro de la etiqueta { $number } está anulado.
cli-correct-done = El registro de la etiqueta { $number } está corregido.
cli-proof-required = Prueba de presión: { $pressure }, mantenida de { $low } a { $high } s, con líquido
cli-proof-unknown = Prueba de presión: la presión no se conoce; mantenida de { $low } a { $high } s, con líquido
cli-proof-ask-rating = Introduzca la presión de trabajo del fabricante: { LIST($parts) }
cli-allow-done = La autorización para la etiqueta { $number } está registrada.
cli-proof-no-result = Falta el resultado de la prueba: no se registró nada.
    .mend = Use --result passed o --result failed.
cli-no-pressure-to-confirm = La especificación no tiene presión de trabajo que confirmar.
    .mend = Introduzca una en la especificación u omita la opción.
cli-pressure = Presión máxima de trabajo: { $pressure }
cli-hose = Manguera: { $hose }
cli-end = Extremo { $end }: { $fitting }
cli-length = Longitud: { $length }
cli-clocking = Ángulo de orientación: { $clocking }
cli-tightening = Apretar el extremo { $end }: { $how }
cli-fluid = Fluido: { $fluid }
cli-maximum-temperature = Temperatura máxima: { $temperature }
cli-vacuum = Vacío máximo: { $vacuum }
cli-built-on = Fabricado el: { $day }
cli-recorded = { $caption }: { $value }
cli-replaces = Sustituye a: { $value }
cli-replaced_by = Sustituido por: { $value }
cli-replacement_built = Hay un sustituto fabricado, aún sin montar: { $value }
cli-serving = { $base } se sirve en { $host }:{ $port }. El taller está en { $base }/bench.
cli-stopped = Detenido.
cli-backed-up = { $file }: escrito y verificado. { $rows }. SHA-256 { $digest }. Último eslabón de la cadena: { $head }
cli-restored = { $file }: restaurado y comparado. { $rows }. SHA-256 { $digest }
cli-backed-up-kept = { $file }: escrito y verificado. { $rows }. Conservadas: { $kept }. Borradas: { $removed }. SHA-256 { $digest }. Último eslabón de la cadena: { $head }
cli-drilled = Restaurado en una base de datos de prueba y comparado: { $file } está intacto. { $rows }. SHA-256 { $digest }
cli-audited = La cadena está íntegra. Eslabones: { $links }. { $rows }. Último eslabón de la cadena: { $head }
cli-audit-broken = La cadena está rota. { $why } Nada de lo registrado después de este punto está probado. Compare con la última copia de seguridad intacta. Último eslabón de la cadena: { $head }
cli-moved = Trasladado y comparado: { $rows } en { $tables } tablas. SHA-256 { $digest } Ponga ahora TAGGER_DATABASE_URL en { $target }. Nadie debe usar ya la base de datos antigua. Todos inician sesión de nuevo.
cli-rows = Filas: { $count }
cli-base-url-not-set = Nota: TAGGER_BASE_URL no está definida. El código QR abre { $base }, accesible solo desde este ordenador.
cli-run-done = Latiguillos registrados e impresos: { $count }. Archivos: { LIST($files) }.
cli-scans = Se podrá escanear: versión QR { $version }, nivel { $level }, módulos { $module } mm = { $dots } puntos, símbolos en la etiqueta: { $symbols }, grado { $grade }, datos { $bytes } bytes
cli-scans-badly = LECTURA NO FIABLE: versión QR { $version }, nivel { $level }, módulos { $module } mm = { $dots } puntos, símbolos en la etiqueta: { $symbols }, grado { $grade }, datos { $bytes } bytes
cli-finding-refuse = Rechazado: { $text } { $mend }
cli-finding-warn = Precaución: { $text } { $mend }
cli-finding-note = Nota: { $text } { $mend }
cli-maybe-printed = Puede que se haya impreso; no se pudo determinar.
cli-job = { $printer }: trabajo { $job }, { $state }
cli-job-said = { $printer }: trabajo { $job }, { $state } ({ $said })
cli-progress-unit = etiqueta

## What happened to a tag

cli-event-registered = registrado
cli-event-crimped = crimpado medido
cli-event-flushed = limpieza interior
cli-event-proof_tested = probado a presión
cli-event-proof_allowed = presión de prueba permitida por los fabricantes
cli-proof-line = prueba de presión { $result ->
        [passed] superada
        [tested] incompleta, ensayo
        [held] RETENIDO, no utilizar
        [outdated] no válida, probado antes del engaste
       *[failed] NO SUPERADA
     }: { $pressure }, { $hold } s
cli-event-printed = etiqueta impresa
cli-event-fitted = instalado
cli-event-inspected = inspeccionado
cli-event-scanned = escaneado
cli-event-ordered = pedido de nuevo
cli-event-replaced = sustituido
cli-event-corrected = corregido
cli-event-voided = anulado
cli-event-replacement_built = sustituto fabricado
cli-event-removed = retirado definitivamente de la máquina
cli-event-withdrawn = retirado del uso
cli-event-withdrawal_lifted = retirada anulada

## How far a printer is with a job

cli-state-pending = en espera
cli-state-held = retenido
cli-state-processing = imprimiendo
cli-state-stopped = detenido
cli-state-canceled = cancelado
cli-state-aborted = interrumpido
cli-state-completed = impreso

## Assemblies rated above today's tables

cli-overrated = { $number }: { $message }
cli-overrated-none = Ningún latiguillo tiene más presión que la de las tablas actuales.
cli-about-fittings = Listar los racores del taller, importar una lista o eliminar uno
cli-option-fitting-text = parte de la referencia, de la serie o del extremo
cli-option-fittings-import = un archivo .csv o .xlsx; todas las filas o ninguna
cli-option-fitting-drop = eliminar esta referencia de la lista
cli-fitting = { $number }: { $end }
cli-fittings-none = No se encontró ningún racor.
cli-values-none = El taller no ha guardado ningún valor.
cli-kept = Guardado para todos los latiguillos siguientes: { $value }
cli-value ={ $id }  { $value }, { $by ->
        [none] guardado el { $day }
       *[other] guardado el { $day } por { $by }
    }
cli-value-withdrawn ={ $id }  { $value }, { $by ->
        [none] guardado el { $day }
       *[other] guardado el { $day } por { $by }
    }, retirado el { $ended }: { $why }
cli-value-replaced ={ $id }  { $value }, { $by ->
        [none] guardado el { $day }
       *[other] guardado el { $day } por { $by }
    }, sustituido el { $ended } por { $other }

## How much the tables know

cli-known-material = { $material }: cada tamaño de manguera con dos de sus extremos naturales. Mangueras: { $hoses }
cli-known-all_families = todas las familias
cli-known-first_sixteen_families = las dieciséis familias de la versión 0.1.0
cli-known-now = Latiguillos, { $families }
cli-known-usual_form = Con un valor guardado por familia y tamaño que no lo tiene, solo la forma habitual, { $families }
cli-known-every_form = Lo mismo para cada forma, { $families }
cli-known-shares = { $what }: verificado { $verified } %, sin verificar { $unverified } %, desconocido { $unknown } % (de { $count })
cli-known-by-family = Extremos por familia, cada uno en todas sus mangueras:
cli-known-by-grade = Fuentes de los extremos con presión conocida:
cli-known-grade = { $grade }: { $share } %
cli-known-identify = Acierto de la identificación (medidas simuladas, todas las conexiones):
cli-known-measured = { $measured }: en primer lugar { $first } %, entre los tres primeros { $three } %, preguntas { $questions }
cli-grade-standard = norma consultada
cli-grade-document = documento de un fabricante o de una administración consultado
cli-grade-secondary = tabla secundaria
cli-grade-memory = de memoria (sin verificar)
cli-grade-judgement = por criterio propio (sin verificar)
cli-grade-practice = práctica habitual
cli-grade-shop = valor del taller
cli-measured-diameter = diámetro
cli-measured-diameter-pitch = diámetro y paso
cli-measured-diameter-seat = diámetro y asiento
cli-measured-diameter-pitch-seat = diámetro, paso y asiento
cli-measured-diameter-pitch-seat-cone = diámetro, paso, asiento y cono
cli-measured-diameter-pitch-seat-cone-nose = diámetro, paso, asiento, cono y punta
cli-measured-asked = diámetro, paso, asiento y lo que se pregunte después
cli-about-hoses = Mostrar las mangueras del taller, importar una lista o retirar una
cli-option-hoses-import = un archivo .csv o .xlsx con las columnas que nombra la salida JSON de esta orden; todas las filas o ninguna
cli-option-hose-drop = retirar la manguera de esta referencia; requiere --dash y --reason
cli-option-hose-dash = dash de la manguera que se retira
cli-option-hose-reason = motivo de la retirada
cli-hoses-none = El taller no tiene mangueras propias.
cli-own-hose = { $part }: { $standard } -{ $dash }, { $rating }

## Papers, crimps and customers

cli-about-crimp = Registrar diámetros de prensado medidos, cada uno frente a su ficha de prensado.
cli-about-crimp-cards = Mostrar las fichas de prensado del taller, importar una lista o eliminar una.
cli-about-flush = Registrar la limpieza interior de latiguillos, cómo y por quién.
cli-about-certificate = Escribir el certificado de la última prueba de presión, de cada latiguillo o de todo un lote de prueba.
cli-about-card = Escribir la ficha de montaje que va en la bolsa del latiguillo: la guía de ambos extremos, en A6.
cli-about-scale-card = Escribir la tarjeta de escala que se pone junto a un extremo para medir su rosca en una foto: una hoja para imprimir al 100 %.
cli-about-customer = Exportar todo lo que se guarda de un cliente.
cli-about-people = Listar las personas que inician sesión; retirar a una los códigos de un teléfono.
cli-option-codes-off = dejar de pedir a esta persona los códigos de un teléfono y cerrar sus sesiones
cli-person = { $name }: { $role ->
        [manager] encargado
        [counter] mostrador
       *[builder] operario de taller
    }{ $active ->
        [no] {""}, no puede iniciar sesión
       *[yes] {""}
    }{ $codes ->
        [yes] {""}, introduce un código de un teléfono
       *[no] {""}
    }
cli-person-codes-off = Ya no se piden códigos a { $name }; todas sus sesiones se han cerrado.
cli-people-none = Todavía no puede iniciar sesión nadie.
cli-person-not-found = Nadie tiene aquí el nombre { $name }.
    .mend = Liste los nombres con: tagger people
cli-person-no-codes = No se piden códigos de un teléfono a { $name }.
    .mend = Compruebe el nombre con: tagger people
cli-about-erase-contact = Borrar el contacto de una solicitud de pedido dondequiera que figure; los pedidos y las etiquetas se conservan.
cli-about-fitted = Comunicaciones de montaje de un latiguillo: listar, confirmar, rechazar.
cli-about-erase-old = Borrar los contactos, fotos y nombres guardados el tiempo que dicen los ajustes.
cli-option-fitted-state = solo las que están en { LIST($states, style: "or") }
cli-option-fitted-number = solo las de esta etiqueta
cli-option-fitted-agree = confirmar esta comunicación; el historial de la etiqueta lo dice después
cli-option-fitted-refuse = rechazar esta comunicación; necesita --reason
cli-option-fitted-erase = borrar quién hizo esta comunicación y su foto; fecha, máquina y horas se conservan
cli-option-dry-run = solo decir cuánto se borraría
cli-fitted-line = { $id }: etiqueta { $number }, instalado el { $day }, { $machine }, { $state ->
        [agreed] confirmado
        [refused] rechazado
       *[waiting] por confirmar
     }
cli-fitted-machine = máquina { $machine }
cli-fitted-no-machine = sin máquina indicada
cli-fitted-erased = { $erased ->
        [yes] El nombre y la foto de la comunicación { $id } están borrados. Las copias anteriores aún los contienen.
       *[no] La comunicación { $id } no contenía nombre ni foto.
     }
cli-fitted-none = No se ha comunicado ningún montaje.
cli-erase-old-unset = No hay nada ajustado: todo se conserva siempre.
    .mend = Ponga en { LIST($names, style: "or") } un número de días.
cli-erased-old = Borrados: contactos { $contacts }, fotos { $photos }, nombres en comunicaciones de montaje { $reports }. Las copias anteriores aún los contienen: elimínelas (tagger backup --keep).
cli-old = Por borrar: contactos { $contacts }, fotos { $photos }, nombres en comunicaciones de montaje { $reports }.
cli-option-whole-run = también todos los latiguillos registrados junto con estos
cli-option-proof-gauge = el manómetro, por su número o su nombre
cli-option-proof-gauge-until = el último día de validez de la calibración del manómetro
cli-option-proof-method = el procedimiento seguido
cli-option-flush-method = cómo y con qué se limpió el interior
cli-option-flush-by = quién los limpió
cli-option-pdf = un archivo .pdf
cli-option-card-paper = tamaño del papel (a4 si no se indica)
cli-option-certificate-batch = un solo certificado para todo el lote con el que se probó el latiguillo por última vez
cli-option-crimp = diámetro de prensado medido en el extremo { $end }: mm, o con unidad
cli-option-crimp-shell = la serie de racores (por defecto: la de la referencia del extremo)
cli-option-crimp-import = un archivo .csv o .xlsx con las columnas { LIST($columns) }; todas las filas o ninguna
cli-option-crimp-cards-import = un archivo .csv o .xlsx con las columnas que nombra la salida JSON de esta orden; todas las filas o ninguna
cli-option-crimp-card-drop = eliminar la ficha de prensado con este número
cli-option-customer-name = el nombre completo, en mayúsculas o minúsculas
cli-option-customer-out = escribirlo además en este archivo JSON
cli-option-erase-reference = la referencia de la solicitud de pedido
cli-of-tag = { $number }: { $what }
cli-proof-batch = Lote de prueba { $batch }: { $count ->
        [one] { $count } latiguillo
       *[other] { $count } latiguillos
     }
cli-flush-done = { $count ->
        [one] Se registró la limpieza interior de { $count } latiguillo.
       *[other] Se registró la limpieza interior de { $count } latiguillos.
     }
cli-crimp-of-end = extremo { $end }, { $crimp }
cli-crimp-nothing = No se indica ningún prensado medido: no se registró nada.
    .mend = Indique un número de etiqueta con --a o --b, o una lista con --import.
cli-crimp-end = Esto no es un extremo.
    .mend = Indique a o b.
cli-crimp-no-shell = No se conoce la serie de racores del extremo { $end }.
    .mend = Indíquela en { $field }.
cli-crimp-card = { $id }: { $hose }, { $series }: { $diameter } mm +{ $plus } −{ $minus } mm (fuente: { $source })
cli-crimp-cards-none = El taller no tiene fichas de prensado.
cli-out-not-pdf = Esto no es un archivo .pdf.
    .mend = Use un nombre que termine en .pdf.
cli-customer = { $name }: { $assemblies ->
        [one] { $assemblies } latiguillo
       *[other] { $assemblies } latiguillos
     }, { $orders ->
        [one] { $orders } solicitud de pedido
       *[other] { $orders } solicitudes de pedido
     }
cli-customer-none = No se guarda nada del cliente { $name }.
    .mend = Compruebe la ortografía; el nombre debe ser completo.
cli-contact-erased = { $count ->
        [0] Este contacto ya estaba borrado.
        [one] El contacto se borró en { $count } solicitud de pedido.
       *[other] El contacto se borró en { $count } solicitudes de pedido.
     }

## Signing keys

cli-about-signing-key = Crea, enumera, retira e imprime las claves que firman las etiquetas del taller.
cli-option-signing-what = new: una clave que firma desde hoy; la anterior sigue valiendo para sus etiquetas. withdraw: nada de lo firmado con --key cuenta ya. page: las claves públicas en PDF.
cli-option-signing-number = Número de la clave que se retira.
cli-option-signing-published = Para new, si se perdió el archivo de claves: la lista guardada de las claves públicas. Las etiquetas firmadas con ellas siguen valiendo.
cli-signing-now = La clave { $key } firma las etiquetas desde hoy.
cli-signing-keep = Guarde una copia de { $file } donde nadie más pueda leerla, imprima la página de claves y dé el mismo archivo a cada servidor y a cada puesto.
cli-signing-line = { $key }  { $public }  { $valid }
cli-signing-page = Página de claves escrita: { $file }
cli-signing-needs = Falta --{ $option }.
    .mend = Use --{ $option }.
cli-read-signature = Firma: { $said }
cli-compare-signature = Firma de { $which }: { $said }

## El cartel y el cuaderno

cli-about-chart = Escribir el cartel de pared: cada conexión en corte, sus roscas, cómo sella y sus parecidas, en una página.
cli-about-booklet = Escribir el cuaderno de bolsillo: tablas de roscas, caras, cómo medir, en hojas para plegar.
cli-option-chart-paper = papel (por defecto A3); A2 se lee a 1 m
cli-option-chart-stock = solo las conexiones de los racores del taller
cli-option-chart-numbers = solo estas, con sus números de almacén
cli-option-booklet-paper = papel que se corta y se pliega (por defecto A4)
cli-option-booklet-pages = página a página, para leer en pantalla

## Gauge sheets

cli-about-sheet = Escribir una plantilla de medida: las tablas a escala real en papel, para comparar una pieza.
cli-option-sheet-kind = para qué es la plantilla: diámetros de rosca, pasos, ángulos de asiento, hexágonos, cabezas de brida o diámetros exteriores de manguera
cli-option-sheet-paper = el papel en que se imprime
cli-option-sheet-family = los diámetros de rosca de esta familia sola
cli-option-found = marcas halladas en una plantilla de medida, por ejemplo «D26.99 P2.117»
cli-option-scale = lo que mide la línea de control de la plantilla: la de 100 mm, o la de 4 in en pulgadas
