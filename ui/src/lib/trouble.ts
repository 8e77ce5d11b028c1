import type { Trouble } from './backend';
import { has, say } from './words';

/** Trouble for a person: the core names a field by its path, a screen by what stands beside it. */
export function told({ field, sentence }: Trouble): string {
  if (field === null || !sentence.startsWith(`${field}: `)) return sentence;
  const what = sentence.slice(field.length + 2);
  const name = nameOf(field);
  return name === null ? what.charAt(0).toUpperCase() + what.slice(1) : say('trouble-field', { name, what });
}

/** What a screen calls a field; null where it is plain from where the trouble is said. */
function nameOf(field: string): string | null {
  const last = field.split('.').at(-1) ?? field;
  const ids = [`field-${last}`, `finding-${last}`, `finding-value-${last}`];
  const id = ids.find((one) => has(one));
  return id === undefined ? null : say(id);
}
