// The day by which to replace a hose as an iCalendar file (RFC 5545), made on the phone: line for line what
// api/scan/fitted.py answers.

// { number: the tag's, day: "2031-01-02", summary, said, url }; `now`: a Date.
export function calendarOf({ number, day, summary, said, url }, now) {
  const lines = [
    "BEGIN:VCALENDAR", "VERSION:2.0", "PRODID:-//hose assembly tags//EN", "BEGIN:VEVENT",
    `UID:replace-${number}@${url.split("/")[2]}`,
    `DTSTAMP:${now.toISOString().replace(/[-:]|\.\d+/g, "")}`,
    `DTSTART;VALUE=DATE:${day.replaceAll("-", "")}`, `DTEND;VALUE=DATE:${nextDay(day).replaceAll("-", "")}`,
    `SUMMARY:${escaped(summary)}`, `DESCRIPTION:${escaped(said)}`, `URL:${url}`, "TRANSP:TRANSPARENT",
    "BEGIN:VALARM", "ACTION:DISPLAY", "TRIGGER:-P30D", `DESCRIPTION:${escaped(summary)}`, "END:VALARM",
    "END:VEVENT", "END:VCALENDAR",
  ];
  return lines.flatMap(folded).map((line) => `${line}\r\n`).join("");
}

const nextDay = (day) => new Date(Date.parse(day) + 86400000).toISOString().slice(0, 10);
const escaped = (text) => text.replace(/[\\,;]/g, "\\$&").replaceAll("\n", "\\n");

// Pieces of at most 75 octets, each but the first begun by a blank.
function folded(line) {
  const pieces = [], octets = (text) => new TextEncoder().encode(text).length;
  let piece = "";
  for (const sign of line) {
    if (octets(piece + sign) > 74) {
      pieces.push(piece);
      piece = " ";
    }
    piece += sign;
  }
  return [...pieces, piece];
}

// The file of a link on the page, kept by the phone as a download.
export function save({ calendar: number, ...said }) {
  const file = new Blob([calendarOf({ number, ...said }, new Date())], { type: "text/calendar" });
  const link = Object.assign(document.createElement("a"), { href: URL.createObjectURL(file), download: `${number}.ics` });
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60000);
}
