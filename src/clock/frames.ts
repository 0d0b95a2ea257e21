/** Stamps of animation frames: the argument of requestAnimationFrame, which shares one clock with event.timeStamp. */
import { animationFrames, map, share, type Observable } from 'rxjs';

/** However many ask, the browser is asked once a frame, and all get it in the order in which they came. */
const one = animationFrames().pipe(map(({ timestamp }) => timestamp), share());

/** One stamp a frame, ms of the page's clock. Frames stop with the last subscriber. */
export const frames = (): Observable<number> => one;
