import nx from '@nx/eslint-plugin';
import reactHooks from 'eslint-plugin-react-hooks';
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

const refuseImports = (...patterns) => ({
  '@typescript-eslint/no-restricted-imports': ['error', { patterns }],
});

const applicationPackages = {
  group: ['@prisma/*', 'next', 'next/*', '@trpc/*', 'react-dom'],
  message: 'Libraries stay free of applications.',
};
const react = { group: ['react', 'react/*'], message: 'Only documents and the web draw with React.' };

const libraryRestrictions = {
  'no-restricted-globals': [
    'error',
    { name: 'process', message: 'A library does not read its environment; pass the value in.' },
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
          // The seed of the database is data that the start enters.
          allow: ['../../../../prisma/seed/**'],
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
      '@typescript-eslint/no-unused-vars': [
        'error',
        { argsIgnorePattern: '^_', varsIgnorePattern: '^_', ignoreRestSiblings: true },
      ],
      '@typescript-eslint/max-params': ['error', { max: 3 }],
      'max-lines': ['error', { max: 400 }],
    },
  },
  {
    files: ['libs/*/src/**/*.ts', 'libs/*/src/**/*.tsx'],
    ignores: ['**/*.test.ts'],
    rules: { ...libraryRestrictions, ...refuseImports(applicationPackages, react) },
  },
  {
    files: ['libs/documents/src/**/*.ts', 'libs/documents/src/**/*.tsx'],
    ignores: ['**/*.test.ts', '**/*.test.tsx'],
    rules: refuseImports(applicationPackages),
  },
  {
    files: ['apps/web/src/**/*.ts', 'apps/web/src/**/*.tsx'],
    rules: refuseImports(
      { group: ['@prisma/*', '@flangewise/api/*'], message: 'The web reaches the database through the API.' },
      {
        group: ['@flangewise/api'],
        allowTypeImports: true,
        message: 'The web shares one type with the API.',
      },
      { regex: '^@flangewise/documents$', message: 'Browsers draw with @flangewise/documents/drawings.' },
    ),
  },
  {
    files: ['**/*.tsx', 'apps/web/src/**/*.ts'],
    plugins: { 'react-hooks': reactHooks },
    rules: { 'react-hooks/rules-of-hooks': 'error', 'react-hooks/exhaustive-deps': 'error' },
  },
  {
    files: ['**/*.test.ts', '**/*.test.tsx'],
    rules: {
      '@typescript-eslint/no-non-null-assertion': 'off',
      'max-lines': 'off',
      '@typescript-eslint/max-params': 'off',
    },
  },
);
