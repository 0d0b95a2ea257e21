/** The colours of the page as the canvas needs them: read from the style sheet, so that there is one list of them. */

const NAMES = ['paper', 'sheet', 'ink', 'soft', 'mark', 'hair', 'accent', 'wash', 'warning', 'caution'] as const;
/** Colours as 24-bit numbers. */
export type Ink = Readonly<Record<(typeof NAMES)[number], number>>;

/** Reads the colours in force on an element. System colours and light-dark() come back worked out. */
export function readInk(element: HTMLElement): Ink {
  const probe = document.createElement('i');
  element.append(probe);
  const ink = Object.fromEntries(
    NAMES.map((name) => {
      probe.style.color = `var(--${name})`;
      return [name, colourOf(getComputedStyle(probe).color)];
    }),
  ) as Record<(typeof NAMES)[number], number>;
  probe.remove();
  return ink;
}

/** `rgb(1, 2, 3)`, with or without a fourth part, as a 24-bit number. */
function colourOf(text: string): number {
  const parts = /^rgba?\((\d+)[ ,]+(\d+)[ ,]+(\d+)/.exec(text);
  if (parts === null) throw new Error(`a colour that is not rgb: ${text}`);
  return (Number(parts[1]) << 16) | (Number(parts[2]) << 8) | Number(parts[3]);
}
