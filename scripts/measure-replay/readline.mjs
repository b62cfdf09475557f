// As Node's own documentation reads a file line by line.
import { createReadStream } from 'node:fs';
import { createInterface } from 'node:readline';

let lines = 0;
for await (const _line of createInterface({ input: createReadStream(process.argv[2]), crlfDelay: Infinity }))
  lines++;
console.log(`${lines} lines`);
