// Lets Node run the tests' TypeScript beside the build: what lies in src is taken from dist, the rest loses its types on the way in.
import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';

const src = new URL('../../src/', import.meta.url).href;
const dist = new URL('../../dist/', import.meta.url).href;

export async function resolve(specifier, context, next) {
  const found = await next(specifier, context);
  return found.url.startsWith(src)
    ? { ...found, url: found.url.replace(src, dist).replace(/\.tsx?$/, '.js'), format: 'module' }
    : found;
}

export async function load(url, context, next) {
  if (!url.endsWith('.ts')) return next(url, context);
  const { outputText } = ts.transpileModule(await readFile(fileURLToPath(url), 'utf8'), {
    compilerOptions: {
      target: ts.ScriptTarget.ES2023,
      module: ts.ModuleKind.ESNext,
      verbatimModuleSyntax: true,
    },
  });
  return { format: 'module', source: outputText, shortCircuit: true };
}
