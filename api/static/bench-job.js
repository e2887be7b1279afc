// The state of a print job, asked again while something may still happen.
const job = document.getElementById("job");
const EVERY_MS = 1000;

async function ask() {
  try {
    const answer = await fetch(job.dataset.state);
    if (!answer.ok) return;
    const html = await answer.text();
    if (html !== shown) job.innerHTML = shown = html;
    if (!job.querySelector(".state.care")) clearInterval(timer);
  } catch {
    // the server is away for a moment: what was last known stays
  }
}

let shown = "";
const timer = "askAgain" in job.dataset ? setInterval(ask, EVERY_MS) : 0;
