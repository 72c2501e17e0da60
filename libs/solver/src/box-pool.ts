/** Domains of recent boxes (see BoxSearch), to start the next query from. */
export class BoxPool {
  private readonly boxes: Uint32Array[] = [];
  constructor(private readonly most = 300) {}

  /** @param domains words laid out as domains */
  add(domains: Uint32Array): void {
    this.boxes.push(domains);
    if (this.boxes.length > this.most) this.boxes.shift();
  }

  /** Latest first. */
  latest(): Uint32Array[] {
    return [...this.boxes].reverse();
  }
}
