# The shop's signing keys: their file, and the page on which they are printed.

## The key file

keys-not-set = Aucun fichier de clés n'est indiqué.
    .mend = Indiquez dans TAGGER_SIGNING_KEY le chemin du fichier de clés.
keys-file-missing = Il n'y a pas de fichier de clés à cet endroit.
    .mend = Créez-en un avec « tagger signing-key new », ou restaurez votre copie.
keys-file-there = Il y a déjà un fichier de clés : { $file }.
    .mend = Omettez --published ; la numérotation des clés du fichier continue.
keys-published-broken = Ce n'est pas la liste des clés publiques que l'atelier a publiée.
    .mend = Enregistrez ce que montre l'adresse de l'atelier suivie de { $at }, d'une copie ou comme sur la page des clés.
keys-file-open = D'autres utilisateurs de cet ordinateur peuvent lire le fichier de clés.
    .mend = Réservez-en la lecture à son propriétaire : chmod 600.
keys-file-broken = Ce n'est pas un fichier de clés complet.
    .mend = Restaurez votre copie.
keys-file-busy = Une autre commande est en train de modifier les clés.
    .mend = Réessayez. Si aucune commande n'est en cours, supprimez ce fichier.
keys-file-folder = Le fichier de clés ne peut pas être écrit ici.
    .mend = Utilisez un dossier existant dans lequel vous pouvez écrire.
keys-full = Un atelier a au plus 255 clés.
    .mend = Utilisez la dernière clé.
keys-unknown = Aucune clé ne porte ce numéro.
    .mend = Utilisez un numéro de 1 à { $count }.

## The key page

keys-page-title = Clés publiques des étiquettes
keys-page-why = L'atelier signe le code QR de ses étiquettes. Avec ces clés, chacun peut vérifier qu'une étiquette vient de cet atelier et que personne n'en a modifié les valeurs.
keys-page-how = Conservez cette page avec les dossiers. Un téléphone qui a ouvert une fois une page d'étiquette de l'atelier vérifie les étiquettes lui-même, même sans réseau. Les clés se trouvent aussi à l'adresse { $address }.
keys-page-format = Ed25519 (RFC 8032), 32 octets en hexadécimal. Texte signé : { $text }, en ASCII.
keys-page-key = Clé
keys-page-days = Validité
keys-page-public = Clé publique
keys-valid-now = Signe depuis le { $since }
keys-valid-ended = A signé du { $since } au { $until } ; ces étiquettes restent valables
keys-valid-withdrawn = RETIRÉE le { $day } : ne vous fiez pas aux étiquettes signées avec cette clé
