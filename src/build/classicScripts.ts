import type { Plugin, Rolldown } from "vite";
import { scriptLoader } from "./scriptLoader.ts";

type Chunk = Rolldown.OutputChunk;

/** How the bundler writes `import("./part.ts")` into a CommonJS chunk. */
const LATER = /Promise\.resolve\(\)\.then\(\(\)=>require\(([`"'])\.\/([^`"']+)\1\)\)/g;

/**
 * Turns the bundler's CommonJS chunks into classic scripts: one that the page begins with,
 * holding all that is needed at once, and one for each part that is imported later. What
 * only two later parts share goes into the first script: a name of its own for every few
 * lines that happen to be shared would be nobody's.
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
				const shared = chunks.filter((chunk) => !chunk.isEntry && !chunk.isDynamicEntry);
				const atOnce = shared.reduce(
					(found, chunk) => needed(chunk, chunks, found),
					new Set<Chunk>(),
				);
				needed(entry, chunks, atOnce);
				for (const chunk of chunks) chunk.code = defined(chunk);
				entry.code = [
					`var basinbook=(${scriptLoader})(document);`,
					...[...atOnce].map(({ code }) => code),
					`basinbook.require("./${entry.fileName}");`,
				].join("\n");
				for (const chunk of atOnce) if (chunk !== entry) delete bundle[chunk.fileName];
			},
		},
	};
}

/** A chunk and all that it imports at once, each after what it needs. */
function needed(chunk: Chunk, all: readonly Chunk[], found: Set<Chunk>): Set<Chunk> {
	for (const name of chunk.imports) {
		const other = all.find(({ fileName }) => fileName === name);
		if (other && !found.has(other)) needed(other, all, found);
	}
	return found.add(chunk);
}

/** @throws where the bundler writes an import in a way that is not known here */
function defined({ fileName, imports, dynamicImports, code }: Chunk): string {
	let found = 0;
	const loading = code.replace(LATER, (_, _quote, name) => {
		found += 1;
		return `basinbook.load("${name}").then(()=>require("./${name}"))`;
	});
	if (found < dynamicImports.length)
		throw new Error(`${fileName}: ${dynamicImports.length - found} later imports were not found.`);
	return `basinbook.define("${fileName}",${JSON.stringify(imports)},function(require,exports,module){${loading}\n});`;
}
