/** The sheet that a drawing of heaters is on. */
export interface Sheet {
  /** Width, px. */
  width: number;
  /** Size of the text that the person reads in, px: everything else is measured by it. */
  em: number;
  /** Width of a text, px, at so many px of the body's type. */
  measure: (text: string, size: number, bold?: boolean) => number;
}

/** A text set on a line of a drawing. */
export interface Label {
  text: string;
  x: number;
  y: number;
}

/** Sizes of type in a drawing, in em. */
export const TYPE = { name: 0.94, volts: 0.9, small: 0.8, sum: 1.3 } as const;

/** Measures with the fonts of the page. */
export function measurer(): Sheet['measure'] {
  const pen = document.createElement('canvas').getContext('2d');
  const family = getComputedStyle(document.body).fontFamily;
  return (text, size, bold = false) => {
    if (!pen) return text.length * size * 0.6;
    pen.font = `${bold ? 700 : 400} ${size}px ${family}`;
    return pen.measureText(text).width;
  };
}

/** A text in lines that are no wider than that, where its words allow it. */
export function wrap(text: string, width: number, size: number, measure: Sheet['measure']): string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const longer = lines.length > 0 ? `${lines.at(-1)} ${word}` : word;
    if (lines.length > 0 && measure(longer, size) <= width) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}

/** Places labels of this height near where they would be, each below the one before, between two bounds. */
export function apart(wanted: readonly number[], height: number, from: number, to: number): number[] {
  const placed = [...wanted];
  for (let at = 0; at < placed.length; at += 1) {
    placed[at] = Math.max(placed[at] ?? 0, at === 0 ? from : (placed[at - 1] ?? 0) + height);
  }
  let limit = to;
  for (let at = placed.length - 1; at >= 0; at -= 1) {
    placed[at] = Math.min(placed[at] ?? 0, limit);
    limit = (placed[at] ?? 0) - height;
  }
  return placed;
}
