/** How people write units, and what mathjs calls them. */

/**
 * A unit as typed and the same in mathjs's units, several multiplied. Other
 * spellings than these are tried in mathjs as they stand.
 */
const EXACT: Readonly<Record<string, string>> = {
  // length
  m: "m",
  mm: "mm",
  cm: "cm",
  dm: "dm",
  km: "km",
  um: "um",
  "μm": "um",
  micron: "um",
  in: "in",
  '"': "in",
  inch: "in",
  inches: "in",
  ft: "ft",
  "'": "ft",
  foot: "ft",
  feet: "ft",
  thou: "mil",
  mil: "mil",
  yd: "yd",
  metre: "m",
  meter: "m",
  millimetre: "mm",
  millimeter: "mm",
  centimetre: "cm",
  centimeter: "cm",
  // area and volume
  sqin: "in^2",
  sqft: "ft^2",
  sqmm: "mm^2",
  sqcm: "cm^2",
  cuin: "in^3",
  cuft: "ft^3",
  ci: "in^3",
  cid: "in^3",
  cc: "cm^3",
  ccm: "cm^3",
  L: "L",
  dL: "dL",
  cL: "cL",
  mL: "mL",
  uL: "uL",
  "μL": "uL",
  litre: "L",
  liter: "L",
  millilitre: "mL",
  milliliter: "mL",
  gal: "gal",
  gallon: "gal",
  usgal: "gal",
  usg: "gal",
  impgal: "impgal",
  impgallon: "impgal",
  quart: "quart",
  qt: "quart",
  pint: "pint",
  floz: "floz",
  // time and rotation
  s: "s",
  sec: "s",
  second: "s",
  ms: "ms",
  msec: "ms",
  millisecond: "ms",
  us: "us",
  "μs": "us",
  ns: "ns",
  min: "min",
  minute: "min",
  h: "h",
  hr: "h",
  hour: "h",
  day: "day",
  week: "week",
  Hz: "s^-1",
  rpm: "min^-1",
  rps: "s^-1",
  upm: "min^-1",
  // mass
  kg: "kg",
  g: "g",
  mg: "mg",
  ug: "ug",
  "μg": "ug",
  gram: "g",
  kilogram: "kg",
  lb: "lb",
  lbm: "lb",
  pound: "lb",
  oz: "oz",
  ounce: "oz",
  // flow, written together
  gph: "gal h^-1",
  gpm: "gal min^-1",
  lph: "L h^-1",
  lpm: "L min^-1",
  slpm: "L min^-1",
  ccpm: "cm^3 min^-1",
  pph: "lb h^-1",
  cfm: "ft^3 min^-1",
  // force, pressure, torque
  N: "N",
  kN: "kN",
  lbf: "lbf",
  kgf: "kgf",
  kp: "kgf",
  Pa: "Pa",
  hPa: "hPa",
  kPa: "kPa",
  MPa: "MPa",
  mPa: "mPa",
  GPa: "GPa",
  bar: "bar",
  mbar: "mbar",
  psi: "psi",
  atm: "atm",
  inHg: "inHg",
  mmHg: "mmHg",
  torr: "mmHg",
  mmAq: "mmAq",
  cmAq: "cmAq",
  inAq: "inAq",
  Nm: "N m",
  Ncm: "N cm",
  kgm: "kgf m",
  lbft: "lbf ft",
  ftlb: "lbf ft",
  lbfft: "lbf ft",
  ftlbf: "lbf ft",
  lbin: "lbf in",
  inlb: "lbf in",
  lbfin: "lbf in",
  inlbf: "lbf in",
  // power and energy
  W: "W",
  kW: "kW",
  MW: "MW",
  mW: "mW",
  watt: "W",
  kilowatt: "kW",
  hp: "hp",
  bhp: "hp",
  whp: "hp",
  horsepower: "hp",
  PS: "metrichp",
  CV: "metrichp",
  ch: "metrichp",
  pk: "metrichp",
  metrichp: "metrichp",
  J: "J",
  kJ: "kJ",
  MJ: "MJ",
  mJ: "mJ",
  GJ: "GJ",
  Wh: "W h",
  kWh: "kW h",
  kWhr: "kW h",
  hph: "hp h",
  hphr: "hp h",
  bhph: "hp h",
  bhphr: "hp h",
  PSh: "metrichp h",
  Btu: "BTU",
  kcal: "kcal",
  // temperature
  K: "K",
  kelvin: "K",
  degC: "degC",
  celsius: "degC",
  centigrade: "degC",
  degF: "degF",
  fahrenheit: "degF",
  degR: "degR",
  rankine: "degR",
  degK: "K",
  // electricity
  V: "V",
  mV: "mV",
  kV: "kV",
  volt: "V",
  A: "A",
  mA: "mA",
  amp: "A",
  ampere: "A",
  ohm: "ohm",
  "Ω": "ohm",
  kohm: "kohm",
  "kΩ": "kohm",
  Mohm: "Mohm",
  "MΩ": "Mohm",
  mohm: "mohm",
  "mΩ": "mohm",
  // angle
  "°": "deg",
  deg: "deg",
  degree: "deg",
  rad: "rad",
  // viscosity
  cP: "cP",
  poise: "poise",
};

/** Words that are plain numbers. */
export const SHARES: ReadonlyMap<string, number> = new Map([
  ["%", 0.01],
  ["percent", 0.01],
  ["pct", 0.01],
  ["‰", 0.001],
  ["ppm", 1e-6],
]);

/** By spelling in small letters; several where only capitals tell them apart. */
const SMALL: ReadonlyMap<string, readonly string[]> = smallLetters();

/** What a spelling means. */
export type Spelled =
  | { readonly found: "unit"; readonly units: string }
  /** Capitals decide between these spellings. */
  | { readonly found: "capitals"; readonly spellings: readonly string[] }
  | { readonly found: "none" };

/** Finds a spelling: exactly, else without regard to capitals, else without the `s` of a plural. */
export function spelled(word: string): Spelled {
  const exact = Object.hasOwn(EXACT, word) ? EXACT[word] : undefined;
  if (exact !== undefined) return { found: "unit", units: exact };
  const small = word.toLowerCase();
  const spellings = SMALL.get(small) ??
    (small.length > 2 && small.endsWith("s") ? SMALL.get(small.slice(0, -1)) : undefined);
  if (spellings === undefined) return { found: "none" };
  const [first = ""] = spellings;
  const units = EXACT[first] ?? "";
  const agree = spellings.every((spelling) => EXACT[spelling] === units);
  return agree ? { found: "unit", units } : { found: "capitals", spellings };
}

function smallLetters(): Map<string, string[]> {
  const small = new Map<string, string[]>();
  for (const spelling of Object.keys(EXACT)) {
    const key = spelling.toLowerCase();
    small.set(key, [...small.get(key) ?? [], spelling]);
  }
  return small;
}
