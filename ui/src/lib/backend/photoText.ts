/** A photo as base64 text: plain bytes do not pass to the core on every phone. */
export async function toText(photo: Blob): Promise<string> {
  const address = await new Promise<string>((resolve, reject) => {
    const reader = new FileReader();
    reader.onload = () => resolve(reader.result as string);
    reader.onerror = () => reject(reader.error ?? new Error('unreadable'));
    reader.readAsDataURL(photo);
  });
  return address.slice(address.indexOf(',') + 1);
}

/** What stands in the text that the core answers with. */
export function toBlob(text: string, type: string): Blob {
  return new Blob([Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0))], { type });
}

/** The photo in the text that the core answers with. */
export function toJpeg(text: string): Blob {
  return toBlob(text, 'image/jpeg');
}
