/** Why a question is open: in its turn, as a caution to look at, as a hint, or to change an answer. */
export type Turn = 'q' | 'also' | 'hint' | 'change';

/** A screen, with what it is about. */
export type Route =
  | { screen: 'list' | 'new' | 'settings' | 'licences' | 'shocked' | 'heaters' | 'charge' }
  | { screen: 'first'; step: number }
  /** Without a page or a unit, by its number for people, it is the whole queue. */
  | { screen: 'queue'; page?: QueuePage; unit?: string }
  /** With the number of a copy it asks whether that is to be put back. */
  | { screen: 'record'; copy?: number }
  | { screen: 'inspection' | Place; inspection: string }
  | { screen: 'question'; inspection: string; turn: Turn; question: string }
  /** Looked at closely it is over the whole screen, and back leads to the photo by itself. */
  | { screen: 'photo'; inspection: string; photo: string; closer?: true }
  | { screen: 'measure'; inspection: string; photo: string; step: MeasureStep }
  | { screen: 'repairs'; inspection: string; page: RepairPage }
  /** Without a line it is the whole plan. */
  | { screen: 'proof'; inspection: string; line?: string }
  /** Without a turn it is opened from the list of readings. */
  | { screen: 'reading'; inspection: string; reading: string; turn?: Turn };

/** What is done to measure on a photo, one after the other. */
const MEASURE_STEPS = ['corners', 'what', 'blades', 'length', 'result'] as const;
export type MeasureStep = (typeof MEASURE_STEPS)[number];

/** What is looked at of the repairs: each by itself, then the stack that is put together and what it comes to. */
const REPAIR_PAGES = ['each', 'stack', 'parts', 'grid', 'circuit'] as const;
export type RepairPage = (typeof REPAIR_PAGES)[number];

/** What is done beside the queue: it is narrowed, or something is done with several units. */
const QUEUE_PAGES = ['filters', 'selected'] as const;
export type QueuePage = (typeof QUEUE_PAGES)[number];

/** Screens of the introduction. */
export const FIRST_STEPS = ['does', 'cannot', 'unplug'] as const;
const PLAIN = ['new', 'settings', 'licences', 'shocked', 'heaters', 'charge'] as const;
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
  'papers',
  'outlet',
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
    return { screen: 'first', step: Math.min(Math.max(Math.trunc(Number(second)) || 1, 1), FIRST_STEPS.length) };
  }
  if (head === 'queue') {
    const page = QUEUE_PAGES.find((one) => one === second);
    return { screen: 'queue', ...(page ? { page } : second === '' ? {} : { unit: second }) };
  }
  if (head === 'record') {
    return { screen: 'record', ...(/^\d+$/.test(second) ? { copy: Number(second) } : {}) };
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
  if (third === 'repairs') {
    return { screen: 'repairs', inspection: second, page: REPAIR_PAGES.find((page) => page === fourth) ?? 'each' };
  }
  if (third === 'proof') {
    return { screen: 'proof', inspection: second, ...(fourth === '' ? {} : { line: fourth }) };
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
    case 'queue': {
      const beside = route.page ?? route.unit;
      return beside === undefined ? '#/queue' : `#/queue/${beside}`;
    }
    case 'record':
      return `#/record${route.copy === undefined ? '' : `/${route.copy}`}`;
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
    case 'repairs':
      return `#/i/${route.inspection}/repairs${route.page === 'each' ? '' : `/${route.page}`}`;
    case 'proof':
      return `#/i/${route.inspection}/proof${route.line ? `/${route.line}` : ''}`;
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

/** The screens that one comes to from the verdict. */
const BESIDE_VERDICT: readonly string[] = [
  'found',
  'readings',
  'photo',
  'heaters',
  'grid',
  'chart',
  'circuit',
  'outlet',
  'papers',
  'proof',
  'repairs',
];

/** Where back goes when there is no screen before this one. */
export function parent(route: Route): Route {
  if (route.screen === 'photo' && route.closer) return beneath(route);
  if (route.screen === 'queue' && (route.page ?? route.unit) !== undefined) return { screen: 'queue' };
  if (route.screen === 'licences') return { screen: 'settings' };
  if (route.screen === 'record') return { screen: route.copy === undefined ? 'settings' : 'record' };
  const isAsked = route.screen === 'question' || (route.screen === 'reading' && route.turn !== undefined);
  if (isAsked) {
    return route.turn === 'change' ? { screen: 'found', inspection: route.inspection } : { screen: 'list' };
  }
  if (route.screen === 'measure') {
    const { inspection, photo, step } = route;
    if (step === 'corners') return { screen: 'photo', inspection, photo };
    return { ...route, step: step === 'what' ? 'corners' : 'what' };
  }
  if (route.screen === 'repairs' && route.page !== 'each') {
    return { ...route, page: route.page === 'stack' ? 'each' : 'stack' };
  }
  if (route.screen === 'proof' && route.line) return { screen: 'proof', inspection: route.inspection };
  const isBesideReadings = ['reading', 'charge', 'insulation', 'touch'].includes(route.screen);
  if ('inspection' in route && isBesideReadings) {
    return { screen: 'readings', inspection: route.inspection };
  }
  const isBesideVerdict = BESIDE_VERDICT.includes(route.screen);
  if ('inspection' in route && isBesideVerdict) {
    return { screen: 'verdict', inspection: route.inspection };
  }
  return { screen: 'list' };
}
