import { toJpeg, toText } from './photoText';
import type { Access } from '../types/Access';
import type { ChargeView } from '../types/ChargeView';
import type { ChartView } from '../types/ChartView';
import type { CircuitView } from '../types/CircuitView';
import type { Code } from '../types/Code';
import type { Fault } from '../types/Fault';
import type { Feed } from '../types/Feed';
import type { DocumentView } from '../types/DocumentView';
import type { FeedsView } from '../types/FeedsView';
import type { HeaterView } from '../types/HeaterView';
import type { InspectionView } from '../types/InspectionView';
import type { GridView } from '../types/GridView';
import type { InsulationView } from '../types/InsulationView';
import type { JsonValue } from '../types/serde_json/JsonValue';
import type { Mark } from '../types/Mark';
import type { MeasureView } from '../types/MeasureView';
import type { Modification } from '../types/Modification';
import type { NewUnit } from '../types/NewUnit';
import type { RegionView } from '../types/RegionView';
import type { PresetView } from '../types/PresetView';
import type { ProofLine } from '../types/ProofLine';
import type { ProofView } from '../types/ProofView';
import type { QuestionView } from '../types/QuestionView';
import type { ReadingId } from '../types/ReadingId';
import type { ReadingsView } from '../types/ReadingsView';
import type { RemediesView } from '../types/RemediesView';
import type { ReportAsk } from '../types/ReportAsk';
import type { TagPaper } from '../types/TagPaper';
import type { RepairView } from '../types/RepairView';
import type { State } from '../types/State';
import type { Supply } from '../types/Supply';
import type { TouchPosition } from '../types/TouchPosition';
import type { TouchTestView } from '../types/TouchTestView';
import type { TubeHit } from '../types/TubeHit';
import type { TubeRead } from '../types/TubeRead';
import type { BundleView } from '../types/BundleView';
import type { ImportView } from '../types/ImportView';
import type { QueueAsk } from '../types/QueueAsk';
import type { QueueCounts } from '../types/QueueCounts';
import type { QueueLine } from '../types/QueueLine';
import type { QueueView } from '../types/QueueView';
import type { RecoveredView } from '../types/RecoveredView';
import type { SnapshotView } from '../types/SnapshotView';
import type { WorkState } from '../types/WorkState';
import type { UnitView } from '../types/UnitView';

/** What an answer can be: an id, a list of ids, or a number. */
export type AnswerValue = string | string[] | number;

/** What a part's value can be, in farads or ohms. */
export type PartReading = { farads: number; measured: boolean } | { ohms: number; measured: boolean };

/** What the rating plate says, each where it says it. */
export interface Rated {
  volts?: number;
  hertz?: number;
  watts?: number;
}

/** A position of plug, switch and ground switch, with the faults that are put in. */
export type CircuitPlace = State & { faults: Fault[] };

/** A stack of repairs in their order, and the limit that class Y is sized for, mA; without one what is usual. */
export type RemedyStack = { steps: Modification[]; limit_ma?: number };

/** What was measured for a line of a proof: whichever the line takes. */
export type ProofEntry =
  | { read: number }
  | { over_range: true }
  | { holds: boolean }
  | { positions: Partial<Record<TouchPosition, number>> };

/** Where a unit will be plugged in; the input only of an autotransformer. */
export type FeedChoice = { feed: Feed; input_volts?: number };

/** A meter's highest resistance, Ω, and its accuracy, % of the reading and digits. */
export type Meter = { max_ohms: number; percent: number; digits: number };

/** A place of a photo in shares of its width and height. */
type Share = [x: number, y: number];

/** What is measured on a photo: beside the corners of a card, two ends, or both edges of two blades. */
export type MeasureAsk = {
  card: Share[];
  length: [Share, Share] | null;
  blades: [[Share, Share], [Share, Share]] | null;
};

