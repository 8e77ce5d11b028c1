/** Why a question is open: in its turn, as a caution to look at, as a hint, or to change an answer. */
export type Turn = 'q' | 'also' | 'hint' | 'change';

/** A screen, with what it is about. */
export type Route =
  | { screen: 'list' | 'new' | 'settings' | 'shocked' | 'heaters' | 'charge' }
  | { screen: 'first'; step: number }
  | { screen: 'inspection' | Place; inspection: string }
  | { screen: 'question'; inspection: string; turn: Turn; question: string }
  | { screen: 'photo'; inspection: string; photo: string }
  | { screen: 'reading'; inspection: string; reading: string };

/** Screens of the introduction. */
export const FIRST_STEPS = 3;
const PLAIN = ['new', 'settings', 'shocked', 'heaters', 'charge'] as const;
const TURNS: readonly string[] = ['q', 'also', 'hint', 'change'];
const PLACES = ['found', 'verdict', 'readings', 'heaters', 'charge', 'insulation', 'touch'] as const;
/** A screen of an inspection that needs nothing more. */
type Place = (typeof PLACES)[number];

/** The screens of one inspection. */
export type InspectionRoute = Extract<Route, { inspection: string }>;

/** Reads a route from an address's hash; what is not known is the list. */
export function parse(hash: string): Route {
  const [head = '', second = '', third = '', fourth = ''] = hash.replace(/^#?\/?/, '').split('/');
  const plain = PLAIN.find((screen) => screen === head);
  if (plain) return { screen: plain };
  if (head === 'first') {
    return { screen: 'first', step: Math.min(Math.max(Math.trunc(Number(second)) || 1, 1), FIRST_STEPS) };
  }
  if (head !== 'i' || second === '') return { screen: 'list' };
  if (TURNS.includes(third) && fourth !== '') {
    return { screen: 'question', inspection: second, turn: third as Turn, question: fourth };
  }
  if (third === 'photo' && fourth !== '') {
    return { screen: 'photo', inspection: second, photo: fourth };
  }
  if (third === 'readings' && fourth !== '') {
    return { screen: 'reading', inspection: second, reading: fourth };
  }
  const place = PLACES.find((screen) => screen === third);
  return { screen: place ?? 'inspection', inspection: second };
}

/** The hash of a route. */
export function format(route: Route): string {
  switch (route.screen) {
    case 'list':
      return '#/';
    case 'first':
      return `#/first/${route.step}`;
    case 'question':
      return `#/i/${route.inspection}/${route.turn}/${route.question}`;
    case 'inspection':
      return `#/i/${route.inspection}`;
    case 'photo':
      return `#/i/${route.inspection}/photo/${route.photo}`;
    case 'reading':
      return `#/i/${route.inspection}/readings/${route.reading}`;
    default:
      return 'inspection' in route ? `#/i/${route.inspection}/${route.screen}` : `#/${route.screen}`;
  }
}

/** Where back goes when there is no screen before this one. */
export function parent(route: Route): Route {
  if (route.screen === 'question' && route.turn === 'change') {
    return { screen: 'found', inspection: route.inspection };
  }
  const isBesideReadings = ['reading', 'charge', 'insulation', 'touch'].includes(route.screen);
  if ('inspection' in route && isBesideReadings) {
    return { screen: 'readings', inspection: route.inspection };
  }
  const isBesideVerdict = ['found', 'readings', 'photo', 'heaters'].includes(route.screen);
  if ('inspection' in route && isBesideVerdict) {
    return { screen: 'verdict', inspection: route.inspection };
  }
  return { screen: 'list' };
}
