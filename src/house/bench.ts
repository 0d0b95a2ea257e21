/** What the bench needs: what is shipped, as written and as data. */
import type { BenchHouse, BenchKit, ShippedText } from '../pages/bench/house.js';
import type { BenchKind } from '../pages/bench/kinds.js';
import type { ShippedFile } from '../records/shipped.js';
import { budget } from './budgets.js';

let fetched: Promise<BenchKit> | null = null;

async function fetchKit(): Promise<BenchKit> {
  const [{ airframesOnShelf, drillsOnShelf }, { airframeFiles, drillFiles, setFiles }, { parsedValue }] = await Promise.all([
    import('../records/shelf.js'), import('../records/shipped.js'), import('../text/index.js'),
  ]);
  const told = (kind: BenchKind, { name, text }: ShippedFile): ShippedText & { order: number } => {
    const value = parsedValue(text);
    const { title, order } = (value ?? {}) as { title?: unknown; order?: unknown };
    return { kind, name, text, title: typeof title === 'string' ? title : name, order: typeof order === 'number' ? order : Infinity };
  };
  const inOrder = (kind: BenchKind, files: readonly ShippedFile[]) => files.map((file) => told(kind, file)).sort((a, b) => a.order - b.order);
  return {
    airframes: airframesOnShelf(), drills: drillsOnShelf(),
    shipped: [...inOrder('scenario', drillFiles()), ...inOrder('set', setFiles()), ...inOrder('airframe', airframeFiles())],
  };
}

export const bench: BenchHouse = {
  budget,
  kit: () => (fetched ??= fetchKit().catch((problem: unknown) => {
    fetched = null; // asked again, it is fetched again
    throw problem;
  })),
};
