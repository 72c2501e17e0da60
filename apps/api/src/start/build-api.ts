import { renameSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { fail, succeed, type Outcome } from '@flangewise/model';
import { build, stop } from 'esbuild';
import { checkout } from './checkout.js';
import { problem, type StartProblem } from './problems.js';

const apiFolder = join(checkout, 'apps', 'api');

/**
 * Bundles the API with the libraries of this repository, which are TypeScript, and leaves every other package to be imported.
 *
 * @returns the file to run; `worker.mjs`, which its threads run, lies beside it
 */
export async function buildApi(): Promise<Outcome<string, StartProblem>> {
  const folder = join(apiFolder, 'dist');
  const draft = join(folder, `draft-${process.pid}`);
  try {
    await build({
      entryPoints: {
        worker: join(apiFolder, 'src', 'workshop', 'worker.ts'),
        main: join(apiFolder, 'src', 'main.ts'),
      },
      outdir: draft,
      outExtension: { '.js': '.mjs' },
      bundle: true,
      platform: 'node',
      format: 'esm',
      target: 'node20.19',
      sourcemap: 'inline',
      logLevel: 'silent',
      plugins: [
        {
          name: 'packages-stay-outside',
          setup: ({ onResolve }) => {
            onResolve({ filter: /^[^./]/ }, ({ path, kind }) =>
              kind === 'entry-point' || path.startsWith('@flangewise/')
                ? undefined
                : { path, external: true },
            );
          },
        },
      ],
    });
    // Renamed in one step: another starter never runs half a file.
    for (const file of ['worker.mjs', 'main.mjs']) renameSync(join(draft, file), join(folder, file));
    return succeed(join(folder, 'main.mjs'));
  } catch (error) {
    return fail(
      problem('BUILD_FAILED', {
        what: 'the API',
        log: error instanceof Error ? error.message : String(error),
      }),
    );
  } finally {
    rmSync(draft, { recursive: true, force: true });
    await stop();
  }
}
