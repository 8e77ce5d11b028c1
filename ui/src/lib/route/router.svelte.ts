import { beneath, format, parent, parse, type Route } from './route';

/** Where the last screen is kept: a process that is killed starts without an address. */
const LAST = 'route';
/** The hashes behind the history entries, to know whether the one before is the one wanted. */
const TRAIL = 'trail';

/** One history entry for each screen, so that the back gesture goes one screen back. */
class Router {
  route = $state.raw<Route>({ screen: 'list' });
  /** The last move was through the history, whose places on the page the browser keeps. */
  wentBack = false;
  #index = 0;
  #startsAtTop = false;
  #trail: string[] = [];

  /** Opens the screen of the address, else the last one, else `first`. */
  start(first: Route): void {
    const { index } = (history.state ?? {}) as { index?: number };
    this.#index = index ?? 0;
    this.#trail = index === undefined ? [] : readTrail();
    window.addEventListener('popstate', () => {
      const { index: at } = (history.state ?? {}) as { index?: number };
      if (at === undefined) {
        // An address that was given from outside, such as a link: a new entry, which gets its place.
        this.#index += 1;
        this.#put(format(parse(location.hash)), 'replaceState');
        return;
      }
      this.wentBack = !this.#startsAtTop;
      this.#startsAtTop = false;
      this.#index = at;
      this.#show(parse(location.hash));
    });
    if (location.hash !== '') {
      this.#put(format(parse(location.hash)), 'replaceState');
      return;
    }
    const last = localStorage.getItem(LAST);
    this.#put(format(last === null ? first : { screen: 'list' }), 'replaceState');
    if (last !== null && last !== '#/') this.#put(last, 'pushState');
  }

  /** Goes on to a screen. */
  go(route: Route): void {
    const hash = format(route);
    if (hash === location.hash) return;
    // Going where one came from is going back: else the two screens would pile up behind each other.
    if (this.#index > 0 && this.#trail[this.#index - 1] === hash) history.back();
    else this.#put(hash, 'pushState');
  }

  /** Puts a screen in the place of this one. */
  replace(route: Route): void {
    this.#put(format(route), 'replaceState');
  }

  /** Goes back to a screen that lies before this one, however far; where there is none it takes the place of this. */
  returnTo(route: Route): void {
    const before = this.#trail.slice(0, this.#index).lastIndexOf(format(route));
    if (before < 0) this.replace(route);
    else history.go(before - this.#index);
  }

  /** Goes one screen back; to its top where it has something new to say. */
  back(toTop = false): void {
    this.#startsAtTop = toTop;
    if (this.#index > 0) history.back();
    else this.replace(parent(this.route));
  }

  /** Goes one screen back where that is of the same inspection, else to the screen above in place of this one: what
   * was removed can be brought back only where the inspection is. */
  leave(): void {
    const before = this.#index > 0 ? parse(this.#trail[this.#index - 1] ?? '') : null;
    const here = this.route;
    const isWithin = before && 'inspection' in before && 'inspection' in here && before.inspection === here.inspection;
    if (isWithin) history.back();
    else this.replace(parent(here));
  }

  #put(hash: string, how: 'pushState' | 'replaceState'): void {
    this.wentBack = false;
    if (how === 'pushState') this.#index += 1;
    this.#trail = [...this.#trail.slice(0, this.#index), hash];
    sessionStorage.setItem(TRAIL, JSON.stringify(this.#trail));
    history[how]({ index: this.#index }, '', hash);
    this.#show(parse(hash));
  }

  #show(route: Route): void {
    this.route = route;
    // A new start has no screen before it that would come back from under what is closed.
    localStorage.setItem(LAST, format(beneath(route)));
  }
}

function readTrail(): string[] {
  try {
    return JSON.parse(sessionStorage.getItem(TRAIL) ?? '[]') as string[];
  } catch {
    return [];
  }
}

export const router = new Router();
