// What every page of the bench does: first problem in view, scanner keys, forms sent once.
const problems = document.getElementById("problems");
// Only where nobody was quicker than this script: a focus that moves takes what is being typed.
const at = document.activeElement, untouched = at === document.body || (at.autofocus && at.value === (at.defaultValue ?? at.value));
if (problems && untouched) problems.focus();

// "/" goes to the tag field at the top, wherever no field has the focus.
document.addEventListener("keydown", (event) => {
  const typing = /^(INPUT|SELECT|TEXTAREA)$/.test(document.activeElement?.tagName ?? "");
  if (event.key === "/" && !typing) {
    event.preventDefault();
    document.getElementById("go")?.focus();
  }
});

// A form is sent once, however often the button is hit; a form into a new window may be sent again.
document.addEventListener("submit", (event) => {
  const form = event.target;
  if (event.defaultPrevented || form.method !== "post") return;
  if ((event.submitter?.getAttribute("formtarget") ?? form.target) === "_blank") return;
  if (form.dataset.sent) { event.preventDefault(); return; }
  form.dataset.sent = "1";
  window.addEventListener("pageshow", () => delete form.dataset.sent, { once: true });
});

// Answers that are asked for before they are given: <form data-ask="...">
document.addEventListener("submit", (event) => {
  const words = event.submitter?.dataset.ask ?? event.target.dataset.ask;
  if (words && !window.confirm(words)) { event.preventDefault(); delete event.target.dataset.sent; }
}, true);

// A table wider than the screen is scrolled by keyboard too, also after the phone has been turned.
function scrolledByKeyboard(box) {
  if (box.scrollWidth > box.clientWidth) {
    box.tabIndex = 0;
    box.setAttribute("role", "group");
    const named = box.querySelector("caption") ?? box.closest("section")?.querySelector("h2");
    box.setAttribute("aria-label", named?.textContent ?? document.title);
  } else {
    for (const name of ["tabindex", "role", "aria-label"]) box.removeAttribute(name);
  }
}
const widths = new ResizeObserver((changed) => changed.forEach(({ target }) => scrolledByKeyboard(target)));
for (const box of document.querySelectorAll(".scroll")) widths.observe(box);
