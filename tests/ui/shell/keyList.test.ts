import { expect, test } from "vitest";
import { commandOf, keyList, shownKey } from "../../../src/ui/shell/keyList.ts";

const press = (key: string, held: string[] = []) =>
	commandOf({
		key,
		ctrlKey: held.includes("ctrl"),
		metaKey: held.includes("meta"),
		altKey: held.includes("alt"),
		shiftKey: held.includes("shift"),
	});

test.each([
	["k", ["ctrl"], "find"],
	["k", ["meta"], "find"],
	["z", ["ctrl"], "undo"],
	["Z", ["ctrl", "shift"], "redo"],
	["y", ["ctrl"], "redo"],
	["d", ["ctrl"], "fill"],
	["Insert", ["alt"], "insert"],
	["Delete", ["alt"], "delete"],
	// With or without Shift, as the keyboard has it.
	["?", ["shift"], "keys"],
	["?", [], "keys"],
	["k", [], undefined],
	["d", [], undefined],
	["Delete", [], undefined],
	["Insert", ["shift"], undefined],
	["d", ["ctrl", "alt"], undefined],
	["Z", ["ctrl", "alt", "shift"], undefined],
])("%s with %j: %s", (key, held, command) => {
	expect(press(key, held)).toBe(command);
});

test("no two commands share a key", () => {
	const pressed = keyList.flatMap(({ keys }) =>
		keys.filter(({ command }) => command).flatMap(({ keys }) => keys),
	);
	expect(new Set(pressed).size).toBe(pressed.length);
	expect(pressed.length).toBeGreaterThan(6);
	expect(shownKey("Shift+PageUp")).toBe("Shift+Page up");
});
