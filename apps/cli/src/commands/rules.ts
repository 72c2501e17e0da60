import { succeed } from '@flangewise/model';
import { type Command, textOption } from '../command.js';
import { exitCodes } from '../exit-code.js';
import { mayWrite, writeFolder } from '../output/write-folder.js';
import { refuse } from '../trouble.js';

const fileNames = ['rule-book.pdf', 'rule-book.json'] as const;

export const rulesCommand: Command = {
  usage: 'rules',
  summary: 'the rule book: a page a rule, indexes by group, slot, source and medium',
  examples: ['flangewise rules --out rule-book'],
  details: `Writes ${fileNames.join(' and ')}. Every page follows from the rule as it is in force.`,
  options: [['--out <folder>', 'where the files go; replaced as a whole where it holds an earlier issue']],
  run: async ({ options }) => {
    const folder = textOption(options, 'out');
    if (folder === undefined)
      return refuse({
        code: 'USAGE',
        path: '--out',
        message: 'give the folder for the rule book: --out DIR',
      });
    const allowed = await mayWrite(folder, fileNames);
    if (!allowed.ok) return allowed;
    const { rulePages, ruleRevision } = await import('@flangewise/constraints/rule-pages');
    const { renderRuleBook, ruleBookViewOf } = await import('@flangewise/documents');
    const { demoCatalogue } = await import('@flangewise/catalogue');
    const pages = rulePages();
    const view = ruleBookViewOf({ maker: demoCatalogue.maker, revision: ruleRevision, pages });
    const document = { ruleRevision, rules: pages };
    const written = await writeFolder(folder, [
      { name: fileNames[0], bytes: await renderRuleBook(view) },
      { name: fileNames[1], bytes: new TextEncoder().encode(`${JSON.stringify(document, null, 2)}\n`) },
    ]);
    if (!written.ok) return written;
    return succeed({
      exit: exitCodes.done,
      told: {
        document: { ruleRevision, rules: pages.length, files: fileNames },
        words: () => `${String(pages.length)} rules, revision ${ruleRevision}, written into ${folder}`,
      },
    });
  },
};
