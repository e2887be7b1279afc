// The number and digits in an address, in the own and the GS1 form.
export function parse(path) {
  const own = path.match(/^\/t\/([^/]+)(?:\/(\d+))?\/?$/i);
  if (own) return { number: own[1], digits: own[2] || null };
  const gs1 = path.match(/^(?:\/t\/(\d+))?\/8004\/\d*?([0-9a-z]{11})\/?$/i);
  return gs1 ? { number: gs1[2], digits: gs1[1] || null } : null;
}
