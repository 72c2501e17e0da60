import { afterAll, describe, expect, it } from 'vitest';
import { type Caller, callers, procedurePaths, startProduct } from '../http/test-product.js';

const product = await startProduct(afterAll);

const signedIn: readonly Caller[] = ['engineer', 'sales', 'approver', 'keeper', 'sundrey', 'kelmoor'];
const job: readonly Caller[] = ['engineer', 'sales', 'approver', 'sundrey', 'kelmoor'];
const house: readonly Caller[] = ['engineer', 'sales', 'approver'];
const inquirers: readonly Caller[] = ['engineer', 'sundrey', 'kelmoor'];
const engineer: readonly Caller[] = ['engineer'];
const sales: readonly Caller[] = ['engineer', 'sales'];
const keeper: readonly Caller[] = ['keeper'];
const maker: readonly Caller[] = ['engineer', 'sales', 'approver', 'keeper'];

/** Who may call what. A procedure without a row fails the test below. */
const allowed: Readonly<Record<string, readonly Caller[]>> = {
  'calculations.list': signedIn,
  'calculations.run': signedIn,
  'catalogue.audit': maker,
  'catalogue.auditProgress': maker,
  'catalogue.checkDraft': maker,
  'catalogue.compare': maker,
  'catalogue.discardDraft': keeper,
  'catalogue.get': signedIn,
  'catalogue.getRevision': maker,
  'catalogue.importFile': keeper,
  'catalogue.listChanges': maker,
  'catalogue.listRevisions': maker,
  'catalogue.openDraft': keeper,
  'catalogue.release': keeper,
  'catalogue.removeItem': keeper,
  'catalogue.saveItem': keeper,
  'catalogue.savePriceList': keeper,
  'clients.list': house,
  'evidence.get': job,
  'health.get': callers,
  'inquiries.check': job,
  'inquiries.create': inquirers,
  'inquiries.get': job,
  'inquiries.list': job,
  'inquiries.update': inquirers,
  'offers.create': engineer,
  'offers.get': job,
  'offers.list': job,
  'offers.release': ['approver'],
  'offers.revise': sales,
  'offers.send': sales,
  'session.me': callers,
  'systems.assess': job,
  'systems.create': inquirers,
  'systems.explain': job,
  'systems.freeze': engineer,
  'systems.get': job,
  'systems.getRevision': job,
  'systems.narrow': job,
  'systems.save': inquirers,
  'systems.solve': job,
};

it('says of every procedure who may call it', () => {
  expect(Object.keys(allowed).sort()).toEqual([...procedurePaths].sort());
});

describe.each(Object.entries(allowed))('%s', (path, allowedCallers) => {
  it.each(callers)('as %s', async (as) => {
    const { status, error } = await product.call(as, path, {});
    if (allowedCallers.includes(as)) expect([200, 400]).toContain(status);
    else {
      const refused = as === 'nobody' ? [401, 'SIGN_IN_REQUIRED'] : [403, 'ROLE_NOT_ALLOWED'];
      expect([status, error?.data.reason]).toEqual(refused);
    }
  });
});

it.each(callers)('asks %s for the right to download as it does for the right to look', async (as) => {
  const download = await product.get(as, '/api/offers/none/documents/offer.pdf');
  const look = await product.call(as, 'offers.get', { id: 'none' });
  expect(download.statusCode).toBe(look.status);
  expect(download.json().error.data.reason).toBe(look.error?.data.reason);
  expect([401, 403, 404]).toContain(download.statusCode);
});

it.each(callers)('sends %s the catalogue as a file where he may look at it', async (as) => {
  const { id } = await product.database.catalogueRevision.findFirstOrThrow();
  const file = await product.get(as, `/api/catalogue/${id}/export.csv`);
  const look = await product.call(as, 'catalogue.getRevision', { id });
  expect(file.statusCode).toBe(look.status);
  expect(file.headers['content-type']).toMatch(look.status === 200 ? /^text\/csv/ : /^application\/json/);
  const none = await product.get(as, '/api/catalogue/none/export.csv');
  expect(none.statusCode).toBe(look.status === 200 ? 404 : look.status);
});

it('names to the maker’s people every client, and which of them have somebody who signs in', async () => {
  await product.call('engineer', 'inquiries.create', {
    document: { title: 'For a new one', client: 'Orvane Works' },
  });
  const { data } = await product.call('sales', 'clients.list', {});
  expect(data).toEqual([
    { name: 'Kelmoor Polymers', hasPeople: true },
    { name: 'Orvane Works', hasPeople: false },
    { name: 'Sundrey Fine Chemicals', hasPeople: true },
  ]);
});
