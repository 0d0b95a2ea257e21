/** What `measure` prints with --json; see output.ts for the other commands. */
import * as z from 'zod/mini';
import { whole, word } from './quantity.js';

const flag = (description: string) => z.boolean().check(z.meta({ description }));
const number = (description: string, unit: string) => z.number().check(z.meta({ description, unit }));
const none = <T extends z.ZodMiniType>(schema: T) => z.nullable(schema);
const about = <T extends z.ZodMiniType>(description: string, schema: T) => schema.check(z.meta({ description }));
const count = (description: string) => whole(description, '1', 0, 1e6);

const estimate = (description: string, unit: string) => about(description, z.strictObject({
  median: number('Of the posterior.', unit), lo: number('95 % interval.', unit), hi: number('95 % interval.', unit),
}));

const prior = z.strictObject({ mean: number('Mean of the logarithm.', '1'), sd: number('Spread of the logarithm.', '1') });

const steps = z.array(z.strictObject({
  splitDeg: number('Split at which someone let go.', 'deg'),
  atRisk: count('Runs still held just before it.'),
  events: count('Releases at it.'),
  s: number('Share not yet let go behind it (Kaplan and Meier).', '1'),
  lo: none(number('95 % limit, log-log.', '1')), hi: none(number('95 % limit, log-log.', '1')),
}));

/** A report of a table of trials; null where the trials do not bear the figure. */
export const measureOutput = z.strictObject({
  limitDeg: number('Split from which on a release is late.', 'deg'),
  seenDeg: number('Split below which a release is no reaction.', 'deg'),
  falsePoints: number('Points taken for a false release.', '1'),
  outcomes: about('What the trials come to.', z.strictObject({
    caught: count('Let go before the limit.'), late: count('Let go at the limit or beyond.'), missed: count('Held through the limit.'),
    undecided: count('Held, but ended before the limit.'), falseRelease: count('Let go without cause.'), held: count('Quiet, held.'),
  })),
  caught: about('Of the decided trials (caught, late, missed); Wilson 95 %.', z.strictObject({
    k: count('Caught.'), n: count('Decided.'), lo: number('Of the share.', '1'), hi: number('Of the share.', '1'),
  })),
  falseReleases: none(about('Of quiet holding; Garwood 95 %.', z.strictObject({
    count: count('False releases.'), quietS: number('Quiet holding.', 's'),
    perMin: number('Rate.', '1/min'), lo: number('Of the rate.', '1/min'), hi: number('Of the rate.', '1/min'),
  }))),
  survival: about('All rates together; one curve only where every run is decided.', steps),
  everyRunDecided: flag('No run with an onset ended before the limit.'),
  survivalByRate: z.array(z.strictObject({ rateDegPerS: number('Flown rate.', 'deg/s'), steps, heldToDeg: z.array(number('Split at which a run ended that was still held.', 'deg')) })),
  medianSplitDeg: none(number('First split with a share of one half or less.', 'deg')),
  medianLoDeg: none(number('95 % limit, by the band of the curve; null: not reached.', 'deg')),
  medianHiDeg: none(number('95 % limit, by the band of the curve; null: not reached.', 'deg')),
  medianMidpointDeg: none(number('The same by the rule of other packages: the middle of a flat step at one half.', 'deg')),
  restrictedMeanDeg: none(number('Mean split, each cut at the limit.', 'deg')),
  logNormal: none(about('Censored log-normal of the splits, maximum likelihood.', z.strictObject({
    mu: number('Mean of ln split.', '1'), sigma: number('Spread of ln split.', '1'),
    medianDeg: number('Median.', 'deg'), q90Deg: number('Nine in ten lie below.', 'deg'), logLik: number('ln likelihood.', '1'),
  }))),
  model: none(about('ln split ~ N(ln(theta + rate t0), sigma), plain maximum likelihood: describes the table.', z.strictObject({
    thetaDeg: number('Split that the eye needs.', 'deg'), t0S: number('Attention, reaction and device.', 's'), sigma: number('Spread of ln split.', '1'),
    v90DegPerS: none(number('Fastest rate at which nine in ten let go before the limit.', 'deg/s')), logLik: number('ln likelihood.', '1'),
  }))),
  guess: none(about('What releases without cause would catch by luck.', z.strictObject({
    windowS: number('From onset to the limit at the lower middle rate.', 's'), chance: number('Of a lucky catch.', '1'), correctedCatch: number('Caught without it.', '1'),
  }))),
  dPrime: none(about('Only beyond 100 trials with an onset; log-linear.', z.strictObject({
    d: number("d'.", '1'), criterion: number('c.', '1'), se: number("Standard error of d'.", '1'), windows: count('Stretches of quiet holding that count as trials.'),
  }))),
  meanPoints: none(number('Over all trials.', '1')),
  posterior: none(about('Race of detection, lapse and lucky release with priors; from 20 decided trials.', z.strictObject({
    sigma: estimate('Spread of ln split.', '1'),
    thetaDeg: none(estimate('Split that the eye needs; from four rates.', 'deg')), t0S: none(estimate('Attention, reaction and device; from four rates.', 's')),
    atRates: z.array(z.strictObject({
      rateDegPerS: number('Flown rate.', 'deg/s'), medianDeg: estimate('Median split.', 'deg'), q90Deg: estimate('Nine in ten lie below.', 'deg'),
      beforeLimit: estimate('Chance to let go before the limit, lapses apart.', '1'),
    })),
    prior: about('Normal priors of logarithms, and the lapse taken for given.', z.strictObject({
      lnTheta: prior, lnT0: prior, lnSigma: prior, lapse: number('Lapse.', '1'),
    })),
  }))),
  person: about('What the trials allow to be said of whoever flew them.', z.strictObject({
    decided: count('Decided trials.'),
    may: about('What may be said.', z.array(word('What.', ['counts', 'fit', 'threshold']))),
    needed: about('What is missing.', z.strictObject({
      runsForCounts: count('Decided trials for the counts and the median.'), runsForFit: count('Decided trials for the fit.'), ratesForThreshold: count('Rates for threshold and time apart.'),
    })),
  })),
});

/** Shape of `measure --json`: `measureOutput` parses it. */
export type MeasureOutput = z.infer<typeof measureOutput>;
