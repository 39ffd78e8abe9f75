import type { Plugin } from "vite";
import { catalogueOf } from "./catalogueOf.ts";
import { messagesIn, type Said } from "./messagesIn.ts";

const OURS = /\/src\/(core|io|ui|components|layouts|pages)\/[^?]*\.(ts|astro)$/;

/**
 * Builds the program in another language: every say`…` gets that language's words,
 * so the page carries one language and looks nothing up while it runs.
 *
 * @param isRelease a message without a translation fails a release; while the program
 * is being developed it stays English, and the build names it
 */
export function inLanguage(language: string, isRelease: boolean): Plugin {
	const catalogue = catalogueOf(language);
	return {
		name: "in-language",
		transform(source, file) {
			if (file.endsWith("/src/core/language.ts"))
				return source.replace('= "en"', `= ${JSON.stringify(language)}`);
			if (!OURS.test(file) || file.endsWith("/src/core/say.ts")) return undefined;
			return translated(source, catalogue, (message) => {
				const missing = `${file}: no translation of "${message}"`;
				if (isRelease) throw new Error(missing);
				this.warn(missing);
			});
		},
	};
}

/**
 * The source with the words of a catalogue in the place of the English ones.
 *
 * @param missing is told of a message without a translation, and may throw; the
 * message stays English
 */
export function translated(
	source: string,
	catalogue: ReadonlyMap<string, string>,
	missing: (message: string) => void,
): string {
	const all = messagesIn(source, "page.ts");
	const within = (start: number, end: number): string => {
		let out = "";
		let at = start;
		for (const said of all) {
			if (said.start < at || said.end > end) continue;
			out += source.slice(at, said.start) + words(said);
			at = said.end;
		}
		return out + source.slice(at, end);
	};
	const words = ({ message, values }: Said): string => {
		if (!catalogue.has(message)) missing(message);
		const own = catalogue.get(message) ?? message;
		const texts = own.split(/\{(\d+)\}/).map((part, at) => {
			if (at % 2 === 0) return part.replace(/[\\`]|\$\{/g, "\\$&").replaceAll("\n", "\\n");
			const value = values[Number(part)];
			if (!value) throw new Error(`"${own}" has no value ${part}`);
			return `\${${within(value.start, value.end)}}`;
		});
		return `say\`${texts.join("")}\``;
	};
	return within(0, source.length);
}
