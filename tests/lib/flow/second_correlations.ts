/** Published friction formulas that the code does not use, to hold Colebrook's against. */

/** One formula: Darcy factor from Reynolds number and relative roughness. */
export type Correlation = (reynolds: number, roughness: number) => number;

/** S. W. Churchill, Chem. Eng. 84(24) (1977) 91-92; all regimes. */
export function churchill(reynolds: number, roughness: number): number {
  const a = (2.457 * Math.log(1 / ((7 / reynolds) ** 0.9 + 0.27 * roughness))) ** 16;
  const b = (37530 / reynolds) ** 16;
  return 8 * ((8 / reynolds) ** 12 + (a + b) ** -1.5) ** (1 / 12);
}

/** H. Blasius (1913); smooth pipes, Re 3e3 to 1e5. */
export function blasius(reynolds: number): number {
  return 0.3164 * reynolds ** -0.25;
}

/** S. E. Haaland, J. Fluids Eng. 105 (1983) 89-90. */
export function haaland(reynolds: number, roughness: number): number {
  return (-1.8 * Math.log10((roughness / 3.7) ** 1.11 + 6.9 / reynolds)) ** -2;
}

/** P. K. Swamee, A. K. Jain, J. Hydraul. Div. ASCE 102 (1976) 657-664. */
export function swameeJain(reynolds: number, roughness: number): number {
  return 0.25 / Math.log10(roughness / 3.7 + (6.97 / reynolds) ** 0.9) ** 2;
}

/** T. K. Serghides, Chem. Eng. 91(5) (1984) 63-64. */
export function serghides(reynolds: number, roughness: number): number {
  const a = -2 * Math.log10(roughness / 3.7 + 12 / reynolds);
  const b = -2 * Math.log10(roughness / 3.7 + 2.51 * a / reynolds);
  const c = -2 * Math.log10(roughness / 3.7 + 2.51 * b / reynolds);
  return (a - (b - a) ** 2 / (c - 2 * b + a)) ** -2;
}
