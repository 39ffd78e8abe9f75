import { withTexts } from "../../src/core/edit/withTexts.ts";
import { numberIn, totalOf } from "../core/planCells.ts";
import { floorTotals } from "./floor.ts";
import { birthsOn, longUnit } from "./longUnit.ts";
import { bareValues, figures, totalsBy } from "./means.ts";
import { type Goal, type Measured, measure, report } from "./measure.ts";
import { MEANS, Sheet } from "./sheet.ts";
import { wholePlan } from "./wholePlan.ts";

/**
 * The means of a plan's days (births → uses → kits to reprocess → rounds → loads →
 * solution, product, boiled water, vinegar, gauze, gloves; no set-aside, no kits needed)
 * in a spreadsheet engine, and by the core's own calculations: first the same totals to
 * 1 in 10⁹, then their times. The whole plan and a bare loop stand beside them.
 *
 * The engine works out anew only what hangs on the cell that was edited. Our side works
 * out every day anew at every edit, because that is what the program does.
 */
const DAYS = [7, 31, 366];
const WANTED = 20;
const rows: Measured[] = [];
const goals: Goal[] = [];

for (const days of DAYS) {
	const births = Float64Array.from({ length: days }, (_, day) => birthsOn(day));
	const sheet = new Sheet(days);
	checkSame(days, sheet.totals(), births);
	let run = 0;
	/** Another number of births on the third day at each run. */
	const edit = () => {
		run = (run + 1) % 97;
		births[2] = 1 + run / 7;
		return births[2];
	};
	const name = (what: string) => `${days} days, ${what}`;
	const built = measure(name("engine: sheet built and worked out"), () =>
		new Sheet(days).destroy(),
	);
	const all = measure(name("engine: every formula again"), () => {
		sheet.setUsesPer100(9 + (run++ % 97) / 100);
		return sheet.totals();
	});
	const one = measure(name("engine: one edit"), () => {
		sheet.setBirths(2, edit());
		return sheet.totals();
	});
	sheet.destroy();
	const bare = measure(name("core's calculations, bare values"), () => {
		edit();
		return totalsBy(bareValues, births);
	});
	const asked = measure(name("core's calculations, figures with their why"), () => {
		edit();
		return totalsBy(figures, births);
	});
	const workbook = longUnit(days);
	const whole = measure(name("whole plan after one edit"), () =>
		wholePlan(
			withTexts(workbook, "births.csv", [{ row: 2, column: "births", text: String(edit()) }]),
		),
	);
	const floor = measure(name("bare loop over typed arrays"), () => {
		edit();
		return floorTotals(births);
	});
	const engine = { built, "all again": all, "one edit": one };
	rows.push(built, all, one, ...[bare, asked, whole, floor].map((ours) => besides(engine, ours)));
	if (days === DAYS.at(-1)) goals.push(...faster(engine, bare), ...faster(engine, whole));
}
report("engine", rows, goals);

/** A measurement with how many times longer the engine takes for each of its tasks. */
function besides(engine: Readonly<Record<string, Measured>>, ours: Measured): Measured {
	const ratios = Object.entries(engine).map(([task, { ms }]) => [task, ms / ours.ms]);
	return { ...ours, timesFaster: Object.fromEntries(ratios) };
}

function faster(engine: Readonly<Record<string, Measured>>, ours: Measured): Goal[] {
	return Object.entries(engine).map(([task, { ms }]) => ({
		what: `Spreadsheet engine, ${task} ÷ ${ours.what}`,
		found: ms / ours.ms,
		unit: "times",
		bound: "at least",
		limit: WANTED,
	}));
}

/** Whether all ways come to the same totals, to 1 in 10⁹: times for different sums would say nothing. */
function checkSame(days: number, fromSheet: readonly number[], births: Float64Array): void {
	const ways = {
		"bare values": totalsBy(bareValues, births),
		figures: totalsBy(figures, births),
		loop: floorTotals(births),
		plan: planTotals(days),
	};
	for (const [way, totals] of Object.entries(ways))
		totals.forEach((mine = Number.NaN, i) => {
			const [what, engine = Number.NaN] = [MEANS[i], fromSheet[i]];
			if (!(Math.abs(mine - engine) <= 1e-9 * Math.abs(engine)))
				throw new Error(`${days} days, ${what}: ${way} ${mine}, engine ${engine}`);
		});
}

/**
 * The first of MEANS as the plan's own sheet of sums shows them. What comes after follows each
 * kit's last day in the plan, which no formula of a cell does: there it does more than the sheet.
 */
function planTotals(days: number): readonly (number | undefined)[] {
	const made = wholePlan(longUnit(days));
	return (["births", "kits_used"] as const).map((measure) =>
		numberIn(totalOf(made, measure), "expected"),
	);
}
