# The fit guide: its steps, what is taken for what, and where the practice comes from.

## Titles of the screens

fit-screen-safe = Asegure la máquina
fit-screen-injection = Protéjase
fit-screen-old = Retire el latiguillo viejo
fit-screen-new = Compruebe el latiguillo nuevo
fit-screen-match = Compruebe la unión
fit-screen-route = Coloque la manguera
fit-screen-clocking = Oriente los codos
fit-screen-order = Qué extremo primero
fit-screen-join = Conecte
fit-screen-tighten = Apriete
fit-screen-leaks = Compruebe la estanqueidad
fit-screen-after = Compruebe otra vez

## Before you start

fit-defer = Siga el manual del fabricante de la máquina, los datos del fabricante del racor y la normativa local. Prevalecen sobre esta guía. Este trabajo es solo para personas con formación, y habilitadas donde la ley lo exija.
fit-stop_lock = Pare la máquina, retire la llave de contacto y consigne la máquina: bloqueada y señalizada. Baje o calce toda carga que pueda caer o moverse.
fit-depressurise = Descargue toda la presión como indica el manual de la máquina: con el motor parado, accione cada mando y descargue los acumuladores. Nunca afloje una unión con presión.
fit-zero = Compruebe que la presión es cero: lea un manómetro en una toma de presión de esta línea antes de aflojar una unión. Sin manómetro, trate la línea como si tuviera presión.
fit-cool = Deje enfriar el aceite. Lleve protección ocular y guantes resistentes al aceite. Ponga una bandeja bajo la unión.
fit-injection = Nunca busque una fuga con la mano. El aceite a presión atraviesa los guantes y la piel. Si el aceite penetra bajo la piel, acuda de inmediato a urgencias quirúrgicas, aunque la herida parezca leve.
fit-photo = Fotografíe el latiguillo viejo antes de aflojarlo: su recorrido, sus abrazaderas y hacia dónde apunta cada extremo.
fit-cap = Retire el latiguillo viejo. Tape enseguida cada boca y cada línea abierta: la suciedad daña bombas y válvulas.
fit-why = Averigüe por qué falló el viejo: ¿rozado, doblado, demasiado corto, retorcido, sobrecalentado, con la cubierta ampollada? Elimine la causa antes de montar otro igual.

## Check the parts

fit-pressure = Presión de trabajo máxima: { $pressure }. Compruebe que la válvula limitadora de la máquina no está tarada más alta.
fit-at_most = La presión solo se conoce en parte: las piezas conocidas admiten como máximo { $at_most }. Compruebe que la válvula limitadora no está tarada más alta y que el fabricante de la otra pieza también admite la presión.
fit-no_pressure = No se conoce la presión de trabajo de este latiguillo. No lo monte hasta que los datos del fabricante de la manguera y del fabricante del racor la hayan confirmado.
fit-compare = Compare el latiguillo nuevo con el viejo: los extremos, los asientos, la longitud y los ángulos de los codos deben coincidir. Si algo difiere, no lo monte.
fit-damage_flare = Limpie y revise los dos asientos y las dos roscas. Rechace una pieza con una grieta, una mella que cruce el asiento o una rosca dañada.
fit-damage = Limpie y revise las roscas y las caras de sellado. Rechace una pieza con una grieta, un arañazo que cruce la cara o una rosca dañada.
fit-seat_37_45 = Compruebe el asiento con una galga de asientos. En este tamaño los abocardados de 37° y 45° tienen la misma rosca. Enroscan entre sí, pero no sellan de forma segura.
fit-cone_bspp_jis = Compruebe el cono. En este tamaño los extremos BSPP y JIS de 60° tienen la misma rosca, pero los conos invertidos. Enroscan entre sí, pero no sellan.
fit-cone_metric = Compruebe el cono con una galga: en este tamaño los conos métricos de 60°, los conos de 24° y los abocardados de 30° comparten roscas. Se enroscan entre sí, pero no cierran.
fit-flare_inverted = Compruebe el asiento: el abocardado invertido tiene el cono dentro de la boca hembra. En este tamaño su rosca es la de los abocardados de 37° y 45°, pero no cierra con ellos.
fit-npt_bspt = Compruebe la rosca con una galga de roscas. En este tamaño NPT y BSP tienen 14 hilos por pulgada y empiezan a enroscar, pero las roscas de 60° y 55° no sellan entre sí.
fit-flange_code61 = Es una brida Código 61: la boca, las semibridas y los tornillos deben ser también Código 61. La cabeza Código 62 es más gruesa y más ancha, y la distancia entre tornillos es mayor.
fit-flange_code62 = Es una brida Código 62: la boca, las semibridas y los tornillos deben ser también Código 62. La cabeza Código 61 es más delgada y más estrecha, y la distancia entre tornillos es menor.
fit-screw_length = Compruebe la longitud de los tornillos: uno demasiado corto arranca la rosca y uno demasiado largo hace tope antes de apretar. Use la longitud que indica el fabricante de la brida.
fit-oring = Use una junta tórica nueva, apta para el fluido, y acéitela con aceite limpio del sistema. Debe quedar en su ranura y no estar cortada, aplastada ni endurecida.
fit-oring_cone = Si el cono lleva junta tórica, revísela: no debe estar cortada, aplastada ni endurecida. En caso de duda cámbiela, y acéitela con aceite limpio del sistema.
fit-clean_inside = No quite los tapones hasta el momento de conectar. El interior debe estar limpio y seco.

