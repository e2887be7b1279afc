# What the store refuses, what became of a print job, and the states of orders and prints.

## Assemblies and registering

store-not-registered = Tag { $number } is not registered.
    .mend = Check the number, or scan the tag: its QR code contains the full spec.
store-run-not-found = Batch { $run } does not exist.
    .mend = Search for its tags instead.
store-rows-none = There are no rows to register.
    .mend = Enter at least one row.
store-rows-too-many = { $count } assemblies are more than one batch may have ({ $most }).
    .mend = Register them in several batches.
store-danger-reason = { $danger } It is registered only with a written reason.
    .mend = Choose another hose or fluid, or enter the reason for building it as it is.
store-quantity-not-valid = { $count } is not a valid quantity.
    .mend = Enter 1 to { $most }.
store-read-back = The QR code failed its read-back check. Nothing was registered.
    .mend = Report it to support.
store-numbers-used-up = No free tag numbers were found.
    .mend = Report it to support.
store-number-taken = The tag number { $number }, drawn for this list, was given to another hose assembly in the meantime.
    .mend = Run the list again.
store-key-of-other = This key was already used for { $what ->
        [registration] another registration
        [order] another order request
        [print] another print job
       *[request] another request
     }.
    .mend = Use a new key.
store-key-length = The key is empty or longer than { $most } characters.
    .mend = Use 1 to { $most } characters.
store-not-a-page-mark = { $mark } is not a page mark.
    .mend = Use the last one you received.
store-not-an-event = { $kind } is not a kind of event.
    .mend = Use one of: { LIST($kinds, style: "or") }.

## Texts

store-too-long = The text is longer than { $most } characters.
    .mend = Use at most { $most } characters.
store-control-character = The text contains a control character.
    .mend = Delete the character and retype the text.
store-hidden-character = The text contains a line break or a hidden character.
    .mend = Retype it on one line.
store-name-length = The name must have 1 to { $most } characters.
    .mend = Enter 1 to { $most } characters.
store-name-used = The name { $name } is already in use.
    .mend = Choose another name.

## Orders

store-order-not-found = Order { $reference } is not on record.
    .mend = Check the order number.
store-order-tag-unknown = Tag { $number } is not registered, so its spec is not known.
    .mend = Send the spec too: it is in the QR code.
store-order-tag-void = The record of tag { $number } is void: nothing can be ordered from it.
    .mend = Order from the tag that replaces it, or ask the shop.
store-order-of-nothing = The order has neither a tag number nor a spec.
    .mend = Enter the tag number or send the spec.
store-order-not-after = The status “{ $wanted }” is not allowed after “{ $now }”.
    .mend = Allowed: { LIST($next, style: "or") }.
store-order-finished = The order has the status “{ $now }”, which can no longer change.
    .mend = Enter a new order instead.
store-order-untested = The order cannot be handed over: the proof test has not passed for { LIST($numbers) }.
    .mend = Record the proof tests first.
store-order-nothing-built = The order cannot be handed over: no hose assembly is registered for it, so none has passed the proof test.
    .mend = Build and test the hose assembly from this order, or decline the order.
store-order-question-missing = The question to the customer is missing.
    .mend = Enter your question to the customer.
store-order-past = { $day } is in the past.
    .mend = Enter today or a later date.
store-order-otherwise = Order { $reference } asks for no change, but this differs from it: { LIST($fields) }.
    .mend = Correct it, or confirm that the difference was considered.
store-order-change-not-made = Order { $reference } asks for a change: “{ $changes }”. The assembly is as it was ordered.
    .mend = Enter the change in its field, or tick that the change was considered.
store-order-not-a-state = { $state } is not a status of an order request.
    .mend = Use one of: { LIST($states, style: "or") }.
store-contact-missing = A phone number or an email address is required.
    .mend = Enter one of them.
store-phone-not-valid = { $phone } is not a phone number.
    .mend = Use a number such as +44 1632 960 111.
