/** What of a picture is to be heard. */
import type { Heard } from './turn.js';

interface Seen {
  readonly blank: boolean;
  readonly frozen: boolean;
  readonly horn: 'silent' | 'sounds' | 'insists';
  readonly autopilot: boolean;
}

/** Null while the clock stands: then someone speaks, or nobody is there. */
export const heardOf = ({ blank, frozen, horn, autopilot }: Seen): Heard | null => (blank || frozen ? null : { horn: horn !== 'silent', autopilotOff: !autopilot });
