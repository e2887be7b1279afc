# What is said of a spec that does not describe an assembly, of values with units, and of files that cannot be read.
# Each reads alone and after a caption: "Length: This value is missing."

## Fields of an input

spec-missing = Falta este valor.
    .mend = Introdúzcalo.
spec-unknown-field = Este campo no existe.
    .mend = Elimínelo o revise cómo está escrito.
spec-not-one-of = Este valor no existe.
    .mend = Use uno de estos: { LIST($choices, style: "or") }.
spec-bar = { $number } bar
spec-not-more-than = Este valor no es superior a { $limit }.
    .mend = Introduzca más de { $limit }.
spec-below-minimum = Este valor es inferior al mínimo de { $minimum }.
    .mend = Introduzca { $minimum } o más.
spec-above-maximum = Este valor es superior al máximo de { $maximum }.
    .mend = Introduzca { $maximum } o menos.
spec-too-long = Este texto tiene más de { $maximum } caracteres.
    .mend = Acórtelo a { $maximum } caracteres.
spec-cleanliness-code = Esto no es un código de limpieza ISO 4406.
    .mend = Indique tres números de escala, ninguno mayor que el anterior ni que 28, por ejemplo 18/16/13.
spec-empty = Este valor está vacío.
    .mend = Introduzca un valor.
spec-not-text = Esto no es texto.
    .mend = Póngalo entre comillas.
spec-not-a-whole-number = Esto no es un número entero.
    .mend = Introduzca un número entero, por ejemplo 12.
spec-not-a-number = Esto no es un número.
    .mend = Introduzca un número, por ejemplo 1.5.
spec-not-yes-or-no = Esto no es true ni false.
    .mend = Introduzca true o false.
spec-not-a-list = Esto no es una lista.
    .mend = Use una lista JSON, por ejemplo ["uno", "dos"].
spec-not-an-object = Esto no es un objeto JSON.
    .mend = Use un objeto JSON, por ejemplo { $example }.
spec-not-a-date = Esto no es una fecha.
    .mend = Introduzca la fecha como AAAA-MM-DD, por ejemplo 2027-03-31.
spec-not-the-pattern = Este valor no tiene la forma exigida.
    .mend = Debe cumplir el patrón { $pattern }.

## An end, the whole assembly, its tightening

spec-enter-size = { $sizing ->
    [pipe] Introduzca el tamaño nominal de la rosca de tubería («{ $key }»), por ejemplo 3/4.
    [tube] Introduzca el diámetro exterior del tubo en mm («{ $key }»), por ejemplo 12.
    [thread] Introduzca la rosca («{ $key }»), por ejemplo M22x1.5.
   *[dash] Introduzca el tamaño dash («{ $key }»), por ejemplo 12.
 }
spec-dash-and-size = Indique solo uno de los dos: tamaño dash o tamaño.
    .mend = { $enter }
spec-sized-by-dash = Esta conexión se designa por tamaño dash: { $connection }.
    .mend = { $enter }
spec-not-sized-by-dash = Esta conexión no se designa por tamaño dash: { $connection }.
    .mend = { $enter }
spec-size-of-another-series = Este tamaño nombra otra serie que la del extremo: { $connection }, serie { $series }.
    .mend = Corrija el tamaño, la conexión o la serie: de ella dependen las roscas y la presión.
spec-form = Esta forma no existe para la conexión { $connection }.
    .mend = Use una de estas: { LIST($forms, style: "or") }.
spec-description = La descripción solo vale para un extremo con otra conexión («other»).
    .mend = Bórrela.
spec-description-missing = La conexión no está descrita.
    .mend = Indique qué es, con la rosca, en 24 caracteres simples como máximo («description»), por ejemplo Bloque M20x1.5.
spec-description-only = Un extremo con otra conexión no tiene tamaño.
    .mend = Bórrelo: basta la descripción.
