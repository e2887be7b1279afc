# E-mails about an order request, to the shop and to the customer.

## To the customer: the subject, by the status of the order

mail-customer-received = Wir haben Ihre Bestellung { $reference } erhalten
mail-customer-asked = Wir haben eine Rückfrage zu Ihrer Bestellung { $reference }
mail-customer-accepted = Wir haben Ihre Bestellung { $reference } angenommen
mail-customer-building = Ihre Bestellung { $reference } ist in Arbeit
mail-customer-done = Ihre Bestellung { $reference } ist fertig
mail-customer-declined = Wir können Ihre Bestellung { $reference } nicht annehmen

## To the shop

mail-shop-subject = Bestellung { $reference }: { $state }

## The lines of the letter

mail-note = Nachricht: { $note }
mail-wanted = { $quantity } × { $hose }, { $length }
mail-end-a = Ende A: { $end }
mail-end-b = Ende B: { $end }
mail-clocking = Verdrehwinkel: { $clocking }
mail-covers = Schlauchschutz: { LIST($covers) }
mail-temperature = Höchsttemperatur: { $temperature }
mail-from-tag = Nach Schild: { $number }
mail-needed-by = Benötigt bis: { $day }
mail-customer-reference = Referenz: { $reference }
mail-changes = Gewünschte Änderungen: { $changes }
mail-follow = Bestellung verfolgen: { $link }
