/** What the way of the current shows, in a sentence for somebody who has never opened a radio. */

import { floats, isFeedEarthed } from './feed';
import { opens, opensWay, TIED } from './layout';
import type { Drawn } from './symbols';

type Shown = Drawn & { level: string };

/** The message that says why the current takes the way it does; nothing where there is no way to explain. */
export function why(view: Shown): string | null {
  const passes = new Set(view.path);
  if (view.path.length === 0 || view.level === 'breaker_trips') return null;
  const behind = floats(view) ? behindTransformer(view) : null;
  if (behind) return behind;
  const stray = view.faults.some((fault) => fault === 'stray_near' || fault === 'stray_far');
  if (stray && TIED.includes(view.isolation) && view.faults.includes('stray_far') && view.state.switch === 'on') return 'circuit-why-short';
  if (passes.has('stray_near') || passes.has('stray_far')) return 'circuit-why-stray';
  if (stray && view.level === 'below') return 'circuit-why-stray-holds';
  // Where the chassis stays on its leg, an open switch in the other is not what keeps it low.
  if (opensWay(view) && !(TIED.includes(view.isolation) && !opens(view, 'near'))) return 'circuit-why-open';
  if (view.faults.some((fault) => fault.endsWith('_shorted') && isOnWay(fault, passes))) return 'circuit-why-shorted';
  if (passes.has('near_capacitor') || passes.has('far_capacitor')) return 'circuit-why-capacitor';
  if (passes.has('aerial_capacitor')) return 'circuit-why-aerial';
  if (passes.has('common')) return 'circuit-why-common';
  return toChassis(view, passes);
}

/** What the transformer in front decides by itself; the rest is as at an outlet. */
function behindTransformer(view: Shown): string | null {
  if (!isFeedEarthed(view)) return 'circuit-why-isolated';
  if (opensWay(view)) return null;
  return view.path[0] === 'neutral_contact' ? 'circuit-why-feed-earthed-low' : 'circuit-why-feed-earthed';
}

/** Whether a part that failed is one that the current passes. */
function isOnWay(fault: string, passes: ReadonlySet<string>): boolean {
  if (fault.startsWith('aerial')) return passes.has('aerial_capacitor');
  if (fault.startsWith('network')) return passes.has('near_chassis');
  return passes.has('near_capacitor') || passes.has('far_capacitor');
}

/** Whether an earth wire holds the chassis. */
function isEarthed(view: Shown): boolean {
  return view.cord.endsWith('_earthed') && !view.faults.includes('earth_open');
}

function toChassis(view: Shown, passes: ReadonlySet<string>): string {
  switch (view.isolation) {
    case 'line_floated':
      return 'circuit-why-network';
    case 'line_insulated':
    case 'isolating':
      return view.faults.includes('insulation_breakdown') ? 'circuit-why-broken-down' : 'circuit-why-trace';
    case 'line_rectified':
      return 'circuit-why-rectified';
    default:
      if (view.feed === 'step_down_auto' && !passes.has('load')) return passes.has('neutral_contact') ? 'circuit-why-tap' : 'circuit-why-input';
      if (passes.has('neutral_pull')) return isEarthed(view) ? 'circuit-why-pulled-earthed' : 'circuit-why-pulled';
      if (!passes.has('load')) return 'circuit-why-hot';
      return view.level === 'below' ? 'circuit-why-neutral' : 'circuit-why-load';
  }
}
