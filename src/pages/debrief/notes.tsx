/** Under the charts: what one run does not say, and the facts of the record, which a printed report needs. */
import type { RunRecord } from '../../../sim/files/index.js';
import { isFit } from '../../../sim/stats/timing-check.js';
import type { Facts } from './facts.js';
import { notesOf } from './proofs.js';

export const Notes = ({ facts, run }: { facts: Facts; run: RunRecord }) => (
  <section class="notes" aria-labelledby="notes-title">
    <h2 id="notes-title" class="ruled">What this run does not say</h2>
    <ul>{notesOf(facts, run).map((note) => <li key={note}>{note}</li>)}</ul>
  </section>
);

const FLEW: Readonly<Record<RunRecord['source'], string>> = { flown: 'a person', scripted: 'a script', live: 'a person under a live desk' };

/** As large as it was drawn, and how that compares with the airframe's own. */
function gaugeWords({ gauge: { pxPerDeg, mmPerPx, radiusMm, changed }, airframe }: RunRecord): string {
  if (pxPerDeg === 0) return 'not drawn';
  const size = mmPerPx === null || radiusMm === undefined ? ', size not set true' : `, ${radiusMm.toFixed(1)} mm long; the airframe’s is ${airframe.gauge.radiusMm} mm`;
  return `${pxPerDeg.toFixed(1)} px a degree${size}${changed === true ? '; changed its size in mid-run' : ''}`;
}

export function RecordFacts({ run }: { run: RunRecord }) {
  const { device, gauge } = run;
  const facts: readonly (readonly [string, string])[] = [
    ['Flown by', FLEW[run.source]], ['Airframe', run.airframe.title], ['Dice', `seed ${run.seed}`], ['Input', device.input],
    ['Gauge', gaugeWords(run)],
    ...(gauge.distanceMm === undefined || gauge.apartDeg === undefined ? [] : [['Eye', `${gauge.distanceMm} mm away, as stated; speed and gauge ${gauge.apartDeg.toFixed(0)}° apart`] as const]),
    ['Clock', device.renderer === 'none' ? 'none' : `${device.isolated ? 'fine' : 'coarse'}, grain ${device.clockGrainMs.toFixed(3)} ms`],
    ...(device.timing === undefined ? [] : [['Timing check', `${isFit(device.timing) ? 'fit' : 'not fit for timing'}: median ${device.timing.medianS.toFixed(2)} s, sd ${device.timing.sdS.toFixed(2)} s, by ${device.timing.input}`] as const]),
    ['Written by', `${run.app}, model ${run.model}`], ['Digest', `${run.digest.slice(0, 16)} …`],
  ];
  return (
    <section class="record-facts" aria-labelledby="record-title">
      <h2 id="record-title" class="ruled">Record</h2>
      <dl class="facts">{facts.map(([what, value]) => <div key={what}><dt>{what}</dt><dd>{value}</dd></div>)}</dl>
      <p class="small">A record carries no date and no name. Its digest shows damage and careless edits; it is no signature. Your own judgement, the device and the gauge are as the page wrote them and cannot be proved by replay.</p>
    </section>
  );
}
