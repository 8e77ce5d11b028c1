import { backend } from './backend';
import { toBlob } from './backend/photoText';
import type { DocumentView } from './types/DocumentView';

/** Gives a document away, with the words that belong to it: to whatever the person shares with, else to a place that
    they choose; whether it went anywhere. Throws where it cannot be written there. */
export async function give({ base64, media_type, name }: DocumentView, text = ''): Promise<boolean> {
  const file = new File([toBlob(base64, media_type)], name, { type: media_type });
  if (navigator.canShare?.({ files: [file] })) {
    try {
      await navigator.share({ files: [file], text });
      return true;
    } catch (thrown) {
      // Whoever thinks better of it has done nothing wrong; what the system refuses is kept as a file.
      if (thrown instanceof DOMException && thrown.name === 'AbortError') return false;
    }
  }
  return backend.saveFile(name, base64);
}
