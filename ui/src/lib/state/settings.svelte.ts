import { backend, holdUntil } from '../backend';
import type { Paper } from '../types/Paper';
import type { TagPaper } from '../types/TagPaper';
import type { RegionView } from '../types/RegionView';
import { type Guard, type Language, speak, systemLanguage } from '../words';

/** The longest name of an inspector, in letters. */
export const LONGEST_NAME = 80;
/** How many places are kept to be tapped instead of typed. */
const PLACES = 3;
/** How the screens look. */
export const THEMES = ['system', 'light', 'dark', 'contrast'] as const;
export type Theme = (typeof THEMES)[number];

interface Kept {
  preset: string | null;
  theme: Theme;
  author: string;
  /** Whether a name was asked for where it is missing. */
  askedName: boolean;
  /** None: as the system. */
  language: Language | null;
  /** The part of the world, with the country that tells the core which one it is. */
  region: Pick<RegionView, 'id' | 'country'> | null;
  welcomed: boolean;
  paper: Paper;
  tagPaper: TagPaper;
  /** Where units stood that were written down last, the newest first. */
  places: readonly string[];
}

const KEY = 'settings';
const USUAL: Kept = {
  preset: null,
  theme: 'system',
  author: '',
  askedName: false,
  language: null,
  region: null,
  welcomed: false,
  paper: 'a4',
  tagPaper: 'label62',
  places: [],
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
  get askedName(): boolean {
    return this.#kept.askedName;
  }
  get language(): Language {
    return this.#kept.language ?? systemLanguage();
  }
  get region(): Kept['region'] {
    return this.#kept.region;
  }
  get paper(): Paper {
    return this.#kept.paper;
  }
  get tagPaper(): TagPaper {
    return this.#kept.tagPaper;
  }
  get places(): readonly string[] {
    return this.#kept.places;
  }
  get welcomed(): boolean {
    return this.#kept.welcomed;
  }

  set(change: Partial<Kept>): void {
    this.#kept = { ...this.#kept, ...change };
    localStorage.setItem(KEY, JSON.stringify(this.#kept));
    this.showTheme();
    // What is on the screen, and what was asked of the core for it, is in the language before: all of it starts anew.
    if (change.language !== undefined || change.region !== undefined) location.reload();
    else if (change.author !== undefined) void this.tellInspector();
  }

  /** Keeps a place for the next unit, which often stands there too. */
  rememberPlace(place: string): void {
    const written = place.trim();
    const others = this.places.filter((one) => one !== written);
    if (written !== '') this.set({ places: [written, ...others].slice(0, PLACES) });
  }

  /** Sets up what a new unit starts with: the supply, where the region has only one. Units that are there keep theirs. */
  setRegion({ id, country, presets }: RegionView): void {
    const [only, ...others] = presets;
    const stays = presets.includes(this.preset ?? '');
    const preset = stays ? this.preset : others.length > 0 ? null : (only ?? null);
    const paper = id === 'north_america' ? 'letter' : 'a4';
    this.set({ region: { id, country }, preset, paper });
  }

  /** Tells the core whose findings these are, and how to say things. It keeps the name with each finding, not by itself. */
  tellInspector(): Promise<unknown> {
    const locale = this.region === null ? this.language : `${this.language}-${this.region.country}`;
    // What is refused here, such as a name too long, is refused where it is written.
    return backend.setInspector(this.author.slice(0, LONGEST_NAME), locale).catch(() => undefined);
  }

  /** Has the screens speak the language that is set; what is asked of the core waits until it does too. */
  async speak(): Promise<void> {
    holdUntil(this.tellInspector());
    await speak(this.language, guardOf(this.region?.id ?? null));
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

/** What the core calls it in the region. */
function guardOf(region: RegionView['id'] | null): Guard {
  if (region === null) return null;
  return region === 'north_america' ? 'gfci' : 'rcd';
}

const DARK = matchMedia('(prefers-color-scheme: dark)');
const CONTRAST = matchMedia('(prefers-contrast: more)');

function systemTheme(): Theme {
  if (CONTRAST.matches) return 'contrast';
  return DARK.matches ? 'dark' : 'light';
}

export const settings = new Settings();
