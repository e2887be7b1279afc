// The proof test on a record: how the pressure is read is said while it is typed; too high a pressure is asked about.
const form = document.getElementById("proof-test");
const said = document.getElementById("proof-read");
const passed = form.querySelector("[name=result][value=passed]");
let asked = 0;

async function read() {
  const mine = ++asked;
  const value = (name) => form.elements.namedItem(name)?.value.trim() ?? "";
  if (!value("pressure_bar")) { said.hidden = true; delete passed.dataset.ask; return; }
  const question = new URLSearchParams({ pressure_bar: value("pressure_bar"), rating_bar: value("rating_bar") });
  let found;
  try {
    found = await (await fetch(`${form.dataset.read}?${question}`)).json();
  } catch { return; } // the server says the same when it is sent
  if (mine !== asked) return;
  said.hidden = false;
  said.dataset.tone = found.tone;
  said.querySelector("output").textContent = found.read;
  said.querySelector("span").textContent = found.say;
  if (found.tone === "danger") passed.dataset.ask = [found.read, found.say].join(" ");
  else delete passed.dataset.ask;
}

form.addEventListener("input", read);
read();
