import { FINE, type Finding, type Sign, UNTOLD } from "../fault.ts";
import { FAULT_THRESHOLDS } from "../fault-thresholds.ts";

const { jump: J, slipped: S } = FAULT_THRESHOLDS;
const JUMP_MESSAGE =
  "The reading changed faster than any kiln can. A loose plug or wire of the probe, or something switching nearby, does that. Look whether the controller shows the same, and at the probe's plug; readings that jump are left out of what is foretold.";
const SLIPPED_MESSAGE =
  "The reading dropped while the kiln was heating, and stayed down: the probe may have slipped out of its hole or been pushed back. The kiln may be hotter than it reads, and its controller may overfire it. Look from outside whether the probe sits as deep as it should, and through the spyhole at the cones. If it is not right, switch the kiln off yourself at the isolator before you touch anything. Your kiln's manual comes first.";

/** What a reading is: to be believed, not known yet, or not to be believed. */
export interface Trust {
  readonly believed: boolean;
  readonly jump: Sign;
  readonly slipped: Sign;
}
const BELIEVED: Trust = { believed: true, jump: FINE, slipped: FINE };

/** What the programme asks of the elements. */
export type Elements = "none asked" | "as asked" | "full power";

/** What elements at full power can add to what a bare probe sees at once, °C: much when cold, little when hot. */
function glow(tempC: number): number {
  const kelvin = tempC + 273.15;
  return (kelvin ** 4 + J.glowK4.value) ** 0.25 - kelvin;
}

interface Away {
  readonly fromMin: number;
  readonly fromC: number;
  /** The first reading that was away. */
  readonly firstMin: number;
  readonly firstC: number;
  /** Down while heating: a slipped probe, if it stays. */
  readonly maySlip: boolean;
}

interface Slipped {
  readonly byC: number;
  readonly sign: Sign;
}

/**
 * Tells changes that no kiln can make. Up, or down while the kiln is not heating: a jump, at once. Down while it heats:
 * a slipped probe once it has stayed down; a jump that is over where it came back.
 */
export class SuddenChange {
  private lastMin: number | null = null;
  private lastC = 0;
  private away: Away | null = null;
  private slipped: Slipped | null = null;

  look(minute: number, tempC: number, elements: Elements): Trust {
    if (this.lastMin === null) return this.believe(minute, tempC);
    if (this.away !== null) return this.lookAway(this.away, minute, tempC);
    const change = tempC - this.lastC;
    const spentMin = minute - this.lastMin;
    if (this.slipped !== null) return this.lookSlipped(this.slipped, change, minute, tempC);
    const glowC = elements === "full power" ? glow(this.lastC) : 0;
    const up = change > J.slackC.value + glowC + J.riseCPerMin.value * spentMin;
    const down = -change > S.slackC.value + S.fallCPerMin.value * spentMin;
    if (!up && !down) return this.believe(minute, tempC);
    const away = {
      fromMin: this.lastMin,
      fromC: this.lastC,
      firstMin: minute,
      firstC: tempC,
      maySlip: down && elements !== "none asked",
    };
    this.away = away;
    return { believed: false, jump: away.maySlip ? UNTOLD : { is: "wrong", ...jumped(away) }, slipped: UNTOLD };
  }

  private lookAway(away: Away, minute: number, tempC: number): Trust {
    const changeC = Math.abs(away.fromC - away.firstC);
    const slackC = J.slackC.value + J.riseCPerMin.value * (minute - away.fromMin);
    const back = Math.abs(tempC - away.fromC) <= Math.min(changeC * S.backShare.value, slackC);
    if (back) {
      this.away = null;
      this.note(minute, tempC);
      const jump: Sign = away.maySlip ? { is: "was wrong", ...jumped(away) } : FINE;
      return { believed: true, jump, slipped: FINE };
    }
    const stays = minute - away.firstMin >= (away.maySlip ? S.staysMin.value : J.staysMin.value) - 1e-9;
    if (!stays) {
      return { believed: false, jump: away.maySlip ? UNTOLD : { is: "wrong", ...jumped(away) }, slipped: UNTOLD };
    }
    this.away = null;
    // A kiln that lost its power falls on; one whose probe slipped is heated on.
    const fallsOn = tempC < away.firstC - S.fallsOnC.value;
    if (!away.maySlip || fallsOn) return this.believe(minute, tempC);
    const found = `${changeText(away)} while heating, and ${tempC.toFixed(0)} °C now`;
    this.slipped = {
      byC: changeC,
      sign: { is: "wrong", sinceMin: away.firstMin, found, message: SLIPPED_MESSAGE },
    };
    this.note(minute, tempC);
    return { believed: false, jump: FINE, slipped: this.slipped.sign };
  }

  /** Put back, it shows a good part of the drop again, faster than a loaded kiln climbs. */
  private lookSlipped(slipped: Slipped, changeC: number, minute: number, tempC: number): Trust {
    const climbC = S.backCPerMin.value * (minute - (this.lastMin as number));
    if (changeC >= slipped.byC * S.backShare.value && changeC > J.slackC.value / 2 + climbC) {
      this.slipped = null;
      return this.believe(minute, tempC);
    }
    this.note(minute, tempC);
    return { believed: false, jump: FINE, slipped: slipped.sign };
  }

  private believe(minute: number, tempC: number): Trust {
    this.note(minute, tempC);
    return BELIEVED;
  }

  private note(minute: number, tempC: number): void {
    this.lastMin = minute;
    this.lastC = tempC;
  }
}

const changeText = ({ fromMin, fromC, firstMin, firstC }: Away): string =>
  `from ${fromC.toFixed(0)} to ${firstC.toFixed(0)} °C in ${minutesText(firstMin - fromMin)}`;

const jumped = (away: Away): Finding => ({
  sinceMin: away.firstMin,
  found: changeText(away),
  message: JUMP_MESSAGE,
});

const minutesText = (minutes: number): string =>
  minutes < 1 ? `${Math.round(minutes * 60)} s` : `${minutes.toFixed(minutes < 10 ? 1 : 0)} min`;
