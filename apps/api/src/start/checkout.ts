import { fileURLToPath } from 'node:url';

/** The folder of the repository. */
export const checkout = fileURLToPath(new URL('../../../../', import.meta.url)).replace(/[\\/]$/, '');
