# The shop's signing keys: their file, and the page on which they are printed.

## The key file

keys-not-set = No key file is set.
    .mend = Set TAGGER_SIGNING_KEY to the path of the key file.
keys-file-missing = There is no key file here.
    .mend = Make one with "tagger signing-key new", or restore your copy.
keys-file-there = There is a key file already: { $file }.
    .mend = Leave --published out; the keys in the file are counted on.
keys-published-broken = This is not the list of public keys that the shop published.
    .mend = Save what the shop’s address followed by { $at } shows, from a copy of it or as the key page has it.
keys-file-open = Other users of this computer can read the key file.
    .mend = Let its owner alone read it: chmod 600.
keys-file-broken = This is not a complete key file.
    .mend = Restore your copy of it.
keys-file-busy = Another command is changing the keys.
    .mend = Try again. If no command is running, delete this file.
keys-file-folder = The key file cannot be written here.
    .mend = Use a folder that exists and that you may write to.
keys-full = A shop has at most 255 keys.
    .mend = Use the last key.
keys-unknown = There is no key with this number.
    .mend = Use a number from 1 to { $count }.

## The key page

keys-page-title = Public keys of the tags
keys-page-why = The shop signs the QR code on its tags. With these keys anybody can check that a tag is from this shop and that nobody changed its values.
keys-page-how = Keep this page with the records. A phone that opened a tag page of the shop once checks tags by itself, without a signal too. The keys are also at { $address }.
keys-page-format = Ed25519 (RFC 8032), 32 bytes in hexadecimal. What is signed: { $text }, in ASCII.
keys-page-key = Key
keys-page-days = Valid
keys-page-public = Public key
keys-valid-now = Signs since { $since }
keys-valid-ended = Signed from { $since } to { $until }; these tags stay valid
keys-valid-withdrawn = WITHDRAWN on { $day }: do not trust tags signed with it
