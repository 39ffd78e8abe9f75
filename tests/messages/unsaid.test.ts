import { globSync, readFileSync } from "node:fs";
import { parseSync } from "vite";
import { expect, test } from "vitest";
import { visit } from "../../src/messages/messagesIn.ts";

const root = new URL("../../", import.meta.url).pathname;

/** Calls whose texts nobody reads: program errors, and ways to find or change parts of a page. */
const CALLS =
	/^(Error|querySelector(All)?|closest|matches|join|split|replace(All)?|includes|startsWith|toLocaleString|matchMedia|setProperty|setAttribute|getContext|register)$/;
/** Properties whose texts nobody reads. */
const PROPERTIES =
	/^(class|mark|style|tip|fontFamily|accept|sandbox|rel|type|strokeDasharray|d|transform|viewBox)$/;
/** Two words with a space between, as in a sentence. */
const SENTENCE = /[A-Za-z]{2,} [A-Za-z]{2,}/;

/** Texts that are codes of the program, with a space in them: states of a kit, reasons within the zip reader, names of locks. */
const CODES = new Set([
	...["to reprocess", "out of service", "not finished", "not used", "cannot be read"],
	...["out of date", "too weak for the strength wanted", "all kits", "boiled water"],
	...["from memory", "common practice, no source", "left out", "written out"],
	...["not a zip", "other form", "entries elsewhere", "more than the directory says"],
	...["entries overlap", "no end, or two", "no entry", "no contents", "head and directory differ"],
	...["liquid pct_w_v", "liquid pct_naocl_w_v", "liquid chlorometric_degree", "powder pct_w_w"],
	...["basinbook window ", "basinbook saves"],
]);

type Part = { type: string; start: number; end: number; [name: string]: unknown };

function unsaidIn(file: string): string[] {
	const source = readFileSync(root + file, "utf8");
	const found: string[] = [];
	visit(parseSync(file, source, { lang: "ts" }).program as unknown as Part, (node, parents) => {
		const text =
			node.type === "TemplateLiteral"
				? (node.quasis as { value: { cooked: string } }[])
						.map(({ value }) => value.cooked)
						.join("{}")
				: node.type === "Literal" && typeof node.value === "string"
					? node.value
					: "";
		if (!SENTENCE.test(text) || CODES.has(text)) return;
		const ways = parents as unknown as Part[];
		if (ways[0]?.type === "TaggedTemplateExpression" || /^TS/.test(ways[0]?.type ?? "")) return;
		if (/^(Import|Export)/.test(ways[0]?.type ?? "")) return;
		const call = ways.find(({ type }) => type === "CallExpression" || type === "NewExpression");
		const callee = call?.callee as Part & { name?: string; property?: { name?: string } };
		if (CALLS.test(callee?.name ?? callee?.property?.name ?? "")) return;
		const key = ways.find(({ type }) => type === "Property")?.key as {
			name?: string;
			value?: string;
		};
		if (PROPERTIES.test(key?.name ?? key?.value ?? "")) return;
		found.push(`${file}: ${text}`);
	});
	return found;
}

test("every text of the program with two words or more is in the catalogues", () => {
	const files = globSync("src/{core,io,ui}/**/*.ts", { cwd: root }).sort();
	expect(files.flatMap(unsaidIn)).toEqual([]);
});
