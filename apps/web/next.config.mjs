import { fileURLToPath } from 'node:url';

const repository = fileURLToPath(new URL('../../', import.meta.url));

const librarySources = {
  condition: { path: /(^|\/)libs\/[a-z]+\/src\// },
  loaders: [fileURLToPath(new URL('typescript-imports.cjs', import.meta.url))],
};

/** @type {import('next').NextConfig} */
export default {
  // Each build has a folder of its own, so that a running instance keeps the one it was started with.
  distDir: process.env.FLANGEWISE_WEB_BUILD ?? '.next',
  outputFileTracingRoot: repository,
  turbopack: {
    root: repository,
    rules: { '*.ts': librarySources, '*.tsx': librarySources },
  },
  transpilePackages: [
    '@flangewise/catalogue',
    '@flangewise/constraints',
    '@flangewise/documents',
    '@flangewise/engineering',
    '@flangewise/model',
    '@flangewise/quantities',
    '@flangewise/quotation',
    '@flangewise/solver',
  ],
  // Types are checked by the typecheck target, for the whole repository at once.
  typescript: { ignoreBuildErrors: true },
  poweredByHeader: false,
  headers: async () => [
    {
      source: '/:path*',
      headers: [
        { key: 'X-Content-Type-Options', value: 'nosniff' },
        { key: 'X-Frame-Options', value: 'DENY' },
        { key: 'Referrer-Policy', value: 'same-origin' },
      ],
    },
  ],
};
