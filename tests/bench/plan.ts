import { HyperFormula } from "hyperformula";
import { plan } from "../../src/core/plan.ts";
import type { Workbook } from "../../src/core/workbook.ts";
import { withTexts } from "../../src/ui/book/withTexts.ts";
import { unitWith } from "../core/smallUnit.ts";
import { against, heapMb, type Measured, measure, report } from "./measure.ts";

/**
 * From one edit to the new plan, for plans of 7, 31 and 366 days and for 1, 10 and
 * 50 items; beside a spreadsheet engine that works out only the means of the same
 * days (no set-asides, no cover), and a bare loop over the same means as the floor.
 */
const DAYS = [7, 31, 366];
const ITEMS = [1, 10, 50];
/** Parts of the day between three rounds. */
const GAPS = [10 / 24, 7 / 24, 7 / 24];
const rows: Measured[] = [];

for (const days of DAYS) {
	const workbook = unitWith({ plan_days: days }, { "births.csv": birthsOf(days) });
	const edit = editing(workbook);
	const engine = measure(`${days} days: spreadsheet engine, means only`, spreadsheet(days));
	rows.push(engine);
	rows.push({
		...against(engine, measure(`${days} days: one edit → new plan`, edit)),
		heapMb: heapMb(),
	});
	rows.push(
		against(
			engine,
			measure(`${days} days: bare loop over the means`, () => bareLoop(days)),
		),
	);
}
for (const items of ITEMS) {
	const usage = Array.from({ length: items }, (_, i) => `item ${i},kit,${i + 1},`);
	const listed = Array.from({ length: items }, (_, i) => `item ${i},other,piece,100,4,7,5,0.95`);
	const workbook = unitWith(
		{},
		{
			"usage.csv": ["item,basis,quantity,note", ...usage].join("\n"),
			"items.csv": [
				"item,group,measure,pack_size,pack_price,lead_days,wastage_pct,service_level",
				...listed,
				"liquid,other,L,5,3,7,10,0.95",
			].join("\n"),
		},
	);
	rows.push(measure(`7 days, ${items} items: one edit → new plan`, editing(workbook)));
}
report("plan", rows);

/** Different births on every weekday, as a unit has them. */
function birthsOf(days: number): string {
	const first = Date.UTC(2027, 2, 1);
	const lines = Array.from({ length: days }, (_, day) => {
		const date = new Date(first + day * 86_400_000).toISOString().slice(0, 10);
		return `${date},${4 + (day % 7)},`;
	});
	return ["date,births,note", ...lines].join("\n");
}

/** Each run changes the third day's births to another figure and plans anew. */
function editing(workbook: Workbook): () => unknown {
	let births = 0;
	return () => {
		births = (births + 1) % 97;
		const text = String(1 + births / 7);
		return plan(withTexts(workbook, "births.csv", [{ row: 2, column: "births", text }]));
	};
}

/** The same means in formulas: one row a day, the third day's births edited at each run. */
function spreadsheet(days: number): () => unknown {
	const sheet = Array.from({ length: days }, (_, day) => {
		const row = day + 1;
		const runs = GAPS.map((gap) => `1-EXP(-(B${row}*${gap}))`).join("+");
		return [
			4 + (day % 7),
			`=A${row}*10/100`,
			`=${runs}`,
			`=C${row}*5.5`,
			`=C${row}*790`,
			`=C${row}/7`,
		];
	});
	const total = ["A", "B", "C", "D", "E", "F"].map((column) => `=SUM(${column}1:${column}${days})`);
	const engine = HyperFormula.buildFromArray([...sheet, total], { licenseKey: "gpl-v3" });
	let births = 0;
	return () => {
		births = (births + 1) % 97;
		engine.setCellContents({ sheet: 0, row: 2, col: 0 }, [[1 + births / 7]]);
		return engine.getCellValue({ sheet: 0, row: days, col: 5 });
	};
}

function bareLoop(days: number): Float64Array {
	const totals = new Float64Array(5);
	for (let day = 0; day < days; day++) {
		const uses = ((4 + (day % 7)) * 10) / 100;
		let runs = 0;
		for (const gap of GAPS) runs += -Math.expm1(-uses * gap);
		totals[0] = (totals[0] as number) + uses;
		totals[1] = (totals[1] as number) + runs;
		totals[2] = (totals[2] as number) + runs * 5.5;
		totals[3] = (totals[3] as number) + runs * 790;
		totals[4] = (totals[4] as number) + runs / 7;
	}
	return totals;
}
