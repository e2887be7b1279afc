// What the tables say of a hose: its smallest bend radius, and the limits of its temperature with the fluid.

export const spelled = (standard, tables) => tables.fit.spellings[standard.toLowerCase().replace(/[^a-z0-9]/g, "")];

export function bendOf(hose, tables) {
  const { bends } = tables.fit;
  return bends[`${hose.standard}|${hose.dash}`] || bends[`${spelled(hose.standard, tables)}|${hose.dash}`] || null;
}

// How hot it may get and the source: the hose's limit, or the lower one that a pressure entered holds for.
export function hottest(spec, tables) {
  const hose = hottestOfHose(spec, tables), given = spec.working_pressure, named = given?.max_temperature_c ?? null;
  if (named === null || (hose && hose[0] !== null && hose[0] <= named)) return hose && [hose[0], tables.sources[hose[1]]];
  return [named, given.source];
}

// The highest: none for a fluid that needs a source where none names it for the hose.
export function hottestOfHose(spec, tables) {
  const named = (name) => tables.hot[`${name}|${spec.fluid}`];
  const standard = spelled(spec.hose.standard, tables);
  if (tables.needs_source.includes(spec.fluid)) return named(spec.hose.standard) || named(standard) || null;
  return limitOf(spec, tables.hot, tables);
}

// The hose's lowest or highest temperature with this fluid and its source, as tagger/trade/temperature.py finds it.
export function limitOf(spec, limits, tables) {
  const found = (name) => limits[`${name}|${spec.fluid}`] || limits[name];
  return found(spec.hose.standard) || found(spelled(spec.hose.standard, tables)) || null;
}
