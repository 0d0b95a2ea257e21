/** The debrief as files: one quiet row of them. */
import { useSignal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import type { RunRecord } from '../../../sim/files/index.js';
import { pixelsOf, standalone } from '../../charts/standalone.js';
import type { Facts } from './facts.js';
import { exportName, figuresText, rowsText, type Kind } from './exports.js';
import type { House } from '../house.js';

const CAUTION = 'Practice aid on an invented airframe; earns no credit.';
/** Pixels of a picture a px of the page. */
const FINE = 2;

interface Props {
  readonly house: House;
  readonly facts: Facts;
  readonly run: RunRecord;
}

export function SaveAs({ house, facts, run }: Props) {
  const place = useRef<HTMLElement>(null);
  const failed = useSignal(false);
  const charts = () => {
    const figure = place.current?.parentElement?.querySelector('.figure');
    const drawing = figure?.querySelector<SVGSVGElement>(':scope > svg');
    if (!drawing) throw new Error('no charts on this page');
    return standalone(drawing, `Charts of run ${run.digest.slice(0, 8)}`, `${figure?.querySelector('.legend')?.textContent ?? ''} ${CAUTION}`, '.cursor');
  };
  const make: Readonly<Record<Kind, () => Blob | Promise<Blob>>> = {
    'rows.csv': () => new Blob([rowsText(facts)], { type: 'text/csv;charset=utf-8' }),
    'figures.json': () => new Blob([figuresText(facts, run)], { type: 'application/json' }),
    'charts.svg': () => new Blob([charts().text], { type: 'image/svg+xml' }),
    'charts.png': () => pixelsOf(charts(), FINE),
  };
  const save = async (kind: Kind): Promise<void> => {
    try {
      await house.saveFile(await make[kind](), exportName(run, kind));
      failed.value = false;
    } catch {
      failed.value = true;
    }
  };
  return (
    <section ref={place} class="save-as" aria-labelledby="save-as-title">
      <h2 id="save-as-title" class="ruled">Save as</h2>
      <p>
        <button class="plain" type="button" onClick={() => void house.save(run)}>record</button>
        <button class="plain" type="button" onClick={() => void save('rows.csv')}>rows, CSV</button>
        <button class="plain" type="button" onClick={() => void save('figures.json')}>figures, JSON</button>
        <button class="plain" type="button" onClick={() => void save('charts.svg')}>charts, SVG</button>
        <button class="plain" type="button" onClick={() => void save('charts.png')}>charts, PNG</button>
      </p>
      {failed.value && <p class="small" role="alert">This browser made no file of that.</p>}
    </section>
  );
}
