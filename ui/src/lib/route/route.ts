/** Why a question is open: in its turn, as a caution to look at, as a hint, or to change an answer. */
export type Turn = 'q' | 'also' | 'hint' | 'change';

/** A screen, with what it is about. */
export type Route =
  | { screen: 'list' | 'new' | 'settings' | 'shocked' | 'heaters' | 'charge' }
  | { screen: 'first'; step: number }
  | { screen: 'inspection' | Place; inspection: string }
  | { screen: 'question'; inspection: string; turn: Turn; question: string }
  /** Looked at closely it is over the whole screen, and back leads to the photo by itself. */
  | { screen: 'photo'; inspection: string; photo: string; closer?: true }
  | { screen: 'measure'; inspection: string; photo: string; step: MeasureStep }
  /** Without a turn it is opened from the list of readings. */
  | { screen: 'reading'; inspection: string; reading: string; turn?: Turn };

/** What is done to measure on a photo, one after the other. */
const MEASURE_STEPS = ['corners', 'what', 'blades', 'length', 'result'] as const;
export type MeasureStep = (typeof MEASURE_STEPS)[number];

/** Screens of the introduction. */
export const FIRST_STEPS = 3;
const PLAIN = ['new', 'settings', 'shocked', 'heaters', 'charge'] as const;
/** Stands behind a photo's id where it is looked at closely. */
const CLOSER = 'closer';
const TURNS: readonly string[] = ['q', 'also', 'hint', 'change'];
/** Stands before the id of a reading where it is asked for like a question. */
const READINGS = 'readings.';
const PLACES = [
  'found',
  'verdict',
  'readings',
  'heaters',
  'charge',
  'insulation',
  'touch',
  'grid',
  'chart',
  'circuit',
] as const;
/** A screen of an inspection that needs nothing more. */
type Place = (typeof PLACES)[number];

/** The screens of one inspection. */
export type InspectionRoute = Extract<Route, { inspection: string }>;

/** The screen that asks for a finding by its question's id, a reading's such as `readings.ohms_a_b_on` too. */
export function asking(inspection: string, turn: Turn, question: string): Route {
  if (!question.startsWith(READINGS)) return { screen: 'question', inspection, turn, question };
  return { screen: 'reading', inspection, turn, reading: question.slice(READINGS.length) };
}

/** Reads a route from an address's hash; what is not known is the list. */
export function parse(hash: string): Route {
  const [head = '', second = '', third = '', fourth = '', fifth = '', sixth = ''] = hash.replace(/^#?\/?/, '').split('/');
  const plain = PLAIN.find((screen) => screen === head);
  if (plain) return { screen: plain };
  if (head === 'first') {
    return { screen: 'first', step: Math.min(Math.max(Math.trunc(Number(second)) || 1, 1), FIRST_STEPS) };
  }
  if (head !== 'i' || second === '') return { screen: 'list' };
  if (TURNS.includes(third) && fourth !== '') {
    return asking(second, third as Turn, fourth);
  }
  if (third === 'photo' && fourth !== '' && fifth === 'measure') {
    const step = MEASURE_STEPS.find((one) => one === sixth) ?? 'corners';
    return { screen: 'measure', inspection: second, photo: fourth, step };
  }
  if (third === 'photo' && fourth !== '') {
    const photo = { screen: 'photo', inspection: second, photo: fourth } as const;
    return fifth === CLOSER ? { ...photo, closer: true } : photo;
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
      return `#/i/${route.inspection}/photo/${route.photo}${route.closer ? `/${CLOSER}` : ''}`;
    case 'measure': {
      const step = route.step === 'corners' ? '' : `/${route.step}`;
      return `#/i/${route.inspection}/photo/${route.photo}/measure${step}`;
    }
    case 'reading':
      return route.turn
        ? `#/i/${route.inspection}/${route.turn}/${READINGS}${route.reading}`
        : `#/i/${route.inspection}/readings/${route.reading}`;
    default:
      return 'inspection' in route ? `#/i/${route.inspection}/${route.screen}` : `#/${route.screen}`;
  }
}

/** The screen that stays when what lies over the whole of it is closed. */
export function beneath(route: Route): Route {
  if (route.screen !== 'photo') return route;
  const { screen, inspection, photo } = route;
  return { screen, inspection, photo };
}

/** Where back goes when there is no screen before this one. */
export function parent(route: Route): Route {
  if (route.screen === 'photo' && route.closer) return beneath(route);
  const isAsked = route.screen === 'question' || (route.screen === 'reading' && route.turn !== undefined);
  if (isAsked) {
    return route.turn === 'change' ? { screen: 'found', inspection: route.inspection } : { screen: 'list' };
  }
  if (route.screen === 'measure') {
    const { inspection, photo, step } = route;
    if (step === 'corners') return { screen: 'photo', inspection, photo };
    return { ...route, step: step === 'what' ? 'corners' : 'what' };
  }
  const isBesideReadings = ['reading', 'charge', 'insulation', 'touch'].includes(route.screen);
  if ('inspection' in route && isBesideReadings) {
    return { screen: 'readings', inspection: route.inspection };
  }
  const isBesideVerdict = ['found', 'readings', 'photo', 'heaters', 'grid', 'chart', 'circuit'].includes(route.screen);
  if ('inspection' in route && isBesideVerdict) {
    return { screen: 'verdict', inspection: route.inspection };
  }
  return { screen: 'list' };
}
