/** The words that a person reads, out of the Fluent files: better wording breaks no check. */

import { readdirSync, readFileSync } from 'node:fs';

import { FluentBundle, FluentResource, type FluentVariable } from '@fluent/bundle';

import { ROOT } from './places';

const CORE = `${ROOT}/src-tauri/core/words`;
const LABELS = `${ROOT}/ui/src/lib/words`;

function bundleOf(language: 'en' | 'de'): FluentBundle {
  const core = readdirSync(`${CORE}/${language}`).map((name) => `${CORE}/${language}/${name}`);
  const own = readdirSync(LABELS).filter((name) => name.startsWith(`${language}.`)).map((name) => `${LABELS}/${name}`);
  const made = new FluentBundle(language, { useIsolating: false });
  for (const file of [...core, ...own].filter((name) => name.endsWith('.ftl'))) {
    made.addResource(new FluentResource(readFileSync(file, 'utf8')));
  }
  return made;
}

let bundle = bundleOf('en');

/** Looks for the words of a language from now on. */
export function expectWords(language: 'en' | 'de'): void {
  bundle = bundleOf(language);
}

/** A message, such as `list-new`. One that is not there is a mistake of the check. */
export function say(id: string, args: Record<string, FluentVariable> = {}): string {
  const value = bundle.getMessage(id)?.value;
  if (!value) throw new Error(`no message ${id}`);
  return bundle.formatPattern(value, args);
}

/** An answer to a question. */
export function sayAnswer(question: string, answer: string): string {
  return say(answer === 'cant_tell' ? 'answer-cant_tell' : `answer-${question}-${answer}`);
}

/** A class in a word or two. */
export function sayClass(id: string): string {
  return say(`class-${id}-short`);
}
