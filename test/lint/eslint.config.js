import astro from 'eslint-plugin-astro';
import globals from 'globals';
import { defineConfig } from 'eslint/config';
import tseslint from 'typescript-eslint';
import rooms from './rooms.js';

export default defineConfig(
  {
    ignores: [
      '**/dist/',
      '**/.astro/',
      '**/.tankside/',
      '**/node_modules/',
      'src/model/generated/',
      'src/check/generated/',
      'test/broken/**/trials/',
    ],
  },
  ...tseslint.configs.strict,
  ...tseslint.configs.stylistic,
  ...astro.configs.recommended,
  {
    languageOptions: { globals: { ...globals.node, ...globals.browser } },
    plugins: { tankside: rooms },
    rules: {
      'tankside/import-table': 'error',
      'no-console': 'error',
      eqeqeq: 'error',
      'no-restricted-properties': [
        'error',
        {
          object: 'Math',
          property: 'random',
          message: 'Everything random is seeded; use src/statistics/seeded-random.ts.',
        },
      ],
      '@typescript-eslint/no-non-null-assertion': 'off',
    },
  },
  { files: ['src/commands/**', 'test/**'], rules: { 'no-console': 'off' } },
);
