import { LONGEST_NUMBER } from "./number.ts";

/** What a text means with each mark as the decimal one, in the clear form of the files; undefined where it then means nothing. */
export interface NumberForms {
	readonly point: string | undefined;
	readonly comma: string | undefined;
}

/** Thousands parted by spaces of any width or by apostrophes: any mark is then the decimal one. */
const SPACED = /^[+-]?\d{1,3}(?:[ \u00a0\u202f\u2009'’]\d{3})+(?:[.,]\d*)?$/;
const POINT = /^[+-]?(?:(?:[1-9]\d{0,2}(?:,\d{3})+|\d+)(?:\.\d*)?|\.\d+)(?:e[+-]?\d{1,3})?$/i;
const COMMA = /^[+-]?(?:(?:[1-9]\d{0,2}(?:\.\d{3})+|\d+)(?:,\d*)?|,\d+)(?:e[+-]?\d{1,3})?$/i;

/**
 * Both readings of a number as spreadsheets of the world write it: either decimal mark, the
 * other one, a space or an apostrophe between thousands.
 *
 * @example numberForms("1.400") // { point: "1.400", comma: "1400" }
 * @example numberForms("1.400,5") // { point: undefined, comma: "1400.5" }
 */
export function numberForms(text: string): NumberForms {
	const trimmed = text.trim();
	if (trimmed.length > LONGEST_NUMBER) return { point: undefined, comma: undefined };
	if (SPACED.test(trimmed)) {
		const closed = trimmed.replace(/[^\d.,+-]/g, "").replace(",", ".");
		return { point: closed, comma: closed };
	}
	return {
		point: POINT.test(trimmed) ? trimmed.replaceAll(",", "") : undefined,
		comma: COMMA.test(trimmed) ? trimmed.replaceAll(".", "").replace(",", ".") : undefined,
	};
}

/** The same of an amount of money: the sign of a currency may stand on either side. @example "4,50 €" → { comma: "4.50" } */
export function moneyForms(text: string): NumberForms {
	return numberForms(text.replace(/^\s*\p{Sc}\s*|\s*\p{Sc}\s*$/gu, ""));
}

/** The same of a share of 100. @example "12,5 %" → { comma: "12.5" } */
export function percentForms(text: string): NumberForms {
	return numberForms(text.replace(/\s*%\s*$/, ""));
}

/** The same of a share of 1, which spreadsheets show in percent. @example "95 %" → { point: "0.95", comma: "0.95" } */
export function shareForms(text: string): NumberForms {
	if (!/%\s*$/.test(text)) return numberForms(text);
	const { point, comma } = percentForms(text);
	const hundredth = (form: string | undefined) =>
		form === undefined ? undefined : String(Number((Number(form) / 100).toPrecision(15)));
	return { point: hundredth(point), comma: hundredth(comma) };
}
