# La API JSON: por qué se rechaza la petición de un programa.

rest-no-token = La petición no lleva un token de dispositivo válido.
    .mend = Envíelo en la cabecera: Authorization: Bearer ...
rest-role-too-low = Esta petición requiere un token con el rol { $role } o superior.
    .mend = Use un token con ese rol o pida al encargado que cree uno.
rest-no-such-address = No hay nada en esta dirección.
    .mend = Compruebe la dirección en la descripción de la API.
rest-no-such-method = Esta dirección no admite este método.
    .mend = Compruebe el método en la descripción de la API.
rest-too-large = La petición supera los { $megabytes } MB.
    .mend = Envíe menos.
rest-cannot-be-read = La petición no se puede leer.
    .mend = Corrija cada campo indicado en problems.
rest-cannot-be-stored = La petición contiene un carácter o un número que no se puede guardar.
    .mend = Compruebe sus textos y números.
rest-database-away = La base de datos no está disponible.
    .mend = Repita la petición con la misma Idempotency-Key.
rest-failed = Error del servidor.
    .mend = Los detalles están en el registro del servidor.

rest-built-in-future = La fecha de fabricación { $date } está en el futuro.
    .mend = Introduzca el día en que se fabricó o no la indique.
rest-crimp-twice = Este extremo se nombra dos veces.
    .mend = Envíe un diámetro por extremo.
rest-one-of-text-and-digits = Hace falta text o digits, y solo uno de los dos.
    .mend = Envíe uno de los dos.
rest-not-a-column = { $name } no es una columna conocida.
    .mend = Use una de estas: { LIST($columns, style: "or") }.
rest-columns-do-not-match = match nombra { $given ->
        [one] { $given } columna
       *[other] { $given } columnas
    } y el archivo tiene { $columns }.
    .mend = Indique una por cada columna del archivo; con un nombre vacío la columna se omite.
rest-machine-without-hoses = No hay latiguillos registrados para { $machine }.
    .mend = Compruebe el nombre de la máquina y el del cliente.
rest-nothing-to-change = La petición no cambia nada.
    .mend = Envíe role, active o password.
rest-nobody-affected = La retirada del servicio no afecta a ningún latiguillo registrado.
    .mend = No hay clientes afectados.
rest-words-not-read = Las palabras no son un objeto JSON.
    .mend = Envíe un objeto cuyos nombres sean las palabras del archivo y cuyos valores sean los nuestros.
rest-words-not-a-value = Ninguna columna asignada admite { $value } para { $word }.
    .mend = Use un valor que la prueba indique para esta palabra, o asigne su columna.
rest-form-one-tag = Solo un PDF contiene varias etiquetas.
    .mend = Use pdf, o pida las etiquetas de una en una.
rest-printed-already = Ya impreso o enviado a una impresora: { LIST($numbers) }. Una segunda etiqueta del mismo número puede acabar en otro latiguillo.
    .mend = Para imprimir de nuevo, envíe again: true, con el motivo.
