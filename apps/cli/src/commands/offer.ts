import { type Assessment, type OfferAnswer, succeed } from '@flangewise/model';
import type { MadeOffer } from '@flangewise/quotation';
import { type Command, type Options, textOption } from '../command.js';
import { exitCodes } from '../exit-code.js';
import { type OpenSystem, readSystem } from '../input/read-system.js';
import { assessReleased, releaseNotes } from '../input/released.js';
import { offerFileNames, offerFiles } from '../output/offer-files.js';
import { mayWrite, writeFolder } from '../output/write-folder.js';
import { offerText } from '../text/offer-text.js';
import { type OrRefusal, refuse, type Trouble } from '../trouble.js';

/** Options of the command line by the field of the system that they set. */
const offerFields = {
  client: 'client',
  date: 'date',
  priceList: 'priceList',
  discount: 'discountPercent',
} as const;

const offerOf = (options: Options): Readonly<Record<string, string>> =>
  Object.fromEntries(
    Object.entries(offerFields).flatMap(([option, field]) => {
      const value = textOption(options, option);
      return value === undefined ? [] : [[field, value]];
    }),
  );

/** An offer is made of a whole: every slot is filled, or said to stay empty. */
const incomplete = ({ undecided }: Assessment): readonly Trouble[] =>
  undecided.map((path) => ({
    code: 'SYSTEM_INCOMPLETE',
    path,
    message: 'not chosen yet; "narrow" lists what may stand there, null says that it stays empty',
  }));

/** The price of the offer, with everything that the assessment says against its release. */
const priced = async (opened: OpenSystem, assessment: Assessment): Promise<OrRefusal<MadeOffer>> => {
  const { specialsOf } = await import('@flangewise/constraints');
  const { makeOffer } = await import('@flangewise/quotation');
  const specials = specialsOf(opened.system, opened.bench.range);
  const made = makeOffer({
    system: opened.system,
    catalogue: opened.range.catalogue,
    specials: specials.ok ? specials.value : [],
    ruleRevision: assessment.ruleRevision,
    openPoints: assessment.openPoints,
    cautions: assessment.cautions,
    blocking: assessment.blocking,
  });
  return made.ok ? made : refuse(made.error);
};

export const offerCommand: Command = {
  usage: 'offer <system>',
  summary: 'all documents of an offer, written into a folder',
  examples: ['flangewise offer system.json --out offer --client "Client, town" --date 2026-11-24'],
  details: `Writes ${offerFileNames.join(', ')}: all of them or none.
What is not released carries a watermark; where a check is not met they are for discussion only, and the exit is 1.
A system that is not complete is refused with the list of what is missing.`,
  options: [
    ['--out <folder>', 'where the files go; replaced as a whole where it holds an earlier issue'],
    ['--client <name>', 'to whom the offer goes'],
    ['--date <date>', 'date of the offer, YYYY-MM-DD; today where neither it nor the system says'],
    [
      '--price-list <id>',
      'price list; else that of the system, by the currency of the inquiry, else the first',
    ],
    ['--discount <percent>', 'on the list total, for instance 5 or 7.5'],
  ],
  run: async (request) => {
    const { options, terminal } = request;
    const folder = textOption(options, 'out');
    if (folder === undefined)
      return refuse({
        code: 'USAGE',
        path: '--out',
        message: 'give the folder for the documents: --out DIR',
      });
    const opened = await readSystem(request, { offer: offerOf(options), offerDate: terminal.today() });
    if (!opened.ok) return opened;
    const released = await assessReleased(opened.value, true);
    const { assessment, releases } = released;
    if (assessment.undecided.length > 0)
      return { ok: false, error: { exit: exitCodes.notValid, troubles: incomplete(assessment) } };
    const made = await priced(opened.value, assessment);
    if (!made.ok) return made;
    const allowed = await mayWrite(folder, offerFileNames);
    if (!allowed.ok) return allowed;
    const { offer, blocking } = made.value;
    const files = await offerFiles({ ...opened.value, assessment, offer, blocking, releases });
    const written = await writeFolder(folder, files);
    if (!written.ok) return written;
    const answer: OfferAnswer = {
      catalogueRevision: offer.catalogueRevision,
      ruleRevision: offer.ruleRevision,
      files: files.map(({ name, bytes, mediaType }) => ({ name, bytes: bytes.byteLength, mediaType })),
      total: offer.total,
      currency: offer.currency,
      deliveryWeeks: offer.deliveryWeeks,
      released: blocking.length === 0,
      blocking: [...blocking],
    };
    return succeed({
      exit: assessment.status === 'not met' ? exitCodes.notValid : exitCodes.done,
      told: { document: answer, words: (columns) => offerText({ folder, offer, answer }, columns) },
      notes: [...opened.value.notes, ...releaseNotes(released)],
    });
  },
};
