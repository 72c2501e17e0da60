/** Writes every handbook page as Markdown into `dist/handbook`: `npm run -w @flangewise/engineering handbook`. */
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { handbookPages } from './handbook.js';
import { allReferenceCases, allSamples } from './reference-cases.js';
import { calculations } from './registry.js';

const folder = join(import.meta.dirname, '..', 'dist', 'handbook');
// A page of a calculation that no longer exists must not stay.
rmSync(folder, { recursive: true, force: true });
mkdirSync(folder, { recursive: true });
const pages = handbookPages(calculations, allReferenceCases(), allSamples());
for (const [file, page] of pages) writeFileSync(join(folder, file), page);
console.log(`${String(pages.size)} pages in ${folder}`);
