/** Checks of screws: how strong, how tight, what strips. */
import { assert, assertAlmostEquals, assertEquals } from "@std/assert";
import { MATERIALS } from "@/lib/strength/mod.ts";
import {
  ENGAGEMENT_RULES,
  engagementInWeaker,
  engagementToBreak,
  FASTENING_NOTES,
  headBearingLoad,
  headBearingStress,
  M6_STUD_IN_ALUMINIUM_m,
  mostPreload,
  PRELOAD_SHARE,
  preloadFromTorque,
  proofLoad,
  proofShare,
  SCREW_CLASSES,
  type ScrewClass,
  screwHead,
  screwShearArea,
  stressArea,
  strippingLoad,
  tappedShearArea,
  threadForFactor,
  threadStrengthRatio,
  torqueBySplit,
  torqueForPreload,
} from "@/lib/thread/mod.ts";
import { assertClose } from "../../helpers/assert_close.ts";
import type { Check } from "../../helpers/checks.ts";
import { find, INCH, MM, STANDARD } from "./shorthand.ts";

const MPA = 1e6;
const KSI = 6894.757293168e3;
const LBF = 4.4482216;

/** Classes of the printed columns, then each thread with its loads [N]. */
const CLASSES = ["4.8", "5.8", "8.8", "10.9", "12.9"] as const;
const PROOF_LOADS = [
  ["M3x0.5", [1560, 1910, 2920, 4180, 4880]],
  ["M4x0.7", [2720, 3340, 5100, 7290, 8520]],
  ["M5x0.8", [4400, 5400, 8230, 11_800, 13_800]],
  ["M6x1", [6230, 7640, 11_600, 16_700, 19_500]],
  ["M8x1.25", [11_400, 13_900, 21_200, 30_400, 35_500]],
  ["M10x1.5", [18_000, 22_000, 33_700, 48_100, 56_300]],
  ["M12x1.75", [26_100, 32_000, 48_900, 70_000, 81_800]],
] as const;
const BREAKING_LOADS = [
  ["M5x0.8", [5960, 7380, 11_350, 14_800, 17_300]],
  ["M6x1", [8440, 10_400, 16_100, 20_900, 24_500]],
  ["M8x1.25", [15_400, 19_000, 29_200, 38_100, 44_600]],
  ["M12x1.75", [35_400, 43_800, 67_400, 87_700, 103_000]],
] as const;

const areaOf = (thread: string): number => {
  const { nominal_m: nominal, pitch_m: pitch } = find(thread);
  return stressArea({ nominal, pitch });
};

/** Friction; preload [kN]; torque [N m] of class 8.8, hexagon heads, holes of medium fit. */
const PRINTED_TORQUES = [
  ["M8x1", 0.10, 20.7, 22.8],
  ["M8x1", 0.12, 20.2, 26.1],
  ["M8x1", 0.14, 19.7, 29.2],
  ["M10x1.25", 0.10, 32.4, 44],
  ["M10x1.25", 0.12, 31.6, 51],
  ["M10x1.25", 0.14, 30.8, 57],
  ["M12x1.25", 0.10, 49.1, 79],
  ["M12x1.25", 0.12, 48.0, 90],
  ["M12x1.25", 0.14, 46.8, 101],
] as const;

/** Height of the usual nut [mm]. */
const NUT_HEIGHTS = [
  ["M5x0.8", 4.7],
  ["M6x1", 5.2],
  ["M8x1.25", 6.8],
  ["M10x1.5", 8.4],
  ["M12x1.75", 10.8],
] as const;

const screwArea = (thread: string): number => {
  const { screw, hole, pitch_m: pitch, flank_rad: flank } = find(thread);
  return screwShearArea({
    holeMinorMax: hole.minorMax_m,
    screwPitchMin: screw.pitchMin_m,
    pitch,
    flank,
  });
};
const holeArea = (thread: string): number => {
  const { screw, hole, pitch_m: pitch, flank_rad: flank } = find(thread);
  return tappedShearArea({
    screwMajorMin: screw.majorMin_m,
    holePitchMax: hole.pitchMax_m,
    pitch,
    flank,
  });
};

/** Metal of a screw's thread cut by a cylinder, by counting points along one pitch. */
function sampledShare(cylinder: number, pitchDia: number, pitch: number, flank: number): number {
  const points = 200_000;
  let metal = 0;
  for (let i = 0; i < points; i++) {
    const fromCrest = Math.abs((i + 0.5) / points * pitch - pitch / 2);
    const surface = pitchDia / 2 + (pitch / 4 - fromCrest) / Math.tan(flank);
    if (cylinder / 2 < surface) metal++;
  }
  return metal / points;
}

