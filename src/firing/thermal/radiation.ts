/** Stefan and Boltzmann's constant (CODATA 2018), for temperatures in thousands of kelvin: W/m²·kK⁴. */
export const SIGMA = 5.670374419e-8 * 1e12;

/** 0 °C in kelvin. */
export const KELVIN = 273.15;

/** A temperature in °C to the fourth power, in thousands of kelvin: what radiation goes by. */
export function fourthPower(tempC: number): number {
  const kilokelvin = (tempC + KELVIN) / 1000;
  return kilokelvin * kilokelvin * kilokelvin * kilokelvin;
}

/** The temperature in °C whose fourth power this is. */
export function celsiusOf(fourth: number): number {
  return 1000 * Math.sqrt(Math.sqrt(Math.max(0, fourth))) - KELVIN;
}