## Route the hose

fit-lay_line = Coloque la manguera sin torsión: su línea de marcado debe quedar recta, y la manguera solo debe curvarse en un plano.
fit-bend = No curve la manguera con un radio menor de { $bend_radius }, medido por el lado interior de la curva. Deje recto, junto a cada racor, un tramo de al menos 1,5 veces el diámetro exterior de la manguera.
fit-no_bend = No se conoce el radio mínimo de curvatura: use el valor del fabricante de la manguera.
fit-slack = Deje holgura: con presión, la manguera puede alargarse un 2 % o acortarse un 4 %.
fit-rub = Mantenga la manguera lejos de piezas calientes, cantos vivos y piezas móviles, en todo el recorrido de la máquina.
fit-elbow = Oriente el codo antes de apretar y manténgalo en su posición.
fit-clocking = Ángulo de orientación { $clocking }: sujete el extremo A más cerca de usted con el codo A hacia abajo. Visto a lo largo de la manguera, el codo B queda girado { $clocking } en sentido antihorario desde el codo A.
fit-clocking_clockwise = Ángulo de orientación { $clocking }, sentido horario: sujete el extremo A más cerca de usted con el codo A hacia arriba. Visto a lo largo de la manguera, el codo B queda girado { $clocking } en sentido horario desde el codo A.
fit-clocking_nut = Ajuste este ángulo antes de que la tuerca del extremo que se conecta el último esté apretada. Sujete ahí el codo con una llave y gire solo la tuerca. Nunca retuerza la manguera.
fit-clocking_screws = Ajuste este ángulo mientras los tornillos, o el tornillo, del extremo que se conecta el último estén apretados solo con los dedos. Después apriete solo estos. Nunca retuerza la manguera.
fit-clocking_locknut = Ajuste este ángulo antes de que la contratuerca del extremo que se conecta el último esté apretada. Sujete ahí el codo y gire solo la contratuerca. Nunca retuerza la manguera.
fit-rigid_first = Conecte primero este extremo, mientras el otro está libre. Gire el racor por su propio hexágono, sujete con una segunda llave el adaptador en el que se enrosca y deje que gire toda la manguera.
fit-rigid_second = Este extremo no tiene tuerca loca. No lo enrosque con el otro extremo conectado: la manguera se retorcería. Con la manguera libre, monte en él una unión o un adaptador giratorio y conecte este solo por su tuerca.
fit-rigid_pair = Ninguno de los extremos tiene tuerca loca. Antes de conectar este, monte una unión o un adaptador giratorio en el otro: después ya no se puede enroscar sin retorcer la manguera.
fit-mating_first = Conecte primero este extremo. Si la pieza opuesta no tiene tuerca propia, gire el racor por su hexágono mientras el otro extremo está libre.
fit-mating_second = Este extremo no tiene tuerca: gire solo la de la pieza opuesta. Si no la tiene, no gire el racor con el otro extremo conectado: la manguera se retorcería. Use una unión o un adaptador giratorio.
fit-swivel_last = Conecte este extremo el último, con el otro ya conectado. Use dos llaves: una en la tuerca y otra en el hexágono del racor. Solo gira la tuerca y la manguera no se retuerce.
fit-free_last = Conecte este extremo en último lugar, con el otro ya apretado. Se orienta libremente, así que la manguera no se retuerce.
fit-anti_galling = Las roscas de acero inoxidable pueden agarrotarse. Antes de enroscar, unte la rosca macho con una pasta antigripante apta para el fluido. No la ponga en las caras de cierre.

