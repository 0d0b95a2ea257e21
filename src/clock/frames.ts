/** Stamps of animation frames: the argument of requestAnimationFrame, which shares one clock with event.timeStamp. */
import { animationFrames, map, type Observable } from 'rxjs';

/** One stamp a frame, ms of the page's clock. Frames stop with the last subscriber. */
export const frames = (): Observable<number> => animationFrames().pipe(map(({ timestamp }) => timestamp));
