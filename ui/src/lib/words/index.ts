import { FluentBundle, FluentResource, type FluentVariable } from '@fluent/bundle';

// Class words and standing cautions are the core's: the same files, so that there is one wording.
import answers from '../../../../src-tauri/core/words/en/answers.ftl?raw';
import cautions from '../../../../src-tauri/core/words/en/cautions.ftl?raw';
import classes from '../../../../src-tauri/core/words/en/classes.ftl?raw';
import questions from '../../../../src-tauri/core/words/en/questions.ftl?raw';
import bench from './en.bench.ftl?raw';
import circuit from './en.circuit.ftl?raw';
import labels from './en.ftl?raw';
import measure from './en.measure.ftl?raw';
import photo from './en.photo.ftl?raw';

/** The languages that there are words in. */
export const LANGUAGES = ['en'] as const;
export type Language = (typeof LANGUAGES)[number];

const bundle = new FluentBundle('en', { useIsolating: false });
for (const file of [answers, cautions, classes, questions, labels, bench, circuit, measure, photo]) {
  bundle.addResource(new FluentResource(file));
}

/** A message in the inspector's language; an id that is not there shows as itself, so it is noticed. */
export function say(id: string, args: Record<string, FluentVariable> = {}): string {
  const value = bundle.getMessage(id)?.value;
  return value ? bundle.formatPattern(value, args) : id;
}

/** Whether there is such a message. */
export function has(id: string): boolean {
  return bundle.hasMessage(id);
}
