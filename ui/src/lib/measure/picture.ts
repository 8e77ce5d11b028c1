/** A photo's picture as it is drawn from. */

/** The one that was asked for last: the steps of measuring show one photo. */
let last: { address: string; picture: Promise<HTMLImageElement> } | null = null;

/** The picture at an address, read and ready to be drawn. */
export function picture(address: string): Promise<HTMLImageElement> {
  if (last?.address === address) return last.picture;
  const image = new Image();
  image.src = address;
  last = { address, picture: image.decode().then(() => image) };
  return last.picture;
}
