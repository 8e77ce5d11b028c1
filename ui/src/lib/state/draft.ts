/** Ticks that Next has not kept yet: a look elsewhere or an empty battery must not lose them. */
export interface Draft {
  ticked: string[];
  looked: boolean[];
}

const KEY = 'draft';

/** The one draft there is: of the question that was ticked last. */
export const draft = {
  keep(place: string, ticks: Draft): void {
    localStorage.setItem(KEY, JSON.stringify({ place, ...ticks }));
  },
  of(place: string): Draft | null {
    try {
      const kept = JSON.parse(localStorage.getItem(KEY) ?? '{}') as Partial<Draft & { place: string }>;
      const { ticked, looked } = kept;
      return kept.place === place && ticked && looked ? { ticked, looked } : null;
    } catch {
      return null;
    }
  },
  drop(): void {
    localStorage.removeItem(KEY);
  },
};

const TYPED = 'tube';

/** A tube's type that is half typed, with the list that it is for. */
export const typedTube = {
  keep(place: string, text: string): void {
    if (text === '') localStorage.removeItem(TYPED);
    else localStorage.setItem(TYPED, JSON.stringify({ place, text }));
  },
  of(place: string): string {
    try {
      const kept = JSON.parse(localStorage.getItem(TYPED) ?? '{}') as { place?: unknown; text?: unknown };
      return kept.place === place && typeof kept.text === 'string' ? kept.text : '';
    } catch {
      return '';
    }
  },
};

/** A tube list that belongs to no unit, with the supply that it is read against. */
export interface HeaterDraft {
  tubes: string[];
  /** A supply's id; null where none is chosen. */
  preset: string | null;
  /** It is the example, untouched. */
  example: boolean;
}

const HEATERS = 'heaters';
const NOTHING: HeaterDraft = { tubes: [], preset: null, example: false };

/** The one tube list without a unit. */
export const heaterDraft = {
  keep(kept: HeaterDraft): void {
    localStorage.setItem(HEATERS, JSON.stringify(kept));
  },
  read(): HeaterDraft {
    try {
      const kept = JSON.parse(localStorage.getItem(HEATERS) ?? '{}') as Partial<HeaterDraft>;
      return { ...NOTHING, ...kept };
    } catch {
      return NOTHING;
    }
  },
};
