import { execFileSync } from "node:child_process";
import type { Format, Printer } from "./printer.ts";

export interface PaperPage {
	readonly text: string;
	readonly words: number;
	/** In points: the paper, and how far its outermost words go. */
	readonly width: number;
	readonly height: number;
	readonly left: number;
	readonly right: number;
	readonly bottom: number;
}

export interface Paper {
	readonly browser: Printer["name"];
	readonly pages: readonly PaperPage[];
	/** What every page ends with; "" where none has an end. */
	readonly end: string;
	/** The fewest words that a head and an end have together. */
	readonly wordsOfFrame: number;
	/** Cells whose words go beyond their edge. */
	readonly cut: readonly string[];
	/** Rows in the longest part of a table made for paper. */
	readonly rowsTogether: number;
}

/** Prints what stands on the paper, and reads it. */
export async function readPaper(printer: Printer, format: Format): Promise<Paper> {
	const frame = (await printer.run(framesOnPaper, undefined)) as {
		end: string;
		words: number;
		cut: string[];
		rowsTogether: number;
	};
	const pdf = await printer.pdf(format);
	return {
		browser: printer.name,
		pages: pagesOf(pdf),
		end: frame.end,
		wordsOfFrame: frame.words,
		cut: frame.cut,
		rowsTogether: frame.rowsTogether,
	};
}

/** Words with their places, which poppler gives page by page. */
function pagesOf(pdf: Uint8Array): PaperPage[] {
	const html = execFileSync("pdftotext", ["-bbox", "-", "-"], {
		input: pdf,
		encoding: "utf8",
		maxBuffer: 1 << 28,
	});
	return html
		.split("<page ")
		.slice(1)
		.map((page) => {
			const [, width, height] = /width="([\d.]+)" height="([\d.]+)"/.exec(page) ?? [];
			const word =
				/<word xMin="([-\d.]+)" yMin="[-\d.]+" xMax="([-\d.]+)" yMax="([-\d.]+)">(.*)<\/word>/g;
			const words = [...page.matchAll(word)];
			const edge = (group: number) => words.map((each) => Number(each[group]));
			return {
				text: words.map((each) => unescaped(each[4] ?? "")).join(" "),
				words: words.length,
				width: Number(width),
				height: Number(height),
				left: Math.min(...edge(1)),
				right: Math.max(...edge(2)),
				bottom: Math.max(...edge(3)),
			};
		});
}

function unescaped(text: string): string {
	return text.replaceAll("&apos;", "'").replaceAll("&#39;", "'").replaceAll("&amp;", "&");
}

/** In the page: what repeats of the form that is about to be printed, and what does not fit its cell. */
function framesOnPaper() {
	const words = (element: Element | null | undefined) =>
		element?.textContent?.trim().split(/\s+/) ?? [];
	const onPaper = document.body.classList.contains("on-paper");
	const frames = [
		...document.querySelectorAll(`${onPaper ? "#paper" : ".main-part"} > .form-frame`),
	];
	const counts = frames.map(
		(frame) =>
			words(frame.querySelector(".form-head .printed-head")).length +
			words(frame.querySelector(".form-end")).length,
	);
	const ends = frames.map((frame) => frame.querySelector(".form-end .standing")?.textContent ?? "");
	const end = ends.find((words) => words !== "") ?? "";
	const cells = [...document.querySelectorAll<HTMLElement>("#paper :is(td, th)")];
	return {
		end: end.replaceAll("’", "'").split(".")[0] ?? "",
		words: Math.min(...counts),
		cut: cells
			.filter((cell) => cell.clientWidth > 0 && cell.scrollWidth > cell.clientWidth + 1)
			.map((cell) => cell.textContent ?? ""),
		rowsTogether: Math.max(
			0,
			...[...document.querySelectorAll("#paper .paper-table tbody")].map(
				({ childElementCount }) => childElementCount,
			),
		),
	};
}
