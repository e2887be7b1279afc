# What a phone says by itself, without a signal.

## Refusals

offline-no-signal = Sin cobertura
offline-scan-a-tag = Escanee el código QR de una etiqueta. Se lee aunque no haya cobertura.
offline-order = Sin cobertura no se puede ver el estado de un pedido.
    .mend = Inténtelo de nuevo con cobertura o llame al taller.
offline-identify = Sin cobertura no se puede determinar la conexión de un extremo.
    .mend = Anote de cada extremo: forma, diámetro de la rosca, paso y asiento. Introdúzcalos aquí con cobertura, o llame al taller.
offline-identified = Para pedir la manguera entre los extremos hace falta cobertura.
    .mend = Anote los dos extremos o conserve esta página y continúe con cobertura. O llame al taller.
offline-number-alone = Un número de etiqueta por sí solo no contiene la especificación, y no hay cobertura.
    .mend = Escanee el código QR: se lee aunque no haya cobertura.
offline-number-withdrawn = El taller ha retirado este latiguillo. No lo use.
    .mend = No lo monte. Si está montado, pare la máquina, libere la presión y desmóntelo. Pregunte al taller.
offline-number-void = ANULADO: este latiguillo no debe montarse. Su registro se introdujo por error.
    .mend = No lo monte. Pregunte al taller.
offline-number-held = El taller no ha liberado este latiguillo. No lo monte.
    .mend = Pregunte al taller. Si está montado, pare la máquina, descargue la presión y desmóntelo.
offline-newer-tag = Esta etiqueta es más reciente que los datos de este teléfono.
    .mend = Abra una página de etiqueta con cobertura para actualizar este teléfono.
offline-newer-part = Esta etiqueta incluye un componente que este teléfono aún no conoce.
    .mend = Abra una página de etiqueta con cobertura para actualizar este teléfono.

## Above a tag that was read without a signal

offline-tag-only = Sin cobertura: solo datos de la etiqueta
offline-withdrawn-unknown = Los datos mostrados proceden solo de la etiqueta. Para saber si el latiguillo ha sido retirado, compruébelo de nuevo con cobertura o pregunte al taller.
offline-withdrawn-as-of = Los datos proceden solo de la etiqueta. La lista del taller del { $day }, { $time }, no menciona este latiguillo como retirado; lo posterior no se conoce. Compruébelo de nuevo con cobertura o pregunte al taller.
offline-barred = Los datos proceden solo de la etiqueta. No monte este latiguillo, por el motivo indicado arriba. Pregunte al taller.
offline-withdrawn-reason = El taller lo ha retirado. Pregúntele el motivo.
offline-withdrawn-listed = Según la lista del taller del { $day }, { $time }
