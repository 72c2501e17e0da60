import type { Trouble } from '../trouble.js';
import { plain } from './plain.js';

/** A trouble on one line: where, what was given, what is allowed. */
export const troubleText = ({ code, path, given, message }: Trouble): string => {
  const where = path === undefined || path === '' || message.startsWith(`${path}:`) ? '' : `${path}: `;
  const said = given === undefined || message.includes(given) ? '' : `${given} given; `;
  return plain(`${code}  ${where}${said}${message}`);
};
