/** Molar gas constant, J/(mol K): exact since the SI of 2019 (CODATA 2018). */
export const GAS_CONSTANT = 8.31446261815324;
