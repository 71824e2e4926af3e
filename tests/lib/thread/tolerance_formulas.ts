/** The formulas behind the tolerance tables, to hold the typed tables against. All in mm or inches. */

/** Limits of a thread, in the unit of its standard. */
export interface Limits {
  readonly minorMin: number;
  readonly minorMax: number;
  readonly pitchMin: number;
  readonly pitchMax: number;
  readonly screwMajorMax: number;
  readonly screwMajorMin: number;
  readonly screwPitchMax: number;
  readonly screwPitchMin: number;
}

/** ISO 965-1: 6H and 6g; nominal and pitch in mm. Tables round to preferred numbers. */
export function isoLimits(nominal: number, pitch: number): Limits {
  const h = Math.sqrt(3) / 2 * pitch;
  const groups = [2.8, 5.6, 11.2, 22.4, 45];
  const upper = groups.find((g) => nominal <= g) ?? 45;
  const lower = groups[groups.indexOf(upper) - 1] ?? 1.4;
  const size = Math.sqrt(upper * lower);
  const pitch6 = 90 * pitch ** 0.4 * size ** 0.1 / 1000;
  const minor6 = (pitch >= 1 ? 230 * pitch ** 0.7 : 433 * pitch - 190 * pitch ** 1.22) / 1000;
  const major6 = (180 * pitch ** (2 / 3) - 3.15 / Math.sqrt(pitch)) / 1000;
  const allowance = (15 + 11 * pitch) / 1000;
  const pitchBasic = nominal - 0.75 * h;
  return {
    minorMin: nominal - 1.25 * h,
    minorMax: nominal - 1.25 * h + minor6,
    pitchMin: pitchBasic,
    pitchMax: pitchBasic + 1.32 * pitch6,
    screwMajorMax: nominal - allowance,
    screwMajorMin: nominal - allowance - major6,
    screwPitchMax: pitchBasic - allowance,
    screwPitchMin: pitchBasic - allowance - pitch6,
  };
}

/** ASME B1.1: 2B and 2A; major and pitch in inches, engagement by the series. */
export function unifiedLimits(major: number, pitch: number, engagement: number): Limits {
  const h = Math.sqrt(3) / 2 * pitch;
  const pitch2 = 0.0015 * Math.cbrt(major) + 0.0015 * Math.sqrt(engagement) +
    0.015 * pitch ** (2 / 3);
  const allowance = 0.3 * pitch2;
  const pitchBasic = major - 0.75 * h;
  const minorTolerance = Math.max(
    0.25 * pitch - 0.4 * pitch ** 2,
    major < 0.25 ? 0.05 * pitch ** (2 / 3) + 0.03 * pitch / major - 0.002 : 0,
  );
  return {
    minorMin: major - 1.25 * h,
    minorMax: major - 1.25 * h + minorTolerance,
    pitchMin: pitchBasic,
    pitchMax: pitchBasic + 1.3 * pitch2,
    screwMajorMax: major - allowance,
    screwMajorMin: major - allowance - 0.06 * pitch ** (2 / 3),
    screwPitchMax: pitchBasic - allowance,
    screwPitchMin: pitchBasic - allowance - pitch2,
  };
}
