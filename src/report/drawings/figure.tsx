import type { ComponentChildren } from 'preact';

/** The sheet every drawing stands on: its own title and description, which a reader who cannot see it hears. */
export function Figure({
  id,
  width,
  height,
  fontSize,
  title,
  says,
  children,
}: {
  readonly id: string;
  readonly width: number;
  readonly height: number;
  readonly fontSize?: string;
  readonly title: string;
  readonly says: string;
  readonly children: ComponentChildren;
}) {
  return (
    <svg
      xmlns="http://www.w3.org/2000/svg"
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-labelledby={`${id}-t ${id}-d`}
      font-size={fontSize}
      fill="#000"
    >
      <title id={`${id}-t`}>{title}</title>
      <desc id={`${id}-d`}>{says}</desc>
      {children}
    </svg>
  );
}
