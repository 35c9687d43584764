import { formatLength } from "../../measures/length.ts";
import { formatTemperature } from "../../measures/temperature.ts";
import { useSettings } from "../studio/hooks.ts";

/** A length in her units. */
export function LengthText({ mm }: { readonly mm: number }) {
  const { lengthUnits } = useSettings();
  return <>{formatLength(mm, lengthUnits)}</>;
}

/** A temperature in her units. */
export function TemperatureText({ celsius }: { readonly celsius: number }) {
  const { temperatureUnits } = useSettings();
  return <>{formatTemperature(celsius, temperatureUnits)}</>;
}
