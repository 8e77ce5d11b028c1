/** What a photo that was taken again has from the one it replaces. */

import { backend } from '../backend';
import { keptCaptions } from './kept.svelte';

/** Gives it the caption, the place and the before and after of the old one, while that is still there: whatever is
 * refused on the way, nothing of the old one is lost. What it has of its own it keeps. */
export async function inherit(inspection: string, old: string, next: string): Promise<void> {
  const { photos } = await backend.showInspection(inspection);
  const [was, is] = [old, next].map((id) => photos.find((photo) => photo.id === id));
  if (!was || !is) return;
  const caption = keptCaptions.of(was);
  if (caption !== '' && keptCaptions.of(is) === '') await backend.captionPhoto(inspection, next, caption);
  // One that was paired with the old one itself takes what came before that.
  const own = is.before === old ? null : is.before;
  const before = own ?? (was.before === next ? null : was.before);
  if (before !== is.before) await backend.pairPhoto(inspection, next, before);
  for (const after of photos.filter((photo) => photo.before === old && photo.id !== next)) {
    await backend.pairPhoto(inspection, after.id, next);
  }
  const order = photos.map(({ id }) => id).filter((id) => id !== next);
  order.splice(order.indexOf(old), 0, next);
  await backend.orderPhotos(inspection, order);
}
