/** A worker of a sweep: flies the parts it is sent and sends their rows back. */
import { parentPort, workerData } from 'node:worker_threads';
import { flyPart, type Part, type SweepOrder } from '../../sim/index.js';

const order = workerData as SweepOrder;
parentPort?.on('message', (part: Part) => parentPort?.postMessage({ part, rows: flyPart(order, part) }));
