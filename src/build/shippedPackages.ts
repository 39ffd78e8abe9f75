import { readdirSync, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";

/** A package of others of which something is in what we give out. */
export interface ShippedPackage {
	readonly name: string;
	readonly version: string;
	/** What its package.json declares. */
	readonly licence: string;
	/** Its licence files; none where it comes without. */
	readonly texts: readonly string[];
	/** Who is named in its files with a copyright, and in none of the texts. */
	readonly notices: readonly string[];
}

interface Manifest {
	readonly name: string;
	readonly version: string;
	readonly license?: string;
	readonly dependencies?: Readonly<Record<string, string>>;
}

/**
 * The packages of which something is in a bundle, by name.
 *
 * @param modules ids of the modules that were rendered into it. An id that begins
 * with \0 is code that the bundler itself wrote.
 * @param bundlerFolder where the bundler's own package lies
 * @param leftOut what the build puts nothing in the place of, by the names it is asked for
 */
export function shippedPackages(
	modules: readonly string[],
	bundlerFolder: string,
	leftOut: readonly string[] = [],
): readonly ShippedPackage[] {
	const folders = new Map<string, string[]>();
	for (const id of modules) {
		const file = id.replace(/\?.*$/, "");
		const folder = file.startsWith("\0") ? bundlerFolder : packageFolder(file);
		if (folder === undefined) continue;
		const sources = folders.get(folder) ?? [];
		if (!file.startsWith("\0")) sources.push(readFileSync(file, "utf8"));
		folders.set(folder, sources);
	}
	// What the bundler depends on worked here and is not in the bundle.
	for (const [folder, sources] of folders)
		if (folder !== bundlerFolder)
			for (const inside of lyingInside(folder, sources, leftOut))
				if (!folders.has(inside)) folders.set(inside, []);
	return [...folders]
		.map(([folder, sources]) => describe(folder, sources))
		.sort((one, other) => (one.name < other.name ? -1 : 1));
}

/** The folder of the package that a file belongs to; none for files of this project. */
export function packageFolder(file: string): string | undefined {
	return /^(.*\/node_modules\/(?:@[^/]+\/)?[^/]+)\//.exec(file.replaceAll("\\", "/"))?.[1];
}

/**
 * Folders of packages that lie within the files of another: it declares that it
 * depends on them, and its files never ask for them.
 */
function lyingInside(
	folder: string,
	sources: readonly string[],
	leftOut: readonly string[],
): readonly string[] {
	const resolve = createRequire(join(folder, "package.json")).resolve;
	return Object.keys(manifestOf(folder).dependencies ?? {})
		.filter((name) => !sources.some((text) => new RegExp(`["']${name}["'/]`).test(text)))
		.filter((name) => !leftOut.some((left) => `${left}/`.startsWith(`${name}/`)))
		.map((name) => packageFolder(resolve(name)))
		.filter((inside) => inside !== undefined);
}

function manifestOf(folder: string): Manifest {
	return JSON.parse(readFileSync(join(folder, "package.json"), "utf8"));
}

function describe(folder: string, sources: readonly string[]): ShippedPackage {
	const { name, version, license = "none declared" } = manifestOf(folder);
	const texts = readdirSync(folder)
		.filter((file) => /^(licen[cs]e|copying|notice)/i.test(file))
		.sort()
		.map((file) => readFileSync(join(folder, file), "utf8").trim());
	const notices = new Set(
		sources
			.flatMap((text) => text.match(/\bcopyright\b.*\b(?:19|20)\d\d\b.*/gi) ?? [])
			.map((line) => line.replace(/\s*\*\/\s*$/, "").trim())
			.filter((line) => !texts.some((text) => text.includes(line))),
	);
	return { name, version, licence: license, texts, notices: [...notices].sort() };
}
