// What a phone keeps, ready for use: the tables, and for its one language the templates and `t`,
// which renders messages.

import { translator } from "./i18n.js";

export class Kit {
  constructor(language, tables) {
    this.tables = tables;
    this.templates = language.templates;
    this.t = translator(language.lang, language.catalogues);
  }
}

// The kit whose addresses a page names; `more`: the address of further catalogues.
export async function load({ dataset: { tables, words, more } }) {
  const [shared, language, further] = await Promise.all([tables, words, more].map(async (url) => (url ? (await fetch(url)).json() : [])));
  return new Kit({ ...language, catalogues: [...language.catalogues, ...further] }, shared);
}
