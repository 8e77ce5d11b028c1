/** The German words, fetched only where German is spoken. By path; those of the core with them. */
export const FILES: Record<string, string> = {
  ...import.meta.glob<string>('./de.*ftl', { query: '?raw', import: 'default', eager: true }),
  ...import.meta.glob<string>(
    '../../../../src-tauri/core/words/de/{answers,cautions,classes,questions,record,guards/gfci,guards/rcd}.ftl',
    { query: '?raw', import: 'default', eager: true },
  ),
};
