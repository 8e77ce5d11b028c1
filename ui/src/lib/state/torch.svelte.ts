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

  /** Whether it is worth offering: a device that is held, and a platform that knows such lights. */
  get offered(): boolean {
    const known: unknown = navigator.mediaDevices?.getSupportedConstraints?.();
    return matchMedia('(pointer: coarse)').matches && typeof known === 'object' && known !== null && 'torch' in known;
  }

  async turn(): Promise<void> {
    if (this.on) return this.off();
    this.missing = false;
    try {
      const video = { facingMode: 'environment' };
      const stream = await navigator.mediaDevices.getUserMedia({ video });
      const [track] = stream.getVideoTracks();
      this.#track = track ?? null;
      const lit: Lit = { torch: true };
      await track?.applyConstraints({ advanced: [lit] });
      const settings: object = track?.getSettings() ?? {};
      if (!('torch' in settings && settings.torch)) throw new Error('no light');
      this.on = true;
    } catch {
      // Refused, no camera, or a camera without a light.
      this.off();
      this.missing = true;
    }
  }

  /** Puts it out and lets the camera go. */
  off(): void {
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
