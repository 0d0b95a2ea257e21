/** The loudspeaker of a run: hears of the aeroplane picture by picture, and plays what has its turn. */
import { PLANS } from './plan.js';
import { render, type Voice } from './render.js';
import { firstTurn, nextTurn, type Heard, type Turn } from './turn.js';

export interface Speaker {
  /** To be called in the very press that starts a run: a browser gives no sound to a page that nobody has touched. */
  unlock(): void;
  /** A run begins: what was said in an earlier one is forgotten. */
  begin(): void;
  /** @param heard null while everything is blanked */
  hear(heard: Heard | null): void;
  /** Loudness of the page, 0 to 1; 0 is off. The aeroplane's own silence is another thing. */
  loudness(part: number): void;
  /** Silence, and the device is given back. */
  close(): void;
}

/** Time constant of a change of loudness, s: no click. */
const EASE_S = 0.01;

/** Half the way of a slide is to sound half as loud: the ear goes by ratios. */
const gainOf = (part: number): number => part * part;

interface Playing {
  readonly context: AudioContext;
  readonly master: GainNode;
}

/** A speaker that is silent where the browser has no sound to give; nothing else is any the worse. */
export function openSpeaker(): Speaker {
  let out: Playing | null = null;
  let turn: Turn | null = null;
  let voices: Voice[] = [];
  let gain = 1;

  function start(): Playing | null {
    try {
      const context = new AudioContext({ latencyHint: 'interactive' });
      const master = new GainNode(context, { gain });
      master.connect(context.destination);
      return { context, master };
    } catch {
      return null;
    }
  }

  function cutAll(atS: number): void {
    for (const voice of voices) voice.cut(atS);
    voices = [];
  }

  return {
    unlock() {
      out ??= start();
      // Refused without a device: the horn is still told in words.
      if (out?.context.state === 'suspended') void out.context.resume().catch(() => undefined);
    },
    begin() {
      turn = null;
      if (out !== null) cutAll(out.context.currentTime);
    },
    hear(heard) {
      if (out === null || (turn === null && heard === null)) return;
      const nowS = out.context.currentTime;
      const before = turn ?? firstTurn(heard as Heard);
      turn = nextTurn(before, heard, nowS);
      if (turn.playing === before.playing) return;
      cutAll(turn.playing === null ? nowS : turn.playing.sinceS);
      if (turn.playing !== null) voices = [render(out.context, out.master, PLANS[turn.playing.name], turn.playing.sinceS)];
    },
    loudness(part) {
      const next = gainOf(part);
      if (next === gain) return;
      gain = next;
      out?.master.gain.setTargetAtTime(gain, out.context.currentTime, EASE_S);
    },
    close() {
      if (out !== null) void out.context.close().catch(() => undefined);
      out = null;
      turn = null;
      voices = [];
    },
  };
}
