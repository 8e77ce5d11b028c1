import { backendOver } from './backend';
import { callOverHttp } from './http';
import { callShell } from './tauri';

export { Trouble } from './backend';
export type { AnswerValue, Backend, Meter, PartReading, PhotoSize, Rated } from './backend';

/** The backend of this run: the shell's where there is one, else the loopback bridge of the checks. */
export const backend = backendOver('__TAURI_INTERNALS__' in window ? callShell : callOverHttp);
