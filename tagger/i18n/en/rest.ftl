# The JSON API: why a program's request is refused. Field names, roles and headers are the API's own words.

rest-no-token = The request has no valid device token.
    .mend = Send it in the header: Authorization: Bearer ...
rest-role-too-low = This request needs a token of the role { $role } or higher.
    .mend = Use a token of that role, or ask the manager to create one.
rest-no-such-address = There is nothing at this address.
    .mend = Check the address in the API description.
rest-no-such-method = This address does not accept this method.
    .mend = Check the method in the API description.
rest-too-large = The request is larger than { $megabytes } MB.
    .mend = Send less.
rest-cannot-be-read = The request cannot be read.
    .mend = Correct each field listed under problems.
rest-cannot-be-stored = The request contains a character or number that cannot be stored.
    .mend = Check its texts and numbers.
rest-database-away = The database is unavailable.
    .mend = Repeat the request with the same Idempotency-Key.
rest-failed = Server error.
    .mend = Details are in the server log.

rest-built-in-future = The build date { $date } is in the future.
    .mend = Enter the day it was built, or leave it out.
rest-crimp-twice = This end is named twice.
    .mend = Send one diameter for each end.
rest-one-of-text-and-digits = Exactly one of text and digits is needed.
    .mend = Send one of the two.
rest-not-a-column = { $name } is not a known column.
    .mend = Use one of: { LIST($columns, style: "or") }.
rest-columns-do-not-match = match names { $given ->
        [one] { $given } column
       *[other] { $given } columns
    }, and the file has { $columns }.
    .mend = Name one for each column of the file; use an empty name for a column to skip.
rest-machine-without-hoses = { $machine } has no hose assemblies on record.
    .mend = Check the machine's name and the customer's.
rest-nothing-to-change = The request changes nothing.
    .mend = Send role, active or password.
rest-nobody-affected = The withdrawal affects no registered assembly.
    .mend = No customers are affected.
rest-words-not-read = The words are not a JSON object.
    .mend = Send an object with the words of the file as names and our values as values.
rest-words-not-a-value = No matched column takes { $value } for { $word }.
    .mend = Use a value that the dry run names for this word, or match its column.
rest-form-one-tag = Only a PDF holds several tags.
    .mend = Use pdf, or ask for one tag at a time.
rest-printed-already = Printed already, or sent to a printer: { LIST($numbers) }. A second tag of one number can end on another hose.
    .mend = If it is to be printed again, send again: true, with the reason.
