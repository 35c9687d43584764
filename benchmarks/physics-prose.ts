/** The words of docs/physics.md; its tables are put after the section of the same name. */
export const PHYSICS_PROSE = {
  opening: `# How good the figures are

Written by \`node benchmarks/physics-report.ts\`: do not edit it. Every number in the tables is computed when the report is made;
the words stand in \`benchmarks/physics-prose.ts\`, and a test holds the two together. A row that misses its target says so.

Whatever is foretold here is a help to judgement. The kiln's own manual, local codes and a licensed electrician come first.`,

  heatWork: `## Heat work

A cone's damage is W = ∫ A·exp(−E/RT) dt, T in kelvin, and the cone is down at W = 1. A and E are fitted to the published table
of each cone at 15, 60 and 150 °C/h. To give the table exactly, the exponential is evaluated at T + e(r): e is the
fit's own error, taken straight in ln r, r the mean rate over the last 100 °C, held within 15 to 150 °C/h. Bend:
tan(θ/2) = tan 4° · exp(2.66 W), derived, not fitted. Sources: \`golden/heat-work/README.md\`, \`golden/cones/README.md\`.`,

  heat: `## Heat in the kiln

The kiln is a stack of zones, one under the lowest shelf and one on each level. Walls, floor and lid, shelves, posts and ware are
columns: slabs with heat running through their thickness, ∂H/∂t = ∂/∂x(k(T) ∂T/∂x). Cells are finite volumes; the flow from one
node to the next is the difference of ∫k dT (Kirchhoff), divided by the distance; the heat H of a node holds drying, the clay's
chemical water and the turning of quartz. A zone is one node of radiation J without heat of its own:

    power + Σ over faces ε σ A (T⁴ − J) + σ A_open (J_above + J_beneath − 2J) − leak (T_zone − T_room) = 0

where A_open is the open share of the cross-section past a shelf. The outside loses heat through a film of 7 W/m²K and by
radiation. The controller holds the probe's zone on the programme as far as the elements' power goes.

Time goes by a two-stage implicit rule of second order (SDIRK2, γ = 1 − 1/√2) on heat itself, so that what flows in is what is held.
Newton's method at each stage: every column condensed to its two faces, the zones solved together. Steps follow the
difference from a rule of first order. Sources of the materials and of the checks: \`golden/heat-transfer/README.md\`.`,

  calibration: `## Learning a kiln from its logs

The walls' conductivity, the power, the leak, the load's mass, the probe's offset and the elements' tilt are fitted to a kiln's own
firings, with priors, and given with their uncertainty. Checked on kilns drawn by chance, hidden from the fit, their logs
disturbed as real ones are.`,

  limits: `## What it cannot do

- Each zone is of one temperature: the far side of a shelf, a tall piece's top and foot, the shadow of a neighbour are not told apart.
  Air carries no heat from zone to zone except by the leak; a fan or a down-draught vent is a number, not a flow.
- A face passes its ε as if its zone were black. Between few large surfaces the exact exchange differs (the handbook check of two
  plates gives each its share of the distance between them).
- A round or many-sided wall is reckoned flat, with the area of its middle. Corners, the lid's seam and spyholes are in the leak.
- Many of the materials' values are from memory, and bricks of one class differ by half. How far off the energy may be without
  calibration the two metered firings above show; they cannot tell a wall from a load.
- Properties are carried on beyond their data, and whoever asks is told so; melting, bloating and a glaze's own heats are left out.
- Programmes and coolings of more than a week are broken off, with a word about it.
- Cones 022 to 020 borrow their energy; rates below 15 °C/h and long holds far below a cone's range are outside the table.`,
} as const;
