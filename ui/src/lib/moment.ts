import { locale } from './words';

/** A day and a time of day for a person, from UTC milliseconds. */
export function moment(at: number): string {
  return new Date(at).toLocaleString(locale(), { dateStyle: 'medium', timeStyle: 'short' });
}
