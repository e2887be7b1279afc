# A hose assembly that was fitted: the report from the machine, and the shop's answer.

## The report

fitted-report = Report as installed
fitted-hint = The shop confirms the report. Until then it does not count.
fitted-hours-hint = Hour meter, without a thousands separator. Example: 1234.5
fitted-hours-not-read = { $given } cannot be read as machine hours.
    .mend = Enter hours without a thousands separator, with at most two decimals.
fitted-photo = Photo of the installed hose assembly
fitted-send = Send report
fitted-sending = Sending the report ...
fitted-not_sent = Report not sent
fitted-not_kept = Not sent: no connection, and this phone cannot save the report. Try again, or call the shop.
fitted-waiting = No signal. The report is saved on this phone and will be sent automatically. Do not send it again.
fitted-waiting-open = The report is saved on this phone. It will be sent when there is a signal and this page is open.
fitted-outbox-sent = Your report was sent. Tag:
fitted-outbox-refused = This report was not accepted. Correct it and send it again.

## What became of it

fitted-page = Installation of tag { $number }
fitted-title = Reported as installed
fitted-waiting-day = Installed on { $day }: reported, not yet confirmed by the shop
fitted-agreed-day = Installed on { $day }: confirmed by the shop
fitted-void-act = The record of this tag is void. Do not use this hose assembly. If it is installed, stop the machine, release the pressure and remove it. Then call the shop.
fitted-on = Installed on
fitted-replace_by = Replace by (guidance)
fitted-guidance = At the latest, storage included. Heavy use, heat or damage shorten it. The day is not a permission to use the hose assembly until then.
fitted-stored = { $years ->
    [one] It was stored longer than the one year that the source allows: have it inspected before further use.
   *[other] It was stored longer than the { $years } years that the source allows: have it inspected before further use.
 }
fitted-calendar = Add the day to a calendar
fitted-open = Installation and replacement date
fitted-machine-title = Machine of tag { $number }
fitted-machine-hoses = Other hose assemblies of this machine
fitted-machine-show = Show hose assemblies
fitted-machine-none = No other hose assembly is recorded for this machine.
fitted-pin-hint = Six digits. The shop gives you the PIN of this tag.
fitted-pin = PIN for the machine's hose assemblies
fitted-pin-told = Give it to the customer. It is not on the tag.
fitted-no-date = Neither the build date nor the installation date is known.
    .mend = Ask the shop for the build date.
fitted-event = Replace hose assembly { $number }
fitted-event-description = Guidance. Source: { $source }. Tag: { $address }

## The shop

fitted-bench-title = Reported as installed
fitted-bench-count = Reported as installed, to confirm: { $count }
fitted-bench-hint = A confirmed report becomes part of the history. The earliest date counts.
fitted-state-waiting = to confirm
fitted-state-agreed = confirmed
fitted-state-refused = rejected
fitted-elsewhere = This number is also said to be on another machine: { LIST($machines) }. A tag may have been copied or moved: check both machines.
fitted-withdrawn = This hose assembly is withdrawn ({ LIST($reasons) }) and is said to be on a machine. Call: it must come off.
fitted-void = The record of this hose assembly is void (“{ $reason }”), and it is said to be on a machine. Call: it must come off.
fitted-erase = Erase name and photo
fitted-erase-ask = Erase who made this report, and its photo? Date, machine and hours stay. This cannot be undone.
fitted-before-built = The installation date is before the build date: one of them is wrong.
fitted-hours = { $hours } h
fitted-why = Reason, if you reject it
fitted-agree = Confirm
fitted-refuse = Reject
fitted-none = No installation has been reported.
fitted-line = Installed on { $day }
fitted-line-machine = Installed on { $day }, machine { $machine }
