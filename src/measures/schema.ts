import { type TLiteral, Type } from "typebox";

// Field kinds shared by every file format, so that one length or angle is described in one way.
// Bounds are wide: they catch slips (a kiln 40 m across), not taste.

const LONGEST_MM = 5000;

/** A length above zero, in millimetres. */
export const LengthMm = (description: string) => Type.Number({ exclusiveMinimum: 0, maximum: LONGEST_MM, description });
/** A length of zero or more, in millimetres. */
export const ClearanceMm = (description: string) => Type.Number({ minimum: 0, maximum: LONGEST_MM, description });
/** A place along x, y or up, in millimetres. */
export const PlaceMm = (description: string) => Type.Number({ minimum: -LONGEST_MM, maximum: LONGEST_MM, description });
/** A direction in degrees, counter-clockwise seen from above, 0 along +x. */
export const AngleDeg = (description: string) => Type.Number({ minimum: -3600, maximum: 3600, description });
/** A name: not empty, short enough to print. */
export const Name = (description: string) => Type.String({ minLength: 1, maxLength: 120, description });
/** How many there are. */
export const Count = (description: string, minimum = 1) => Type.Integer({ minimum, maximum: 100000, description });
/** One of a few words. TypeBox's types follow a list that is spelled out; here one literal of all the words will do. */
export const OneOf = <const Word extends string>(words: readonly Word[], description: string) =>
  Type.Union(words.map((word) => Type.Literal(word)) as unknown as [TLiteral<Word>], { description });
