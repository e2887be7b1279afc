# What the store refuses, what became of a print job, and the states of orders and prints.

## Assemblies and registering

store-not-registered = La etiqueta { $number } no está registrada.
    .mend = Compruebe el número o escanee la etiqueta: su código QR contiene la especificación completa.
store-run-not-found = La serie { $run } no existe.
    .mend = Busque sus etiquetas.
store-rows-none = No hay ninguna fila que registrar.
    .mend = Introduzca al menos una fila.
store-rows-too-many = { $count } latiguillos superan el límite de una serie ({ $most }).
    .mend = Regístrelos en varias series.
store-danger-reason = { $danger } El latiguillo solo se registra con un motivo por escrito.
    .mend = Elija otra manguera u otro fluido, o introduzca el motivo para fabricarlo así.
store-quantity-not-valid = { $count } no es una cantidad válida.
    .mend = Introduzca una cantidad de 1 a { $most }.
store-read-back = El código QR no superó la comprobación de lectura. No se ha registrado nada.
    .mend = Comuníquelo al servicio de asistencia.
store-numbers-used-up = No se encontró ningún número de etiqueta libre.
    .mend = Comuníquelo al servicio de asistencia.
store-number-taken = El número de etiqueta { $number }, sorteado para esta lista, se asignó entretanto a otro latiguillo.
    .mend = Vuelva a ejecutar la lista.
store-key-of-other = Esta clave ya se usó para { $what ->
        [registration] otro registro
        [order] otro pedido
        [print] otro trabajo de impresión
       *[request] otra petición
     }.
    .mend = Use una clave nueva.
store-key-length = La clave está vacía o supera los { $most } caracteres.
    .mend = Use de 1 a { $most } caracteres.
store-not-a-page-mark = { $mark } no es una marca de página.
    .mend = Use la última que recibió.
store-not-an-event = { $kind } no es un tipo de suceso.
    .mend = Use uno de los siguientes: { LIST($kinds, style: "or") }.

## Texts

store-too-long = El texto supera los { $most } caracteres.
    .mend = Use { $most } caracteres como máximo.
store-control-character = El texto contiene un carácter de control.
    .mend = Borre ese carácter y vuelva a escribir el texto.
store-hidden-character = El texto contiene un salto de línea o un carácter invisible.
    .mend = Vuelva a escribirlo en una sola línea.
store-name-length = El nombre debe tener de 1 a { $most } caracteres.
    .mend = Introduzca de 1 a { $most } caracteres.
store-name-used = El nombre { $name } ya está en uso.
    .mend = Elija otro nombre.

## Orders

store-order-not-found = El pedido { $reference } no existe.
    .mend = Compruebe el número de pedido.
store-order-tag-unknown = La etiqueta { $number } no está registrada y su especificación no se conoce.
    .mend = Envíe también la especificación: está en el código QR.
store-order-tag-void = El registro de la etiqueta { $number } está anulado: no se puede pedir nada a partir de ella.
    .mend = Haga el pedido a partir de la etiqueta que la sustituye, o consulte al taller.
store-order-of-nothing = El pedido no tiene ni número de etiqueta ni especificación.
    .mend = Introduzca el número de etiqueta o envíe la especificación.
store-order-not-after = El estado «{ $wanted }» no se admite después de «{ $now }».
    .mend = Se admite: { LIST($next, style: "or") }.
store-order-finished = El estado del pedido es «{ $now }» y ya no puede cambiar.
    .mend = Introduzca un pedido nuevo.
store-order-untested = El pedido no se puede entregar: no han superado la prueba de presión { LIST($numbers) }.
    .mend = Registre antes las pruebas de presión.
store-order-nothing-built = El pedido no se puede entregar: no hay ningún latiguillo registrado para él, así que ninguno ha superado la prueba de presión.
    .mend = Monte y pruebe el latiguillo a partir de este pedido, o rechace el pedido.
store-order-question-missing = Falta la pregunta al cliente.
    .mend = Introduzca su pregunta al cliente.
store-order-past = El { $day } ya ha pasado.
    .mend = Introduzca la fecha de hoy o una posterior.
