import { createHash } from 'node:crypto';
import { join } from 'node:path';
import { build } from 'esbuild';

/** The file that keeps the fingerprint is no part of what it is taken of. */
const keptIn = /rule-revision\.json$/;

/**
 * A fingerprint of everything that an assessment is worked out by: rules, conditions, calculations, their data. Layout, comments and
 * names of variables make no difference; the catalogue has a revision of its own.
 */
export async function fingerprintOfRules(): Promise<string> {
  const { outputFiles } = await build({
    entryPoints: [join(import.meta.dirname, '..', 'assess.ts')],
    ...{ bundle: true, platform: 'neutral', format: 'esm', minify: true, write: false, logLevel: 'error' },
    plugins: [
      {
        name: 'rules-and-calculations-alone',
        setup: ({ onResolve, onLoad }) => {
          onResolve({ filter: /^[^./]/ }, ({ path, kind }) =>
            kind === 'entry-point' ||
            (path.startsWith('@flangewise/') && !path.startsWith('@flangewise/catalogue'))
              ? undefined
              : { path, external: true },
          );
          onLoad({ filter: keptIn }, () => ({ contents: '{}', loader: 'json' }));
        },
      },
    ],
  });
  const hash = createHash('sha256');
  for (const { contents } of outputFiles) hash.update(contents);
  return hash.digest('hex').slice(0, 8);
}
