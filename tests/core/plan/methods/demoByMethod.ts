import { plan } from "../../../../src/core/plan/plan.ts";
import type { TextTable, Workbook } from "../../../../src/core/workbook.ts";
import { readDemo } from "../../../readDemo.ts";
import { tableOf } from "../../smallUnit.ts";

const { workbook: demo } = readDemo();

/** Steps with the same work before and after, whatever the method, in seven lines. */
export const STEPS = `step,basis,minutes,hands_on,method
	prepare,round,10,yes,
	take apart and wash,kit,30,yes,
	soak,load,20,no,chlorine
	rinse,load,9,yes,chlorine
	bring to the boil with the pieces in it,load,45,no,boiling
	keep at a rolling boil,load,20,no,boiling
	steam,load,50,no,steam
	wrap with indicator tape and send away,kit,6,yes,autoclave
	dry and put together,kit,9,yes,
	clean up,round,7,yes,`;

/**
 * The demo with six births on each of its seven days, as many at every hour, so that it can be
 * worked out by hand: 0.6 kits are used a day. Kits keep so long that hardly any goes out of date.
 */
export function demoBy(...of: Parameters<typeof demoOf>) {
	return plan(demoOf(...of));
}

export function demoOf(
	settings: Record<string, string>,
	treatments: readonly string[][] = [],
	files: Record<string, string> = {},
): Workbook {
	const own = {
		ready_life_days: "90",
		sterile_life_days: "90",
		wipe_solution_litres: "",
		bucket_fill_litres: "10",
		boil_for: "after_use",
		...settings,
	};
	const tables: Record<string, TextTable> = {
		...demo.tables,
		"unit.csv": withSettings(demo, own),
		"births.csv": tableOf(
			["date,births,note", ...[1, 2, 3, 4, 5, 6, 7].map((day) => `2027-03-0${day},6,`)].join("\n"),
		),
		"hours.csv": tableOf(
			["hour,share", ...Array.from({ length: 24 }, (_, h) => `${h},1`)].join("\n"),
		),
		"steps.csv": tableOf(STEPS),
	};
	for (const [file, text] of Object.entries(files)) tables[file] = tableOf(text);
	if (treatments.length > 0)
		tables["treatments.csv"] = { header: ["kind", "piece", "method", "note"], rows: treatments };
	return { tables };
}

function withSettings({ tables }: Workbook, own: Record<string, string>): TextTable {
	const unit = tables["unit.csv"] as TextTable;
	const kept = unit.rows.filter(([key = ""]) => !(key in own));
	return { ...unit, rows: [...kept, ...Object.entries(own)] };
}
