// Reads a tag with the camera where the browser has a BarcodeDetector; elsewhere the page's
// photo form does it on the server.

import { compact, isValid } from "./number.js";
import { parse } from "./link.js";

const FORMATS = ["qr_code", "code_128"];

export async function ready(section) {
  const able = await BarcodeDetector.getSupportedFormats();
  const formats = FORMATS.filter((format) => able.includes(format));
  if (!formats.length || !navigator.mediaDevices) return;
  section.hidden = false;
  section.querySelector("[data-camera-start]").addEventListener("click", () => look(section, new BarcodeDetector({ formats })));
}

async function look(section, detector) {
  const video = section.querySelector("video");
  const says = section.querySelector("[data-camera-says]");
  let stream;
  try {
    stream = await navigator.mediaDevices.getUserMedia({ video: { facingMode: "environment" } });
  } catch {
    says.textContent = section.dataset.noCamera;
    return;
  }
  video.srcObject = stream;
  video.hidden = false;
  await video.play();
  for (let address = null; !address;) {
    await new Promise((done) => setTimeout(done, 200));
    const codes = await detector.detect(video).catch(() => []);
    address = codes.map((code) => addressOf(code.rawValue)).find(Boolean);
    if (!address && codes.length) says.textContent = section.dataset.notATag;
    if (address) location.assign(address);
  }
  for (const track of stream.getTracks()) track.stop();
}

// The page for a scanned text: a link of any shop, opened here, or a number.
export function addressOf(text) {
  let path = "";
  try { path = new URL(text).pathname; } catch { /* not a link */ }
  const found = path ? parse(path) : { number: text, digits: null };
  if (!found || !isValid(found.number)) return null;
  return `/T/${compact(found.number)}${found.digits ? `/${found.digits}` : ""}`;
}
