# What the web refuses before a page is reached, and what a scanned text is.
guard-not-your-role = Para esto hace falta la función «{ $role }».
    .mend = Consulte al encargado.
guard-not-your-role-title = Acceso denegado
guard-form-expired = Este formulario ha caducado.
    .mend = Vuelva atrás, recargue la página y envíelo de nuevo.
guard-form-expired-title = Formulario caducado
guard-no-page = Esta página no existe.
    .mend = Elija una del menú o escanee una etiqueta.
guard-no-page-title = No encontrada
guard-too-many-requests = Demasiadas peticiones. Espere un minuto e inténtelo de nuevo.
guard-password-short = La contraseña es demasiado corta.
    .mend = Use al menos { $least } caracteres.

## Tags and lots that were scanned

guard-tag-without-spec = La etiqueta { $number } no está en nuestros registros, y un número solo no contiene ninguna especificación.
    .mend = Escanee el código QR de la etiqueta: contiene la especificación completa.
guard-hose-standard-unknown = { $name } no es una norma de manguera conocida.
    .mend = Elija una de la lista.
