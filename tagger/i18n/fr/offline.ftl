# What a phone says by itself, without a signal.

## Refusals

offline-no-signal = Pas de réseau
offline-scan-a-tag = Scannez le code QR d'une étiquette. Il se lit même sans réseau.
offline-order = Sans réseau, l'état d'une commande ne peut pas être consulté.
    .mend = Réessayez avec du réseau, ou appelez l'atelier.
offline-identify = Sans réseau, impossible de déterminer le raccordement d'une extrémité.
    .mend = Notez pour chaque extrémité : forme, diamètre du filetage, pas et siège. Saisissez-les ici avec du réseau, ou appelez l'atelier.
offline-identified = Pour commander le tuyau entre les extrémités, il faut du réseau.
    .mend = Notez les deux extrémités ou gardez cette page, puis continuez avec du réseau. Ou appelez l'atelier.
offline-number-alone = Un numéro d'étiquette seul ne contient pas la spécification, et il n'y a pas de réseau.
    .mend = Scannez plutôt le code QR : il se lit même sans réseau.
offline-number-withdrawn = L'atelier a retiré ce flexible du service. Ne l'utilisez pas.
    .mend = Ne le posez pas. S'il est en place, arrêtez la machine, faites chuter la pression et déposez-le. Demandez à l'atelier.
offline-number-void = ANNULÉ : ce flexible ne doit pas être monté. Son enregistrement a été saisi par erreur.
    .mend = Ne le posez pas. Demandez à l'atelier.
offline-number-held = L'atelier n'a pas libéré ce flexible. Ne le montez pas.
    .mend = Demandez à l'atelier. S'il est monté, arrêtez la machine, relâchez la pression et démontez-le.
offline-newer-tag = Cette étiquette est plus récente que les données de ce téléphone.
    .mend = Ouvrez une page d'étiquette avec du réseau pour mettre ce téléphone à jour.
offline-newer-part = Cette étiquette indique un composant qui n'est pas encore connu de ce téléphone.
    .mend = Ouvrez une page d'étiquette avec du réseau pour mettre ce téléphone à jour.

## Above a tag that was read without a signal

offline-tag-only = Pas de réseau : données de l'étiquette uniquement
offline-withdrawn-unknown = Les données affichées viennent uniquement de l'étiquette. Pour savoir si le flexible a été retiré du service, vérifiez de nouveau avec du réseau ou demandez à l'atelier.
offline-withdrawn-as-of = Les données proviennent uniquement de l'étiquette. La liste de l'atelier du { $day }, { $time }, ne signale pas ce flexible comme retiré du service ; la suite n'est pas connue. Vérifiez à nouveau avec du réseau ou demandez à l'atelier.
offline-barred = Les données proviennent uniquement de l'étiquette. Ne montez pas ce flexible, pour la raison ci-dessus. Demandez à l'atelier.
offline-withdrawn-reason = L'atelier a retiré ce flexible du service. Demandez-lui la raison.
offline-withdrawn-listed = D'après la liste de l'atelier du { $day }, { $time }
