import { readFigure } from '../figure';

/** Reads what a person copies off a meter: ohms as `0.4`, `270k`, `2M2`, or `OL`; null for anything else. */
export function readWritten(written: string): number | 'OL' | null {
  if (/^\s*[o0]\.?l\.?\s*$/i.test(written)) return 'OL';
  if (/^\s*0+([.,]0*)?\s*(Ω|ohms?)?\s*$/i.test(written)) return 0;
  const figure = readFigure(written, 'ohms');
  return 'value' in figure ? figure.value : null;
}
