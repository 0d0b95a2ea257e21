// The headers under which the app runs, written once: the shipped server, Vite's preview and Vite's dev server all read them here.

const strictRules = {
  'default-src': "'none'",
  'script-src': "'self'",
  'style-src': "'self'",
  'img-src': "'self' data: blob:",
  'font-src': "'self'",
  'connect-src': "'self'",
  'worker-src': "'self'",
  'manifest-src': "'self'",
  'base-uri': "'none'",
  'form-action': "'none'",
  'frame-ancestors': "'none'",
};

// Vite's dev client puts styles into <style> elements, talks over a web socket, and waits for a lost server in a worker made
// from a blob. Never shipped.
const developmentRules = {
  ...strictRules,
  'style-src': "'self' 'unsafe-inline'",
  'connect-src': "'self' ws:",
  'worker-src': "'self' blob:",
};

const policyText = (rules: Record<string, string>): string =>
  Object.entries(rules)
    .map(([name, sources]) => `${name} ${sources}`)
    .join('; ');

export const contentPolicy = policyText(strictRules);
const developmentContentPolicy = policyText(developmentRules);

/** Cross-origin isolation: without it the browser's clock is coarser (0.1 ms and more instead of 5 microseconds). */
const isolation = {
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Embedder-Policy': 'require-corp',
  'Cross-Origin-Resource-Policy': 'same-origin',
};

const common = { ...isolation, 'X-Content-Type-Options': 'nosniff', 'Referrer-Policy': 'no-referrer' };

/** On every answer of the shipped server, errors included. */
export const headers: Readonly<Record<string, string>> = { ...common, 'Content-Security-Policy': contentPolicy };

/** On every answer of `npm run dev`. */
export const developmentHeaders: Readonly<Record<string, string>> = {
  ...common,
  'Content-Security-Policy': developmentContentPolicy,
};

/** Built assets carry a hash of their content in their name, so they may be kept for good; everything else is asked for again. */
export const cacheControl = (urlPath: string): string =>
  /^\/assets\/.+-[\w-]{8}\.\w+(\.map)?$/.test(urlPath) ? 'public, max-age=31536000, immutable' : 'no-cache';
