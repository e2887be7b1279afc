// From what was measured to which connection it can be, without a signal: the phone's side of
// tagger/trade/identifying. `pool` is what api/scan/identify_kit.py makes of the tables: rows of
// [family, size, form, thread, figures by feature as [least, greatest, ...], places in the words of WORDS, gauge number].
// A test holds the answers against Python's over thousands of readings.

const SAID = ["side", "swivels", "shape", "seals"]; // what the eye says
const WORDS = ["seat", "cone", "flank", ...SAID];
const message = (id, values = {}) => ({ id, values });

// { candidates, next, remaining, summary, tie, lacks }; candidates best first, each with what it contradicts.
// `measured`: { form, or the forms it can be, readings by feature, slips, series, origin, cannot }; a word's reading is
// its place in the words, a slip the standard deviation of a reading where it was said.
export function identify(measured, usual) {
  const slips = measured.slips ?? {}, pool = { ...usual, errors: wider(usual.errors, slips), usual };
  const forms = measured.form ? [measured.form] : measured.forms;
  const among = pool.rows.filter((row) => !forms || forms.includes(row.form));
  const lacks = message("identify-lacks", { names: pool.lacking.map((name) => message(`identify-lacking-${name}`)) });
  if (!among.length) return { candidates: [], next: null, remaining: 0, summary: message("identify-nothing"), tie: null, lacks };
  const weights = likelihoods(among, measured.readings, pool);
  const order = ordered(among, weights, measured.origin, pool), most = Math.max(...weights), limits = pool.limits;
  const shown = weights.filter((weight) => weight >= limits.shown_from * most).length;
  const count = Math.min(limits.most_shown, Math.max(limits.least_shown, shown), among.length);
  const candidates = order.places.slice(0, count).map((at) => candidate(among[at], weights[at], measured, pool));
  const [best] = candidates, fits = threadFits(among, measured.readings, pool);
  const near = order.places.filter((at) => weights[at] >= limits.remains_from * most);
  const remain = best.contradicts.length ? near : near.filter((at) => !contradicted(among[at], measured.readings, pool).length);
  let next = remain.length > 1 ? mostTelling(among, weights, measured, pool) : null;
  if (!next && !best.contradicts.length && fits && asksForSeries(best.row, measured, pool)) next = "series";
  return {
    candidates, next, remaining: remain.length, lacks,
    summary: summary(best, named(remain.map((at) => among[at]), pool), fits, pool),
    tie: best.contradicts.length ? null : tie(among, order, pool),
  };
}

const wider = (errors, slips) => ({ ...errors, ...Object.fromEntries(Object.entries(slips).map(([feature, slip]) => [feature, Math.max(slip, errors[feature])])) });

function candidate(row, likelihood, { readings, series }, pool) {
  const several = seriesOf(row, pool);
  const own = several.length === 1 ? several[0] : several.includes(series) ? series : null;
  return { row, likelihood, contradicts: contradicted(row, readings, pool), series: own, lookAlikes: lookAlikes(row, pool) };
}

// Likelihood

// How likely each of the rows is by the readings; together 1.
function likelihoods(among, readings, pool) {
  let weights = among.map(() => 1);
  for (const [feature, value] of Object.entries(readings)) {
    weights = weights.map((weight, at) => weight * density(among[at], feature, value, pool));
    const most = Math.max(...weights); // several readings far off everything would come to nothing
    weights = weights.map((weight) => weight / most);
  }
  const whole = weights.reduce((sum, weight) => sum + weight, 0);
  return weights.map((weight) => weight / whole);
}