store-email-not-valid = { $email } is not an email address.
    .mend = Use an address such as anna@example.com.
store-photo-not-found = There is no photo { $id }.
    .mend = Open the order or the report again.
store-fitted-not-found = There is no report { $id }.
    .mend = Open the list again.
store-fitted-many = { $most } reports of this tag are waiting for the shop already.
    .mend = Call the shop.
store-fitted-no-photo = Report { $id } has no photo.
    .mend = It may have been erased.
store-fitted-decided = Report { $id } has been decided already.
    .mend = Open the list again.
store-fitted-void = The record of tag { $number } is void: the report cannot be confirmed.
    .mend = Call whoever reported it: the hose assembly must come off. Then reject the report with the reason.
store-fitted-reason-missing = A rejected report needs a reason.
    .mend = Enter the reason.
store-fitted-to-come = { $day } is still to come.
    .mend = Enter the day on which it was installed.
store-fitted-hours = { $given } is not a number of machine hours between 0 and { $most }.
    .mend = Read the hour meter again.
store-order-state-received = received
store-order-state-asked = question sent
store-order-state-accepted = accepted
store-order-state-building = being built
store-order-state-done = done
store-order-state-declined = declined

## Withdrawals

store-withdraw-which = A withdrawal must name one tag, one hose lot or one fitting lot.
    .mend = Enter exactly one of them.
store-withdraw-reason-missing = The reason for the withdrawal is missing.
    .mend = Enter the reason for the withdrawal.
store-lift-reason-missing = The reason for lifting the withdrawal is missing.
    .mend = Enter the reason for lifting it.
store-withdrawn-already = { $scope ->
        [hose_lot] Hose lot { $value } is already withdrawn.
        [fitting_lot] Fitting lot { $value } is already withdrawn.
       *[tag] Tag { $value } is already withdrawn.
     }
    .mend = To change the reason, lift the withdrawal first.
store-withdrawal-not-found = Withdrawal { $withdrawal } is not on record.
    .mend = Check the list of withdrawals.
store-withdrawal-lifted = Withdrawal { $withdrawal } is already lifted.
    .mend = Check the list of withdrawals.
store-lot-withdrawn = { $scope ->
        [hose_lot] Hose lot { $lot } is withdrawn (“{ $reason }”).
       *[fitting_lot] Fitting lot { $lot } is withdrawn (“{ $reason }”).
     }
    .mend = Use another lot or ask a manager to lift the withdrawal.
store-lot-of-another-hose = Reel lot { $lot } is known as { LIST($known) }.
    .mend = Check the reel. If the lot is right, choose the reason: a date code, another manufacturer, or a wrong earlier record.
store-hose-with-part = { $hose }, part { $part }
store-lot-reason-not-known = “{ $value }” is not a reason for the lot.
    .mend = Use one of: { LIST($reasons) }.
store-lot-reason-date_code = The lot is only a date code
store-lot-reason-other_manufacturer = Another manufacturer with the same lot number
store-lot-reason-earlier_record_wrong = The earlier record is wrong

## Crimps and proof tests

store-crimp-not-valid = The diameter and its tolerances are not a valid crimp diameter.
    .mend = Enter a diameter of 1 to 300 mm and tolerances of 0 to 5 mm.
store-crimp-below-bore = A crimp of { $diameter } is not wider than the bore of the hose, { $bore }. It cannot be right.
    .mend = Check the value and its unit: it is read as mm.
store-crimp-source-missing = The source of the crimp diameter is missing.
    .mend = Enter the source: it is required for every crimp diameter.
store-crimp-shell-missing = The ferrule of the crimp diameter is missing.
    .mend = Enter the ferrule: it is required for every crimp diameter.
store-crimp-not-found = Crimp diameter { $crimp } is not on record.
    .mend = Use the id last received.
store-crimp-none = There is no crimp diameter for this hose with the ferrule { $shell }.
    .mend = A manager can add one under Shop, from the fitting manufacturer's chart.
