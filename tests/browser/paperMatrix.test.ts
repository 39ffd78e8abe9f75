import { afterAll, describe, expect, test } from "vitest";
import { startFirefox } from "./firefox.ts";
import { browser, served } from "./fixture.ts";
import {
	districtOf,
	FULL_DISTRICT,
	LARGE_DISTRICT,
	ONE_UNIT,
	type SentUnits,
} from "./print/districtOf.ts";
import { expectForm } from "./print/expectForm.ts";
import { districtForms, type Form, forms } from "./print/forms.ts";
import {
	chromiumPrinter,
	dropDistrict,
	dropUnit,
	type Format,
	firefoxPrinter,
	goTo,
	type Printer,
	pressPrint,
	putAway,
} from "./print/printer.ts";
import { readPaper } from "./print/readPaper.ts";
import { type Amount, FULL, MIDDLE, SMALLEST, unitOf, YEAR } from "./print/sizesOfData.ts";

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

/** The papers of a week are all of its forms again. */
const isOfWeek = ({ on }: Form) => on === "monday";
const together = ({ on, button }: Form) =>
	["monday", "what-if", "storekeeper"].includes(on) || (on === "this-week" && button === "");

interface On {
	readonly make: "Chromium" | "Firefox";
	readonly format: Format;
	readonly name: string;
}

interface Part extends On {
	readonly amount: Amount;
	readonly which: (form: Form) => boolean;
}

interface District extends On {
	readonly sent: SentUnits;
}

const all = () => true;
const inSuite: readonly Part[] = [
	{ make: "Chromium", format: "A4", amount: SMALLEST, name: "the least", which: all },
	{ make: "Chromium", format: "A4", amount: MIDDLE, name: "a month", which: together },
	{
		make: "Chromium",
		format: "A4",
		amount: FULL,
		name: "the most",
		which: (form) => !isOfWeek(form),
	},
	{ make: "Chromium", format: "Letter", amount: FULL, name: "the most", which: isGrowing },
	{ make: "Firefox", format: "A4", amount: FULL, name: "the most", which: isGrowing },
];
const amounts = [
	["the least", SMALLEST, all],
	["a month", MIDDLE, all],
	["the most", FULL, all],
	["a year", YEAR, ofYear],
] as const;
const whole = (["Chromium", "Firefox"] as const).flatMap((make) =>
	(["A4", "Letter"] as const).flatMap((format) =>
		amounts.map(([name, amount, which]): Part => ({ make, format, amount, name, which })),
	),
);

const districtsInSuite: readonly District[] = [
	{ make: "Chromium", format: "A4", sent: ONE_UNIT, name: "one unit" },
	{ make: "Chromium", format: "A4", sent: FULL_DISTRICT, name: "a district" },
];
const sizes = [
	["one unit", ONE_UNIT],
	["a district", FULL_DISTRICT],
	["a large district", LARGE_DISTRICT],
] as const;
const allDistricts = (["Chromium", "Firefox"] as const).flatMap((make) =>
	(["A4", "Letter"] as const).flatMap((format) =>
		sizes.map(([name, sent]): District => ({ make, format, name, sent })),
	),
);

/** WHOLE_MATRIX=1 asks for every form, amount, browser and paper. */
const parts = process.env.WHOLE_MATRIX ? whole : inSuite;
const districts = process.env.WHOLE_MATRIX ? allDistricts : districtsInSuite;

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
		expect(await printAll(printer, format, forms.filter(which))).toBeGreaterThan(2);
	});

	test.each(districts)("of $name in $make on $format", async ({ make, format, sent }) => {
		const printer = await printerOf(make);
		await goTo(printer, "several-units");
		await dropDistrict(printer, districtOf(sent));
		expect(await printAll(printer, format, districtForms)).toBe(districtForms.length);
	});
});

/** Prints forms one after the other and holds each against what its pages must say. @returns how many */
async function printAll(
	printer: Printer,
	format: Format,
	printing: readonly Form[],
): Promise<number> {
	for (const form of printing) {
		await goTo(printer, form.on);
		if (form.button !== "") await pressPrint(printer, form.button);
		const paper = await readPaper(printer, format);
		await putAway(printer);
		expectForm(paper, form, `${form.on}: ${form.button || "as the browser prints it"}`);
	}
	return printing.length;
}
