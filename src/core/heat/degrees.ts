/** Units of heat: the solver works in SI, what people read is in F, Btu, h and sq ft. */

export const cOfF = (f: number): number => (f - 32) / 1.8;
export const fOfC = (c: number): number => 1.8 * c + 32;
export const kOfC = (c: number): number => c + 273.15;
export const meters = (lengthIn: number): number => lengthIn * 0.0254;

/** Thermal resistance, h ft2 F/Btu, of one m2 K/W. */
export const R_IP = 5.678263;

/** Btu/(h ft2) of one W/m2. */
export const BTU_H_FT2 = 0.316998;

/** Btu/ft2 of one J/m2. */
export const BTU_FT2 = BTU_H_FT2 / 3600;
