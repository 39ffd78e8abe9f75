import { type Refusal, refuse } from "../refusal.ts";
import { say } from "../say.ts";

/** Water can weaken a product, never strengthen it. */
export function tooWeak(stockPct: number, targetPct: number): Refusal {
	const holds = Number(stockPct.toPrecision(4));
	return refuse({
		code: "too-weak",
		received: say`${holds} %`,
		allowed: say`at least ${targetPct} %`,
		message: say`The product holds ${holds} % and ${targetPct} % is wanted; it cannot be made stronger. Use another lot or product.`,
	});
}
