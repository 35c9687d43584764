/** Three shelves with pots: the picture of the icon, in the colours of the look. */
export const ShelvesDrawing = () => (
  <svg width="176" height="176" viewBox="0 0 96 96" aria-hidden="true">
    <g fill="var(--ink-soft)">
      <rect x="12" y="29" width="72" height="5" rx="1.5" />
      <rect x="12" y="55" width="72" height="5" rx="1.5" />
      <rect x="12" y="81" width="72" height="5" rx="1.5" />
      <rect x="15" y="34" width="5" height="21" />
      <rect x="76" y="34" width="5" height="21" />
      <rect x="15" y="60" width="5" height="21" />
      <rect x="76" y="60" width="5" height="21" />
    </g>
    <path fill="var(--clay)" d="M26 29c-6-5-6-12 1-15v-3h9v3c7 3 7 10 1 15zM49 29c-4-3-6-7-6-12h30c0 5-2 9-6 12z" />
    <path fill="var(--celadon)" d="M29 55c-3-4-5-9-5-14h22c0 5-2 10-5 14z" />
    <path
      fill="var(--clay)"
      d="M53 55V40h13v15zM66 43h3.5a3 3 0 0 1 3 3v2a3 3 0 0 1-3 3H66v-2.2h3a1.3 1.3 0 0 0 1.3-1.3v-1a1.3 1.3 0 0 0-1.3-1.3h-3z"
    />
    <path fill="var(--ochre)" d="M25 81c-2-2-3-4-3-7h25c0 3-1 5-3 7z" />
    <path fill="var(--celadon)" d="M55 81c-4-5-4-10 0-14h2v-2.5h9V67h2c4 4 4 9 0 14z" />
  </svg>
);
