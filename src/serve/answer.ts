// One request, one answer: the file, "not changed", or a plain sentence that says why not.
import { readFile } from 'node:fs/promises';
import type { IncomingMessage, ServerResponse } from 'node:http';
import { promisify } from 'node:util';
import { gzip } from 'node:zlib';
import { findFile, requestPath, type Place } from './place.js';
import { cacheControl, headers } from './policy.js';
import { contentType, isText } from './types.js';

const compress = promisify(gzip);
const worthCompressingBytes = 1000;

/** Compressed files by name and tag, so that each is compressed once in the life of a server. */
export type Compressed = Map<string, Buffer>;

export async function answer(root: string, kept: Compressed, request: IncomingMessage, response: ServerResponse): Promise<void> {
  for (const [name, value] of Object.entries(headers)) response.setHeader(name, value);
  if (request.method !== 'GET' && request.method !== 'HEAD') {
    response.setHeader('Allow', 'GET, HEAD');
    return refuse(request, response, 405, 'This server only hands out files.');
  }
  const path = requestPath(request.url ?? '');
  if (path === null) return refuse(request, response, 400, 'This address is not written in a way this server reads.');
  const place = await findFile(root, path);
  if (place === null) return refuse(request, response, 404, 'There is no such page here.');
  await send(path, place, kept, request, response);
}

async function send(path: string, place: Place, kept: Compressed, request: IncomingMessage, response: ServerResponse): Promise<void> {
  const type = contentType(place.file);
  const tag = `W/"${place.bytes.toString(36)}-${Math.round(place.modifiedMs).toString(36)}"`;
  response.setHeader('Cache-Control', cacheControl(path));
  response.setHeader('ETag', tag);
  response.setHeader('Vary', 'Accept-Encoding');
  if (sameTag(request.headers['if-none-match'], tag)) {
    response.writeHead(304).end();
    return;
  }
  let body: Buffer = await readFile(place.file);
  if (isText(type) && body.length >= worthCompressingBytes && takesGzip(request.headers['accept-encoding'])) {
    body = await compressedOnce(`${place.file} ${tag}`, body, kept);
    response.setHeader('Content-Encoding', 'gzip');
  }
  response.writeHead(200, { 'Content-Type': type, 'Content-Length': body.length });
  response.end(request.method === 'HEAD' ? undefined : body);
}

async function compressedOnce(key: string, body: Buffer, kept: Compressed): Promise<Buffer> {
  const before = kept.get(key);
  if (before) return before;
  const small = await compress(body);
  kept.set(key, small);
  return small;
}

function refuse(request: IncomingMessage, response: ServerResponse, status: number, sentence: string): void {
  const page = `<!doctype html><html lang="en"><meta charset="utf-8"><title>Evenhand</title><h1>${sentence}</h1><p><a href="/">Evenhand's first page</a></p></html>\n`;
  response.writeHead(status, {
    'Content-Type': 'text/html; charset=utf-8',
    'Content-Length': Buffer.byteLength(page),
    'Cache-Control': 'no-store',
  });
  response.end(request.method === 'HEAD' ? undefined : page);
}

const sameTag = (asked: string | undefined, tag: string): boolean =>
  asked !== undefined && (asked.trim() === '*' || asked.split(',').some((one) => one.trim() === tag));

/** `gzip;q=0` means "not gzip". */
const takesGzip = (accepts: string | undefined): boolean =>
  (accepts ?? '').split(',').some((one) => /^\s*gzip\s*(;\s*q=(0\.0*[1-9]\d*|1(\.0*)?))?\s*$/.test(one));
