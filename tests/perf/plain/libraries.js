// The page that the weight of the drill page is held against: the three libraries as their own guides import them, and a needle.
import { Application, Graphics, Text } from 'pixi.js';
import { animationFrames, fromEvent, map, merge, scan } from 'rxjs';
import { z } from 'zod';

const drill = z.object({ title: z.string(), deg: z.number().min(0).max(40) }).parse({ title: 'plain', deg: 4 });
const app = new Application();
await app.init({ width: 640, height: 360 });
document.body.append(app.canvas);
const needle = new Graphics().moveTo(0, 0).lineTo(100, 0).stroke({ width: 2, color: 0xffffff });
const words = new Text({ text: drill.title });
app.stage.addChild(needle, words);
merge(fromEvent(window, 'keydown').pipe(map(() => 1)), animationFrames().pipe(map(() => 0)))
  .pipe(scan((deg, by) => deg + by, drill.deg))
  .subscribe((deg) => { needle.rotation = deg / 57.3; words.text = deg.toFixed(1); });
