import { mkdir, writeFile } from 'node:fs/promises';
import { dirname } from 'node:path';
import { format, resolveConfig } from 'prettier';
import { makeAnswers, makeSystems, pathOf } from './examples.js';

/** Writes the example systems and answers anew: `npm run examples`, after a change of the range or of the rules. */
const write = async (path: string, document: unknown): Promise<void> => {
  const file = pathOf(path);
  await mkdir(dirname(file), { recursive: true });
  const options = (await resolveConfig(file)) ?? {};
  await writeFile(file, await format(JSON.stringify(document), { ...options, parser: 'json' }));
  console.log(path);
};

const systems = await makeSystems();
for (const [path, document] of [...systems, ...(await makeAnswers(systems))]) await write(path, document);