store-crimp-twice = Measured twice: { LIST($ends) }. Which of the two values holds is not clear.
    .mend = Enter one crimp diameter for each end.
store-shop-row-reason-missing = The reason for withdrawing the value is missing.
    .mend = Enter the reason.
store-shop-row-not-found = There is no value { $id } of the shop.
    .mend = Check the number in the list of the shop's values.
store-shop-row-ended = The value { $id } has already been replaced or withdrawn.
    .mend = Check the list of the shop's values.
store-value-end ={ $series ->
        [none] { $size }
       *[other] { $size } { $series }
    } { $connection }, { $form }, { $shape ->
        [elbow] elbow
       *[straight] straight
    }, { $material }: { $pressure } (source: { $source })
store-value-hose ={ $standard } -{ $dash }, { $edition ->
        [none] no edition
       *[other] edition { $edition }
    }, { $part ->
        [none] any part number
       *[other] part number { $part }
    }: { $pressure } (source: { $source })
store-value-fluid ={ $standard }, { $part ->
        [none] any part number
       *[other] part number { $part }
    }: approved for { $fluid } up to { $limit } (source: { $source })
store-value-with = { $value }, with { $fluid } only
store-value-up-to = { $value }, up to { $limit }
store-proof-pressure-low = { $given } is less than the proof pressure required, { $called }.
    .mend = Test again at that pressure, or record the test as failed.
store-proof-hold-short = { $given } s is less than the { $called } s required.
    .mend = Hold the pressure for the full time, or record the test as failed.
store-proof-above-burst = { $given } is above the minimum burst pressure, { $burst } (limited by: { $part }). It cannot be right.
    .mend = Check the value and its unit. A number without a unit is read as bar.
store-proof-over-unconfirmed = { $given } is more than { $most }, the most that a proof test may load the parts with. Recorded like this, it holds the assembly until the manufacturers allow it in writing.
    .mend = Check the value and its unit. If this pressure was applied, confirm it.
store-proof-rating-unknown = The rating is not known: { LIST($parts) }. Without it no proof test can pass.
    .mend = Enter the manufacturer's working pressure and its source with the test.
store-proof-rating-unverified = The rating is unverified: { LIST($parts) }. No proof test can pass on it.
    .mend = Enter the manufacturer's working pressure and its source with the test.
store-proof-no-rating-applies = No working pressure applies to this assembly. No proof test can pass.
    .mend = Read the warnings of the assembly. Use a hose and ends that are rated for its fluid and temperature.
store-proof-rating-not-asked = The rating of every part is known.
    .mend = Delete this value.
store-proof-rating-source = The source of the manufacturer's working pressure is missing.
    .mend = Enter the data sheet or letter it is taken from.
store-proof-rating-below-tag = The manufacturer's working pressure, { $given }, is less than the tag says, { $told }. No proof test can pass on it.
    .mend = Check the value and its unit. If it is right, withdraw the tag and register the assembly again with this value.
store-proof-gas = A proof test is made with liquid, never with gas.
    .mend = Test again with liquid, or record the test as failed.
store-proof-why-held = { $given } was applied. More than { $most } loads the parts beyond a proof test: hold the assembly until the manufacturers allow it in writing.
store-proof-why-slip = The pressure recorded, { $given }, is above the minimum burst pressure of { $burst }. It cannot be right, so this record proves nothing.
store-proof-why-lower = Not a proof test. A lower test was asked for by: { $source }
store-proof-why-gas = Not a proof test: it was made with gas.
store-proof-why-unknown = Not a proof test: the rating of the assembly was not known.
store-proof-why-short = Not a proof test: pressure or hold time was less than required.
store-proof-why-allowed = Not a proof test: the pressure was above the limit. The manufacturers allowed it in writing.
store-proof-why-crimped = Not a proof test: a crimp was recorded on { $day }, after this test. Test the assembly again.
store-proof-after-failure = { LIST($numbers) }: the last proof test failed.
    .mend = Enter in the note what was repaired, then record the test as passed.
