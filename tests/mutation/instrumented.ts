import { cpSync, globSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { broken } from "./broken.ts";

const root = fileURLToPath(new URL("../../", import.meta.url));
/** A copy of the program to break; inside the project, so that packages are found. */
export const copy = `${root}coverage/mutation/`;

/** One way in which a source file is broken on purpose. */
export interface Mutant {
	readonly id: string;
	readonly file: string;
	readonly line: number;
	readonly column: number;
	readonly mutator: string;
	/** What stands there in its place. */
	readonly replacement: string;
	/** What stood there. */
	readonly original: string;
}

/** Copies the program and its tests: nothing done to the project meanwhile tells. */
export function copied(): void {
	rmSync(copy, { recursive: true, force: true });
	for (const part of ["src", "sample-csv", "tests", "docs/manual", "package.json", "tsconfig.json"])
		cpSync(root + part, copy + part, { recursive: true });
}

/** Builds every mutant of these source files into the copy, each behind a switch. */
export async function instrumented(pattern: string): Promise<readonly Mutant[]> {
	const names = globSync(pattern, { cwd: root }).sort();
	const files = names.map((name) => ({
		name,
		mutate: true,
		content: readFileSync(root + name, "utf8"),
	}));
	const { files: written, mutants } = await broken(files);
	for (const { name, content } of written) writeFileSync(copy + name, content);
	return mutants
		.filter(({ status }) => status !== "Ignored")
		.map(({ id, fileName, location, mutatorName, replacement }) => ({
			id,
			file: fileName,
			line: location.start.line + 1,
			column: location.start.column + 1,
			mutator: mutatorName,
			replacement: replacement ?? "",
			original: textAt(readFileSync(root + fileName, "utf8"), location),
		}));
}

interface Location {
	readonly start: { readonly line: number; readonly column: number };
	readonly end: { readonly line: number; readonly column: number };
}

function textAt(source: string, { start, end }: Location): string {
	const lines = source.split("\n").slice(start.line, end.line + 1);
	const last = lines.length - 1;
	lines[last] = (lines[last] ?? "").slice(0, end.column);
	lines[0] = (lines[0] ?? "").slice(start.column);
	return lines.join("\n");
}
