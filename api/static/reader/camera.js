// Reads a tag with the camera or from a photo where the browser has a BarcodeDetector; elsewhere, and
// where it finds nothing in a photo, the photo form does it on the server.

import { compact, isValid } from "./number.js";
import { parse } from "./link.js";

const FORMATS = ["qr_code", "code_128"];
const LARGE = 600000; // bytes; a larger photo is made smaller before it goes to the server
const LONG_SIDE = 2000; // px

// The form of a photo: read here; else sent, and said so, for a bad line takes its time.
export function photo(form) {
  const says = form.querySelector("[data-photo-says]"), input = form.elements.image;
  addEventListener("pageshow", () => { delete form.dataset.busy; says.textContent = ""; });
  form.addEventListener("submit", async (event) => {
    event.preventDefault();
    if (form.dataset.busy) return;
    form.dataset.busy = "yes";
    says.textContent = form.dataset.reading;
    const picture = await createImageBitmap(input.files[0], { imageOrientation: "from-image" }).catch(() => null);
    const address = picture && await found(picture);
    if (address) return location.assign(address);
    delete form.dataset.busy;
    if (!navigator.onLine) return void (says.textContent = form.dataset.offlineNone);
    if (picture && input.files[0].size > LARGE) await shrink(input, picture).catch(() => {});
    form.submit();
  });
}

// The address of the tag in a picture, or null.
async function found(picture) {
  if (!("BarcodeDetector" in window)) return null;
  const able = await BarcodeDetector.getSupportedFormats().catch(() => []);
  const formats = FORMATS.filter((format) => able.includes(format));
  if (!formats.length) return null;
  const codes = await new BarcodeDetector({ formats }).detect(picture).catch(() => []);
  const addresses = new Set(codes.map((code) => addressOf(code.rawValue)).filter(Boolean));
  const numbers = new Set([...addresses].map((address) => address.split("/")[2]));
  if (numbers.size !== 1) return null; // of several nobody could say which is meant: the server names them
  return longestFirst([...addresses])[0];
}

// A signed code before one with the spec alone, and that before the number.
const longestFirst = (addresses) => addresses.sort((one, other) => other.length - one.length);

async function shrink(input, picture) {
  const scale = Math.min(1, LONG_SIDE / Math.max(picture.width, picture.height));
  const canvas = Object.assign(document.createElement("canvas"), { width: Math.round(picture.width * scale), height: Math.round(picture.height * scale) });
  canvas.getContext("2d").drawImage(picture, 0, 0, canvas.width, canvas.height);
  const small = await new Promise((done) => canvas.toBlob(done, "image/jpeg", 0.85));
  const files = new DataTransfer();
  files.items.add(new File([small], "photo.jpg", { type: "image/jpeg" }));
  input.files = files.files;
}

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
    [address] = longestFirst(codes.map((code) => addressOf(code.rawValue)).filter(Boolean));
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
