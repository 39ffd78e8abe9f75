import type { Problem } from "../../../core/problem.ts";
import { say } from "../../../core/say.ts";
import type { Sheet } from "../../../core/sheet.ts";
import { acceptedEndings } from "../../../io/fileEndings.ts";
import { el, fill } from "../../dom/el.ts";
import { pickFiles } from "../../files/pickFiles.ts";
import { saveFile } from "../../files/saveFile.ts";
import { problemWords } from "../../format/problemWords.ts";
import { keepText, keptText } from "./keptText.ts";
import { withHeader } from "./readDistrictText.ts";

const MOST_PROBLEMS = 5;

/** A table of the district's own that is typed, pasted or loaded on the page, and kept in this browser. */
export class DistrictField {
	readonly element: HTMLElement;
	readonly #sheet: Sheet;
	readonly #changed: () => void;
	readonly #text: HTMLTextAreaElement;
	readonly #problems = el("ul", { class: "problem-list" });

	/** @param example lines as they are typed */
	constructor(sheet: Sheet, example: string, changed: () => void) {
		this.#sheet = sheet;
		this.#changed = changed;
		const id = `district-${sheet.file.replace(".csv", "")}`;
		this.#text = el("textarea", {
			id,
			rows: 5,
			spellcheck: "false",
			"aria-describedby": `${id}-about`,
		});
		this.#text.value = keptText(sheet);
		this.#text.addEventListener("change", () => this.#take());
		const button = (words: string, act: () => void) =>
			el("button", { type: "button", onclick: act }, words);
		this.element = el(
			"details",
			{ class: "district-field", open: this.#text.value !== "" },
			el("summary", {}, sheet.title),
			el(
				"p",
				{ id: `${id}-about`, class: "saying" },
				`${sheet.about} `,
				say`A line each, its parts between commas or pasted from a spreadsheet, for example:`,
				" ",
				el("code", {}, example),
			),
			el("label", { for: id }, say`Lines of “${sheet.title}”`),
			this.#text,
			el("div", { role: "status" }, this.#problems),
			el(
				"div",
				{ class: "tools" },
				button(say`Read ${sheet.file}`, () =>
					pickFiles(acceptedEndings("text"), async ([file]) => {
						if (file) await this.load(file);
					}),
				),
				button(say`Save ${sheet.file}`, () =>
					saveFile(sheet.file, withHeader(sheet, this.text), "text/csv"),
				),
			),
		);
	}

	get text(): string {
		return this.#text.value;
	}

	async load(file: File): Promise<void> {
		this.#text.value = await file.text();
		(this.element as HTMLDetailsElement).open = true;
		this.#take();
	}

	/** What is wrong with its lines. */
	say(problems: readonly Problem[]): void {
		const wrong = problems.slice(0, MOST_PROBLEMS);
		const left = problems.length - wrong.length;
		this.#text.setAttribute("aria-invalid", String(problems.some((p) => p.weight === "error")));
		fill(
			this.#problems,
			...wrong.map((one) =>
				el(
					"li",
					{},
					one.line === null ? problemWords(one) : say`Line ${one.line}. ${problemWords(one)}`,
				),
			),
			left > 0 && el("li", {}, say`… and ${left} more.`),
		);
	}

	#take(): void {
		keepText(this.#sheet, this.text);
		this.#changed();
	}
}
