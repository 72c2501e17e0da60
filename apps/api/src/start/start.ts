import { readOptions } from './options.js';
import { run } from './run.js';

// One start, from the environment to the exit code.

const stopping = new AbortController();
for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const)
  process.on(signal, () => {
    if (!stopping.signal.aborted) console.log('\nStopping …');
    stopping.abort();
  });

const options = readOptions(process.env);
const end = options.ok ? await run(options.value, stopping.signal) : options.error;
if (end.code !== 'STOPPED') console.error(`\nFlangewise does not run. ${end.message}`);
process.exit(end.code === 'STOPPED' ? 0 : 1);
