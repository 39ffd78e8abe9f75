import type { ComputedTable } from "../../../core/computedTable.ts";
import type { Customs } from "../../../core/read/block/blockTable.ts";
import { say } from "../../../core/say.ts";
import { combinedOrderSheet } from "../../../core/sheets/combinedOrder.ts";
import { computedCsv } from "../../../io/computedCsv.ts";
import type { NamedBytes } from "../../../io/unzip.ts";
import { breath } from "../../dom/breath.ts";
import { el, fill } from "../../dom/el.ts";
import { catchDrops } from "../../files/catchDrops.ts";
import { pickFiles } from "../../files/pickFiles.ts";
import { questionWords } from "../../files/questionWords.ts";
import { bytesOf } from "../../files/savedFile.ts";
import { saveFile } from "../../files/saveFile.ts";
import { counted } from "../../format/counted.ts";
import type { OwnPage, View } from "../../page.ts";
import { printOut } from "../../print/printOut.ts";
import { pageHead } from "../../sheet/pageHead.ts";
import { ask } from "../../shell/ask.ts";
import { combinedInSlices } from "./combinedInSlices.ts";
import { combinedHeadline, combinedLines, packsSaved } from "./combinedLines.ts";
import { combinedPage } from "./combinedPage.ts";
import { combinedTable } from "./combinedTable.ts";
import { OrderPile } from "./orderPile.ts";
import { type Progress, progressBar } from "./progressBar.ts";
import { reportList } from "./reportList.ts";
import { severalUnitsTitle } from "./severalUnitsTitle.ts";

const about = say`Give the order.csv of each unit (Save this sheet, on the unit's own “What to order”), or the workbooks that the units have saved. Packs are counted from the need of all units together; a unit with more than enough does not lend to the others. Nothing leaves this computer, and the workbook that is open stays as it is.`;

/** What was read stays while the person looks at other sheets. */
let pile = new OrderPile();
let table: ComputedTable<typeof combinedOrderSheet> | undefined;

/** Several units' order files as one list. */
export const severalUnitsPage: OwnPage = {
	mount(place, { store }) {
		const title = el("h1", {});
		const result = el("div", {});
		const bar = progressBar();
		const button = (words: string, act: () => void, main = false) =>
			el("button", { type: "button", class: main ? "main" : undefined, onclick: act }, words);
		const buttons = [
			button(say`Choose order files`, () => pickFiles(".csv,.txt,.tsv,.zip", take), true),
			button(say`Save the list (CSV)`, () => {
				if (table) saveFile(combinedOrderSheet.file, computedCsv(table), "text/csv");
			}),
			button(say`Print the list`, () => print("left out")),
			button(say`Print with each unit's share`, () => print("written out")),
			button(say`Start again`, () => {
				pile = new OrderPile();
				table = undefined;
				paint();
			}),
		];
		const print = (shares: "left out" | "written out") => {
			if (table) printOut(combinedPage(pile.orders, table, shares), store.state);
		};
		const take = async (files: readonly File[]) => {
			if (files.length === 0 || bar.isWorking()) return;
			for (const each of buttons) each.disabled = true;
			await readAll(files, bar);
			paint();
		};
		const paint = () => {
			const lines = table ? combinedLines(table) : [];
			title.textContent = combinedHeadline(pile.orders, lines);
			buttons.forEach((each, at) => {
				each.disabled =
					at > 0 && (at < 4 ? lines.length === 0 : pile.reports.length + lines.length === 0);
			});
			fill(result, ...contents(lines));
		};
		const contents = (lines: ReturnType<typeof combinedLines>) => {
			const saved = packsSaved(pile.orders, lines);
			return [
				saved && el("p", { class: "saying" }, saved),
				pile.reports.length > 0 && reportList(pile.reports),
				lines.length > 0 &&
					el(
						"div",
						{
							class: "combined",
							tabindex: 0,
							role: "region",
							"aria-label": say`All units together`,
						},
						combinedTable(lines, "folded"),
					),
			];
		};
		const release = catchDrops(take);
		fill(
			place,
			pageHead(title, about),
			el("div", { class: "tools" }, ...buttons),
			el("p", { class: "drop-here" }, say`Or drop the files anywhere on this page.`),
			bar.element,
			result,
		);
		paint();
		const view: View = { file: severalUnitsTitle.file, paint() {}, show() {}, destroy: release };
		return view;
	},
};

/** Adds a file to the pile and asks what only the person can know of it. @returns the answers, which hold for the files after it too */
async function addAsking(file: NamedBytes, before: Customs): Promise<Customs> {
	let answers = before;
	for (;;) {
		const question = pile.add(file, answers);
		if (!question) return answers;
		const answer = await ask(questionWords(question));
		if (!answer) {
			pile.add(file, "none");
			return answers;
		}
		answers = { ...answers, [question.about]: answer };
	}
}

/** Reads the files and adds the orders up, in slices. */
async function readAll(files: readonly File[], bar: Progress): Promise<void> {
	const pause = breath();
	let read = 0;
	let answers: Customs = {};
	for (const file of files) {
		answers = await addAsking({ name: file.name, bytes: await bytesOf(file) }, answers);
		bar.show(++read, files.length, say`${read} of ${counted(files.length, "file")} read`);
		await pause();
	}
	const slices = combinedInSlices(pile.orders);
	for (let next = slices.next(); ; next = slices.next()) {
		if (next.done) {
			table = next.value;
			break;
		}
		const { done, all } = next.value;
		bar.show(done, all, say`${done} of ${counted(all, "item")} added up`);
		await pause();
	}
	bar.done(
		say`${counted(files.length, "file")} read. ${counted(pile.orders.length, "unit")} in the list.`,
	);
}
