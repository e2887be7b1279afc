# What a phone says by itself, without a signal.

## Refusals

offline-no-signal = Pas de réseau
offline-scan-a-tag = Scannez le code QR d'une étiquette. Il se lit même sans réseau.
offline-number-alone = Un numéro d'étiquette seul ne contient pas la spécification, et il n'y a pas de réseau.
    .mend = Scannez plutôt le code QR : il se lit même sans réseau.
offline-newer-tag = Cette étiquette est plus récente que les données de ce téléphone.
    .mend = Ouvrez une page d'étiquette avec du réseau pour mettre ce téléphone à jour.
offline-newer-part = Cette étiquette indique un composant qui n'est pas encore connu de ce téléphone.
    .mend = Ouvrez une page d'étiquette avec du réseau pour mettre ce téléphone à jour.

## Above a tag that was read without a signal

offline-tag-only = Pas de réseau : données de l'étiquette uniquement
offline-withdrawn-unknown = Les données affichées viennent uniquement de l'étiquette. Pour savoir si le flexible a été retiré du service, vérifiez de nouveau avec du réseau ou demandez à l'atelier.
