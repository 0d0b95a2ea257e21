/** The shipped scenarios, sets and airframes as they are written, for whoever writes their own. They give a drill away: no trainee's page asks for them. */

const drills = import.meta.glob<string>('../../scenarios/drills/*.json', { query: '?raw', import: 'default', eager: true });
const airframes = import.meta.glob<string>('../../scenarios/airframes/*.json', { query: '?raw', import: 'default', eager: true });
const sets = import.meta.glob<string>('../../scenarios/sets/*.json', { query: '?raw', import: 'default', eager: true });

export interface ShippedFile {
  /** Name of the file, without folder and ending. */
  readonly name: string;
  readonly text: string;
}

const files = (texts: Readonly<Record<string, string>>): ShippedFile[] =>
  Object.entries(texts).map(([file, text]) => ({ name: /([^/]+)\.json$/.exec(file)?.[1] ?? file, text }));

export const drillFiles = (): ShippedFile[] => files(drills);
export const setFiles = (): ShippedFile[] => files(sets);
export const airframeFiles = (): ShippedFile[] => files(airframes);
