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
