/** What stands between the whole and its parts in a figure: the language's own, once one is spoken. */

let mark = '.';

export function decimalMark(): string {
  return mark;
}

/** Has figures written as a language writes them, from now on. */
export function markDecimalsBy(own: string): void {
  mark = own;
}
