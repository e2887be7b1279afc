# What is said of a list of specs, from CSV or a spreadsheet.

lists-not-csv = Esto no es un archivo CSV.
    .mend = En la hoja de cálculo, guárdelo como .csv o .xlsx.
lists-not-a-spreadsheet = Esto no es una hoja de cálculo.
    .mend = Guárdelo como .xlsx o .csv.
lists-empty = El archivo está vacío.
    .mend = Añada una fila de encabezado y una fila por especificación.
lists-no-rows = El archivo tiene fila de encabezado, pero no datos.
    .mend = Añada una fila por especificación.
lists-outside-header = Esta celda está fuera de la fila de encabezado.
    .mend = Añada un encabezado de columna o borre la celda.
lists-unknown-column = Esta columna no existe.
    .mend = Las columnas son: { LIST($columns) }.
lists-cut-length = La columna «{ $heading }» contiene la longitud de corte de la manguera, no la longitud total del latiguillo.
    .mend = Introduzca la longitud total en una columna propia: la longitud de corte más la cota de cada racor.
lists-unit-not-plain = El encabezado «{ $heading }» no nombra una sola unidad que se lea aquí.
    .mend = Escriba una sola unidad en el encabezado: mm, cm, m, in o ft para una longitud, bar, psi, MPa o kPa para una presión, °C o °F para una temperatura.
lists-column-twice = Esta columna aparece dos veces.
    .mend = Borre una.
lists-became-a-date = La hoja de cálculo convirtió este valor en una fecha (un tamaño como 3/4).
    .mend = Dé a la columna formato de texto e introduzca el valor otra vez.
lists-quantity = Esta cantidad no es válida.
    .mend = Introduzca de 1 a { $maximum }.
lists-formula = Esta celda contiene una fórmula sin valor guardado.
    .mend = Abra el archivo en una hoja de cálculo, guárdelo e inténtelo de nuevo.
lists-too-large = Esta lista es demasiado grande: más de { $cells } celdas, o más de { $megabytes } MB al descomprimirla.
    .mend = Borre las filas y columnas vacías, o divida la lista.
