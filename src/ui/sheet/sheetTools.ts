import { say } from "../../core/say.ts";
import { unitSheet } from "../../core/sheets/unit.ts";
import { el } from "../dom/el.ts";
import { saveSheet } from "../files/saveWorkbook.ts";
import type { GridPage } from "../page.ts";
import { printOut } from "../print/printOut.ts";
import { commandOf, shownKey } from "../shell/keyList.ts";
import type { Store } from "../state/store.ts";
import { ArrangePanel } from "./arrangePanel.ts";
import type { Desk } from "./desk.ts";
import { hasOwnRows, type RowCommands, rowCommands } from "./rowCommands.ts";
import { settingFinder } from "./settingFinder.ts";

/** The line of tools over a grid, and the line beneath it that says what was done and what is shown. */
export class SheetTools {
	readonly element: HTMLElement;
	/** What the tools open or say; it has no place among what folds away. */
	readonly below: HTMLElement;
	readonly #status = el("p", { class: "shown-rows", role: "status" });
	readonly #arranging: ArrangePanel | undefined;
	readonly #desk: Desk;

	constructor(file: string, { prints, cells }: GridPage, desk: Desk, store: Store) {
		this.#desk = desk;
		const commands = rowCommands(file, desk, store);
		const act = (name: keyof RowCommands) => {
			const block = desk.range();
			const done = block ? commands[name](block) : say`Select a cell of the grid first.`;
			this.#say(done);
		};
		const button = (words: string, onclick: () => void, key?: string) =>
			el("button", { type: "button", onclick, title: key && shownKey(key) }, words);
		desk.pressed = (event) => {
			const command = commandOf(event);
			const ours = command && command in commands;
			if (ours) act(command as keyof RowCommands);
			return ours ?? false;
		};
		const isOneSheet = cells?.fills !== "right";
		if (isOneSheet)
			this.#arranging = new ArrangePanel((arrangement) => {
				desk.arrange(arrangement);
				this.paint();
			});
		const save = (forSpreadsheets: boolean) =>
			saveSheet(store.state.workbook, store.state.plan, file, forSpreadsheets);
		this.element = el(
			"div",
			{ class: "tools" },
			desk.aside.button,
			asTable(desk.table),
			this.#arranging?.button,
			!isOneSheet && button(say`Fill right`, () => act("fill"), "Ctrl+D"),
			hasOwnRows(file) && button(say`Fill down`, () => act("fill"), "Ctrl+D"),
			hasOwnRows(file) && button(say`Insert row`, () => act("insert"), "Alt+Insert"),
			hasOwnRows(file) && button(say`Delete rows`, () => act("delete"), "Alt+Delete"),
			cells?.goOn && button(say`Go on with the next day`, () => desk.goOn()),
			isOneSheet && button(say`Save this sheet (CSV)`, () => save(false)),
			isOneSheet && button(say`Save for spreadsheets (CSV)`, () => save(true)),
			...(prints ?? []).map((out) => button(out.name, () => printOut(out, store.state))),
			prints === undefined && button(say`Print this page`, () => window.print()),
		);
		const find = (contains: string) => {
			desk.arrange({ ...desk.shown.arrangement, contains });
			this.paint();
		};
		this.below = el(
			"div",
			{},
			file === unitSheet.file && settingFinder(find),
			this.#arranging?.element,
			this.#status,
		);
	}

	/** After a change of the sheet, or of what is shown of it. */
	paint(): void {
		const { sheet, arrangement } = this.#desk.shown;
		this.#arranging?.paint(sheet?.columns ?? [], arrangement);
		this.#say("");
	}

	#say(done: string): void {
		const words = [done, this.#desk.shown.words].filter((part) => part !== "").join(" ");
		if (this.#status.textContent !== words) this.#status.textContent = words;
	}
}

function asTable(table: HTMLElement): HTMLElement {
	const button = el("button", { type: "button", "aria-pressed": "false" }, say`Read as a table`);
	button.addEventListener("click", () => {
		const on = table.classList.toggle("open");
		button.setAttribute("aria-pressed", String(on));
	});
	return button;
}