store-order-otherwise = El pedido { $reference } no pide ningún cambio, pero esto difiere de él: { LIST($fields) }.
    .mend = Corríjalo o confirme que la diferencia se ha tenido en cuenta.
store-order-change-not-made = El pedido { $reference } pide un cambio: «{ $changes }». El latiguillo está tal como se pidió.
    .mend = Introduzca el cambio en su campo o marque que se ha tenido en cuenta.
store-order-not-a-state = { $state } no es un estado de pedido.
    .mend = Use uno de los siguientes: { LIST($states, style: "or") }.
store-contact-missing = Hace falta un número de teléfono o una dirección de correo electrónico.
    .mend = Introduzca uno de los dos.
store-phone-not-valid = { $phone } no es un número de teléfono.
    .mend = Use un número como +44 1632 960 111.
store-email-not-valid = { $email } no es una dirección de correo electrónico.
    .mend = Use una dirección como anna@example.com.
store-photo-not-found = No hay ninguna foto { $id }.
    .mend = Abra de nuevo el pedido o la comunicación.
store-fitted-not-found = No hay ninguna comunicación { $id }.
    .mend = Abra la lista de nuevo.
store-fitted-many = Ya hay { $most } comunicaciones de esta etiqueta pendientes en el taller.
    .mend = Llame al taller.
store-fitted-no-photo = La comunicación { $id } no tiene foto.
    .mend = Puede que se haya borrado.
store-fitted-decided = La comunicación { $id } ya se ha resuelto.
    .mend = Abra la lista de nuevo.
store-fitted-void = El registro de la etiqueta { $number } está anulado: la comunicación no se puede confirmar.
    .mend = Llame a quien la envió: hay que desmontar el latiguillo. Después, rechace la comunicación con el motivo.
store-fitted-reason-missing = Una comunicación rechazada necesita un motivo.
    .mend = Introduzca el motivo.
store-fitted-to-come = El { $day } aún no ha llegado.
    .mend = Introduzca el día del montaje.
store-fitted-hours = { $given } no es un número de horas entre 0 y { $most }.
    .mend = Lea de nuevo el horómetro.
store-order-state-received = recibido
store-order-state-asked = pregunta enviada
store-order-state-accepted = aceptado
store-order-state-building = en fabricación
store-order-state-done = terminado
store-order-state-declined = rechazado

## Withdrawals

store-withdraw-which = Una retirada debe indicar una etiqueta, un lote de manguera o un lote de racores.
    .mend = Introduzca exactamente uno de los tres.
store-withdraw-reason-missing = Falta el motivo de la retirada.
    .mend = Introduzca el motivo de la retirada.
store-lift-reason-missing = Falta el motivo para anular la retirada.
    .mend = Introduzca el motivo.
store-withdrawn-already = { $scope ->
        [hose_lot] El lote de manguera { $value } ya está retirado.
        [fitting_lot] El lote de racores { $value } ya está retirado.
       *[tag] La etiqueta { $value } ya está retirada.
     }
    .mend = Para cambiar el motivo, anule primero la retirada.
store-withdrawal-not-found = La retirada { $withdrawal } no existe.
    .mend = Compruebe la lista de retiradas.
store-withdrawal-lifted = La retirada { $withdrawal } ya está anulada.
    .mend = Compruebe la lista de retiradas.
store-lot-withdrawn = { $scope ->
        [hose_lot] El lote de manguera { $lot } está retirado («{ $reason }»).
       *[fitting_lot] El lote de racores { $lot } está retirado («{ $reason }»).
     }
    .mend = Use otro lote o pida a un encargado que anule la retirada.
store-lot-of-another-hose = El lote de bobina { $lot } consta como { LIST($known) }.
    .mend = Compruebe la bobina. Si el lote es correcto, elija el motivo: código de fecha, otro fabricante o registro anterior erróneo.
store-hose-with-part = { $hose }, referencia { $part }
store-lot-reason-not-known = «{ $value }» no es un motivo para el lote.
    .mend = Use uno de estos: { LIST($reasons) }.
store-lot-reason-date_code = El lote es solo un código de fecha
store-lot-reason-other_manufacturer = Otro fabricante con el mismo número de lote
store-lot-reason-earlier_record_wrong = El registro anterior es erróneo

