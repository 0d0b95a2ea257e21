/** The five anchors of an instructor's grade, in plain words of our own, and what is graded. A blank is no low grade: it was not seen. */
export const ANCHORS = [
  { anchor: 1, name: 'Unsafe', means: 'The aeroplane was put at risk, or would have been without help.' },
  { anchor: 2, name: 'Below the standard', means: 'Safe, but something that matters was left out, late or had to be prompted.' },
  { anchor: 3, name: 'At the standard', means: 'Safe and complete; small slips were noticed and put right.' },
  { anchor: 4, name: 'Above the standard', means: 'Safe, complete and in good time, with room to spare.' },
  { anchor: 5, name: 'Exemplary', means: 'Others could be shown this.' },
] as const;

export const GRADED = ['Scan of the gauge', 'Letting go', 'Call and second look', 'Lever, speed, limits', 'Flying and plan', 'Workload'] as const;

/** The remarks of one press each, in the order of their keys. */
export const REMARKS = ['good scan', 'gauge not watched', 'late release', 'good call', 'no call', 'speed', 'lever order', 'overloaded', 'debrief this'] as const;
