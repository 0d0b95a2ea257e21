// Opens the built app in a real browser and watches it: what the console, the content policy or the network complain of fails the test.
import { chromium, type Browser, type BrowserContextOptions, type CDPSession, type Page } from 'playwright-core';
import { afterAll, inject } from 'vitest';

declare module 'vitest' {
  export interface ProvidedContext {
    appUrl: string;
    browserEndpoint: string;
    chromium: { path: string; flags: string[] };
  }
}

export interface OpenOptions extends Pick<BrowserContextOptions, 'deviceScaleFactor' | 'hasTouch' | 'colorScheme' | 'reducedMotion' | 'forcedColors'> {
  width?: number;
  height?: number;
  /** Runs in the page before the app does: a stand-in for a device, say. */
  before?: () => void;
  /** Complaints that this test provokes on purpose. */
  expected?: RegExp[];
}

export interface App {
  page: Page;
  /** Every address asked for, in order. */
  requests: string[];
  /** What was complained of so far; must be empty at close. */
  problems: string[];
  /** Closes the page; throws when anything was complained of. */
  close: () => Promise<void>;
}

export const appUrl = (): string => inject('appUrl');

let shared: Promise<Browser> | undefined;
const theBrowser = (): Promise<Browser> => (shared ??= chromium.connect(inject('browserEndpoint')));
const open = new Set<App>();

/** `path` is what follows the server's address: '' or '#/bench', say. */
export async function openApp(path = '', { width = 1280, height = 720, before, expected = [], ...context }: OpenOptions = {}): Promise<App> {
  const browser = await theBrowser();
  const own = await browser.newContext({ viewport: { width, height }, ...context });
  await own.addInitScript(reportViolations);
  if (before) await own.addInitScript(before);
  const page = await own.newPage();
  const app: App = { page, ...watch(page, expected), close };
  open.add(app);
  await page.goto(new URL(path, appUrl()).href);
  return app;

  async function close(): Promise<void> {
    open.delete(app);
    // What is still on its way to the page has nobody left to go to.
    if (!page.isClosed()) await page.unrouteAll({ behavior: 'ignoreErrors' });
    await own.close();
    if (app.problems.length > 0) throw new Error(`The page complained:\n${app.problems.join('\n')}`);
  }
}

export const cdp = (page: Page): Promise<CDPSession> => page.context().newCDPSession(page);

/** Runs in the page. The browser's own console line on a violation does not always name the place. */
function reportViolations(): void {
  document.addEventListener('securitypolicyviolation', (event) => {
    console.error(`policy violation: ${event.violatedDirective} ${event.blockedURI} at ${event.sourceFile}:${event.lineNumber}`);
  });
}

function watch(page: Page, expected: RegExp[]): Pick<App, 'requests' | 'problems'> {
  const requests: string[] = [];
  const problems: string[] = [];
  const complain = (line: string): void => {
    if (!expected.some((one) => one.test(line))) problems.push(line);
  };
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') complain(`console ${message.type()}: ${message.text()}`);
  });
  page.on('pageerror', (error) => complain(`page error: ${error.stack ?? error.message}`));
  page.on('crash', () => complain('the page crashed'));
  page.on('request', (request) => {
    requests.push(request.url());
    if (!/^(data|blob):/.test(request.url()) && !request.url().startsWith(appUrl())) complain(`asked elsewhere: ${request.url()}`);
  });
  page.on('requestfailed', (request) => {
    // A page that is left or closed drops what it was loading; that is no fault of the app's.
    const why = request.failure()?.errorText ?? '';
    if (why !== 'net::ERR_ABORTED') complain(`request failed: ${request.url()} ${why}`);
  });
  page.on('response', (response) => {
    if (response.status() >= 400) complain(`answer ${response.status()}: ${response.url()}`);
  });
  return { requests, problems };
}

// A test that failed before it closed its page must not leave it to the next; one that forgot to close is still judged.
afterAll(async () => {
  const troubles: unknown[] = [];
  for (const app of open) await app.close().catch((trouble: unknown) => troubles.push(trouble));
  await (await shared)?.close();
  shared = undefined;
  if (troubles.length > 0) throw troubles[0];
});