## Crimps and proof tests

store-crimp-not-valid = El diámetro y sus tolerancias no son un diámetro de prensado válido.
    .mend = Introduzca un diámetro de 1 a 300 mm y tolerancias de 0 a 5 mm.
store-crimp-below-bore = Un diámetro de prensado de { $diameter } no supera el diámetro interior de la manguera, { $bore }. No puede ser correcto.
    .mend = Compruebe el valor y su unidad: se lee en mm.
store-crimp-source-missing = Falta la fuente del diámetro de prensado.
    .mend = Introduzca la fuente: es obligatoria para todo diámetro de prensado.
store-crimp-shell-missing = Falta el casquillo del diámetro de prensado.
    .mend = Introduzca el casquillo: es obligatorio para todo diámetro de prensado.
store-crimp-not-found = El diámetro de prensado { $crimp } no existe.
    .mend = Use el último identificador recibido.
store-crimp-none = No hay diámetro de prensado para esta manguera con el casquillo { $shell }.
    .mend = Un encargado puede añadirlo en Taller, según la tabla del fabricante del racor.
store-crimp-twice = Medido dos veces: { LIST($ends) }. No está claro cuál de los dos valores vale.
    .mend = Introduzca un solo diámetro de prensado por extremo.
store-shop-row-reason-missing = Falta el motivo para retirar el valor.
    .mend = Introduzca el motivo.
store-shop-row-not-found = El taller no tiene ningún valor { $id }.
    .mend = Compruebe el número en la lista de valores del taller.
store-shop-row-ended = El valor { $id } ya se ha sustituido o retirado.
    .mend = Consulte la lista de valores del taller.
store-value-end ={ $series ->
        [none] { $size }
       *[other] { $size } { $series }
    } { $connection }, { $form }, { $shape ->
        [elbow] acodado
       *[straight] recto
    }, { $material }: { $pressure } (fuente: { $source })
store-value-hose ={ $standard } -{ $dash }, { $edition ->
        [none] sin edición
       *[other] edición { $edition }
    }, { $part ->
        [none] cualquier referencia
       *[other] referencia { $part }
    }: { $pressure } (fuente: { $source })
store-value-fluid ={ $standard }, { $part ->
        [none] cualquier referencia
       *[other] referencia { $part }
    }: autorizada para este fluido: { $fluid }, hasta { $limit } (fuente: { $source })
store-value-with = { $value }, solo con este fluido: { $fluid }
store-value-up-to = { $value }, hasta { $limit }
store-proof-pressure-low = { $given } es menos que la presión de prueba exigida, { $called }.
    .mend = Repita la prueba a esa presión o registre la prueba como no superada.
store-proof-hold-short = { $given } s es menos que los { $called } s exigidos.
    .mend = Mantenga la presión todo ese tiempo o registre la prueba como no superada.
store-proof-above-burst = { $given } supera la presión mínima de rotura, { $burst } (límite: { $part }). El valor no puede ser correcto.
    .mend = Compruebe el valor y su unidad. Un número sin unidad se lee en bar.
store-proof-over-unconfirmed = { $given } supera { $most }, lo máximo con que una prueba puede cargar las piezas. Registrada así, la prueba retiene el latiguillo hasta que los fabricantes lo permitan por escrito.
    .mend = Compruebe el valor y su unidad. Si se aplicó esta presión, confírmela.
store-proof-rating-unknown = No se conoce la presión admisible: { LIST($parts) }. Sin ella no se puede superar ninguna prueba de presión.
    .mend = Introduzca con la prueba la presión de trabajo del fabricante y su fuente.
store-proof-rating-unverified = La presión admisible no está verificada: { LIST($parts) }. Ninguna prueba de presión puede basarse en ella.
    .mend = Introduzca con la prueba la presión de trabajo del fabricante y su fuente.
store-proof-no-rating-applies = Ninguna presión de trabajo vale para este latiguillo. No se puede superar ninguna prueba de presión.
    .mend = Lea las advertencias del latiguillo. Use una manguera y racores aptos para su fluido y su temperatura.
store-proof-rating-not-asked = La presión admisible de todas las piezas se conoce.
    .mend = Borre este valor.
