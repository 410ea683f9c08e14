import js from '@eslint/js'
import { defineConfig } from 'eslint/config'
import tseslint from 'typescript-eslint'

export default defineConfig(
  { ignores: ['dist', 'node_modules', '.astro', '.worked-notes', '**/*.mdx', '**/*.astro'] },
  js.configs.recommended,
  ...tseslint.configs.strictTypeChecked,
  ...tseslint.configs.stylisticTypeChecked,
  {
    languageOptions: {
      parserOptions: { projectService: { allowDefaultProject: ['*.js', '*.mjs'] } },
    },
    rules: {
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true }],
      '@typescript-eslint/switch-exhaustiveness-check': [
        'error',
        { considerDefaultExhaustiveForUnions: true },
      ],
      '@typescript-eslint/consistent-type-definitions': ['error', 'interface'],
      '@typescript-eslint/consistent-type-imports': 'error',
      '@typescript-eslint/no-confusing-void-expression': ['error', { ignoreArrowShorthand: true }],
      'no-console': 'error',
    },
  },
  {
    files: ['calculators/**'],
    rules: {
      'no-restricted-imports': [
        'error',
        { patterns: [{ regex: '^(node:|zod|astro)|/(ledger|mdx|live|site|cli|card)/' }] },
      ],
      'no-restricted-globals': [
        'error',
        'window',
        'document',
        'process',
        'Date',
        'fetch',
        'console',
      ],
    },
  },
  { files: ['src/cli/**', 'tests/bench/**', 'tests/mutants/**'], rules: { 'no-console': 'off' } },
  // A declaration file that imports at its top would declare nothing for others.
  { files: ['src/env.d.ts'], rules: { '@typescript-eslint/consistent-type-imports': 'off' } },
  {
    files: ['*.js', '*.mjs'],
    ...tseslint.configs.disableTypeChecked,
    languageOptions: {
      ...tseslint.configs.disableTypeChecked.languageOptions,
      globals: { process: 'readonly' },
    },
  },
)
