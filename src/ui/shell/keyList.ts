import { say } from "../../core/say.ts";

/** What the page itself does on a key; the other keys are the browser's or the grid's. */
export type KeyCommand = "find" | "keys" | "undo" | "redo" | "fill" | "insert" | "delete";

export interface Key {
	/** As the keys are pressed, any one of them: "Ctrl+Shift+Z". */
	readonly keys: readonly string[];
	readonly does: string;
	readonly command?: KeyCommand;
}

export interface KeyGroup {
	readonly where: string;
	readonly keys: readonly Key[];
}

/** Every key of the workbook, said once: the page acts by it, and its list and the guide print it. */
export const keyList: readonly KeyGroup[] = [
	{
		where: say`Anywhere`,
		keys: [
			{ keys: ["Ctrl+K"], does: say`Find in the whole workbook`, command: "find" },
			{ keys: ["Ctrl+S"], does: say`Save the workbook; with Shift, as another file` },
			{ keys: ["Ctrl+Z"], does: say`One step back, on whatever sheet it was`, command: "undo" },
			{ keys: ["Ctrl+Y", "Ctrl+Shift+Z"], does: say`One step forward again`, command: "redo" },
			{
				keys: ["Tab", "Shift+Tab"],
				does: say`On to the next field or button, or back; into the grid and out of it`,
			},
			{
				keys: ["?"],
				does: say`This list, while you are not in the grid or in a field`,
				command: "keys",
			},
		],
	},
	{
		where: say`In the grid`,
		keys: [
			{ keys: ["↑", "↓", "←", "→"], does: say`From cell to cell` },
			{ keys: ["Home", "End"], does: say`First and last column; with Ctrl, first and last row` },
			{ keys: ["PageUp", "PageDown"], does: say`One screen up or down` },
			{ keys: ["Shift+↓", "Shift+→"], does: say`Select several cells; with Ctrl+A all of them` },
			{
				keys: ["Enter", "F2"],
				does: say`Edit the cell; typing edits it too and replaces what it holds`,
			},
			{
				keys: ["Alt+Enter"],
				does: say`About this cell: how its number comes about, and what it may hold; on a computed cell Enter alone. Escape goes back`,
			},
			{ keys: ["Delete"], does: say`Empty the selected cells` },
			{
				keys: ["Ctrl+C", "Ctrl+X", "Ctrl+V"],
				does: say`Copy, cut and paste, from and to any spreadsheet`,
			},
			{
				keys: ["Ctrl+D"],
				does: say`Fill the selected cells with the first of each column; one cell takes the cell above (in the plan, the day before)`,
				command: "fill",
			},
			{ keys: ["Alt+Insert"], does: say`Insert a row above the selected one`, command: "insert" },
			{ keys: ["Alt+Delete"], does: say`Delete the selected rows`, command: "delete" },
		],
	},
	{
		where: say`While a cell is edited`,
		keys: [
			{ keys: ["Enter"], does: say`Keep the text and go down` },
			{ keys: ["Tab"], does: say`Keep the text and go right` },
			{ keys: ["Escape"], does: say`Leave the old text` },
			{ keys: ["↑", "↓"], does: say`In a closed list, the word before or after` },
		],
	},
];

/** On a Mac keyboard. */
export const onMac = say`On a Mac, ⌘ does what Ctrl does.`;

const names: Readonly<Record<string, string>> = {
	Shift: say`Shift`,
	Home: say`Home`,
	End: say`End`,
	PageUp: say`Page up`,
	PageDown: say`Page down`,
	Enter: say`Enter`,
	Delete: say`Del`,
	Insert: say`Ins`,
	Escape: say`Esc`,
};

/** A key as it is written on the keyboard. @example shownKey("Alt+Insert"); in French "Alt+Inser" */
export function shownKey(key: string): string {
	return key
		.split("+")
		.map((part) => names[part] ?? part)
		.join("+");
}

const commands = new Map(
	keyList.flatMap(({ keys }) =>
		keys.flatMap(({ keys: pressed, command }) =>
			command ? pressed.map((key) => [key, command] as const) : [],
		),
	),
);

/** What a press of keys asks the page to do, if anything. */
export function commandOf(
	event: Pick<KeyboardEvent, "key" | "ctrlKey" | "metaKey" | "altKey" | "shiftKey">,
): KeyCommand | undefined {
	const ctrl = event.ctrlKey || event.metaKey;
	// "?" is typed with Shift on some keyboards and without on others.
	const shift = event.shiftKey && (ctrl || event.altKey || event.key.length > 1);
	const key = event.key.length === 1 ? event.key.toUpperCase() : event.key;
	const pressed = [ctrl && "Ctrl", event.altKey && "Alt", shift && "Shift", key].filter(Boolean);
	return commands.get(pressed.join("+"));
}
