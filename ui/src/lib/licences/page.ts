/** The page of licences, as `make licences` writes it. */

interface Package {
  name: string;
  /** Empty where it has none of its own. */
  version: string;
  kind: 'crate' | 'npm' | 'part';
}

/** The text of a licence, and what came with this very text. */
export interface LicenceText {
  packages: readonly Package[];
  text: string;
}

export interface Licence {
  id: string;
  name: string;
  texts: readonly LicenceText[];
}

interface LicencePage {
  /** What the app itself is under: either may be chosen. */
  own: readonly { id: string; name: string; text: string }[];
  licences: readonly Licence[];
}

/** Reads the page only when it is looked at: it is longer than all other words together. */
export async function loadLicences(): Promise<LicencePage> {
  return (await import('./licences.json')).default as LicencePage;
}

/** How many packages are under some licences: one that is under two is counted once. */
export function count(licences: readonly Licence[]): number {
  const packages = licences.flatMap(({ texts }) => texts.flatMap((text) => text.packages));
  return new Set(packages.map((one) => `${one.kind} ${named(one)}`)).size;
}

/** A package by its name and version. */
export function named({ name, version }: Package): string {
  return version === '' ? name : `${name} ${version}`;
}
