/** Writes every handbook page as Markdown into `dist/handbook`: `npm run -w @flangewise/engineering handbook`. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { handbookPages } from './handbook.js';
import { allReferenceCases } from './reference-cases.js';
import { calculations } from './registry.js';

const folder = join(import.meta.dirname, '..', 'dist', 'handbook');
mkdirSync(folder, { recursive: true });
const pages = handbookPages(calculations, allReferenceCases());
for (const [file, page] of pages) writeFileSync(join(folder, file), page);
