import { writeFigure } from './figure';
import type { FindingView } from './types/FindingView';
import { say } from './words';

/** What was found, with figures written as on a part: the view brings values and readings as data. */
export function writeFound({ path, found }: FindingView): string {
  const value = path.startsWith('values.') || path.startsWith('readings.') ? read(found) : null;
  if (typeof value === 'number' && path.startsWith('readings.ohms')) {
    return writeFigure(value, 'ohms');
  }
  if (value === 'OL') return say('readings-ol');
  if (typeof value !== 'object' || value === null) return found;
  const { farads, ohms, measured } = value as Record<string, unknown>;
  const how = say(measured === true ? 'question-read-measured' : 'question-read-marked');
  if (typeof farads === 'number') return say('found-value', { value: writeFigure(farads, 'farads'), how });
  if (typeof ohms === 'number') return say('found-value', { value: writeFigure(ohms, 'ohms'), how });
  return found;
}

function read(text: string): unknown {
  try {
    return JSON.parse(text) as unknown;
  } catch {
    return null;
  }
}
