# El cartel de pared y el cuaderno de bolsillo: conexiones, roscas, asientos, parecidas, caras.

charts-wall-title = Conexiones de latiguillos hidráulicos
charts-wall-stock-title = Conexiones de latiguillos hidráulicos en nuestro almacén
charts-how = Cada unión está cortada por su eje, sin escala. En negro: donde sella.
charts-alike-means = { $sign } y un número: la misma rosca o casi la misma, o el mismo tamaño de brida, que la conexión de ese número. Las piezas pueden unirse y aun así no sellar o no aguantar. No conecte nunca solo por la rosca: compare antes asiento, cono y tubo.
charts-care = Descargue toda la presión antes de aflojar una unión. Los datos del fabricante del racor prevalecen sobre este documento. Una rosca no indica la presión admisible.
charts-unverified = { $sign } sin verificar: confirme el valor con el fabricante del racor.
charts-sources = Fuentes
charts-source = { $number } { $source }
charts-numbered = { $number } { $family }
charts-alike = { $sign } No confundir con: { LIST($families) }
charts-stock = Nuestro almacén:
charts-stock-item = { $size } { $number }

## Columnas

charts-column-size = Tamaño
charts-column-thread = Rosca
charts-column-male = ⌀ ext. macho
charts-column-male-mm = Macho mm
charts-not-known = no se conoce
charts-column-female = ⌀ int. hembra
charts-column-pitch = Paso
charts-column-tpi = hilos/in
charts-column-dash = Manguera
charts-column-head = Cabeza
charts-column-bolts = Entre tornillos
charts-column-screws = Tornillos
charts-column-alike = { $sign } como

## Qué se mide en un extremo sin rosca propia

charts-measured = Se mide: { $what }.
charts-what-probe_nose = punta del macho
charts-what-flat_nose = punta plana del macho
charts-what-spigot = espiga
charts-what-tube = tubo
charts-what-ring_hole = agujero del ojo

## Cómo sella la unión

charts-seals-cone = Sella en un cono a { $half } del eje ({ $included } en total).
charts-where-outside = Nariz, sobresale: { LIST($forms) }.
charts-where-inside = Embudo, queda dentro: { LIST($forms) }.
charts-seals-face = Sella con una junta tórica en la cara plana.
charts-seals-boss = Sella con una junta tórica bajo el resalte, en el chaflán de la boca.
charts-seals-flat = Sella con una arandela en una cara plana.
charts-seals-or-flat = O con una arandela en una cara plana.
charts-seals-taper = Sella en su rosca cónica.
charts-seals-head = Sella con una junta tórica en la cara de la cabeza de brida, sujeta con cuatro tornillos.
charts-seals-coupler = Se encaja y se enclava. No se aprieta nada.
charts-seals-staple = Se encaja, sella con una junta tórica y la sujeta una grapa. No se aprieta nada.
charts-seals-standpipe = Tubo liso: una tuerca y un anillo cortante lo aprietan en un cono de 24°.

## El cuaderno

charts-booklet-title = Roscas y conexiones
charts-booklet-sub = Cuaderno de bolsillo para latiguillos hidráulicos
charts-booklet-cautions = Antes de empezar
charts-booklet-measure = Cómo medir
charts-booklet-tables = Tablas de roscas
charts-booklet-flats = Caras por tamaño dash
charts-sources-of = Fuentes: { LIST($sources) }
charts-measure-clean = Limpie el extremo. Una rosca dañada o gastada da una medida falsa: mida en varios sitios.
charts-measure-outside = Rosca macho: diámetro exterior, sobre las crestas. Una rosca cónica crece hacia la manguera: mídala en varios sitios.
charts-measure-inside = Rosca hembra: diámetro interior, sobre las crestas, con las puntas de interiores.
charts-measure-pitch = Paso: ponga una galga de roscas a contraluz. Debe ajustar sin holgura en toda su longitud. Sin galga, mida de cresta a cresta en diez vueltas y divida entre diez.
charts-measure-seat = Asiento: use una galga de asientos y mire: ¿un cono sobresale como una nariz, queda dentro como un embudo, o hay una junta tórica? 37° y 45° se cuentan desde el eje, 24° y 60° de lado a lado.
charts-measure-nose = Cono de 24°: mida también la punta o el alojamiento. Hay series y tamaños de tubo con la misma rosca.
charts-measure-compare = Compare todos los valores con las tablas. Si quedan dos conexiones, no adivine: pregunte o mida otra vez.
charts-tables-about = Los diámetros son nominales. Una rosca macho mide esto o un poco menos; una rosca hembra, esto o un poco más.
charts-flats-about = En negrita: el número de caras que llevan nuestras etiquetas. Debajo: lo que dan otras fuentes para una tuerca de acero en un latiguillo. Un número de caras vale solo desde el punto de partida indicado al lado. Contado desde otro punto, la unión puede fugar o agrietarse su asiento.
charts-flats-method = En una unión use las caras o el par, nunca ambos.
charts-flats-dash = Dash
charts-flats-count = Caras
charts-flats-start = Se cuenta
charts-flats-none = Para las conexiones que no figuran aquí no se da ningún número de caras: use el par de la etiqueta o el del fabricante del racor.
charts-any-size = todas
charts-fold-title = Cómo plegar este cuaderno
charts-fold = Imprima a tamaño real por las dos caras, volteando las hojas por el borde largo. Corte cada hoja por la línea del medio. Ponga el montón de mitades de arriba sobre el montón de mitades de abajo, con la portada encima. Doble hacia atrás por la línea de puntos, para que la portada quede fuera, y grape el doblez.

## Rechazado

charts-no-stock = Ningún racor de la lista del taller tiene una conexión de las tablas.
    .mend = Añada primero los racores del taller o haga el cartel de todas las conexiones.
charts-too-full = El cartel no cabe en { $paper }: sus letras tendrían { $cap } mm de alto, y { $least } mm es el mínimo.
    .mend = Elija A2 u omita los números de almacén.
charts-not-a-paper = { $paper } no es un tamaño de papel de esta hoja.
    .mend = Use uno de estos: { LIST($papers, style: "or") }.

## La página que los crea

charts-page-title = Cartel y cuaderno
charts-page-chart = Cartel de pared
charts-page-booklet = Cuaderno de bolsillo
charts-page-paper = Papel
charts-page-connections = Conexiones
charts-page-all = todas
charts-page-stock = de nuestros racores
charts-page-numbers = de nuestros racores, con números de almacén
charts-page-make = Crear PDF
charts-page-chart-hint = Cada conexión en corte, con sus roscas, cómo sella y con cuáles se confunde, en una página.
charts-page-booklet-hint = Tablas de roscas, caras, cómo medir. Cuatro páginas por cara, para cortar y plegar.
charts-page-form = Forma
charts-page-sheets = hojas para plegar
charts-page-pages = página a página
