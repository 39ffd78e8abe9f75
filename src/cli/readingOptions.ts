import type { Answers } from "../io/fileQuestion.ts";

/** Options of every command that reads a workbook: answers to what its files may leave open. */
export const readingOptions = {
	numbers: { type: "string" },
	dates: { type: "string" },
	encoding: { type: "string" },
} as const;

export const READING_USAGE = `--numbers point|comma           the decimal mark of numbers, where the files leave it open
--dates day-first|month-first   what stands first in dates like 03/01/2027
--encoding NAME                 of files that are not UTF-8, for example windows-1251`;

interface Given {
	readonly numbers?: string | undefined;
	readonly dates?: string | undefined;
	readonly encoding?: string | undefined;
}

/** The answers given as options; undefined where one is none of those allowed. */
export function answersIn({ numbers, dates, encoding }: Given): Answers | undefined {
	const mark = oneOf(["point", "comma"] as const, numbers);
	const order = oneOf(["day-first", "month-first"] as const, dates);
	if (mark === "unknown" || order === "unknown" || (encoding && !isEncoding(encoding)))
		return undefined;
	return {
		...(mark && { numbers: mark }),
		...(order && { dates: order }),
		...(encoding && { encoding }),
	};
}

function oneOf<T extends string>(allowed: readonly T[], text: string | undefined) {
	return text === undefined ? undefined : (allowed.find((one) => one === text) ?? "unknown");
}

function isEncoding(name: string): boolean {
	try {
		return new TextDecoder(name).encoding !== "";
	} catch {
		return false;
	}
}
