import { expect, test } from "vitest";
import { roundsOfRecord } from "../../../../src/core/plan/kits/kitRecord.ts";
import { pieceRounds } from "../../../../src/core/plan/kits/pieceRounds.ts";
import { plan } from "../../../../src/core/plan/plan.ts";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import { smallUnit } from "../../smallUnit.ts";

const day = (at: number) => `2027-02-${String(at).padStart(2, "0")}`;

/** One round a day of kit A over the last days of February; masks last 40 rounds. */
function unit(rounds: number, changes: Record<string, string> = {}) {
	return smallUnit({
		"kinds.csv": `kind,piece,count,replace_after_rounds
			bag set,bag,1,
			bag set,mask,2,40`,
		"rounds-done.csv": [
			"date,start,kits",
			...Array.from({ length: rounds }, (_, at) => `${day(28 - at)},07:00,A`),
		].join("\n"),
		...changes,
	});
}

function masks(workbook: ReturnType<typeof unit>) {
	const read = readWorkbook(workbook);
	return pieceRounds(
		read,
		roundsOfRecord(read, () => 0),
		"2027-03-01",
	).map(({ kit, row, rounds, since, isSpare, limitOn, isDue }) => [
		kit,
		row.value.piece,
		rounds,
		since,
		isSpare ? "spare" : "first on record",
		limitOn,
		isDue,
	]);
}

const items = (lead: number) => ({
	"items.csv": `item,group,measure,pack_size,pack_price,lead_days,wastage_pct,service_level
		mask,other,piece,1,4,${lead},0,0.95`,
	"lots.csv": "item,lot,quantity\nmask,M1,10",
});

test("the piece that comes to its limit first stands first", () => {
	const limits = (bag: number, mask: number) => ({
		"kinds.csv": `kind,piece,count,replace_after_rounds
			bag set,bag,1,${bag}
			bag set,mask,2,${mask}`,
	});
	const order = (bag: number, mask: number) =>
		masks(unit(28, limits(bag, mask))).map(([, piece]) => piece);
	expect(order(60, 40)).toEqual(["mask", "bag"]);
	expect(order(40, 60)).toEqual(["bag", "mask"]);
});

test("rounds count from the first one on record, at the pace of four weeks", () => {
	// 28 rounds in 28 days; 12 are left: 12 days. A week between orders.
	expect(masks(unit(28))).toEqual([
		["A", "mask", 28, "2027-02-01", "first on record", "2027-03-13", false],
	]);
	expect(masks(unit(28, items(4)))[0]?.at(-1)).toBe(false);
	expect(masks(unit(28, items(5)))[0]?.at(-1)).toBe(true);
	// Rounds are written down since 14 days, and 14 of them were for it; 26 are left: 26 days.
	expect(masks(unit(14))[0]?.slice(2, 6)).toEqual([
		14,
		"2027-02-15",
		"first on record",
		"2027-03-27",
	]);
	// A week at least: 2 rounds on its last two days, and 38 left, are 133 days.
	expect(masks(unit(2))[0]?.[5]).toBe("2027-07-12");
	// By whichever kit the record begins: 14 rounds in 28 days, 52 days for the 26 left.
	const others = (unit(14).tables["rounds-done.csv"]?.rows ?? []).map((row) => row.join());
	const older = ["date,start,kits", ...others, "2027-01-20,07:00,B"].join("\n");
	expect(masks(unit(0, { "rounds-done.csv": older }))[0]?.[5]).toBe("2027-04-22");
});

test("the pace is that of the last four weeks, the first of their days among them", () => {
	const done = (...days: string[]) => ({
		"rounds-done.csv": ["date,start,kits", ...days.map((at) => `${at},07:00,A`)].join("\n"),
	});
	const january = Array.from({ length: 10 }, (_, at) => `2027-01-${at + 10}`);
	const february = Array.from({ length: 14 }, (_, at) => day(28 - at));
	// 24 of 40 are done, 14 of them in the last 28 days: 16 more take 32 days.
	expect(masks(unit(0, done(...january, ...february)))[0]?.slice(2, 6)).toEqual([
		24,
		"2027-01-10",
		"first on record",
		"2027-04-02",
	]);
	// One round in 28 days, 39 are left: 1 092 days.
	expect(masks(unit(0, done(day(1))))[0]?.[5]).toBe("2030-02-25");
	expect(masks(unit(0, done("2027-01-31")))[0]?.[5]).toBeUndefined();
});

