import { letterOf, printedNumber } from '../letters.js';
import type { Desk } from '../trpc/context.js';
import { prepareRevision, revisionData } from './prepare-revision.js';

export interface NewOffer {
  readonly systemId: string;
  readonly discountPercent?: string | undefined;
  readonly taxPercent?: string | undefined;
  readonly date: string;
}

/** The next number of an offer. One that is drawn and not used leaves a gap and nothing else. */
async function drawNumber({ database }: Desk): Promise<number> {
  const rows = await database.$queryRaw<readonly { number: bigint }[]>`
    SELECT nextval(pg_get_serial_sequence('"Offer"', 'number')) AS number`;
  if (rows[0] === undefined) throw new Error('the sequence of offer numbers gave none');
  return Number(rows[0].number);
}

/** Offers a system as it is now: frozen, priced by the list in force, with all documents. */
export async function createOffer(desk: Desk, asked: NewOffer) {
  const { systemId, date, discountPercent, taxPercent } = asked;
  const number = await drawNumber(desk);
  const revision = letterOf(1);
  const terms = { number: printedNumber(number), revision, date, discountPercent, taxPercent };
  const ready = await prepareRevision(desk, systemId, terms);
  const { id } = await desk.database.$transaction(async (step) => {
    const data = await revisionData(step, desk, ready);
    return step.offer.create({
      data: { systemId, number, revisions: { create: { number: 1, letter: revision, ...data } } },
    });
  });
  return { id, number: printedNumber(number), revision };
}
