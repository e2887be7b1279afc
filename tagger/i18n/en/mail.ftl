# E-mails about an order request, to the shop and to the customer.

## To the customer: the subject, by the status of the order

mail-customer-received = We have received your order request { $reference }
mail-customer-asked = We have a question about your order { $reference }
mail-customer-accepted = We have accepted your order { $reference }
mail-customer-building = We are building your order { $reference }
mail-customer-done = Your order { $reference } is ready
mail-customer-declined = We cannot accept your order { $reference }

## To the shop

mail-shop-subject = Order { $reference }: { $state }

## The lines of the letter

mail-note = Message: { $note }
mail-wanted = { $quantity } × { $hose }, { $length }
mail-end-a = End A: { $end }
mail-end-b = End B: { $end }
mail-clocking = Clocking: { $clocking }
mail-covers = Sleeves and guards: { LIST($covers) }
mail-temperature = Maximum temperature: { $temperature }
mail-from-tag = From tag: { $number }
mail-needed-by = Needed by: { $day }
mail-customer-reference = Customer ref.: { $reference }
mail-changes = Changes wanted: { $changes }
mail-follow = Follow the order: { $link }
