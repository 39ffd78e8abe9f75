import { inSentence } from "../../../core/inSentence.ts";
import { say } from "../../../core/say.ts";
import { checksSheet } from "../../../core/sheets/checks.ts";
import { el } from "../../dom/el.ts";
import { shownWritten } from "../../format/moment.ts";
import { semicolon } from "../../format/semicolon.ts";
import type { ShownCheck } from "./kitChecks.ts";
import { stateMark } from "./stateMark.ts";

const TESTS = [
	"bag_refills",
	"valve_moves",
	"seal_holds",
	"relief_opens",
	"suction_holds",
] as const;

/** The checks of a kit as a table; with a way to each where `open` is given. */
export function historyTable(
	checks: readonly ShownCheck[],
	open?: (line: number) => void,
): HTMLElement {
	return el(
		"div",
		{ class: "wide", tabindex: "0", role: "region", "aria-label": say`Checks of this kit` },
		el(
			"table",
			{ class: "history" },
			el("caption", {}, say`Checks, the latest first`),
			el(
				"thead",
				{},
				el(
					"tr",
					{},
					...[say`Checked at`, say`Result`, say`Why`].map((name) =>
						el("th", { scope: "col" }, name),
					),
					el("th", { scope: "col", class: "numeric" }, say`Pieces`),
					...[say`Function tests`, say`Note`].map((name) => el("th", { scope: "col" }, name)),
					open && el("th", { scope: "col" }, say`Entry`),
				),
			),
			el("tbody", {}, ...checks.map((check) => line(check, open))),
		),
	);
}

function line(shown: ShownCheck, open?: (line: number) => void): HTMLElement {
	const { check, result, reason } = shown;
	const at = check.checked_at;
	const when = at ? shownWritten(at) : "–";
	return el(
		"tr",
		{},
		el("th", { scope: "row" }, when),
		el("td", {}, stateMark(result)),
		el("td", {}, reason),
		el("td", { class: "numeric" }, String(check.pieces_counted ?? "")),
		el("td", {}, testWords(shown)),
		el("td", {}, check.note ?? ""),
		open &&
			el(
				"td",
				{},
				el(
					"button",
					{ type: "button", class: "link", onclick: () => open(shown.line) },
					say`Line ${shown.line}`,
				),
			),
	);
}

function testWords({ check }: ShownCheck): string {
	const of = (answer: "yes" | "no") =>
		TESTS.filter((test) => check[test] === answer).map((test) =>
			inSentence(checksSheet.columns[test].label),
		);
	const failed = of("no");
	const passed = of("yes").length;
	return [
		failed.length > 0 ? say`failed: ${failed.join(", ")}` : "",
		passed > 0 ? say`${passed} passed` : "",
	]
		.filter(Boolean)
		.join(semicolon);
}
