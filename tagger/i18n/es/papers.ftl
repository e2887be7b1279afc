# Papers: the certificate of a proof test, letters about a withdrawal, the call list.

## Captions that several papers share

papers-tag-number = Número de etiqueta
papers-hose = Manguera
papers-hose-assembly = Latiguillo
papers-machine-position = Máquina, posición
papers-built-on = Fabricado el
papers-customer = Cliente
papers-with-lot = { $part }, lote { $lot }

## The certificate

papers-no-proof-test = La etiqueta { $number } no tiene ninguna prueba de presión registrada.
    .mend = Registre antes una prueba de presión.
papers-issued-anew = Emitido de nuevo el { $day } tras corregir el registro; sustituye al certificado anterior. { LIST($fields) }.
papers-corrected = { $field }: { $new } en lugar de { $old }
papers-field-hose-lot = Lote de manguera
papers-field-end_a-lot = Lote de racores, extremo A
papers-field-end_b-lot = Lote de racores, extremo B
papers-field-note = Nota
papers-proof-title = Certificado de prueba de presión - latiguillo
papers-proof-file-title = Prueba de presión de { $number }
papers-proof-result-line = { $result ->
        [passed] Etiqueta { $number }: superada
        [tested] Etiqueta { $number }: ensayado a { $pressure }
        [held] Etiqueta { $number }: RETENIDO - no utilizar
        [outdated] Etiqueta { $number }: PROBADA ANTES DEL ENGASTE - repetir la prueba
       *[failed] Etiqueta { $number }: NO SUPERADA - no utilizar
     }
papers-proof-withdrawn-line = Etiqueta { $number }: RETIRADA - no usar ({ LIST($reasons) })
papers-proof-crimp-line = Etiqueta { $number }: PRENSADO FUERA DE TOLERANCIA - no usar
papers-tested-title = Certificado de ensayo a presión - latiguillo
papers-end-a = Extremo A
papers-end-b = Extremo B
papers-length = Longitud
papers-clocking = Ángulo de orientación
papers-working-pressure = Presión máxima de trabajo
papers-working-pressure-source = Fuente de la presión de trabajo
papers-tighten-a = Apriete, extremo A
papers-tighten-b = Apriete, extremo B
papers-torque = { $torque }, { $basis } ({ $source })
papers-fluid = Fluido
papers-temperature = Temperatura máxima
papers-danger = Atención
papers-test = La prueba
papers-result = Resultado
papers-result-said = { $result ->
        [passed] superada
        [tested] ensayado a { $pressure }
        [held] retenido
        [outdated] probado antes del engaste: la prueba no cuenta
       *[failed] no superada
     }
papers-result-why = Significado
papers-rating-given = Presión de trabajo para la prueba
papers-rating-given-said = { $pressure }, fuente: { $source }
papers-allowed = Permitido por escrito por
papers-allowed-said = { $who }, { $day }, { $document }
papers-flushing = Limpieza interior
papers-flushed = { $method }; { $who }, { $day }
papers-pressure = Presión
papers-pressure-required = Exigida
papers-not-recorded = no registrada
papers-hold-time = Tiempo de mantenimiento
papers-hold = { $held } s
papers-hold-least = { $held } s (exigido: al menos { $least } s)
papers-hold-range = { $held } s (exigido: de { $least } a { $most } s)
papers-hold-longer = { $held } s (exigido: de { $least } a { $most } s; más largo de lo exigido)
papers-medium = Fluido de prueba
papers-tested-by = Probado por
papers-recorded = Registrada el
papers-recorded-at = { $day } { $time } UTC
papers-note = Nota
papers-crimps = Diámetros de prensado
papers-crimp = { $holds ->
        [in] { $measured } mm, exigido de { $low } a { $high } mm ({ $shell }; { $source }): dentro de la tolerancia
       *[out] { $measured } mm, exigido de { $low } a { $high } mm ({ $shell }; { $source }): FUERA DE TOLERANCIA
     }
