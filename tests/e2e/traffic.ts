import type { Page, Response } from 'playwright-core';

/** One answer that a browser got: a page, a script, data or a document. */
export interface Received {
  readonly url: string;
  readonly kind: 'script' | 'other';
  readonly body: string;
}

/** Everything that a page and its workers receive from now on. */
export interface Traffic {
  /** What came so far, once all of it is there. */
  readonly received: () => Promise<readonly Received[]>;
}

const isRedirect = (response: Response): boolean => response.status() >= 300 && response.status() < 400;

/** Records the bodies of all answers to a page. What is cut off by the next page has no body and is left out. */
export function record(page: Page): Traffic {
  const bodies: Promise<Received | undefined>[] = [];
  page.on('response', (response) => {
    if (isRedirect(response)) return;
    const url = response.url();
    const kind = /\.js(\?|$)/.test(url) ? 'script' : 'other';
    bodies.push(
      response.body().then(
        (body) => ({ url, kind, body: body.toString('utf8') }),
        () => undefined,
      ),
    );
  });
  return {
    received: async () => (await Promise.all(bodies)).filter((one) => one !== undefined),
  };
}
