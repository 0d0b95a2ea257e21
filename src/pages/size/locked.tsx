/** Says what keeps the next run of a set from being seen as its first, and how to put it back. */
import { lock, putBack, unlike } from './lock.js';

export function Locked() {
  if (lock.value === null || unlike.value === null) return null;
  const { found, first, now } = unlike.value;
  const size = ({ widthPx, heightPx }: typeof first): string => (widthPx === undefined || heightPx === undefined ? 'what it was' : `${Math.round(widthPx)} × ${Math.round(heightPx)} px`);
  const chosen = found.includes('card') || found.includes('distance');
  return (
    <div class="note locked" role="status">
      <div>
        <p><strong>The gauge is not as it was in the first run of this set.</strong> Runs of two sizes would not measure one eye, so the next one waits.</p>
        <ul>
          {found.includes('zoom') && <li>The zoom, or the screen, is another: {first.pixelRatio.toFixed(2)} device pixels a px then, {now.pixelRatio.toFixed(2)} now. Put the zoom of the page back.</li>}
          {(found.includes('pointer') || found.includes('apart')) && <li>This window has no room for it: it was {size(first)}, and is {size(now)} now. Make it at least as large.</li>}
          {found.includes('card') && <li>This screen {first.mmPerPx === null ? 'has been measured since' : now.mmPerPx === null ? 'is not measured' : 'has been measured anew'}.</li>}
          {found.includes('distance') && <li>Your eye was stated at {first.distanceMm ?? 0} mm{now.distanceMm === undefined ? '' : `, and is at ${now.distanceMm} mm now`}.</li>}
        </ul>
      </div>
      {chosen && <button class="button quiet" type="button" onClick={() => putBack(first)}>Measure as in the first run</button>}
    </div>
  );
}