papers-proof-limits = Este certificado recoge una sola prueba de este latiguillo en la fecha indicada. No describe su estado posterior: inspeccione el latiguillo antes de usarlo. Prevalecen los datos de los fabricantes de la manguera y de los racores.
papers-own-statement = Esta es la declaración propia de { $shop } sobre su trabajo y sus pruebas. No es un certificado de inspección de un organismo independiente.
papers-chain = Registros hasta el eslabón { $head } de la cadena. Con él, «tagger audit --head» muestra si alguno se ha modificado desde entonces.
## The fitter's card, in the bag with the hose assembly

papers-card-title = Montaje de este latiguillo
papers-card-file-title = Ficha de montaje { $number }
papers-card-scan = Escanee el código antes de montar: la página indica si el latiguillo se ha retirado del servicio o si algún valor ha cambiado desde que se imprimió esta ficha.
papers-card-end = { $end }: { $what }
papers-card-screen = { $n }. { $title }
papers-card-screen-end = { $n }. { $title }: extremo { $end }
papers-card-sources = Fuentes: { LIST($sources) }
papers-order = Referencia del pedido
papers-method = Método
papers-gauge = Manómetro
papers-gauge-valid-until = Calibración del manómetro válida hasta
papers-no-batch = La etiqueta { $number } no se probó en un lote.
    .mend = Use el certificado de este latiguillo.
papers-batch-file-title = Prueba de presión, lote { $batch }
papers-batch-title = Certificado de prueba de presión - lote de latiguillos
papers-batch-tested-title = Registro de ensayo a presión - lote de latiguillos
papers-batch-number = Certificado { $batch }
papers-batch-result = Prueba superada: { $passed } de { $count }
papers-batch-not-all = No todos los latiguillos superaron la prueba: lea abajo el resultado de cada uno.
papers-batch-members = Latiguillos probados: { $count }
papers-batch-crimp = { $holds ->
        [in] { $measured } mm ({ $low } a { $high })
       *[out] { $measured } mm ({ $low } a { $high }): FUERA DE TOLERANCIA
     }
papers-batch-withdrawn = RETIRADO - no utilizar
papers-batch-void = ANULADO - no utilizar
papers-batch-tested-again = probado de nuevo el { $day }: véase su propio certificado
papers-batch-limits = Este certificado recoge una prueba de estos latiguillos en la fecha indicada. No describe su estado posterior: inspeccione cada latiguillo antes de usarlo. Prevalecen los datos de los fabricantes de la manguera y de los terminales.

## Letters about a withdrawal

papers-letter-title = Retirada { $withdrawal }
papers-letter-owner = Al propietario de estos latiguillos
papers-letter-heading = No use los latiguillos indicados aquí
papers-letter-made-from = Se fabricaron con el lote de manguera { $lot }.
papers-letter-fittings = Llevan racores del lote { $lot }.
papers-letter-reason = Están retirados. Motivo: { $reason }
papers-letter-steps = Pare la máquina y consígnela. Libere toda la presión acumulada como indica el manual de la máquina. Compruebe el número de etiqueta de cada latiguillo, ponga fuera de servicio los latiguillos indicados aquí y llámenos: se los sustituiremos.
papers-letter-injury = El aceite a presión que penetra en la piel es una urgencia, por pequeña que sea la herida: acuda de inmediato a un hospital.

## The call list

papers-call-customer = Cliente
papers-call-number = Número de etiqueta
papers-call-machine = Máquina
papers-call-position = Posición
papers-call-hose = Manguera
papers-call-lots = Lotes
papers-call-built_on = Fabricado el
papers-call-replaced_by = Sustituido por
papers-call-contact = Contacto
papers-call-phone = Teléfono
papers-call-email = Correo electrónico

## A customer's list read in

papers-list-too-large = El archivo { $name } supera el límite de { $most } MB.
    .mend = Divídalo en varias listas.
papers-list-no-rows = El archivo { $name } no tiene filas de datos.
    .mend = Añada una fila por especificación.
papers-list-column-not-read = No se conoce ningún campo para el encabezado «{ $heading }», y la columna tiene datos.
    .mend = Asigne la columna a un campo, omítala o elimínela de la lista.
papers-list-word-not-known = «{ $word }» no es un término conocido.
    .mend = Elija su significado. Los más parecidos: { LIST($nearest) }.
