// What the sound test puts into a page.
export { openSpeaker } from '../../src/sound/speaker.js';
export { render } from '../../src/sound/render.js';
