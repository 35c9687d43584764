/** A figure by which a fault is told, and why it is what it is. */
interface Threshold {
  readonly value: number;
  readonly because: string;
}
const threshold = (value: number, because: string): Threshold => ({ value, because });

const MEASURED = "measured on simulated quiet firings (quiet-firings.test.ts)";
const PRACTICE = "common practice, no source";

/** Every figure by which faults are told. °C, minutes, °C a minute. */
export const FAULT_THRESHOLDS = {
  silence: {
    afterMin: threshold(
      10,
      `A kiln changes by 20 to 60 °C in ten minutes: more is not to be left unseen; ${PRACTICE}.`,
    ),
    timesUsual: threshold(3, "Readings that come seldom may miss two before it is silence: 15 min at one in five."),
    onceOffMin: threshold(60, `A kiln that is off only cools: an hour unseen does no harm; ${PRACTICE}.`),
    cooledC: threshold(60, "Once it is this cool a logger may be taken away."),
  },
  jump: {
    slackC: threshold(20, "Three times a noise of 3 °C, twice, and a spyhole opened."),
    riseCPerMin: threshold(25, `1500 °C/h: no studio kiln climbs so fast; ${PRACTICE}; ${MEASURED}.`),
    glowK4: threshold(
      1.2e11,
      `What elements at full power add to the radiation at once, in K⁴: 300 °C from cold, 15 °C at 1000; a third more than ${MEASURED}.`,
    ),
    staysMin: threshold(5, "A reading that keeps to its new level so long is taken as it is."),
  },
  slipped: {
    slackC: threshold(20, "Three times a noise of 3 °C, twice, and a spyhole opened."),
    fallCPerMin: threshold(12, `Twice what a small kiln loses at 1220 °C with its elements off; ${MEASURED}.`),
    fallsOnC: threshold(12, "Falling on by more than four times a noise of 3 °C, it is the kiln that cools."),
    staysMin: threshold(5, "A plug pulled or a passing fault of the wire is over by then."),
    backShare: threshold(0.5, "Less than half of the drop left is no slipped probe."),
    backCPerMin: threshold(8, "480 °C/h: faster back up than a loaded kiln climbs is the probe put back."),
  },
  dead: {
    lowestC: threshold(-30, "Colder than any studio: a broken wire or a wrong type of probe."),
    highestC: threshold(1400, "Type K is read to 1372 °C, no studio kiln goes beyond: an open probe reads full scale."),
    stuckMin: threshold(15, "At whole degrees and 30 °C/h a live probe has moved by seven in that time."),
    shouldMoveC: threshold(8, "Well above a noise of 3 °C and a resolution of 1."),
    movedShare: threshold(0.3, "A kiln at its limit slows down little by little; a probe that dies stops at once."),
    hotC: threshold(200, "Above this a kiln that is off loses over 15 °C in twenty minutes."),
    stuckOffMin: threshold(20, "Long enough to lose 15 °C at 200 °C."),
  },
  stalling: {
    behindC: threshold(15, "A small kiln on a hand-tuned controller strays by up to ten; five times a noise of 3 °C."),
    overMin: threshold(20, "Over this a noise of 3 °C makes a slope of 7 °C/h only."),
    shareOfAsked: threshold(0.4, "Slower than this the ramp takes more than twice as long as planned."),
    leastCPerHour: threshold(
      4,
      "Where as fast as the kiln can was asked: slower than this is standing still, as in `fire`.",
    ),
    staysMin: threshold(3, "Past the moment in which a programme may have ended by another clock than ours."),
    fallingC: threshold(12, "Four times a noise of 3 °C under the highest reading: heat is leaving, not coming."),
    fallingMin: threshold(5, "Longer than a spyhole is looked through."),
    coolingMin: threshold(
      12,
      "Where it is to cool or to be held on its way down, by our clock; a programme's end may be five minutes off.",
    ),
    goesOnShare: threshold(0.7, "Climbing so again, it is no longer stalling: well above where it began."),
    caughtUpC: threshold(8, "Near enough to its programme again."),
  },
  overshoot: {
    atHoldC: threshold(15, "Hand-tuned controllers go over by up to ten when cold; five times a noise of 3 °C."),
    onRampC: threshold(
      25,
      "A ramp is followed less closely than a hold, when cold above all; common practice, no source.",
    ),
    onceOffC: threshold(12, "Off, it should only fall: four times a noise of 3 °C."),
    forMin: threshold(
      3,
      "Longer than one reading's error, short beside what a welded relay does: 3 min are 10 to 25 °C.",
    ),
    endsShare: threshold(0.5, "Half way back: so that it does not end and begin again with every reading."),
    risenC: threshold(10, "On a ramp it has to run away from its programme, not only lie above it."),
  },
} as const;
