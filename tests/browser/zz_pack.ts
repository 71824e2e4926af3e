import { packPlan, planReady, readPlan } from "@/lib/plan/mod.ts";
import { demos } from "@/routes/demos.ts";
await planReady();
for (const { name, plan } of demos) { const r = readPlan(plan); if (r.ok) console.log(name, "/p/" + await packPlan(r.plan)); else console.log(r.faults); }
const r = readPlan({ version: 1, engine: { cycle: "four-stroke", cylinders: 4, power: "300 hp", powerSpeed: "7000 rpm", aspiration: "natural" }, fuel: { name: "petrol" }, injectors: { stages: [{ flow: "550 cc/min" }] }, pump: { points: [{ pressure: "3 bar", flow: "255 L/h" }] }, rail: { bore: "12 mm", height: "25 mm" } });
if (r.ok) console.log("blank", "/p/" + await packPlan(r.plan));
