import { readFigure } from '../figure';

/** Reads what a person copies off a meter: ohms as `0.4`, `270k`, `2M2`, or `OL`; null for anything else. */
export function readWritten(written: string): number | 'OL' | null {
  if (/^\s*[o0]\.?l\.?\s*$/i.test(written)) return 'OL';
  if (/^\s*0+([.,]0*)?\s*(Ω|ohms?)?\s*$/i.test(written)) return 0;
  const figure = readFigure(written, 'ohms');
  return 'value' in figure ? figure.value : null;
}

/** The least that the picture shows, Ω. */
const LEAST = 0.1;

/** How far along a logarithmic axis from 0.1 Ω to the meter's end a resistance lies, 0 to 1; above it, 1. */
export function along(ohms: number | null, most: number): number {
  if (ohms === null) return 1;
  const share = Math.log10(Math.max(ohms, LEAST) / LEAST) / Math.log10(most / LEAST);
  return Math.min(Math.max(share, 0), 1);
}
