import type { Modification } from '../types/Modification';

/** A stack of repairs that is being put together and not chosen yet: a look elsewhere must not lose it. */
export interface StackDraft {
  steps: Modification[];
  /** The limit that class Y is sized for, mA; null is the one that is usual. */
  limit: number | null;
  /** The stacks before this one, for undoing. */
  past: Modification[][];
}

const KEY = 'stacks';
/** Stacks of so many inspections are kept, the latest: more is no work under way. */
const MOST = 20;
/** So many steps back; a stack of five is a long one. */
const STEPS_BACK = 30;

type Kept = [inspection: string, draft: StackDraft];

/** The stacks under way, one for each inspection. */
export const stackDraft = {
  keep(inspection: string, { steps, limit, past }: StackDraft): void {
    const others = read().filter(([one]) => one !== inspection);
    const draft = { steps, limit, past: past.slice(-STEPS_BACK) };
    localStorage.setItem(KEY, JSON.stringify([...others, [inspection, draft]].slice(-MOST)));
  },
  of(inspection: string): StackDraft | null {
    return read().find(([one]) => one === inspection)?.[1] ?? null;
  },
};

function read(): Kept[] {
  try {
    const kept = JSON.parse(localStorage.getItem(KEY) ?? '[]') as unknown;
    return Array.isArray(kept) ? kept.filter(isKept) : [];
  } catch {
    return [];
  }
}

function isKept(one: unknown): one is Kept {
  if (!Array.isArray(one) || typeof one[0] !== 'string') return false;
  const draft = one[1] as Partial<StackDraft> | null;
  return Array.isArray(draft?.steps) && Array.isArray(draft.past) && (draft.limit === null || typeof draft.limit === 'number');
}
