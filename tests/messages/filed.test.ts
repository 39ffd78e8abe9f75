import { expect, test } from "vitest";
import { filed } from "../../src/messages/filed.ts";

const messages = new Map([
	["Open", "ui/files"],
	["{0} kits", "core/kits"],
	["Close", "ui/files"],
]);

test("a message goes to the file of its folder, wherever its words stood", () => {
	const { files } = filed(messages, {
		"new.json": { "{0} kits": "{0} kits prêts", Open: "Ouvrir" },
		"ui/files.json": { Close: "Fermer" },
	});
	expect(JSON.stringify(files)).toBe(
		JSON.stringify({
			"ui/files.json": { Close: "Fermer", Open: "Ouvrir" },
			"core/kits.json": { "{0} kits": "{0} kits prêts" },
		}),
	);
});

test("a message without words stands in its file and waits, and is listed", () => {
	const { files, missing } = filed(messages, {
		"ui/files.json": { Close: "Fermer", Open: "" },
		"core/kits.json": { "{0} kits": "{0} kits" },
	});
	expect(files["ui/files.json"]).toEqual({ Close: "Fermer", Open: "" });
	expect(missing).toEqual([["Open", "ui/files.json"]]);
});

test("what nobody says any longer is handed back with its words", () => {
	const { files, spare } = filed(messages, { "ui/files.json": { Shut: "Clore" } });
	expect(spare).toEqual([["Shut", "Clore"]]);
	expect(JSON.stringify(files)).not.toContain("Shut");
});

test("the same words in two files are one entry; different ones are for a person to settle", () => {
	const twice = { "a.json": { Open: "Ouvrir" }, "b.json": { Open: "Ouvrir" } };
	expect(filed(messages, twice).files["ui/files.json"]).toEqual({ Close: "", Open: "Ouvrir" });
	const two = { "a.json": { Open: "Ouvrir" }, "b.json": { Open: "Ouvrez" } };
	expect(() => filed(messages, two)).toThrow("two translations");
});
