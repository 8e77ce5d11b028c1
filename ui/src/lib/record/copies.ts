import { moment } from '../moment';
import type { SnapshotView } from '../types/SnapshotView';
import { locale, say } from '../words';

/** When a copy was made, for a person. */
export function when({ at }: SnapshotView): string {
  return moment(at);
}

/** A length in MB; never none at all. */
export function megabytes(bytes: number): string {
  return Math.max(bytes / 1e6, 0.1).toLocaleString(locale(), { maximumFractionDigits: 1 });
}

/** What is in a copy. */
export function about({ before_update, bytes, inspections }: SnapshotView): string {
  return say(before_update ? 'record-copy-before-update' : 'record-copy', {
    inspections: say('record-choose-inspections', { count: inspections }),
    megabytes: megabytes(bytes),
  });
}

/** The last part of a path, on any system. */
export function fileName(path: string): string {
  return path.split(/[\\/]/).at(-1) ?? path;
}

/** What a bundle is to be called: by the day, so that a later one lies beside it. */
export function bundleName(now = new Date()): string {
  const two = (part: number): string => String(part).padStart(2, '0');
  return `coldchassis_${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}.coldbundle`;
}
