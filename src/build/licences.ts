import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname } from "node:path";
import type { Plugin } from "vite";
import { packageFolder, type ShippedPackage, shippedPackages } from "./shippedPackages.ts";

/** Licences under which a part may be given out with this workbook, in the names of SPDX. */
const ALLOWED = ["MIT", "ISC", "0BSD", "BSD-2-Clause", "BSD-3-Clause", "Apache-2.0"];
const RULE = `\n\n${"-".repeat(72)}\n\n`;
const require = createRequire(import.meta.url);

/**
 * Writes licences.txt beside the bundle: our own licence, and those of everything
 * that is really in it.
 *
 * @param leftOut what the build puts nothing in the place of
 * @throws where a part has a licence that we cannot pass on.
 */
export function licences(leftOut: readonly string[]): Plugin {
	return {
		name: "licences",
		generateBundle(_, bundle) {
			const modules = Object.values(bundle).flatMap((part) =>
				part.type === "chunk"
					? Object.entries(part.modules)
							.filter(([, { renderedLength }]) => renderedLength > 0)
							.map(([id]) => id)
					: [],
			);
			// Vite's own bundler puts a few lines of its own among those of others.
			const bundler = packageFolder(
				require.resolve("rolldown", { paths: [dirname(require.resolve("vite"))] }),
			);
			const source = licenceText(shippedPackages(modules, bundler ?? "", leftOut));
			this.emitFile({ type: "asset", fileName: "licences.txt", source });
		},
	};
}

/** The text of licences.txt. It begins with a byte-order mark, so that names with accents are read aright everywhere. */
export function licenceText(packages: readonly ShippedPackage[]): string {
	const refused = packages.filter(({ licence }) => !ALLOWED.includes(licence));
	if (refused.length > 0)
		throw new Error(
			`Not under a licence that may be given out: ${refused.map(({ name, licence }) => `${name} (${licence})`).join(", ")}.`,
		);
	const own = readFileSync(new URL("../../LICENSE", import.meta.url), "utf8").trim();
	return `\uFEFF${[`Basinbook\n\n${own}`, ...packages.map(partText)].join(RULE)}\n`;
}

function partText({ name, version, licence, texts, notices }: ShippedPackage): string {
	const found =
		texts.length > 0
			? texts
			: [`It comes without a licence file; its package.json declares ${licence}.`];
	const named = notices.map((notice) => `Named in its files: ${notice}`);
	return [`${name} ${version}: ${licence}`, ...named, ...found].join("\n\n");
}