store-proof-not-held = The assembly is not held: no test loaded it beyond a proof test.
    .mend = Check the tag number.
store-proof-allowed-future = { $day } is in the future.
    .mend = Enter the date of the manufacturers' document.
store-crimp-of-end = { $end } ({ $measured } mm)
store-blocked-withdrawn = Tag { $number } cannot be printed: it is withdrawn (“{ $reason }”).
    .mend = Scrap the assembly, or ask a manager to lift the withdrawal.
store-blocked-void = Tag { $number } cannot be printed: its record is void (“{ $reason }”).
    .mend = Register the assembly again with the correct values.
store-proof-withdrawn = The hose assembly is withdrawn: { LIST($reasons) }. A proof test passed is not recorded for it.
    .mend = Ask a manager to lift the withdrawal first. A test that failed may be recorded.
store-void-reason-missing = The reason for making the record void is missing.
    .mend = Enter the reason: it stays in the history.
store-void-already = The record of tag { $number } is void.
    .mend = Register the assembly again with the correct values.
store-void-not-used = The record of tag { $number } is void: do not fit this hose assembly.
    .mend = Register the assembly again with the correct values.
store-void-too-late = The record of tag { $number } cannot be made void: { $kind ->
        [scanned] its tag was scanned on { $day }.
        [fitted] the assembly was installed on { $day }.
        [proof_tested] it was proof-tested on { $day } and may be certified.
        [ordered] it was ordered again on { $day }.
       *[other] more has been recorded since { $day }.
     }
    .mend = Correct the record, or withdraw the tag.
store-void-handed-over = The record of tag { $number } cannot be made void: order { $reference } was handed over.
    .mend = Correct the record, or withdraw the tag.
store-not-correctable = This value cannot be corrected.
    .mend = Use one of: { LIST($fields) }. For any other slip make the record void, or withdraw the tag.
store-correct-reason-missing = The reason for the correction is missing.
    .mend = Enter the reason: it stays in the history.
store-nothing-corrected = Nothing differs from the record of tag { $number }.
    .mend = Enter the correct value.
store-blocked-crimp = Tag { $number } cannot be printed: the crimp diameter is out of tolerance at { LIST($ends) }.
    .mend = Re-make the assembly and record its crimp diameters again, or scrap it.
store-blocked-proof = Tag { $number } cannot be printed: its proof test of { $day } failed.
    .mend = Re-make the assembly and record a new proof test, or scrap it.
store-blocked-proof-held = Tag { $number } cannot be printed: the assembly is held. { $why }
    .mend = Record the manufacturers' written allowance, or withdraw the assembly.
store-blocked-proof-slip = Tag { $number } cannot be printed: the pressure of its proof test of { $day } is above the minimum burst pressure. It cannot be right.
    .mend = Record a new proof test, or withdraw the assembly.
store-blocked-untested = Tag { $number } cannot be printed yet: this shop prints no tag before the proof test has passed.
    .mend = Print the job card, which has the tag number, then record the proof test.
store-stop-none = Tag { $number }: the hose assembly is neither withdrawn nor void, and no test of it failed. The “do not use” tag is for those.
    .mend = Withdraw the hose assembly first, with the reason.
store-stop-withdrawn = withdrawn, { $reason }
store-stop-withdrawn-short = withdrawn (scan the code for details)
store-stop-void = record void, { $reason }
store-stop-void-short = record void (scan the code for details)
store-stop-held = held after a proof test. { $why }
store-stop-held-short = held (its proof test went above the limit)
store-stop-proof = proof test of { $day } failed
store-stop-slip = the pressure recorded for the proof test of { $day } cannot be right
store-stop-crimp = crimp diameter out of tolerance at { LIST($ends) }
store-fitted-untested = Tag { $number } cannot be recorded as installed: this shop lets no hose assembly out before the proof test has passed.
    .mend = Do not install the hose assembly. Record its proof test first.
store-proof-gauge-missing = The gauge of this calibration date is missing.
    .mend = Enter the number of the gauge.
