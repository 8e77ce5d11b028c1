/** Where each thing of the circuit picture is as the browser has drawn it, and what stands on what. */

import type { Page } from '@playwright/test';

import type { CircuitView } from '../../ui/src/lib/types/CircuitView';
import { say } from './words';

/** Has the screen show pictures that it is handed, in place of the core's. */
export async function handPictures(page: Page): Promise<void> {
  await page.evaluate(() => {
    const asked = window.fetch;
    window.fetch = (address, request) => {
      const { picture } = window as unknown as { picture?: unknown };
      const isCircuit = picture !== undefined && String(address).endsWith('/api/circuit');
      return isCircuit ? Promise.resolve(new Response(JSON.stringify({ ok: picture }))) : asked(address, request);
    };
  });
}

/** Shows a picture and tells what stands on something else in it, or outside. */
export function crowded(page: Page, view: CircuitView): Promise<string[]> {
  return page.evaluate(lookAt, { view, again: say('circuit-quoted'), loads: say('circuit-other-loads') });
}

async function lookAt({ view, again, loads }: { view: CircuitView; again: string; loads: string }): Promise<string[]> {
  interface Rect {
    left: number;
    top: number;
    right: number;
    bottom: number;
  }
  interface Thing extends Rect {
    what: string;
    node: SVGGraphicsElement;
  }

  await shown();
  const svg = document.querySelector('.picture svg') as SVGSVGElement;
  const all = <T extends SVGGraphicsElement>(selector: string): T[] => [...svg.querySelectorAll<T>(selector)];
  const halfLine = (node: Element): number => {
    const { stroke, strokeWidth } = getComputedStyle(node);
    return stroke === 'none' ? 0 : parseFloat(strokeWidth) / 2;
  };
  const texts = all<SVGTextElement>('text').map((node) => ofText(node));
  const things = [...all<SVGGElement>('.symbol'), ...all<SVGGElement>('.turn, .hand, .person circle')].map((node) => ofSymbol(node));
  const lines = all<SVGGeometryElement>('path, circle').filter((node) => !node.matches('.pulse, .casing, .paper'));
  const found: string[] = [];
  for (const alike of [texts, things]) everyPair(alike, (one, other) => {
    if (!one.node.contains(other.node) && overlaps(one, other)) found.push(`${one.what} on ${other.what}`);
  });
  for (const thing of [...texts, ...things]) if (isOutside(thing)) found.push(`${thing.what} is outside`);
  for (const line of lines) {
    const box = ofLine(line);
    for (const text of texts) {
      if (isCovered(line, text) || !overlaps(box, text)) continue;
      if (runsOver(line, text)) found.push(`${text.what} on a line (${line.getAttribute('class')})`);
    }
  }
  return found;

  /** Whether what is written stands on something that is laid over the line: a tape, or the paper of a symbol. */
  function isCovered(line: Element, text: Thing): boolean {
    if (line.matches('.tape')) return text.node.matches('.taped');
    if (line.matches('.loads *')) return text.node.textContent === loads;
    return things.some(({ node, ...rect }) => {
      const isLater = line.compareDocumentPosition(node) & Node.DOCUMENT_POSITION_FOLLOWING;
      return isLater && text.left > rect.left && text.right < rect.right && text.top > rect.top && text.bottom < rect.bottom;
    });
  }

  async function shown(): Promise<void> {
    const number = Math.random().toString();
    Object.assign(window, { picture: { ...view, described: number } });
    const buttons = [...document.querySelectorAll('button')].filter(({ textContent }) => textContent === again);
    buttons[0]?.dispatchEvent(new MouseEvent('click', { bubbles: true }));
    const isThere = () => document.querySelector('.picture svg')?.getAttribute('aria-label') === number;
    for (let turn = 0; turn < 1_000 && !isThere(); turn += 1) await new Promise((done) => setTimeout(done, 1));
    if (!isThere()) throw new Error('the picture is not shown');
  }

  /** A box, from a node's own units to those of the picture. */
  function placed(node: SVGGraphicsElement, { x, y, width, height }: DOMRect, more: number): Rect {
    const to = svg.getScreenCTM()?.inverse().multiply(node.getScreenCTM() ?? new DOMMatrix());
    const corners = [[x - more, y - more], [x + width + more, y - more], [x - more, y + height + more], [x + width + more, y + height + more]]
      .map(([a, b]) => new DOMPoint(a, b).matrixTransform(to));
    const [xs, ys] = [corners.map((point) => point.x), corners.map((point) => point.y)];
    return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
  }

  /** The letters alone: a line's height has air above capitals and below descenders. */
  function ofText(node: SVGTextElement): Thing {
    const box = node.getBBox();
    const air = box.height * 0.16;
    const letters = new DOMRect(box.x, box.y + air, box.width, box.height - 2 * air);
    return { ...placed(node, letters, 0), what: `“${node.textContent}”`, node };
  }

  /** All that a symbol is drawn with; not the paper that keeps the lines behind it off. */
  function ofSymbol(node: SVGGraphicsElement): Thing {
    const drawn = [...node.querySelectorAll<SVGGraphicsElement>('path, circle, text')];
    const parts = drawn.length === 0 ? [node] : drawn.filter((part) => !part.matches('.paper'));
    const boxes = parts.map((part) => placed(part, part.getBBox(), halfLine(part)));
    const what = node.getAttribute('class')?.replace(/symbol|lit|svelte-\w+/g, '').trim() ?? '';
    return {
      left: Math.min(...boxes.map(({ left }) => left)),
      top: Math.min(...boxes.map(({ top }) => top)),
      right: Math.max(...boxes.map(({ right }) => right)),
      bottom: Math.max(...boxes.map(({ bottom }) => bottom)),
      what,
      node,
    };
  }

  function ofLine(node: SVGGeometryElement): Rect {
    return placed(node, node.getBBox(), halfLine(node));
  }

  function overlaps(one: Rect, other: Rect): boolean {
    return one.left < other.right && other.left < one.right && one.top < other.bottom && other.top < one.bottom;
  }

  function isOutside({ left, top, right, bottom }: Rect): boolean {
    const { width, height } = svg.viewBox.baseVal;
    return left < 0 || top < 0 || right > width || bottom > height;
  }

  /** Whether a line, as thick as it is, comes upon the letters. */
  function runsOver(line: SVGGeometryElement, { left, top, right, bottom }: Rect): boolean {
    const half = halfLine(line);
    const to = svg.getScreenCTM()?.inverse().multiply(line.getScreenCTM() ?? new DOMMatrix());
    const length = line.getTotalLength();
    for (let at = 0; at <= length; at += 1.5) {
      const { x, y } = line.getPointAtLength(at).matrixTransform(to);
      if (x > left - half && x < right + half && y > top - half && y < bottom + half) return true;
    }
    return false;
  }

  function everyPair(list: readonly Thing[], look: (one: Thing, other: Thing) => void): void {
    list.forEach((one, place) => list.slice(place + 1).forEach((other) => look(one, other)));
  }
}
