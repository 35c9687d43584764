import type { Programme } from "../programme/programme.ts";
import type { ThermalKiln, ThermalLoad } from "../thermal/kiln-network.ts";
import type { EvidenceKind, FiringEvidence } from "./evidence.ts";
import type { Foretold, Unsure } from "./foretold.ts";
import type { ParameterName, ParameterValues, Priors } from "./parameters.ts";

export interface CalibrationRequest {
  /** The kiln and load as described. */
  readonly kiln: ThermalKiln;
  readonly load: ThermalLoad;
  /** The programme whose prediction matters: how sure it becomes is what evidence is weighed by. */
  readonly programme: Programme;
  /** One firing or several. */
  readonly evidence: readonly FiringEvidence[];
  /** Other priors than the usual (parameters.ts), as an earlier calibration leaves them. */
  readonly priors?: Priors;
  /** The probe's height above the floor, metres; the middle of the chamber where it is not given. */
  readonly probeHeightM?: number;
}

/** What was learned of one parameter. */
export interface LearnedParameter {
  readonly name: ParameterName;
  readonly label: string;
  readonly unit: "" | "°C";
  readonly value: number;
  /** One standard deviation: of ln(value) for a factor, nearly a share; in its unit for what is added. */
  readonly sigma: number;
  readonly priorSigma: number;
  /** sigma as a share of the prior's: 1 is nothing learned. */
  readonly left: number;
}

/** How far the replay was from one kind of evidence, root mean square, before and after. */
export interface Misfit {
  readonly kind: EvidenceKind;
  readonly unit: "°C" | "% of full power" | "kWh";
  readonly count: number;
  readonly before: number;
  readonly after: number;
}

/** What to measure next: how sure everything would be with this evidence besides. */
export interface NextEvidence {
  readonly kind: EvidenceKind;
  readonly how: string;
  /** Each parameter's sigma as a share of its prior's. */
  readonly left: Readonly<Record<ParameterName, number>>;
  readonly unsure: Unsure;
  /** By what share it would make the prediction surer, 0 to 1, all three targets taken together. */
  readonly surerBy: number;
}

export interface Calibration {
  readonly values: ParameterValues;
  readonly parameters: readonly LearnedParameter[];
  /** Between −1 and 1, in the order of `parameters`. */
  readonly correlations: readonly (readonly number[])[];
  readonly misfits: readonly Misfit[];
  /** The programme foretold with the kiln as described, and as calibrated, and how unsure each is. */
  readonly before: Foretold & { readonly unsure: Unsure };
  readonly after: Foretold & { readonly unsure: Unsure };
  /** Missing evidence, that which teaches most first. */
  readonly next: readonly NextEvidence[];
  /** What to know of it, in sentences. */
  readonly notes: readonly string[];
  /** Root mean square of all differences in sigmas: about 1 where the model fits as well as it should. */
  readonly fit: number;
  readonly settled: boolean;
}
