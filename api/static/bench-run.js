// What was printed meanwhile, in another tab or on a printer, stands on this page too.
const EVERY_MS = 1000;
const form = document.getElementById("print");

async function refresh() {
  let answer;
  try {
    answer = await fetch(location.href);
  } catch {
    return; // the server is away for a moment: what was last known stays
  }
  if (!answer.ok || answer.redirected) return;
  const now = new DOMParser().parseFromString(await answer.text(), "text/html");
  for (const part of document.querySelectorAll("[data-live]")) {
    const other = now.getElementById(part.id);
    if (!other || other.innerHTML === part.innerHTML) continue;
    const pressed = part.contains(document.activeElement) ? document.activeElement.value : null;
    part.innerHTML = other.innerHTML;
    if (pressed !== null) [...part.querySelectorAll("button")].find((one) => one.value === pressed)?.focus();
  }
  const asks = now.getElementById("print")?.dataset.ask;
  if (asks) form.dataset.ask = asks; else delete form.dataset.ask;
}

// A page that asks was answered to a form: its address is no page, and its question stays until it is answered.
if (form.target === "_blank") {
  let left = 0; // turns after a press: the paper is made in another tab
  form.addEventListener("submit", () => { left = 10; });
  setInterval(() => {
    if (document.hidden || !(left > 0 || document.querySelector("#jobs .say"))) return;
    left -= 1;
    refresh();
  }, EVERY_MS);
  for (const event of ["focus", "pageshow"]) window.addEventListener(event, refresh);
  document.addEventListener("visibilitychange", () => { if (!document.hidden) refresh(); });
}