test("a spare issued with the kit's mark in the note counts from its day; one of another kit does not", () => {
	const journal = (note: string) => ({
		...items(5),
		"journal.csv": `day,item,lot,entry,quantity,note\n2027-02-20,mask,M1,issue,2,${note}`,
	});
	expect(masks(unit(28, journal("new in A")))[0]?.slice(2, 5)).toEqual([9, "2027-02-20", "spare"]);
	expect(masks(unit(28, journal("new in B")))[0]?.[2]).toBe(28);
	const other = (line: string) => `day,item,lot,entry,quantity,note\n2027-02-20,${line},new in A`;
	for (const line of ["mask,M1,count,2", "gauze,G1,issue,2"])
		expect(masks(unit(28, { ...items(5), "journal.csv": other(line) }))[0]?.[2]).toBe(28);
	const both = `${journal("new in A")["journal.csv"]}\n2027-02-24,mask,M1,issue,1,A\n2027-02-22,mask,M1,issue,1,A`;
	expect(masks(unit(28, { ...items(5), "journal.csv": both }))[0]?.[3]).toBe("2027-02-24");
});

test("the plan says which piece is past its limit, and which comes to it before a spare could", () => {
	const said = (workbook: ReturnType<typeof unit>) =>
		plan(workbook)
			.problems.filter(({ code }) => code.startsWith("piece-"))
			.map(({ code, line, weight, message }) => [code, line, weight, message]);
	expect(said(unit(28))).toEqual([]);
	const [near] = said(unit(28, items(5)));
	expect(near?.slice(0, 3)).toEqual(["piece-near-limit", 3, "advice"]);
	expect(near?.[3]).toContain(
		"28 of 40 rounds since 2027-02-01 and comes to its limit about 2027-03-13",
	);
	const few = unit(28, {
		"kinds.csv": "kind,piece,count,replace_after_rounds\nbag set,mask,2,28",
	});
	expect(said(few)[0]?.slice(0, 3)).toEqual(["piece-past-limit", 2, "advice"]);
});

test("a kit without a round on record, and one out of service, are left out", () => {
	expect(masks(unit(0))).toEqual([]);
	expect(masks(unit(3, { "rounds-done.csv": "date,start,kits\n2027-02-01,07:00,D" }))).toEqual([]);
	const tomorrow = "date,start,kits\n2027-02-28,07:00,A\n2027-03-01,07:00,A";
	expect(masks(unit(0, { "rounds-done.csv": tomorrow }))[0]?.[2]).toBe(1);
});

test("the pace is that of the last four weeks; a spare issued from the plan's first day on is none yet", () => {
	const old = ["2026-12-01", "2026-12-02", "2026-12-03", "2026-12-04"].map(
		(date) => `${date},07:00,A`,
	);
	const lately = Array.from({ length: 14 }, (_, at) => `${day(28 - at)},07:00,A`);
	const rounds = { "rounds-done.csv": ["date,start,kits", ...old, ...lately].join("\n") };
	// 18 rounds are done and 22 left, at 14 in 28 days: 44 days.
	expect(masks(unit(0, rounds))[0]?.slice(2, 6)).toEqual([
		18,
		"2026-12-01",
		"first on record",
		"2027-04-14",
	]);
	const journal = "day,item,lot,entry,quantity,note\n2027-03-01,mask,M1,issue,2,new in A";
	expect(masks(unit(28, { ...items(5), "journal.csv": journal }))[0]?.slice(2, 5)).toEqual([
		28,
		"2027-02-01",
		"first on record",
	]);
});
