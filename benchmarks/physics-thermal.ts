// The heat-transfer half of docs/physics.md: every claim of it, what was aimed at and what is found, computed anew.
// Run: node benchmarks/physics-thermal.ts

import { readFileSync } from "node:fs";
import { join } from "node:path";
import { stepHalving } from "../golden/heat-transfer/convergence.ts";
import { handbookCases } from "../golden/heat-transfer/handbook-cases.ts";
import { coolingHours, factorNeeded, METERED, meteredKWh, referenceFiring } from "../golden/heat-transfer/metered.ts";
import { wallNodes } from "../golden/heat-transfer/wall-nodes.ts";
import { fire } from "../src/firing/thermal/fire.ts";
import { kilnNetwork } from "../src/firing/thermal/kiln-network.ts";
import { CONE_6_PROGRAMME, evenLoad, referenceKiln } from "../src/firing/thermal/testing/reference-kiln.ts";
import type { PhysicsCheck } from "./physics-heat-work.ts";
import { thermalTiming } from "./thermal.ts";

/** What each handbook case is, and where it stands. */
function handbookNames(): Map<string, string> {
  const file = JSON.parse(readFileSync(join(import.meta.dirname, "../golden/heat-transfer/cases.json"), "utf8")) as {
    cases: { id: string; source: string; what: string }[];
  };
  return new Map(file.cases.map(({ id, source, what }) => [id, `${what} (${source})`]));
}

function handbookChecks(): PhysicsCheck[] {
  const names = handbookNames();
  return handbookCases().map(({ id, exact, found, unit, error, errorUnit, most }) => ({
    check: `${names.get(id)}: ${exact.toPrecision(6)} ${unit} exactly`,
    target: `≤ ${most} ${errorUnit}`,
    found: `${found.toPrecision(6)} ${unit}, worst error ${error.toExponential(0)} ${errorUnit}`,
    met: error <= most,
  }));
}

function numericalChecks(): PhysicsCheck[] {
  const [, coarse, middle, fine] = stepHalving(4);
  const orders = [coarse?.order?.cooling, middle?.order?.heating, middle?.order?.cooling, fine?.order?.heating].map(
    Number,
  );
  const residuals = [false, true].flatMap((green) =>
    [0, 60, 300].map((stepS) => {
      const kiln = referenceKiln();
      const network = kilnNetwork(kiln, evenLoad(3, kiln.depthM, 12, { green }));
      return fire(network, CONE_6_PROGRAMME, {
        probeZone: network.zoneAt(kiln.depthM / 2),
        probeOffsetC: 0,
        powerW: kiln.powerW,
        startC: kiln.roomC,
        coolToC: 95,
        ...(stepS === 0 ? {} : { fixedStepS: stepS }),
      }).energyResidual;
    }),
  );
  const [nodes] = wallNodes([15]);
  return [
    {
      check: "order of convergence of a whole firing, heating and cooling",
      target: "2.0 ± 0.1",
      found: orders.map((order) => order.toFixed(2)).join(", "),
      met: orders.every((order) => Math.abs(order - 2) <= 0.1),
    },
    {
      check: "error of a whole firing at steps of 60 s",
      target: "none set (a prototype: 0.0015 K)",
      found: `${(middle?.heatingK ?? 0).toFixed(4)} K heating, ${(middle?.coolingK ?? 0).toFixed(4)} K cooling`,
      met: true,
    },
    {
      check: "heat balance of whole firings, glaze and bisque, three lengths of step",
      target: "≤ 1e-10 of all given",
      found: `worst ${Math.max(...residuals).toExponential(0)}`,
      met: Math.max(...residuals) <= 1e-10,
    },
    {
      check: "fifteen nodes through a wall against 241",
      target: "≤ 0.1 K (a prototype: 0.075)",
      found: `${nodes?.heatingK.toFixed(2)} K heating, ${nodes?.coolingK.toFixed(2)} K after shut-off`,
      met: Math.max(nodes?.heatingK ?? 1, nodes?.coolingK ?? 1) <= 0.1,
    },
  ];
}

function firingChecks(): PhysicsCheck[] {
  const firing = referenceFiring();
  const [hours, cooling] = [firing.shutOffMin / 60, coolingHours(firing)];
  return [
    {
      check: "57 L, 64 mm brick, 5.5 kW, 12 kg, 80/220/60 °C/h to cone 6",
      target: "7.5–9 h, 25–35 kWh, 10–15 h to 95 °C",
      found: `${hours.toFixed(1)} h, ${firing.kWh.toFixed(1)} kWh, ${cooling.toFixed(1)} h`,
      met: hours >= 7.5 && hours <= 9 && firing.kWh >= 25 && firing.kWh <= 35 && cooling >= 10 && cooling <= 15,
    },
    ...METERED.map((metered): PhysicsCheck => {
      const loads = ["18 kg in all", "18 kg of ware, shelves besides"] as const;
      const [low, high] = loads.map((load) => meteredKWh(metered, load, 1)) as [number, number];
      const factors = loads.map((load) => factorNeeded(metered, load).toFixed(2)).join(" or ");
      return {
        check: `metered 74 L kiln, 76 mm brick, ${metered.name}; its load is not known: 18 kg with shelves in it or besides`,
        target: `${metered.kWh.join("–")} kWh between the two`,
        found: `${low.toFixed(1)} and ${high.toFixed(1)} kWh; walls times ${factors} would give the middle`,
        met: low <= metered.kWh[1] && high >= metered.kWh[0],
      };
    }),
  ];
}

function speedChecks(): PhysicsCheck[] {
  const timing = thermalTiming();
  const told = `${timing.odexMs.toFixed(0)} ms in odex, ${timing.timesFaster.toFixed(0)} times as long`;
  return [
    {
      check: `a firing of 24 h, ${timing.levels} levels, ${timing.nodes} nodes, steps that follow the error: processor time`,
      target: "≤ 20 ms",
      found: `${timing.adaptiveMs.toFixed(1)} ms, off by ${timing.late.adaptive.levelsK.toFixed(3)} K at shut-off; ${told}`,
      met: timing.adaptiveMs <= 20,
    },
    {
      check: "the same at steps of 60 s: processor time",
      target: "≤ 20 ms",
      found: `${timing.fixedMs.toFixed(1)} ms, off by ${timing.late.fixed.levelsK.toFixed(4)} K`,
      met: timing.fixedMs <= 20,
    },
    {
      check: "levels after four hours against odex, the equations written a second time",
      target: "none set",
      found: `${timing.early.odex.levelsK.toFixed(3)} K, ${timing.early.odex.kWh.toFixed(4)} kWh apart`,
      met: true,
    },
  ];
}

/** Every row of the heat-transfer half of the validation report. */
export function thermalReport(): PhysicsCheck[] {
  return [...handbookChecks(), ...numericalChecks(), ...firingChecks(), ...speedChecks()];
}

if (process.argv[1] === import.meta.filename) {
  for (const { check, target, found, met } of thermalReport()) {
    console.log(`${met ? "met   " : "missed"}  ${check}: ${found} (target ${target})`);
  }
}
