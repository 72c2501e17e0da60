const needed = [20, 19];

/** Says what to do and sets the exit code when this version of Node is too old. Returns whether it is new enough. */
export function checkNodeVersion() {
  const given = process.versions.node.split('.').map(Number);
  if (given[0] > needed[0] || (given[0] === needed[0] && given[1] >= needed[1])) return true;
  console.error(
    'Flangewise needs Node.js ' +
      needed.join('.') +
      ' or newer; this is ' +
      process.versions.node +
      '. ' +
      'Install a newer Node.js, then run "npm ci" and the command again.',
  );
  process.exitCode = 1;
  return false;
}
