# What the web refuses before a page is reached, and what a scanned text is.
guard-not-your-role = Para esto hace falta la función «{ $role }».
    .mend = Consulte al encargado.
guard-not-your-role-title = Acceso denegado
guard-form-expired = Este formulario ha caducado.
    .mend = Vuelva atrás, recargue la página y envíelo de nuevo.
guard-form-expired-title = Formulario caducado
guard-form-elsewhere = Este formulario se ha enviado desde otro sitio web.
    .mend = Abra la página de la etiqueta y envíelo desde allí.
guard-no-page = Esta página no existe.
    .mend = Elija una del menú o escanee una etiqueta.
guard-no-page-title = No encontrada
guard-database-title = Problema del servidor
guard-too-many-requests = Demasiadas peticiones. Espere un minuto e inténtelo de nuevo.
guard-busy = El servidor ya atiende todas las peticiones que puede.
    .mend = Inténtelo de nuevo dentro de unos segundos. No se ha hecho nada de esta petición.
guard-metrics-listen = Las métricas solo se sirven en esta máquina.
    .mend = Introduzca una dirección como 127.0.0.1:9464.
guard-orders-too-many = Demasiados pedidos desde esta conexión o para esta etiqueta en una hora.
    .mend = Llame al taller o envíelo de nuevo dentro de una hora.
guard-reports-too-many = Demasiadas comunicaciones desde esta conexión o para esta etiqueta en una hora.
    .mend = Llame al taller o envíela de nuevo dentro de una hora.
guard-pin-wrong = El PIN no es el de esta etiqueta.
    .mend = Pida al taller el PIN de esta etiqueta.
guard-pin-tries = Demasiados PIN erróneos.
    .mend = Espere diez minutos.
guard-pictures-too-many = Demasiadas fotos desde esta conexión en una hora.
    .mend = Envíe sin fotos.
guard-pictures-full = El taller no admite más fotos hoy.
    .mend = Envíelo sin fotos o muéstrelas al taller de otro modo.
guard-picture-too-large = La foto supera los { $megabytes } MB.
    .mend = Use una foto más pequeña o envíe sin ella.
guard-picture-unreadable = El archivo no es una foto legible.
    .mend = Use una foto JPEG, PNG o WebP.
guard-password-short = La contraseña es demasiado corta.
    .mend = Use al menos { $least } caracteres.
guard-password-long = La contraseña es demasiado larga.
    .mend = Use como máximo { $most } caracteres.
guard-password-common = La contraseña es de las que se prueban primero.
    .mend = Use una frase de varias palabras que nadie relacione con usted ni con el taller.

## Tags and lots that were scanned

guard-tag-without-spec = La etiqueta { $number } no está en nuestros registros, y un número solo no contiene ninguna especificación.
    .mend = Escanee el código QR de la etiqueta: contiene la especificación completa.
guard-too-large-title = Demasiado grande
guard-too-large = La solicitud supera los { $megabytes } MB. Envíe menos.
