import nx from '@nx/eslint-plugin';
import tseslint from 'typescript-eslint';

/** What each project may import; everything else is refused. */
const may = {
  quantities: [],
  solver: [],
  model: ['quantities'],
  engineering: ['model', 'quantities'],
  catalogue: ['model', 'engineering', 'quantities'],
  constraints: ['model', 'quantities', 'engineering', 'solver', 'catalogue'],
  quotation: ['model', 'catalogue'],
  documents: ['model', 'quantities'],
  web: ['model', 'quantities', 'constraints', 'quotation', 'documents', 'api'],
  api: ['quantities', 'model', 'engineering', 'solver', 'catalogue', 'constraints', 'quotation', 'documents'],
  cli: ['quantities', 'model', 'engineering', 'solver', 'catalogue', 'constraints', 'quotation', 'documents'],
};

const libraryRestrictions = {
  'no-restricted-globals': [
    'error',
    { name: 'process', message: 'A library does not read its environment; pass the value in.' },
  ],
  'no-restricted-imports': [
    'error',
    {
      patterns: [
        {
          group: ['@prisma/*', 'next', 'next/*', '@trpc/*', 'react-dom'],
          message: 'Libraries stay free of applications.',
        },
      ],
    },
  ],
  'no-restricted-syntax': [
    'error',
    {
      selector: "NewExpression[callee.name='Date'][arguments.length=0]",
      message: 'A library has no clock; pass the date in.',
    },
    {
      selector: "MemberExpression[object.name='Date'][property.name='now']",
      message: 'A library has no clock; pass the date in.',
    },
  ],
};

export default tseslint.config(
  {
    ignores: [
      '**/node_modules',
      '**/dist',
      '**/.next',
      '**/.nx',
      '**/.data',
      '**/coverage',
      'apps/api/src/generated',
      '**/next-env.d.ts',
      '**/*.config.{mjs,ts,js}',
    ],
  },
  ...tseslint.configs.strict,
  {
    files: ['**/*.ts', '**/*.tsx'],
    plugins: { '@nx': nx },
    languageOptions: { parserOptions: { projectService: true, tsconfigRootDir: import.meta.dirname } },
    rules: {
      '@nx/enforce-module-boundaries': [
        'error',
        {
          allow: [],
          depConstraints: Object.entries(may).map(([scope, allowed]) => ({
            sourceTag: `scope:${scope}`,
            onlyDependOnLibsWithTags: [`scope:${scope}`, ...allowed.map((s) => `scope:${s}`)],
          })),
        },
      ],
      '@typescript-eslint/no-explicit-any': 'error',
      '@typescript-eslint/no-floating-promises': 'error',
      '@typescript-eslint/switch-exhaustiveness-check': [
        'error',
        { considerDefaultExhaustiveForUnions: true },
      ],
      '@typescript-eslint/consistent-type-imports': 'error',
      '@typescript-eslint/max-params': ['error', { max: 3 }],
      'max-lines': ['error', { max: 400 }],
    },
  },
  {
    files: ['libs/*/src/**/*.ts', 'libs/*/src/**/*.tsx'],
    ignores: ['**/*.test.ts'],
    rules: libraryRestrictions,
  },
  {
    files: ['**/*.test.ts', '**/*.test.tsx'],
    rules: { '@typescript-eslint/no-non-null-assertion': 'off', 'max-lines': 'off' },
  },
);
