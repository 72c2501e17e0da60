import { valueText } from './value-text.js';
import type { ImportTrouble } from './import-report.js';

/** Troubles that a report lists; more help nobody. */
const most = 200;

/** What is wrong with a file, in its order, the first of it where it is very much. */
export class TroubleLog {
  readonly #troubles: ImportTrouble[] = [];
  #further = 0;

  add({ given, sheet, ...trouble }: Omit<ImportTrouble, 'given'> & { readonly given: unknown }): void {
    if (this.#troubles.length >= most) this.#further += 1;
    else
      this.#troubles.push({
        ...(sheet === undefined ? {} : { sheet }),
        ...trouble,
        given: valueText(given),
      });
  }

  get isEmpty(): boolean {
    return this.#troubles.length === 0;
  }

  get troubles(): ImportTrouble[] {
    return [...this.#troubles];
  }

  get further(): number {
    return this.#further;
  }
}
