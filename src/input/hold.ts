/**
 * The hold as a machine: which events take the switch, which let it go. One hand at a time has it, and only that hand
 * can let it go; a second finger, a second key or a repeat changes nothing. Pure: events in, deeds out.
 */
export type Way = 'extend' | 'retract';

/** Who has the switch: a pointer by its number, a key by its code, a button of a device, or a press that lasts until the next. */
export type Grip = `pointer ${number}` | `key ${string}` | `pad ${number} ${number}` | 'latch';

/** Who holds which way; null while nobody does. */
export type Held = { readonly grip: Grip; readonly way: Way } | null;

/** What may happen to the switch, whoever tells of it. */
export type HoldEvent =
  | { readonly what: 'press'; readonly grip: Grip; readonly way: Way }
  /** The hand let go: pointer or key up. */
  | { readonly what: 'lift'; readonly grip: Grip }
  /** The device took the pointer away: cancelled, or its capture lost. */
  | { readonly what: 'gone'; readonly grip: Grip }
  /** The run is paused: a switch that is held would otherwise be let go unseen. */
  | { readonly what: 'letGo' }
  /** Focus went to another part of the page; a key that holds is no longer felt to belong to the switch. */
  | { readonly what: 'moved' }
  /** The window lost its focus, or the page is hidden or left. */
  | { readonly what: 'lost'; readonly loss: 'focusLost' | 'hidden' };

/** What is to be filed: a hold, a release by the hand, or a loss that was none of its doing. */
export type Deed =
  | { readonly deed: 'hold'; readonly way: Way }
  | { readonly deed: 'release' }
  /** Let go, but not by the hand. */
  | { readonly deed: 'lose'; readonly loss: 'focusLost' | 'hidden' };

/** Who holds behind an event, and what it comes to; null: nothing. */
export function holdStep(held: Held, event: HoldEvent): { held: Held; deed: Deed | null } {
  switch (event.what) {
    case 'press':
      if (held !== null) return { held, deed: null };
      return { held: { grip: event.grip, way: event.way }, deed: { deed: 'hold', way: event.way } };
    case 'lift':
      if (held?.grip !== event.grip) return { held, deed: null };
      return { held: null, deed: { deed: 'release' } };
    case 'gone':
      if (held?.grip !== event.grip) return { held, deed: null };
      return { held: null, deed: { deed: 'lose', loss: 'focusLost' } };
    case 'letGo':
      return { held: null, deed: held === null ? null : { deed: 'release' } };
    case 'moved':
      if (held === null || !held.grip.startsWith('key ')) return { held, deed: null };
      return { held: null, deed: { deed: 'release' } };
    case 'lost':
      // Told even when nothing is held: the instruments cannot be watched, so the clock stops.
      return { held: null, deed: { deed: 'lose', loss: event.loss } };
  }
}

/**
 * The same event for a hand that cannot hold: a press takes the switch, the next press of any kind lets it go, and what
 * a finger or the focus does between them changes nothing. A lost page lets go as ever. null: nothing happens.
 */
export function latchedEvent(held: Held, event: HoldEvent): HoldEvent | null {
  switch (event.what) {
    case 'press': return held === null ? { ...event, grip: 'latch' } : { what: 'lift', grip: 'latch' };
    case 'lift': case 'gone': case 'moved': return null;
    case 'letGo': case 'lost': return event;
  }
}
