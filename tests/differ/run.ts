import { writeFileSync } from "node:fs";
import { cpus } from "node:os";
import { join } from "node:path";
import { type Difference, differ, times } from "./differ.ts";
import { saidBy } from "./saidBy.ts";
import type { Time } from "./times.ts";

const [given = "300", seed = "1"] = process.argv.slice(2);
const cases = Number(given);
const MOST_SHOWN = 20;
const LONGEST = 300;
/** Any workbook is opened and looked at within so many milliseconds of a processor. */
const WANTED_MS = 1000;
const SLOWEST_SHOWN = 10;

const started = performance.now();
const differences = differ(cases, Number(seed));
const minutes = (performance.now() - started) / 60_000;
const slowest = times(cases, Number(seed)).sort((a, b) => b.ms - a.ms);
const tooSlow = slowest.filter(({ ms }) => ms > WANTED_MS).length;
/** A person waits for the plan and the sheet that is looked at; the others come while the page has nothing to do. */
const waitedFor = slowest.filter(({ longestMs }) => longestMs > WANTED_MS).length;
const machine = `${cpus().length} cores (${cpus()[0]?.model ?? ""}), Node ${process.version}`;

const page = [
	"# Plans that must not differ",
	"",
	"Written by `npm run differ`. Invented workbooks, any that the limits of the columns allow, are planned as they were made; written, read and planned again by another clock and language; and that once more with their rows in another order. Every line of every file must be the same to the last digit.",
	"",
	`${cases.toLocaleString("en")} workbooks from ${seed} on, ${minutes.toFixed(1)} minutes, ${machine}: **${differences.length} differences**.`,
	...differences.slice(0, MOST_SHOWN).flatMap(linesOf),
	"",
	"## The slowest",
	"",
	`The plan, its problems and every line of every sheet, in milliseconds of a processor: **${tooSlow} of ${cases.toLocaleString("en")} take more than ${WANTED_MS.toLocaleString("en")}**, all together; of ${waitedFor} the plan or one sheet alone does, which is what a person waits for.`,
	"",
	"| workbook | ms | most of it | ms |",
	"|--:|--:|---|--:|",
	...slowest.slice(0, SLOWEST_SHOWN).map(rowOf),
];
writeFileSync(join(import.meta.dirname, "RESULTS.md"), `${page.join("\n")}\n`);
console.log(page[4]);
console.log(`${tooSlow} take more than ${WANTED_MS} ms`);
process.exitCode = differences.length === 0 ? 0 : 1;

function rowOf({ number, ms, longest, longestMs }: Time): string {
	return `| ${number} | ${ms.toFixed(0)} | ${longest} | ${longestMs.toFixed(0)} |`;
}

/** What one way says and the other does not, the first lines of each file. */
function linesOf({ number, way }: Difference): string[] {
	const [made, other] = [saidBy(number, "made"), saidBy(number, way)];
	const only = (one: typeof made, without: typeof made, file: string) =>
		one[file]?.find((line) => !without[file]?.includes(line))?.slice(0, LONGEST) ?? "nothing";
	const files = Object.keys(made).filter((file) => made[file]?.join() !== other[file]?.join());
	return [
		"",
		`## Workbook ${number}, ${way}`,
		...files.flatMap((file) => [
			"",
			`\`${file}\`, as made and ${way}:`,
			"",
			"```",
			only(made, other, file),
			only(other, made, file),
			"```",
		]),
	];
}
