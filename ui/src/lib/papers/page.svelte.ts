import { tick } from 'svelte';

import { backend, type Trouble } from '../backend';
import { give } from '../give';
import { asTrouble } from '../state/inspection.svelte';
import { LoadedPage } from '../state/loaded.svelte';
import type { ChartView } from '../types/ChartView';
import type { CircuitView } from '../types/CircuitView';
import type { DocumentView } from '../types/DocumentView';
import type { GivenDrawing } from '../types/GivenDrawing';
import type { Paper } from '../types/Paper';
import type { TagPaper } from '../types/TagPaper';
import { standalone } from './drawing';

/** What a report draws. */
export interface Drawn {
  circuit: CircuitView | null;
  chart: ChartView;
}

/** The text of the inspection on the screen for a message. */
export const messagePage = new LoadedPage((inspection) => backend.reportText(inspection));

/** The documents of the inspection on the screen. */
class PapersPage {
  /** What is drawn while a report is made. */
  drawn = $state.raw<Drawn | null>(null);
  busy = $state(false);
  /** What was asked for last: what came of it stands beside its button, under the finger. */
  of = $state<'report' | 'tag' | null>(null);
  /** What was made last, by its file's name. */
  made = $state<string | null>(null);
  trouble = $state.raw<Trouble | null>(null);

  /** What was made at an earlier visit may be of what has changed since. */
  open(): void {
    if (!this.busy) this.made = this.trouble = null;
  }

  /** Makes the report with the drawings on a plate and gives it away. */
  async report(inspection: string, paper: Paper, plate: () => HTMLElement | null, title: string): Promise<void> {
    await this.#make('report', async () => {
      const [circuit, chart] = await Promise.all([backend.circuit(inspection, null), backend.chart(inspection)]);
      this.drawn = { circuit, chart };
      await tick();
      await document.fonts.ready;
      const given = (of: string, says: string): GivenDrawing | null => {
        const svg = plate()?.querySelector<SVGSVGElement>(`.${of} svg`);
        return svg ? { svg: standalone(svg), says } : null;
      };
      const drawings = { circuit: given('circuit', circuit?.described ?? ''), chart: given('chart', title) };
      return backend.makeReport(inspection, { paper, ...drawings });
    });
    this.drawn = null;
  }

  /** Makes the tag of a unit and gives it away. */
  async tag(unit: string, paper: TagPaper): Promise<void> {
    await this.#make('tag', () => backend.makeTags([unit], paper));
  }

  async #make(of: 'report' | 'tag', make: () => Promise<DocumentView>): Promise<void> {
    if (this.busy) return;
    this.busy = true;
    this.of = of;
    this.made = this.trouble = null;
    try {
      const made = await make();
      if (await give(made)) this.made = made.name;
    } catch (thrown) {
      this.trouble = asTrouble(thrown);
    }
    this.busy = false;
  }
}

export const papersPage = new PapersPage();
