"""Reads a calendar file with another program, icalendar, and says whether it is sound.

    python calendar_file.py FILE

RFC 5545: one calendar, its entries whole days with a name of their own, lines of at most 75 octets that end in CRLF.
Ends with "N passed, N failed"; the exit code is 1 when anything failed.
"""

import datetime
import sys

from icalendar import Calendar

with open(sys.argv[1], "rb") as file:
    raw = file.read()
calendar = Calendar.from_ical(raw)
entries = calendar.walk("VEVENT")
lines = raw.split(b"\r\n")
checks = [
    ("version 2.0", calendar["VERSION"] == "2.0"),
    ("a product is named", bool(calendar.get("PRODID"))),
    ("there are entries", bool(entries)),
    ("lines end in CRLF and have at most 75 octets", all(len(line) <= 75 and b"\n" not in line for line in lines)),
    ("every name is another", len({str(entry["UID"]) for entry in entries}) == len(entries)),
    ("every entry is one whole day", all(type(entry["DTSTART"].dt) is datetime.date
                                         and entry["DTEND"].dt - entry["DTSTART"].dt == datetime.timedelta(days=1)
                                         for entry in entries)),
    ("every entry says when it was made, in UTC", all(entry["DTSTAMP"].dt.tzinfo is not None for entry in entries)),
    ("every entry says what it is", all(str(entry["SUMMARY"]).strip() for entry in entries)),
    ("nothing is wrong", not any(entry.errors for entry in entries)),
]
for what, holds in checks:
    if not holds:
        print(f"FAILED {what}")
failed = sum(not holds for _, holds in checks)
print(f"{len(checks) - failed} passed, {failed} failed")
sys.exit(1 if failed else 0)
