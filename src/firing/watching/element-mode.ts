import type { Mode } from "../calibration/measured-firing.ts";
import type { ProgrammePlace } from "./programme-follower.ts";

/** Further from its programme than this, a controller surely gives all or nothing: as `fullPowerStretches` has it. */
export const SURELY_C = 20;
/** Once it does, it goes on until the kiln has nearly caught up. */
const STILL_C = 8;
/** A kiln that has fallen this far since its programme ended is off. */
const OFF_C = 8;
/** With all its elements on a kiln does not fall: what falls so far from its highest is not at full power. */
const FALLEN_C = 8;

/**
 * What the elements do, by where the firing is in its programme: held to the log unless it is sure that they give all
 * they have, or nothing.
 */
export class ElementMode {
  private mode: Mode = "follow";
  private segment = -1;
  private edgeC = 0;

  read(place: ProgrammePlace, tempC: number): Mode {
    if (place.segment !== this.segment) {
      this.segment = place.segment;
      this.mode = "follow";
      this.edgeC = tempC;
    }
    this.mode = this.modeOf(place, tempC);
    return this.mode;
  }

  private modeOf(place: ProgrammePlace, tempC: number): Mode {
    this.edgeC = Math.max(this.edgeC, tempC);
    const fallen = this.edgeC - tempC;
    if (place.doing === "over") return this.mode === "off" || fallen > OFF_C ? "off" : "follow";
    if (place.doing === "hold") return "follow";
    const all: Mode = place.rising ? "full" : "off";
    const surely = place.askedCPerHour === null || place.behindC > (this.mode === all ? STILL_C : SURELY_C);
    return surely && !(place.rising && fallen > FALLEN_C) ? all : "follow";
  }
}
