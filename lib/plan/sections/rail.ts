/** The rail: bar, gallery, injectors along it. */
import { BLIND, OWN_SECTION, PLUGGED, SEVERAL_RAILS } from "../conditions.ts";
import { section } from "../field.ts";
import { PLUG_THREADS, plugFor, type PlugThread, threadAsked } from "../port_threads.ts";

/** The rail section of a plan. */
export const rail = section({
  title: "Rail",
  about: "The bar, the gallery drilled along it, and where the injectors sit.",
  fields: {
    count: {
      type: "count",
      label: "Rails",
      hint: "Alike, each feeding its share of the cylinders, like 1; a vee engine has 2",
      min: 1,
      max: 4,
      because: "the cylinders must share out evenly over at most 4",
      default: { text: "1", because: "One bank", source: "ours" },
    },
    connection: {
      type: "choice",
      label: "Connection of the rails",
      hint: "How they are fed",
      why: "Fuel for the last rail may have to pass the first",
      ...SEVERAL_RAILS,
      options: {
        parallel: "each on its own branch",
        series: "one after the other",
        loop: "each on its own branch, far ends joined",
      },
      default: {
        text: "parallel",
        because: "Alike branches feed alike rails",
        source: "common practice, no source",
      },
    },
    feed: {
      type: "choice",
      label: "Fed at",
      hint: "Where fuel enters a rail",
      why: "The farther the last injector, the more it differs from the first",
      options: { "one-end": "one end", "both-ends": "both ends", middle: "the middle" },
      default: {
        text: "one-end",
        because: "In at one end and out at the other is the usual way",
        source: "common practice, no source",
      },
    },
    bore: {
      type: "quantity",
      kind: "length",
      label: "Bore of the gallery",
      hint: "The drill along the bar, like 12.7 mm or 1/2 in",
      why: "Too small starves the last injector, too large leaves no wall",
      first: true,
      min: 0.003,
      max: 0.04,
      because: "3 to 40 mm can be drilled along a bar",
    },
    shape: {
      type: "choice",
      label: "Bar",
      hint: "Its section",
      first: true,
      options: {
        rectangular: "square or rectangular",
        round: "round",
        own: "own section",
      },
      default: {
        text: "rectangular",
        because: "Flat faces seal and clamp",
        source: "common practice, no source",
      },
    },
    height: {
      type: "quantity",
      kind: "length",
      label: "Bar size across the injectors' axis",
      hint:
        "From the injector face to the face opposite; a round bar: its diameter; like 25 mm or 1 in",
      why: "Wall above and below the gallery",
      first: true,
      min: 0.008,
      max: 0.1,
      because: "8 to 100 mm bar",
    },
    width: {
      type: "quantity",
      kind: "length",
      label: "Bar size the other way",
      hint: "Like 25 mm; leave blank for square bar",
      first: true,
      when: (v) => v.word("rail.shape") !== "round",
      otherwise: "the bar is round",
      min: 0.008,
      max: 0.1,
      because: "8 to 100 mm bar",
      default: (v) => {
        const height_m = v.number("rail.height");
        if (height_m === undefined) return undefined;
        return {
          text: `${+(height_m * 1000).toFixed(3)} mm`,
          because: "Square bar",
          source: "ours",
        };
      },
    },
    ownWall: {
      type: "quantity",
      kind: "length",
      label: "Least wall of your section",
      hint:
        "Around the gallery, before the drill drifts, like 6 mm; the two sizes of the bar are then its outside sizes",
      why: "The outside sizes say nothing of grooves and slots between",
      ...OWN_SECTION,
      min: 0.0005,
      max: 0.05,
      because: "0.5 to 50 mm",
    },
    galleryUp: {
      type: "quantity",
      kind: "length",
      label: "Height of the gallery",
      hint: "Its axis above the injector face, like 12.5 mm; blank is the middle of the bar",
      why: "A higher gallery leaves pockets room, a lower one the threads opposite",
      optional: true,
      min: 0.002,
      max: 0.1,
      because: "2 to 100 mm, and inside the bar",
      default: (v) => {
        const height_m = v.number("rail.height");
        if (height_m === undefined) return undefined;
        return {
          text: `${+(height_m * 500).toFixed(4)} mm`,
          because: "The middle of the bar",
          source: "ours",
        };
      },
    },
    galleryAcross: {
      type: "quantity",
      kind: "length",
      label: "Gallery off the middle",
      hint: "Its axis towards the front, like 3 mm; towards the back with a minus",
      why: "An offset gallery leaves more thread for a port in the side",
      min: -0.05,
      max: 0.05,
      because: "-50 to 50 mm, and inside the bar",
      default: { text: "0 mm", because: "The middle of the bar", source: "ours" },
    },
    pitch: {
      type: "quantity",
      kind: "length",
      label: "Pitch of the injectors",
      hint: "Centre to centre along the rail, like 92 mm; measure the manifold",
      why: "Places every pocket; a guess here costs a bar",
      min: 0.02,
      max: 0.3,
      because: "20 to 300 mm",
      default: {
        text: "90 mm",
        because: "A guess to compute with; never drill on it, measure the manifold",
        source: "ours",
      },
    },
    length: {
      type: "quantity",
      kind: "length",
      label: "Length of the bar",
      hint: "Of one rail, like 420 mm",
      why: "Drill drift grows with it",
      min: 0.03,
      max: 1.5,
      because: "30 mm to 1.5 m",
      default: (v) => {
        const pitch_m = v.number("rail.pitch") ?? 0.09;
        const rails = v.number("rail.count") ?? 1;
        const each = Math.max(1, (v.number("engine.cylinders") ?? 4) / rails);
        // No longer than a bar may be: what then does not fit on it is said at the bar.
        const text = `${Math.round(Math.min(pitch_m * (each - 1) + 0.1, 1.5) * 1000)} mm`;
        return { text, because: "The pitches plus 50 mm beyond each end injector", source: "ours" };
      },
    },
    material: {
      type: "choice",
      label: "Material of the bar",
      hint: "Alloy and temper as bought",
      options: {
        "6061-T6": "aluminium 6061-T6",
        "6082-T6": "aluminium 6082-T6",
        "AlSi10Mg": "laser-sintered AlSi10Mg, stress-relieved",
        "AlSi10Mg-as-built": "laser-sintered AlSi10Mg, as built",
        "304": "stainless steel 304",
        brass: "brass",
        steel: "mild steel",
      },
      default: {
        text: "6061-T6",
        because: "Common, weldable, drills well",
        source: "common practice, no source",
      },
    },
    finish: {
      type: "choice",
      label: "Finish of the gallery",
      hint: "Drilled only, or reamed after",
      options: { drilled: "drilled", reamed: "reamed" },
      default: { text: "drilled", because: "The rougher, more cautious case", source: "ours" },
    },
    drilledFrom: {
      type: "choice",
      label: "Gallery drilled from",
      hint: "One end, or half from each",
      why: "A long drill wanders; from both ends only half as far",
      options: { one: "one end", both: "both ends" },
      default: { text: "one", because: "The more cautious case", source: "ours" },
    },
    drift: {
      type: "quantity",
      kind: "length",
      label: "How far the drill wanders, if you know it",
      hint: "Off its line by the end of the hole, like 0.5 mm; measure one in an offcut",
      why: "What it wanders comes off the wall",
      optional: true,
      min: 0,
      max: 0.01,
      because: "0 to 10 mm",
    },
    ends: {
      type: "choice",
      label: "Ends of the gallery",
      hint: "How they are closed; a blind gallery begins at the datum end",
      why: "Feed and return usually go through the plugs",
      options: {
        plugged: "drilled through, both ends plugged",
        blind: "drilled from one end, one plug",
        welded: "drilled through, caps welded on",
      },
      default: {
        text: "plugged",
        because: "Can be deburred, brushed and flushed right through",
        source: "common practice, no source",
      },
    },
    galleryDepth: {
      type: "quantity",
      kind: "length",
      label: "Depth of the blind gallery",
      hint: "From the datum end, at full bore, like 380 mm; blank is just past the last injector",
      optional: true,
      ...BLIND,
      min: 0.01,
      max: 1.5,
      because: "10 mm to 1.5 m, and less than the bar is long",
    },
    plugThread: {
      type: "choice",
      label: "Thread of the plugs",
      hint: "In the gallery's ends, for plug, feed or return fitting",
      why: "Its tapping drill must be at least as wide as the gallery",
      ...PLUGGED,
      options: PLUG_THREADS,
      default: (v) => {
        const thread = plugFor(v.number("rail.bore") ?? Infinity);
        return thread && {
          text: thread,
          because: "The smallest O-ring plug whose tapping drill is as wide as the gallery",
          source: "common practice, no source",
        };
      },
    },
    plugEngagement: {
      type: "quantity",
      kind: "length",
      label: "Full thread of the plugs",
      hint: "Its depth in each end, like 10 mm",
      why: "Pressure pushes on the plug, and its thread shears in the bar",
      ...PLUGGED,
      min: 0.002,
      max: 0.04,
      because: "2 to 40 mm",
      default: (v) => {
        const thread = v.word("rail.plugThread");
        const asked_m = thread === undefined ? undefined : threadAsked(thread as PlugThread);
        return asked_m === undefined ? undefined : {
          text: `${+(asked_m * 1000).toFixed(2)} mm`,
          because: "The least full thread that the standard of this thread asks for",
          source: "the thread's standard, see the port tables",
        };
      },
    },
    pocketBore: {
      type: "quantity",
      kind: "length",
      label: "Bore of the injector pockets",
      hint: "Where the upper O-ring seals, like 14 mm",
      why: "Fuel pressure on this area lifts the rail",
      min: 0.005,
      max: 0.03,
      because: "5 to 30 mm",
      default: {
        text: "14 mm",
        because: "The common upper O-ring of port injectors",
        source: "common practice, no source",
      },
    },
  },
});
