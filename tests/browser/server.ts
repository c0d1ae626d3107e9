/** A server of the built site that a test can stop. */

import { expect, type Page } from '@playwright/test';
import type { serve } from '../../site/scripts/serve.js';

type Server = Awaited<ReturnType<typeof serve>>;

/** Where a server listens: on a port that was free. */
export function originOf(server: Server): string {
  const address = server.address();
  if (address === null || typeof address === 'string') throw new Error('not listening');
  return `http://localhost:${address.port}`;
}

/** Stops a server, open connections too. */
export async function stop(server: Server): Promise<void> {
  await new Promise((done) => {
    server.close(done);
    server.closeAllConnections();
  });
}

/** Opens the first page and waits until everything is kept. */
export async function keep(page: Page, origin: string): Promise<void> {
  await page.goto(`${origin}/`);
  expect((await page.request.get(`${origin}/sw.js`)).status()).toBe(200);
  await page.evaluate(() => navigator.serviceWorker.ready);
  await expect
    .poll(() => page.evaluate(() => navigator.serviceWorker.controller?.state), { timeout: 90_000 })
    .toBe('activated');
}
