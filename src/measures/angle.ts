/** Radians from degrees. Angles run counter-clockwise seen from above; 0 is +x. */
export const radians = (deg: number): number => (deg * Math.PI) / 180;
/** Degrees from radians. */
export const degrees = (rad: number): number => (rad * 180) / Math.PI;
/** The same direction from 0 up to, not including, 360 degrees. */
export const wrapDegrees = (deg: number): number => ((deg % 360) + 360) % 360;