export const screws: Check[] = [
  {
    name: "proof loads of metric screws",
    methods: [proofLoad],
    source: "ISO 898-1, table of proof loads, coarse threads, as printed by a fastener maker",
    provenance: "read-from-source",
    run: () => {
      for (const [thread, loads] of PROOF_LOADS) {
        CLASSES.forEach((name, i) => {
          const found = proofLoad({
            proofStress: SCREW_CLASSES[name].proof_Pa,
            stressArea: areaOf(thread),
          });
          assertClose(found, loads[i] ?? NaN, 0.008, `${thread} ${name}`);
        });
      }
    },
  },
  {
    name: "breaking loads of metric screws give their tensile strengths",
    methods: [],
    source: "ISO 898-1, table of ultimate loads, coarse threads, as printed by a fastener maker",
    provenance: "read-from-source",
    run: () => {
      for (const [thread, loads] of BREAKING_LOADS) {
        CLASSES.forEach((name, i) => {
          const found = SCREW_CLASSES[name].ultimate_Pa * areaOf(thread);
          assertClose(found, loads[i] ?? NaN, 0.008, `${thread} ${name}`);
        });
      }
    },
  },
  {
    name: "yield strengths by class, A2-70 too",
    methods: [],
    source: "ISO 898-1:2013 table 3; ISO 3506-1",
    provenance: "from-memory",
    run: () => {
      for (
        const [name, strength, tensile] of [
          ["4.8", 340, 420],
          ["5.8", 420, 520],
          ["10.9", 940, 1040],
          ["A2-70", 450, 700],
        ] as const
      ) {
        assertClose(SCREW_CLASSES[name].yield_Pa / MPA, strength, 1e-9, name);
        assertClose(SCREW_CLASSES[name].ultimate_Pa / MPA, tensile, 1e-9, name);
      }
      for (const { yield_Pa, proof_Pa, ultimate_Pa } of Object.values(SCREW_CLASSES)) {
        assert(proof_Pa <= yield_Pa && yield_Pa < ultimate_Pa);
      }
    },
  },
  {
    name: "grades of inch screws: proof, yield, tensile strength",
    methods: [],
    source: "SAE J429 as in J. E. Shigley, Mechanical Engineering Design, 5th edition, p. 341",
    provenance: "read-from-source",
    run: () => {
      const rows: readonly (readonly [ScrewClass, number, number, number])[] = [
        ["grade 5", 85, 92, 120],
        ["grade 8", 120, 130, 150],
      ];
      for (const [name, proof, yields, tensile] of rows) {
        const { proof_Pa, yield_Pa, ultimate_Pa } = SCREW_CLASSES[name];
        assertClose(proof_Pa / KSI, proof, 1e-6, name);
        assertClose(yield_Pa / KSI, yields, 1e-6, name);
        assertClose(ultimate_Pa / KSI, tensile, 1e-6, name);
      }
    },
  },
  {
    name: "a reused 5/8-11 grade 5 bolt: proof load 19.2 kip, preload 14.4 kip, 1800 lbf in",
    methods: [proofLoad, proofShare, mostPreload, torqueForPreload],
    source: "J. E. Shigley, Mechanical Engineering Design, worked example of bolt torque",
    provenance: "from-memory",
    run: () => {
      const load = proofLoad({ proofStress: 85 * KSI, stressArea: 0.226 * INCH ** 2 });
      assertClose(load / LBF, 19_210, 1e-3);
      const enough = { strippingLoad: 1e6, factor: 2, bearing: 1e6 };
      const preload = mostPreload({ proofLoad: load, share: PRELOAD_SHARE, ...enough });
      assertClose(preload / LBF, 14_400, 2e-3);
      assertClose(proofShare({ preload, proofLoad: load }), 0.75, 1e-12);
      const torque = torqueForPreload({ preload, nutFactor: 0.2, nominal: 5 / 8 * INCH });
      assertClose(torque / (LBF * INCH), 1800, 2e-3);
    },
  },
  {
    name: "most preload: each of the three rules in turn",
    methods: [mostPreload],
    source: "The least of three rules",
    provenance: "exact-solution",
    run: () => {
      const base = { proofLoad: 10_000, share: 0.75, strippingLoad: 30_000, factor: 2 };
      assertEquals(mostPreload({ ...base, bearing: 20_000 }), 7500);
      assertEquals(mostPreload({ ...base, strippingLoad: 12_000, bearing: 20_000 }), 6000);
      assertEquals(mostPreload({ ...base, bearing: 5000 }), 5000);
    },
  },
  {
    name: "torque and pull undo each other",
    methods: [torqueForPreload, preloadFromTorque],
    source: "The same law both ways",
    provenance: "exact-solution",
    run: () => {
      const screw = { nutFactor: 0.17, nominal: 0.006 };
      const torque = torqueForPreload({ preload: 6200, ...screw });
      assertClose(preloadFromTorque({ torque, ...screw }), 6200, 1e-12);
    },
  },
  {
    name: "tightening torques of fine threads as printed",
    methods: [torqueBySplit],
    source: "VDI 2230 (2001), tables of preload and torque at 90 % of yield, as printed by a maker",
    provenance: "read-from-source",
    run: () => {
      for (const [name, friction, preload_kN, torque] of PRINTED_TORQUES) {
        const nominal = Number(/^M(\d+)/.exec(name)?.[1]) * MM;
        const pitch = Number(name.split("x")[1]) * MM;
        const head = screwHead(nominal, "hexagon");
        const found = torqueBySplit({
          preload: preload_kN * 1e3,
          pitch,
          pitchDiameter: nominal - 0.649519 * pitch,
          threadFriction: friction,
          head: head.outside_m,
          hole: head.hole_m,
          headFriction: friction,
        });
        assertClose(found, torque, 0.012, `${name} ${friction}`);
      }
    },
  },
  {
    name: "M10x1.5 of 1200 MPa in soft aluminium of 130 MPa: 21.6 mm",
    methods: [
      tappedShearArea,
      strippingLoad,
      threadForFactor,
      engagementToBreak,
      threadStrengthRatio,
      engagementInWeaker,
    ],
    source: "Worked example of thread engagement in a handbook of fastening (CRC Press, abstract)",
    provenance: "read-from-source",
    run: () => {
      // The example takes 9.968 mm for the screw's least major diameter, which is 6g's greatest:
      // its arithmetic is what is checked. With 9.732 mm the same screw takes 24.9 mm.
      const areaPerLength = tappedShearArea({
        screwMajorMin: 9.968 * MM,
        holePitchMax: 9.206 * MM,
        pitch: 1.5 * MM,
        flank: Math.PI / 6,
      });
      const preload = 1200 * 58;
      const bar = { areaPerLength, shearStrength: 130e6 };
      assertClose(threadForFactor({ ...bar, factor: 1, preload }) / MM, 21.6, 0.004);
      assertClose(strippingLoad({ ...bar, fullThread: 21.6 * MM }), preload, 0.004);
      // The same by the ratio of strengths: shear strength half of the tensile strength.
      const area = screwArea("M10x1.5");
      const ratio = threadStrengthRatio({
        screwArea: area,
        screwStrength: 1200e6,
        tappedArea: areaPerLength,
        tappedStrength: 260e6,
      });
      const engagement = engagementToBreak({ stressArea: 58e-6, screwArea: area });
      assertClose(engagementInWeaker({ engagement, ratio }) / MM, 21.6, 0.004);
      assertEquals(engagementInWeaker({ engagement, ratio: 0.7 }), engagement);
    },
  },
  {
    name: "shear area of the screw's thread: metal counted on the hole's cylinder",
    methods: [screwShearArea],
    source: "the thread's profile, sampled",
    provenance: "exact-solution",
    run: () => {
      for (const { designation, screw, hole, pitch_m, flank_rad } of STANDARD) {
        const share = sampledShare(hole.minorMax_m, screw.pitchMin_m, pitch_m, flank_rad);
        assertClose(
          screwArea(designation),
          Math.PI * hole.minorMax_m * share,
          1e-4,
          designation,
        );
      }
    },
  },
  {
    name: "a screw breaks before it strips in the usual nut, which is little higher than need be",
    methods: [engagementToBreak],
    source: "ISO 4032 heights of nuts",
    provenance: "from-memory",
    run: () => {
      for (const [thread, height] of NUT_HEIGHTS) {
        const engagement = engagementToBreak({
          stressArea: areaOf(thread),
          screwArea: screwArea(thread),
        });
        const share = engagement / (height * MM);
        assert(share < 1 && share > 0.8, `${thread}: ${share} of the nut's height`);
      }
    },
  },
  {
    name: "about 10 mm of thread carries an M6 stud in aluminium",
    methods: [engagementToBreak, threadStrengthRatio, engagementInWeaker],
    source: "Common practice, no source; held against the stripping method",
    provenance: "from-memory",
    run: () => {
      const needed = engagementInWeaker({
        engagement: engagementToBreak({ stressArea: areaOf("M6x1"), screwArea: screwArea("M6x1") }),
        ratio: threadStrengthRatio({
          screwArea: screwArea("M6x1"),
          screwStrength: SCREW_CLASSES["8.8"].ultimate_Pa,
          tappedArea: holeArea("M6x1"),
          tappedStrength: MATERIALS["6061-T6"].ultimate_Pa,
        }),
      });
      assertAlmostEquals(needed, M6_STUD_IN_ALUMINIUM_m, 0.5 * MM);
      const { from, to } = ENGAGEMENT_RULES.aluminium;
      assert(needed >= from * 6 * MM && needed <= to * 6 * MM, `${needed}`);
    },
  },
  {
    name: "rules of thumb for brass and steel: as deep as the method asks, or less by a quarter",
    methods: [engagementInWeaker],
    source: "Common practice, no source: 1.5 diameters in brass, 1 in steel",
    provenance: "from-memory",
    run: () => {
      for (const [rule, name] of [["brass", "brass"], ["steel", "steel"]] as const) {
        const needed = engagementInWeaker({
          engagement: engagementToBreak({
            stressArea: areaOf("M8x1.25"),
            screwArea: screwArea("M8x1.25"),
          }),
          ratio: threadStrengthRatio({
            screwArea: screwArea("M8x1.25"),
            screwStrength: SCREW_CLASSES["8.8"].ultimate_Pa,
            tappedArea: holeArea("M8x1.25"),
            tappedStrength: MATERIALS[name].ultimate_Pa,
          }),
        });
        const share = needed / (ENGAGEMENT_RULES[rule].to * 8 * MM);
        assert(share > 0.75 && share < 1.25, `${rule}: ${share}`);
      }
    },
  },
  {
    name: "studs outlast screws that are often undone",
    methods: [],
    source: "Common practice, no source",
    provenance: "from-memory",
    run: () => {
      const note = FASTENING_NOTES.find(({ id }) => id === "studs-outlast-screws");
      for (const word of ["stud", "threadlocker", "outlasts", "often undone"]) {
        assert(note?.text.includes(word), word);
      }
      assertEquals(note?.source, "Common practice, no source");
    },
  },
  {
    name: "the face under a head: the ring as the difference of two circles",
    methods: [headBearingLoad, headBearingStress],
    source: "Areas of circles",
    provenance: "exact-solution",
    run: () => {
      for (const kind of ["socket", "hexagon", "washer"] as const) {
        for (const nominal of [0.003, 0.005, 0.006, 0.012, INCH / 4]) {
          const { outside_m, hole_m: hole } = screwHead(nominal, kind);
          const ring = (outside_m - hole) / 2;
          const area = Math.PI / 4 * (outside_m ** 2 - hole ** 2);
          assertClose(headBearingStress({ preload: 5000, hole, ring }), 5000 / area, 1e-9);
          assertClose(headBearingLoad({ hole, ring, yield: 240e6 }), 240e6 * area, 1e-9);
        }
      }
    },
  },
  {
    name: "yield under the head stands in for the pressure that a face bears",
    methods: [],
    source: "VDI 2230, limiting surface pressures as printed by a maker: 6082 260, S235 490 MPa",
    provenance: "read-from-source",
    run: () => {
      for (const [name, printed] of [["6082-T6", 260], ["steel", 490], ["304", 630]] as const) {
        assert(MATERIALS[name].yield_Pa <= printed * MPA, `${name}: ours is the cautious one`);
      }
    },
  },
  {
    name: "rings under socket heads and washers",
    methods: [],
    source: "ISO 4762 least d_w; ISO 7089 outside diameters, as printed",
    provenance: "read-from-source",
    run: () => {
      for (
        const [nominal, socket, washer] of [
          [3, 5.07, 7],
          [4, 6.53, 9],
          [5, 8.03, 10],
          [6, 9.38, 12],
          [8, 12.33, 16],
          [10, 15.33, 20],
          [12, 17.23, 24],
        ] as const
      ) {
        assertClose(screwHead(nominal * MM, "socket").outside_m, socket * MM, 1e-9);
        assertClose(screwHead(nominal * MM, "washer").outside_m, washer * MM, 1e-9);
      }
      // Sizes without a row get no wider a ring for their diameter than those with one.
      const share = (nominal: number) => screwHead(nominal, "socket").outside_m / nominal;
      assert(share(INCH / 4) <= share(0.012) + 1e-9);
    },
  },
];