function density(row, feature, x, pool) {
  if (WORDS.includes(feature)) return row[feature][x];
  const flat = 1 / pool.range[feature], sigma = pool.errors[feature], figures = row.figures[feature];
  if (!figures) return impossible(row, feature, pool) ? flat * 1e-4 : flat;
  const { far_off: far, other_hex: other } = pool.limits;
  let mixed = 0;
  for (const [low, high] of figures) {
    const fitting = plateau(x, low, high, sigma);
    const likely = feature === "hex" ? fitting * (1 - other) + flat * other : fitting * (1 - far) + slip(x, low, high, sigma, pool) * far;
    mixed += likely * (1 / figures.length);
  }
  return mixed;
}

// Threads are found on threads only, and bolts on flanges only; other unknown figures say nothing.
function impossible(row, feature, pool) {
  if (["thread", "tpi", "tube_od"].includes(feature)) return !row.figures.tpi;
  const flange = pool.flanges.includes(row.family);
  return ["hex", "nose"].includes(feature) ? flange : !flange;
}

// A true figure even between low and high, read with a normal slip.
function plateau(x, low, high, sigma) {
  const width = high - low;
  if (width < 1e-9) return Math.exp(-0.5 * ((x - low) / sigma) ** 2) / (sigma * Math.sqrt(2 * Math.PI));
  return (normal((x - low) / sigma) - normal((x - high) / sigma)) / width;
}

// The further off, the less likely, but never impossible.
function slip(x, low, high, sigma, { limits: { slip: wide } }) {
  return Math.exp(-offBy(x, low, high) / (wide * sigma)) / (2 * wide * sigma);
}

const offBy = (x, low, high) => Math.max(low - x, x - high, 0);

