# L'API JSON : pourquoi la demande d'un programme est refusée.

rest-no-token = La requête ne porte pas de jeton d'appareil valable.
    .mend = Envoyez-le dans l'en-tête : Authorization : Bearer ...
rest-role-too-low = Cette requête exige un jeton de rôle { $role } ou supérieur.
    .mend = Utilisez un jeton de ce rôle, ou demandez au responsable d'en créer un.
rest-no-such-address = Il n'y a rien à cette adresse.
    .mend = Vérifiez l'adresse dans la description de l'API.
rest-no-such-method = Cette adresse n'accepte pas cette méthode.
    .mend = Vérifiez la méthode dans la description de l'API.
rest-too-large = La requête dépasse { $megabytes } Mo.
    .mend = Envoyez-en moins.
rest-cannot-be-read = La requête est illisible.
    .mend = Corrigez chaque champ cité sous problems.
rest-cannot-be-stored = La requête contient un caractère ou un nombre qui ne peut pas être enregistré.
    .mend = Vérifiez ses textes et ses nombres.
rest-database-away = La base de données est indisponible.
    .mend = Renvoyez la requête avec la même Idempotency-Key.
rest-failed = Erreur du serveur.
    .mend = Les détails sont dans le journal du serveur.

rest-built-in-future = La date de fabrication { $date } est dans le futur.
    .mend = Saisissez le jour de la fabrication, ou laissez le champ vide.
rest-crimp-twice = Cette extrémité est nommée deux fois.
    .mend = Envoyez un diamètre par extrémité.
rest-one-of-text-and-digits = Il faut soit text, soit digits, et un seul des deux.
    .mend = Envoyez l'un des deux.
rest-not-a-column = { $name } n'est pas une colonne connue.
    .mend = Utilisez l'une de celles-ci : { LIST($columns, style: "or") }.
rest-columns-do-not-match = match nomme { $given ->
        [one] { $given } colonne
       *[other] { $given } colonnes
    }, et le fichier en a { $columns }.
    .mend = Nommez-en une par colonne du fichier ; un nom vide fait ignorer la colonne.
rest-machine-without-hoses = Aucun flexible n'est enregistré pour { $machine }.
    .mend = Vérifiez le nom de la machine et celui du client.
rest-nothing-to-change = La requête ne modifie rien.
    .mend = Envoyez role, active ou password.
rest-nobody-affected = Le retrait du service ne concerne aucun flexible enregistré.
    .mend = Aucun client n'est concerné.
rest-words-not-read = Les mots ne sont pas un objet JSON.
    .mend = Envoyez un objet dont les noms sont les mots du fichier et les valeurs les nôtres.
rest-words-not-a-value = Aucune colonne associée n'admet { $value } pour { $word }.
    .mend = Utilisez une valeur que l'essai à blanc indique pour ce mot, ou associez sa colonne.
rest-form-one-tag = Seul un PDF contient plusieurs étiquettes.
    .mend = Utilisez pdf, ou demandez une étiquette à la fois.
rest-printed-already = Déjà imprimé, ou envoyé à une imprimante : { LIST($numbers) }. Une seconde étiquette du même numéro peut finir sur un autre flexible.
    .mend = Pour réimprimer, envoyez again : true, avec le motif.
