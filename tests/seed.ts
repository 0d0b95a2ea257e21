// Random tests throw the same dice every time. A failure prints seed and path; EVENHAND_SEED=n throws others.
import fc from 'fast-check';

const asked = process.env.EVENHAND_SEED;
export const seed = asked === undefined ? 20 : Number(asked);
if (!Number.isInteger(seed)) throw new Error(`EVENHAND_SEED=${asked} is not a whole number.`);
fc.configureGlobal({ seed });
