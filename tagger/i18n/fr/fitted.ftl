# A hose assembly that was fitted: the report from the machine, and the shop's answer.

## The report

fitted-report = Signaler la pose
fitted-hint = L'atelier confirme le signalement. Jusque-là, il ne compte pas.
fitted-hours-hint = Compteur horaire, sans séparateur de milliers. Exemple : 1234,5
fitted-hours-not-read = { $given } ne peut pas être lu comme un nombre d'heures.
    .mend = Saisissez les heures sans séparateur de milliers, avec deux décimales au plus.
fitted-photo = Photo du flexible posé
fitted-send = Envoyer
fitted-sending = Envoi du signalement ...
fitted-not_sent = Signalement non envoyé
fitted-not_kept = Non envoyé : pas de connexion, et ce téléphone ne peut pas enregistrer le signalement. Réessayez ou appelez l'atelier.
fitted-waiting = Pas de réseau. Le signalement est enregistré sur ce téléphone et partira automatiquement. Ne le renvoyez pas.
fitted-waiting-open = Le signalement est enregistré sur ce téléphone. Il partira quand il y aura du réseau et que cette page sera ouverte.
fitted-outbox-sent = Votre signalement est parti. Étiquette :
fitted-outbox-refused = Ce signalement n'a pas été accepté. Corrigez-le et renvoyez-le.

## What became of it

fitted-page = Pose de l'étiquette { $number }
fitted-title = Pose signalée
fitted-waiting-day = Posé le { $day } : signalé, pas encore confirmé par l'atelier
fitted-agreed-day = Posé le { $day } : confirmé par l'atelier
fitted-void-act = L'enregistrement de cette étiquette est annulé. N'utilisez pas ce flexible. S'il est monté, arrêtez la machine, relâchez la pression et démontez-le. Appelez ensuite l'atelier.
fitted-on = Posé le
fitted-replace_by = À remplacer avant le (indication)
fitted-guidance = Au plus tard, stockage compris. Un usage intensif, la chaleur ou un dommage raccourcissent ce délai. Cette date n'autorise pas à utiliser le flexible jusque-là.
fitted-stored = { $years ->
    [one] Il est resté stocké plus longtemps que l'année admise par la source : faites-le contrôler avant de continuer à l'utiliser.
   *[other] Il est resté stocké plus longtemps que les { $years } ans admis par la source : faites-le contrôler avant de continuer à l'utiliser.
 }
fitted-calendar = Ajouter la date à un agenda
fitted-open = Pose et date de remplacement
fitted-machine-title = Machine de l'étiquette { $number }
fitted-machine-hoses = Autres flexibles de cette machine
fitted-machine-show = Afficher les flexibles
fitted-machine-none = Aucun autre flexible n'est enregistré pour cette machine.
fitted-pin-hint = Six chiffres. L'atelier vous communique le code de cette étiquette.
fitted-pin = Code pour les flexibles de la machine
fitted-pin-told = À communiquer au client. Il ne figure pas sur l'étiquette.
fitted-no-date = Ni la date de fabrication ni la date de pose ne sont connues.
    .mend = Demandez la date de fabrication à l'atelier.
fitted-event = Remplacer le flexible { $number }
fitted-event-description = Indication. Source : { $source }. Étiquette : { $address }

## The shop

fitted-bench-title = Poses signalées
fitted-bench-count = Poses signalées à confirmer : { $count }
fitted-bench-hint = Un signalement confirmé entre dans l'historique. La date la plus ancienne compte.
fitted-state-waiting = à confirmer
fitted-state-agreed = confirmé
fitted-state-refused = rejeté
fitted-elsewhere = Ce numéro est aussi indiqué sur une autre machine : { LIST($machines) }. L'étiquette a peut-être été copiée ou déplacée : contrôlez les deux machines.
fitted-withdrawn = Ce flexible est retiré du service ({ LIST($reasons) }) et serait monté sur une machine. Appelez : il doit être démonté.
fitted-void = L'enregistrement de ce flexible est annulé (« { $reason } ») et le flexible serait monté sur une machine. Appelez : il doit être démonté.
fitted-erase = Effacer le nom et la photo
fitted-erase-ask = Effacer l'auteur de ce signalement et sa photo ? La date, la machine et les heures restent. Cette action est irréversible.
fitted-before-built = La date de pose précède la date de fabrication : l'une des deux est fausse.
fitted-hours = { $hours } h
fitted-why = Motif en cas de rejet
fitted-agree = Confirmer
fitted-refuse = Rejeter
fitted-none = Aucune pose n'a été signalée.
fitted-line = Posé le { $day }
fitted-line-machine = Posé le { $day }, machine { $machine }
