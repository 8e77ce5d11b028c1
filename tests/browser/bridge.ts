/** The bridge: the real core behind the screens, one process and one fresh record for each check. */

import { type ChildProcess, spawn } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { Agent, get } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';

import { BRIDGE, SCREENS } from './places';

/** How long the process may take to listen; it takes well under a second. */
const PATIENCE_MS = 10_000;

export class Bridge {
  /** What the process complained of: a mistake of the screens makes it panic. */
  complaints = '';

  private constructor(
    readonly address: string,
    /** The folder that a person would save files in. */
    readonly given: string,
    /** The file of the record; none where it is only in memory. */
    readonly record: string | undefined,
    private readonly child: ChildProcess,
  ) {
    child.stderr?.on('data', (bytes: Buffer) => (this.complaints += bytes.toString()));
  }

  /** Starts one with an empty record in memory, or with the record in a file, which may be there already. */
  static async start(record?: string): Promise<Bridge> {
    for (const [what, path] of [
      ['bridge', BRIDGE],
      ['built screens', `${SCREENS}/index.html`],
    ]) {
      if (path === undefined || !existsSync(path)) throw new Error(`no ${what} at ${path}: build it first`);
    }
    const given = mkdtempSync(join(tmpdir(), 'given-'));
    const child = spawn(BRIDGE, ['0', SCREENS, ...(record === undefined ? [] : [record])], {
      stdio: ['ignore', 'pipe', 'pipe'],
      env: { ...process.env, COLDCHASSIS_GIVEN: given },
    });
    const address = await addressOf(child);
    await rouse(address);
    return new Bridge(address, given, record, child);
  }

  /** Runs a command of the app, as the screens do. */
  async call<T>(command: string, args: Record<string, unknown>): Promise<T> {
    const response = await fetch(`${this.address}/api/${command}`, {
      method: 'POST',
      body: JSON.stringify(args),
    });
    const answer = (await response.json()) as { ok?: T; problem?: { sentence: string } };
    if (!('ok' in answer)) throw new Error(`${command}: ${answer.problem?.sentence}`);
    return answer.ok as T;
  }

  async stop(): Promise<void> {
    if (this.child.exitCode !== null || this.child.signalCode !== null) return;
    const ended = new Promise((done) => this.child.once('exit', done));
    this.child.kill();
    await ended;
    rmSync(this.given, { recursive: true, force: true });
  }
}

/** The first line that the process prints. */
function addressOf(process: ChildProcess): Promise<string> {
  return new Promise((done, failed) => {
    const late = setTimeout(() => failed(new Error('the bridge does not start')), PATIENCE_MS);
    process.once('error', failed);
    process.once('exit', (code) => failed(new Error(`the bridge ended with ${code}`)));
    if (!process.stdout) return;
    createInterface(process.stdout).once('line', (line) => {
      clearTimeout(late);
      done(line);
    });
  });
}

/** More connections than a browser opens to one address at a time, which is six, and the checks' own. */
const CONNECTIONS = 12;

/** Has the bridge's server start threads enough. When several connections come at once it counts a thread
    that is about to take work as one that waits for work (tiny_http 0.12, `TaskPool::spawn`), and the last
    connection may then wait for ever. One after the other they each get a thread. */
async function rouse(address: string): Promise<void> {
  const agents = Array.from({ length: CONNECTIONS }, () => new Agent({ keepAlive: true }));
  for (const agent of agents) await answered(`${address}/icon.svg`, agent);
  for (const agent of agents) agent.destroy();
}

function answered(address: string, agent: Agent): Promise<void> {
  return new Promise((done, failed) => {
    get(address, { agent }, (response) => response.resume().once('end', () => done())).once('error', failed);
  });
}
