import { roleTitles } from '../auth/roles.js';
import type { SignIn } from './demo.js';

/** What a person needs to know once everything runs. */
export function announcement(address: string, password: string, signIns: readonly SignIn[]): string {
  const lines = signIns.map(({ email, role }) => `  ${email.padEnd(28)} ${roleTitles[role]}`);
  const demo = lines.length === 0 ? [] : ['', `Demo sign-ins, all with the password ${password}`, ...lines];
  return ['', `Flangewise runs at ${address}`, ...demo, '', 'Ctrl-C stops it.'].join('\n');
}
