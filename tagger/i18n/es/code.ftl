# What is said of tag numbers, links, tag codes, photos and symbols that cannot be read or made.

## Tag numbers

code-character-at = «{ $character }» en la posición { $place }
code-number-characters = Este número contiene caracteres que no se usan en los números de etiqueta: { LIST($characters) }.
    .mend = Compare esas posiciones con la etiqueta.
code-number-length = Este número tiene { $count } de los { $right } caracteres de un número de etiqueta.
    .mend = Compárelo con la etiqueta: XXXXX-XXXXXX.
code-number-check = El carácter de control no coincide: al menos un carácter es erróneo.
    .mend = Compare el número con la etiqueta, carácter por carácter.
code-number-check-near = El carácter de control no coincide: al menos un carácter es erróneo.
    .mend = Compare el número con la etiqueta, carácter por carácter. Puede ser { LIST($numbers, style: "or") }.

## Links

code-link-address = Esto no es una dirección web.
    .mend = Use una como { $example }.
code-link-host = La dirección debe ser solo un servidor: letras, dígitos, puntos y guiones.
    .mend = Use una como { $example }.
code-link-unknown = Este no es el enlace de una etiqueta.
    .mend = Escanee el código QR de la etiqueta o introduzca el número de etiqueta.
code-number-alone = Es solo un número de etiqueta, sin la especificación.
    .mend = Para ver la especificación, escanee el código QR o abra el registro de la etiqueta (tagger show NUMBER).

## Tag codes: the digits in the link

code-version = El código de la etiqueta usa la versión de formato { $version }, que este programa no admite.
    .mend = Actualice el programa.
code-hose-tail = El tamaño dash de la espiga no es el de la manguera.
    .mend = Use { $dash }.
code-too-large = Este valor es demasiado grande para el código de la etiqueta.
    .mend = Revise el valor.
code-not-a-size = Esto no es un tamaño.
    .mend = Revise el tamaño.
code-not-stored = Este nombre no se puede guardar en una etiqueta.
    .mend = Elija un nombre de la lista.
code-text = Este texto no se puede guardar en una etiqueta: como máximo { $maximum } caracteres, solo letras sin acento, dígitos y signos simples.
    .mend = Use un nombre más corto o más simple.
code-incomplete = El código de la etiqueta está incompleto.
    .mend = Escanee la etiqueta otra vez. Si no basta, introduzca el número de etiqueta.
code-not-digits = Estos dígitos no son el código de una etiqueta.
    .mend = Escanee la etiqueta otra vez. Si no basta, introduzca el número de etiqueta.
code-damaged = El código de la etiqueta está dañado (error de control).
    .mend = Escanee la etiqueta otra vez. Si no basta, introduzca el número de etiqueta.
code-surplus = Al código de la etiqueta { $bits ->
    [one] le sobra { $bits } bit
   *[other] le sobran { $bits } bits
 }.
    .mend = Escanee la etiqueta otra vez. Si no basta, introduzca el número de etiqueta.
code-unknown-point = El código de la etiqueta usa un número que este programa no conoce.
    .mend = Actualice el programa.

## Photos

code-photo-too-large = La imagen es demasiado grande.
    .mend = Use una foto de { $megapixels } megapíxeles como máximo.
code-photo-unreadable = Esto no es una imagen legible.
    .mend = Use un archivo PNG, JPEG, GIF o WebP.
code-photo-several = La foto muestra más de una etiqueta: { LIST($numbers) }.
    .mend = Fotografíe una sola etiqueta cada vez y tape las demás.
code-photo-other = La foto muestra un código que no es de una etiqueta.
    .mend = Fotografíe la etiqueta misma.
code-photo-none = La foto no muestra ningún código legible.
    .mend = Acérquese, no se mueva, evite los reflejos o introduzca el número de etiqueta.

## QR code and bar code

code-symbol-version = Esta versión de código QR es demasiado pequeña para el texto con el nivel { $level }.
    .mend = Use la versión { $version }.
code-symbol-letters = Este texto no cabe en un código de barras (Code 128).
    .mend = Use letras sin acento, dígitos y signos simples (ASCII imprimible).
code-symbol-level = Esto no es un nivel de corrección de errores de los códigos QR.
    .mend = Use L, M, Q o H.
code-symbol-too-long = El texto es demasiado largo para un código QR.
    .mend = Acorte el enlace.
