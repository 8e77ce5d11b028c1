/** Keeps a person's text from turning round the words beside it; the core does the same in its sentences. */

/** Begins a stretch whose direction is that of its own first letter, and ends it. */
const BEGIN = '\u2068';
const END = '\u2069';

/** Marks that steer the direction, and the blocks of letters that run from right to left. */
const TURNS =
  /[\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufefe\u{10800}-\u{10fff}\u{1e800}-\u{1efff}]/u;

/** The text as it may stand in a sentence. */
export function isolated(text: string): string {
  if (!TURNS.test(text)) return text;
  let apart = BEGIN;
  let open = 0;
  for (const letter of text) {
    // An end of nothing would end what was begun here.
    if (letter === END && open === 0) continue;
    if (letter === END) open -= 1;
    else if (letter >= '\u2066' && letter <= BEGIN) open += 1;
    apart += letter;
  }
  return apart + END.repeat(open + 1);
}
