// The customer's contact, kept in this browser where somebody ticked so.

const AT = "tag-contact";
const FIELDS = ["name", "phone", "email", "company"];

export function remembered(form) {
  const tick = form.elements.remember;
  if (!tick) return;
  try {
    const kept = JSON.parse(localStorage.getItem(AT));
    tick.closest("[data-remember]").hidden = false;
    if (!kept) return;
    tick.checked = true;
    for (const name of FIELDS) form.elements[name].value ||= kept[name] || "";
  } catch { /* nothing is kept here */ }
}

export function remember(form) {
  const tick = form.elements.remember;
  if (!tick) return;
  try {
    if (tick.checked) localStorage.setItem(AT, JSON.stringify(Object.fromEntries(FIELDS.map((name) => [name, form.elements[name].value]))));
    else localStorage.removeItem(AT);
  } catch { /* nothing is kept here */ }
}
