import { backend } from '../backend';
import type { Language } from '../words';

/** The longest name of an inspector, in letters. */
export const LONGEST_NAME = 80;
/** How the screens look. */
export const THEMES = ['system', 'light', 'dark', 'contrast'] as const;
export type Theme = (typeof THEMES)[number];

interface Kept {
  preset: string | null;
  theme: Theme;
  author: string;
  language: Language;
  welcomed: boolean;
}

const KEY = 'settings';
const USUAL: Kept = {
  preset: null,
  theme: 'system',
  author: '',
  language: 'en',
  welcomed: false,
};

function read(): Kept {
  try {
    return { ...USUAL, ...(JSON.parse(localStorage.getItem(KEY) ?? '{}') as Partial<Kept>) };
  } catch {
    return USUAL;
  }
}

/** What the inspector set, kept on this device. */
class Settings {
  #kept = $state(read());

  get preset(): string | null {
    return this.#kept.preset;
  }
  get theme(): Theme {
    return this.#kept.theme;
  }
  get author(): string {
    return this.#kept.author;
  }
  get language(): Language {
    return this.#kept.language;
  }
  get welcomed(): boolean {
    return this.#kept.welcomed;
  }

  set(change: Partial<Kept>): void {
    this.#kept = { ...this.#kept, ...change };
    localStorage.setItem(KEY, JSON.stringify(this.#kept));
    this.showTheme();
    if (change.author !== undefined || change.language !== undefined) this.tellInspector();
  }

  /** Tells the core whose findings these are. It keeps the name with each finding, not by itself. */
  tellInspector(): void {
    // What is refused here, such as a name too long, is refused where it is written.
    backend.setInspector(this.author.slice(0, LONGEST_NAME), this.language).catch(() => undefined);
  }

  /** Puts the theme on the document: the styles know only light, dark and contrast. */
  showTheme(): void {
    document.documentElement.dataset['theme'] =
      this.theme === 'system' ? systemTheme() : this.theme;
  }

  /** Shows the theme, now and whenever the system changes its own. */
  followSystem(): void {
    this.showTheme();
    for (const query of [DARK, CONTRAST]) {
      query.addEventListener('change', () => this.showTheme());
    }
  }
}

const DARK = matchMedia('(prefers-color-scheme: dark)');
const CONTRAST = matchMedia('(prefers-contrast: more)');

function systemTheme(): Theme {
  if (CONTRAST.matches) return 'contrast';
  return DARK.matches ? 'dark' : 'light';
}

export const settings = new Settings();
