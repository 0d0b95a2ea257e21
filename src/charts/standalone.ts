/** A drawing of the page as a file that stands by itself: every colour worked out, no class, no style sheet. */

/** What style sheets give a drawing, as the attributes of the same names (SVG 2, presentation attributes). */
const GIVEN = ['fill', 'stroke', 'stroke-width', 'stroke-dasharray', 'stroke-linecap', 'stroke-linejoin', 'paint-order', 'font-size', 'font-weight'] as const;

const SVG = 'http://www.w3.org/2000/svg';
const MARGIN = 24;
/** Room for the words at the foot, px. */
const FOOT = 28;
const FACES = "Inter, system-ui, 'Helvetica Neue', Arial, sans-serif";

export interface Standalone {
  readonly text: string;
  /** px. */
  readonly width: number;
  readonly height: number;
}

/**
 * @param foot what is said under the drawing
 * @param without selector of what only a page needs
 */
export function standalone(drawing: SVGSVGElement, title: string, foot: string, without: string): Standalone {
  const copy = drawing.cloneNode(true) as SVGSVGElement;
  const copies = [...copy.querySelectorAll('*')];
  [...drawing.querySelectorAll('*')].forEach((from, index) => {
    const to = copies[index] as Element;
    const style = getComputedStyle(from);
    for (const name of GIVEN) if (name.startsWith('font') ? from.tagName === 'text' : !['pattern', 'defs', 'g'].includes(from.tagName)) to.setAttribute(name, style.getPropertyValue(name).replace(/url\("?(#[^")]+)"?\)/, 'url($1)'));
  });
  for (const one of copy.querySelectorAll(without)) one.remove();
  for (const one of copy.querySelectorAll('[class]')) one.removeAttribute('class');
  const { width: w, height: h } = drawing.viewBox.baseVal;
  const [width, height] = [w + 2 * MARGIN, h + 2 * MARGIN + FOOT];
  for (const name of ['class', 'role', 'aria-label', 'preserveAspectRatio']) copy.removeAttribute(name);
  copy.setAttribute('viewBox', `${-MARGIN} ${-MARGIN} ${width} ${height}`);
  copy.setAttribute('width', String(width));
  copy.setAttribute('height', String(height));
  copy.setAttribute('font-family', FACES);
  const page = getComputedStyle(document.documentElement);
  const name = element('title', {}, title);
  const ground = element('rect', { x: -MARGIN, y: -MARGIN, width, height, fill: page.backgroundColor });
  copy.prepend(name, ground);
  copy.append(element('text', { x: 0, y: h + FOOT, 'font-size': 12, fill: page.color }, foot));
  return { text: `<?xml version="1.0" encoding="UTF-8"?>\n${new XMLSerializer().serializeToString(copy)}\n`, width, height };
}

function element(name: string, attributes: Readonly<Record<string, string | number>>, text = ''): SVGElement {
  const made = document.createElementNS(SVG, name);
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, String(value));
  made.textContent = text;
  return made;
}

/** The page's own typeface as a rule that a drawing carries with it: an image fetches nothing. Empty where it is not at hand. */
async function ownFace(): Promise<string> {
  const rules = [...document.styleSheets].flatMap((sheet) => [...sheet.cssRules]);
  const face = rules.find((rule): rule is CSSFontFaceRule => rule instanceof CSSFontFaceRule && /^"?Inter"?$/.test(rule.style.getPropertyValue('font-family')));
  const found = face === undefined ? null : /url\("?([^")]+)"?\)/.exec(face.style.getPropertyValue('src'));
  if (!face || !found?.[1]) return '';
  try {
    const bytes = new Uint8Array(await (await fetch(new URL(found[1], face.parentStyleSheet?.href ?? document.baseURI))).arrayBuffer());
    let binary = '';
    for (const byte of bytes) binary += String.fromCharCode(byte);
    return `<style>@font-face{font-family:Inter;font-weight:100 900;src:url(data:font/woff2;base64,${btoa(binary)})}text{font-variant-numeric:tabular-nums}</style>`;
  } catch {
    return '';
  }
}

/** The same as pixels, in the page's own typeface. @param scale pixels a px @throws where the browser does not draw it */
export async function pixelsOf({ text, width, height }: Standalone, scale: number): Promise<Blob> {
  const face = await ownFace();
  const address = URL.createObjectURL(new Blob([text.replace('</title>', () => `</title>${face}`)], { type: 'image/svg+xml' }));
  try {
    const image = new Image();
    image.src = address;
    await image.decode();
    const canvas = document.createElement('canvas');
    canvas.width = Math.round(width * scale);
    canvas.height = Math.round(height * scale);
    canvas.getContext('2d')?.drawImage(image, 0, 0, canvas.width, canvas.height);
    return await new Promise((done, fail) => { canvas.toBlob((blob) => (blob === null ? fail(new Error('no picture was made')) : done(blob)), 'image/png'); });
  } finally {
    URL.revokeObjectURL(address);
  }
}
