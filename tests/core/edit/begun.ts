import { beginEntries } from "../../../src/core/edit/begin/beginEntries.ts";
import { emptyWorkbook } from "../../../src/core/edit/emptyWorkbook.ts";
import type { Workbook } from "../../../src/core/workbook.ts";

/** What a unit enters first. */
const texts: Record<string, string> = {
	plan_start: "2027-03-01",
	births_per_day: "4,5",
	delivery_beds: "2",
	kits: "3",
	rounds: "7:00 15:30",
	steps: "taken",
	pots: "3",
	"product-kind": "liquid pct_w_v",
	strength: "3.5",
	"in-store": "5 x 1000",
};

export function entryOf(key: string) {
	const entry = beginEntries.find((each) => each.key === key);
	if (!entry) throw new Error(`no entry ${key}`);
	return entry;
}

/** The workbook after one entry. */
export function entered(workbook: Workbook, key: string, text = texts[key] ?? ""): Workbook {
	const written = entryOf(key).write(workbook, text);
	if (typeof written === "string") throw new Error(written);
	return written;
}

/** A unit that has begun, but for some entries. */
export function begun(without: readonly string[] = []): Workbook {
	return beginEntries
		.filter(({ key }) => !without.includes(key))
		.reduce((workbook, { key }) => entered(workbook, key), emptyWorkbook());
}
