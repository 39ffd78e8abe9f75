import type { Plugin } from "vite";
import { expect, test } from "vitest";
import { classicScripts } from "../../src/build/classicScripts.ts";
import type { Scripts } from "../../src/build/scriptLoader.ts";

function chunk(fileName: string, code: string, more: object = {}) {
	return {
		type: "chunk",
		fileName,
		code,
		imports: [],
		dynamicImports: [],
		isEntry: false,
		isDynamicEntry: false,
		...more,
	};
}

/** The code of each script that the plugin makes of a bundle. */
function made(...chunks: ReturnType<typeof chunk>[]): Record<string, string> {
	const bundle = Object.fromEntries(chunks.map((part) => [part.fileName, part]));
	const { generateBundle } = classicScripts() as Plugin & {
		generateBundle: { handler: (options: unknown, bundle: unknown) => void };
	};
	const files: Record<string, string> = {};
	const emitFile = ({ fileName, source }: { fileName: string; source: string }) => {
		files[fileName] = source;
	};
	generateBundle.handler.call({ emitFile }, undefined, bundle);
	for (const { fileName, code } of Object.values(bundle)) files[fileName] = code;
	return files;
}

const entry = chunk("workbook.js", "Promise.resolve().then(()=>require(`./pictures.js`))", {
	isEntry: true,
	imports: ["common.js"],
	dynamicImports: ["pictures.js"],
});
const later = (fileName: string, ...imports: string[]) =>
	chunk(fileName, `exports.of="${fileName}"`, { imports, isDynamicEntry: true });

test("what the first script needs at once stands in it, and what is imported later stays apart", () => {
	const files = made(entry, chunk("common.js", "exports.a=1"), later("pictures.js", "common.js"));
	expect(Object.keys(files).sort()).toEqual(["pictures.js", "workbook.js"]);
	const first = files["workbook.js"] ?? "";
	expect(first.indexOf('define("common.js"')).toBeGreaterThan(0);
	expect(first.indexOf('define("common.js"')).toBeLessThan(first.indexOf('define("workbook.js"'));
	expect(first).toContain('basinbook.load("pictures.js").then(()=>require("./pictures.js"))');
	expect(files["pictures.js"]).toMatch(/^basinbook\.define\("pictures\.js",\["common\.js"\],/);
});

test("what only later parts share comes in one script with the first that needs it", async () => {
	const files = made(
		chunk("workbook.js", "", { isEntry: true }),
		chunk("pictures.js", 'exports.seen=require("./words.js").word+require("./days.js").day', {
			imports: ["words.js", "days.js"],
			isDynamicEntry: true,
		}),
		later("month.js", "words.js"),
		later("begin.js"),
		chunk("words.js", 'exports.word=require("./days.js").day+"s"', { imports: ["days.js"] }),
		chunk("days.js", 'exports.day="day"'),
	);
	const { asked, basinbook } = opened(files);
	await basinbook.load("begin.js");
	expect(asked).toEqual(["begin.js"]);
	await basinbook.load("pictures.js");
	expect(basinbook.require("./pictures.js")).toEqual({ seen: "daysday" });
	await basinbook.load("month.js");
	expect(asked).toEqual(["begin.js", "pictures.js", "shared.js", "month.js"]);
});

/** A page that begins with the first script, and what it has asked for. */
function opened(files: Record<string, string>) {
	const asked: string[] = [];
	const append = ({ src, onload }: { src: string; onload: () => void }) => {
		const name = src.replace("./", "");
		asked.push(name);
		new Function("basinbook", files[name] ?? "")(basinbook);
		onload();
	};
	const page = { createElement: () => ({}), head: { append } };
	const begin = new Function("document", `${files["workbook.js"]}\nreturn basinbook;`);
	const basinbook: Scripts = begin(page);
	return { asked, basinbook };
}

test("a shared part that needs a later one stops the build, because neither could come first", () => {
	expect(() =>
		made(
			chunk("workbook.js", "", { isEntry: true }),
			later("pictures.js", "words.js"),
			later("month.js", "words.js"),
			chunk("words.js", "", { imports: ["month.js"] }),
		),
	).toThrow("words.js is shared and needs month.js, which comes later.");
});

test("a later import written in a way that is not known stops the build", () => {
	const strange = { ...entry, imports: [], code: "import('./pictures.js')" };
	expect(() => made(strange, later("pictures.js"))).toThrow("1 later imports were not found");
});
