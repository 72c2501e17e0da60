import type { Choice } from './answers.js';
import type { Core } from './core.js';

interface Entry {
  readonly choices: readonly Choice[];
  readonly state: Uint32Array;
}

/**
 * States narrowed exactly under earlier choices. What is invalid under some choices is invalid under more of them, so a query
 * starts from the state with most of its choices.
 */
export class NarrowedCache {
  private readonly entries: Entry[] = [];
  constructor(private readonly most = 16) {}

  add(choices: readonly Choice[], state: Uint32Array): void {
    this.entries.push({ choices: [...choices], state });
    // The state without choices serves every query.
    if (this.entries.length > this.most)
      this.entries.splice(this.entries[0]?.choices.length === 0 ? 1 : 0, 1);
  }

  /** The state of exactly these choices, or null where it is not known. */
  exactly(choices: readonly Choice[]): Uint32Array | null {
    const found = this.best(choices);
    return found && found.choices.length === choices.length ? found.state : null;
  }

  /** A state from which to enter a query, or null where not even propagation without choices succeeds. */
  start(core: Core, choices: readonly Choice[]): Uint32Array | null {
    return this.best(choices)?.state ?? core.root;
  }

  private best(choices: readonly Choice[]): Entry | null {
    const valueOf = new Map(choices.map((c) => [c.variable, c.value]));
    let best: Entry | null = null;
    for (const entry of this.entries)
      if (
        entry.choices.length > (best?.choices.length ?? -1) &&
        entry.choices.every((c) => valueOf.get(c.variable) === c.value)
      )
        best = entry;
    return best;
  }
}
