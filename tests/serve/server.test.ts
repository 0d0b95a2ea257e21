// The shipped file server, asked over real sockets. Status codes and header meanings: RFC 9110.
import { mkdir, mkdtemp, rm, symlink, utimes, writeFile } from 'node:fs/promises';
import { createServer, connect } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { contentPolicy } from '../../src/serve/policy.js';
import { serve, announcement, type Served } from '../../src/serve/server.js';

const secret = 'outside the root';
let folder: string;
let root: string;
let served: Served;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'evenhand-serve-'));
  root = join(folder, 'root');
  await mkdir(join(root, 'assets'), { recursive: true });
  await writeFile(join(folder, 'secret.txt'), secret);
  await mkdir(join(folder, 'root-beside'));
  await writeFile(join(folder, 'root-beside/secret.txt'), secret);
  await writeFile(join(root, 'index.html'), '<!doctype html><title>Here</title>');
  await writeFile(join(root, '.hidden'), secret);
  await writeFile(join(root, 'assets/app-Ab3_dE-9.js'), `export const long = '${'a'.repeat(5000)}';`);
  await writeFile(join(root, 'assets/face.woff2'), Buffer.alloc(3000));
  await writeFile(join(root, 'with space.svg'), '<svg/>');
  await symlink(join(folder, 'secret.txt'), join(root, 'way-out.txt'));
  await symlink(folder, join(root, 'door'));
  served = await serve({ root, port: 0 });
});

afterAll(async () => {
  await served.close();
  await rm(folder, { recursive: true });
});

const ask = (path: string, init?: RequestInit): Promise<Response> => fetch(new URL(path, served.url), init);

/** The whole answer to a request target sent as it is, which no well-behaved client would do. */
const askRaw = (target: string, method = 'GET'): Promise<string> =>
  new Promise((done, fail) => {
    const socket = connect(served.port, '127.0.0.1', () => socket.write(`${method} ${target} HTTP/1.1\r\nHost: here\r\nConnection: close\r\n\r\n`, 'latin1'));
    let answer = '';
    socket.on('data', (part) => (answer += part.toString('latin1')));
    socket.on('end', () => done(answer)).on('error', fail);
  });

describe('what is there', () => {
  test.each([
    ['/', 'text/html; charset=utf-8'],
    ['/index.html?x=1', 'text/html; charset=utf-8'],
    ['/assets/app-Ab3_dE-9.js', 'text/javascript; charset=utf-8'],
    ['/assets/face.woff2', 'font/woff2'],
    ['/with%20space.svg', 'image/svg+xml; charset=utf-8'],
  ])('%s comes as %s', async (path, type) => {
    const answer = await ask(path);
    expect(answer.status).toBe(200);
    expect(answer.headers.get('content-type')).toBe(type);
  });

  test('HEAD gives the same headers and no body', async () => {
    const [head, get] = await Promise.all([askRaw('/assets/face.woff2', 'HEAD'), askRaw('/assets/face.woff2')]);
    const headersOf = (answer: string): string => (answer.split('\r\n\r\n')[0] ?? '').replace(/^Date:.*$/m, '');
    expect(headersOf(head)).toBe(headersOf(get));
    expect(head.endsWith('\r\n\r\n')).toBe(true);
    expect(get.length - head.length).toBe(3000);
  });

  test('text is compressed for those who take it, and only for them', async () => {
    const small = await ask('/assets/app-Ab3_dE-9.js', { headers: { 'accept-encoding': 'br, gzip;q=0.5' } });
    expect(small.headers.get('content-encoding')).toBe('gzip');
    expect(Number(small.headers.get('content-length'))).toBeLessThan(1000);
    expect(await small.text()).toContain('aaaa');
    const refused = await ask('/assets/app-Ab3_dE-9.js', { headers: { 'accept-encoding': 'gzip;q=0, br' } });
    expect(refused.headers.get('content-encoding')).toBeNull();
    expect(refused.headers.get('vary')).toBe('Accept-Encoding');
    expect((await ask('/assets/face.woff2')).headers.get('content-encoding')).toBeNull();
  });

  test('an unchanged file is not sent again, a changed one is', async () => {
    const tag = (await ask('/')).headers.get('etag') ?? '';
    expect(tag).not.toBe('');
    const again = await ask('/', { headers: { 'if-none-match': `"other", ${tag}` } });
    expect(again.status).toBe(304);
    expect(await again.text()).toBe('');
    await utimes(join(root, 'index.html'), new Date(), new Date(Date.now() + 5000));
    expect((await ask('/', { headers: { 'if-none-match': tag } })).status).toBe(200);
  });

  test('only what carries its hash in its name is kept for good', async () => {
    expect((await ask('/assets/app-Ab3_dE-9.js')).headers.get('cache-control')).toContain('immutable');
    expect((await ask('/assets/face.woff2')).headers.get('cache-control')).toBe('no-cache');
    expect((await ask('/')).headers.get('cache-control')).toBe('no-cache');
  });
});