/** The one door to the core: a method for each command. Failures are thrown as `Trouble`. */
export interface Backend {
  listUnits(text: string | null): Promise<UnitView[]>;
  listPresets(): Promise<PresetView[]>;
  /** Parts of the world, with what is usual there. */
  listRegions(): Promise<RegionView[]>;
  createUnit(unit: NewUnit): Promise<InspectionView>;
  startInspection(unit: string, access: Access[]): Promise<InspectionView>;
  showInspection(inspection: string): Promise<InspectionView>;
  showQuestion(question: string): Promise<QuestionView>;
  answer(inspection: string, question: string, answer: AnswerValue): Promise<InspectionView>;
  setValue(inspection: string, value: string, reading: PartReading): Promise<InspectionView>;
  setRated(inspection: string, rated: Rated): Promise<InspectionView>;
  setTubes(inspection: string, tubes: string[]): Promise<InspectionView>;
  /** Types that what is typed so far may become, best first. */
  findTubes(text: string): Promise<TubeHit[]>;
  /** A whole list that was pasted. */
  readTubes(text: string): Promise<TubeRead[]>;
  /** What the heaters of these tubes come to on such a line. */
  studyHeaters(tubes: string[], volts: number, hertz: number): Promise<HeaterView>;
  setReading(
    inspection: string,
    reading: ReadingId,
    value: number | 'OL',
  ): Promise<InspectionView>;
  /** How each reading is taken, and what those taken say. */
  meterReadings(inspection: string): Promise<ReadingsView>;
  setMeter(inspection: string, meter: Meter): Promise<InspectionView>;
  /** What a charged capacitor can do; null where nothing bleeds it. */
  storedCharge(farads: number, volts: number, bleedOhms: number | null): Promise<ChargeView>;
  insulationTest(inspection: string): Promise<InsulationView>;
  grid(inspection: string): Promise<GridView>;
  /** The picture of the worst arrangement; `null` is where the verdict looks. Nothing without a line side. */
  circuit(inspection: string, at: CircuitPlace | null): Promise<CircuitView | null>;
  chart(inspection: string): Promise<ChartView>;
  /** What each repair would change, and the shortest way to two faults. */
  remedies(inspection: string): Promise<RemediesView>;
  /** A stack of repairs before and after. Refused where a step is not offered. */
  remedyStack(inspection: string, stack: RemedyStack): Promise<RepairView>;
  /** The picture after a stack of repairs, of the arrangement that is then the worst. */
  circuitRepaired(inspection: string, stack: RemedyStack, at: CircuitPlace | null): Promise<CircuitView | null>;
  /** Keeps a stack; an empty one takes the choice back. */
  chooseRemedies(inspection: string, stack: RemedyStack): Promise<InspectionView>;
  proof(inspection: string): Promise<ProofView>;
  /** Taken back by `withdraw` of `proof.<line>`. */
  enterProof(inspection: string, line: ProofLine, entry: ProofEntry): Promise<InspectionView>;
  /** Refused while a line of the proof is open or failed. */
  markReady(inspection: string, ready: boolean): Promise<InspectionView>;
  feeds(inspection: string): Promise<FeedsView>;
  setFeed(inspection: string, feed: FeedChoice): Promise<InspectionView>;
  touchTest(inspection: string): Promise<TouchTestView>;
  /** One thing of the live touch test, such as `protection` or a position's volts. */
  setLiveTest(inspection: string, part: string, value: string | number | boolean): Promise<InspectionView>;
  withdraw(inspection: string, finding: string): Promise<InspectionView>;
  setAccess(inspection: string, access: Access[]): Promise<InspectionView>;
  setSupply(inspection: string, supply: Supply): Promise<InspectionView>;
  rename(inspection: string, name: string): Promise<InspectionView>;
  setPlace(inspection: string, place: string): Promise<InspectionView>;
  undo(inspection: string): Promise<InspectionView | null>;
  /** A value that was looked for in vain: it is not asked again. */
  leaveOpen(inspection: string, value: string): Promise<InspectionView>;
  /** Who inspects, and in which language; for what is found from now on. */
  setInspector(author: string, language: string): Promise<null>;
  /** A photo of a finding, by its path, or (null) of the unit as a whole. */
  addPhoto(inspection: string, finding: string | null, photo: Blob): Promise<InspectionView>;
  showPhoto(sha256: string, size: PhotoSize): Promise<Blob>;
  captionPhoto(inspection: string, photo: string, caption: string): Promise<InspectionView>;
  removePhoto(inspection: string, photo: string): Promise<InspectionView>;
  markPhoto(inspection: string, photo: string, marks: Mark[]): Promise<InspectionView>;
  /** Says which photo shows before what this one shows after; `null` is none. */
  pairPhoto(inspection: string, photo: string, before: string | null): Promise<InspectionView>;
  orderPhotos(inspection: string, order: string[]): Promise<InspectionView>;
  /** The JPEG of a photo with its marks drawn in, in base64. */
  exportPhoto(inspection: string, photo: string): Promise<string>;
  /** What points on a photo measure. Nothing of it is stored. */
  measurePhoto(inspection: string, photo: string, ask: MeasureAsk): Promise<MeasureView>;
  /** A page of the queue; the next one is asked for after its `next`. */
  showQueue(ask: Partial<QueueAsk>): Promise<QueueView>;
  countQueue(): Promise<QueueCounts>;
  /** The places where units stand with a text in their name, at most 200, for a filter to offer. */
  listPlaces(text: string): Promise<string[]>;
  /** How many units have a class that is still to be worked out beside the window. */
  /** What kept the last copy from being made beside the window; null once one is made. */
  copyTrouble(): Promise<Trouble | null>;
  countPending(): Promise<number>;
  /** Deletes a unit for good, with all that was found of it. */
  deleteUnit(unit: string): Promise<null>;
  setUnitState(unit: string, state: WorkState): Promise<QueueLine>;
  /** Writes a bundle of some units, or (null) of all, to a file that a person chose. */
  exportBundle(units: string[] | null, path: string): Promise<BundleView>;
  importBundle(path: string): Promise<ImportView>;
  /** The copies of the record; answered even where the record is damaged. */
  listSnapshots(): Promise<SnapshotView[]>;
  /** Puts a copy, or (null) an empty record, in place, joined with what can be read of what stood there. */
  restoreSnapshot(number: number | null, readable: boolean): Promise<RecoveredView>;
  /** A bundle of what can be read of a damaged record. */
  exportReadable(path: string): Promise<BundleView>;
  /** Asks where a file of this name shall go; nothing where the person thinks better of it. */
  askSavePath(name: string): Promise<string | null>;
  /** Asks which bundle is meant; nothing where the person thinks better of it. */
  askOpenPath(): Promise<string | null>;
  /** Asks where a file shall go and writes it there from its base64 text; whether it did. */
  saveFile(name: string, content: string): Promise<boolean>;
  /** The report of an inspection as PDF, with the drawings as they are shown. */
  makeReport(inspection: string, ask: ReportAsk): Promise<DocumentView>;
  /** The same in short as text to paste into a message. */
  reportText(inspection: string): Promise<string>;
  /** Hang tags of units that have been inspected, as PDF. */
  makeTags(units: string[], paper: TagPaper): Promise<DocumentView>;
  /** The list of all units as CSV. */
  listCsv(): Promise<DocumentView>;
  loadDemo(): Promise<UnitView[]>;
  removeDemo(): Promise<UnitView[]>;
}