## Tighten

fit-by_hand = Enrosque la tuerca con los dedos. Debe girar con suavidad. Si se frena, pare: la rosca está cruzada o no corresponde.
fit-by_hand_fixed = Enrosque con los dedos. Debe girar con suavidad. Si se frena, pare: la rosca está cruzada o no corresponde.
fit-two_wrenches = Use dos llaves: con una sujete el racor de la manguera y con la otra gire solo la tuerca. No deje que la manguera gire.
fit-two_wrenches_fixed = Si la pieza opuesta tiene tuerca, use dos llaves: con una sujete el racor de la manguera y con la otra gire solo esa tuerca. No deje que la manguera gire.
fit-mark_finger = Antes de contar caras: gire la tuerca con los dedos hasta que haga tope (apriete con los dedos). Ahí se empieza a contar: trace una línea que cruce la tuerca y el cuerpo.
fit-mark_wrench = Antes de contar caras: gire la tuerca con la llave hasta notar una resistencia firme (unos 3,4 N·m, 30 lbf·in). Ahí se empieza a contar: trace una línea que cruce la tuerca y el cuerpo.
fit-mark_fixed_finger = Antes de contar caras: gire el racor a mano hasta que haga tope (apriete con los dedos). Ahí se empieza a contar: trace una línea que cruce su hexágono y la pieza opuesta.
fit-mark_fixed_wrench = Antes de contar caras: gire el racor con la llave hasta notar una resistencia firme (unos 3,4 N·m, 30 lbf·in). Ahí se empieza a contar: trace una línea que cruce su hexágono y la pieza opuesta.
fit-flats = Gire la tuerca { $flats } más; se cuenta { $flats_basis }. 1 cara = 1/6 de vuelta (60°): cuente caras, no vueltas.
fit-flats_fixed = Gire el racor por su propio hexágono { $flats }, contadas { $flats_basis }. 1 cara = 1/6 de vuelta (60°): cuente caras, no vueltas.
fit-flats_instead = Por caras, en lugar del par de apriete y nunca además de él: gire la tuerca { $flats } más; se cuenta { $flats_basis }. 1 cara = 1/6 de vuelta (60°): cuente caras, no vueltas.
fit-flats_fixed_instead = Por caras, en lugar del par de apriete y nunca además de él: gire el racor por su propio hexágono { $flats }, contadas { $flats_basis }. 1 cara = 1/6 de vuelta (60°): cuente caras, no vueltas.
fit-torque_nut = Apriete la tuerca a { $torque }.
fit-lubrication = Este par de apriete vale para: { $lubrication }.
fit-lubrication_unknown = La fuente de este par de apriete no dice si la unión va en seco o lubricada. En caso de duda, use el valor del fabricante del racor.
fit-lubrication_not_carried = En esta etiqueta no consta si la unión va en seco o lubricada con este par de apriete. Pregunte al taller.
fit-torque_fixed = Gire el racor por su propio hexágono y apriételo a { $torque }. Sujete la pieza opuesta con una segunda llave.
fit-torque_bspp_stud = Extremo macho que sella con arandela metal-goma o junta tórica sobre una cara plana: apriételo, o su contratuerca, a { $torque }. Este par es excesivo para una tuerca sobre cono de 60°: para una tuerca, use el valor del fabricante del racor.
fit-torque_bspp_of_nut = El par que lleva esta etiqueta, { $torque }, es el de una tuerca sobre cono de 60°. No lo use para un extremo macho en una boca, que necesita más y se aflojaría: use el valor del fabricante del racor.
fit-over_flare = No apriete más para parar una fuga: el abocardado puede agrietarse. Desmonte la unión y revise los dos asientos.
fit-choose_method = Hay dos métodos: caras o par de apriete. Use solo uno. En caso de duda, cuente caras: con mucho rozamiento el par se alcanza con la unión aún floja.
fit-torque_counts = Si se indican par de apriete y caras, use solo el par de apriete.
fit-stud_in = Enrosque el extremo macho con los dedos hasta que haga tope. No dañe la junta tórica con la rosca.
fit-stud_into = Enrosque con los dedos el extremo macho de la pieza opuesta hasta que haga tope. No dañe la junta tórica con la rosca.
fit-stud_mark = Antes de apretar, trace una línea que cruce la pieza que gira y la boca: muestra cuánto ha girado.
fit-locknut_back = Gire la contratuerca hacia atrás hasta el final y lleve la arandela contra ella. Enrosque el extremo macho con los dedos hasta que la arandela toque la cara de la boca.
fit-locknut_align = Para orientar el codo, desenrosque el extremo macho una vuelta como máximo. Sujete el codo con una llave y apriete con la otra solo la contratuerca.
fit-flat_stud_in = Ponga bajo el resalte del extremo macho una arandela de cierre nueva, del tipo previsto. Enrósquelo con los dedos hasta que la arandela toque la cara.
fit-torque_stud = Apriete el extremo macho, la tuerca o la contratuerca a { $torque }. Una boca de aluminio admite menos: pida el valor al fabricante de la máquina.
fit-flats_stud = Apriete el extremo macho, la tuerca o la contratuerca { $flats } más; se cuenta { $flats_basis }. 1 cara = 1/6 de vuelta (60°): cuente caras, no vueltas.
fit-flats_stud_instead = Por caras, en lugar del par de apriete y nunca además de él: apriete el extremo macho, la tuerca o la contratuerca { $flats } más; se cuenta { $flats_basis }. 1 cara = 1/6 de vuelta (60°): cuente caras, no vueltas.
fit-sealant = Ponga en la rosca macho un sellador apto para el fluido. Deje sin sellador los dos primeros hilos.
fit-sealant_stainless = Las roscas cónicas de acero inoxidable pueden agarrotarse. Use un sellador que además evite el agarrotamiento.
fit-turns = Enrosque hasta apretar con los dedos y luego apriete { $turns } más con una llave. Nunca cuente caras en una rosca cónica.
fit-turns_disputed = Las fuentes difieren: { LIST($turn_choices, style: "or") }. En caso de duda, pregunte antes al fabricante del racor.
fit-turns_of_source = { $turns } ({ $source })
fit-never_back = Nunca afloje una rosca cónica para orientarla: tendrá fugas. Desmóntela, límpiela y séllela de nuevo.
fit-screw_class = Lea la clase de resistencia en la cabeza de los tornillos; debe ser la misma en los cuatro. Un par de apriete vale para una sola clase: un tornillo de clase 10.9 lleva más que uno de clase 8.8 del mismo tamaño.
fit-screw_class_62 = Lea la clase de resistencia en la cabeza de los tornillos; debe ser la misma en los cuatro. El código 62 exige clase 10.9 en medidas métricas o grado 8 en pulgadas. Un par de apriete vale para una sola clase.
fit-flange_seat = Apoye la cabeza de brida de plano sobre la cara de la boca, con la junta tórica en su ranura. Enrosque los cuatro tornillos con los dedos. La separación debe ser igual en las dos semibridas.
fit-flange_loose = Deje los tornillos apretados solo con los dedos hasta que el otro extremo esté conectado, o enroscado con los dedos, y la manguera quede sin torsión y bien orientada.
fit-banjo_rings = Use una arandela de cierre nueva a cada lado del ojo: una bajo la cabeza del tornillo y otra entre el ojo y la boca. Ambas deben ser del tipo previsto para el tornillo.
fit-banjo_loose = Enrosque el tornillo con los dedos y déjelo suelto hasta que el otro extremo esté conectado, o enroscado a mano, y la manguera quede sin torsión y en el ángulo correcto.
fit-banjo_hold = Sujete el ojo en su ángulo mientras aprieta el tornillo. Ni el ojo ni la manguera deben girar con él.
fit-torque_bolt = Apriete el tornillo banjo a { $torque }. Este par vale para un solo tipo de tornillo y de arandela: compruebe que es el suyo.
fit-standpipe_in = Ponga la tuerca y el anillo cortante en el tubo e introduzca el tubo en el cuerpo hasta el tope. Manténgalo así y enrosque la tuerca con los dedos.
fit-standpipe_nut = Anillo cortante nuevo: apriete la tuerca 1 1/2 vueltas desde el apriete con los dedos. El tubo no debe girar. Anillo ya fijado en el tubo: apriete hasta notar claramente una resistencia y luego lo que indique su fabricante.
fit-latch_clean = Conecte solo sin presión en ninguna de las dos líneas. Limpie las dos mitades y revise las juntas.
fit-coupler_lock = Empuje las dos mitades hasta que se enclaven y tire para comprobarlo. Si el casquillo tiene seguro, póngalo.
fit-staple_in = Monte una junta tórica y un anillo de apoyo nuevos en la espiga e introdúzcala a fondo. Meta la grapa a mano hasta el tope. Use solo una grapa sin daños y prevista para la presión. Tire de la manguera para comprobarlo.
fit-flange_cross = Apriete los tornillos poco a poco y en cruz, en dos o tres pasadas: uno, el opuesto en diagonal y luego los otros dos. No use llave de impacto.
fit-torque_screw = { $screw ->
    [none] En la última pasada apriete cada tornillo a { $torque }. Este par vale para un solo tamaño y una sola clase de resistencia: pregunte al fabricante cuáles antes de apretar.
   *[other] En la última pasada apriete cada tornillo { $screw } a { $torque }. Otro tamaño u otra clase de resistencia necesita otro par de apriete. Si aquí no figura la clase, pregúntela al fabricante.
 }
