import { mkdirSync } from "node:fs";
import { join } from "node:path";
import sharp from "sharp";
import { startBrowser } from "../browser/chromium.ts";
import { servedSite } from "../browser/site.ts";
import { WorkbookPage } from "../browser/workbookPage.ts";

/** npm run pictures: the pictures that README.md shows, from the built site with its demo. */
const FOLDER = join(import.meta.dirname, "../../docs/pictures");
const MOST_BYTES = 120_000;
/** A page of text has few colours; named one by one they take a third of the room. */
const COLOURS = 64;
const LAPTOP = { viewport: { width: 1366, height: 768 } };
const PHONE = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true };

interface Picture {
	readonly name: string;
	readonly sheet: string;
	readonly screen: Parameters<typeof WorkbookPage.open>[2];
	/** What is done on the page before it is taken. */
	readonly act?: (workbook: WorkbookPage) => Promise<void>;
}

const pictures: readonly Picture[] = [
	{ name: "plan", sheet: "this-week", screen: LAPTOP, act: (workbook) => workbook.click(1, 3) },
	{ name: "kits", sheet: "kit-cover.csv", screen: LAPTOP },
	{ name: "mixing", sheet: "mixing.csv", screen: LAPTOP },
	{ name: "run-sheet", sheet: "run-sheet.csv", screen: LAPTOP },
	{ name: "phone", sheet: "today", screen: PHONE },
];

mkdirSync(FOLDER, { recursive: true });
const [browser, site] = [await startBrowser(), await servedSite()];
for (const { name, sheet, screen, act } of pictures) {
	const workbook = await WorkbookPage.open(browser, site, screen, sheet);
	await act?.(workbook);
	const shot = await workbook.page.screenshot({ animations: "disabled" });
	const small = sharp(shot).png({ palette: true, colours: COLOURS, dither: 0, effort: 10 });
	const { size } = await small.toFile(join(FOLDER, `${name}.png`));
	if (workbook.errors.length > 0) throw new Error(workbook.errors.join("\n"));
	if (size > MOST_BYTES) throw new Error(`${name}.png takes ${size} bytes`);
	process.stdout.write(`docs/pictures/${name}.png: ${Math.ceil(size / 1000)} kB\n`);
	await workbook.close();
}
await browser.close();
site.close();
