/** A constraint of the platform that TypeScript does not know: the light beside the camera. */
interface Lit extends MediaTrackConstraintSet {
  torch: boolean;
}

/** The light beside the camera, where the platform lets a page turn it on. */
class Torch {
  on = $state(false);
  /** It was asked for, and there is none, or it was refused. */
  missing = $state(false);
  #track: MediaStreamTrack | null = null;
  /** Counts the taps: an answer of the camera to an earlier one is let go. */
  #turn = 0;

  /** Whether it is worth offering: a device that is held, and a platform that knows such lights. */
  get offered(): boolean {
    const known: unknown = navigator.mediaDevices?.getSupportedConstraints?.();
    return matchMedia('(pointer: coarse)').matches && typeof known === 'object' && known !== null && 'torch' in known;
  }

  async turn(): Promise<void> {
    if (this.on || this.#track) return this.off();
    this.missing = false;
    const turn = ++this.#turn;
    try {
      const video = { facingMode: 'environment' };
      const stream = await navigator.mediaDevices.getUserMedia({ video });
      const [track] = stream.getVideoTracks();
      if (turn !== this.#turn) {
        track?.stop();
        return;
      }
      this.#track = track ?? null;
      track?.addEventListener('ended', () => this.off());
      const lit: Lit = { torch: true };
      await track?.applyConstraints({ advanced: [lit] });
      const settings: object = track?.getSettings() ?? {};
      if (!('torch' in settings && settings.torch)) throw new Error('no light');
      this.on = true;
    } catch {
      if (turn !== this.#turn) return;
      // Refused, no camera, or a camera without a light.
      this.off();
      this.missing = true;
    }
  }

  /** Puts it out and lets the camera go. */
  off(): void {
    this.#turn += 1;
    this.#track?.stop();
    this.#track = null;
    this.on = false;
  }
}

export const torch = new Torch();

// A light that stays on in the pocket empties the battery.
document.addEventListener('visibilitychange', () => {
  if (document.visibilityState === 'hidden') torch.off();
});
