import { derive, type Figure, gather } from "../../calculation.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import { say } from "../../say.ts";
import { total } from "../../total.ts";

const preparationLitres = total("preparation_litres", say`Litres of a preparation`, "L");

/** Litres of one preparation: the soak and what is kept for wiping. */
export function litresOfPreparation({ settings }: ReadWorkbook): Figure {
	const { soak_fill_litres: soak, wipe_solution_litres: wipe } = settings;
	return derive(preparationLitres, { parts: gather(say`Parts`, "L", { soak, wipe }) });
}
