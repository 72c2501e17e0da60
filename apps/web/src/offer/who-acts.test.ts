import { describe, expect, it } from 'vitest';
import { whoActs } from './who-acts';

const draft = { state: 'draft', blocking: [], waitsFor: [] } as const;
const offers = {
  draft: { ...draft, blocking: [], waitsFor: [] },
  open: { ...draft, blocking: ['Jacket: not decidable'], waitsFor: [] },
  waiting: {
    state: 'in_review',
    blocking: ['A discount of 8 % waits for its release.'],
    waitsFor: ['discount'],
  },
  sent: { state: 'sent', blocking: [], waitsFor: [] },
} satisfies Record<string, Parameters<typeof whoActs>[1]>;

const who = 'Applications engineers and sales support revise and send offers; this one';

describe('who has the next step with an offer', () => {
  it.each([
    ['draft', `${who} waits for one of them to send it.`],
    ['open', `${who} waits for an applications engineer to settle what is listed here.`],
    ['waiting', `${who} waits for an approver to release the discount.`],
    ['sent', `${who} is sent and waits for nothing.`],
  ] as const)('tells the approver of an offer that is %s', (state, said) => {
    expect(whoActs({ role: 'approver' }, offers[state])).toBe(said);
  });

  it.each(['applications_engineer', 'sales_support'] as const)('tells %s only what is waited for', (role) => {
    expect(whoActs({ role }, offers.draft)).toBeUndefined();
    expect(whoActs({ role }, offers.sent)).toBeUndefined();
    expect(whoActs({ role }, offers.waiting)).toBe('It waits for an approver to release the discount.');
  });

  it('tells a customer nothing of the house', () => {
    for (const offer of Object.values(offers)) expect(whoActs({ role: 'customer' }, offer)).toBeUndefined();
  });
});
