/** Addresses of the pages, in the fragment and opaque: a drill is a number, and nothing in the address tells what it holds. */

/** Pages that their name alone leads to. */
const PLAIN = {
  choose: '', debrief: 'debrief', settings: 'settings', size: 'size', switches: 'switches', timing: 'timing', logbook: 'logbook', person: 'person', plan: 'plan',
  desk: 'desk', practice: 'practice', 'practice-run': 'practice/run', courses: 'course', class: 'class',
} as const;
type Plain = keyof typeof PLAIN;
const PLAIN_PAGES = Object.keys(PLAIN) as Plain[];

export type Route =
  | { readonly page: Plain }
  | { readonly page: 'brief' | 'run' | 'say' | 'drill-plan'; readonly number: number; readonly seed: number | null }
  | { readonly page: 'set' | 'set-run' | 'set-say'; readonly number: number }
  /** `link`: a document that came in the address itself. */
  | { readonly page: 'bench'; readonly link: string | null }
  /** A run that was written on a bench: handed on under an opaque id, or in the address itself. */
  | { readonly page: 'own' | 'own-run' | 'own-say' | 'own-plan'; readonly id: string }
  | { readonly page: 'own-link'; readonly code: string }
  /** A section or an entry of help; null for its beginning. */
  | { readonly page: 'help'; readonly at: string | null }
  | { readonly page: 'course'; readonly course: number }
  /** A step of a course that is a drill. */
  | { readonly page: 'step' | 'step-run' | 'step-say' | 'step-plan'; readonly course: number; readonly step: number }
  | { readonly page: 'nowhere' };

const SET_STEPS: Readonly<Record<string, 'set' | 'set-run' | 'set-say'>> = { '': 'set', run: 'set-run', say: 'set-say' };
const OWN_STEPS: Readonly<Record<string, 'own' | 'own-run' | 'own-say' | 'own-plan'>> = { '': 'own', run: 'own-run', say: 'own-say', plan: 'own-plan' };
const COURSE_STEPS: Readonly<Record<string, 'step' | 'step-run' | 'step-say' | 'step-plan'>> = { '': 'step', run: 'step-run', say: 'step-say', plan: 'step-plan' };
const STEPS: Readonly<Record<string, 'brief' | 'run' | 'say' | 'drill-plan'>> = { '': 'brief', run: 'run', say: 'say', plan: 'drill-plan' };

export function routeOf(fragment: string): Route {
  const [path = '', query = ''] = fragment.replace(/^#\/?/, '').split('?', 2);
  const plain = PLAIN_PAGES.find((page) => PLAIN[page] === path);
  if (plain !== undefined) return { page: plain };
  if (path === 'help') return { page: 'help', at: new URLSearchParams(query).get('k') };
  if (path === 'bench') return { page: 'bench', link: new URLSearchParams(query).get('s') };
  if (path === 'own') return { page: 'own-link', code: new URLSearchParams(query).get('s') ?? '' };
  const own = /^own\/([0-9a-f]{32})(?:\/(\w+))?$/.exec(path);
  const flown = own === null ? undefined : OWN_STEPS[own[2] ?? ''];
  if (own !== null && flown !== undefined) return { page: flown, id: own[1] as string };
  const course = /^course\/([1-9]\d{0,3})(?:\/([1-9]\d?)(?:\/(\w+))?)?$/.exec(path);
  const stage = course === null ? undefined : COURSE_STEPS[course[3] ?? ''];
  if (course !== null && course[2] === undefined) return { page: 'course', course: Number(course[1]) };
  if (course !== null && stage !== undefined) return { page: stage, course: Number(course[1]), step: Number(course[2]) };
  const set = /^set\/([1-9]\d{0,3})(?:\/(\w+))?$/.exec(path);
  const step = set === null ? undefined : SET_STEPS[set[2] ?? ''];
  if (set !== null && step !== undefined) return { page: step, number: Number(set[1]) };
  const drill = /^drill\/([1-9]\d{0,3})(?:\/(\w+))?$/.exec(path);
  const page = drill === null ? undefined : STEPS[drill[2] ?? ''];
  if (drill === null || page === undefined) return { page: 'nowhere' };
  return { page, number: Number(drill[1]), seed: seedOf(query) };
}

/** `?seed=7` makes the dice of a run known beforehand; for a second flight of the same run. */
function seedOf(query: string): number | null {
  const text = new URLSearchParams(query).get('seed');
  return text !== null && /^\d{1,10}$/.test(text) && Number(text) <= 0xffffffff ? Number(text) : null;
}

const BEHIND = { step: '', 'step-run': '/run', 'step-say': '/say', 'step-plan': '/plan', own: '', 'own-run': '/run', 'own-say': '/say', 'own-plan': '/plan', set: '', 'set-run': '/run', 'set-say': '/say', brief: '', run: '/run', say: '/say', 'drill-plan': '/plan' } as const;

export function fragmentOf(route: Exclude<Route, { page: 'nowhere' }>): string {
  if (route.page === 'help') return `#/help${route.at === null ? '' : `?k=${encodeURIComponent(route.at)}`}`;
  if ('link' in route) return `#/bench${route.link === null ? '' : `?s=${encodeURIComponent(route.link)}`}`;
  if ('code' in route) return `#/own?s=${route.code}`;
  if ('id' in route) return `#/own/${route.id}${BEHIND[route.page]}`;
  if ('step' in route) return `#/course/${route.course}/${route.step}${BEHIND[route.page]}`;
  if ('course' in route) return `#/course/${route.course}`;
  if (!('number' in route)) return `#/${PLAIN[route.page]}`;
  if (!('seed' in route)) return `#/set/${route.number}${BEHIND[route.page]}`;
  return `#/drill/${route.number}${BEHIND[route.page]}${route.seed === null ? '' : `?seed=${route.seed}`}`;
}
