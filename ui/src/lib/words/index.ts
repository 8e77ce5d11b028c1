import { FluentBundle, FluentNumber, FluentResource, type FluentVariable } from '@fluent/bundle';

import { markDecimalsBy } from '../decimal';
import { isolated } from './isolated';

/** The languages that there are words in. */
export const LANGUAGES = ['en', 'de'] as const;
export type Language = (typeof LANGUAGES)[number];

/** Fluent files by their path. Class words, states of the work and standing cautions are the core's: the same files,
    so that there is one wording. */
type Files = Record<string, string>;

const ENGLISH: Files = {
  ...import.meta.glob<string>('./en.*ftl', { query: '?raw', import: 'default', eager: true }),
  ...import.meta.glob<string>(
    '../../../../src-tauri/core/words/en/{answers,cautions,classes,questions,record,guards/gfci,guards/rcd}.ftl',
    { query: '?raw', import: 'default', eager: true },
  ),
};

const FILES: Record<Language, () => Promise<Files>> = {
  en: () => Promise.resolve(ENGLISH),
  de: async () => (await import('./german')).FILES,
};

/** What ends a shock in the outlets of a region, as the core has it; both are named where no region is set. */
export type Guard = 'gfci' | 'rcd' | null;

function bundleOf(language: Language, files: Files, guard: Guard): FluentBundle {
  const bundle = new FluentBundle(language, { useIsolating: false });
  for (const [path, text] of Object.entries(files)) {
    if (!path.includes('/guards/')) bundle.addResource(new FluentResource(text));
  }
  const named = Object.entries(files).find(([path]) => path.endsWith(`/guards/${guard}.ftl`));
  if (named) bundle.addResource(new FluentResource(named[1]), { allowOverrides: true });
  return bundle;
}

let spoken: Language = 'en';
let bundle = bundleOf(spoken, ENGLISH, null);

/** Says everything in a language from now on. What is on the screen already stays as it was said. */
export async function speak(language: Language, guard: Guard): Promise<void> {
  bundle = bundleOf(language, await FILES[language](), guard);
  spoken = language;
  markDecimalsBy(say('decimal-mark'));
  document.documentElement.lang = language;
}

/** The language that the system asks for, English where there are no words in it. */
export function systemLanguage(): Language {
  const asked = navigator.languages.map((tag) => tag.split('-')[0]);
  return LANGUAGES.find((language) => language === asked.find((one) => LANGUAGES.some((has) => has === one))) ?? 'en';
}

/** How days and times are written: as the system does where it speaks the same language. */
export function locale(): string {
  return navigator.languages.find((tag) => tag.split('-')[0] === spoken) ?? spoken;
}

/** Thousands have no mark between them, as in the core: 1,000 is one thousand to one reader and one to another. What a
    person typed must not turn round the words beside it. */
function plain(value: FluentVariable): FluentVariable {
  if (typeof value === 'string') return isolated(value);
  return typeof value === 'number' ? new FluentNumber(value, { useGrouping: false }) : value;
}

/** A message in the inspector's language; an id that is not there shows as itself, so it is noticed. */
export function say(id: string, args: Record<string, FluentVariable> = {}): string {
  const value = bundle.getMessage(id)?.value;
  if (!value) return id;
  const given = Object.entries(args).map(([name, one]) => [name, plain(one)] as const);
  return bundle.formatPattern(value, Object.fromEntries(given));
}

/** Whether there is such a message. */
export function has(id: string): boolean {
  return bundle.hasMessage(id);
}