fit-no_figures = No se conoce el apriete de esta unión: use el valor del fabricante del racor.

## Test for leaks

fit-nobody_near = Mantenga alejada a la gente. Haga funcionar la máquina sin carga hasta que salga el aire y el nivel de aceite sea correcto.
fit-leak_look = Suba la presión despacio. Busque fugas con un trozo de cartón, nunca con la mano.
fit-leak_stop = Si una unión tiene fugas, pare la máquina, descargue la presión y desmonte la unión. Nunca apriete una unión con presión.
fit-full_travel = Mueva la máquina en todo su recorrido. La manguera no debe quedar tirante, acodada ni retorcida, ni rozar en ningún punto.
fit-look_again = Revise otra vez las uniones después de las primeras horas de trabajo.

## Families that are taken for each other; the sizes are those of the second

fit-alike-flares = { $family } y { $other } ({ LIST($sizes) }) tienen la misma rosca en los tamaños -2, -3, -4, -5, -8 y -10. Enroscan entre sí, pero los asientos de 37° y 45° no sellan de forma segura.
fit-alike-cone_oring-each = { $family } y { $other } ({ LIST($sizes) }) tienen la misma rosca en cada tamaño. Una sella por cono, la otra por junta tórica bajo un resalte.
fit-alike-cone_oring = { $family } y { $other } ({ LIST($sizes) }) tienen las mismas roscas. Una sella por cono, la otra por junta tórica bajo un resalte.
fit-alike-face_cone = { $family } y { $other } ({ LIST($sizes) }) tienen la misma rosca en tamaños dash distintos. Una sella por cara plana con junta tórica, la otra por cono.
fit-alike-face_boss = { $family } y { $other } ({ LIST($sizes) }) tienen la misma rosca en tamaños dash distintos. Solo se distinguen por la posición de la junta tórica.
fit-alike-tapers = { $family } y { $other } ({ LIST($sizes) }) empiezan a enroscar entre sí. Las dos son cónicas, pero las roscas de 60° y 55° no sellan entre sí. Los tamaños 1/2 y 3/4 tienen 14 hilos por pulgada en las dos.
fit-alike-taper_parallel-14 = { $family } y { $other } ({ LIST($sizes) }) empiezan a enroscar entre sí en los tamaños 1/2 y 3/4, ambos con 14 hilos por pulgada. Una es cónica, la otra paralela, y el ángulo de los hilos difiere.
fit-alike-npt_nptf = { $family } y { $other } ({ LIST($sizes) }) tienen el mismo tamaño y paso. NPTF sella en seco por sus crestas, NPT necesita sellador. Midiendo no se distinguen.
fit-alike-taper_parallel = { $family } y { $other } ({ LIST($sizes) }) tienen el mismo paso y casi el mismo diámetro. Una es cónica, la otra paralela.
fit-alike-npsm_bspp = { $family } y { $other } ({ LIST($sizes) }) tienen casi la misma rosca en los tamaños 1/2 y 3/4, y asientos de 60° de ángulo total. El ángulo de los hilos difiere.
fit-alike-bspp_jis = { $family } y { $other } ({ LIST($sizes) }) tienen la misma rosca, pero los conos invertidos. Enroscan entre sí, pero no sellan.
fit-alike-taper_cone = { $family } y { $other } ({ LIST($sizes) }) tienen el mismo paso y casi el mismo diámetro. Una es cónica, la otra sella por cono.
fit-alike-tube_sizes = { $family } y { $other } ({ LIST($sizes) }) tienen la misma rosca en tamaños de tubo distintos. Mida el diámetro exterior del tubo para distinguirlas.
fit-alike-metric_cone_flare = { $family } y { $other } ({ LIST($sizes) }) tienen las mismas roscas métricas. Una sella por cono de 24°, la otra por abocardado de 30°.
fit-alike-metric_cone_oring = { $family } y { $other } ({ LIST($sizes) }) tienen las mismas roscas métricas. Una sella por cono, la otra por junta tórica bajo un resalte.
fit-alike-flanges = { $family } y { $other } ({ LIST($sizes) }) se parecen. La cabeza código 62 es más gruesa y más ancha, y sus tornillos están más separados.
fit-alike-thread = { $family } y { $other } ({ LIST($sizes) }) tienen la misma rosca o casi la misma. Pueden enroscar entre sí, pero no sellan entre sí: compruebe el asiento.
fit-alike-reversed_cone = { $family } y { $other } ({ LIST($sizes) }) tienen la misma rosca métrica pero conos opuestos. Se enroscan entre sí, pero no cierran.
fit-alike-cones_60_24 = { $family } y { $other } ({ LIST($sizes) }) tienen las mismas roscas métricas. Uno tiene cono de 60° y el otro de 24°: no cierran entre sí.
fit-alike-tube_bore = { $family } y { $other } ({ LIST($sizes) }) tienen la misma rosca y el mismo cono. Solo cambia el tubo: mida su diámetro exterior.
fit-alike-flareless = { $family } y { $other } ({ LIST($sizes) }) tienen las mismas roscas. Uno cierra con un anillo en un cono de 24°, el otro en un abocardado.
fit-alike-inverted = { $family } y { $other } ({ LIST($sizes) }) comparten roscas. El abocardado invertido tiene el cono dentro de la boca hembra: no cierran entre sí.
fit-alike-flat_oring = { $family } y { $other } ({ LIST($sizes) }) tienen las mismas roscas métricas. Uno cierra con una arandela en una cara plana, el otro con una junta tórica en un chaflán de la boca.
fit-alike-flat_cone = { $family } y { $other } ({ LIST($sizes) }) tienen las mismas roscas métricas. Uno cierra con una arandela en una cara plana, el otro en un cono.

