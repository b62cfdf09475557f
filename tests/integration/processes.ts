import { type ChildProcessWithoutNullStreams, spawn } from 'node:child_process';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';
import type { Event } from './person.ts';

const program = fileURLToPath(new URL('../../bin/tellwire.js', import.meta.url));

/** A running tellwire that speaks JSON lines. */
export class Running {
  readonly child: ChildProcessWithoutNullStreams;
  readonly events: Event[] = [];
  readonly closed: Promise<{
    readonly code: number | null;
    readonly signal: string | null;
    readonly errors: string;
  }>;
  private readonly listeners = new Set<(event: Event) => void>();

  constructor(args: readonly string[]) {
    this.child = spawn(process.execPath, [program, ...args]);
    this.child.stdin.on('error', () => {});
    let errors = '';
    this.child.stderr.setEncoding('utf8').on('data', (text: string) => {
      errors += text;
    });
    createInterface(this.child.stdout).on('line', (line) => this.take(line));
    this.closed = new Promise((resolve) => {
      this.child.on('close', (code, signal) => resolve({ code, signal, errors }));
    });
  }

  on(listener: (event: Event) => void): void {
    this.listeners.add(listener);
  }

  say(line: object): void {
    if (this.child.stdin.writable) this.child.stdin.write(`${JSON.stringify(line)}\n`);
  }

  /** The first event of a kind, which may have come already; rejects when the process ends without it. */
  first(kind: string): Promise<Event> {
    const known = this.events.find((event) => event.kind === kind);
    if (known) return Promise.resolve(known);
    return new Promise((resolve, reject) => {
      this.on((event) => event.kind === kind && resolve(event));
      void this.closed.then(({ code, errors }) =>
        reject(new Error(`ended with ${code} before "${kind}": ${errors}`)),
      );
    });
  }

  private take(line: string): void {
    const event = JSON.parse(line) as Event;
    this.events.push(event);
    for (const listener of this.listeners) listener(event);
  }
}

/** The bench served in a process of its own, and the port it says it serves on. */
export async function served(
  serve: string,
  faults: readonly string[] = [],
): Promise<{ readonly bench: Running; readonly port: string }> {
  const bench = new Running(['bench', '--serve', serve, ...faults.flatMap((fault) => ['--fault', fault])]);
  const { port } = (await bench.first('serving')) as Event & { readonly port?: string };
  if (port === undefined) throw new Error('the bench named no port');
  return { bench, port };
}

/** `check subject status evidence kinds`, the last of each check and subject, sorted. */
export function verdictsOf(events: readonly Event[]): readonly string[] {
  const last = new Map<string, string>();
  for (const event of events) {
    if (event.kind !== 'verdict') continue;
    const kinds = (event.findings ?? []).map((finding) => finding.kind).sort();
    last.set(`${event.check} ${event.subject}`, [event.status, event.evidence, ...kinds].join(' '));
  }
  return [...last].map(([subject, said]) => `${subject}: ${said}`).sort();
}