store-proof-rating-source = Falta la fuente de la presión de trabajo del fabricante.
    .mend = Introduzca la ficha técnica o la carta de la que procede.
store-proof-rating-below-tag = La presión de trabajo del fabricante, { $given }, es inferior a la de la etiqueta, { $told }. Con ella no puede superarse ninguna prueba de presión.
    .mend = Compruebe el valor y su unidad. Si es correcto, retire la etiqueta y registre de nuevo el latiguillo con este valor.
store-proof-gas = Una prueba de presión se hace con líquido, nunca con gas.
    .mend = Repita la prueba con líquido o registre la prueba como no superada.
store-proof-why-held = Se aplicaron { $given }. Más de { $most } carga las piezas más que una prueba de presión: retenga el latiguillo hasta que los fabricantes lo permitan por escrito.
store-proof-why-slip = La presión registrada, { $given }, supera la presión mínima de rotura de { $burst }. No puede ser correcta, así que este registro no demuestra nada.
store-proof-why-lower = No es una prueba de presión completa. Pidió una prueba a menor presión: { $source }
store-proof-why-gas = No es una prueba de presión completa: se hizo con gas.
store-proof-why-unknown = No es una prueba de presión completa: no se conocía la presión admisible del latiguillo.
store-proof-why-short = No es una prueba de presión completa: la presión o el tiempo de mantenimiento fue menor de lo exigido.
store-proof-why-allowed = No es una prueba de presión completa: la presión superó el límite. Los fabricantes lo permitieron por escrito.
store-proof-why-crimped = No es una prueba de presión: se registró un engaste el { $day }, después de esta prueba. Pruebe de nuevo el latiguillo.
store-proof-after-failure = { LIST($numbers) }: la última prueba de presión no fue superada.
    .mend = Escriba en la nota qué se reparó y registre la prueba como superada.
store-proof-not-held = El latiguillo no está retenido: ninguna prueba lo cargó más de lo permitido.
    .mend = Compruebe el número de etiqueta.
store-proof-allowed-future = { $day } está en el futuro.
    .mend = Introduzca la fecha del documento de los fabricantes.
store-crimp-of-end = { SAY($end, case: "of") } ({ $measured } mm)
store-blocked-withdrawn = La etiqueta { $number } no se puede imprimir: está retirada («{ $reason }»).
    .mend = Deseche el latiguillo o pida a un encargado que anule la retirada.
store-blocked-void = La etiqueta { $number } no puede imprimirse: su registro está anulado («{ $reason }»).
    .mend = Registre de nuevo el latiguillo con los valores correctos.
store-proof-withdrawn = El latiguillo está retirado: { LIST($reasons) }. No se registra para él ninguna prueba de presión superada.
    .mend = Pida primero a un encargado que anule la retirada. Una prueba no superada sí se puede registrar.
store-void-reason-missing = Falta el motivo de la anulación.
    .mend = Introduzca el motivo: queda en el historial.
store-void-already = El registro de la etiqueta { $number } está anulado.
    .mend = Registre de nuevo el latiguillo con los valores correctos.
store-void-not-used = El registro de la etiqueta { $number } está anulado: no monte este latiguillo.
    .mend = Registre de nuevo el latiguillo con los valores correctos.
store-void-too-late = El registro de la etiqueta { $number } no puede anularse: { $kind ->
        [scanned] su etiqueta se escaneó el { $day }.
        [fitted] el latiguillo se montó el { $day }.
        [proof_tested] se probó a presión el { $day } y puede estar certificado.
        [ordered] se volvió a pedir el { $day }.
       *[other] constan más operaciones desde el { $day }.
     }
    .mend = Corrija el registro o retire la etiqueta.
store-void-handed-over = El registro de la etiqueta { $number } no puede anularse: el pedido { $reference } ya se entregó.
    .mend = Corrija el registro o retire la etiqueta.
store-not-correctable = Este valor no puede corregirse.
    .mend = Use: { LIST($fields) }. Para cualquier otro error, anule el registro o retire la etiqueta.
store-correct-reason-missing = Falta el motivo de la corrección.
    .mend = Introduzca el motivo: queda en el historial.
