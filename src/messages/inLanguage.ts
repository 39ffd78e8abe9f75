import type { Plugin } from "vite";
import { BESIDE } from "../core/say.ts";
import { catalogueOf } from "./catalogueOf.ts";
import { messagesIn, type Said } from "./messagesIn.ts";
import { reviewStateOf } from "./reviewStateOf.ts";

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
	const isUnreviewed = reviewStateOf(language) === "not reviewed";
	return {
		name: "in-language",
		transform(source, file) {
			if (file.endsWith("/src/core/language.ts"))
				return source
					.replace('= "en"', `= ${JSON.stringify(language)}`)
					.replace("isUnreviewed = false", `isUnreviewed = ${isUnreviewed}`);
			if (!OURS.test(file) || file.endsWith("/src/core/say.ts")) return undefined;
			const missing = (message: string) => {
				const words = `${file}: no translation of "${message}"`;
				if (isRelease) throw new Error(words);
				this.warn(words);
			};
			return translated(source, catalogue, missing, isUnreviewed);
		},
	};
}

/**
 * The source with the words of a catalogue in the place of the English ones.
 *
 * @param missing is told of a message without a translation, and may throw; the
 * message stays English
 * @param isUnreviewed texts of safety then have their English beside them
 */
export function translated(
	source: string,
	catalogue: ReadonlyMap<string, string>,
	missing: (message: string) => void,
	isUnreviewed = false,
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
	const words = ({ message, isSafety, values }: Said): string => {
		if (!catalogue.has(message)) missing(message);
		const own = catalogue.get(message) ?? message;
		const inOwn = filled(own, values, ({ start, end }) => within(start, end));
		if (!isSafety || !isUnreviewed || own === message) return `say\`${inOwn}\``;
		const inEnglish = filled(message, values, ({ start, end }) => source.slice(start, end));
		return `say\`${inOwn}${BESIDE}${inEnglish}\``;
	};
	return within(0, source.length);
}

/** The inside of a tagged text. @param written how a value's place is written */
function filled(
	words: string,
	values: Said["values"],
	written: (value: Said["values"][number]) => string,
): string {
	const texts = words.split(/\{(\d+)\}/).map((part, at) => {
		if (at % 2 === 0) return part.replace(/[\\`]|\$\{/g, "\\$&").replaceAll("\n", "\\n");
		const value = values[Number(part)];
		if (!value) throw new Error(`"${words}" has no value ${part}`);
		return `\${${written(value)}}`;
	});
	return texts.join("");
}
