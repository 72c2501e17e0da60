import type { Outputs } from '../api/client';

/** Names that differ in case and blanks alone are of one client. */
const folded = (name: string): string => name.trim().replace(/\s+/g, ' ').toLowerCase();

/** Who outside the house will see an inquiry that names this client. */
export function whoSees(typed: string, clients: Outputs['clients']['list']): string {
  if (folded(typed) === '') return 'No client named; nobody outside sees it';
  const known = clients.find(({ name }) => folded(name) === folded(typed));
  if (known === undefined) return 'New client; nobody outside sees it yet';
  return known.hasPeople
    ? `People of ${known.name} will see it`
    : `Nobody of ${known.name} signs in; nobody outside sees it yet`;
}
