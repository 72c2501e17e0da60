import { fileURLToPath } from 'node:url';
import { defineConfig } from 'prisma/config';

// Generating, validating and formatting need no schema engine, but the tool fetches one unless it is told where one lies.
// Any existing file will do; migrations are made and applied by our own code (apps/api/src/database).
process.env['PRISMA_SCHEMA_ENGINE_BINARY'] ??= fileURLToPath(import.meta.url);
process.env['PRISMA_HIDE_UPDATE_MESSAGE'] ??= '1';
process.env['CHECKPOINT_DISABLE'] ??= '1';

export default defineConfig({ schema: 'prisma/schema.prisma' });
