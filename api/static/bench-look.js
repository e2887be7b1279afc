// Identifying by looking, by keys: 1 to 9 choose an answer in the order of the pictures, 0 is the last one, "cannot tell".
const choices = [...document.querySelectorAll("[role=group] a")];
document.querySelector("[data-keys]")?.removeAttribute("hidden");
document.addEventListener("keydown", (event) => {
  const typing = event.target.closest?.("input, select, textarea");
  if (typing || event.ctrlKey || event.altKey || event.metaKey || event.repeat || !/^[0-9]$/.test(event.key)) return;
  const chosen = event.key === "0" ? choices.at(-1) : choices.slice(0, -1)[Number(event.key) - 1];
  chosen?.click();
});
