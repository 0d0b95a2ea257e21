/** A sound on a graph of Web Audio, live or offline alike. */
import { samplesOf, type Plan } from './plan.js';

/** From full to nothing when a sound is cut, s: no click. */
const CUT_S = 0.02;

/** A sound that has been started. */
export interface Voice {
  /** Cuts it at a time of the context; one that is over by then stays as it is. */
  cut(atS: number): void;
}

/** Starts a sound at a time of its context, s; a plan with so many cycles ends by itself. */
export function render(context: BaseAudioContext, into: AudioNode, plan: Plan, atS: number): Voice {
  const samples = samplesOf(plan, context.sampleRate);
  const buffer = context.createBuffer(1, samples.length, context.sampleRate);
  buffer.copyToChannel(samples, 0);
  const source = new AudioBufferSourceNode(context, { buffer, loop: true });
  const fade = new GainNode(context);
  source.connect(fade).connect(into);
  source.addEventListener('ended', () => fade.disconnect());
  source.start(atS);
  if (plan.cycles !== null) source.stop(atS + plan.cycles * plan.cycleS);
  return {
    cut(cutS) {
      fade.gain.setValueAtTime(1, cutS);
      fade.gain.linearRampToValueAtTime(0, cutS + CUT_S);
      if (plan.cycles === null || cutS + CUT_S < atS + plan.cycles * plan.cycleS) source.stop(cutS + CUT_S);
    },
  };
}