/** A photo to look at, or small for a list. */
export type PhotoSize = 'full' | 'thumbnail';

/** Runs a command by its name; each shell has its own way. */
export type Call = <T>(command: string, args: Record<string, JsonValue>) => Promise<T>;

/** The backend over one way of calling, so that names and arguments are written once. */
export function backendOver(call: Call): Backend {
  return {
    listUnits: (text) => call('list_units', { text }),
    listPresets: () => call('list_presets', {}),
    listRegions: () => call('list_regions', {}),
    createUnit: (unit) => call('create_unit', { unit: { ...unit } }),
    startInspection: (unit, access) => call('start_inspection', { unit, access }),
    showInspection: (inspection) => call('show_inspection', { inspection }),
    showQuestion: (question) => call('show_question', { question }),
    answer: (inspection, question, answer) => call('answer', { inspection, question, answer }),
    setValue: (inspection, value, reading) => call('set_value', { inspection, value, reading }),
    setRated: (inspection, rated) => call('set_rated', { inspection, rated: { ...rated } }),
    setTubes: (inspection, tubes) => call('set_tubes', { inspection, tubes }),
    findTubes: (text) => call('find_tubes', { text }),
    readTubes: (text) => call('read_tubes', { text }),
    studyHeaters: (tubes, volts, hertz) => call('study_heaters', { tubes, volts, hertz }),
    setReading: (inspection, reading, value) =>
      call('set_reading', { inspection, reading, value }),
    meterReadings: (inspection) => call('meter_readings', { inspection }),
    setMeter: (inspection, meter) => call('set_meter', { inspection, meter }),
    storedCharge: (farads, volts, bleedOhms) =>
      call('stored_charge', {
        charge: { farads, volts, ...(bleedOhms === null ? {} : { bleed_ohms: bleedOhms }) },
      }),
    insulationTest: (inspection) => call('insulation_test', { inspection }),
    remedies: (inspection) => call('remedies', { inspection }),
    remedyStack: (inspection, stack) =>
      call('remedy_stack', { inspection, stack: { ...stack } }),
    circuitRepaired: (inspection, stack, at) =>
      call('circuit_repaired', { inspection, stack: { ...stack }, at: at === null ? null : { ...at } }),
    chooseRemedies: (inspection, stack) =>
      call('choose_remedies', { inspection, stack: { ...stack } }),
    proof: (inspection) => call('proof', { inspection }),
    enterProof: (inspection, line, entry) =>
      call('enter_proof', { inspection, line, entry: { ...entry } }),
    markReady: (inspection, ready) => call('mark_ready', { inspection, ready }),
    feeds: (inspection) => call('feeds', { inspection }),
    setFeed: (inspection, feed) => call('set_feed', { inspection, feed: { ...feed } }),
    grid: (inspection) => call('grid', { inspection }),
    circuit: (inspection, at) => call('circuit', { inspection, at }),
    chart: (inspection) => call('chart', { inspection }),
    touchTest: (inspection) => call('touch_test', { inspection }),
    setLiveTest: (inspection, part, value) =>
      call('set_live_test', { inspection, part, value }),
    withdraw: (inspection, finding) => call('withdraw', { inspection, finding }),
    setAccess: (inspection, access) => call('set_access', { inspection, access }),
    setSupply: (inspection, supply) => call('set_supply', { inspection, supply: { ...supply } }),
    rename: (inspection, name) => call('rename', { inspection, name }),
    setPlace: (inspection, place) => call('set_place', { inspection, place }),
    undo: (inspection) => call('undo', { inspection }),
    leaveOpen: (inspection, value) => call('leave_open', { inspection, value }),
    setInspector: (author, language) => call('set_inspector', { author, language }),
    addPhoto: async (inspection, finding, photo) =>
      call('add_photo', { inspection, finding, picture: await toText(photo) }),
    showPhoto: async (sha256, size) =>
      toJpeg(await call<string>('show_photo', { sha256, thumbnail: size === 'thumbnail' })),
    captionPhoto: (inspection, photo, caption) =>
      call('caption_photo', { inspection, photo, caption }),
    removePhoto: (inspection, photo) => call('remove_photo', { inspection, photo }),
    markPhoto: (inspection, photo, marks) => call('mark_photo', { inspection, photo, marks }),
    pairPhoto: (inspection, photo, before) => call('pair_photo', { inspection, photo, before }),
    orderPhotos: (inspection, order) => call('order_photos', { inspection, order }),
    exportPhoto: (inspection, photo) => call('export_photo', { inspection, photo }),
    measurePhoto: (inspection, photo, ask) => call('measure_photo', { inspection, photo, ask }),
    showQueue: (ask) => call('show_queue', { ask: { ...ask } }),
    countQueue: () => call('count_queue', {}),
    listPlaces: (text) => call('list_places', { text }),
    copyTrouble: () => call('copy_trouble', {}),
    countPending: () => call('count_pending', {}),
    deleteUnit: (unit) => call('delete_unit', { unit }),
    setUnitState: (unit, state) => call('set_unit_state', { unit, state }),
    exportBundle: (units, path) => call('export_bundle', { units, path }),
    importBundle: (path) => call('import_bundle', { path }),
    listSnapshots: () => call('list_snapshots', {}),
    restoreSnapshot: (number, readable) => call('restore_snapshot', { number, readable }),
    exportReadable: (path) => call('export_readable', { path }),
    askSavePath: (name) => call('ask_save_path', { name }),
    askOpenPath: () => call('ask_open_path', {}),
    saveFile: (name, content) => call('save_file', { name, content }),
    makeReport: (inspection, ask) => call('make_report', { inspection, ask }),
    reportText: (inspection) => call('report_text', { inspection }),
    makeTags: (units, paper) => call('make_tags', { units, paper }),
    listCsv: () => call('list_csv', {}),
    loadDemo: () => call('load_demo', {}),
    removeDemo: () => call('remove_demo', {}),
  };
}

/** What a command refuses with; the sentence is for the person. */
export class Trouble extends Error {
  constructor(
    readonly code: Code | 'unreachable',
    readonly field: string | null,
    readonly sentence: string,
  ) {
    super(sentence);
  }
}

/** The trouble in what a shell threw or answered; null where it is not one of the core's. */
export function troubleIn(given: unknown): Trouble | null {
  if (typeof given !== 'object' || given === null || !('sentence' in given)) return null;
  const { code, field, sentence } = given as { code: Code; field: string | null; sentence: string };
  return new Trouble(code, field ?? null, sentence);
}