papers-list-cell-outside = Esta celda está a la derecha de la fila de encabezados. Una coma decimal pudo partir un valor en dos.
    .mend = Compruebe la fila: escriba 49.25 o ponga "49,25" entre comillas y borre lo que sobre.
papers-list-too-many-rows = El archivo { $name } tiene más de { $most } filas.
    .mend = Divídalo en varias listas.
papers-list-matched-twice = El campo { $column } está asignado dos veces.
    .mend = Asigne cada campo una sola vez.
papers-list-damaged = La lista se dañó durante la transmisión.
    .mend = Vuelva a subir el archivo.

## A tag or a lot that was scanned at the bench

papers-scanned-tag = Especificación copiada de la etiqueta { $number }.
papers-scanned-tag-withdrawn = Especificación copiada de la etiqueta { $number }. RETIRADA, no usar: { $reasons }
papers-scanned-tag-unknown = La etiqueta { $number } no figura en nuestros registros: la especificación procede solo de la etiqueta. Compruébela en el latiguillo antes de fabricar.
papers-scanned-tag-differ = Etiqueta { $number }: la etiqueta y nuestro registro difieren. La especificación procede del registro. Averigüe cuál es el correcto antes de fabricar.
papers-scanned-tag-differ-withdrawn = Etiqueta { $number }: la etiqueta y nuestro registro difieren. La especificación procede del registro. Averigüe cuál es el correcto antes de fabricar. RETIRADA, no usar: { $reasons }
papers-scanned-tag-damaged = Etiqueta { $number }: el código de la etiqueta está dañado. La especificación procede de nuestro registro. Compruébela en el latiguillo.
papers-scanned-tag-damaged-withdrawn = Etiqueta { $number }: el código de la etiqueta está dañado. La especificación procede de nuestro registro. Compruébela en el latiguillo. RETIRADA, no usar: { $reasons }
papers-scanned-signature = { $said } Firma: { $signature }.
papers-scanned-signature-broken = { $said } Firma: { $signature }. { $why }
papers-scanned-hose-lot = Lote de manguera { $lot }: { LIST($hoses) }.
papers-scanned-hose-lot-withdrawn = Lote de manguera { $lot }: { LIST($hoses) }. RETIRADO, no usar: { $reasons }
papers-scanned-fitting-lot = Lote de racores { $lot }.
papers-scanned-fitting-lot-withdrawn = Lote de racores { $lot }. RETIRADO, no usar: { $reasons }
papers-scanned-unknown = { $text }: primer uso de este lote.
papers-scanned-unknown-withdrawn = { $text }: primer uso de este lote. RETIRADO, no usar: { $reasons }
papers-scanned-nothing = No se ha escaneado nada. Escanee el código de nuevo.
papers-scanned-hose = Referencia { $part }: { LIST($hoses) }.
papers-scanned-fitting = Referencia { $number }: { $end }.

papers-export-everything = Todo lo que guarda el sistema de etiquetas, en formatos abiertos (UTF-8).
papers-export-assemblies = un latiguillo por línea: número, especificación, lo que decían entonces las tablas, lo que dice la etiqueta
papers-export-table = lo mismo en forma de tabla; sus columnas de especificación se pueden volver a leer como lista
papers-export-events = el historial, lo más antiguo primero
papers-export-orders = solicitudes de pedido con sus pasos
papers-export-withdrawals = retiradas, vigentes y levantadas
papers-export-recipes = especificaciones guardadas con un nombre
papers-export-crimps = fichas de prensado vigentes, cada una con su tolerancia y su fuente; un prensado medido figura en events.jsonl con la tolerancia con la que se comparó
papers-export-values = lo que los fabricantes dicen de las piezas, tal como lo guarda el taller; también los valores sustituidos y retirados
papers-export-fittings = los racores del taller, por referencia
papers-export-fitted = avisos de que se montó un latiguillo, con lo que decidió el taller
papers-export-photos = fotos de pedidos y avisos; cada una es el archivo photos/<id>.jpg
papers-export-left-out = No se incluyen: personas, dispositivos, contraseñas y sesiones, ni los mensajes aún no enviados.
papers-export-digits = Los dígitos de una etiqueta se leen sin este sistema: su README describe la estructura bit a bit.
