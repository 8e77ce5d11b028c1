import { decimalMark } from './decimal';

/** What a written figure is a figure of. */
export type Unit = 'farads' | 'ohms';

/** A figure as written: its value in the base unit, or why it is not understood. */
export type Figure = { value: number } | { wrong: 'empty' | 'unreadable' | 'ambiguous' | 'prefix_missing' };

const PREFIXES: Record<Unit, Record<string, number>> = {
  // "mF" and "mmF" on old parts mean µF and pF: too easy to misread, so m is not taken.
  farads: { p: 1e-12, P: 1e-12, n: 1e-9, N: 1e-9, u: 1e-6, U: 1e-6, µ: 1e-6, μ: 1e-6 },
  // A small m is a thousandth, and on a meter that is common: only M is a million.
  ohms: { '': 1, R: 1, r: 1, k: 1e3, K: 1e3, M: 1e6 },
};
const UNIT_SIGNS = /(farads?|f|ohms?|ω|Ω)$/iu;
/** As printed on old parts: MFD for µF, MMFD for pF (common practice, from memory). */
const OLD_MARKS: [RegExp, string][] = [
  [/(mmfd?|uufd?|µµfd?|μμfd?)$/iu, 'p'],
  [/mfd$/iu, 'u'],
];

/** A written figure without spaces and with a point for its decimal mark; null where the mark may part thousands.
    Point and comma are both decimal marks, but where the one that is not the language's own has three figures behind
    it, as in 1,000, nobody knows: to one reader that is one thousand, to another it is one. */
export function withPoint(text: string): string | null {
  const plain = text.replace(/\s+/g, '');
  const mayBeThousands = decimalMark() === ',' ? /^[1-9]\d{0,2}\.\d{3}(?!\d)/ : /^[1-9]\d{0,2},\d{3}(?!\d)/;
  return mayBeThousands.test(plain) ? null : plain.replace(',', '.');
}

/** A number as a person reads it. */
export function writeNumber(value: number): string {
  return String(value).replace('.', decimalMark());
}

/** Reads a figure such as `0.047u`, `47n`, `47 nF`, `.05 MFD`, `220k` or `4k7`. */
export function readFigure(text: string, unit: Unit): Figure {
  const plain = withPoint(text);
  if (plain === null) return { wrong: 'ambiguous' };
  const old = unit === 'farads' ? OLD_MARKS.find(([mark]) => mark.test(plain)) : undefined;
  const written = old ? plain.replace(...old) : plain.replace(UNIT_SIGNS, '');
  if (written === '') return { wrong: 'empty' };
  const between = /^(\d+)([a-zµμ])(\d+)$/iu.exec(written);
  const after = /^(\d*\.?\d+|\d+\.)([a-zµμ]?)$/iu.exec(written);
  const number = between ? Number(`${between[1]}.${between[3]}`) : Number(after?.[1]);
  const prefix = between?.[2] ?? after?.[2] ?? '';
  const factor = PREFIXES[unit][prefix];
  if (!Number.isFinite(number) || number <= 0) return { wrong: 'unreadable' };
  if (factor === undefined) return { wrong: prefix === '' ? 'prefix_missing' : 'unreadable' };
  // Keeps 0.047u from becoming 4.6999999e-8.
  return { value: Number((number * factor).toPrecision(12)) };
}

/** Reads a plain number from 0 to `most`, with a point or a comma; null for anything else. */
export function readNumber(text: string, most: number): number | null {
  const plain = /\S\s+\S/.test(text) ? null : withPoint(text);
  if (plain === null) return null;
  const value = Number(plain);
  return /^\d*\.?\d+$|^\d+\.$/.test(plain) && value <= most ? value : null;
}

const STEPS: Record<Unit, [number, string][]> = {
  farads: [
    [1e-6, 'µF'],
    [1e-9, 'nF'],
    [1e-12, 'pF'],
  ],
  ohms: [
    [1e6, 'MΩ'],
    [1e3, 'kΩ'],
    [1, 'Ω'],
  ],
};

/** A value with the unit that keeps its figure short; the space never breaks. */
export function writeFigure(value: number, unit: Unit): string {
  const steps = STEPS[unit];
  const [size, sign] = steps.find(([size]) => value >= size) ?? steps.at(-1) ?? [1, ''];
  return `${writeNumber(Number((value / size).toPrecision(4)))}\u00a0${sign}`;
}
