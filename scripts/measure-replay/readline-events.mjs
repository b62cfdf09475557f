// The same by its events, which is its fastest way.
import { createReadStream } from 'node:fs';
import { createInterface } from 'node:readline';

let lines = 0;
const reader = createInterface({ input: createReadStream(process.argv[2]), crlfDelay: Infinity });
reader.on('line', () => lines++);
reader.on('close', () => console.log(`${lines} lines`));
