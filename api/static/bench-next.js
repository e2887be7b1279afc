// Enter goes on: to the next field of the build page that still has to be filled in.
const NEEDED = ["hose.standard", "hose.dash", "end_a.connection", "end_a.form", "end_a.size", "end_a.angle", "end_b.same",
  "end_b.connection", "end_b.form", "end_b.size", "end_b.angle", "length_mm", "clocking_deg"];

/** Focuses the first needed field after ``from``, then the first one of all; none where nothing is missing.
 * ``lacking`` are the fields that the last answer called missing: a size follows from the hose in most families. */
export function goOn(form, from, lacking) {
  const control = (name) => form.elements.namedItem(name);
  const needed = (name) => {
    const one = control(name);
    if (!one || one.closest("[hidden]")) return false;
    if (name === "end_b.same") return !one.checked && !control("end_b.connection").value && !control("end_b.fitting").value;
    return !one.value && (!name.endsWith(".size") || lacking.has(name));
  };
  const all = [...form.elements];
  const place = all.indexOf(from);
  const open = NEEDED.filter((name) => control(name) !== from && needed(name)).map(control);
  const next = open.find((one) => all.indexOf(one) > place) ?? open[0];
  next?.focus();
}
