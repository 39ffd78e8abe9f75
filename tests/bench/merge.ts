import { mergeCopies } from "../../src/core/merge/mergeCopies.ts";
import { rootDescent } from "../../src/core/merge/rootDescent.ts";
import { plan } from "../../src/core/plan/plan.ts";
import { zipWorkbook } from "../../src/io/zipWorkbook.ts";
import { lifelikeRecord } from "./lifelikeRecord.ts";
import { measure, report } from "./measure.ts";
import { copyOf, rememberedCopy, worked } from "./twoCopies.ts";

/**
 * Two copies of a record that has grown for years, each worked in for a week: from what the
 * page has in hand (the workbook as typed, its last save, the other copy as it was read) to
 * both together. And what the memory of it costs in the saved file.
 */
const FULL = { uses: 5_000, rounds: 3_000, journal: 10_000 };
const SAVES = 1_500;
const record = lifelikeRecord(FULL);
const start = rememberedCopy(record, SAVES);
const [a, b] = [worked(start, "A"), worked(start, "B")];
const theirs = copyOf(b, start.descent, "B");
const [ours2, theirs2] = [
	{ workbook: a, descent: rootDescent(a) },
	{ workbook: theirs.workbook, descent: rootDescent(theirs.workbook) },
];
const rows = [
	measure("two copies that remember where they come from", () =>
		mergeCopies(copyOf(a, start.descent, "A"), theirs),
	),
	measure("two copies that remember nothing", () => mergeCopies(ours2, theirs2)),
];
const together = mergeCopies(copyOf(a, start.descent, "A"), theirs);
if (together.conflicts.length > 0) throw new Error("the two changed different lines");

const made = plan(start.workbook);
const plain = zipWorkbook(record, made).length;
const marked = zipWorkbook(start.workbook, made).length;
const whole = zipWorkbook(start.workbook, made, start.descent).length;
const [three, two] = rows.map(({ ms }) => ms) as [number, number];
const inTime = (what: string, found: number) =>
	({ what, found, unit: "ms", bound: "at most", limit: 1_000 }) as const;
const growth = (what: string, found: number) =>
	({ what, found, unit: "times", bound: "at most", limit: 1 / 3 }) as const;
report("merge", rows, [
	inTime("The longest record, two copies together", three),
	inTime("The same of copies that remember nothing", two),
	growth(
		`What ${SAVES} saves and the marks of 21,000 lines add to the saved file`,
		whole / plain - 1,
	),
	growth("Of that the saves alone", whole / marked - 1),
]);
