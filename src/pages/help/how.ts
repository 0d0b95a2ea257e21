/** What help says of what people come to do, and of the keys outside the drill. */
import type { Said } from './words.js';

/** Each with the page where it is done. */
export const HOW: readonly Said[] = [
  { name: 'Begin', href: '#/course', text: 'Set the gauge to true size, then fly step 1 of the course.' },
  { name: 'Write a scenario', href: '#/bench', text: 'On the bench begin a new one or open a shipped one. Set the start and the task, add a fault, and give it a moment: a time, a flap position, seconds of holding, chance. The preview flies it with every change.' },
  { name: 'Give it to a trainee', href: '#/bench', text: 'Copy link for trainees on the bench: it opens at the brief, and neither address nor page tells what comes. Or save it as a file: it is opened on the bench, where all of it can be read.' },
  { name: 'Follow a run', href: '#/desk', text: 'Two windows of one browser side by side, not two tabs. Start the run in one, follow it in the other. A drill whose first release is scored is void under a desk; one in which a release is a pause is not.' },
  { name: 'Measure somebody', href: '#/', text: 'Fly a set: one run says little. Progress then tells three figures with their intervals, and what is still too few to say.' },
  { name: 'Write a set that measures', href: '#/bench', text: 'A new set on the bench. Its gates say whether a hand without eyes would gain by it; while one does not hold, the set measures nobody.' },
  { name: 'Fly your own numbers', href: '#/bench', text: 'A new airframe on the bench, every number from your own manuals. Beside it stand the speeds, the horn and the rates that come of them, and relations that ought to hold.' },
  { name: 'Brief a lesson', href: '#/bench', text: 'Lesson sheet beside a scenario on the bench: one for the instructor, one for the trainee that tells nothing. Coverage shows which faults no scenario practises yet.' },
  { name: 'Write a course', href: '#/help?k=course-file', text: 'A course is a file of text; its keys stand under Course file. Open it under Course: it is checked, and every problem told with its place.' },
  { name: 'See where a class stands', href: '#/class', text: 'Let everyone export the logbook, and open the files together on the class page.' },
  { name: 'Print', href: '#/logbook', text: 'Debrief, plan, course, class and lesson sheet each have Print in their head: paper by day, with the caution.' },
];

/** Keys of the pages beside the drill. */
export const PAGE_KEYS: readonly Said[] = [
  { name: 'Desk: F', text: 'Freeze; again, go on.' },
  { name: 'Desk: M, B', text: 'Save the moment; go back to the one saved last.' },
  { name: 'Desk: P', text: 'I prompted: noted, and the run enters no estimate.' },
  { name: 'Desk: C', text: 'Clear all that has acted, disarm all that waits.' },
  { name: 'Desk: X', text: 'End and void, with a reason.' },
  { name: 'Desk: I, O', text: 'To the fault to be put in; to the other pilot and the controller.' },
  { name: 'Desk: 1 to 9', text: 'A remark, as it stands beside its figure.' },
  { name: 'Bench: Ctrl and Z, Ctrl and Y', text: 'Undo, redo: one history for form, text and picture.' },
  { name: 'Bench: arrow keys on a figure', text: 'Up and down by a step; with Shift, or Page up and Page down, ten steps.' },
  { name: 'Bench: arrow keys on a mark of the picture', text: 'Move it along its ruler; Delete takes it away; Escape gives a dragged one back.' },
  { name: 'Bench: Ctrl and Space in the text', text: 'What may stand here.' },
  { name: 'Bench: F8 in the text', text: 'The next problem.' },
  { name: 'Bench: Ctrl and F in the text', text: 'Find words in the text; Enter leads to the next, Shift and Enter back, Escape leaves.' },
  { name: 'Plan: Enter in a figure', text: 'Checks it.' },
];
