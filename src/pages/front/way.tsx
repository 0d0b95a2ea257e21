/** The way of a task on the scale of the settings, small enough for a list: where from, by which settings, to which. */
interface Props {
  readonly settings: readonly { readonly deg: number; readonly name: string }[];
  /** The start and then the settings to reach, deg. */
  readonly stops: readonly number[];
}

const WIDTH = 116;
const EDGE = 6;
const LINE = 10;

export function Way({ settings, stops }: Props) {
  const degs = [...settings.map(({ deg }) => deg), ...stops];
  const [low, high] = [Math.min(...degs), Math.max(...degs)];
  const x = (deg: number): number => EDGE + ((deg - low) / (high - low || 1)) * (WIDTH - 2 * EDGE);
  const from = stops[0] ?? low;
  const to = stops[stops.length - 1] ?? from;
  const back = to < from ? -1 : 1;
  return (
    <svg class="way" viewBox={`0 0 ${WIDTH} 20`} width={WIDTH} height="20" aria-hidden="true">
      <line class="way-rule" x1={EDGE} x2={WIDTH - EDGE} y1={LINE} y2={LINE} />
      {settings.map(({ deg }) => <line key={deg} class="way-tick" x1={x(deg)} x2={x(deg)} y1={LINE - 4} y2={LINE + 4} />)}
      <line class="way-run" x1={x(from)} x2={x(to) - back * 5} y1={LINE} y2={LINE} />
      {stops.slice(1, -1).map((deg) => <line key={deg} class="way-stop" x1={x(deg)} x2={x(deg)} y1={LINE - 6} y2={LINE + 6} />)}
      <circle class="way-from" cx={x(from)} cy={LINE} r="3.6" />
      <path class="way-to" d={`M0 0L${-back * 9} -5.5V5.5Z`} transform={`translate(${x(to)} ${LINE})`} />
    </svg>
  );
}
