// Entry of `npm test`.
import { checkNodeVersion } from '../../apps/api/src/start/node-version.mjs';

if (checkNodeVersion()) {
  import('tsx/esm/api')
    .then(function (tsx) {
      tsx.register();
      return import('./run-all.ts');
    })
    .catch(function (error) {
      console.error(error);
      console.log('0 passed, 1 failed');
      process.exit(1);
    });
}
