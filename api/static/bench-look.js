// Identifying by looking, by keys: 1 to 9 choose an answer in the order of the pictures, 0 is the last one, "cannot tell".
const PAUSE = 120; // ms without another key: a scanner types faster, and what it reads is no answer
const choices = [...document.querySelectorAll("[aria-labelledby=question] a")];
let waiting = 0;
document.querySelector("[data-keys]")?.removeAttribute("hidden");
document.addEventListener("keydown", (event) => {
  const typing = event.target.closest?.("input, select, textarea"), alone = !waiting;
  clearTimeout(waiting);
  waiting = setTimeout(() => { waiting = 0; }, PAUSE);
  if (!alone || typing || event.ctrlKey || event.altKey || event.metaKey || event.repeat || !/^[0-9]$/.test(event.key)) return;
  const chosen = event.key === "0" ? choices.at(-1) : choices.slice(0, -1)[Number(event.key) - 1];
  clearTimeout(waiting);
  waiting = setTimeout(() => { waiting = 0; chosen?.click(); }, PAUSE);
});
