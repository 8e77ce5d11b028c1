import { readdirSync } from 'node:fs';

import js from '@eslint/js';
import svelte from 'eslint-plugin-svelte';
import globals from 'globals';
import ts from 'typescript-eslint';

import svelteConfig from './svelte.config.js';

const shellOnly = {
  group: ['@tauri-apps/*'],
  message: 'Only lib/backend knows the shell.',
};

/** The folders of components that are about something. */
const DOMAINS = readdirSync(new URL('src/components', import.meta.url)).filter((name) => name !== 'shared');

/** A tier may use those below it: screens, then components/<domain>, then components/shared. */
const tier = (files, ...above) => ({
  files,
  rules: {
    'no-restricted-imports': [
      'error',
      {
        patterns: [
          shellOnly,
          ...above.map((one) => ({ group: [one], message: 'A tier never imports from one above it.' })),
        ],
      },
    ],
  },
});

export default ts.config(
  { ignores: ['dist', 'node_modules', 'src/lib/types'] },
  js.configs.recommended,
  ...ts.configs.strict,
  ...svelte.configs.recommended,
  { languageOptions: { globals: globals.browser } },
  {
    files: ['**/*.svelte', '**/*.svelte.ts'],
    languageOptions: { parserOptions: { parser: ts.parser, svelteConfig } },
  },
  {
    rules: {
      // Inline styles and injected markup would need a weaker content security policy.
      'svelte/no-inline-styles': 'error',
      'svelte/no-at-html-tags': 'error',
      'svelte/require-each-key': 'error',
      eqeqeq: 'error',
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_' }],
    },
  },
  tier(['src/**']),
  tier(['src/lib/**'], '**/components/**', '**/screens/**'),
  tier(['src/components/**'], '**/screens/**'),
  tier(['src/components/shared/**'], ...DOMAINS.map((name) => `../${name}/**`), '**/screens/**'),
  { files: ['src/lib/backend/**'], rules: { 'no-restricted-imports': 'off' } },
);
