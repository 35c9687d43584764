/** A list with ticks. */
export const StepsIcon = () => (
  <svg
    width="26"
    height="26"
    viewBox="0 0 24 24"
    fill="none"
    stroke="currentColor"
    strokeWidth="1.8"
    strokeLinecap="round"
    strokeLinejoin="round"
    aria-hidden="true"
  >
    <path d="M3 6l1.6 1.8L7.5 4.5M3 12.5l1.6 1.8 2.9-3.3M3.5 19h3M11 6.5h10M11 12.8h10M11 19h10" />
  </svg>
);