store-nothing-corrected = Nada difiere del registro de la etiqueta { $number }.
    .mend = Introduzca el valor correcto.
store-blocked-crimp = La etiqueta { $number } no se puede imprimir: está fuera de tolerancia el diámetro de prensado { LIST($ends) }.
    .mend = Vuelva a fabricar el latiguillo y registre de nuevo sus diámetros de prensado, o deséchelo.
store-blocked-proof = La etiqueta { $number } no se puede imprimir: no superó su prueba de presión del { $day }.
    .mend = Vuelva a fabricar el latiguillo y registre una nueva prueba de presión, o deséchelo.
store-blocked-proof-held = La etiqueta { $number } no se puede imprimir: el latiguillo está retenido. { $why }
    .mend = Registre el permiso escrito de los fabricantes o retire el latiguillo.
store-blocked-proof-slip = La etiqueta { $number } no se puede imprimir: la presión de su prueba del { $day } supera la presión mínima de rotura. No puede ser correcta.
    .mend = Registre una nueva prueba de presión o retire el latiguillo.
store-blocked-untested = La etiqueta { $number } aún no se puede imprimir: este taller no imprime etiquetas antes de superar la prueba de presión.
    .mend = Imprima la hoja de ruta, que lleva el número de etiqueta, y registre después la prueba de presión.
store-stop-none = Etiqueta { $number }: el latiguillo no está retirado ni anulado, y no falló ninguna prueba. La etiqueta «No utilizar» es solo para esos casos.
    .mend = Retire primero el latiguillo, con el motivo.
store-stop-withdrawn = retirado del servicio, { $reason }
store-stop-withdrawn-short = retirado del servicio (detalles: escanee el código)
store-stop-void = registro anulado, { $reason }
store-stop-void-short = registro anulado (detalles: escanee el código)
store-stop-held = retenido tras una prueba de presión. { $why }
store-stop-held-short = retenido (su prueba de presión superó el límite)
store-stop-proof = prueba de presión del { $day } no superada
store-stop-slip = la presión registrada en la prueba del { $day } no puede ser correcta
store-stop-crimp = fuera de tolerancia, el diámetro de prensado { LIST($ends) }
store-fitted-untested = La etiqueta { $number } no se puede registrar como montada: este taller no entrega ningún latiguillo antes de superar la prueba de presión.
    .mend = No monte el latiguillo. Registre antes su prueba de presión.
store-proof-gauge-missing = Falta el manómetro de esta fecha de calibración.
    .mend = Introduzca el número del manómetro.
store-proof-gauge-expired = La calibración del manómetro terminó el { $day }: ninguna prueba puede superarse con él.
    .mend = Pruebe con un manómetro de calibración vigente o corrija la fecha.
store-batch-empty = No hay ningún latiguillo seleccionado.
    .mend = Seleccione al menos uno.
store-batch-too-large = { $count } latiguillos son más que los { $most } de un lote de prueba.
    .mend = Regístrelos en varios lotes.
store-batch-of = { LIST($numbers) }: { $why }
    .mend = Corrija el valor o registre estos latiguillos por separado.
store-batch-held = { $given } supera una prueba de presión para { LIST($numbers) }: no se registra nada del lote.
    .mend = Compruebe el valor y su unidad. Si esta presión se aplicó a todos, confírmela: quedarán retenidos. Si no, registre en su propia ficha el latiguillo cargado de verdad así.

## Print jobs and printers

store-printer-not-found = { $printer } no es una impresora en uso.
    .mend = Elija una de la lista. Un encargado añade las impresoras en Taller.
store-printer-name-used = Ya hay una impresora con el nombre { $name }.
    .mend = Elija otro nombre o quite esa impresora.
store-print-job-not-found = El trabajo de impresión { $job } no existe.
    .mend = Búsquelo en Impresiones.
store-print-job-moved = El estado del trabajo de impresión { $job } es ahora «{ $state }».
    .mend = Vuelva a cargar primero la página.
