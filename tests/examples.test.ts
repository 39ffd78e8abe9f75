import { globSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { setAside } from "../src/core/counts/counts.ts";
import { negativeBinomial } from "../src/core/counts/negativeBinomial.ts";
import { poisson } from "../src/core/counts/poisson.ts";
import { planMeasures } from "../src/core/sheets/planMeasures.ts";

const root = new URL("../", import.meta.url).pathname;

/** What examples take from other files. */
const around = { negativeBinomial, poisson, setAside, planMeasures };

/** A call and what it gives, written out: `addDays("2028-02-28", 1) // "2028-02-29"`. */
const EXAMPLE =
	/@example ([a-zA-Z]+\(.*\)(?:\.\w+)*) \/\/ ("[^"]*"|-?[\d.]+(?:e-?\d+)?|[[{].*[\]}])$/;

const examples = globSync("src/{core,io}/**/*.ts", { cwd: root })
	.sort()
	.flatMap((file) =>
		readFileSync(root + file, "utf8")
			.split("\n")
			.flatMap((line) => {
				const [, call, result] = EXAMPLE.exec(line.replace(/\s*(\*\/)?$/, "")) ?? [];
				return call && result ? [[call, result, file] as const] : [];
			}),
	);

test("there are examples to run", () => {
	expect(examples.length).toBeGreaterThan(25);
});

test.each(examples)("%s gives %s, as its description says", async (call, result, file) => {
	const names = { ...around, ...(await import(root + file)) };
	const run = (text: string) =>
		new Function(...Object.keys(names), `return (${text})`)(...Object.values(names));
	const [given, said] = [run(call), run(result)];
	expect(asPrecise(given, said)).toEqual(said);
});

/** A value with its numbers rounded to as many digits as are said of each. */
function asPrecise(given: unknown, said: unknown): unknown {
	if (typeof given === "number" && typeof said === "number") {
		const digits = String(said).replace(/e.*|-|\.|^0\.0*/g, "").length;
		return Number(given.toPrecision(digits));
	}
	if (typeof given !== "object" || given === null) return given;
	const parts = Object.entries(given).map(([name, part]) => [
		name,
		asPrecise(part, (said as Record<string, unknown> | null)?.[name]),
	]);
	return Array.isArray(given) ? parts.map(([, part]) => part) : Object.fromEntries(parts);
}
