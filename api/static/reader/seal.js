// Whether the shop signed a tag: the phone's side of tagger/signing.py, with the keys that the phone keeps.

import { unsealed } from "./payload.js";

const SIGNATURE_BITS = 512n;

// { state: "signed" | "unsigned" | "broken" | "unchecked", key_id, why }, or null where nothing is to be said of it.
export async function stateOf(number, digits, builtOn, tables) {
  const { keys } = tables, { value, seal } = unsealed(digits, tables);
  if (seal === null) return keys.length ? told("unsigned") : null;
  const id = Number(seal >> SIGNATURE_BITS);
  if (!keys.length) return told("unchecked", id);
  const key = keys.find((one) => one.id === id);
  // A key after the last one known here may be newer than what this phone keeps: no tag is called forged for that.
  if (!key) return id > keys.length ? told("unchecked", id) : told("broken", id, "unknown_key");
  const text = new TextEncoder().encode(`hose-tag-1:${number}:${id}:${value}`);
  if (!(await verified(text, bytes(seal & ((1n << SIGNATURE_BITS) - 1n), 64), fromHex(key.public)))) return told("broken", id, "altered");
  if (key.withdrawn) return told("broken", id, "withdrawn_key");
  if (key.until && builtOn && builtOn > key.until) return told("broken", id, "ended_key");
  return told("signed", id);
}

const told = (state, id = null, why = null) => ({ state, key_id: id, why });

// By the browser itself; by the library where it does not know Ed25519. A public key is one of the shop's own list.
export async function verified(text, signature, key) {
  try {
    const known = await crypto.subtle.importKey("raw", key, { name: "Ed25519" }, false, ["verify"]);
    return await crypto.subtle.verify({ name: "Ed25519" }, known, signature, text);
  } catch {
    return byLibrary(text, signature, key);
  }
}

export async function byLibrary(text, signature, key) {
  const { verifyAsync } = await import("./ed25519/index.js");
  return verifyAsync(signature, text, key, { zip215: false }).catch(() => false);
}

export const fromHex = (text) => Uint8Array.from(text.match(/../g) || [], (pair) => parseInt(pair, 16));

const bytes = (value, count) => fromHex(value.toString(16).padStart(2 * count, "0"));