store-print-state-waiting = en espera
store-print-state-sending = enviándose
store-print-state-printing = imprimiéndose
store-print-state-done = impreso
store-print-state-failed = fallido
store-print-state-unknown = impresión sin confirmar
store-print-state-dropped = cancelado
store-print-interrupted = El programa se detuvo mientras enviaba el trabajo. Puede que se haya impreso.
    .mend = Compruebe si las etiquetas se imprimieron.
store-print-restored = El trabajo procede de una copia de seguridad restaurada. Puede que ya se haya impreso.
    .mend = Compruebe si las etiquetas se imprimieron antes de volver a enviarlo.
store-print-retired = La impresora se quitó antes de enviar el trabajo.
    .mend = Envíe las etiquetas a otra impresora.
store-print-not-taken = El programa se detuvo mientras enviaba el trabajo, y la impresora no lo muestra: no se imprimió.
    .mend = Envíelo de nuevo.
store-print-forgotten = La impresora ya no muestra este trabajo. Puede que se haya apagado.
    .mend = Compruebe si las etiquetas se imprimieron.
store-print-crashed = El programa falló mientras enviaba el trabajo ({ $error }).
    .mend = Compruebe si las etiquetas se imprimieron y comuníquelo al servicio de asistencia.
store-print-unconfirmed = Puede que se haya impreso.
store-print-status = Estado de la impresora: { LIST($said) }.

## People and devices

store-code-wrong = Este no es el código actual.
    .mend = Compruebe el código en la consola.
store-last-manager = Es el último encargado y no se puede cambiar.
    .mend = Añada antes otro encargado.
store-person-not-found = La persona { $person } no existe.
    .mend = Compruebe la lista de personas.
store-token-not-found = El dispositivo { $token } no existe.
    .mend = Compruebe la lista de dispositivos.
store-recipe-not-found = La receta { $name } no existe.
    .mend = Elija una de la lista.
store-recipe-used = Ya hay otra especificación guardada como { $name }.
    .mend = Elija otro nombre o marque «Sustituir la especificación guardada».
store-recipe-of-manager = La especificación guardada como { $name } es de un encargado.
    .mend = Elija otro nombre o pida a un encargado que la sustituya.

## The database and its backups

store-demo-reachable = La demostración sería accesible para otros en { $base }, con una contraseña que todos conocen.
    .mend = Quite TAGGER_DEMO, o ponga TAGGER_HOST y TAGGER_BASE_URL en 127.0.0.1.
store-demo-only-manager = La cuenta de demostración es el único encargado y todos conocen su contraseña.
    .mend = Inicie una vez más con TAGGER_DEMO=1 en este ordenador, añada un encargado propio e inicie sin ella; o empiece con una base de datos nueva.
store-database-cannot-open = No se puede abrir la base de datos: { $why }
    .mend = Compruebe TAGGER_DATABASE_URL y que exista la carpeta o el servidor.
store-database-full = El disco del servidor está lleno: no se puede guardar nada.
    .mend = Avise a la persona responsable del servidor. Cuando haya espacio, compruebe qué se guardó antes de introducirlo de nuevo.
store-database-read-only = La base de datos es de solo lectura: no se puede guardar nada.
    .mend = Avise a la persona responsable del servidor. Cuando se pueda escribir, compruebe qué se guardó antes de introducirlo de nuevo.
store-database-busy = El servidor está ocupado.
    .mend = Espere unos segundos. Compruebe qué se guardó antes de introducirlo de nuevo.
store-database-away = La base de datos no está disponible.
    .mend = Inténtelo de nuevo en un minuto y compruebe qué se guardó antes de introducirlo de nuevo. Si sigue sin estar disponible, avise a la persona responsable del servidor.
store-database-newer = La base de datos la escribió una versión más reciente (paso { $step }).
    .mend = Instale esa versión o restaure una copia de seguridad en una base de datos nueva.
store-database-moved = Los registros de esta base de datos se trasladaron a otra.
    .mend = Ponga TAGGER_DATABASE_URL en la base de datos nueva. Para volver atrás, restaure una copia de ella en otra base nueva.
store-database-address = { $address } no es la dirección de una base de datos.
    .mend = Use una dirección como sqlite:////srv/data.sqlite3 o postgresql://name@host/data.
store-database-kind = La base de datos no es ni SQLite ni PostgreSQL.
    .mend = Use una de las dos.
