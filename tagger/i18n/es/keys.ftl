# The shop's signing keys: their file, and the page on which they are printed.

## The key file

keys-not-set = No se ha indicado ningún archivo de claves.
    .mend = Indique en TAGGER_SIGNING_KEY la ruta del archivo de claves.
keys-file-missing = Aquí no hay ningún archivo de claves.
    .mend = Cree uno con «tagger signing-key new» o restaure su copia.
keys-file-there = Ya hay un archivo de claves: { $file }.
    .mend = Omita --published; la numeración de las claves del archivo continúa.
keys-published-broken = Esta no es la lista de claves públicas que publicó el taller.
    .mend = Guarde lo que muestra la dirección del taller seguida de { $at }, de una copia o tal como está en la página de claves.
keys-file-open = Otros usuarios de este ordenador pueden leer el archivo de claves.
    .mend = Permita leerlo solo a su propietario: chmod 600.
keys-file-broken = Esto no es un archivo de claves completo.
    .mend = Restaure su copia.
keys-file-busy = Otra orden está cambiando las claves.
    .mend = Inténtelo de nuevo. Si no hay ninguna orden en curso, borre este archivo.
keys-file-folder = El archivo de claves no se puede escribir aquí.
    .mend = Use una carpeta que exista y en la que pueda escribir.
keys-full = Un taller tiene como máximo 255 claves.
    .mend = Use la última clave.
keys-unknown = No hay ninguna clave con este número.
    .mend = Use un número del 1 al { $count }.

## The key page

keys-page-title = Claves públicas de las etiquetas
keys-page-why = El taller firma el código QR de sus etiquetas. Con estas claves, cualquiera puede comprobar que una etiqueta es de este taller y que nadie ha cambiado sus valores.
keys-page-how = Guarde esta página con los registros. Un teléfono que haya abierto una vez una página de etiqueta del taller comprueba las etiquetas por sí mismo, también sin cobertura. Las claves están también en { $address }.
keys-page-format = Ed25519 (RFC 8032), 32 bytes en hexadecimal. Texto firmado: { $text }, en ASCII.
keys-page-key = Clave
keys-page-days = Validez
keys-page-public = Clave pública
keys-valid-now = Firma desde el { $since }
keys-valid-ended = Firmó del { $since } al { $until }; estas etiquetas siguen siendo válidas
keys-valid-withdrawn = RETIRADA el { $day }: no se fíe de las etiquetas firmadas con ella
