# What is said of tag numbers, links, tag codes, photos and symbols that cannot be read or made.

## Tag numbers

code-character-at = "{ $character }" at position { $place }
code-number-characters = This contains characters not used in tag numbers: { LIST($characters) }.
    .mend = Compare these positions with the tag.
code-number-length = This has { $count } of the { $right } characters of a tag number.
    .mend = Compare it with the tag: XXXXX-XXXXXX.
code-number-check = The check character is wrong: at least one character is wrong.
    .mend = Compare it with the tag, character by character.
code-number-check-near = The check character is wrong: at least one character is wrong.
    .mend = Compare it with the tag, character by character. It may be { LIST($numbers, style: "or") }.

## Links

code-link-address = This is not a web address.
    .mend = Use one such as { $example }.
code-link-host = The address must be a host only: letters, digits, dots and dashes.
    .mend = Use one such as { $example }.
code-link-unknown = This is not the link of a tag.
    .mend = Scan the QR code on the tag, or enter the tag number.
code-number-alone = This is a tag number alone, without the spec.
    .mend = To see the spec, scan the QR code or open the record of the tag (tagger show NUMBER).

## Tag codes: the digits in the link

code-version = The tag code uses format version { $version }, which this program does not support.
    .mend = Update the program.
code-hose-tail = The dash size of the hose tail differs from that of the hose.
    .mend = Use { $dash }.
code-too-large = This value is too large for the tag code.
    .mend = Check the value.
code-not-a-size = This is not a size.
    .mend = Check the size.
code-not-stored = This name cannot be stored on a tag.
    .mend = Choose a name from the list.
code-text = This cannot be stored on a tag: at most { $maximum } characters, plain letters, digits and signs only.
    .mend = Use a shorter or simpler name.
code-incomplete = The tag code is incomplete.
    .mend = Scan the tag again. If that does not help, enter the tag number.
code-not-digits = These digits are not a tag code.
    .mend = Scan the tag again. If that does not help, enter the tag number.
code-damaged = The tag code is damaged (checksum error).
    .mend = Scan the tag again. If that does not help, enter the tag number.
code-surplus = The tag code is too long by { $bits ->
    [one] { $bits } bit
   *[other] { $bits } bits
 }.
    .mend = Scan the tag again. If that does not help, enter the tag number.
code-unknown-point = The tag code uses a number that this program does not know.
    .mend = Update the program.

## Photos

code-photo-too-large = The image is too large.
    .mend = Use a photo of at most { $megapixels } megapixels.
code-photo-unreadable = This is not a readable image.
    .mend = Use a PNG, JPEG, GIF or WebP file.
code-photo-several = The photo shows more than one tag: { LIST($numbers) }.
    .mend = Photograph one tag at a time; cover the others.
code-photo-other = The photo shows a code that is not a tag.
    .mend = Photograph the tag itself.
code-photo-none = The photo shows no readable code.
    .mend = Move closer, hold still, avoid glare, or enter the tag number.

## QR code and bar code

code-symbol-version = This QR version is too small for the text at level { $level }.
    .mend = Use version { $version }.
code-symbol-letters = This text cannot be put in a bar code (Code 128).
    .mend = Use plain letters, digits and signs (printable ASCII).
code-symbol-level = This is not an error-correction level of QR codes.
    .mend = Use L, M, Q or H.
code-symbol-too-long = The text is too long for a QR code.
    .mend = Shorten the link.