describe('what is refused', () => {
  // RFC 3986 section 7 and the usual ways out: dots plain, encoded once and twice, backslashes, NUL, absolute, links.
  test.each([
    '/../secret.txt',
    '/..%2fsecret.txt',
    '/%2e%2e/secret.txt',
    '/%2e%2e%2fsecret.txt',
    '/%252e%252e%252fsecret.txt',
    '/assets/../../secret.txt',
    '/assets/..%5c..%5csecret.txt',
    '/..\\secret.txt',
    '/index.html%00.txt',
    '/%00',
    '//secret.txt',
    '/../root-beside/secret.txt',
    '/way-out.txt',
    '/door/secret.txt',
    '/.hidden',
    '/%2ehidden',
    '/%c0%ae%c0%ae/secret.txt',
    '/%',
    '../secret.txt',
    'http://here/../secret.txt',
    '*',
  ])('%s', async (target) => {
    const answer = await askRaw(target);
    expect(answer).toMatch(/^HTTP\/1\.1 40[04] /);
    expect(answer).not.toContain(secret);
  });

  test.each(['/assets', '/assets/', '/nothing', '/index.html/', `/${'a'.repeat(5000)}`])('%s is not a page', async (path) => {
    const answer = await ask(path);
    expect(answer.status).toBe(404);
    expect(await answer.text()).toContain('There is no such page here.');
  });

  test.each(['POST', 'PUT', 'DELETE', 'OPTIONS'])('%s', async (method) => {
    const answer = await ask('/', { method });
    expect(answer.status).toBe(405);
    expect(answer.headers.get('allow')).toBe('GET, HEAD');
  });
});

test.each([['/', 200], ['/nothing', 404], ['/%', 400]])('%s carries policy and isolation', async (path, status) => {
  const { status: got, headers } = await ask(path);
  expect(got).toBe(status);
  expect(headers.get('content-security-policy')).toBe(contentPolicy);
  expect(headers.get('cross-origin-opener-policy')).toBe('same-origin');
  expect(headers.get('cross-origin-embedder-policy')).toBe('require-corp');
  expect(headers.get('x-content-type-options')).toBe('nosniff');
  expect(headers.get('referrer-policy')).toBe('no-referrer');
});

test('the policy is the agreed one, word for word', () => {
  // Source: the project's decision "Content policy, once".
  expect(contentPolicy).toBe(
    "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data: blob:; font-src 'self'; connect-src 'self'; worker-src 'self'; manifest-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'",
  );
});

describe('ports and networks', () => {
  test('a taken port is named when it was asked for, and passed over when none was', async () => {
    await expect(serve({ root, port: served.port })).rejects.toThrow(`Port ${served.port} is taken.`);
    const one = await serve({ root });
    const next = await serve({ root });
    expect(one.port).toBeGreaterThanOrEqual(4173);
    expect(next.port).toBeGreaterThan(one.port);
    await Promise.all([one.close(), next.close()]);
  });

  test.each([-1, 1.5, 65536, Number.NaN])('port %s is no port', async (port) => {
    await expect(serve({ root, port })).rejects.toThrow('a whole number from 0 to 65535');
  });

  test('a folder without the app says what to do', async () => {
    await expect(serve({ root: folder, port: 0 })).rejects.toThrow('npm run build');
  });

  test('loopback only, unless the network is asked for', async () => {
    // A listener on 0.0.0.0 answers on 127.0.0.2 too (RFC 1122, 3.2.1.3: all of 127/8 is this machine); one on 127.0.0.1 does not.
    const reached = (port: number): Promise<boolean> => fetch(`http://127.0.0.2:${port}/`).then(() => true, () => false);
    expect(await reached(served.port)).toBe(false);
    const wide = await serve({ root, port: 0, lan: true });
    expect(await reached(wide.port)).toBe(true);
    expect(announcement(wide).length).toBe(1 + wide.lanUrls.length);
    await wide.close();
  });

  test('a closed server gives its port back, even with a reader still connected', async () => {
    const one = await serve({ root, port: 0 });
    await fetch(one.url); // leaves a kept-alive connection
    await one.close();
    await new Promise<void>((done, fail) => {
      const other = createServer().once('error', fail).listen(one.port, '127.0.0.1', () => other.close(() => done()));
    });
  });
});
