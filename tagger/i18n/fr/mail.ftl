# E-mails about an order request, to the shop and to the customer.

## To the customer: the subject, by the status of the order

mail-customer-received = Nous avons reçu votre demande de commande { $reference }
mail-customer-asked = Nous avons une question sur votre commande { $reference }
mail-customer-accepted = Nous avons accepté votre commande { $reference }
mail-customer-building = Votre commande { $reference } est en fabrication
mail-customer-done = Votre commande { $reference } est prête
mail-customer-declined = Nous ne pouvons pas accepter votre commande { $reference }

## To the shop

mail-shop-subject = Commande { $reference } : { $state }

## The lines of the letter

mail-note = Message : { $note }
mail-wanted = { $quantity } × { $hose }, { $length }
mail-end-a = Extrémité A : { $end }
mail-end-b = Extrémité B : { $end }
mail-clocking = Angle d'orientation : { $clocking }
mail-covers = Protections du tuyau : { LIST($covers) }
mail-temperature = Température maximale : { $temperature }
mail-from-tag = D'après l'étiquette : { $number }
mail-needed-by = À livrer avant le : { $day }
mail-customer-reference = Référence client : { $reference }
mail-changes = Modifications souhaitées : { $changes }
mail-follow = Suivre la commande : { $link }
