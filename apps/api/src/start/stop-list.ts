/** What has been started and must be stopped again, in reverse order. */
export class StopList {
  readonly #stops: (() => Promise<void> | void)[] = [];

  add(stop: () => Promise<void> | void): void {
    this.#stops.push(stop);
  }

  /** Stops everything, whatever fails on the way. */
  async stopAll(): Promise<void> {
    for (let stop = this.#stops.pop(); stop !== undefined; stop = this.#stops.pop()) {
      try {
        await stop();
      } catch (error) {
        console.error(error);
      }
    }
  }
}
