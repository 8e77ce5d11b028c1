import { backendOver, type Call, Trouble } from './backend';
import { callOverHttp } from './http';
import { callShell } from './tauri';

export { Trouble } from './backend';
export type { AnswerValue, Backend, Meter, PartReading, PhotoSize, Rated } from './backend';

/** Hears of every command that was refused, whatever becomes of that where it was given. */
type Hear = (command: string, trouble: Trouble) => void;

const hearing: Hear[] = [];

/** Has what is refused told here too: some of it concerns the whole window. */
export function onRefused(hear: Hear): void {
  hearing.push(hear);
}

const call: Call = '__TAURI_INTERNALS__' in window ? callShell : callOverHttp;

/** What is given before the core knows the language would be answered in another. */
const FIRST = 'set_inspector';
let held: Promise<unknown> = Promise.resolve();

/** Has every command wait until something is done, but the one that says in which language to answer. */
export function holdUntil(done: Promise<unknown>): void {
  held = done;
}

const heard: Call = async <T>(command: string, args: Parameters<Call>[1]) => {
  if (command !== FIRST) await held;
  try {
    return await call<T>(command, args);
  } catch (thrown) {
    if (thrown instanceof Trouble) for (const hear of hearing) hear(command, thrown);
    throw thrown;
  }
};

/** The backend of this run: the shell's where there is one, else the loopback bridge of the checks. */
export const backend = backendOver(heard);