store-database-in-memory = La base de datos se perdería al detenerse el programa (base en memoria).
    .mend = Introduzca un archivo.
store-backup-exists = { $path } ya existe y no se sobrescribirá.
    .mend = Elija otro nombre de archivo o mueva el existente.
store-backup-no-folder = La carpeta { $path } no existe.
    .mend = Cree la carpeta o compruebe la ruta.
store-backup-not-verified = La copia de seguridad { $path } no superó la verificación.
    .mend = Compruebe el disco.
store-backup-own-file = { $path } es un archivo de la propia base de datos.
    .mend = Elija otro archivo para la copia de seguridad.
store-restore-no-file = { $path } no existe.
    .mend = Compruebe la ruta.
store-restore-not-a-backup = { $path } no es una copia de seguridad completa.
    .mend = Haga una copia de seguridad nueva.
store-restore-changed = { $path } se modificó después de hacer la copia: la suma de comprobación no coincide. No se ha restaurado nada.
    .mend = Use otra copia de seguridad.
store-restore-unsealed = { $path } no lleva suma de comprobación: no se puede demostrar que el archivo esté intacto.
    .mend = Use una copia más reciente. Para la copia de una versión anterior, restaure con --unsealed y compruebe los registros.
store-restore-incomplete = La base de datos restaurada está incompleta.
    .mend = Inténtelo de nuevo.
store-restore-not-empty = Una copia de seguridad solo se restaura en una base de datos vacía. Esta contiene { LIST($tables) }.
    .mend = Indique la dirección de una base nueva en TAGGER_DATABASE_URL.
store-audit-link-gone = Falta el eslabón { $link } de la cadena.
store-audit-link-changed = El eslabón { $link } de la cadena se modificó, se borró o se movió (tabla { $table }, fila { $key }).
store-audit-row-gone = La fila { $key } de la tabla { $table } se borró (eslabón { $link }).
store-audit-row-changed = La fila { $key } de la tabla { $table } no está como se registró (eslabón { $link }).
store-audit-salt-gone = La fila { $key } de la tabla { $table } ya no se puede comprobar: se borró la sal del eslabón { $link } y ningún eslabón posterior lo sustituye.
store-audit-row-unlinked = La fila { $key } de la tabla { $table } no la escribió este programa: ningún eslabón la recoge.
store-audit-row-twice = La tabla { $table } tiene más eslabones que filas.
store-audit-text-gone = «{ $text }» figura en la tabla assembly, pero falta o se modificó en la tabla recorded_text: una búsqueda o una retirada puede no encontrar su latiguillo.
store-audit-head-gone = { $head } no está en la cadena: se borró o se modificó el final de lo registrado.
store-audit-no-head = La copia de seguridad { $path } es de una versión anterior y no lleva cadena.
    .mend = Use una copia más reciente.
store-move-itself = Los registros se trasladarían a la misma base de datos en la que están.
    .mend = Indique la dirección de otra base de datos vacía.
store-move-not-empty = Los registros solo se trasladan a una base de datos vacía. Esta contiene { LIST($tables) }.
    .mend = Indique la dirección de una base de datos nueva.
store-move-differs = La tabla { $table } difiere tras el traslado. No se ha guardado nada en la base de datos nueva.
    .mend = Compruebe el disco y la memoria de ambos equipos y repita el traslado.
store-move-in-use = Otro programa tiene abierta la base de datos.
    .mend = Detenga el servidor y cualquier otra orden y repita el traslado.
store-database-older = Una versión anterior no puede conservar lo que dice la tabla { $table }: se volverían a usar latiguillos retenidos.
    .mend = Siga con esta versión o restaure una copia escrita por la versión anterior.
store-own-hose-not-kept = Ninguna manguera del taller tiene la referencia { $part } en dash { $dash }.
    .mend = Compruebe la referencia y el dash en la lista de mangueras.
store-value-dimension =
    { $which ->
        [hose_bend] Radio de curvatura mínimo
        *[other] Diámetro exterior
    }, { $part ->
        [none] { $standard }-{ $dash }
        *[other] { $standard }-{ $dash }, referencia { $part }
    }: { $length } ({ $source })