store-proof-gauge-expired = The calibration of the gauge ended on { $day }: no test can pass with it.
    .mend = Test with a gauge whose calibration is valid, or correct the date.
store-batch-empty = No hose assembly is selected.
    .mend = Select at least one.
store-batch-too-large = { $count } hose assemblies are more than the { $most } of one batch.
    .mend = Record them in several batches.
store-batch-of = { LIST($numbers) }: { $why }
    .mend = Correct the value, or record these assemblies separately.
store-batch-held = { $given } is above a proof test for { LIST($numbers) }: nothing of the batch is recorded.
    .mend = Check the value and its unit. If this pressure was applied to all of them, confirm it: they will be held. Otherwise record an assembly that was really loaded so on its own record.

## Print jobs and printers

store-printer-not-found = { $printer } is not a printer in use.
    .mend = Choose one from the list. A manager adds printers under Shop.
store-printer-name-used = A printer already has the name { $name }.
    .mend = Choose another name or remove that printer.
store-print-job-not-found = Print job { $job } is not on record.
    .mend = Look under Prints.
store-print-job-moved = Print job { $job } now has the status “{ $state }”.
    .mend = Reload the page first.
store-print-state-waiting = waiting
store-print-state-sending = sending
store-print-state-printing = printing
store-print-state-done = printed
store-print-state-failed = failed
store-print-state-unknown = print unconfirmed
store-print-state-dropped = cancelled
store-print-interrupted = The program stopped while sending the job. It may have been printed.
    .mend = Check whether the tags were printed.
store-print-restored = The job was restored from a backup. It may already have been printed.
    .mend = Check whether the tags were printed before you send it again.
store-print-retired = The printer was removed before the job was sent.
    .mend = Send the tags to another printer.
store-print-not-taken = The program stopped while sending the job, and the printer does not list it: it was not printed.
    .mend = Send it again.
store-print-forgotten = The printer no longer lists this job. It may have been switched off.
    .mend = Check whether the tags were printed.
store-print-crashed = The program failed while sending the job ({ $error }).
    .mend = Check whether the tags were printed, and report it to support.
store-print-unconfirmed = It may have been printed.
store-print-status = Printer status: { LIST($said) }.

## People and devices

store-code-wrong = This is not the current code.
    .mend = Check the code on the console.
store-last-manager = This is the last manager and cannot be changed.
    .mend = Add another manager first.
store-person-not-found = Person { $person } is not on record.
    .mend = Check the list of people.
store-token-not-found = Device { $token } is not on record.
    .mend = Check the list of devices.
store-recipe-not-found = Recipe { $name } is not on record.
    .mend = Choose one from the list.
store-recipe-used = A different spec is saved as { $name }.
    .mend = Use another name, or tick “Replace the saved spec”.
store-recipe-of-manager = The spec saved as { $name } is a manager's.
    .mend = Use another name, or ask a manager to replace it.

## The database and its backups

store-demo-reachable = The demonstration would be reachable by others at { $base }, with a password that everybody knows.
    .mend = Take TAGGER_DEMO away, or set TAGGER_HOST and TAGGER_BASE_URL to 127.0.0.1.
store-demo-only-manager = The sign-in of the demonstration is the only manager, and its password is known to everybody.
    .mend = Start once more with TAGGER_DEMO=1 on this computer, add a manager of your own, then start without it; or begin with a new database.
store-database-cannot-open = The database cannot be opened: { $why }
    .mend = Check TAGGER_DATABASE_URL and that the folder or server exists.
store-database-full = The server's disk is full, so nothing can be saved.
    .mend = Tell the person responsible for the server. Once there is space, check what was saved before you enter it again.
store-database-read-only = The database is read-only, so nothing can be saved.
    .mend = Tell the person responsible for the server. Once it can be written, check what was saved before you enter it again.
store-database-busy = The server is busy.
    .mend = Wait a few seconds. Check what was saved before you enter it again.
