import type { Mark, Tone } from '../document.ts';

/** The shape beside a word, drawn so that no font has to know it. */
const shapes = {
  proved: <rect x="1" y="1" width="8" height="8" />,
  limited: (
    <g>
      <rect x="1" y="1" width="8" height="8" fill="none" stroke="currentColor" />
      <rect x="1" y="1" width="4" height="8" />
    </g>
  ),
  'not-tested': <circle cx="5" cy="5" r="3.6" fill="none" stroke="currentColor" stroke-width="1.2" />,
  inconclusive: (
    <path
      d="M2.6 3.4a2.5 2.5 0 1 1 3.6 2.3c-.9.4-1.2.8-1.2 1.5M5 8.6v1"
      fill="none"
      stroke="currentColor"
      stroke-width="1.5"
    />
  ),
  failed: <path d="M1.5 1.5l7 7M8.5 1.5l-7 7" stroke="currentColor" stroke-width="2.2" />,
  quiet: null,
} satisfies Record<Tone, unknown>;

export function MarkView({ mark }: { readonly mark: Mark }) {
  const shape = shapes[mark.tone];
  return (
    <span class={`mark ${mark.tone}`}>
      {shape === null ? null : (
        <svg viewBox="0 0 10 10" aria-hidden="true" fill="currentColor">
          {shape}
        </svg>
      )}
      {mark.word}
    </span>
  );
}