## Where a step's practice comes from

fit-source-tag = según lo puso el taller en la etiqueta
fit-source-turns = { LIST($turn_sources) }
fit-source-practice = práctica común (sin fuente publicada)
fit-source-iso4413_j1273 = ISO 4413 y SAE J1273 (sin verificar)
fit-source-j1273 = SAE J1273 (sin verificar)
fit-source-previews = extractos de SAE J517 y J516: la presión admisible de un latiguillo es la menor de sus piezas
fit-source-flare_pages = dos páginas públicas: el abocardado de 45° comparte rosca con el de 37° en -2 -3 -4 -5 -8 -10
fit-source-hose_page = página técnica pública de un fabricante de mangueras, conexiones japonesas
fit-source-thread_page = página pública de referencia de roscas
fit-source-oring_manuals = manuales del operador de fabricantes (junta tórica aceitada)
fit-source-no_twist = SAE J1273 y manuales de fabricantes: dos llaves, sin torsión
fit-source-bend = extracto de la EN 853:2015; texto público de referencia hidráulica (sin revisar)
fit-source-two_wrenches = varios manuales de fabricantes piden dos llaves
fit-source-finger = manuales del operador de fabricantes, caras desde el apriete con los dedos
fit-source-wrench = US Army TM 9-2320-364-20-4; manual de un fabricante de tractores compactos
fit-source-cutting_ring = dos páginas públicas sobre el montaje de racores de 24°
fit-source-farm_manual = manual del operador de un fabricante de maquinaria agrícola
fit-source-manuals = varios manuales de fabricantes
fit-source-torque_page = página pública de cálculo de pares para racores hidráulicos
fit-source-pipe_pages = dos páginas públicas sobre accesorios de tubería
fit-source-telehandler = manual de taller de un fabricante de manipuladores telescópicos (1994)
fit-source-bolt_tables = tablas generales de tornillos de manuales OEM (valores de SAE J1701 y otras)
fit-source-iso6162 = ISO 6162-2 y práctica habitual (sin verificar)
