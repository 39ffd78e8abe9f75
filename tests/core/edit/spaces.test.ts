import { describe, expect, test } from "vitest";
import { beginEntries, filledEntries } from "../../../src/core/edit/begin/beginEntries.ts";
import type { BeginEntry } from "../../../src/core/edit/begin/beginEntry.ts";
import { usesFor, withUsesTaken } from "../../../src/core/edit/begin/withUsesTaken.ts";
import { isEmpty } from "../../../src/core/edit/emptyWorkbook.ts";
import { keptCopies } from "../../../src/core/edit/keptCopies.ts";
import { daysWritten, dayTexts } from "../../../src/core/edit/monday/daysWritten.ts";
import { routine, withTick } from "../../../src/core/edit/monday/routine.ts";
import { movedOn } from "../../../src/core/edit/movedOn.ts";
import { orderGivenUp } from "../../../src/core/edit/store/orderGivenUp.ts";
import { itemNames } from "../../../src/core/edit/store/storeEntry.ts";
import {
	depotPacksOf,
	withDepotPacks,
	withoutOrderLimits,
} from "../../../src/core/edit/store/withDepotPacks.ts";
import { usualEntries } from "../../../src/core/edit/trial/trialEntries.ts";
import { withCopyKept } from "../../../src/core/edit/withCopyKept.ts";
import { withCopyUsed } from "../../../src/core/edit/withCopyUsed.ts";
import { withoutCopy } from "../../../src/core/edit/withoutCopy.ts";
import { withUsageTaken } from "../../../src/core/edit/withUsageTaken.ts";
import type { Workbook } from "../../../src/core/workbook.ts";
import { unitWith } from "../smallUnit.ts";

/** A unit with something in every sheet that is edited by what it says. */
const unit = unitWith(
	{ monday_done: "2027-03-08 days", plan_days: 3 },
	{
		"births.csv": "date,births,note\n2027-03-02,8,referrals\n2027-02-28,5,old",
		"records.csv": "date,births,kits_used\n2027-02-27,5,1",
		"kinds.csv": "kind,piece,count\nbag set,bag,1",
		"kits.csv": `kit,kind,status,ready_since,note
			A,bag set,in_service,2027-02-27,
			K1,bag set,In_Service,,
			K2,bag set,in_service,,`,
		"chlorine.csv": `product,form,strength,strength_measure,in_use
			powder,powder,70,pct_w_w,no
			liquid,liquid,3.5,pct_w_v,Yes`,
		"lots.csv": "item,lot,quantity,received_on\npowder,P1,500,2027-01-01\nliquid,L1,10,2027-01-20",
		"items.csv":
			"item,group,measure,pack_size,depot_packs\npowder,other,g,500,\nliquid,other,L,5,2",
		"placed.csv": `ordered_on,item,packs,note
			2027-02-25,liquid,3,by phone
			2027-02-26,powder,1,`,
		"kept-settings.csv": `name,of,key,value
			as it was,setting,pots,4
			as it was,round,14:00,late
			other,setting,pots,6`,
	},
);

const withCells = (workbook: Workbook, change: (cell: string) => string): Workbook => ({
	tables: Object.fromEntries(
		Object.entries(workbook.tables).map(([file, { header, rows }]) => [
			file,
			{ header, rows: rows.map((row) => row.map(change)) },
		]),
	),
});
const spaced = withCells(unit, (cell) => `  ${cell} `);
const bare = (made: unknown) =>
	typeof made === "object" && made !== null && "tables" in made
		? withCells(made as Workbook, (cell) => cell.trim())
		: made;

const textsOf = (entry: BeginEntry): readonly string[] =>
	({
		kits: ["1", "2", "4"],
		rounds: ["07:00 15:00"],
		"product-kind": ["tablet g_per_tablet"],
		"in-store": ["5 x 2", "30"],
		"births-every-day": ["9"],
		method: ["boiling"],
	})[entry.key] ?? [];
const entries: readonly BeginEntry[] = [
	...beginEntries,
	...filledEntries,
	...usualEntries.filter(({ key }) => !beginEntries.some((each) => each.key === key)),
];
const copyUsed = (workbook: Workbook) => {
	const copy = keptCopies(workbook).find(({ name }) => name === "as it was");
	return copy && withCopyUsed(workbook, copy);
};

const edits: Record<string, (workbook: Workbook) => unknown> = {
	"it is not empty": isEmpty,
	"what a round uses": usesFor,
	"uses are taken": (workbook) =>
		withUsesTaken({
			tables: { ...workbook.tables, "usage.csv": { header: ["item"], rows: [[" "]] } },
		}),
	"copies are named": (workbook) =>
		keptCopies(workbook).map(({ name, rows }) => [name, rows.length]),
	"a copy is kept": (workbook) => withCopyKept(workbook, "now"),
	"a copy is used": copyUsed,
	"a copy is taken out": (workbook) => withoutCopy(workbook, "other"),
	"a day of the register": (workbook) => dayTexts(workbook, "2027-02-27"),
	"days are written": (workbook) => {
		const written = daysWritten(workbook, [
			{ date: "2027-02-27", births: " 6 ", kitsUsed: " 2 " },
			{ date: "2027-02-28", births: " ", kitsUsed: " 1 " },
			{ date: "2027-03-01", births: " ", kitsUsed: " " },
		]);
		return written.ok && written.workbook;
	},
	"the routine": (workbook) => routine(workbook)?.done,
	"a tick": (workbook) => withTick(workbook, "counts", true),
	"moved on": (workbook) => {
		const outcome = movedOn(workbook, []);
		return outcome.ok && outcome.value.workbook;
	},
	"what was past": (workbook) => {
		const outcome = movedOn(workbook, []);
		return outcome.ok && outcome.value.past;
	},
	"an order is given up": (workbook) => orderGivenUp(workbook, 2),
	"an order without a note is given up": (workbook) => orderGivenUp(workbook, 3),
	"the items": itemNames,
	"what the depot sends": (workbook) => depotPacksOf(workbook, "liquid"),
	"what it does not send": (workbook) =>
		withDepotPacks(workbook, [{ item: "liquid", packs: " 1 " }]),
	"the limits of an order go": withoutOrderLimits,
	"a use learned": (workbook) => withUsageTaken(workbook, 2, 3, "own count"),
	...Object.fromEntries(
		entries.flatMap((entry) => [
			[`${entry.key} is read`, (workbook: Workbook) => entry.read(workbook)],
			[`${entry.key} stays`, (workbook: Workbook) => entry.write(workbook, entry.read(workbook))],
			...textsOf(entry).map((text) => [
				`${entry.key} is ${text}`,
				(workbook: Workbook) => entry.write(workbook, ` ${text} `),
			]),
		]),
	),
};

describe("spaces around cells change nothing of what is edited", () => {
	test.each(Object.entries(edits))("%s", (_name, edit) => {
		expect(bare(edit(spaced))).toEqual(bare(edit(unit)));
	});
});

describe("what is typed is written without spaces around it", () => {
	const typed = entries
		.filter(({ options }) => !options)
		.flatMap((entry) =>
			[entry.read(unit), ...textsOf(entry)]
				.filter((text) => text !== "")
				.map((text) => [entry, text] as const),
		);
	test.each(typed.map(([entry, text]) => [entry.key, text, entry] as const))(
		"%s: %s",
		(_key, text, entry) => {
			expect(entry.write(unit, ` ${text} `)).toEqual(entry.write(unit, text));
		},
	);
});
