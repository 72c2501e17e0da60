// Entry of `npm start`. Written for old versions of Node too, so that they are told rather than fail on new syntax.
import { checkNodeVersion } from './node-version.mjs';

function explain(error) {
  if (error && error.code === 'ERR_MODULE_NOT_FOUND')
    console.error(
      'Packages are missing (' + error.message.split('\n')[0] + '). Run "npm ci", then "npm start" again.',
    );
  else console.error(error);
  process.exit(1);
}

if (checkNodeVersion()) {
  import('tsx/esm/api')
    .then(function (tsx) {
      tsx.register();
      return import('./start.ts');
    })
    .catch(explain);
}
