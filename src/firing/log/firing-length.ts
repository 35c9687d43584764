/** A firing lasts between these, hours. Outside them a unit of time is not what it was taken for. */
export const SHORTEST_H = 1;
export const LONGEST_H = 120;
