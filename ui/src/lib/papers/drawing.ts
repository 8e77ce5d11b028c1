/** A drawing on the screen as an SVG that stands by itself. */

/** What a drawing's looks depend on; a document knows nothing of the screens' styles. */
const LOOKS = [
  'fill',
  'fill-opacity',
  'stroke',
  'stroke-width',
  'stroke-opacity',
  'stroke-dasharray',
  'stroke-linecap',
  'stroke-linejoin',
  'opacity',
  'paint-order',
  'font-size',
  'font-weight',
  'text-anchor',
  'dominant-baseline',
  'display',
  'visibility',
] as const;

/** The SVG with its looks written into it, as they are where it stands. */
export function standalone(drawing: SVGSVGElement): string {
  const copy = drawing.cloneNode(true) as SVGSVGElement;
  const shown = [drawing, ...drawing.querySelectorAll('*')];
  const copied = [copy, ...copy.querySelectorAll('*')];
  for (const [place, element] of shown.entries()) {
    const looks = getComputedStyle(element);
    for (const look of LOOKS) {
      const value = looks.getPropertyValue(look);
      if (value !== '') copied[place]?.setAttribute(look, value.replace(/px/g, ''));
    }
    copied[place]?.removeAttribute('class');
  }
  const { width, height } = drawing.viewBox.baseVal;
  copy.setAttribute('width', String(width));
  copy.setAttribute('height', String(height));
  return new XMLSerializer().serializeToString(copy);
}
