// The built app over plain http: loopback unless the local network is asked for by name.
import { realpath, stat } from 'node:fs/promises';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { networkInterfaces } from 'node:os';
import { join } from 'node:path';
import { answer, type Compressed } from './answer.js';

export interface ServeOptions {
  /** Folder of the built app, the one that holds index.html. */
  root: string;
  /** This port and no other; 0 takes any free one. Without it: the first free one from 4173. */
  port?: number | undefined;
  /** Listen on the local network as well, not on this machine alone. */
  lan?: boolean | undefined;
}

export interface Served {
  url: string;
  /** Addresses for other machines; empty unless `lan`. */
  lanUrls: string[];
  port: number;
  close(): Promise<void>;
}

const firstPort = 4173;
const portsTried = 100;

export async function serve({ root, port, lan = false }: ServeOptions): Promise<Served> {
  const folder = await builtFolder(root);
  const kept: Compressed = new Map();
  const server = createServer((request, response) => {
    answer(folder, kept, request, response).catch((problem: unknown) => {
      // A file that vanished between the look and the read, say: the reader is told, the server goes on.
      console.error(`serve: ${request.url}: ${String(problem)}`);
      if (!response.headersSent) response.writeHead(500);
      response.end();
    });
  });
  const host = lan ? '0.0.0.0' : '127.0.0.1';
  const taken = port === undefined ? await firstFree(server, host) : await listenOn(server, port, host);
  return {
    url: `http://127.0.0.1:${taken}/`,
    lanUrls: lan ? lanAddresses().map((address) => `http://${address}:${taken}/`) : [],
    port: taken,
    close: () =>
      new Promise((done) => {
        server.close(() => done());
        server.closeAllConnections();
      }),
  };
}

/** What to tell the person who started it, one line each. */
export const announcement = ({ url, lanUrls }: Served): string[] => [
  `Evenhand is at ${url}`,
  ...lanUrls.map((address) => `On the local network: ${address} (plain http: browsers there give a coarse clock)`),
];

async function builtFolder(root: string): Promise<string> {
  const page = await stat(join(root, 'index.html')).catch(() => null);
  if (!page?.isFile()) throw new Error(`${root} has no index.html: build the app first (npm run build).`);
  return realpath(root);
}

async function firstFree(server: Server, host: string): Promise<number> {
  for (let port = firstPort; port < firstPort + portsTried; port++) {
    if (await listens(server, port, host)) return port;
  }
  throw new Error(`No free port from ${firstPort} to ${firstPort + portsTried - 1}.`);
}

async function listenOn(server: Server, port: number, host: string): Promise<number> {
  if (!Number.isInteger(port) || port < 0 || port > 65535) throw new Error(`Port ${port}: a port is a whole number from 0 to 65535.`);
  if (!(await listens(server, port, host))) {
    throw new Error(`Port ${port} is taken. Name another one, or none: then the first free one from ${firstPort} is used.`);
  }
  return (server.address() as AddressInfo).port;
}

/** False when the port is taken; every other trouble is thrown. */
function listens(server: Server, port: number, host: string): Promise<boolean> {
  return new Promise((done, fail) => {
    const failed = (problem: NodeJS.ErrnoException): void => {
      server.off('listening', listening);
      if (problem.code === 'EADDRINUSE') done(false);
      else fail(problem.code === 'EACCES' ? new Error(`Port ${port} is not open to this user: choose one above 1023.`) : problem);
    };
    const listening = (): void => {
      server.off('error', failed);
      done(true);
    };
    server.once('error', failed);
    server.once('listening', listening);
    server.listen(port, host);
  });
}

const lanAddresses = (): string[] =>
  Object.values(networkInterfaces())
    .flat()
    .filter((one) => one !== undefined && one.family === 'IPv4' && !one.internal)
    .map((one) => one!.address);
