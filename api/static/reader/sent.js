// What was ordered from this phone: asked before the same is ordered again, and found again by /find.
// Kept in this browser alone; where it keeps nothing, everything else works without.

const AT = "tag-orders-sent";
const MOST = 30;

export function ordered() {
  try {
    return JSON.parse(localStorage.getItem(AT)) || [];
  } catch {
    return [];
  }
}

// `of`: the tag's number, or the spec of a hose without a tag.
const same = (order) => order.number || order.spec;

export function remember(order, reference) {
  const kept = [{ reference, of: same(order), at: new Date().toISOString() }, ...ordered().filter((one) => one.reference !== reference)];
  try {
    localStorage.setItem(AT, JSON.stringify(kept.slice(0, MOST)));
  } catch { /* nothing is kept here */ }
}

// The newest order of the same hose, or undefined.
export const before = (order) => ordered().find((one) => one.of === same(order));
