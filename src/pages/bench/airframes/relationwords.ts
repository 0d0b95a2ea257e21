/** What each relation of an airframe asks, for whoever typed a number that breaks it. */
import type { Relation, RelationName } from '../../../../sim/index.js';

interface Words {
  /** The relation as one sentence. */
  readonly asks: string;
  /** Where it comes from. */
  readonly rule: string;
  /** What to look at when it does not hold. */
  readonly look: string;
}

export const RELATION_WORDS: Readonly<Record<RelationName, Words>> = {
  stallFalls: { asks: 'More flap, a lower stall speed', rule: '14 CFR 25.103(a)', look: 'the greatest lift coefficients of the settings' },
  referenceFactor: { asks: 'The reference speed is at least 1.23 stall speeds', rule: '14 CFR 25.125(b)(2)', look: 'the reference factor' },
  bankAtReference: { asks: 'At the reference speed 40° of bank are free of stall warning', rule: '14 CFR 25.143(h), the number from memory', look: 'the reference factor' },
  limitAboveReference: { asks: 'The limit lies above the reference speed with ice', rule: '14 CFR 25.335(e)(1)', look: 'the limit of the setting, and the ice additive' },
  limitOverStall: { asks: 'The limit is at least 1.6 stall speeds at take-off mass within the take-off band, 1.8 at landing mass beyond it', rule: '14 CFR 25.335(e)(3), 25.1511', look: 'the limit of the setting' },
  limitFalls: { asks: 'More flap, no higher limit', rule: '14 CFR 25.1511', look: 'the limits of the settings' },
  gearSpeeds: { asks: 'The gear is not moved faster than it may be out', rule: '14 CFR 25.1515; common practice, no source', look: 'the two gear speeds' },
  retractsAtLimit: { asks: 'The drive still brings the flaps in 9 kt above the limit', rule: '14 CFR 25.697(d), as we read it for a standby drive', look: 'the limiter, the no-back factor and the gearing' },
};

const figure = (value: number, unit: Relation['unit']): string =>
  unit === '1' ? value.toFixed(2) : unit === 'deg' ? `${value.toFixed(1)}°` : unit === 'Nm' ? `${value.toFixed(1)} N m` : `${value.toFixed(1)} kt`;

const SIDES: Readonly<Record<Relation['side'], string>> = { atLeast: 'at least', atMost: 'at most', below: 'below' };

export const foundIn = ({ value, unit }: Relation): string => figure(value, unit);
export const boundOf = ({ bound, side, unit }: Relation): string => `${SIDES[side]} ${figure(bound, unit)}`;
