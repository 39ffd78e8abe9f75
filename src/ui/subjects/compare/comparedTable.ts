import type { Figure } from "../../../core/calculation.ts";
import { say } from "../../../core/say.ts";
import { type Child, el } from "../../dom/el.ts";
import { capital } from "../../format/capital.ts";
import { DASH, shownCell } from "../../format/shownFigure.ts";
import type { Compared } from "./comparedFigures.ts";
import { differenceOf } from "./difference.ts";
import { hasAnswer, type Side } from "./side.ts";

/** Told which side's figure is asked "why?", and by which button. */
export type Asked = (side: Side, figure: Figure<unknown>, button: HTMLElement) => void;

const verdicts = { "": "", better: say`better`, worse: say`worse` };

/** Both sides' figures beside each other and what differs; with `asked`, each figure is a button that asks why. */
export function comparedTable(
	figures: readonly Compared[],
	[left, right]: readonly [Side, Side],
	asked?: Asked,
): HTMLElement {
	const groups = [...new Set(figures.map(({ group }) => group))];
	const value = (side: Side, compared: Compared) =>
		el("td", { class: "numeric" }, valueOrWhy(side, compared, side === left ? 0 : 1, asked));
	const row = (compared: Compared) => {
		const stands = hasAnswer(left) && hasAnswer(right);
		const { text, verdict } = stands ? differenceOf(compared) : { text: "", verdict: "" as const };
		return el(
			"tr",
			{},
			el(
				"th",
				{ scope: "row" },
				compared.label,
				compared.unit !== "" && el("span", { class: "unit" }, ` ${compared.unit}`),
			),
			value(left, compared),
			value(right, compared),
			el(
				"td",
				{ class: "numeric" },
				text,
				verdict !== "" && el("strong", { class: `verdict ${verdict}` }, ` ${verdicts[verdict]}`),
			),
		);
	};
	return el(
		"table",
		{ class: "brief compared" },
		el("caption", {}, say`What follows, over the same days`),
		head(left, right),
		...groups.map((group) =>
			el(
				"tbody",
				{},
				el("tr", { class: "part" }, el("th", { colspan: 4, scope: "rowgroup" }, group)),
				...figures.filter((each) => each.group === group).map(row),
			),
		),
	);
}

function head(left: Side, right: Side): HTMLElement {
	const column = (words: string) => el("th", { scope: "col", class: "numeric" }, words);
	return el(
		"thead",
		{},
		el(
			"tr",
			{},
			el("th", { scope: "col" }, say`Figure`),
			column(capital(left.title)),
			column(capital(right.title)),
			column(say`Difference`),
		),
	);
}

function valueOrWhy(side: Side, compared: Compared, at: 0 | 1, asked: Asked | undefined): Child {
	const { label, column, left, right, why } = compared;
	const figure = at === 0 ? left : right;
	if (!figure || !hasAnswer(side)) return DASH;
	const text = shownCell(column, figure) || DASH;
	if (!asked || text === DASH) return text;
	const button: HTMLElement = el(
		"button",
		{
			type: "button",
			class: "link",
			"aria-label": say`${text}: ${label}, ${side.title}. Why?`,
			onclick: () => asked(side, why?.[at] ?? figure, button),
		},
		text,
	);
	return button;
}
