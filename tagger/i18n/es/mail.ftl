# E-mails about an order request, to the shop and to the customer.

## To the customer: the subject, by the status of the order

mail-customer-received = Hemos recibido su pedido { $reference }
mail-customer-asked = Tenemos una pregunta sobre su pedido { $reference }
mail-customer-accepted = Hemos aceptado su pedido { $reference }
mail-customer-building = Su pedido { $reference } está en fabricación
mail-customer-done = Su pedido { $reference } está listo
mail-customer-declined = No podemos aceptar su pedido { $reference }

## To the shop

mail-shop-subject = Pedido { $reference }: { $state }

## The lines of the letter

mail-note = Mensaje: { $note }
mail-wanted = { $quantity } × { $hose }, { $length }
mail-end-a = Extremo A: { $end }
mail-end-b = Extremo B: { $end }
mail-clocking = Ángulo de orientación: { $clocking }
mail-covers = Protecciones de la manguera: { LIST($covers) }
mail-temperature = Temperatura máxima: { $temperature }
mail-from-tag = Según la etiqueta: { $number }
mail-needed-by = Fecha requerida: { $day }
mail-customer-reference = Referencia del cliente: { $reference }
mail-changes = Cambios deseados: { $changes }
mail-follow = Seguir el pedido: { $link }
