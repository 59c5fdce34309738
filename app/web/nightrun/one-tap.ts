/** Gloves tap twice: what comes so soon after a tap on the same button is the same tap, milliseconds. Our choice. */
const sameTapMilliseconds = 400;

/** Tells taps from the second knock of a gloved hand. */
export class Taps {
  private readonly last = new Map<string, number>();

  /** @param at milliseconds of a clock that only goes on */
  isNew(button: string, at: number): boolean {
    const before = this.last.get(button) ?? Number.NEGATIVE_INFINITY;
    this.last.set(button, at);
    return at - before >= sameTapMilliseconds;
  }
}
