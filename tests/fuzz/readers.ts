import type { Reader } from "./fuzzed.ts";
import { cellReader } from "./readers/cellReader.ts";
import { copiesReader } from "./readers/copiesReader.ts";
import { csvReader } from "./readers/csvReader.ts";
import { descriptionReader } from "./readers/descriptionReader.ts";
import { districtReader } from "./readers/districtReader.ts";
import { draftReader } from "./readers/draftReader.ts";
import { historyReader } from "./readers/historyReader.ts";
import { longUnitsReader } from "./readers/longUnitsReader.ts";
import { ordersReader } from "./readers/ordersReader.ts";
import { pastedReader } from "./readers/pastedReader.ts";
import { recordReader } from "./readers/recordReader.ts";
import { spreadsheetReader } from "./readers/spreadsheetReader.ts";
import { unitsReader } from "./readers/unitsReader.ts";
import { workbookReader } from "./readers/workbookReader.ts";
import { zipReader } from "./readers/zipReader.ts";

/** Every way in, and how many of 1000 cases it is worth: a plan takes as long as hundreds of texts. */
export const readers: readonly (readonly [Reader, number])[] = [
	[csvReader, 155],
	[spreadsheetReader, 40],
	[unitsReader, 50],
	[longUnitsReader, 6],
	[districtReader, 15],
	[zipReader, 250],
	[descriptionReader, 150],
	[historyReader, 30],
	[copiesReader, 4],
	[recordReader, 2],
	[ordersReader, 40],
	[draftReader, 150],
	[pastedReader, 80],
	[cellReader, 26],
	[workbookReader, 2],
];
