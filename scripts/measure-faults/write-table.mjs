// Has ngspice solve everything that can be asked about the table's machines and writes its answers down. Needs a build and ngspice.
import { writeFileSync } from 'node:fs';
import { register } from 'node:module';

register('./typescript-hooks.mjs', import.meta.url);
const world = '../../tests/diagnose/troubleshooting/world';
const { everyQuestion, tableFile, tableMachines, tableText } = await import(`${world}/table.ts`);
const { byNgspice } = await import(`${world}/solvers.ts`);

const questions = tableMachines().flatMap(everyQuestion);
const text = tableText(questions, byNgspice(questions));
writeFileSync(tableFile, text);
console.log(`${questions.length} looks, ${text.split('\n').length - 1} networks`);
