/** Everything that the pages say of a run, as plain texts. */
import type { RunRecord } from '../../sim/files/index.js';
import type { Debrief } from '../../sim/index.js';
import { besideOf, sideBySide } from '../../src/pages/debrief/beside.js';
import { deskTold } from '../../src/pages/desk/told.js';
import { rowsText } from '../../src/pages/debrief/exports.js';
import { stillMoving } from '../../src/pages/debrief/facts.js';
import { figuresOf, timesOf } from '../../src/pages/debrief/figures.js';
import { assessed } from '../../src/pages/debrief/judged.js';
import { momentsOf } from '../../src/pages/debrief/moments.js';
import { figureOf, ITEM_WORDS, momentOf, notesOf, proofOf } from '../../src/pages/debrief/proofs.js';
import { readingsOf, spokenRow } from '../../src/pages/replay/readings.js';
import { callSentence, cost, headline, whatHappened } from '../../src/pages/debrief/sentences.js';
import { whyVoid } from '../../src/pages/words.js';

const SAID = { split: 'yes', side: 'left', growthDeg: 1, surePct: 50, driveFailed: 'no' } as const;

export function wordsOf(facts: Debrief, run: RunRecord): string[] {
  stillMoving(facts);
  const rows = [facts.rows[0], facts.rows[facts.rows.length >> 1], facts.rows[facts.rows.length - 1]].filter((row) => row !== undefined);
  return [
    ...headline(facts, run), ...whatHappened(facts, run), cost(facts), callSentence(facts, run) ?? '', whyVoid(run) ?? '', timesOf(facts),
    ...momentsOf(facts, run).map(({ word, atS }) => `${word} ${atS}`),
    ...facts.flight.procedure.map((item) => `${ITEM_WORDS[item.item]} ${proofOf(item, facts)} ${figureOf(item) ?? ''} ${momentOf(item, facts) ?? ''}`),
    ...notesOf(facts, run), ...figuresOf(facts, run).map(({ what, value }) => `${what} ${value}`),
    ...assessed(SAID, facts, run).map(({ what, said, was }) => `${what} ${said} ${was}`),
    ...sideBySide(facts, run, besideOf(facts, facts, run)).flat(),
    ...deskTold(run).map(({ words }) => words),
    ...rows.flatMap((row) => [spokenRow(row), ...readingsOf(row, true).flat()]),
    rowsText({ rows }),
  ];
}
