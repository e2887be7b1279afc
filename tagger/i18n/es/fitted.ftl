# A hose assembly that was fitted: the report from the machine, and the shop's answer.

## The report

fitted-report = Comunicar el montaje
fitted-hint = El taller confirma la comunicación. Hasta entonces no cuenta.
fitted-hours-hint = Horómetro, sin separador de miles. Ejemplo: 1234,5
fitted-hours-not-read = { $given } no se puede leer como horas de máquina.
    .mend = Introduzca las horas sin separador de miles, con dos decimales como máximo.
fitted-photo = Foto del latiguillo montado
fitted-send = Enviar
fitted-sending = Enviando la comunicación ...
fitted-not_sent = Comunicación no enviada
fitted-not_kept = No enviada: no hay conexión y este teléfono no puede guardar la comunicación. Inténtelo de nuevo o llame al taller.
fitted-waiting = Sin cobertura. La comunicación está guardada en este teléfono y se enviará automáticamente. No la envíe otra vez.
fitted-waiting-open = La comunicación está guardada en este teléfono. Se enviará cuando haya cobertura y esta página esté abierta.
fitted-outbox-sent = Su comunicación se ha enviado. Etiqueta:
fitted-outbox-refused = Esta comunicación no se ha aceptado. Corríjala y envíela de nuevo.

## What became of it

fitted-page = Montaje de la etiqueta { $number }
fitted-title = Montaje comunicado
fitted-waiting-day = Instalado el { $day }: comunicado, aún no confirmado por el taller
fitted-agreed-day = Instalado el { $day }: confirmado por el taller
fitted-void-act = El registro de esta etiqueta está anulado. No use este latiguillo. Si está montado, pare la máquina, descargue la presión y desmóntelo. Después, llame al taller.
fitted-on = Instalado el
fitted-replace_by = Sustituir antes del (orientación)
fitted-guidance = Como máximo, almacenamiento incluido. El uso intensivo, el calor o los daños lo acortan. La fecha no autoriza a usar el latiguillo hasta entonces.
fitted-stored = { $years ->
    [one] Estuvo almacenado más tiempo que el año que admite la fuente: hágalo inspeccionar antes de seguir usándolo.
   *[other] Estuvo almacenado más tiempo que los { $years } años que admite la fuente: hágalo inspeccionar antes de seguir usándolo.
 }
fitted-calendar = Añadir la fecha a un calendario
fitted-open = Instalación y fecha de sustitución
fitted-machine-title = Máquina de la etiqueta { $number }
fitted-machine-hoses = Otros latiguillos de esta máquina
fitted-machine-show = Mostrar los latiguillos
fitted-machine-none = No hay ningún otro latiguillo registrado para esta máquina.
fitted-pin-hint = Seis dígitos. El taller le facilita el PIN de esta etiqueta.
fitted-pin = PIN para los latiguillos de la máquina
fitted-pin-told = Facilítelo al cliente. No está en la etiqueta.
fitted-no-date = No se conocen ni la fecha de fabricación ni la de instalación.
    .mend = Pregunte al taller la fecha de fabricación.
fitted-event = Sustituir el latiguillo { $number }
fitted-event-description = Orientación. Fuente: { $source }. Etiqueta: { $address }

## The shop

fitted-bench-title = Montajes comunicados
fitted-bench-count = Montajes comunicados por confirmar: { $count }
fitted-bench-hint = Una comunicación confirmada pasa al historial. Cuenta la fecha más antigua.
fitted-state-waiting = por confirmar
fitted-state-agreed = confirmado
fitted-state-refused = rechazado
fitted-elsewhere = Este número figura también en otra máquina: { LIST($machines) }. Puede que la etiqueta se haya copiado o cambiado de sitio: revise ambas máquinas.
fitted-withdrawn = Este latiguillo está retirado ({ LIST($reasons) }) y consta en una máquina. Llame: hay que desmontarlo.
fitted-void = El registro de este latiguillo está anulado («{ $reason }») y el latiguillo consta en una máquina. Llame: hay que desmontarlo.
fitted-erase = Borrar nombre y foto
fitted-erase-ask = ¿Borrar quién hizo esta comunicación y su foto? La fecha, la máquina y las horas se conservan. No se puede deshacer.
fitted-before-built = La fecha de instalación es anterior a la de fabricación: una de las dos es errónea.
fitted-hours = { $hours } h
fitted-why = Motivo, si lo rechaza
fitted-agree = Confirmar
fitted-refuse = Rechazar
fitted-none = No se ha comunicado ningún montaje.
fitted-line = Instalado el { $day }
fitted-line-machine = Instalado el { $day }, máquina { $machine }
