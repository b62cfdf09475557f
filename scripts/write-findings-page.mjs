// Writes docs/findings.md from the words the tool itself uses. Run it after a build.
import { writeFile } from 'node:fs/promises';
import { findingsPage } from '../dist/words/explain.js';

await writeFile(new URL('../docs/findings.md', import.meta.url), findingsPage());
