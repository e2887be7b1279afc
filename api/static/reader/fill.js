// Fills the mustache templates that the server fills too: {{name}} escaped, {{{name}}} as it is,
// {{#name}}...{{/name}} for each or when true, {{^name}} when false; dots reach inside, {{.}} is
// the item itself. That is all the templates use.

const TAG = /\{\{\{\s*([\w.]+)\s*\}\}\}|\{\{([#^/]?)\s*([\w.]+)\s*\}\}/g;
const SIGNS = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;", "'": "&#x27;" };

export const escape = (value) => String(value).replace(/[&<>"']/g, (sign) => SIGNS[sign]);

export function fill(template, values) {
  return render(parse(template), [values]);
}

const parsed = new Map();

function parse(template) {
  if (parsed.has(template)) return parsed.get(template);
  const root = [];
  const open = [root];
  let at = 0;
  for (const match of template.matchAll(TAG)) {
    open.at(-1).push({ text: template.slice(at, match.index) });
    at = match.index + match[0].length;
    const [, raw, kind, name] = match;
    if (raw) open.at(-1).push({ raw });
    else if (kind === "/") open.pop();
    else if (kind) {
      const part = { section: name, inverted: kind === "^", parts: [] };
      open.at(-1).push(part);
      open.push(part.parts);
    } else open.at(-1).push({ name });
  }
  root.push({ text: template.slice(at) });
  parsed.set(template, root);
  return root;
}

function render(parts, stack) {
  return parts.map((part) => {
    if (part.text !== undefined) return part.text;
    if (part.raw) return string(look(part.raw, stack));
    if (part.name) return escape(string(look(part.name, stack)));
    const value = look(part.section, stack);
    const items = Array.isArray(value) ? value : value ? [value] : [];
    if (part.inverted) return items.length ? "" : render(part.parts, stack);
    return items.map((item) => render(part.parts, [...stack, item])).join("");
  }).join("");
}

const string = (value) => (value === undefined || value === null ? "" : String(value));

function look(path, stack) {
  if (path === ".") return stack.at(-1);
  const [first, ...rest] = path.split(".");
  for (let at = stack.length - 1; at >= 0; at--) {
    const item = stack[at];
    if (item !== null && typeof item === "object" && first in item) {
      return rest.reduce((inner, key) => (inner == null ? inner : inner[key]), item[first]);
    }
  }
  return undefined;
}
