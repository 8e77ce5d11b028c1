/** How long the address of a file stays good that is handed to the system, ms: a slow phone reads it late. */
const READ_BY = 60_000;

/** Gives a photo away, with the words that belong to it: to whatever the person shares with, else as a file. */
export async function give(jpeg: Blob, name: string, text: string): Promise<void> {
  const file = new File([jpeg], name, { type: 'image/jpeg' });
  if (navigator.canShare?.({ files: [file] })) {
    try {
      await navigator.share({ files: [file], text });
      return;
    } catch (thrown) {
      // Whoever thinks better of it has done nothing wrong; what the system refuses is kept as a file.
      if (thrown instanceof DOMException && thrown.name === 'AbortError') return;
    }
  }
  const link = document.createElement('a');
  link.href = URL.createObjectURL(file);
  link.download = file.name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), READ_BY);
}
