/** What help says of the app itself: its pages, the figures on them, and the commands that do without a page. */
import type { Said } from './words.js';

/** By the names the pages have in their heads. */
export const PAGES: readonly Said[] = [
  { name: 'Drills', text: 'The first page. Every drill by what it teaches, practice, and the sets that measure; each begins with a brief that never tells what comes.' },
  { name: 'Drill', text: 'Where a run is flown: speed, levers, switches, the flap gauge, the calls. Esc pauses; a scored run that was paused does not count.' },
  { name: 'Your own judgement', text: 'Asked before anything is told: was there a split, which side was ahead, how far apart, and how sure are you? Kept beside what was, so that you see how well you know.' },
  { name: 'Debrief', text: 'What happened in one sentence, its figures, the procedure with proofs, and the run again to step through, as flown over the whole window if you like. Two runs can be laid over each other.' },
  { name: 'Practice', text: 'Short runs whose difficulty follows the hand. They train; they are never counted in a figure about you.' },
  { name: 'Set', text: 'Many short runs of one kind, some without a split, to measure. Three numbers with intervals at the end, never merged into one.' },
  { name: 'Plan', text: 'Speeds, steps, heat, fuel, and the order of gear and flaps before the approach, each with its sum. The card prints on one sheet; the debrief lays it beside the run.' },
  { name: 'Course', text: 'Drills and sets in order. It proposes the next quarter of an hour and says why; a step opens when what it needs is done.' },
  { name: 'Logbook', text: 'Every run kept in this browser, to debrief again, narrow by pilot, run and outcome, take out as a file, put in from a file, or delete.' },
  { name: 'Progress', text: 'What the flights of a set say of one person over time. Only flights that are alike are laid side by side.' },
  { name: 'Bench', text: 'Where scenarios, sets, trainees and airframes are written: by form, by text or on the picture, flown at once by a scripted trainee, handed on as a file or a link.' },
  { name: 'Desk', text: 'A second window for an instructor: the true sides, faults put in or cleared, freeze, an earlier moment again, messages, grades. A scored drill that a desk follows does not count.' },
  { name: 'Class', text: 'Logbooks of several people, opened together. Nothing is kept and nobody is ranked.' },
  { name: 'Set-up', text: 'Keys, sound, helps, day and night. From here: True size, Switches and levers, Timing check.' },
  { name: 'True size', text: 'Measures the screen with a bank card, so that the gauge can be as long as a real one. A figure is compared only with flights at the same gauge.' },
  { name: 'Switches and levers', text: 'Gives the parts of a switch box, a lever or a gamepad something to do.' },
  { name: 'Timing check', text: 'How late this machine draws and hears, as far as a page can tell. It corrects nothing.' },
  { name: 'Help', text: 'This page. Every entry has an address that can be kept; search takes words in any order.' },
];

export const FIGURES: readonly Said[] = [
  { name: 'Growth at release', text: 'In deg, on the pointers, since onset. Held against the limit of growth: below it the run is caught, from it on late.' },
  { name: 'From onset to release', text: 'In s. Beside it: onset, the first degree apart and the release by the clock of the run.' },
  { name: 'Final split, true', text: 'In deg, between the sides themselves when they have stopped.' },
  { name: 'Roll authority used', text: 'In % of full roll control, from the final split. Beside it: how far the autopilot holds.' },
  { name: 'Settings reached, switch held', text: 'How many settings of the task, and seconds of holding in all, with the most heat the motor came to.' },
  { name: 'Closest to the limit speed', text: 'In kt below the limit in force, at its least. The standard: never above.' },
  { name: 'One second more, one second sooner', text: 'The same run with the release moved by a second: what it would have cost, or saved.' },
  { name: 'Caught, of decided runs', text: 'Share in %, with its 95 % interval. Undecided and void runs are no part of it. Shown from 8 decided runs.' },
  { name: 'False releases', text: 'A minute of holding, with the interval. A hand that lets go at every flicker catches much and pays here.' },
  { name: 'Median split', text: 'In deg: half of the releases came below it. A missed run counts as above every release.' },
  { name: 'Nine in ten', text: 'In deg or s: nine releases in ten come below it.' },
  { name: 'Curve', text: 'Part of the runs still held, against growth. It falls early for a hand that is quick.' },
  { name: 'Threshold and delay', text: 'The growth a person needs to see, in deg, and the time from seeing to letting go, in s. They can be told apart only over several rates; shown from 20 decided runs at 4 rates.' },
  { name: 'Difficulty', text: 'How fast the sides part in practice, in deg/s, as the hand has brought it. It is no measure of a person.' },
  { name: 'Margin', text: 'What each kind of fault would leave of the roll control at your own releases, and where 20, 50 and 100 % are used for who holds on.' },
  { name: 'Angles on the gauge', text: 'Minutes of arc as seen from where you sit, for one degree of flap; known once True size was done.' },
];

/** By the name of each command of `npx evenhand`. */
export const COMMANDS: readonly Said[] = [
  { name: 'evenhand check', text: 'Every problem of scenarios, airframes, sets, courses, records or inputs at once: file, line, column, what is allowed.' },
  { name: 'evenhand run', text: 'Flies a scenario, or a whole set, by a scripted trainee or from an inputs file; writes the record if asked.' },
  { name: 'evenhand sweep', text: 'Flies a scenario many times: outcomes with intervals, and how the figures are spread.' },
  { name: 'evenhand replay', text: 'Plays a record again.' },
  { name: 'evenhand verify', text: 'Proves that hash, outcome and score of a record follow from its inputs. It is no signature.' },
  { name: 'evenhand measure', text: 'A recognition report from a table of trials, with intervals.' },
  { name: 'evenhand plan', text: 'The approach plan of a scenario, with its sums.' },
  { name: 'evenhand speeds', text: 'Speeds of every setting at a mass, with the sums.' },
  { name: 'evenhand horn', text: 'Whether the gear horn sounds, whether it may be silenced, and why.' },
  { name: 'evenhand budget', text: 'From a fault to one degree and to parts of the roll authority, and what each second of holding on costs.' },
  { name: 'evenhand derive', text: 'Roll constants and flap areas from the geometry of a wing, to be pasted into an airframe file.' },
  { name: 'evenhand keys', text: 'Every key of a kind of file, as on this page.' },
  { name: 'evenhand serve', text: 'Serves the built app on this machine; --lan also for others of the local network.' },
];
