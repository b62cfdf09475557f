// Loaded before a program: when it ends, says on descriptor 3 what it cost since its process began.
import { writeSync } from 'node:fs';
import { isMainThread } from 'node:worker_threads';

// It is loaded before each thread of the program too; a process is told of once, with all its threads.
if (isMainThread)
  process.on('exit', () => {
    const { user, system } = process.cpuUsage();
    const took = performance.now() / 1000;
    const most = process.resourceUsage().maxRSS / 1024;
    writeSync(3, JSON.stringify({ took, cpu: (user + system) / 1e6, most }));
  });
