import type { ConeName } from "./cone.ts";

/** Where the values of the cone table were found. Many of the 15 °C/h column are from memory, and say so. */
export const CONE_SOURCES = {
  noneFound: "no value published",
  chart2016: 'Orton "Temperature Equivalents for Orton Pyrometric Cones (°C)", 2016; two independent copies agree',
  fromMemory: "Orton °C chart, from memory, not re-verified",
  mailingList2006: "Orton chart value 2165 °F quoted on a potters mailing list 7 Nov 2006",
  chartTwoCopies: "Orton chart; °F retail copy (108/270 °F/h) agrees within 0.6 °C",
  chartRetailCopy: "Orton chart; retail copy of cone-13 range 1331–1348 agrees",
} as const;
export type ConeSource = keyof typeof CONE_SOURCES;

/** One self-supporting cone: where its tip is level with the top of its base, when heated at a steady rate. */
export interface ConeRow {
  readonly cone: ConeName;
  /** End point in °C at 15 °C/h over the last 100 °C; null where none is published. */
  readonly at15C: number | null;
  /** End point in °C at 60 °C/h. */
  readonly at60C: number;
  /** End point in °C at 150 °C/h. */
  readonly at150C: number;
  readonly sourceOf15: ConeSource;
  readonly sourceOf60And150: ConeSource;
}

const row = (
  cone: ConeName,
  at15C: number | null,
  at60C: number,
  at150C: number,
  sourceOf15: ConeSource,
  sourceOf60And150: ConeSource,
): ConeRow => ({ cone, at15C, at60C, at150C, sourceOf15, sourceOf60And150 });

/**
 * The published table of self-supporting cones, coolest first. Columns: cone, end point in °C at 15, 60 and 150 °C/h
 * over the last 100 °C, and the source of each. An older table calls 1222 °C cone 6 at 150 °C/h; this one, the current
 * one, at 60 (golden/cones/README.md).
 */
export const CONE_TABLE: readonly ConeRow[] = [
  row("022", null, 586, 590, "noneFound", "chartTwoCopies"),
  row("021", null, 600, 617, "noneFound", "chartTwoCopies"),
  row("020", null, 626, 638, "noneFound", "chartTwoCopies"),
  row("019", 656, 678, 695, "chart2016", "chartTwoCopies"),
  row("018", 686, 715, 734, "chart2016", "chartTwoCopies"),
  row("017", 705, 738, 763, "chart2016", "chartTwoCopies"),
  row("016", 742, 772, 796, "chart2016", "chartTwoCopies"),
  row("015", 750, 791, 818, "chart2016", "chartTwoCopies"),
  row("014", 757, 807, 838, "chart2016", "chartTwoCopies"),
  row("013", 807, 837, 861, "chart2016", "chartTwoCopies"),
  row("012", 843, 861, 882, "chart2016", "chartTwoCopies"),
  row("011", 857, 875, 894, "chart2016", "chartTwoCopies"),
  row("010", 891, 903, 915, "chart2016", "chartTwoCopies"),
  row("09", 907, 920, 930, "chart2016", "chartTwoCopies"),
  row("08", 922, 942, 956, "chart2016", "chartTwoCopies"),
  row("07", 962, 976, 987, "fromMemory", "chartTwoCopies"),
  row("06", 981, 998, 1013, "fromMemory", "chartTwoCopies"),
  row("05.5", 1004, 1015, 1025, "fromMemory", "fromMemory"),
  row("05", 1021, 1031, 1044, "fromMemory", "chartTwoCopies"),
  row("04", 1046, 1063, 1077, "fromMemory", "chartTwoCopies"),
  row("03", 1071, 1086, 1104, "fromMemory", "chartTwoCopies"),
  row("02", 1078, 1102, 1122, "fromMemory", "chartTwoCopies"),
  row("01", 1093, 1119, 1138, "fromMemory", "chartTwoCopies"),
  row("1", 1109, 1137, 1154, "fromMemory", "chartTwoCopies"),
  row("2", 1112, 1142, 1164, "fromMemory", "chartTwoCopies"),
  row("3", 1115, 1152, 1170, "fromMemory", "chartTwoCopies"),
  row("4", 1141, 1162, 1183, "fromMemory", "chartTwoCopies"),
  row("5", 1159, 1186, 1207, "fromMemory", "chartTwoCopies"),
  row("5.5", 1167, 1203, 1225, "fromMemory", "fromMemory"),
  row("6", 1185, 1222, 1243, "mailingList2006", "chartTwoCopies"),
  row("7", 1201, 1239, 1257, "fromMemory", "chartTwoCopies"),
  row("8", 1211, 1249, 1271, "fromMemory", "chartTwoCopies"),
  row("9", 1224, 1260, 1280, "fromMemory", "chartTwoCopies"),
  row("10", 1251, 1285, 1305, "fromMemory", "chartTwoCopies"),
  row("11", 1272, 1294, 1315, "fromMemory", "fromMemory"),
  row("12", 1285, 1306, 1326, "fromMemory", "fromMemory"),
  row("13", 1310, 1331, 1348, "fromMemory", "chartRetailCopy"),
  row("14", 1351, 1365, 1384, "fromMemory", "fromMemory"),
];
