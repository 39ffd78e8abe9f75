import type { Plugin } from "vite";
import { expect, test } from "vitest";
import { classicScripts } from "../../src/build/classicScripts.ts";

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

/** What the plugin makes of a bundle. */
function made(...chunks: ReturnType<typeof chunk>[]): Record<string, ReturnType<typeof chunk>> {
	const bundle = Object.fromEntries(chunks.map((part) => [part.fileName, part]));
	const { generateBundle } = classicScripts() as Plugin & {
		generateBundle: { handler: (options: unknown, bundle: unknown) => void };
	};
	generateBundle.handler(undefined, bundle);
	return bundle;
}

test("what the first script needs at once stands in it, and what is imported later stays apart", () => {
	const files = made(
		chunk("workbook.js", "Promise.resolve().then(()=>require(`./pictures.js`))", {
			isEntry: true,
			imports: ["common.js"],
			dynamicImports: ["pictures.js"],
		}),
		chunk("common.js", "exports.a=1"),
		chunk("pictures.js", 'require("./common.js");require("./shared.js")', {
			imports: ["common.js", "shared.js"],
			isDynamicEntry: true,
		}),
		chunk("shared.js", "exports.b=2"),
	);
	expect(Object.keys(files)).toEqual(["workbook.js", "pictures.js"]);
	const first = files["workbook.js"]?.code ?? "";
	expect(first).toContain('define("shared.js"');
	expect(first.indexOf('define("common.js"')).toBeLessThan(first.indexOf('define("workbook.js"'));
	expect(first).toContain('basinbook.load("pictures.js").then(()=>require("./pictures.js"))');
	expect(files["pictures.js"]?.code).toMatch(
		/^basinbook\.define\("pictures\.js",\["common\.js","shared\.js"\],/,
	);
});

test("a later import written in a way that is not known stops the build", () => {
	const entry = chunk("workbook.js", "import('./pictures.js')", {
		isEntry: true,
		dynamicImports: ["pictures.js"],
	});
	expect(() => made(entry, chunk("pictures.js", "", { isDynamicEntry: true }))).toThrow(
		"1 later imports were not found",
	);
});
