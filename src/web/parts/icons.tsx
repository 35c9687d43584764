import type { ReactNode } from "react";

// Our own few line drawings, on a field of 24 by 24, drawn with one pen.

export interface IconProps {
  readonly size?: number | undefined;
}

const drawing =
  (lines: ReactNode) =>
  ({ size = 24 }: IconProps) => (
    <svg
      width={size}
      height={size}
      viewBox="0 0 24 24"
      fill="none"
      stroke="currentColor"
      strokeWidth="1.8"
      strokeLinecap="round"
      strokeLinejoin="round"
      aria-hidden="true"
      focusable="false"
    >
      {lines}
    </svg>
  );

/** A drawing of one line, for a screen's own icons too. */
export const path = (d: string) => drawing(<path d={d} />);

/** Pots waiting on a ware board. */
export const WaitingIcon = path(
  "M2 19.5h20M5 19.5c-2.3-2.4-2.3-6.8.2-9.5h4.3c2.5 2.7 2.5 7.1.2 9.5M5.5 10V7.2h3.8V10M14.7 19.5c-1.3-1.5-2-3.8-2.1-6.5h8.9c-.1 2.7-.8 5-2.1 6.5",
);
/** Two levels between posts, something on each. */
export const LoadIcon = path(
  "M3 20.5h18M3 12h18M5 12v8.5M19 12v8.5M8.5 20.5v-4.5h3v4.5M14 20.5v-3h2.5v3M8 12c-1-1.5-1-3 0-4.5h2.5c1 1.5 1 3 0 4.5M13.5 12V9h3.5v3",
);
/** A round kiln with its lid a little up. */
export const KilnIcon = path(
  "M4.5 9.5v9.5c0 1.4 3.4 2.5 7.5 2.5s7.5-1.1 7.5-2.5V9.5M4.5 9.5c0 1.4 3.4 2.5 7.5 2.5s7.5-1.1 7.5-2.5M4 6.5l15.5-3.5M4 6.5l.5 3M8 16h.01",
);
/** Three witness cones on their plaque, the first one down. */
export const ConesIcon = path(
  "M2.5 20.5h19M4 18.5c.2-5 2-8.3 5.8-8.3-2.1 2-2.6 4.7-2.6 8.3M10.5 18.5l2.2-12.5 2.2 12.5M17 18.5l1.7-14 1.8 14M3 18.5h18",
);
/** A bench. */
export const StudioIcon = path(
  "M3 10h18M5 10v10M19 10v10M5 15.5h14M8 10c-.8-2-.8-4 .3-6h3.4c1.1 2 1.1 4 .3 6M15.5 10V6.5M17.5 10V5.5",
);
/** A jar and a brush. */
export const MaterialsIcon = path(
  "M4 9h9v9.5a2 2 0 0 1-2 2H6a2 2 0 0 1-2-2zM3.5 6h10v3h-10zM17.5 3v9M16 12h3l-.4 5.5c-.1 1.2-1 3-1.1 3s-1-1.8-1.1-3z",
);
export const AddIcon = path("M12 5v14M5 12h14");
export const RemoveIcon = path("M5 12h14");
export const CloseIcon = path("M6 6l12 12M18 6L6 18");
export const UndoIcon = path("M4 9h10.5a5.5 5.5 0 0 1 0 11H9M8 4.5L3.5 9 8 13.5");
export const RedoIcon = path("M20 9H9.5a5.5 5.5 0 0 0 0 11H15M16 4.5l4.5 4.5-4.5 4.5");
export const SearchIcon = path("M10.5 17a6.5 6.5 0 1 0 0-13 6.5 6.5 0 0 0 0 13zM15.5 15.5L21 21");
export const MoreIcon = path(
  "M4.2 12a1.2 1.2 0 1 0 2.4 0a1.2 1.2 0 1 0-2.4 0M10.8 12a1.2 1.2 0 1 0 2.4 0a1.2 1.2 0 1 0-2.4 0M17.4 12a1.2 1.2 0 1 0 2.4 0a1.2 1.2 0 1 0-2.4 0",
);
export const EditIcon = path("M4 20l1-4.5L16 4.5l3.5 3.5L8.5 19zM13.5 7l3.5 3.5");
export const CopyIcon = path("M8.5 8.5H20V20H8.5zM15.5 8.5V4H4v11.5h4.5");
export const BinIcon = path("M4.5 7h15M9 7V4h6v3M6.5 7l1 13.5h9l1-13.5M10.5 11v6M13.5 11v6");
export const PhotoIcon = path("M3.5 7.5h4l1.5-2.5h6l1.5 2.5h4v12h-17zM12 16.5a3.5 3.5 0 1 0 0-7 3.5 3.5 0 0 0 0 7z");
export const PrintIcon = path("M7 9V3.5h10V9M7 17H4V9h16v8h-3M7 14h10v6.5H7z");
export const TurnIcon = path("M19.5 12a7.5 7.5 0 1 1-2.6-5.7M19.5 3v4h-4");
export const PinIcon = path("M9 3.5h6l-1 6 3 3.5H7l3-3.5zM12 13v7.5");
export const UpIcon = path("M12 19.5V5M6 11l6-6 6 6");
export const DownIcon = path("M12 4.5V19M6 13l6 6 6-6");
export const BackIcon = path("M19.5 12H5M11 6l-6 6 6 6");
export const OnIcon = path("M4.5 12H19M13 6l6 6-6 6");
export const FilterIcon = path("M3.5 5.5h17M6.5 12h11M10 18.5h4");
export const DoneIcon = path("M4.5 12.5l5 5.5L19.5 6");
/** Mind this. */
export const MindIcon = path("M12 3.5L22 20.5H2zM12 10v5M12 17.8h.01");
/** It does not go. */
export const NoIcon = path("M12 21a9 9 0 1 0 0-18 9 9 0 0 0 0 18zM5.8 5.8l12.4 12.4");
export const AwayIcon = path("M3 9a13.5 13.5 0 0 1 18 0M6.5 13a8.5 8.5 0 0 1 11 0M12 18h.01M3.5 3.5l17 17");
export const SaveIcon = path("M12 3.5V15M7 10.5l5 4.5 5-4.5M4 16v4.5h16V16");
export const OpenFileIcon = path("M12 15V3.5M7 8l5-4.5L17 8M4 16v4.5h16V16");
export const KeyboardIcon = path("M2.5 6.5h19v11h-19zM6 10h.01M10 10h.01M14 10h.01M18 10h.01M7.5 14h9");
export const InSpaceIcon = path("M12 3l8 4.5v9L12 21l-8-4.5v-9zM12 12l8-4.5M12 12v9M12 12L4 7.5");
export const PlayIcon = path("M7 4.5v15l12-7.5z");
export const StopIcon = path("M6.5 6.5h11v11h-11z");
