import type { Plugin, Rolldown } from "vite";
import { scriptLoader } from "./scriptLoader.ts";

type Chunk = Rolldown.OutputChunk;

/** How the bundler writes `import("./part.ts")` into a CommonJS chunk. */
const LATER = /Promise\.resolve\(\)\.then\(\(\)=>require\(([`"'])\.\/([^`"']+)\1\)\)/g;

/** What only later parts share, so that the first script need not hold it. */
const SHARED = "shared.js";

/**
 * Turns the bundler's CommonJS chunks into classic scripts: one that the page begins with,
 * holding all that is needed at once, one for each part that is imported later, and one of
 * all that several later parts share, which comes with the first of them: a script for every
 * few lines that happen to be shared would be nobody's.
 */
export function classicScripts(): Plugin {
	return {
		name: "classic-scripts",
		generateBundle: {
			order: "post",
			handler(_, bundle) {
				const chunks = Object.values(bundle).filter((part): part is Chunk => part.type === "chunk");
				const entry = chunks.find(({ isEntry }) => isEntry);
				if (!entry) throw new Error("The bundle has no entry.");
				const atOnce = needed(entry, chunks);
				const shared = chunks.filter((chunk) => !chunk.isDynamicEntry && !atOnce.has(chunk));
				const scriptOf = (name: string) =>
					shared.some(({ fileName }) => fileName === name) ? SHARED : name;
				for (const chunk of chunks) chunk.code = defined(chunk, scriptOf);
				entry.code = [
					`var basinbook=(${scriptLoader})(document);`,
					...[...atOnce].map(({ code }) => code),
					`basinbook.require("./${entry.fileName}");`,
				].join("\n");
				for (const chunk of [...atOnce, ...shared])
					if (chunk !== entry) delete bundle[chunk.fileName];
				if (shared.length === 0) return;
				const source = sharedScript(shared, new Set([...atOnce, ...shared]));
				this.emitFile({ type: "asset", fileName: SHARED, source });
			},
		},
	};
}

/** @throws where a part needs what may not be there */
function sharedScript(shared: readonly Chunk[], there: ReadonlySet<Chunk>): string {
	const names = new Set([...there].map(({ fileName }) => fileName));
	for (const { fileName, imports } of shared) {
		const later = imports.find((name) => !names.has(name));
		if (later) throw new Error(`${fileName} is shared and needs ${later}, which comes later.`);
	}
	return [...shared.map(({ code }) => code), `basinbook.define("${SHARED}",[],()=>{});`].join("\n");
}

/** A chunk and all that it imports at once, each after what it needs. */
function needed(chunk: Chunk, all: readonly Chunk[], found = new Set<Chunk>()): Set<Chunk> {
	for (const name of chunk.imports) {
		const other = all.find(({ fileName }) => fileName === name);
		if (other && !found.has(other)) needed(other, all, found);
	}
	return found.add(chunk);
}

/**
 * @param scriptOf the script that brings a part
 * @throws where the bundler writes an import in a way that is not known here
 */
function defined(
	{ fileName, imports, dynamicImports, code }: Chunk,
	scriptOf: (name: string) => string,
): string {
	let found = 0;
	const loading = code.replace(LATER, (_, _quote, name) => {
		found += 1;
		return `basinbook.load("${name}").then(()=>require("./${name}"))`;
	});
	if (found < dynamicImports.length)
		throw new Error(`${fileName}: ${dynamicImports.length - found} later imports were not found.`);
	const needs = JSON.stringify([...new Set(imports.map(scriptOf))]);
	return `basinbook.define("${fileName}",${needs},function(require,exports,module){${loading}\n});`;
}
