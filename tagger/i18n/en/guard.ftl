# What the web refuses before a page is reached, and what a scanned text is.
guard-not-your-role = This needs the role “{ $role }”.
    .mend = Ask your manager.
guard-not-your-role-title = Access denied
guard-form-expired = This form has expired.
    .mend = Go back, reload the page and send it again.
guard-form-expired-title = Form expired
guard-form-elsewhere = This form was sent by another website.
    .mend = Open the tag's page and send it from there.
guard-no-page = This page does not exist.
    .mend = Choose one from the menu or scan a tag.
guard-no-page-title = Not found
guard-database-title = Server problem
guard-too-many-requests = Too many requests. Wait one minute and try again.
guard-busy = The server is answering as many requests as it can.
    .mend = Try again in a few seconds. Nothing of this request was done.
guard-metrics-listen = Metrics are served on this machine only.
    .mend = Enter an address such as 127.0.0.1:9464.
guard-orders-too-many = Too many orders from this connection or for this tag within an hour.
    .mend = Call the shop, or send it again in an hour.
guard-reports-too-many = Too many reports from this connection or for this tag within an hour.
    .mend = Call the shop, or send it again in an hour.
guard-pin-wrong = The PIN is not that of this tag.
    .mend = Ask the shop for the PIN of this tag.
guard-pin-tries = Too many wrong PINs.
    .mend = Wait ten minutes.
guard-pictures-too-many = Too many photos from this connection within an hour.
    .mend = Send it without photos.
guard-pictures-full = The shop takes no more photos today.
    .mend = Send it without photos, or show them to the shop another way.
guard-picture-too-large = The photo is larger than { $megabytes } MB.
    .mend = Use a smaller photo, or send it without.
guard-picture-unreadable = The file is not a photo that can be read.
    .mend = Use a JPEG, PNG or WebP photo.
guard-password-short = The password is too short.
    .mend = Use at least { $least } characters.
guard-password-long = The password is too long.
    .mend = Use at most { $most } characters.
guard-password-common = The password is among those that are tried first.
    .mend = Use a phrase of several words that nobody connects with you or the shop.

## Tags and lots that were scanned

guard-tag-without-spec = Tag { $number } is not in our records, and a number alone contains no spec.
    .mend = Scan the QR code on the tag: it contains the full spec.
guard-too-large-title = Too large
guard-too-large = The request is larger than { $megabytes } MB. Send less.
