// The rules for the scripts of the page: the recommended ones, and the limits that apply to the rest of the code.
import js from '@eslint/js';
import globals from 'globals';

const scripts = {
  languageOptions: { ecmaVersion: 2024, sourceType: 'module' },
  rules: {
    eqeqeq: 'error',
    'max-len': ['error', { code: 140 }],
    'max-lines-per-function': ['error', { max: 80 }],
    'no-unused-vars': ['error', { args: 'all', argsIgnorePattern: '^_' }],
    'no-var': 'error',
    'object-shorthand': 'error',
    'prefer-const': 'error',
  },
};

export default [
  { ignores: ['**/bin/**', '**/obj/**', '**/node_modules/**'] },
  js.configs.recommended,
  scripts,
  { files: ['src/Sketch.Preview/**/*.js'], ignores: ['**/bundle.js'], languageOptions: { globals: globals.browser } },
  { files: ['src/Sketch.Editors/**/*.js'], languageOptions: { sourceType: 'commonjs', globals: globals.node } },
  { files: ['**/bundle.js', 'tests/**/*.js'], languageOptions: { globals: globals.node } },
];
