import js from '@eslint/js';
import ts from 'typescript-eslint';

/** A phone has a finger and nothing else: a check that clicks or types keys would prove less. */
const touchOnly = [
  {
    selector: 'CallExpression[callee.property.name=/^(click|dblclick|press|pressSequentially|hover|focus)$/]',
    message: 'Tap: the screens are for a finger.',
  },
  {
    selector: 'MemberExpression[property.name=/^(mouse|keyboard)$/]',
    message: 'Tap: the screens are for a finger.',
  },
];

export default ts.config(
  { ignores: ['node_modules', 'report', 'results'] },
  js.configs.recommended,
  ...ts.configs.strict,
  { languageOptions: { globals: { console: 'readonly', process: 'readonly' } } },
  {
    rules: {
      eqeqeq: 'error',
      'no-restricted-syntax': ['error', ...touchOnly],
      // Playwright names what a fixture needs by destructuring, even where it needs nothing.
      'no-empty-pattern': 'off',
    },
  },
);
