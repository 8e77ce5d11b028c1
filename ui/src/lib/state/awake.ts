/** Keeps the screen lit while an inspection is open, where the platform lets a page ask for it. Gives
 * what lets it sleep again. */
export function keepAwake(): () => void {
  if (!('wakeLock' in navigator)) return () => undefined;
  let lock: Promise<WakeLockSentinel | null> = Promise.resolve(null);
  // The system lets go of it whenever the app is out of sight.
  const ask = (): void => {
    if (document.visibilityState !== 'visible') return;
    // Refused, as on a low battery: the screen sleeps as usual.
    lock = navigator.wakeLock.request('screen').catch(() => null);
  };
  document.addEventListener('visibilitychange', ask);
  ask();
  return () => {
    document.removeEventListener('visibilitychange', ask);
    void lock.then((held) => held?.release());
  };
}
