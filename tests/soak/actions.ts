import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Chance } from "../fuzz/chance.ts";
import { mutated } from "../fuzz/mutated.ts";
import { sampleFiles } from "../fuzz/sample.ts";
import { TROUBLE, textBytes } from "../fuzz/textBytes.ts";
import type { Action } from "./action.ts";
import { bringTogether } from "./bringTogether.ts";
import { chooseCell } from "./chooseCell.ts";
import { dropFiles } from "./dropFiles.ts";
import { fillInBeside } from "./fillInBeside.ts";
import { textFor } from "./textFor.ts";
import { workOn } from "./workOn.ts";

/** The sample as other programs keep it. */
const spreadsheets = ["sample.ods", "sample.xlsx"].map((name) => ({
	name,
	bytes: new Uint8Array(readFileSync(join(import.meta.dirname, "../io/locales", name))),
}));
const words = [...TROUBLE, ",", ";", "\n", '"', "\r\n"].map(textBytes);

/** Presses a key on a cell of the sheet, as a person who first clicks it. */
function onCell(name: string, weight: number, keys: readonly string[]): Action {
	return {
		name,
		weight,
		async act({ page, chance }) {
			if (!(await chooseCell(page, chance))) return false;
			for (const key of keys) await page.keyboard.press(key);
			return true;
		},
	};
}

function steps(name: string, weight: number, key: string): Action {
	return {
		name,
		weight,
		async act({ page, chance }) {
			const times = chance.once(5) ? 1 + chance.below(30) : 1;
			for (let left = times; left > 0; left--) await page.keyboard.press(key);
			return true;
		},
	};
}

export const actions: readonly Action[] = [
	{
		name: "type into a cell",
		weight: 24,
		async act({ page, chance }) {
			if (!(await chooseCell(page, chance))) return false;
			await page.keyboard.type(textFor(chance));
			await page.keyboard.press(chance.pick(["Enter", "Enter", "Tab", "Escape"]));
			return true;
		},
	},
	fillInBeside,
	{
		name: "paste a block",
		weight: 10,
		async act({ page, chance }) {
			if (!(await chooseCell(page, chance))) return false;
			const row = () =>
				Array.from({ length: 1 + chance.below(4) }, () => textFor(chance)).join("\t");
			const block = Array.from({ length: 1 + chance.below(5) }, row).join("\n");
			const text = chance.once(4)
				? new TextDecoder().decode(
						mutated(textBytes(block), chance, { words, other: textBytes(block) }),
					)
				: block;
			await page.evaluate((pasted) => {
				const clipboardData = new DataTransfer();
				clipboardData.setData("text/plain", pasted);
				const event = new ClipboardEvent("paste", {
					clipboardData,
					bubbles: true,
					cancelable: true,
				});
				(document.activeElement ?? document.body).dispatchEvent(event);
			}, text);
			return true;
		},
	},
	{
		name: "go to a sheet",
		weight: 22,
		async act({ page, chance, sheets }) {
			// A person sees the sheet before doing anything on it.
			await page.evaluate(
				(hash) =>
					new Promise<void>((there) => {
						if (location.hash === hash) return there();
						addEventListener("hashchange", () => setTimeout(there), { once: true });
						location.hash = hash;
					}),
				`#${chance.pick(sheets)}`,
			);
			return true;
		},
	},
	steps("undo", 8, "Control+z"),
	steps("redo", 5, "Control+y"),
	onCell("empty a cell", 4, ["Delete"]),
	onCell("empty several cells", 2, ["Shift+ArrowDown", "Shift+ArrowRight", "Delete"]),
	onCell("delete a row", 3, ["Alt+Delete"]),
	onCell("insert a row", 2, ["Alt+Insert"]),
	onCell("fill down", 2, ["Shift+ArrowDown", "Shift+ArrowDown", "Control+d"]),
	onCell("cut", 1, ["Shift+ArrowDown", "Control+x"]),
	onCell("move about", 2, ["ArrowDown", "PageDown", "End", "Control+Home"]),
	{
		name: "drop a damaged sheet",
		weight: 3,
		async act({ page, chance }) {
			const { name, bytes } = chance.pick(sampleFiles);
			const other = chance.pick(sampleFiles).bytes;
			const damaged = mutated(bytes, chance, { words, other });
			await dropFiles(page, [{ name, bytes: damaged }], chance);
			return true;
		},
	},
	{
		name: "drop a sheet",
		weight: 2,
		async act({ page, chance }) {
			await dropFiles(page, [chance.pick(sampleFiles)], chance);
			return true;
		},
	},
	{
		name: "drop the whole sample",
		weight: 1,
		async act({ page, chance }) {
			await dropFiles(page, sampleFiles, chance);
			return true;
		},
	},
	{
		name: "drop what was saved last, now and then damaged",
		weight: 1,
		async act({ page, chance, saved }) {
			if (!saved) return false;
			const bytes = chance.once(3) ? mutated(saved, chance, { words, other: saved }) : saved;
			await dropFiles(page, [{ name: "saved.zip", bytes }], chance);
			return true;
		},
	},
	{
		name: "drop a spreadsheet, now and then damaged",
		weight: 1,
		async act({ page, chance }) {
			const { name, bytes } = chance.pick(spreadsheets);
			const given = chance.once(3) ? mutated(bytes, chance, { words, other: bytes }) : bytes;
			await dropFiles(page, [{ name, bytes: given }], chance);
			return true;
		},
	},
	bringTogether,
	workOn("today", "do things under Today"),
	workOn("monday", "do things under Monday"),
	workOn("what-if", "try things under What if?"),
	workOn("month", "do things under Month"),
	workOn("storekeeper", "do things in the store"),
	{
		name: "find",
		weight: 1,
		async act({ page, chance }) {
			await page.keyboard.press("Control+k");
			await page.keyboard.type(textFor(chance).slice(0, 10));
			await page.keyboard.press("Escape");
			return true;
		},
	},
	{
		name: "save",
		weight: 1,
		async act(soak) {
			await soak.save();
			return true;
		},
	},
];

const drawn = actions.flatMap((action) => Array.from({ length: action.weight }, () => action));

export function nextAction(chance: Chance): Action {
	return chance.pick(drawn);
}
