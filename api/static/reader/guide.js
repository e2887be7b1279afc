// The fit guide on a phone: the screen stays on, the step and the ticks are found again after an interruption,
// and a step is read aloud on a tap. Its words stand in the page, translated. The guide works without all this.

const STEP = /^#[\w-]+$/;

export function guide(number) {
  const fit = document.getElementById("fit"), words = document.body.dataset;
  if (!fit?.querySelector(".step")) return;
  const gate = gated(fit);
  const shown = () => (STEP.test(location.hash) ? fit.querySelector(`.step${location.hash}`) : null);
  const kept = keeper(`guide-${number}`);
  ticks(fit, kept);
  resume(fit, kept, words.resume);
  if (window.speechSynthesis) for (const step of fit.querySelectorAll(".step")) step.querySelector(".row")?.prepend(reader(step, words.read));
  const follow = () => {
    window.speechSynthesis?.cancel();
    if (gate.shut(shown())) return awake(false);
    const step = shown();
    if (step) kept.set({ ...kept.get(), step: location.hash });
    awake(Boolean(step));
  };
  addEventListener("hashchange", follow);
  document.addEventListener("visibilitychange", () => awake(Boolean(shown()) && !document.hidden));
  fit.querySelector('.step:last-child a[href="#spec"]')?.addEventListener("click", () => kept.set(null));
  follow();
}

// A guide behind a gate is opened by hand alone: browsers open it for any link to a step, one of an earlier visit too.
function gated(fit) {
  const gate = fit.querySelector(".gate");
  let opened = !gate;
  gate?.querySelector("summary").addEventListener("click", () => { opened = true; });
  return {
    shut(step) {
      if (opened || !step) return false;
      gate.open = false;
      location.replace("#fit");
      return true;
    },
  };
}

// What is kept under a name on this phone; nothing where the browser keeps nothing.
function keeper(name) {
  return {
    get() { try { return JSON.parse(localStorage.getItem(name)) || {}; } catch { return {}; } },
    set(value) { try { value ? localStorage.setItem(name, JSON.stringify(value)) : localStorage.removeItem(name); } catch { /* not kept */ } },
  };
}

// Ticks are found again only while the guide has as many as before.
function ticks(fit, kept) {
  const boxes = [...fit.querySelectorAll(".step input[type=checkbox]")], before = kept.get().ticks || [];
  if (before.length === boxes.length) boxes.forEach((box, place) => { box.checked = Boolean(before[place]); });
  fit.addEventListener("change", () => kept.set({ ...kept.get(), ticks: boxes.map((box) => Number(box.checked)) }));
}

function resume(fit, kept, words) {
  const { step } = kept.get(), start = fit.querySelector('a[href="#step-1"]');
  if (!step || step === "#step-1" || !start || !STEP.test(step) || !fit.querySelector(`.step${step}`)) return;
  start.before(Object.assign(document.createElement("a"), { className: "button", href: step, textContent: words }));
  start.classList.add("second");
}

function reader(step, words) {
  const button = Object.assign(document.createElement("button"), { type: "button", className: "button second aloud" });
  button.setAttribute("aria-label", words);
  button.innerHTML = '<svg viewBox="0 0 24 24" width="28" height="28" aria-hidden="true"><path fill="currentColor" d="M3 9v6h4l6 5V4L7 9zm13 3a4 4 0 0 0-2-3.500v7A4 4 0 0 0 16 12zm-2-8v2a6.500 6.500 0 0 1 0 12v2a8.500 8.500 0 0 0 0-16z"/></svg>';
  button.addEventListener("click", () => {
    const speaking = speechSynthesis.speaking;
    speechSynthesis.cancel();
    if (speaking) return;
    const text = [...step.querySelectorAll("h3, .text, .tick > span")].map((part) => part.textContent.trim()).join(". ");
    const saying = new SpeechSynthesisUtterance(text);
    saying.lang = document.documentElement.lang;
    speechSynthesis.speak(saying);
  });
  return button;
}

let lock = null, wanted = false;

// Browsers give the screen back by themselves when the page is hidden: asked for again when it is shown.
async function awake(on) {
  wanted = on;
  if (!on) {
    await lock?.release().catch(() => {});
    lock = null;
  } else if ((!lock || lock.released) && navigator.wakeLock) {
    lock = await navigator.wakeLock.request("screen").catch(() => null);
    if (!wanted) awake(false);
  }
}
