import { writeFileSync } from "node:fs";
import { cpus } from "node:os";
import { join } from "node:path";
import { type Difference, differ } from "./differ.ts";
import { saidBy } from "./saidBy.ts";

const [given = "300", seed = "1"] = process.argv.slice(2);
const cases = Number(given);
const MOST_SHOWN = 20;
const LONGEST = 300;

const started = performance.now();
const differences = differ(cases, Number(seed));
const minutes = (performance.now() - started) / 60_000;
const machine = `${cpus().length} cores (${cpus()[0]?.model ?? ""}), Node ${process.version}`;

const page = [
	"# Plans that must not differ",
	"",
	"Written by `npm run differ`. Invented workbooks, any that the limits of the columns allow, are planned as they were made; written, read and planned again by another clock and language; and that once more with their rows in another order. Every line of every file must be the same to the last digit.",
	"",
	`${cases.toLocaleString("en")} workbooks from ${seed} on, ${minutes.toFixed(1)} minutes, ${machine}: **${differences.length} differences**.`,
	...differences.slice(0, MOST_SHOWN).flatMap(linesOf),
];
writeFileSync(join(import.meta.dirname, "RESULTS.md"), `${page.join("\n")}\n`);
console.log(page[4]);
process.exitCode = differences.length === 0 ? 0 : 1;

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
