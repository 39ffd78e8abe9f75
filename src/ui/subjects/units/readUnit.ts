import { digest } from "../../../core/merge/digest.ts";
import { nowhere, type Problem, problem } from "../../../core/problem.ts";
import type { Customs, Question } from "../../../core/read/block/blockTable.ts";
import { say } from "../../../core/say.ts";
import { failedUnit } from "../../../core/units/unitsProblems.ts";
import type { IsoDate } from "../../../core/values/date.ts";
import { unitInPieces } from "../../../io/district/districtUnit.ts";
import { tooLargeFile } from "../../../io/fileProblems.ts";
import type { ReadFiles } from "../../../io/readFiles.ts";
import { readOrder } from "../../../io/readOrders.ts";
import type { NamedBytes } from "../../../io/unzip.ts";
import { MOST_BYTES } from "../../../io/zipRefusals.ts";
import { breath } from "../../dom/breath.ts";
import { inPieces } from "../../dom/inPieces.ts";
import { readers } from "../../files/bringReaders.ts";
import { bytesOf } from "../../files/savedFile.ts";
import type { GivenUnit } from "./givenUnits.ts";
import { type HeldUnit, heldOrder, heldUnit, unreadHeld } from "./heldUnit.ts";

/** A unit as it came in, and what tells it from every other text. */
export interface ReadUnit {
	readonly unit: HeldUnit;
	readonly mark: string;
}

/** A saved workbook holds the order as this program wrote it. */
const OWN: Customs = { numbers: "point" };

/** So long pieces of a unit's plan are worked out one after the other before a key or a click gets its turn. */
const SLICE_MS = 10;

/**
 * Reads and plans what one unit sent, with a turn for the page between its pieces.
 *
 * @param asked what only the person can know of an order's numbers or dates; undefined: no answer
 */
export async function readUnit(
	given: GivenUnit,
	today: IsoDate | undefined,
	asked: (question: Question) => Promise<Customs | undefined>,
): Promise<ReadUnit> {
	const unread = (problems: readonly Problem[], mark = "") => ({
		unit: unreadHeld(given, problems),
		mark,
	});
	try {
		const files = await filesOf(given);
		if ("refused" in files) return unread(files.refused);
		if (given.kind === "order") return await readOrderUnit(given, files.bytes, asked);
		const read = await workbookIn(files.bytes);
		const isEmpty = Object.keys(read.workbook.tables).length === 0;
		const [order] = isEmpty ? await ordersInside(files.bytes) : [];
		if (order) return await readOrderUnit(given, [order], async () => OWN);
		const pause = breath(SLICE_MS);
		const unit = await inPieces(unitInPieces(given.path, read, today), pause);
		await pause();
		return {
			unit: heldUnit(given, unit),
			mark: isEmpty ? "" : digest(read.workbook.tables),
		};
	} catch (trouble) {
		return unread([failedUnit(trouble)]);
	}
}

/** The workbook of a unit's files. What reads them is there since the page is. */
export async function workbookIn(files: readonly NamedBytes[]): Promise<ReadFiles> {
	return (await readers.bring()).readFiles(files);
}

/** The bytes of a unit's files; a file that is too large, or has gone, is refused. */
export async function filesOf({
	files,
}: GivenUnit): Promise<
	{ readonly bytes: readonly NamedBytes[] } | { readonly refused: readonly Problem[] }
> {
	const tooLarge = files.filter(({ size }) => size > MOST_BYTES);
	if (tooLarge.length > 0)
		return { refused: tooLarge.map(({ name, size }) => tooLargeFile(name, size)) };
	try {
		const bytes: NamedBytes[] = [];
		for (const file of files) bytes.push({ name: file.name, bytes: await bytesOf(file) });
		return { bytes };
	} catch {
		return { refused: [goneFile(files[0]?.name ?? "")] };
	}
}

async function readOrderUnit(
	given: GivenUnit,
	[file]: readonly NamedBytes[],
	asked: (question: Question) => Promise<Customs | undefined>,
): Promise<ReadUnit> {
	if (!file) return { unit: unreadHeld(given, []), mark: "" };
	const mark = digest({
		order: { header: [], rows: [[new TextDecoder().decode(file.bytes)]], lines: [1] },
	});
	let answers: Customs = {};
	for (;;) {
		const { order, problems, question } = readOrder(file, answers);
		const answer = question && (await asked(question));
		if (answer) {
			answers = { ...answers, ...answer };
			continue;
		}
		const isOrder = order !== undefined && order.rows.rows.length > 0;
		const found = problems.length > 0 || isOrder ? problems : [noOrder(file.name)];
		const unit = isOrder ? heldOrder(given, order, found) : unreadHeld(given, found);
		return { unit, mark };
	}
}

/** The orders in zips of which nothing else can be read. */
async function ordersInside(files: readonly NamedBytes[]): Promise<NamedBytes[]> {
	const { isZip, unzip } = await readers.bring();
	return files
		.filter(({ bytes }) => isZip(bytes))
		.flatMap(({ name, bytes }) => unzip(name, bytes).files)
		.filter(({ name }) => /(^|\/)order\.csv$/i.test(name));
}

function goneFile(file: string): Problem {
	return problem(
		{ ...nowhere, file },
		{
			code: "file-gone",
			received: file,
			allowed: say`a file that lies where it was chosen`,
			message: say`${file} cannot be read any longer: it was moved, changed or taken away. Choose it again.`,
		},
	);
}

function noOrder(file: string): Problem {
	return problem(
		{ ...nowhere, file },
		{
			code: "no-order",
			received: file,
			allowed: say`an order.csv as Basinbook saves it, or a saved workbook`,
			message: say`${file} holds no order. Save the unit's workbook and give that file, or the sheet “What to order” of it.`,
		},
	);
}
