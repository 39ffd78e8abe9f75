import { afterAll, describe, expect, test } from "vitest";
import { startFirefox } from "./firefox.ts";
import { browser, served } from "./fixture.ts";
import { expectForm } from "./print/expectForm.ts";
import { type Form, forms } from "./print/forms.ts";
import {
	chromiumPrinter,
	dropUnit,
	type Format,
	firefoxPrinter,
	goTo,
	type Printer,
	pressPrint,
	putAway,
} from "./print/printer.ts";
import { readPaper } from "./print/readPaper.ts";
import { type Amount, FULL, SMALLEST, unitOf, YEAR } from "./print/sizesOfData.ts";

/** Where a part of the matrix is enough: the forms that grow with the data. */
const growing = new Set([
	"Print this day’s work sheet",
	"Print the order form",
	"Print the boiling sheet",
	"Print one with what the books say",
]);
const isGrowing = ({ on, button }: Form) => growing.has(button) || on === "today";

/** A year prints hundreds of pages of some forms; these have one line a day or fewer. */
const ofYear = ({ on, button }: Form) =>
	["this-week", "order.csv", "births.csv"].includes(on) && button === "";

interface Part {
	readonly make: "Chromium" | "Firefox";
	readonly format: Format;
	readonly amount: Amount;
	readonly name: string;
	readonly which: (form: Form) => boolean;
}

const all = () => true;
const inSuite: readonly Part[] = [
	{ make: "Chromium", format: "A4", amount: SMALLEST, name: "the least", which: all },
	{ make: "Chromium", format: "A4", amount: FULL, name: "the most", which: all },
	{ make: "Chromium", format: "Letter", amount: FULL, name: "the most", which: isGrowing },
	{ make: "Firefox", format: "A4", amount: FULL, name: "the most", which: isGrowing },
];
const amounts = [
	["the least", SMALLEST, all],
	["the most", FULL, all],
	["a year", YEAR, ofYear],
] as const;
const whole = (["Chromium", "Firefox"] as const).flatMap((make) =>
	(["A4", "Letter"] as const).flatMap((format) =>
		amounts.map(([name, amount, which]): Part => ({ make, format, amount, name, which })),
	),
);

/** WHOLE_MATRIX=1 asks for every form, amount, browser and paper. */
const parts = process.env.WHOLE_MATRIX ? whole : inSuite;

describe("every page of every form says whose it is", { timeout: 600_000 }, () => {
	const open: (() => Promise<void>)[] = [];
	afterAll(async () => {
		for (const close of open) await close();
	});

	async function printerOf(make: Part["make"]): Promise<Printer> {
		const address = `${served.address}index.html#this-week`;
		if (make === "Chromium") {
			const context = await browser.newContext({
				viewport: { width: 1366, height: 768 },
				serviceWorkers: "block",
			});
			open.push(() => context.close());
			const page = await context.newPage();
			await page.goto(address);
			return chromiumPrinter(page);
		}
		const firefox = await startFirefox();
		open.push(() => firefox.close());
		const page = await firefox.newPage();
		await page.setViewport({ width: 1366, height: 768 });
		await page.goto(address);
		return firefoxPrinter(page);
	}

	test.each(parts)("$name in $make on $format", async ({ make, format, amount, which }) => {
		const printer = await printerOf(make);
		await goTo(printer, "this-week");
		await dropUnit(printer, unitOf(amount));
		let printed = 0;
		for (const form of forms.filter(which)) {
			await goTo(printer, form.on);
			if (form.button !== "") await pressPrint(printer, form.button);
			const paper = await readPaper(printer, format);
			await putAway(printer);
			expectForm(paper, form, `${form.on}: ${form.button || "as the browser prints it"}`);
			printed++;
		}
		expect(printed).toBeGreaterThan(2);
	});
});
