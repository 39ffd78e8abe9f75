import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

const sample = join(import.meta.dirname, "../../../sample-csv");
const demo = (name: string) => readFileSync(join(sample, name), "utf8").trim();

/** How much of each there is. */
export interface Amount {
	readonly rounds: number;
	readonly kits: number;
	readonly items: number;
	readonly days: number;
}

export type Sheets = Readonly<Record<string, string>>;

export const SMALLEST: Amount = { rounds: 1, kits: 1, items: 1, days: 1 };
export const MIDDLE: Amount = { rounds: 3, kits: 12, items: 12, days: 31 };
export const FULL: Amount = { rounds: 6, kits: 60, items: 60, days: 14 };
export const YEAR: Amount = { rounds: 3, kits: 6, items: 12, days: 366 };

const lines = (...rows: readonly (string | readonly string[])[]) => `${rows.flat().join("\n")}\n`;

function upTo(count: number, line: (at: number) => string): string[] {
	return Array.from({ length: count }, (_, at) => line(at + 1));
}

/** A copy to compare with, kept under a name as long as people give one. */
const keptCopy = [
	["setting", "births_per_day", "9.5"],
	["setting", "plan_confidence", "0.99"],
	["setting", "workers_per_round", "1"],
	["setting", "ready_life_days", "2"],
	["round", "06:00", "Morning, before the day’s people go home"],
	["round", "18:00", "Evening"],
].map((cells) => ["As it was before the new delivery beds came in February", ...cells].join());

/** Not the demo's name, so that it can be told when the unit is on the page. */
export const PRINTED = "Willow Ford on paper";

/** The sheets of an invented unit of so much. */
export function unitOf({ rounds, kits, items, days }: Amount): Sheets {
	const settings = demo("unit.csv")
		.replace(/^unit_name,.*$/m, `unit_name,${PRINTED}`)
		.replace(/^plan_days,.*$/m, `plan_days,${days}`)
		.replace(/^workers_per_round,.*$/m, "workers_per_round,4");
	// Names as long as a store writes them, and two words that cannot be broken well.
	const item = (at: number) =>
		`Sterilisation-resistant disposable undersheet for resuscitaires No. ${at}`;
	const own = upTo(items, (at) => `${item(at)},other,piece,100,2.4,7,5,0.95`);
	const used = upTo(items, (at) => `${item(at)},kit,${at},`);
	const had = upTo(items, (at) => `${item(at)},LOT-${1000 + at},${at},,2027-02-20,,2028-12-31`);
	const all = readdirSync(sample).filter((name) => name.endsWith(".csv"));
	return {
		...Object.fromEntries(all.map((name) => [name, `${demo(name)}\n`])),
		"unit.csv": `${settings}\n`,
		"rounds.csv": lines(
			"start,label",
			upTo(rounds, (at) => `${String(at * 4 - 1).padStart(2, "0")}:00,Round number ${at}`),
		),
		"kits.csv": lines(
			"kit,kind,status,ready_since,note",
			upTo(kits, (at) => `K${at},Bag and mask kit,in_service,2027-02-27,On trolley ${at}`),
		),
		"items.csv": lines(demo("items.csv"), own),
		"usage.csv": lines(demo("usage.csv"), used),
		"lots.csv": lines(demo("lots.csv"), had),
		"kept-settings.csv": lines("name,of,key,value", keptCopy),
	};
}