spec-drop-of-straight = La altura del codo no corresponde a un extremo recto.
    .mend = Bórrela o elija un codo.
spec-clocking-missing = Los dos extremos son codos y falta el ángulo de orientación.
    .mend = Sostenga el latiguillo con el extremo A en primer plano y el codo A hacia abajo, y mire a lo largo de la manguera en dirección al extremo B. Introduzca el ángulo en sentido antihorario del codo A al codo B, de 0 a 359°.
spec-clocking-without-elbows = El ángulo de orientación solo corresponde cuando los dos extremos son codos.
    .mend = Bórrelo.
spec-flats-incomplete = Un número de caras necesita un mínimo, un máximo y un punto de partida.
    .mend = Introduzca los tres.
spec-torque-without-maximum = Hay un par mínimo, pero falta el máximo.
    .mend = Introduzca el par máximo.

## Values with a unit

spec-enter-length = Introduzca una longitud, por ejemplo 1250, «1250 mm» o «49 1/4 in».
spec-enter-pressure = Introduzca una presión, por ejemplo 207, «207 bar» o «3000 psi».
spec-enter-torque = Introduzca un par, por ejemplo 102, «102 Nm» o «75 lbf·ft».
spec-enter-temperature = Introduzca una temperatura, por ejemplo 100, «100 C» o «212 F».
spec-unit-no-number = Esto no es un número.
    .mend = { $enter }
spec-unit-not-finite = Esto no es un número finito.
    .mend = { $enter }
spec-unit-unreadable = Esto no es un número con unidad.
    .mend = { $enter }
spec-unit-over-zero = Esto divide por cero.
    .mend = { $enter }
spec-unit-bare-fraction = La fracción { $fraction } no tiene unidad.
    .mend = Introduzca la unidad, por ejemplo «49 1/4 in».
spec-unit-comma = La coma es ambigua (miles o decimales).
    .mend = Escriba 1250 o 1.25.
spec-unit-unknown = Unidad desconocida: { $unit }.
    .mend = { $enter }

## Text from a file

spec-not-utf8 = Este texto no está en UTF-8. Quizá se guardó como Latin-1 o Windows-1252.
    .mend = Guarde el archivo como UTF-8.
spec-encoding-damaged = Este texto empieza como { $encoding }, pero está dañado.
    .mend = Guarde el archivo como UTF-8.
spec-not-json = El JSON no es válido en la línea { $line }, columna { $column }.
    .mend = Revise las comillas, las comas y los corchetes en esa posición.
spec-json-unreadable = El JSON no es válido.
    .mend = Revise las comillas, las comas y los corchetes.
spec-too-deep = Los datos tienen demasiados niveles anidados.
    .mend = Envíe solo los campos de la especificación.
spec-number-too-long = Un número tiene demasiados dígitos.
    .mend = Introduzca un valor realista.
spec-half-character = El texto contiene medio carácter, que no se puede guardar.
    .mend = Introduzca el texto de nuevo.
spec-twice = Esta entrada aparece dos veces.
    .mend = Borre una.

## Files

spec-file-missing = Ese archivo no existe.
    .mend = Revise el nombre del archivo.
spec-file-folder = Es una carpeta, no un archivo.
    .mend = Indique el nombre de un archivo.
spec-file-denied = Acceso denegado.
    .mend = Revise los permisos del archivo y de su carpeta.
spec-file-disk-full = El disco está lleno.
    .mend = Libere espacio en el disco.
spec-file-unusable = El archivo no se puede usar ({ $reason }).
    .mend = Revise la ruta y el disco.

## Settings

spec-setting-address = Esto no es la dirección de un servidor.
    .mend = Use una como { $example }.
spec-setting-days = No se aceptan menos de { $least } días: un error borraría a quién llamar.
    .mend = Introduzca { $least } o más, o 0 para conservarlo siempre.
spec-setting-language = Este idioma no está disponible.
    .mend = Use uno de estos: { LIST($languages, style: "or") }.