// The normal distribution, by 26.2.17 of Abramowitz and Stegun, as tagger/trade/identifying/likelihood.py has it.
function normal(z) {
  const a = Math.abs(z), t = 1 / (1 + 0.2316419 * a);
  const poly = t * (0.319381530 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  const upper = Math.exp(-0.5 * a * a) / Math.sqrt(2 * Math.PI) * poly;
  return z >= 0 ? 1 - upper : upper;
}

function threadFits(among, { thread }, pool) {
  if (thread === undefined) return true;
  const like = Math.max(...among.map((row) => density(row, "thread", thread, pool)));
  return like > pool.limits.far_off / pool.errors.thread / 5;
}

// What speaks against a row

const contradicted = (row, readings, pool) => Object.keys(readings).filter((feature) => !fitting(row, feature, readings[feature], pool));

function fitting(row, feature, value, pool) {
  if (feature === "seat") return row.seat[value] > pool.limits.seat_misread / 2;
  if (WORDS.includes(feature)) return row[feature][value] >= 0.1;
  const figures = row.figures[feature];
  if (!figures || feature === "hex") return true; // nuts differ by manufacturer
  return Math.min(...figures.map(([low, high]) => offBy(value, low, high))) <= 3 * pool.errors[feature];
}

// Order

// Places best first; of those that measurements cannot tell apart, by where the machine was made.
function ordered(among, weights, origin, pool) {
  const steps = weights.map(inSteps), most = Math.max(...steps);
  const places = steps.map((_, at) => at).sort((one, other) => (steps[one] === steps[other] ? one - other : steps[other] - steps[one]));
  const count = steps.filter((step) => step >= most - inSteps(pool.limits.tie)).length;
  const tied = places.slice(0, count), family = (at) => among[at].family;
  const found = origin ? byOrigin(tied, family, origin, pool) : asUsual(tied, family, pool);
  return { ...found, places: [...found.places, ...places.slice(count)] };
}

// Whole steps of the logarithm, a billionth each: what only rounding tells apart is as likely.
const inSteps = (weight) => Math.round(Math.log(weight) * 1e9);

function byOrigin(tied, family, origin, { origins, flares }) {
  const rank = (at) => {
    const usual = origins.filter(([, of]) => of === family(at)).map(([where]) => where);
    return flares.includes(family(at)) || !usual.length ? 1 : usual.includes(origin) ? 0 : 2;
  };
  const places = [...tied].sort((one, other) => rank(one) - rank(other));
  const first = places.filter((at) => rank(at) === rank(places[0])), behind = places.slice(first.length);
  return { places, first, behind, origin: behind.length ? origin : "", there: true };
}

// A family that is usual in one place only stands behind the one it is taken for.
function asUsual(tied, family, { origins }) {
  let places = [...tied], why = { first: [], behind: [], origin: "", there: false };
  for (const [origin, of, ahead] of origins.filter(([, , ahead]) => ahead)) {
    const before = tied.filter((at) => family(at) === ahead), after = tied.filter((at) => family(at) === of);
    if (!before.length || !after.length) continue;
    places = places.filter((at) => !after.includes(at));
    places.splice(Math.max(...before.map((at) => places.indexOf(at))) + 1, 0, ...after);
    if (before.includes(places[0])) why = { first: before, behind: after, origin, there: false };
  }
  return { ...why, places };
}

// What to measure next

// The feature that separates best the candidates worth a line; null where nothing helps. What was read more roughly than
// is usual, as said beside the reading, is worth measuring again.
function mostTelling(among, weights, { readings, slips = {}, cannot }, pool) {
  const most = Math.max(...weights), kept = weights.map((_, at) => at).filter((at) => weights[at] >= pool.limits.shown_from * most);
  const whole = kept.reduce((sum, at) => sum + weights[at], 0), rows = kept.map((at) => among[at]), shares = kept.map((at) => weights[at] / whole);
  const open = pool.asked.filter((feature) => feature !== "series" && (!(feature in readings) || slips[feature] > pool.usual.errors[feature]) && !cannot.includes(feature));
  const bits = new Map(open.map((feature) => [feature, information(feature, rows, shares, pool.usual)]));
  const best = open.reduce((one, other) => (one === null || bits.get(other) > bits.get(one) ? other : one), null);
  return best !== null && bits.get(best) >= pool.limits.worth_measuring ? best : null;
}

// Bits expected of a reading; rows that no gauge tells apart count as one.
function information(feature, rows, shares, pool) {
  const possible = readingsOf(feature, rows, shares, pool);
  if (!possible.length) return 0;
  const before = entropy(together(rows, shares)), telling = possible.reduce((sum, [, chance]) => sum + chance, 0);
  const after = possible.reduce((sum, [x, chance]) => {
    const like = rows.map((row, at) => density(row, feature, x, pool) * shares[at]);
    const whole = Math.max(like.reduce((all, one) => all + one, 0), 1e-300);
    return sum + chance * entropy(together(rows, like).map((one) => one / whole));
  }, 0);
  return Math.max(0, telling * before - after);
}

// What might be read and how likely: each word, or each row's own figures.
function readingsOf(feature, rows, shares, { limits }) {
  if (WORDS.includes(feature)) return rows[0][feature].map((_, word) => [word, rows.reduce((sum, row, at) => sum + row[feature][word] * shares[at], 0)]);
  const usual = 1 - (feature === "hex" ? limits.other_hex : limits.far_off);
  return rows.flatMap((row, at) => (row.figures[feature] ?? []).map(([low, high], _, all) => [(low + high) / 2, shares[at] / all.length * usual]));
}

function together(rows, shares) {
  const sums = new Map();
  rows.forEach((row, at) => sums.set(row.one, (sums.get(row.one) ?? 0) + shares[at]));
  return [...sums.values()];
}

const entropy = (shares) => -shares.reduce((sum, share) => sum + share * Math.log2(Math.max(share, 1e-300)), 0);

const seriesOf = (row, pool) => pool.series[`${row.family}|${row.size}`] ?? [];

function asksForSeries(row, { series, cannot }, pool) {
  return seriesOf(row, pool).length > 1 && !series && !cannot.includes("series") && !pool.females.includes(row.form);
}

// In words

export function sizeText({ family, size }, pool) {
  const by = pool.sized_by[family];
  return by === "dash" ? `-${size}` : by === "tube" ? `${size} mm` : size;
}

const nameOf = (row, size) => message("identify-named", { size, connection: message(`words-connection-${row.family}`) });

// Family and size of each, in the order given, once.
function named(rows, pool) {
  const found = new Map(rows.map((row) => [`${row.family}|${row.size}`, row]));
  return [...found.values()].map((row) => nameOf(row, sizeText(row, pool)));
}

function summary({ row, series, contradicts }, names, fits, pool) {
  const most = pool.limits.named, size = sizeText(row, pool), name = nameOf(row, series ? `${size} ${series}` : size);
  if (contradicts.join() === "seat" && fits) return message("identify-other-seat", { name });
  if (contradicts.length || !fits) return message("identify-closest", { name });
  if (names.length > most) return message("identify-many", { count: names.length, names: names.slice(0, most) });
  return names.length > 1 ? message("identify-some", { names }) : message("identify-only", { name });
}

// Which of those that are as likely stand first, and only for which reason.
function tie(among, { origin, there, first, behind }, pool) {
  if (!origin) return null;
  const [ours, theirs] = [first, behind].map((places) => named(places.map((at) => among[at]), pool)), most = pool.limits.named;
  const values = { names: [...ours, ...theirs].slice(0, most), first: ours.slice(0, most), origin: message(`identify-origin-${origin}`) };
  return there ? message("identify-tie-there", values) : message("identify-tie-elsewhere", values);
}

// The other families that share the thread, and how they differ.
const lookAlikes = (row, pool) => toldApart([row], () => true, pool);

// Of the families that are wanted, those that share a thread with one of the rows, which are of one family and form.
export function toldApart(rows, wanted, pool) {
  const [row] = rows, sizes = new Map(), pairs = pool.alike.map(([one, other]) => [one, other]);
  for (const other of pool.rows) {
    if (other.family === row.family || other.form !== row.form || !wanted(other.family)) continue;
    if (!rows.some((own) => sameThread(own, other))) continue;
    sizes.set(other.family, [...(sizes.get(other.family) ?? []), sizeText(other, pool)]);
  }
  const pair = (family) => pairs.findIndex((two) => two.includes(row.family) && two.includes(family));
  const rank = (family) => (pair(family) < 0 ? pairs.length : pair(family));
  return [...sizes.keys()].sort((one, other) => rank(one) - rank(other)).map((family) => message(
    pool.alike[pair(family)]?.[2] ?? "fit-alike-thread",
    { family: message(`words-connection-${row.family}`), other: message(`words-connection-${family}`), sizes: sizes.get(family) },
  ));
}

// Within what a caliper and a gauge can tell apart.
function sameThread(one, other) {
  const by = one.figures.tpi ? "thread" : "bolt_spacing", [mine] = one.figures[by] ?? [], [theirs] = other.figures[by] ?? [];
  if (!mine || !theirs) return false;
  const gap = Math.max(mine[0], theirs[0]) - Math.min(mine[1], theirs[1]);
  if (by === "bolt_spacing") return gap < 4;
  return gap < 0.3 && other.figures.tpi && Math.abs(one.figures.tpi[0][0] - other.figures.tpi[0][0]) < 0.75;
}

// The rows as they are sent, by name.
export function unpacked({ rows, words, ...rest }) {
  return {
    ...rest,
    rows: rows.map(([family, size, form, thread, figures, ...places]) => ({
      family: rest.families[family], size, form: rest.forms[form], thread, one: places[WORDS.length],
      figures: Object.fromEntries(Object.entries(figures).map(([feature, flat]) => [feature, pairsOf(flat)])),
      ...Object.fromEntries(WORDS.map((name, at) => [name, words[name][places[at]]])),
    })),
  };
}

const pairsOf = (flat) => Array.from({ length: flat.length / 2 }, (_, at) => [flat[2 * at], flat[2 * at + 1]]);
