import { blues, greys, greysInSun, letters, type PenStyle, pens } from './pens.ts';

const PX_PER_MM = 96 / 25.4;

const px = (mm: number): string => `${(mm * PX_PER_MM).toFixed(2)}px`;

function penRule([name, { widthMm, dashMm, tone }]: [string, PenStyle]): string {
  const dash = dashMm === null ? '' : `stroke-dasharray:${dashMm.map(px).join(' ')};`;
  return `.drawing .pen-${name}{stroke:var(--${tone});stroke-width:calc(var(--weight,1)*${px(widthMm)});${dash}}`;
}

const greyVars = (list: readonly string[]): string => list.map((colour, i) => `--grey-${i}:${colour};`).join('');

/** Colours of a sheet: ink on warm white, and for bright sun pure black on white with heavier lines. */
export const sheetColours = `--ink:#1d1c1a;--soft:#55524c;--faint:#8b8881;--paper:#fffdf8;--sheet:#fffefb;--water:#1f5f96;--stop:#b3261e;--weight:1;${greyVars(greys)}`;
export const sunColours = `--ink:#000;--soft:#000;--faint:#444;--paper:#fff;--sheet:#fff;--water:#003e7a;--stop:#a00000;--weight:1.7;${greyVars(greysInSun)}`;

/** Style of every drawing. Line weights stay as they are at any size; letters grow with the sheet. */
export function drawingCss(): string {
  return [
    `.drawing{${sheetColours}display:block;width:100%;height:auto;font-family:inherit;font-variant-numeric:tabular-nums lining-nums}`,
    '.drawing path{fill:none;stroke:none;stroke-linejoin:round;vector-effect:non-scaling-stroke}',
    '.drawing text{fill:var(--ink);text-anchor:middle;dominant-baseline:central;paint-order:stroke;stroke:var(--sheet);stroke-width:.22em;stroke-linejoin:round}',
    '.drawing .start{text-anchor:start}.drawing .end{text-anchor:end}.drawing .bold{font-weight:700}.drawing .rimless{stroke:none}',
    '.drawing .soft{fill:var(--soft)}.drawing .faint{fill:var(--faint)}.drawing .water{fill:var(--water)}.drawing .stop{fill:var(--stop)}',
    ...Object.entries(letters).map(([name, size]) => (size === 1 ? '' : `.drawing .${name}{font-size:${size}em}`)),
    ...Object.entries(pens).map(penRule),
    '.drawing .fill-sheet{fill:var(--sheet)}.drawing .fill-curb{fill:var(--grey-1)}.drawing .fill-body{fill:var(--grey-2)}',
    '.drawing .fill-ink{fill:var(--ink)}.drawing .fill-stop{fill:var(--stop)}',
    ...greys.map((_, i) => `.drawing .fill-grey-${i}{fill:var(--grey-${i})}`),
    ...blues.map((colour, i) => `.drawing .fill-water-${i}{fill:${colour}}`),
  ].join('\n');
}

/** The sun setting, switched by a box on the page that needs no script. */
export const sunCss = `:root:has(#sun:checked),:root:has(#sun:checked) .drawing{${sunColours}}`;
