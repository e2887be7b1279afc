// Tag numbers: eleven characters, the last a check character (ISO/IEC 7064, MOD M+1,M, M = 32).

const ALPHABET = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";

export function compact(text) {
  return text.trim().toUpperCase().replace(/[-–—\s]/g, "").replace(/O/g, "0").replace(/[IL]/g, "1");
}

export function isValid(text) {
  const number = compact(text);
  if (number.length !== 11) return false;
  let check = 32;
  for (const char of number.slice(0, -1)) {
    const at = ALPHABET.indexOf(char);
    if (at < 0) return false;
    check = ((check + at) % 32 || 32) * 2 % 33;
  }
  const last = ALPHABET.indexOf(number.at(-1));
  return last >= 0 && (check + last) % 32 === 1;
}

export function format(text) {
  const number = compact(text);
  return `${number.slice(0, 5)}-${number.slice(5)}`;
}
