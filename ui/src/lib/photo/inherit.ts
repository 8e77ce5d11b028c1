import { backend } from '../backend';
import type { InspectionView } from '../types/InspectionView';
import type { PhotoView } from '../types/PhotoView';

/** What stores it that a photo stands where an older one stood: its caption where it has none, its place in the order,
    and both sides of its pairs. Marks stay with the picture that they were drawn on. */
export function inherit(
  inspection: string,
  photos: readonly PhotoView[],
  old: PhotoView,
  next: PhotoView,
): (() => Promise<InspectionView>)[] {
  const steps: (() => Promise<InspectionView>)[] = [];
  const caption = old.caption;
  if (caption && !next.caption) steps.push(() => backend.captionPhoto(inspection, next.id, caption));
  const before = old.before;
  if (before !== null && before !== next.id) steps.push(() => backend.pairPhoto(inspection, next.id, before));
  for (const after of photos.filter((photo) => photo.before === old.id && photo.id !== next.id)) {
    steps.push(() => backend.pairPhoto(inspection, after.id, next.id));
  }
  const others = photos.map(({ id }) => id).filter((id) => id !== next.id);
  const order = others.flatMap((id) => (id === old.id ? [next.id, id] : [id]));
  steps.push(() => backend.orderPhotos(inspection, order));
  return steps;
}
