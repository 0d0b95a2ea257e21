/** A device drawn as the browser sees it now: buttons filled while they are on, axes as marks on rules. */
import type { PadSeen } from './house.js';

/** The device's own name, without the numbers that browsers put behind or before it. */
export const nameOf = (id: string): string => id.replace(/\s*\([^)]*(vendor|product)[^)]*\)\s*$/i, '').replace(/^[0-9a-f]{4}-[0-9a-f]{4}-/i, '').trim() || 'a device without a name';

/** Shown of very large devices; the rest works all the same. */
const MOST_BUTTONS = 64;
const W = 168;

export function Seen({ pad: { buttons, axes, ownTime } }: { pad: PadSeen }) {
  const on = buttons.flatMap((one, at) => (one ? [at + 1] : []));
  return (
    <div class="device-seen">
      <div class="device-buttons" role="img" aria-label={`${buttons.length} buttons; on: ${on.length === 0 ? 'none' : on.join(', ')}`}>
        {buttons.slice(0, MOST_BUTTONS).map((one, at) => <span key={at} class={one ? 'device-on' : undefined}>{at + 1}</span>)}
      </div>
      {axes.length > 0 && (
        <div class="device-axes" role="img" aria-label={`${axes.length} axes at ${axes.map((one) => one.toFixed(1)).join(', ')}`}>
          {axes.map((value, at) => (
            <div key={at}>
              <span>{String.fromCodePoint(65 + at % 26)}</span>
              <svg viewBox={`0 0 ${W} 20`} width={W} height="20">
                <path class="device-rule" d={`M4 10H${W - 4}M4 5V15M${W / 2} 7V13M${W - 4} 5V15`} />
                <circle class="device-mark" cx={W / 2 + Math.min(Math.max(value, -1), 1) * (W / 2 - 4)} cy="10" r="5" />
              </svg>
            </div>
          ))}
        </div>
      )}
      <p class="small">{ownTime === null ? 'Move something on it: whether it tells when it was moved is seen then.' : ownTime ? 'It tells when it was moved: releases carry that time.' : 'It does not tell when it was moved: releases are stamped by frames.'}</p>
    </div>
  );
}
