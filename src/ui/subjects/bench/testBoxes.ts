import { answerOf, type CheckedTest, checkedTests } from "../../../core/edit/bench/kitChecked.ts";
import type { LineTexts } from "../../../core/edit/bench/lineWritten.ts";
import { say } from "../../../core/say.ts";
import { checksSheet } from "../../../core/sheets/checks.ts";
import { el, fill } from "../../dom/el.ts";

const { columns } = checksSheet;

/** Each test by its name with two large answers, none of them given; before them the pieces. */
export function testBoxes() {
	const boxes = checkedTests.map((test) => ({ test, ...answers(test, words(test), help(test)) }));
	const counted = el("input", { type: "text", inputmode: "numeric", class: "count" });
	const short = el(
		"label",
		{ class: "bench-short", hidden: true },
		columns.pieces_counted.label,
		counted,
	);
	const pieces = answers("pieces", "", columns.pieces_counted.help);
	pieces.element.append(short);
	let listed = 0;
	pieces.element.addEventListener("change", ({ target }) => {
		if (target === counted) return;
		short.hidden = pieces.given() !== "failed";
		// At least one is missing; how many more, the person says.
		if (pieces.given() === "failed" && counted.value === "") counted.value = String(listed - 1);
	});
	const rows = [pieces.element, ...boxes.map(({ element }) => element)];
	const piecesText = () => {
		if (pieces.given() === "passed") return String(listed);
		return pieces.given() === "failed" ? counted.value : "";
	};
	return {
		element: el("div", { class: "bench-tests" }, ...rows),
		rows,
		/** Begins anew with a kit of so many pieces. */
		begin(of: number) {
			listed = of;
			fill(pieces.legend, say`All ${of} pieces are there`);
			pieces.element.hidden = of === 0;
			short.hidden = true;
			counted.value = "";
			for (const box of [pieces, ...boxes]) box.clear();
		},
		texts: (): LineTexts => ({
			pieces_counted: piecesText(),
			...Object.fromEntries(
				boxes.map(({ test, given }) => {
					const answer = given();
					return [test, answer === undefined ? "" : answerOf(test, answer === "passed")];
				}),
			),
		}),
		failed: (): (CheckedTest | "pieces")[] => [
			...(pieces.given() === "failed" ? (["pieces"] as const) : []),
			...boxes.filter(({ given }) => given() === "failed").map(({ test }) => test),
		],
		isTouched: () => [pieces, ...boxes].some(({ given }) => given() !== undefined),
	};
}

function words(test: CheckedTest): string {
	return test === "damage" ? say`No damage on any piece` : columns[test].label;
}

function help(test: CheckedTest): string {
	return columns[test].help;
}

function answers(key: string, name: string, explained: string) {
	const legend = el("legend", {}, name);
	const radio = (value: "passed" | "failed") =>
		el("input", { type: "radio", name: `bench-${key}`, value });
	const [yes, no] = [radio("passed"), radio("failed")];
	return {
		legend,
		element: el(
			"fieldset",
			{ class: "bench-test" },
			legend,
			el("p", { class: "unit" }, explained),
			el("label", { class: "bench-answer" }, yes, say`✓ Yes`),
			el("label", { class: "bench-answer fails" }, no, say`✕ No`),
		),
		given: (): "passed" | "failed" | undefined =>
			yes.checked ? "passed" : no.checked ? "failed" : undefined,
		clear() {
			yes.checked = false;
			no.checked = false;
		},
	};
}