store-database-away = The database is unavailable.
    .mend = Try again in a minute, and check what was saved before you enter it again. If it stays unavailable, tell the person responsible for the server.
store-database-newer = The database was written by a newer version (step { $step }).
    .mend = Install that version, or restore a backup into a new database.
store-database-moved = The records of this database were moved to another one.
    .mend = Set TAGGER_DATABASE_URL to the new database. To go back, restore a backup of it into a new database.
store-database-address = { $address } is not the address of a database.
    .mend = Use an address such as sqlite:////srv/data.sqlite3 or postgresql://name@host/data.
store-database-kind = The database is neither SQLite nor PostgreSQL.
    .mend = Use one of them.
store-database-in-memory = The database would be lost when the program stops (in-memory database).
    .mend = Enter a file.
store-backup-exists = { $path } already exists and will not be overwritten.
    .mend = Choose a new file name or move the existing file.
store-backup-no-folder = The folder { $path } does not exist.
    .mend = Create the folder or check the path.
store-backup-not-verified = The backup { $path } failed verification.
    .mend = Check the disk.
store-backup-own-file = { $path } is a file of the database itself.
    .mend = Choose another file for the backup.
store-restore-no-file = { $path } does not exist.
    .mend = Check the path.
store-restore-not-a-backup = { $path } is not a complete backup.
    .mend = Make a new backup.
store-restore-changed = { $path } was changed after the backup was written: its checksum does not match. Nothing was restored.
    .mend = Use another backup.
store-restore-unsealed = { $path } carries no checksum: it cannot be shown to be as it was written.
    .mend = Use a newer backup. For a backup of an older version, restore with --unsealed and check the records.
store-restore-incomplete = The restored database is incomplete.
    .mend = Try again.
store-restore-not-empty = A backup is restored into an empty database only. This one contains { LIST($tables) }.
    .mend = Enter the address of a new one in TAGGER_DATABASE_URL.
store-audit-link-gone = Link { $link } of the chain is missing.
store-audit-link-changed = Link { $link } of the chain was changed, removed or moved (table { $table }, row { $key }).
store-audit-row-gone = Row { $key } of table { $table } was deleted (link { $link }).
store-audit-row-changed = Row { $key } of table { $table } is not as it was recorded (link { $link }).
store-audit-salt-gone = Row { $key } of table { $table } can no longer be checked: the salt of link { $link } was removed and no newer link replaces it.
store-audit-row-unlinked = Row { $key } of table { $table } was not written by this program: no link tells of it.
store-audit-row-twice = Table { $table } has more links than rows.
store-audit-text-gone = “{ $text }” stands in table assembly, and table recorded_text lacks it or has it altered: a search or a withdrawal can miss its hose assembly.
store-audit-head-gone = { $head } is not in the chain: what was recorded at the end was removed or changed.
store-audit-no-head = The backup { $path } is of an older version and carries no chain.
    .mend = Use a newer backup.
store-move-itself = The records would be moved into the database they are in.
    .mend = Enter the address of another, empty database.
store-move-not-empty = The records are moved into an empty database only. This one contains { LIST($tables) }.
    .mend = Enter the address of a new database.
store-move-differs = Table { $table } differs after the move. Nothing was kept in the new database.
    .mend = Check the disk and the memory of both computers, then move again.
store-move-in-use = Another program has the database open.
    .mend = Stop the server and every other command, then move again.
store-database-older = An older version cannot keep what table { $table } says: hoses that are held back would be used again.
    .mend = Stay with this version, or restore a backup that the older version wrote.
store-own-hose-not-kept = No hose of the shop has the part number { $part } in dash { $dash }.
    .mend = Check the part number and the dash in the list of hoses.
store-value-dimension =
    { $which ->
        [hose_bend] Minimum bend radius
        *[other] Outside diameter
    } of { $part ->
        [none] { $standard }-{ $dash }
        *[other] { $standard }-{ $dash }, part { $part }
    }: { $length } ({ $source })
