// Starts the command line from a bundle of its sources, made anew once a source has changed. Reading the TypeScript of
// all libraries file by file takes seconds on every call; the bundle takes a fraction of one.
import { createHash } from 'node:crypto';
import { mkdirSync, readdirSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

const cli = fileURLToPath(new URL('..', import.meta.url));
const root = fileURLToPath(new URL('../../..', import.meta.url));
const dist = join(cli, 'dist');
const record = join(dist, 'bundle.json');

/** Size and time of every source: what changes when one of them does. */
const stateOf = (sources) =>
  sources.map((source) => {
    const { size, mtimeMs } = statSync(join(root, source));
    return `${source} ${size} ${mtimeMs}`;
  });

/** The bundle made last, where its sources are still the same. */
const findBundle = () => {
  try {
    const { folder, sources, state } = JSON.parse(readFileSync(record, 'utf8'));
    const fresh = stateOf(sources).every((line, index) => line === state[index]);
    return fresh ? join(dist, folder, 'main.js') : undefined;
  } catch {
    return undefined;
  }
};

/** Bundles that are an hour old are read by nobody any more. */
const dropOld = (current) => {
  for (const name of readdirSync(dist)) {
    const path = join(dist, name);
    if (name !== current && path !== record && Date.now() - statSync(path).mtimeMs > 3_600_000)
      rmSync(path, { recursive: true, force: true });
  }
};

const write = (file, text) => {
  writeFileSync(`${file}.${process.pid}`, text);
  renameSync(`${file}.${process.pid}`, file);
};

/** Bundles the sources of this repository; other packages stay outside. Two calls at once do not disturb each other. */
const makeBundle = async () => {
  const { build, stop } = await import('esbuild');
  const draft = join(dist, `draft-${process.pid}`);
  const { metafile } = await build({
    absWorkingDir: root,
    entryPoints: [join(cli, 'src', 'main.ts')],
    outdir: draft,
    bundle: true,
    splitting: true,
    platform: 'node',
    format: 'esm',
    target: 'node20.19',
    metafile: true,
    logLevel: 'silent',
    plugins: [
      {
        name: 'packages-stay-outside',
        setup: ({ onResolve }) => {
          onResolve({ filter: /^[^./]/ }, ({ path, kind }) =>
            kind === 'entry-point' || path.startsWith('@flangewise/') ? undefined : { path, external: true },
          );
        },
      },
    ],
  });
  await stop();
  const sources = Object.keys(metafile.inputs);
  const state = stateOf(sources);
  const folder = createHash('sha256').update(state.join('\n')).digest('hex').slice(0, 16);
  mkdirSync(dist, { recursive: true });
  try {
    renameSync(draft, join(dist, folder));
  } catch {
    rmSync(draft, { recursive: true, force: true });
  }
  write(record, JSON.stringify({ folder, sources, state }));
  dropOld(folder);
  return join(dist, folder, 'main.js');
};

/** The sources themselves, slower: where no bundle can be made, for instance in a folder that cannot be written. */
const readSources = async () => {
  const { register } = await import('tsx/esm/api');
  register();
  return join(cli, 'src', 'main.ts');
};

const file = findBundle() ?? (await makeBundle().catch(readSources));
await import(pathToFileURL(file).href);
