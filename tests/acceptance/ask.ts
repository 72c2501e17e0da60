import type { Assessment, ExplainAnswer, RuleResult, SolveAnswer, SystemInput } from '@flangewise/model';
import { runJson } from '../../apps/cli/src/testing/run.js';
import { pathOf } from './examples.js';

/** What the commands answer to one inquiry. */
export interface Asked {
  readonly exit: number;
  readonly solve: SolveAnswer;
  /** Of the first system, where there is one. */
  readonly system: SystemInput | undefined;
  readonly check: Assessment | undefined;
  /** Of the inquiry, where there is no system. */
  readonly explain: ExplainAnswer | undefined;
  /** Every sentence of every answer, with ordinary spaces. */
  readonly sentences: readonly string[];
}

interface Ran {
  readonly exit: number;
  readonly answer: unknown;
}

const ordinarySpaces = (text: string): string =>
  text.replaceAll(/[\u2009\u202f\u00a0]\u2060?|\u2060/g, ' ').replaceAll(/ +/g, ' ');

/** The answer of a command with ordinary spaces. */
const answerOf = async (argv: readonly string[], stdin: unknown = ''): Promise<Ran> => {
  const { exit, answer } = await runJson(argv, stdin);
  return { exit, answer: JSON.parse(ordinarySpaces(JSON.stringify(answer))) as unknown };
};

/** Every text in a document, at any depth. */
const textsIn = (value: unknown): readonly string[] => {
  if (typeof value === 'string') return [value];
  if (Array.isArray(value)) return value.flatMap(textsIn);
  if (typeof value === 'object' && value !== null) return Object.values(value).flatMap(textsIn);
  return [];
};

/** Answers without the systems in them: what was said by the client is no answer. */
const sentencesOf = (solve: SolveAnswer, check?: Assessment, explain?: ExplainAnswer): readonly string[] => [
  ...textsIn({ ...solve, candidates: solve.candidates.map(({ system: _, ...rest }) => rest) }),
  ...textsIn(check),
  ...textsIn(explain),
];

/** Asks everything that the command line answers about an inquiry. */
export const ask = async (inquiry: string | object): Promise<Asked> => {
  const [operand, stdin] =
    typeof inquiry === 'string' ? [pathOf('inquiries', `${inquiry}.json`), ''] : ['-', inquiry];
  const solved = await answerOf(['solve', operand], stdin);
  const solve = solved.answer as SolveAnswer;
  const system = solve.candidates[0]?.system;
  const check =
    system === undefined ? undefined : ((await answerOf(['check', '-'], system)).answer as Assessment);
  const explain =
    solve.result === 'impossible'
      ? ((await answerOf(['explain', operand], stdin)).answer as ExplainAnswer)
      : undefined;
  return { exit: solved.exit, solve, system, check, explain, sentences: sentencesOf(solve, check, explain) };
};

/** Whether one sentence says all of these. */
export const says = ({ sentences }: Asked, ...patterns: readonly RegExp[]): boolean =>
  sentences.some((sentence) => patterns.every((pattern) => pattern.test(sentence)));

/** Results of a rule on the first system. */
export const resultsOf = ({ check }: Asked, rule: string): readonly RuleResult[] =>
  (check?.results ?? []).filter((result) => result.rule === rule);

export const materialOf = (
  { solve }: Asked,
  material: string,
): SolveAnswer['materials'][number] | undefined =>
  solve.materials.find((verdict) => verdict.material === material);

export const asksFor = ({ solve }: Asked, field: string): boolean =>
  solve.openPoints.some((point) => point.field === field);
