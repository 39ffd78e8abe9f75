import { describe, expect, test } from "vitest";
import { pieceFire } from "../../../../src/core/plan/methods/pieceFire.ts";
import { type Plan, plan } from "../../../../src/core/plan/plan.ts";
import { hoursPlanned } from "../../../../src/core/plan/record/hoursPlanned.ts";
import { actsBetween } from "../../../../src/core/plan/today/actsBetween.ts";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import { dateTime } from "../../../../src/core/values/dateTime.ts";
import { expectWithin } from "../../../expectWithin.ts";
import { codesOf, numberIn, rowsOf, valueIn } from "../../planCells.ts";
import { unitWith } from "../../smallUnit.ts";
import { demoBy, demoOf, STEPS } from "./demoByMethod.ts";

const firesOf = (plan: Plan) =>
	rowsOf(plan, "boiling.csv").filter((row) => valueIn(row.date) === "2027-03-01");
const MASK = [["Bag and mask kit", "Mask, small", "boiling", ""]];

/*
 * The demo's stove: 3 kW of which a fifth reaches the water, which boils at 98.507 °C and is
 * drawn at 22. Boiled for 20 minutes, 0.6 kW × 1,200 s ÷ 2,257 = 0.319 L boil away.
 */
describe("a unit that boils its pieces", () => {
	const plan = demoBy({ method: "boiling" });

	test("one fire for each round's load: at a rolling boil when its step begins", () => {
		const rows = firesOf(plan);
		expect(rows.map((row) => [valueIn(row.round), valueIn(row.pieces)])).toEqual([
			["Morning", "boiling"],
			["Afternoon", "boiling"],
			["Evening", "boiling"],
		]);
		const [first] = rows;
		expectWithin(numberIn(first, "start_litres"), 5 + (0.6 * 1200) / 2257, 1e-9, "L");
		const held = rowsOf(plan, "run-sheet.csv").find(
			(row) => valueIn(row.step) === "keep at a rolling boil",
		);
		// Heating of 47.3 minutes before 8:55.
		expect(valueIn(held?.starts)).toBe("08:55");
		expect(valueIn(first?.light_by)).toBe("2027-03-01 08:07");
		expect([valueIn(first?.cool_minutes), valueIn(first?.cool_by)]).toEqual([0, ""]);
	});

	test("the night before says what lies in the pot, and that the round must run", () => {
		expect(valueIn(rowsOf(plan, "tonight.csv")[0]?.task)).toBe(
			"If the round runs: light the stove for a load of pieces, 6 L in pot 1; 20 min from a rolling boil, lid on; fuel 0.5 kg.",
		);
	});

	test("the fires of a day burn for their heating and their time at the boil", () => {
		const read = readWorkbook(demoOf({ method: "boiling" }));
		const hours = hoursPlanned(plan, read, "2027-03-01");
		const heat = numberIn(firesOf(plan)[0], "heat_minutes") as number;
		expectWithin(hours?.atFires, (3 * (heat + 20)) / 60, 1e-9, "h");
	});

	test("a room in which nothing cools does not matter: nothing has to", () => {
		const warm = demoBy({ method: "boiling", room_c: "45" });
		expect(valueIn(firesOf(warm)[0]?.light_by)).toBe("2027-03-01 08:07");
	});

	test("a pot too small for a load leaves its fires waiting, with the reason", () => {
		const small = demoBy({ method: "boiling", pot_litres: "4" });
		expect(codesOf(firesOf(small)[0]?.light_by)).toEqual(["pot-too-small"]);
	});
});

test("steamed: heated and held in one step of 50 minutes, so lit within it", () => {
	const [first] = firesOf(demoBy({ method: "steam" }));
	// From 8:10 to 9:00: in steam from 8:40, 16.2 minutes of heating before.
	expect(valueIn(first?.light_by)).toBe("2027-03-01 08:23");
	expect(valueIn(first?.pieces)).toBe("steam");
});

describe("kits of which some pieces are boiled and the rest rinsed", () => {
	const settings = { boil_capacity_kits: "1", boil_for: "every_round" };

	test("both kinds of fire are on one list, by the clock", () => {
		const rows = rowsOf(demoBy(settings, MASK), "boiling.csv");
		const lit = rows.flatMap((row) => valueIn(row.light_by) ?? []);
		expect(lit).toEqual([...lit].sort());
		expect(new Set(rows.map((row) => valueIn(row.pieces)))).toEqual(new Set([null, "boiling"]));
	});

	test("loads that follow each other too soon for one stove: advice, and a second stove does", () => {
		const found = (more: Record<string, string>) =>
			demoBy({ ...settings, ...more }, MASK).problems.filter(({ received }) =>
				received?.includes("loads of pieces"),
			);
		expect(found({}).map(({ code, weight }) => [code, weight])).toEqual([
			["stove-booked-twice", "advice"],
		]);
		expect(found({ stoves: "2", pots: "6" })).toEqual([]);
	});
});

describe("at the bench", () => {
	const actsOf = (settings: Record<string, string>, steps = STEPS, treatments: string[][] = []) => {
		const workbook = demoOf(settings, treatments, { "steps.csv": steps });
		const [from, until] = ["2027-03-01 00:00", "2027-03-01 12:00"].map((text) =>
			dateTime().schema.parse(text),
		);
		if (!from || !until) throw new Error("no time");
		return actsBetween(plan(workbook), readWorkbook(workbook), from, until);
	};
	const soaksOf = (acts: ReturnType<typeof actsOf>) =>
		acts.flatMap((act) => (act.kind === "round" ? act.steps : [])).filter(({ isSoak }) => isSoak);

	test("nothing that is boiled is told as a soak, and nothing is mixed", () => {
		const boilsOnly = STEPS.split("\n").filter((line) => !line.endsWith(",chlorine"));
		const acts = actsOf({ method: "boiling" }, boilsOnly.join("\n"));
		expect(acts.map(({ kind }) => kind)).toEqual(["round", "fire"]);
		expect(soaksOf(acts)).toEqual([]);
		expect(acts[1]).toMatchObject({
			pieces: "boiling",
			holdMinutes: 20,
			pots: "1",
			until: { minutes: 535 },
		});
	});

	test("where it wipes with chlorine, that is mixed by the start of the round", () => {
		const acts = actsOf({ method: "boiling", wipe_solution_litres: "0.5" });
		const mix = acts.find(({ kind }) => kind === "mix");
		expect(mix).toMatchObject({ litres: 0.5, until: { minutes: 420 } });
	});

	test("where pieces go both ways, only the load in chlorine is a soak", () => {
		const soaks = soaksOf(actsOf({}, STEPS.replace("no,chlorine", "no,"), MASK));
		expect(soaks.map(({ step }) => step)).toEqual(["soak"]);
	});
});

test("what heats the pieces is counted in kilowatt-hours where it is electricity, in kilograms where it burns", () => {
	const measure = (fuel: string) =>
		pieceFire(readWorkbook(unitWith({ fuel })), "boiling").fuelMeasure;
	expect([measure("electric"), measure("wood")]).toEqual(["kWh", "kg"]);
});
