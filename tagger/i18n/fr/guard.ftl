# What the web refuses before a page is reached, and what a scanned text is.
guard-not-your-role = Cela demande le rôle « { $role } ».
    .mend = Demandez au responsable d'atelier.
guard-not-your-role-title = Accès refusé
guard-form-expired = Ce formulaire a expiré.
    .mend = Revenez en arrière, rechargez la page et envoyez-le de nouveau.
guard-form-expired-title = Formulaire expiré
guard-form-elsewhere = Ce formulaire a été envoyé par un autre site.
    .mend = Ouvrez la page de l'étiquette et envoyez-le de là.
guard-no-page = Cette page n'existe pas.
    .mend = Choisissez-en une dans le menu ou scannez une étiquette.
guard-no-page-title = Page introuvable
guard-database-title = Problème du serveur
guard-too-many-requests = Trop de demandes. Attendez une minute et réessayez.
guard-busy = Le serveur traite déjà autant de demandes que possible.
    .mend = Réessayez dans quelques secondes. Rien de cette demande n'a été fait.
guard-metrics-listen = Les mesures ne sont servies que sur cette machine.
    .mend = Saisissez une adresse telle que 127.0.0.1:9464.
guard-orders-too-many = Trop de commandes depuis cette connexion ou pour cette étiquette en une heure.
    .mend = Appelez l'atelier ou renvoyez-la dans une heure.
guard-reports-too-many = Trop de signalements depuis cette connexion ou pour cette étiquette en une heure.
    .mend = Appelez l'atelier ou renvoyez-le dans une heure.
guard-pin-wrong = Le code n'est pas celui de cette étiquette.
    .mend = Demandez à l'atelier le code de cette étiquette.
guard-pin-tries = Trop de codes faux.
    .mend = Attendez dix minutes.
guard-pictures-too-many = Trop de photos depuis cette connexion en une heure.
    .mend = Envoyez sans photo.
guard-pictures-full = L'atelier n'accepte plus de photos aujourd'hui.
    .mend = Envoyez sans photos, ou montrez-les à l'atelier autrement.
guard-picture-too-large = La photo dépasse { $megabytes } Mo.
    .mend = Utilisez une photo plus petite, ou envoyez sans photo.
guard-picture-unreadable = Le fichier n'est pas une photo lisible.
    .mend = Utilisez une photo JPEG, PNG ou WebP.
guard-password-short = Le mot de passe est trop court.
    .mend = Utilisez au moins { $least } caractères.
guard-password-long = Le mot de passe est trop long.
    .mend = Utilisez { $most } caractères au plus.
guard-password-common = Ce mot de passe est de ceux que l'on essaie en premier.
    .mend = Utilisez une phrase de plusieurs mots que personne ne rattache à vous ou à l'atelier.

## Tags and lots that were scanned

guard-tag-without-spec = L'étiquette { $number } ne figure pas dans nos dossiers, et un numéro seul ne contient aucune spécification.
    .mend = Scannez le code QR de l'étiquette : il contient toute la spécification.
guard-too-large-title = Trop volumineux
guard-too-large = La demande dépasse { $megabytes } Mo. Envoyez moins.
